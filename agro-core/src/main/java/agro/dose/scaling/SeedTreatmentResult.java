package agro.dose.scaling;

import agro.dose.ProductAmount;
import agro.dose.ProductPerArea;
import agro.dose.ProductPerSeedMass;
import agro.working.Working;
import java.util.Objects;
import java.util.Optional;

/**
 * A seed treatment that has been worked out.
 *
 * @param product product for the lot
 * @param perArea product that a field gets through the seed; nothing without a sowing rate
 * @param per100Kilograms the rate per 100 kg of seed
 * @param perShortHundredweight the rate per US hundredweight (100 lb) of seed
 * @param working the steps
 */
public record SeedTreatmentResult(
    ProductAmount product,
    Optional<ProductPerArea> perArea,
    ProductPerSeedMass per100Kilograms,
    ProductPerSeedMass perShortHundredweight,
    Working working)
    implements ScalingResult {

  /** Refuses nulls. */
  public SeedTreatmentResult {
    Objects.requireNonNull(product, "product");
    Objects.requireNonNull(perArea, "perArea");
    Objects.requireNonNull(per100Kilograms, "per100Kilograms");
    Objects.requireNonNull(perShortHundredweight, "perShortHundredweight");
    Objects.requireNonNull(working, "working");
  }
}
