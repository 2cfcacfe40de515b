package agro.dose;

import agro.report.InputProblem;
import agro.units.Numbers;

/**
 * The area of the leaf walls, both sides of all rows, on a hectare of ground. It is no ground area.
 *
 * @param squareMetresPerHectare square metres of leaf wall per hectare of ground, above zero
 */
public record LeafWallArea(double squareMetresPerHectare) {

  /** Refuses walls without an area. */
  public LeafWallArea {
    if (!(squareMetresPerHectare > 0 && squareMetresPerHectare < Double.POSITIVE_INFINITY)) {
      throw InputProblem.of("a leaf-wall area of " + squareMetresPerHectare + " m²/ha")
          .expected("a finite area above zero")
          .because("a dose per leaf-wall area is multiplied by it")
          .mend("compute it from treated height and distance of the rows with Canopy");
    }
  }

  @Override
  public String toString() {
    return Numbers.plain(squareMetresPerHectare) + " m²/ha leaf wall";
  }
}
