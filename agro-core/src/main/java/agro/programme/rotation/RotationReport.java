package agro.programme.rotation;

import agro.dose.Severity;
import agro.working.Caution;
import agro.working.Cell;
import agro.working.Presentable;
import agro.working.Presentation;
import agro.working.ResultTable;
import java.util.ArrayList;
import java.util.List;

/**
 * How the applications of a field stand with the rules of rotation.
 *
 * @param field the field
 * @param windows windows of the pest
 * @param uses every use of an active ingredient, in the order of the days
 * @param findings what the rules say, errors first
 */
public record RotationReport(
    String field, RotationWindows windows, List<GroupUse> uses, List<RotationFinding> findings)
    implements Presentable {

  /** Copies the lists. */
  public RotationReport {
    uses = List.copyOf(uses);
    findings = List.copyOf(findings);
  }

  /**
   * Whether no rule is broken.
   *
   * @return false if there is an error; warnings do not count
   */
  public boolean isAdmissible() {
    return findings.stream().noneMatch(each -> each.severity() == Severity.ERROR);
  }

  /**
   * The findings of one rule.
   *
   * @param rule the rule
   * @return its findings
   */
  public List<RotationFinding> of(RotationRule rule) {
    return findings.stream().filter(each -> each.rule() == rule).toList();
  }

  /**
   * The uses that count for a window.
   *
   * @param index index of the window in the list, -1 for those before the first
   * @return uses in the field, in the order of the days
   */
  public List<GroupUse> inWindow(int index) {
    return uses.stream()
        .filter(use -> !use.beforeTheField() && windows.indexAt(use.day()) == index)
        .toList();
  }

  private ResultTable table() {
    var rows = new ArrayList<List<Cell>>();
    var nursery = uses.stream().filter(GroupUse::beforeTheField).toList();
    if (!nursery.isEmpty()) {
      rows.add(List.of(Cell.text("nursery"), Cell.text(""), Cell.text(words(nursery))));
    }
    for (int i = -1; i < windows.windows().size(); i++) {
      var own = inWindow(i);
      if (i >= 0) {
        var window = windows.windows().get(i);
        rows.add(
            List.of(
                Cell.text(String.valueOf(window.number())),
                Cell.text(window.first() + " to " + window.last()),
                Cell.text(own.isEmpty() ? "no application" : words(own))));
      } else if (!own.isEmpty()) {
        rows.add(List.of(Cell.text("before"), Cell.text(""), Cell.text(words(own))));
      }
    }
    var columns =
        List.of(
            ResultTable.Column.of("Window"),
            ResultTable.Column.of("Days"),
            ResultTable.Column.of("Applications and groups"));
    return ResultTable.of("Groups by window", columns, rows);
  }

  private static String words(List<GroupUse> uses) {
    return String.join("; ", uses.stream().map(GroupUse::words).toList());
  }

  @Override
  public Presentation presentation() {
    var page =
        Presentation.titled("Rotation of modes of action, " + field)
            .fact("Verdict", isAdmissible() ? "no rule is broken" : "a rule is broken")
            .table(table());
    for (var finding : findings) {
      page.paragraph(finding.toString());
    }
    var sources = findings.stream().map(each -> each.rule().source()).distinct().toList();
    return page.cautions(Caution.all())
        .sources(sources.isEmpty() ? List.of(RotationSources.WINDOWS) : sources)
        .build();
  }
}
