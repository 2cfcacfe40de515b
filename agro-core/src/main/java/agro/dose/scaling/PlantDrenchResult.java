package agro.dose.scaling;

import agro.dose.ProductPerArea;
import agro.dose.ProductPerPlant;
import agro.dose.ProductPerTreatedArea;
import agro.units.Volume;
import agro.working.Presentation;
import agro.working.ResultTable;
import agro.working.Working;
import java.util.Objects;
import java.util.Optional;

/**
 * A drench that has been worked out.
 *
 * @param plantsPerHectare plants on a hectare, not rounded
 * @param perPlant product per plant
 * @param solutionPerPlant solution per plant; nothing if the water is not known
 * @param perField product per area of field
 * @param perWettedArea product per ground that is wetted; nothing if it is not known
 * @param sideBySide figures for treated ground and field in the reader's units
 * @param working the steps
 */
public record PlantDrenchResult(
    double plantsPerHectare,
    ProductPerPlant perPlant,
    Optional<Volume> solutionPerPlant,
    ProductPerArea perField,
    Optional<ProductPerTreatedArea> perWettedArea,
    ResultTable sideBySide,
    Working working)
    implements ScalingResult {

  /** Refuses nulls. */
  public PlantDrenchResult {
    Objects.requireNonNull(perPlant, "perPlant");
    Objects.requireNonNull(solutionPerPlant, "solutionPerPlant");
    Objects.requireNonNull(perField, "perField");
    Objects.requireNonNull(perWettedArea, "perWettedArea");
    Objects.requireNonNull(sideBySide, "sideBySide");
    Objects.requireNonNull(working, "working");
  }

  @Override
  public Presentation presentation() {
    return SideBySide.presentation(this, sideBySide);
  }
}
