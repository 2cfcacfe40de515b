package agro.dose.scaling;

import agro.dose.ProductAmount;
import agro.dose.ProductPerPlant;
import agro.working.Working;
import java.util.Objects;
import java.util.Optional;

/**
 * A dose for seedlings.
 *
 * @param total product for all plants
 * @param perPlant product for one plant
 * @param perThousand product per 1000 plants
 * @param perTray product for one tray; nothing if the plants stand in none
 * @param working the steps
 */
public record NurseryDoseResult(
    ProductAmount total,
    ProductAmount perPlant,
    ProductPerPlant perThousand,
    Optional<ProductAmount> perTray,
    Working working)
    implements ScalingResult {

  /** Refuses nulls. */
  public NurseryDoseResult {
    Objects.requireNonNull(total, "total");
    Objects.requireNonNull(perPlant, "perPlant");
    Objects.requireNonNull(perThousand, "perThousand");
    Objects.requireNonNull(perTray, "perTray");
    Objects.requireNonNull(working, "working");
  }
}
