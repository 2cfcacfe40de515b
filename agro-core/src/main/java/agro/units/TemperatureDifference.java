package agro.units;

/**
 * A difference of two temperatures, such as the offset between a field and a station.
 *
 * @param celsius difference in degrees Celsius (equal to kelvin), finite
 */
public record TemperatureDifference(double celsius) {

  /** Refuses values that are not finite. */
  public TemperatureDifference {
    if (!Double.isFinite(celsius)) {
      throw new IllegalArgumentException(
          "a temperature difference is finite, but got " + celsius + " °C");
    }
  }

  /**
   * A difference in a stated unit; 9 °F of difference are 5 °C.
   *
   * @param value number in that unit
   * @param unit the unit
   * @return the difference
   */
  public static TemperatureDifference of(double value, TemperatureUnit unit) {
    return new TemperatureDifference(unit.degreeInCelsius().convert(value));
  }

  /**
   * The number in a stated unit.
   *
   * @param unit the unit
   * @return the difference in that unit
   */
  public double in(TemperatureUnit unit) {
    return unit.degreeInCelsius().inverse().convert(celsius);
  }

  @Override
  public String toString() {
    return Numbers.plain(celsius) + " °C (difference)";
  }
}
