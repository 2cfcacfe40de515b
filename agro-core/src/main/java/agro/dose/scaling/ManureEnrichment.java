package agro.dose.scaling;

import agro.dose.ProductAmount;
import agro.dose.ProductPerArea;
import agro.report.InputProblem;
import agro.units.Mass;
import agro.units.MassPerArea;
import agro.units.QuantityStyle;
import agro.working.Caution;
import agro.working.Working;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * Manure enriched with living agents: product of each agent, all together, water to reach a
 * moisture, and what a hectare gets when the manure is spread. Amounts refer to the manure as it is
 * weighed, before agents and water are added; on the field they are per tonne of that manure.
 *
 * @param agents the agents, at least one, each with a name of its own
 * @param manure mass as it lies, above zero
 * @param now moisture that it has
 * @param wanted moisture that is asked for
 * @param spread mass of manure per area of field, weighed as above; nothing if it is not known
 */
public record ManureEnrichment(
    List<ManureAgent> agents,
    Mass manure,
    SubstrateMoisture now,
    MoistureRange wanted,
    Optional<MassPerArea> spread) {

  /** Refuses manure without agents and two agents of one name. */
  public ManureEnrichment {
    agents = List.copyOf(agents);
    Objects.requireNonNull(spread, "spread");
    if (agents.isEmpty()) {
      throw InputProblem.of("no agent is given")
          .expected("at least one agent with its rate")
          .because("manure without an agent is not enriched")
          .mend("add an agent, or work out the water alone with WaterForMoisture");
    }
    var names = new HashSet<String>();
    for (var agent : agents) {
      if (!names.add(agent.name())) {
        throw InputProblem.of("two agents are called " + agent.name())
            .expected("a name of its own for each agent")
            .because("two amounts under one name are measured out once, or one of them twice")
            .mend("add up the rates, or give the names apart");
      }
    }
    ScalingChecks.aboveZero(
        manure, "mass of the manure", "all amounts are in proportion to it", "weigh the heap");
    Objects.requireNonNull(now, "now");
    Objects.requireNonNull(wanted, "wanted");
  }

  /**
   * An enrichment whose spreading is not stated.
   *
   * @param agents the agents
   * @param manure mass as it lies
   * @param now moisture that it has
   * @param wanted moisture that is asked for
   * @return the enrichment
   */
  public static ManureEnrichment of(
      List<ManureAgent> agents, Mass manure, SubstrateMoisture now, MoistureRange wanted) {
    return new ManureEnrichment(agents, manure, now, wanted, Optional.empty());
  }

  /**
   * The same manure spread on a field.
   *
   * @param manurePerArea mass of manure per area, weighed before agents and water
   * @return the enrichment
   */
  public ManureEnrichment spreadAt(MassPerArea manurePerArea) {
    return new ManureEnrichment(agents, manure, now, wanted, Optional.of(manurePerArea));
  }

  /**
   * Works out amounts and water, printed in metric units.
   *
   * @return amounts, water and the steps
   */
  public ManureEnrichmentResult evaluate() {
    return evaluate(QuantityStyle.METRIC);
  }

  /**
   * Works out amounts and water.
   *
   * @param style units of print
   * @return amounts, water and the steps
   */
  public ManureEnrichmentResult evaluate(QuantityStyle style) {
    var moisture = new WaterForMoisture(manure, now, wanted).evaluate(style);
    var parts = new ArrayList<ManureEnrichmentResult.Part>();
    var working = Working.of("Manure enriched with living agents");
    for (var agent : agents) {
      var amount = agent.amount(manure, moisture.dryMatter());
      parts.add(new ManureEnrichmentResult.Part(agent.name(), amount, perArea(amount)));
      working =
          working.step(
              agent.name(),
              "rate × mass of manure",
              agent.rateText()
                  + " × "
                  + style.print(agent.perWet().isPresent() ? manure : moisture.dryMatter()),
              amount.print(style) + spreadText(amount, style),
              ScalingSources.UNITS_ALONE);
    }
    var totals = totals(parts);
    working =
        working
            .step(
                "all agents together",
                "sum of the agents",
                "",
                String.join(" and ", totals.stream().map(amount -> amount.print(style)).toList()))
            .followedBy(moisture.working())
            .withCautions(Caution.all());
    return new ManureEnrichmentResult(
        parts, totals, moisture.water(), moisture.dryMatter(), moisture.findings(), working);
  }

  private Optional<ProductPerArea> perArea(ProductAmount amount) {
    return spread.map(
        perField ->
            ProductPerArea.ofHectare(
                amount.times(perField.kilogramsPerHectare() / manure.kilograms())));
  }

  private String spreadText(ProductAmount amount, QuantityStyle style) {
    return perArea(amount).map(rate -> "; spread: " + rate.print(style)).orElse("");
  }

  /** Sums of what can be added: liquids, solids and each sort of living units apart. */
  private static List<ProductAmount> totals(List<ManureEnrichmentResult.Part> parts) {
    var totals = new ArrayList<ProductAmount>();
    for (var part : parts) {
      boolean added = false;
      for (int i = 0; i < totals.size() && !added; i++) {
        if (totals.get(i).isLike(part.amount())) {
          totals.set(i, totals.get(i).plus(part.amount()));
          added = true;
        }
      }
      if (!added) {
        totals.add(part.amount());
      }
    }
    return totals;
  }
}
