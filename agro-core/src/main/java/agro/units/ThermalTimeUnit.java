package agro.units;

/** Units of thermal time. They convert by a factor alone: no offset, for a sum of differences. */
public enum ThermalTimeUnit {
  /** Degree Celsius times day. */
  CELSIUS_DAY("°C·d", "K.d", ExactFactor.ONE),
  /** Degree Fahrenheit times day, 5/9 °C·d. */
  FAHRENHEIT_DAY("°F·d", "[degR].d", ExactFactor.of(5, 9)),
  /** Degree Celsius times hour, 1/24 °C·d. */
  CELSIUS_HOUR("°C·h", "K.h", ExactFactor.of(1, 24));

  private final String symbol;
  private final String ucum;
  private final ExactFactor inCelsiusDays;

  ThermalTimeUnit(String symbol, String ucum, ExactFactor inCelsiusDays) {
    this.symbol = symbol;
    this.ucum = ucum;
    this.inCelsiusDays = inCelsiusDays;
  }

  /**
   * The printed symbol.
   *
   * @return for example {@code "°C·d"}
   */
  public String symbol() {
    return symbol;
  }

  /**
   * The UCUM code; kelvin stands for the degree Celsius, which UCUM does not multiply.
   *
   * @return for example {@code "K.d"}
   */
  public String ucum() {
    return ucum;
  }

  /**
   * The size of this unit in °C·d.
   *
   * @return an exact factor
   */
  public ExactFactor inCelsiusDays() {
    return inCelsiusDays;
  }
}
