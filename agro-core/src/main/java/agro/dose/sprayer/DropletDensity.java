package agro.dose.sprayer;

import agro.report.InputProblem;

/** Droplets on a surface if all had the same size, which no spray has: an order of magnitude. */
public final class DropletDensity {

  private static final double SPHERE = 60 / Math.PI;
  private static final double REFERENCE_MICROMETRES = 100;

  private DropletDensity() {}

  /**
   * Droplets per square centimetre of flat ground: (60 ÷ π) × (100 ÷ d)³ × L/ha. Twice the diameter
   * leaves one eighth of the droplets.
   *
   * @param micrometres diameter d in µm, above zero
   * @param volume spray volume per treated area
   * @return droplets per cm²
   * @throws InputProblem if the diameter is not above zero
   */
  public static double perSquareCentimetre(double micrometres, TreatedVolume volume) {
    if (!(micrometres > 0 && micrometres < Double.POSITIVE_INFINITY)) {
      throw InputProblem.of("the droplet diameter is " + micrometres + " µm")
          .expected("a diameter above zero, for example 250 µm")
          .because("the number of droplets is the volume divided by that of one droplet")
          .mend("write the diameter in µm");
    }
    double ratio = REFERENCE_MICROMETRES / micrometres;
    return SPHERE * ratio * ratio * ratio * volume.perArea().litresPerHectare();
  }
}
