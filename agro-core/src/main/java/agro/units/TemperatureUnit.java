package agro.units;

/**
 * Units of temperature. A temperature converts with its offset, a difference of temperatures
 * without.
 */
public enum TemperatureUnit {
  /** Degree Celsius. */
  CELSIUS("°C", "Cel", ExactFactor.ONE, 0),
  /** Degree Fahrenheit: 32 °F is 0 °C, and one degree is 5/9 of a degree Celsius. */
  FAHRENHEIT("°F", "[degF]", ExactFactor.of(5, 9), 32),
  /** Kelvin: 273.15 K is 0 °C. */
  KELVIN("K", "K", ExactFactor.ONE, 273.15);

  private final String symbol;
  private final String ucum;
  private final ExactFactor degreeInCelsius;
  private final double freezingPoint;

  TemperatureUnit(String symbol, String ucum, ExactFactor degreeInCelsius, double freezingPoint) {
    this.symbol = symbol;
    this.ucum = ucum;
    this.degreeInCelsius = degreeInCelsius;
    this.freezingPoint = freezingPoint;
  }

  /**
   * The printed symbol.
   *
   * @return for example {@code "°C"}
   */
  public String symbol() {
    return symbol;
  }

  /**
   * The UCUM code.
   *
   * @return for example {@code "Cel"}
   */
  public String ucum() {
    return ucum;
  }

  /**
   * The size of one degree of this unit in degrees Celsius.
   *
   * @return an exact factor
   */
  public ExactFactor degreeInCelsius() {
    return degreeInCelsius;
  }

  /**
   * Converts a temperature to degrees Celsius.
   *
   * @param value temperature in this unit; NaN passes through
   * @return temperature in °C
   */
  public double toCelsius(double value) {
    return degreeInCelsius.convert(value - freezingPoint);
  }

  /**
   * Converts a temperature from degrees Celsius.
   *
   * @param celsius temperature in °C; NaN passes through
   * @return temperature in this unit
   */
  public double fromCelsius(double celsius) {
    return degreeInCelsius.inverse().convert(celsius) + freezingPoint;
  }
}
