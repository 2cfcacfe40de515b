package agro.dose.scaling;

import agro.report.InputProblem;
import agro.units.Mass;
import agro.units.MassPerMass;
import agro.units.MassPerVolume;
import agro.units.QuantityStyle;
import agro.units.Volume;
import agro.working.Caution;
import agro.working.Working;
import java.util.Objects;

/**
 * A stock solution from a solid: mass = concentration × volume / content. The concentration counts
 * what is dissolved of the content, so a powder of 20 % w/w is weighed five times.
 *
 * @param content content of the solid by mass, above 0 and up to 1000 g/kg
 * @param concentration wanted mass of the content per volume of solution, above zero
 * @param volume volume to which it is made up, above zero
 */
public record StockSolution(MassPerMass content, MassPerVolume concentration, Volume volume) {

  /** Refuses contents that no solid has. */
  public StockSolution {
    if (!(content.gramsPerKilogram() > 0 && content.gramsPerKilogram() <= 1000)) {
      throw InputProblem.of("the content of the solid is " + content)
          .expected("more than 0 and at most 1000 g/kg")
          .because("a solid holds something of what is dissolved and not more than itself")
          .mend("copy the content from the label: 20 % w/w are 200 g/kg");
    }
    ScalingChecks.aboveZero(
        concentration,
        "concentration of the stock solution",
        "a solution of nothing needs no weighing",
        "state the mass per volume, for example 1 g/L");
    ScalingChecks.aboveZero(
        volume,
        "volume of the stock solution",
        "the mass to weigh is proportional to it",
        "state the volume of the flask, for example 1 L");
  }

  /**
   * Weighs, printed in metric units.
   *
   * @return the mass to weigh and the steps
   */
  public StockWeighing evaluate() {
    return evaluate(QuantityStyle.METRIC);
  }

  /**
   * Weighs.
   *
   * @param style units of print
   * @return the mass to weigh and the steps
   */
  public StockWeighing evaluate(QuantityStyle style) {
    Objects.requireNonNull(style, "style");
    var dissolved = concentration.times(volume);
    var weighed = new Mass(dissolved.kilograms() * 1000 / content.gramsPerKilogram());
    var working =
        Working.of("Stock solution")
            .step(
                "dissolved content",
                "concentration × volume",
                style.print(concentration) + " × " + style.print(volume),
                style.print(dissolved),
                ScalingSources.UNITS_ALONE)
            .step(
                "mass to weigh",
                "dissolved content / content of the solid",
                style.print(dissolved) + " / (" + style.print(content) + ")",
                style.print(weighed) + ", made up to " + style.print(volume))
            .withCautions(Caution.all());
    return new StockWeighing(weighed, dissolved, working);
  }
}
