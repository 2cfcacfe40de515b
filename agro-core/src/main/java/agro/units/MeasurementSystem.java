package agro.units;

/** The customary family of units in which a reader thinks. */
public enum MeasurementSystem {
  /** Litres, kilograms, metres and bar. */
  METRIC,
  /** US gallons and fluid ounces, pounds, feet and psi. */
  US,
  /** Imperial gallons and fluid ounces, pounds, feet and psi. */
  IMPERIAL
}
