package agro.dose.scaling;

import agro.report.InputProblem;
import agro.source.Reference;
import agro.units.MassPerMass;
import agro.units.QuantityRange;
import java.util.Objects;

/**
 * How manure is enriched and kept.
 *
 * @param perAgent mass of each agent per mass of wet manure
 * @param moisture moisture at which it is kept
 * @param days days for which it is kept, 1 or more
 * @param source where the figures come from
 */
public record ManurePractice(
    QuantityRange<MassPerMass> perAgent, MoistureRange moisture, int days, Reference source) {

  /** 2 to 3 kg of each agent to a tonne, 15 days at 25 to 30 % of the wet mass. */
  public static final ManurePractice COMMON =
      new ManurePractice(
          new QuantityRange<>(new MassPerMass(2), new MassPerMass(3)),
          new MoistureRange(WetBasisMoisture.percent(25), WetBasisMoisture.percent(30)),
          15,
          ScalingSources.MANURE_PRACTICE);

  /** Refuses days that are no time. */
  public ManurePractice {
    Objects.requireNonNull(perAgent, "perAgent");
    Objects.requireNonNull(moisture, "moisture");
    Objects.requireNonNull(source, "source");
    if (days < 1) {
      throw InputProblem.of("manure is kept " + days + " days")
          .expected("1 day or more")
          .because("the agents need time to grow through the heap")
          .mend("state the days between mixing and spreading");
    }
  }
}
