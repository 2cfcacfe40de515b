package agro.dose.scaling;

import agro.dose.DoseFinding;
import agro.dose.ProductAmount;
import agro.dose.ProductPerArea;
import agro.dose.ProductPerTreatedArea;
import agro.dose.SprayVolume;
import agro.working.Presentation;
import agro.working.ResultTable;
import agro.working.Working;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * A spot treatment on the treated ground and in the field.
 *
 * @param product product for the spray that is made up
 * @param spray spray per treated area
 * @param onSpots product per treated area
 * @param perField product per area of field; nothing if the field is not known
 * @param fieldSpray spray per area of field; nothing if the field is not known
 * @param findings how the dose on treated ground stands to the highest dose of the label
 * @param sideBySide figures for treated ground and field in the reader's units
 * @param working the steps
 */
public record SpotTreatmentResult(
    ProductAmount product,
    TreatedSprayVolume spray,
    ProductPerTreatedArea onSpots,
    Optional<ProductPerArea> perField,
    Optional<SprayVolume> fieldSpray,
    List<DoseFinding> findings,
    ResultTable sideBySide,
    Working working)
    implements ScalingResult {

  /** Copies the list. */
  public SpotTreatmentResult {
    Objects.requireNonNull(product, "product");
    Objects.requireNonNull(spray, "spray");
    Objects.requireNonNull(onSpots, "onSpots");
    Objects.requireNonNull(perField, "perField");
    Objects.requireNonNull(fieldSpray, "fieldSpray");
    findings = List.copyOf(findings);
    Objects.requireNonNull(sideBySide, "sideBySide");
    Objects.requireNonNull(working, "working");
  }

  @Override
  public Presentation presentation() {
    return SideBySide.presentation(this, sideBySide);
  }
}
