package agro.programme.interval;

import agro.programme.Spraying;
import agro.report.InputProblem;
import agro.working.Caution;
import agro.working.Presentable;
import agro.working.Presentation;
import agro.working.Working;
import java.util.Comparator;
import java.util.List;

/**
 * What the rules say to one application.
 *
 * @param spraying the application
 * @param findings what each rule says, broken ones first
 */
public record ApplicationVerdict(Spraying spraying, List<RuleFinding> findings)
    implements Presentable {

  /** Puts broken rules first and what is not recorded second. */
  public ApplicationVerdict {
    findings =
        findings.stream()
            .distinct()
            .sorted(Comparator.comparing(RuleFinding::permission).reversed())
            .toList();
  }

  /**
   * The strongest word of all rules.
   *
   * @return refused, not recorded or allowed
   */
  public Permission permission() {
    return findings.stream()
        .map(RuleFinding::permission)
        .reduce(Permission.ALLOWED, Permission::and);
  }

  /**
   * The findings of one permission.
   *
   * @param permission the permission
   * @return the findings
   */
  public List<RuleFinding> of(Permission permission) {
    return findings.stream().filter(each -> each.permission() == permission).toList();
  }

  /**
   * Refuses an application that breaks a rule. What is not recorded does not pass either, unless
   * the caller has looked at the label and says so.
   *
   * @return the application
   * @throws InputProblem naming label, rule and dates
   */
  public Spraying require() {
    if (permission() != Permission.ALLOWED) {
      throw problem(findings.get(0));
    }
    return spraying;
  }

  private InputProblem problem(RuleFinding worst) {
    boolean broken = worst.permission() == Permission.REFUSED;
    return InputProblem.of(
            spraying.mixture()
                + " on "
                + spraying.field()
                + " on "
                + spraying.start().toLocalDate()
                + (broken ? " breaks " : " is held against ")
                + worst.record()
                + ": "
                + worst.limit())
        .expected(worst.sentence().replaceAll("\\.$", ""))
        .because(
            broken
                ? "a limit of the label or of a local rule is no advice"
                : "what is not recorded may still be a limit")
        .mend(
            worst
                .firstAllowed()
                .map(day -> "apply on " + day + " or later, if the other rules allow it")
                .orElse(
                    broken
                        ? "choose another day, dose or product"
                        : "look at the label and add what it says to the table"));
  }

  /**
   * The rules one by one.
   *
   * @return a step for each finding
   */
  public Working working() {
    var working = Working.of("Check of " + spraying.mixture() + " on " + spraying.field());
    for (var each : findings) {
      working =
          working.step(
              each.record() + ", " + each.rule().words(),
              each.limit(),
              each.sentence(),
              each.permission().words(),
              QuestionWorking.sources(each.rule()));
    }
    return working.withCautions(Caution.all());
  }

  @Override
  public Presentation presentation() {
    return Presentation.titled(spraying.mixture() + " on " + spraying.field())
        .fact("Beginning", spraying.start().toString())
        .fact("Answer", permission().words())
        .table(RuleFinding.table("What the rules say", findings))
        .working(working())
        .build();
  }
}
