package agro.dose.scaling;

import agro.dose.ProductPerArea;
import agro.dose.ProductPerTreatedArea;
import agro.dose.SprayVolume;
import agro.units.Length;
import agro.units.Numbers;
import agro.units.QuantityStyle;
import agro.working.Caution;
import agro.working.Working;
import java.util.Objects;

/**
 * Bands over the rows: amount per field area = amount per treated area × band width / row spacing.
 * The strength in the tank is that of the broadcast spray; only the ground is less.
 *
 * @param onBand product per area of the bands
 * @param spray spray per area of the bands
 * @param bandWidth width of a band, above zero and not above the row spacing
 * @param rowSpacing distance from row to row, above zero
 */
public record BandTreatment(
    ProductPerTreatedArea onBand, TreatedSprayVolume spray, Length bandWidth, Length rowSpacing) {

  /** Refuses bands that do not fit between the rows. */
  public BandTreatment {
    Objects.requireNonNull(onBand, "onBand");
    Objects.requireNonNull(spray, "spray");
    ScalingChecks.aboveZero(
        rowSpacing,
        "row spacing",
        "the treated share is band width over row spacing",
        "measure over ten rows and divide by ten");
    ScalingChecks.aboveZero(
        bandWidth,
        "band width",
        "a band of no width treats nothing",
        "measure the width that gets wet");
    ScalingChecks.notAbove(
        bandWidth,
        "band width",
        rowSpacing,
        "row spacing",
        "bands wider than the spacing overlap, and that ground gets the dose twice",
        "check the units of both; bands as wide as the spacing are a broadcast treatment");
  }

  /**
   * The rate on the band that gives the strip the dose of a broadcast treatment: the same figure,
   * counted on treated ground.
   *
   * @param broadcast product per area of field, for a treatment of the whole ground
   * @return product per treated area
   */
  public static ProductPerTreatedArea asOnBand(ProductPerArea broadcast) {
    return new ProductPerTreatedArea(broadcast.amount(), broadcast.per());
  }

  /**
   * The share of the field that is treated.
   *
   * @return band width over row spacing, above 0 and up to 1
   */
  public double treatedShare() {
    return Math.min(1, bandWidth.ratioTo(rowSpacing));
  }

  /**
   * Scales, printed in metric units.
   *
   * @return figures per treated area and per area of field side by side, and the steps
   */
  public BandTreatmentResult evaluate() {
    return evaluate(QuantityStyle.METRIC);
  }

  /**
   * Scales.
   *
   * @param style units of print
   * @return figures per treated area and per area of field side by side, and the steps
   */
  public BandTreatmentResult evaluate(QuantityStyle style) {
    double share = treatedShare();
    var perField = new ProductPerArea(onBand.amount().times(share), onBand.per());
    var fieldSpray = new SprayVolume(spray.perTreatedArea().times(share));
    var printedShare = Numbers.significant(share, 6);
    var working =
        Working.of("Band treatment")
            .step(
                "treated share of the field",
                "band width / row spacing",
                style.print(bandWidth) + " / " + style.print(rowSpacing),
                printedShare,
                ScalingSources.BAND)
            .step(
                "product per area of field",
                "product per treated area × share",
                onBand.print(style) + " × " + printedShare,
                perField.print(style))
            .step(
                "spray per area of field",
                "spray per treated area × share",
                style.print(spray.perTreatedArea()) + " × " + printedShare,
                fieldSpray.print(style))
            .step(
                "strength in the tank",
                "product / spray, the same on both counts",
                onBand.print(style) + " / (" + style.print(spray.perTreatedArea()) + ")",
                perField.inSpray(fieldSpray).print(style))
            .withCautions(Caution.all());
    var strength = perField.inSpray(fieldSpray).print(style);
    var table =
        new SideBySide("Bands and field")
            .row("Product", onBand.print(style), perField.print(style))
            .row("Spray", style.print(spray.perTreatedArea()), fieldSpray.print(style))
            .row("Strength of the spray", strength, strength)
            .table();
    return new BandTreatmentResult(share, onBand, perField, spray, fieldSpray, table, working);
  }
}
