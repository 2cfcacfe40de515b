package agro.dose.scaling;

import agro.dose.ActivePerArea;
import agro.units.Density;
import agro.units.Length;
import agro.units.Mass;
import agro.units.MassPerMass;
import agro.units.QuantityRange;
import agro.units.QuantityStyle;
import agro.working.Caution;
import agro.working.Working;
import java.util.Objects;

/**
 * What a dose gives in the soil when it is mixed evenly into a layer: concentration = dose per area
 * / (depth × bulk density). 1 kg/ha in 15 cm at 1.3 g/cm³ is 0.5128 mg/kg of dry soil.
 *
 * @param dose active ingredient per area of field
 * @param depth depth of the layer, above zero
 * @param bulkDensity dry bulk density of the soil
 */
public record SoilConcentration(ActivePerArea dose, Length depth, Density bulkDensity) {

  /** Refuses a layer without depth. */
  public SoilConcentration {
    Objects.requireNonNull(dose, "dose");
    Objects.requireNonNull(bulkDensity, "bulkDensity");
    ScalingChecks.aboveZero(
        depth,
        "depth of the layer",
        "the dose is divided by the soil of the layer",
        "state how deep it is mixed in, for example 15 cm");
  }

  /**
   * Works out the concentration, printed in metric units.
   *
   * @return concentration in dry soil and the steps
   */
  public SoilConcentrationResult evaluate() {
    return evaluate(QuantityStyle.METRIC);
  }

  /**
   * Works out the concentration.
   *
   * @param style units of print
   * @return concentration in dry soil and the steps
   */
  public SoilConcentrationResult evaluate(QuantityStyle style) {
    double soil = depth.metres() * 10_000 * 1000 * bulkDensity.kilogramsPerLitre();
    var range = dose.perHectare().range();
    var concentration =
        new QuantityRange<>(
            new MassPerMass(range.low().kilograms() * 1000 / soil),
            new MassPerMass(range.high().kilograms() * 1000 / soil));
    var soilText = QuantityStyle.METRIC.withDigits(6).print(new Mass(soil));
    var working =
        Working.of("Concentration in the soil")
            .step(
                "soil of the layer on a hectare",
                "10 000 m² × depth × bulk density",
                "10000 m² × " + style.print(depth) + " × " + style.print(bulkDensity),
                soilText,
                ScalingSources.UNITS_ALONE)
            .step(
                "concentration in dry soil",
                "dose / soil of the layer",
                dose.perHectare().print(QuantityStyle.METRIC) + " / " + soilText,
                style.printRange(concentration))
            .withCautions(Caution.all());
    return new SoilConcentrationResult(concentration, working);
  }
}
