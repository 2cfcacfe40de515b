package agro.dose.scaling;

import agro.dose.ProductAmount;
import agro.dose.ProductPerDrySubstrate;
import agro.dose.ProductPerWetSubstrate;
import agro.report.InputProblem;
import agro.units.Mass;
import java.util.Objects;
import java.util.Optional;

/**
 * A living agent that is mixed into manure, with its rate per tonne of wet or of dry manure.
 *
 * @param name name on the pack
 * @param perWet rate per mass of manure as it lies; nothing if the rate is per dry matter
 * @param perDry rate per mass of dry matter; nothing if the rate is per wet mass
 */
public record ManureAgent(
    String name, Optional<ProductPerWetSubstrate> perWet, Optional<ProductPerDrySubstrate> perDry) {

  /** Refuses an agent without a name, without a rate or with two. */
  public ManureAgent {
    name = ScalingChecks.named(name, "agent");
    Objects.requireNonNull(perWet, "perWet");
    Objects.requireNonNull(perDry, "perDry");
    if (perWet.isPresent() == perDry.isPresent()) {
      throw InputProblem.of(
              "the agent "
                  + name
                  + " has "
                  + (perWet.isPresent() ? "a rate per wet and one per dry manure" : "no rate"))
          .expected("one rate, per wet or per dry manure")
          .because("the two differ by the water of the manure")
          .mend("take the one that the label states");
    }
  }

  /**
   * An agent with a rate per wet manure.
   *
   * @param name name on the pack
   * @param rate product per mass of manure as it lies, before water is added
   * @return the agent
   */
  public static ManureAgent of(String name, ProductPerWetSubstrate rate) {
    return new ManureAgent(name, Optional.of(rate), Optional.empty());
  }

  /**
   * An agent with a rate per dry matter.
   *
   * @param name name on the pack
   * @param rate product per mass of dry matter
   * @return the agent
   */
  public static ManureAgent of(String name, ProductPerDrySubstrate rate) {
    return new ManureAgent(name, Optional.empty(), Optional.of(rate));
  }

  ProductAmount amount(Mass wet, Mass dry) {
    return perWet.map(rate -> rate.in(wet)).orElseGet(() -> perDry.orElseThrow().in(dry));
  }

  String rateText() {
    return perWet.map(Object::toString).orElseGet(() -> perDry.orElseThrow().toString());
  }
}
