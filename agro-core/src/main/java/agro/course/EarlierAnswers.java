package agro.course;

import agro.units.Quantity;
import agro.units.Temperature;
import agro.units.ThermalTime;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/**
 * The answers to the parts before one: the right ones, or a student's own where a slip is carried
 * forward. Parts are counted from zero.
 *
 * @param values one for each earlier part
 */
public record EarlierAnswers(List<AnswerValue> values) {

  /** Copies the list. */
  public EarlierAnswers {
    values = List.copyOf(values);
  }

  /**
   * No earlier part.
   *
   * @return nothing
   */
  public static EarlierAnswers none() {
    return new EarlierAnswers(List.of());
  }

  /**
   * These and one more.
   *
   * @param value answer to the next part
   * @return one more
   */
  public EarlierAnswers and(AnswerValue value) {
    var more = new ArrayList<>(values);
    more.add(value);
    return new EarlierAnswers(more);
  }

  /**
   * A number: a count, a mean, a sum of money, per cent.
   *
   * @param part part, from zero
   * @return the number
   * @throws IllegalArgumentException if the answer to that part is no number
   */
  public double number(int part) {
    return answer(part, AnswerValue.OfNumber.class).number();
  }

  /**
   * An amount.
   *
   * @param <Q> its kind
   * @param part part, from zero
   * @param kind class of its kind
   * @return the amount
   * @throws IllegalArgumentException if the answer to that part is of another kind
   */
  public <Q extends Quantity<Q>> Q quantity(int part, Class<Q> kind) {
    var quantity = answer(part, AnswerValue.OfQuantity.class).quantity();
    if (!kind.isInstance(quantity)) {
      throw refused(part);
    }
    return kind.cast(quantity);
  }

  /**
   * A sum of degree-days.
   *
   * @param part part, from zero
   * @return the sum
   * @throws IllegalArgumentException if the answer to that part is of another kind
   */
  public ThermalTime thermalTime(int part) {
    return answer(part, AnswerValue.OfThermalTime.class).sum();
  }

  /**
   * A temperature.
   *
   * @param part part, from zero
   * @return the temperature
   * @throws IllegalArgumentException if the answer to that part is of another kind
   */
  public Temperature temperature(int part) {
    return answer(part, AnswerValue.OfTemperature.class).temperature();
  }

  /**
   * A day.
   *
   * @param part part, from zero
   * @return the day
   * @throws IllegalArgumentException if the answer to that part is of another kind
   */
  public LocalDate day(int part) {
    return answer(part, AnswerValue.OfDay.class).day();
  }

  /**
   * The code of a choice.
   *
   * @param part part, from zero
   * @return the code
   * @throws IllegalArgumentException if the answer to that part is of another kind
   */
  public String choice(int part) {
    return answer(part, AnswerValue.OfChoice.class).code();
  }

  /**
   * Several codes.
   *
   * @param part part, from zero
   * @return the codes
   * @throws IllegalArgumentException if the answer to that part is of another kind
   */
  public Set<String> codes(int part) {
    return answer(part, AnswerValue.OfCodes.class).codes();
  }

  private <A extends AnswerValue> A answer(int part, Class<A> kind) {
    if (part < 0 || part >= values.size() || !kind.isInstance(values.get(part))) {
      throw refused(part);
    }
    return kind.cast(values.get(part));
  }

  private IllegalArgumentException refused(int part) {
    return new IllegalArgumentException(
        "part " + (part + 1) + " has no answer of this kind: " + values);
  }
}
