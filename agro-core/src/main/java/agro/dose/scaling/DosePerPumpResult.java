package agro.dose.scaling;

import agro.dose.ProductAmount;
import agro.dose.ProductPerArea;
import agro.working.Working;
import java.util.Objects;

/**
 * Product per pump and per area.
 *
 * @param perPump product in one pump
 * @param perLand product per unit of land
 * @param perHectare the same rate per hectare
 * @param working the steps
 */
public record DosePerPumpResult(
    ProductAmount perPump, ProductPerArea perLand, ProductPerArea perHectare, Working working)
    implements ScalingResult {

  /** Refuses nulls. */
  public DosePerPumpResult {
    Objects.requireNonNull(perPump, "perPump");
    Objects.requireNonNull(perLand, "perLand");
    Objects.requireNonNull(perHectare, "perHectare");
    Objects.requireNonNull(working, "working");
  }
}
