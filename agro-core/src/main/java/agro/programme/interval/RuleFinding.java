package agro.programme.interval;

import agro.working.Cell;
import agro.working.ResultTable;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * What one rule says.
 *
 * @param permission kept, not recorded, or broken
 * @param rule the rule
 * @param record the label record or local rule that it stands in
 * @param limit the limit as recorded, for example {@code "interval between applications per crop:
 *     10 days"}
 * @param sentence what was found, with its dates
 * @param days days that decide: earlier applications, picking days
 * @param firstAllowed first day on which this rule alone is kept; nothing if it cannot be told
 */
public record RuleFinding(
    Permission permission,
    LimitRule rule,
    String record,
    String limit,
    String sentence,
    List<LocalDate> days,
    Optional<LocalDate> firstAllowed) {

  /** Copies the days. */
  public RuleFinding {
    Objects.requireNonNull(permission, "permission");
    Objects.requireNonNull(rule, "rule");
    Objects.requireNonNull(record, "record");
    Objects.requireNonNull(limit, "limit");
    Objects.requireNonNull(sentence, "sentence");
    days = List.copyOf(days);
    Objects.requireNonNull(firstAllowed, "firstAllowed");
  }

  static RuleFinding of(
      Permission permission, LimitRule rule, String record, String limit, String sentence) {
    return new RuleFinding(permission, rule, record, limit, sentence, List.of(), Optional.empty());
  }

  static RuleFinding notRecorded(LimitRule rule, String record, String limit) {
    return of(
        Permission.NOT_RECORDED,
        rule,
        record,
        limit + ": not recorded",
        "Not recorded, which does not mean that there is no limit: look at the label.");
  }

  RuleFinding on(List<LocalDate> deciding, Optional<LocalDate> first) {
    return new RuleFinding(permission, rule, record, limit, sentence, deciding, first);
  }

  RuleFinding as(Permission other, String reason) {
    return new RuleFinding(other, rule, record, limit, sentence + " " + reason, days, firstAllowed);
  }

  static ResultTable table(String title, List<RuleFinding> findings) {
    return ResultTable.of(
        title,
        List.of(
            ResultTable.Column.of("Answer"),
            ResultTable.Column.of("Record"),
            ResultTable.Column.of("Limit"),
            ResultTable.Column.of("What was found")),
        findings.stream()
            .map(
                each ->
                    List.of(
                        Cell.text(each.permission().words()),
                        Cell.text(each.record()),
                        Cell.text(each.limit()),
                        Cell.text(each.sentence())))
            .toList());
  }

  @Override
  public String toString() {
    return permission.words() + ", " + record + ", " + limit + ": " + sentence;
  }
}
