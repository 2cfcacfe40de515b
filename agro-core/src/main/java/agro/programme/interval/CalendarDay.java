package agro.programme.interval;

import java.time.LocalDate;
import java.util.List;
import java.util.Objects;

/**
 * What is allowed on one day.
 *
 * @param day the day
 * @param permission the strongest word of all rules
 * @param findings what the rules say that do not simply allow
 */
public record CalendarDay(LocalDate day, Permission permission, List<RuleFinding> findings) {

  /** Copies the findings. */
  public CalendarDay {
    Objects.requireNonNull(day, "day");
    Objects.requireNonNull(permission, "permission");
    findings = List.copyOf(findings);
  }

  static CalendarDay of(LocalDate day, List<RuleFinding> findings) {
    var permission =
        findings.stream().map(RuleFinding::permission).reduce(Permission.ALLOWED, Permission::and);
    return new CalendarDay(
        day,
        permission,
        findings.stream().filter(each -> each.permission() != Permission.ALLOWED).toList());
  }

  /**
   * The sign of the day in print: the letters of the rules that refuse it, a question mark where
   * one is not recorded, nothing where it is allowed.
   *
   * @return at most two letters, in the order of the rules
   */
  public String mark() {
    if (permission == Permission.ALLOWED) {
      return "";
    }
    if (permission == Permission.NOT_RECORDED) {
      return "?";
    }
    var letters =
        findings.stream()
            .filter(each -> each.permission() == Permission.REFUSED)
            .map(each -> each.rule())
            .distinct()
            .sorted()
            .map(LimitRule::mark)
            .limit(2)
            .toList();
    return String.join("", letters);
  }
}
