package agro.development.rate;

/**
 * The two constants of models on the absolute scale. Papers differ in both, and a parameter set
 * belongs to the pair it was fitted with: 298 K in place of 298.15 K changes a rate by about two
 * per cent.
 *
 * @param referenceKelvin temperature at which the rate parameter is the rate without inactivation
 * @param gasConstant the gas constant in cal/(mol K), as enthalpies are in cal/mol
 */
public record ArrheniusConstants(double referenceKelvin, double gasConstant) {

  /** 25 °C exactly and the rounded gas constant of most papers. */
  public static final ArrheniusConstants AT_25_CELSIUS = new ArrheniusConstants(298.15, 1.987);

  /** The rounded reference temperature of many papers. */
  public static final ArrheniusConstants AT_298_KELVIN = new ArrheniusConstants(298, 1.987);

  /** The gas constant to eight digits, in cal/(mol K). */
  public static final double EXACT_GAS_CONSTANT = 1.9858775;

  /** Refuses constants that are not positive. */
  public ArrheniusConstants {
    if (!(referenceKelvin > 0 && gasConstant > 0)) {
      throw new IllegalArgumentException(
          "a reference temperature in K and a gas constant are positive, but got "
              + referenceKelvin
              + " and "
              + gasConstant);
    }
  }

  /**
   * These constants with another reference temperature.
   *
   * @param kelvin the temperature
   * @return new constants
   */
  public ArrheniusConstants withReference(double kelvin) {
    return new ArrheniusConstants(kelvin, gasConstant);
  }

  /**
   * These constants with another gas constant.
   *
   * @param caloriesPerMoleKelvin the gas constant
   * @return new constants
   */
  public ArrheniusConstants withGasConstant(double caloriesPerMoleKelvin) {
    return new ArrheniusConstants(referenceKelvin, caloriesPerMoleKelvin);
  }

  @Override
  public String toString() {
    return "reference temperature "
        + agro.units.Numbers.plain(referenceKelvin)
        + " K, R = "
        + agro.units.Numbers.plain(gasConstant)
        + " cal/(mol K)";
  }
}
