package agro.notebook.hint;

import java.util.Arrays;
import java.util.Optional;

/** Two quantities that are taken for each other, and how one comes from the other. */
enum Confusion {
  /** A temperature where a difference is wanted. */
  TEMPERATURE_AS_DIFFERENCE(
      Quantity.TEMPERATURE,
      Quantity.TEMPERATURE_DIFFERENCE,
      "Two temperatures subtracted give one: warm.minus(cold)."),
  /** A difference where a temperature is wanted. */
  DIFFERENCE_AS_TEMPERATURE(
      Quantity.TEMPERATURE_DIFFERENCE,
      Quantity.TEMPERATURE,
      "A temperature shifted by a difference is one: base.plus(difference)."),
  /** A temperature where thermal time is wanted. */
  TEMPERATURE_AS_THERMAL_TIME(
      Quantity.TEMPERATURE,
      Quantity.THERMAL_TIME,
      "Thermal time adds up over days above a threshold; a DegreeDayModel computes it."),
  /** Thermal time where a temperature is wanted. */
  THERMAL_TIME_AS_TEMPERATURE(
      Quantity.THERMAL_TIME,
      Quantity.TEMPERATURE,
      "A threshold is a temperature, a requirement is thermal time: look whether the two are swapped."),
  /** A difference where thermal time is wanted. */
  DIFFERENCE_AS_THERMAL_TIME(
      Quantity.TEMPERATURE_DIFFERENCE,
      Quantity.THERMAL_TIME,
      "Degrees above a threshold have to last for days before they are thermal time."),
  /** A unit of temperature where one of thermal time is wanted. */
  DEGREE_AS_DEGREE_DAY(
      Quantity.TEMPERATURE_UNIT,
      Quantity.THERMAL_TIME_UNIT,
      "Degree-days are counted in °C·d or °F·d."),
  /** A unit of thermal time where one of temperature is wanted. */
  DEGREE_DAY_AS_DEGREE(
      Quantity.THERMAL_TIME_UNIT,
      Quantity.TEMPERATURE_UNIT,
      "Temperatures are measured in °C, °F or K.");

  private final Quantity found;
  private final Quantity required;
  private final String cure;

  Confusion(Quantity found, Quantity required, String cure) {
    this.found = found;
    this.required = required;
    this.cure = cure;
  }

  /**
   * How the wanted quantity comes from the one that is there.
   *
   * @param found what is there
   * @param required what is wanted
   * @return a sentence; empty when nobody has thought of this pair
   */
  static Optional<String> cure(Quantity found, Quantity required) {
    return Arrays.stream(values())
        .filter(one -> one.found == found && one.required == required)
        .map(one -> one.cure)
        .findFirst();
  }
}
