package agro.dose;

import agro.units.Numbers;
import agro.working.Working;
import java.util.List;
import java.util.Locale;

/** The highest strength of the finished spray. */
final class SprayStrengthRule {

  private SprayStrengthRule() {}

  static Working check(LimitCheck check, List<DoseFinding> findings, Working start) {
    if (check.limits().of(SprayStrengthLimit.class).isEmpty()) {
      // Most labels state no strength; only those who recorded one are asked about it.
      return start;
    }
    var working = start;
    var rule = "maximum strength of the spray";
    for (var limit : check.applicable(SprayStrengthLimit.class, rule, Severity.WARNING, findings)) {
      working = one(check.plan(), limit, findings, working);
    }
    return working;
  }

  private static Working one(
      PlannedUse plan, SprayStrengthLimit limit, List<DoseFinding> findings, Working working) {
    var most = ((LabelEntry.Stated<ProductPerSprayVolume>) limit.entry()).value();
    if (plan.spray().isEmpty() || !(plan.dose() instanceof ProductPerArea dose)) {
      findings.add(
          notChecked(limit, most, "the spray volume, or the dose as product, is not stated"));
      return working;
    }
    var planned = dose.inSpray(plan.spray().get());
    var bound = most.perLitre();
    var now = planned.perLitre();
    if (!now.isLike(bound)) {
      findings.add(notChecked(limit, most, "the dose is " + now.words()));
      return working;
    }
    boolean over = DoseRules.exceeds(now.highNumber(), bound.highNumber());
    findings.add(
        new DoseFinding(
            over ? Severity.ERROR : Severity.NOTE,
            limit.words(),
            planned + (over ? ", over the maximum of " : ", within the maximum of ") + most + "."));
    return working.step(
        "Strength of the spray",
        "strength = dose per area ÷ spray volume",
        dose + " ÷ " + Numbers.plain(plan.spray().get().perArea().litresPerHectare()) + " L/ha",
        planned.toString(),
        DoseSources.DOSE_AND_VOLUME);
  }

  private static DoseFinding notChecked(
      SprayStrengthLimit limit, ProductPerSprayVolume most, String reason) {
    return new DoseFinding(
        Severity.WARNING,
        limit.words(),
        String.format(Locale.ROOT, "The label states %s. Not checked: %s.", most, reason));
  }
}
