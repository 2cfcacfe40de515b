package agro.dose.scaling;

import agro.dose.ProductPerArea;
import agro.dose.ProductPerRowLength;
import agro.dose.WrittenAmount;
import agro.units.Area;
import agro.units.Length;
import agro.units.LengthUnit;
import agro.units.Numbers;
import agro.units.QuantityStyle;
import agro.working.Caution;
import agro.working.Working;
import java.util.Objects;

/**
 * A dose per area of field put along the rows: g/m = kg/ha × row spacing in m / 10. The whole dose
 * of the strip between two rows lies in the row.
 *
 * @param rate product per area of field
 * @param rowSpacing distance from row to row, above zero
 */
public record RowGranules(ProductPerArea rate, Length rowSpacing) {

  /** Refuses rows without a distance. */
  public RowGranules {
    Objects.requireNonNull(rate, "rate");
    ScalingChecks.aboveZero(
        rowSpacing,
        "row spacing",
        "each row serves a strip as wide as the spacing",
        "measure over ten rows and divide by ten");
  }

  /**
   * Scales, printed in metric units.
   *
   * @return product per length of row and the steps
   */
  public RowGranulesResult evaluate() {
    return evaluate(QuantityStyle.METRIC);
  }

  /**
   * Scales.
   *
   * @param style units of print
   * @return product per length of row and the steps
   */
  public RowGranulesResult evaluate(QuantityStyle style) {
    var rowPerHectare = new Area(10_000).dividedBy(rowSpacing);
    var strip = new Length(1).times(rowSpacing);
    var perMetre = new ProductPerRowLength(rate.on(strip), WrittenAmount.one(LengthUnit.METRE));
    var working =
        Working.of("Product along the row")
            .step(
                "row per hectare",
                "10 000 m² / row spacing",
                "10000 m² / " + style.print(rowSpacing),
                Numbers.significant(rowPerHectare.metres(), 6) + " m",
                ScalingSources.UNITS_ALONE)
            .step(
                "product per length of row",
                "rate × row spacing",
                rate + " × " + style.print(rowSpacing),
                perMetre.print(style),
                ScalingSources.UNITS_ALONE)
            .withCautions(Caution.all());
    return new RowGranulesResult(perMetre, rowPerHectare, working);
  }
}
