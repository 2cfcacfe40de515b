package agro.dose;

import agro.working.Caution;
import agro.working.Cell;
import agro.working.Presentable;
import agro.working.Presentation;
import agro.working.ResultTable;
import agro.working.Working;
import java.util.List;
import java.util.Objects;

/**
 * What a check of a planned dose against a label found.
 *
 * @param limits limits of the label
 * @param plan planned application
 * @param findings what was found, errors first; at least one for each limit
 * @param working steps of the comparison of doses, with cautions
 */
public record LimitCheckResult(
    LabelLimits limits, PlannedUse plan, List<DoseFinding> findings, Working working)
    implements Presentable {

  /** Copies the list. */
  public LimitCheckResult {
    Objects.requireNonNull(limits, "limits");
    Objects.requireNonNull(plan, "plan");
    Objects.requireNonNull(working, "working");
    findings = List.copyOf(findings);
  }

  /**
   * The worst of the findings.
   *
   * @return error if a limit is broken, warning if something is missing, else note
   */
  public Severity worst() {
    return findings.isEmpty() ? Severity.NOTE : findings.get(0).severity();
  }

  /**
   * The findings of one severity.
   *
   * @param severity how much they matter
   * @return the findings in the order of the label's limits
   */
  public List<DoseFinding> of(Severity severity) {
    return findings.stream().filter(finding -> finding.severity() == severity).toList();
  }

  /**
   * The standard cautions.
   *
   * @return all of them
   */
  public List<Caution> cautions() {
    return working.cautions();
  }

  @Override
  public Presentation presentation() {
    return Presentation.titled(limits.use())
        .fact("Planned", plan.dose().toString())
        .table(findingTable("What the label says to it", findings))
        .working(working)
        .build();
  }

  static ResultTable findingTable(String title, List<DoseFinding> findings) {
    return ResultTable.of(
        title,
        List.of(
            ResultTable.Column.of("Finding"),
            ResultTable.Column.of("Limit"),
            ResultTable.Column.of("What was found")),
        findings.stream()
            .map(
                finding ->
                    List.of(
                        Cell.text(finding.severity().words()),
                        Cell.text(finding.rule()),
                        Cell.text(finding.sentence())))
            .toList());
  }
}
