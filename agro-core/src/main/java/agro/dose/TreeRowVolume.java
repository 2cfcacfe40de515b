package agro.dose;

import agro.report.InputProblem;
import agro.units.Numbers;
import agro.units.VolumePerArea;

/**
 * The volume of the tree rows on a hectare of ground. It has nothing to do with a volume of spray.
 *
 * @param cubicMetresPerHectare cubic metres of canopy per hectare of ground, above zero
 */
public record TreeRowVolume(double cubicMetresPerHectare) {

  /** Refuses rows without a volume. */
  public TreeRowVolume {
    if (!(cubicMetresPerHectare > 0 && cubicMetresPerHectare < Double.POSITIVE_INFINITY)) {
      throw InputProblem.of("a tree-row volume of " + cubicMetresPerHectare + " m³/ha")
          .expected("a finite volume above zero")
          .because("a dose per tree-row volume is multiplied by it")
          .mend("compute it from height, width and distance of the rows with Canopy");
    }
  }

  /**
   * The spray volume that wets these rows.
   *
   * @param litresPerThousandCubicMetres spray in L for 1000 m³ of full canopy, above zero
   * @param canopyDensity share of a full canopy, above 0 and up to 1, for example 0.7
   * @return spray volume per ground area
   * @throws InputProblem if a number lies outside its range
   */
  public SprayVolume spray(double litresPerThousandCubicMetres, double canopyDensity) {
    if (!(canopyDensity > 0 && canopyDensity <= 1)) {
      throw InputProblem.of("a canopy density of " + canopyDensity)
          .expected("a share above 0 and up to 1, for example 0.85 for an open canopy")
          .because("a canopy denser than a full one stands in no table")
          .mend("take the density factor of the guide that states the volume per 1000 m³");
    }
    double litres = cubicMetresPerHectare / 1000 * litresPerThousandCubicMetres * canopyDensity;
    return new SprayVolume(new VolumePerArea(litres));
  }

  @Override
  public String toString() {
    return Numbers.plain(cubicMetresPerHectare) + " m³/ha tree rows";
  }
}
