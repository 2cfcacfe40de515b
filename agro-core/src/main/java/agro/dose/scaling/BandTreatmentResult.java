package agro.dose.scaling;

import agro.dose.LabelLimits;
import agro.dose.LimitCheckResult;
import agro.dose.ProductPerArea;
import agro.dose.ProductPerSprayVolume;
import agro.dose.ProductPerTreatedArea;
import agro.dose.SprayVolume;
import agro.dose.Strength;
import agro.working.Presentation;
import agro.working.ResultTable;
import agro.working.Working;
import java.util.Objects;
import java.util.Optional;

/**
 * A band treatment, on the treated ground and on the field.
 *
 * @param treatedShare share of the field that is treated
 * @param onBand product per treated area
 * @param perField product per area of field
 * @param onBandSpray spray per treated area
 * @param fieldSpray spray per area of field
 * @param sideBySide figures for treated ground and field in the reader's units
 * @param working the steps
 */
public record BandTreatmentResult(
    double treatedShare,
    ProductPerTreatedArea onBand,
    ProductPerArea perField,
    TreatedSprayVolume onBandSpray,
    SprayVolume fieldSpray,
    ResultTable sideBySide,
    Working working)
    implements ScalingResult {

  /** Refuses nulls. */
  public BandTreatmentResult {
    Objects.requireNonNull(onBand, "onBand");
    Objects.requireNonNull(perField, "perField");
    Objects.requireNonNull(onBandSpray, "onBandSpray");
    Objects.requireNonNull(fieldSpray, "fieldSpray");
    Objects.requireNonNull(sideBySide, "sideBySide");
    Objects.requireNonNull(working, "working");
  }

  /**
   * The strength of the spray, which is the same on both counts.
   *
   * @return product per volume of spray
   */
  public ProductPerSprayVolume strength() {
    return perField.inSpray(fieldSpray);
  }

  /**
   * Holds the dose on the bands against the highest dose of a label.
   *
   * @param limits limits of the label
   * @param content strength of the product, needed where the label limits active ingredient
   * @return findings about the highest dose
   */
  public LimitCheckResult against(LabelLimits limits, Optional<Strength> content) {
    return new TreatedAreaCheck(limits, onBand, content).evaluate();
  }

  @Override
  public Presentation presentation() {
    return SideBySide.presentation(this, sideBySide);
  }
}
