package agro.dose.scaling;

import agro.dose.ProductAmount;
import agro.dose.ProductPerArea;
import agro.units.AreaUnit;
import agro.units.Numbers;
import agro.units.QuantityStyle;
import agro.working.Caution;
import agro.working.Working;
import java.util.Objects;

/**
 * Product in one pump and product per area, either from the other: product per pump = product per
 * area × area of a pump.
 *
 * @param pumps pumps per unit of land
 * @param perPump product in one pump
 */
public record DosePerPump(PumpedSpray pumps, ProductAmount perPump) {

  /** Refuses nulls. */
  public DosePerPump {
    Objects.requireNonNull(pumps, "pumps");
    Objects.requireNonNull(perPump, "perPump");
  }

  /**
   * Product per pump from the label rate.
   *
   * @param pumps pumps per unit of land
   * @param rate product per area of field
   * @return the dose
   */
  public static DosePerPump of(PumpedSpray pumps, ProductPerArea rate) {
    return new DosePerPump(pumps, pumps.pumps().dosePerPump(rate));
  }

  /**
   * Works out both, printed in metric units.
   *
   * @return product per pump, per unit of land and per hectare, and the steps
   */
  public DosePerPumpResult evaluate() {
    return evaluate(QuantityStyle.METRIC);
  }

  /**
   * Works out both.
   *
   * @param style units of print
   * @return product per pump, per unit of land and per hectare, and the steps
   */
  public DosePerPumpResult evaluate(QuantityStyle style) {
    var land = pumps.pumps().per();
    double number = pumps.pumps().number();
    var perLand = perPump.times(number);
    double hectares = AreaUnit.HECTARE.fromBase(land.inBaseUnit());
    var perField = ProductPerArea.ofHectare(perLand.times(1 / hectares));
    var working =
        Working.of("Product per pump")
            .step(
                "product per " + land,
                "product per pump × pumps",
                perPump.print(style) + " × " + Numbers.significant(number, 5),
                perLand.print(style),
                ScalingSources.UNITS_ALONE)
            .step(
                "product per hectare",
                "product per unit of land / its area",
                perLand.print(style) + " / " + Numbers.significant(hectares, 7) + " ha",
                perField.print(style.per(AreaUnit.HECTARE)))
            .followedBy(pumps.evaluate(style).working())
            .withCautions(Caution.all());
    return new DosePerPumpResult(perPump, new ProductPerArea(perLand, land), perField, working);
  }
}
