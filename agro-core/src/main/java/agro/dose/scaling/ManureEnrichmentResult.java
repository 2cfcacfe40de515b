package agro.dose.scaling;

import agro.dose.DoseFinding;
import agro.dose.ProductAmount;
import agro.dose.ProductPerArea;
import agro.units.Mass;
import agro.units.QuantityRange;
import agro.working.Working;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * Enriched manure that has been worked out.
 *
 * @param parts the agents in order
 * @param totals all agents together: solids, liquids and each sort of living units apart
 * @param water water to add, never below zero
 * @param dryMatter dry matter of the manure
 * @param findings a warning where the manure is wetter than asked
 * @param working the steps
 */
public record ManureEnrichmentResult(
    List<Part> parts,
    List<ProductAmount> totals,
    QuantityRange<Mass> water,
    Mass dryMatter,
    List<DoseFinding> findings,
    Working working)
    implements ScalingResult {

  /**
   * One agent.
   *
   * @param name name on the pack
   * @param amount product for the manure
   * @param perArea product per area of field; nothing if the spreading is not stated
   */
  public record Part(String name, ProductAmount amount, Optional<ProductPerArea> perArea) {
    /** Refuses nulls. */
    public Part {
      Objects.requireNonNull(name, "name");
      Objects.requireNonNull(amount, "amount");
      Objects.requireNonNull(perArea, "perArea");
    }
  }

  /** Copies the lists. */
  public ManureEnrichmentResult {
    parts = List.copyOf(parts);
    totals = List.copyOf(totals);
    Objects.requireNonNull(water, "water");
    Objects.requireNonNull(dryMatter, "dryMatter");
    findings = List.copyOf(findings);
    Objects.requireNonNull(working, "working");
  }
}
