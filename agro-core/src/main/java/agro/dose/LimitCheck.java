package agro.dose;

import agro.working.Caution;
import agro.working.Working;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * Checks a planned dose against the limits of a label. Over a limit is an error; below the lowest
 * dose is a warning; a limit that nobody recorded is a warning and never taken for no limit; what
 * the plan does not state cannot be checked, and that is a warning too.
 *
 * @param limits limits of the label
 * @param plan planned application
 */
public record LimitCheck(LabelLimits limits, PlannedUse plan) {

  /** Refuses nulls. */
  public LimitCheck {
    Objects.requireNonNull(limits, "limits");
    Objects.requireNonNull(plan, "plan");
  }

  /**
   * The check of a plan against the limits of a label.
   *
   * @param limits limits of the label
   * @param plan planned application
   * @return what was found
   */
  public static LimitCheckResult check(LabelLimits limits, PlannedUse plan) {
    return new LimitCheck(limits, plan).evaluate();
  }

  /**
   * Does the check.
   *
   * @return what was found, errors first
   */
  public LimitCheckResult evaluate() {
    var findings = new ArrayList<DoseFinding>();
    var working = Working.of("Check of " + plan.dose() + " against the label");
    working = DoseRules.check(this, findings, working);
    working = SprayStrengthRule.check(this, findings, working);
    TimingRules.check(this, findings);
    BufferRule.check(this, findings);
    findings.sort((a, b) -> b.severity().compareTo(a.severity()));
    return new LimitCheckResult(limits, plan, findings, working.withCautions(Caution.all()));
  }

  /**
   * Sorts out the limits of one kind that can be checked now; says of the others why not.
   *
   * @return limits with a stated value whose condition holds
   */
  <L extends LabelLimit> List<L> applicable(
      Class<L> kind, String rule, Severity missing, List<DoseFinding> findings) {
    return applicable(limits.of(kind), rule, missing, findings);
  }

  <L extends LabelLimit> List<L> applicable(
      List<L> entered, String rule, Severity missing, List<DoseFinding> findings) {
    var found = new ArrayList<L>();
    if (entered.isEmpty()) {
      findings.add(notRecorded(missing, rule));
    }
    for (var limit : entered) {
      if (!ruledOut(limit, findings)) {
        if (limit.entry() instanceof LabelEntry.Stated<?>) {
          found.add(limit);
        } else if (limit.entry() instanceof LabelEntry.NotRecorded<?>) {
          findings.add(notRecorded(missing, limit.words()));
        } else {
          findings.add(
              new DoseFinding(Severity.NOTE, limit.words(), "The label says that there is none."));
        }
      }
    }
    return found;
  }

  private boolean ruledOut(LabelLimit limit, List<DoseFinding> findings) {
    if (limit.condition().isEmpty()) {
      return false;
    }
    var condition = limit.condition().get();
    var holds = plan.circumstances().get(condition);
    if (holds == null) {
      findings.add(
          new DoseFinding(
              Severity.WARNING,
              limit.words(),
              "The label sets "
                  + limit.entry()
                  + " for \""
                  + condition
                  + "\". Not checked: the plan does not say whether that holds."));
      return true;
    }
    return !holds;
  }

  private static DoseFinding notRecorded(Severity severity, String rule) {
    return new DoseFinding(
        severity,
        rule,
        "Not recorded. That does not mean that there is no limit: look it up on the label and enter"
            + " it.");
  }
}
