package agro.notebook.hint;

import java.util.Arrays;
import java.util.Optional;

/**
 * Our quantities, as a reader has to know them who used one of them wrongly. A new type of quantity
 * is one more constant.
 */
enum Quantity {
  /** A temperature. */
  TEMPERATURE(
      "agro.units.Temperature",
      "a temperature",
      "Temperature.ofCelsius(20) or Temperature.ofFahrenheit(68)",
      "celsius() or in(TemperatureUnit.FAHRENHEIT)",
      "plus(TemperatureDifference), minus(Temperature) and compareTo(Temperature)"),
  /** A difference of temperatures. */
  TEMPERATURE_DIFFERENCE(
      "agro.units.TemperatureDifference",
      "a difference of temperatures",
      "TemperatureDifference.of(5, TemperatureUnit.CELSIUS)",
      "celsius() or in(TemperatureUnit.FAHRENHEIT)",
      "in(TemperatureUnit)"),
  /** An amount of thermal time. */
  THERMAL_TIME(
      "agro.units.ThermalTime",
      "an amount of thermal time (degree-days)",
      "ThermalTime.ofDegreeDaysC(250) or ThermalTime.of(450, ThermalTimeUnit.FAHRENHEIT_DAY)",
      "degreeDaysC() or in(ThermalTimeUnit.FAHRENHEIT_DAY)",
      "plus(ThermalTime), times(double) and compareTo(ThermalTime)"),
  /** A unit of temperatures. */
  TEMPERATURE_UNIT(
      "agro.units.TemperatureUnit",
      "a unit of temperature",
      "TemperatureUnit.CELSIUS",
      "symbol() or toCelsius(double)",
      "toCelsius(double) and fromCelsius(double)"),
  /** A unit of thermal time. */
  THERMAL_TIME_UNIT(
      "agro.units.ThermalTimeUnit",
      "a unit of thermal time",
      "ThermalTimeUnit.CELSIUS_DAY",
      "symbol()",
      "inCelsiusDays()");

  private final String typeName;
  private final String meaning;
  private final String made;
  private final String asNumber;
  private final String methods;

  Quantity(String typeName, String meaning, String made, String asNumber, String methods) {
    this.typeName = typeName;
    this.meaning = meaning;
    this.made = made;
    this.asNumber = asNumber;
    this.methods = methods;
  }

  /**
   * The quantity of a type.
   *
   * @param typeName the full name of a type
   * @return empty for a type that is none of ours
   */
  static Optional<Quantity> of(String typeName) {
    return Arrays.stream(values()).filter(one -> one.typeName.equals(typeName.strip())).findFirst();
  }

  /** The full name of the type. */
  String typeName() {
    return typeName;
  }

  /** The name of the type without its package. */
  String simpleName() {
    return typeName.substring(typeName.lastIndexOf('.') + 1);
  }

  /** What it is, with an article. */
  String meaning() {
    return meaning;
  }

  /** How one is made from a number. */
  String made() {
    return made;
  }

  /** How a number is taken from it. */
  String asNumber() {
    return asNumber;
  }

  /** The methods that take the place of operators. */
  String methods() {
    return methods;
  }
}
