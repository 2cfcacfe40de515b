package agro.course;

import agro.units.Numbers;
import agro.units.Quantity;
import java.time.LocalDate;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What an exercise gives, by name, so that its solution can be computed again by another route.
 *
 * @param values numbers, quantities, days, texts or lists of numbers by name, in the order drawn
 */
public record Givens(Map<String, Object> values) {

  /** Copies the map. */
  public Givens {
    values = Collections.unmodifiableMap(new LinkedHashMap<>(values));
  }

  /**
   * Nothing given.
   *
   * @return no values
   */
  public static Givens none() {
    return new Givens(Map.of());
  }

  /**
   * These and a number.
   *
   * @param name name of the number
   * @param number the number
   * @return more givens
   */
  public Givens withNumber(String name, double number) {
    return with(name, number);
  }

  /**
   * These and several numbers.
   *
   * @param name name of the numbers
   * @param numbers the numbers
   * @return more givens
   */
  public Givens withNumbers(String name, List<Double> numbers) {
    return with(name, List.copyOf(numbers));
  }

  /**
   * These and a quantity.
   *
   * @param name name of the quantity
   * @param quantity the quantity
   * @return more givens
   */
  public Givens withQuantity(String name, Quantity<?> quantity) {
    return with(name, quantity);
  }

  /**
   * These and a text, for example a choice that the exercise makes.
   *
   * @param name name of the text
   * @param text the text, the same in every language
   * @return more givens
   */
  public Givens withText(String name, String text) {
    return with(name, text);
  }

  /**
   * These and a day.
   *
   * @param name name of the day
   * @param day the day
   * @return more givens
   */
  public Givens withDay(String name, LocalDate day) {
    return with(name, day);
  }

  private Givens with(String name, Object value) {
    var more = new LinkedHashMap<>(values);
    if (more.put(name, value) != null) {
      throw new IllegalArgumentException(name + " is given twice");
    }
    return new Givens(more);
  }

  /**
   * A number.
   *
   * @param name name of the number
   * @return the number
   * @throws IllegalArgumentException if no number of this name is given
   */
  public double number(String name) {
    return value(name, Double.class);
  }

  /**
   * Several numbers.
   *
   * @param name name of the numbers
   * @return the numbers
   * @throws IllegalArgumentException if no numbers of this name are given
   */
  public List<Double> numbers(String name) {
    List<?> numbers = value(name, List.class);
    return numbers.stream().map(Double.class::cast).toList();
  }

  /**
   * A quantity in its base unit.
   *
   * @param name name of the quantity
   * @return the number in the base unit of its kind
   * @throws IllegalArgumentException if no quantity of this name is given
   */
  public double base(String name) {
    return value(name, Quantity.class).inBaseUnit();
  }

  /**
   * A quantity.
   *
   * @param <Q> its kind
   * @param name name of the quantity
   * @param kind class of its kind
   * @return the quantity
   * @throws IllegalArgumentException if no such quantity is given
   */
  public <Q extends Quantity<Q>> Q quantity(String name, Class<Q> kind) {
    return value(name, kind);
  }

  /**
   * A text.
   *
   * @param name name of the text
   * @return the text
   * @throws IllegalArgumentException if no text of this name is given
   */
  public String text(String name) {
    return value(name, String.class);
  }

  /**
   * A day.
   *
   * @param name name of the day
   * @return the day
   * @throws IllegalArgumentException if no day of this name is given
   */
  public LocalDate day(String name) {
    return value(name, LocalDate.class);
  }

  /**
   * Whether a mass and a volume can be changed into one another.
   *
   * @return whether a density is given
   */
  public boolean hasDensity() {
    return values.values().stream().anyMatch(agro.units.Density.class::isInstance);
  }

  private <T> T value(String name, Class<T> type) {
    var value = values.get(name);
    if (!type.isInstance(value)) {
      throw new IllegalArgumentException(
          "the exercise gives no " + name + " of this kind, but " + values.keySet());
    }
    return type.cast(value);
  }

  /**
   * All values in one line. Two exercises of a type with the same line are the same exercise.
   *
   * @return names and values
   */
  public String fingerprint() {
    var line = new StringBuilder();
    for (var given : values.entrySet()) {
      line.append(given.getKey()).append('=').append(print(given.getValue())).append(';');
    }
    return line.toString();
  }

  private static String print(Object value) {
    if (value instanceof Quantity<?> quantity) {
      return Numbers.plain(quantity.inBaseUnit());
    }
    return value instanceof Double number ? Numbers.plain(number) : value.toString();
  }
}
