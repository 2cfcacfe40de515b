package agro.trial;

import agro.report.InputProblem;
import agro.trial.TrialFinding.Severity;
import agro.working.Cell;
import agro.working.Presentable;
import agro.working.Presentation;
import agro.working.ResultTable;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * The design that the data of a trial show, and everything that a person should know before the
 * analysis.
 *
 * @param trial name of the trial
 * @param designs recognised design of each site and year
 * @param findings findings, the worst first
 */
public record TrialReview(
    String trial, Map<String, TrialDesign> designs, List<TrialFinding> findings)
    implements Presentable {

  /** Makes the lists immutable. */
  public TrialReview {
    designs = Collections.unmodifiableMap(new LinkedHashMap<>(designs));
    findings = List.copyOf(findings);
  }

  static TrialReview of(FieldTrial trial) {
    return TrialReviewer.review(trial);
  }

  /**
   * The recognised design when all sites and years have the same.
   *
   * @return the design
   * @throws InputProblem when they differ
   */
  public TrialDesign design() {
    var different = new LinkedHashSet<>(designs.values());
    if (different.size() != 1) {
      throw InputProblem.of("the designs " + designs)
          .expected("one design for all sites and years")
          .because("different designs are analysed one by one")
          .mend("ask for the designs of the sites, or analyse the sites apart");
    }
    return different.iterator().next();
  }

  /**
   * The findings of one kind.
   *
   * @param kind what they are about
   * @return findings, possibly none
   */
  public List<TrialFinding> findings(TrialFinding.Kind kind) {
    return findings.stream().filter(finding -> finding.kind() == kind).toList();
  }

  /**
   * Whether nothing has to be mended before the analysis.
   *
   * @return true when no finding is an error
   */
  public boolean isSound() {
    return findings.stream().noneMatch(finding -> finding.severity() == Severity.ERROR);
  }

  @Override
  public Presentation presentation() {
    var page = Presentation.titled("Review of " + trial);
    designs.forEach(
        (environment, design) ->
            page.fact(
                environment.isEmpty() ? "Design" : "Design at " + environment, design.words()));
    if (findings.isEmpty()) {
      return page.paragraph("Nothing was found that needs a decision.").build();
    }
    var rows = new ArrayList<List<Cell>>();
    for (var finding : findings) {
      rows.add(
          List.of(
              Cell.text(finding.severity().name().toLowerCase(Locale.ROOT)),
              Cell.text(finding.text()),
              Cell.text(finding.cure())));
    }
    var columns =
        List.of(
            ResultTable.Column.of("Weight"),
            ResultTable.Column.of("Found"),
            ResultTable.Column.of("What to do"));
    return page.table(ResultTable.of("Findings", columns, rows)).build();
  }

  @Override
  public String toString() {
    var words = new StringBuilder(trial).append(": ");
    words.append(
        String.join("; ", designs.values().stream().map(TrialDesign::words).distinct().toList()));
    findings.forEach(finding -> words.append("\n  ").append(finding));
    return words.toString();
  }
}
