package agro.units;

/**
 * A temperature, for example a lower threshold. Not to be mixed up with a {@linkplain
 * TemperatureDifference difference of temperatures}, which converts without an offset.
 *
 * @param celsius temperature in °C, finite and not below absolute zero
 */
public record Temperature(double celsius) implements Comparable<Temperature> {

  private static final double ABSOLUTE_ZERO_CELSIUS = -273.15;

  /** Refuses values that no thermometer shows. */
  public Temperature {
    if (!(Double.isFinite(celsius) && celsius >= ABSOLUTE_ZERO_CELSIUS)) {
      throw new IllegalArgumentException(
          "a temperature is finite and at least -273.15 °C, but got " + celsius + " °C");
    }
  }

  /**
   * A temperature in a stated unit.
   *
   * @param value number in that unit
   * @param unit the unit
   * @return the temperature
   */
  public static Temperature of(double value, TemperatureUnit unit) {
    return new Temperature(unit.toCelsius(value));
  }

  /**
   * A temperature in degrees Celsius.
   *
   * @param celsius temperature in °C
   * @return the temperature
   */
  public static Temperature ofCelsius(double celsius) {
    return new Temperature(celsius);
  }

  /**
   * A temperature in degrees Fahrenheit.
   *
   * @param fahrenheit temperature in °F
   * @return the temperature
   */
  public static Temperature ofFahrenheit(double fahrenheit) {
    return of(fahrenheit, TemperatureUnit.FAHRENHEIT);
  }

  /**
   * A temperature as people write it, for example {@code "25 °C"}, {@code "-3.5 °C"} or {@code "77
   * F"}. A bare number is refused, and so is a comma in it.
   *
   * @param text one number with its unit
   * @return the temperature
   * @throws UnreadableQuantity if the text is not clear
   */
  public static Temperature parse(String text) {
    return TemperatureReader.read(text);
  }

  /**
   * The number in a stated unit.
   *
   * @param unit the unit
   * @return the temperature in that unit
   */
  public double in(TemperatureUnit unit) {
    return unit.fromCelsius(celsius);
  }

  /**
   * The difference to another temperature.
   *
   * @param other the temperature to subtract
   * @return this minus the other
   */
  public TemperatureDifference minus(Temperature other) {
    return new TemperatureDifference(celsius - other.celsius);
  }

  /**
   * The temperature shifted by a difference.
   *
   * @param shift the difference to add
   * @return the shifted temperature
   */
  public Temperature plus(TemperatureDifference shift) {
    return new Temperature(celsius + shift.celsius());
  }

  @Override
  public int compareTo(Temperature other) {
    return Double.compare(celsius, other.celsius);
  }

  @Override
  public String toString() {
    return Numbers.plain(celsius) + " °C";
  }
}
