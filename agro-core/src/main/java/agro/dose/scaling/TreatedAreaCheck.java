package agro.dose.scaling;

import agro.dose.DoseFinding;
import agro.dose.LabelLimits;
import agro.dose.LimitCheck;
import agro.dose.LimitCheckResult;
import agro.dose.PlannedUse;
import agro.dose.ProductPerArea;
import agro.dose.ProductPerTreatedArea;
import agro.dose.Strength;
import java.util.Objects;
import java.util.Optional;

/**
 * Holds a dose on treated ground against the highest dose per area of the label. The label's
 * hectare is taken as the hectare that gets wet: spots in a large field are not thinned by the
 * ground between them.
 *
 * @param limits limits of the label
 * @param dose product per treated area
 * @param strength strength of the product, needed where the label limits active ingredient
 */
public record TreatedAreaCheck(
    LabelLimits limits, ProductPerTreatedArea dose, Optional<Strength> strength) {

  /** Refuses nulls. */
  public TreatedAreaCheck {
    Objects.requireNonNull(limits, "limits");
    Objects.requireNonNull(dose, "dose");
    Objects.requireNonNull(strength, "strength");
  }

  /**
   * Checks the dose.
   *
   * @return findings about the highest dose alone: an error above it, a warning where it is not
   *     recorded
   */
  public LimitCheckResult evaluate() {
    var plan = PlannedUse.of(ProductPerArea.ofHectare(dose.perHectare()));
    if (strength.isPresent()) {
      plan = plan.withStrength(strength.get());
    }
    var all = LimitCheck.check(limits, plan);
    var doses =
        all.findings().stream()
            .filter(finding -> finding.rule().startsWith("maximum dose"))
            .map(TreatedAreaCheck::onTreatedGround)
            .toList();
    return new LimitCheckResult(limits, plan, doses, all.working());
  }

  private static DoseFinding onTreatedGround(DoseFinding finding) {
    return new DoseFinding(
        finding.severity(), finding.rule() + ", on treated ground", finding.sentence());
  }
}
