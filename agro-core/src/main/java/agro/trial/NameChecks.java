package agro.trial;

import agro.trial.TrialFinding.Kind;
import agro.trial.TrialFinding.Severity;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** Checks of the names of treatments and of what the lines say of each plot. */
final class NameChecks {

  private NameChecks() {}

  static List<TrialFinding> of(FieldTrial trial) {
    var findings = new ArrayList<TrialFinding>();
    trial.nearTreatments().forEach(near -> findings.add(nearNames(trial, near)));
    for (var plot : trial.plots()) {
      var ways = trial.descriptionsOf(plot);
      if (ways.size() > 1) {
        findings.add(changes(trial, plot, List.copyOf(ways.keySet())));
      }
    }
    findings.add(control(trial));
    return findings;
  }

  private static TrialFinding nearNames(FieldTrial trial, NearTreatment near) {
    var plots =
        trial.plots().stream()
            .filter(
                plot ->
                    trial.descriptionsOf(plot).keySet().stream()
                        .anyMatch(way -> way.level(near.factor()).orElse("").equals(near.rarer())))
            .toList();
    var lines =
        trial.assessments().stream()
            .filter(line -> line.line() > 0)
            .filter(line -> line.plot().level(near.factor()).orElse("").equals(near.rarer()))
            .map(Assessment::line)
            .distinct()
            .sorted()
            .toList();
    return new TrialFinding(
        Kind.NEAR_NAMES,
        Severity.WARNING,
        "\""
            + near.rarer()
            + "\" in "
            + PlotWords.list(plots)
            + PlotWords.lines(lines)
            + " and \""
            + near.other()
            + "\" in "
            + near.otherPlots()
            + (near.otherPlots() == 1 ? " plot" : " plots")
            + " differ in "
            + near.difference().words()
            + "; they count as two levels of "
            + near.factor()
            + ".",
        "If they are one, use withRenamed(\"" + near.rarer() + "\", \"" + near.other() + "\").",
        plots,
        lines);
  }

  private static TrialFinding changes(FieldTrial trial, TrialPlot plot, List<TrialPlot> ways) {
    var words =
        ways.stream()
            .map(way -> PlotRegister.words(way) + PlotWords.lines(linesOf(trial, way)))
            .collect(Collectors.joining("; as "));
    boolean treatment = ways.stream().map(TrialPlot::levels).distinct().count() > 1;
    var label = plot.label();
    return new TrialFinding(
        Kind.PLOT_CHANGES,
        Severity.ERROR,
        Character.toUpperCase(label.charAt(0))
            + label.substring(1)
            + " is written in "
            + ways.size()
            + " ways: as "
            + words
            + ".",
        treatment
            ? "A plot keeps its treatment through the trial: mend the table, or rename the"
                + " treatment if both names are one."
            : "A plot keeps its block and place through the trial: mend the table.",
        List.of(plot),
        trial.linesOf(plot));
  }

  private static List<Long> linesOf(FieldTrial trial, TrialPlot way) {
    return trial.assessments().stream()
        .filter(line -> line.line() > 0 && line.plot().equals(way))
        .map(Assessment::line)
        .distinct()
        .sorted()
        .toList();
  }

  private static TrialFinding control(FieldTrial trial) {
    var declared = trial.controls();
    var candidates = trial.controlCandidates();
    String text;
    String cure;
    if (!declared.isEmpty()) {
      text = "The control is declared: " + PlotWords.and(quoted(declared)) + ".";
      cure = "";
    } else if (candidates.isEmpty()) {
      text = "No treatment is declared to be a control, and none is named like one.";
      cure = "Declare it with withControls, if there is one.";
    } else {
      text =
          "No control is declared; by "
              + (candidates.size() == 1 ? "its name " : "their names ")
              + PlotWords.and(quoted(candidates))
              + " may be one.";
      cure = "Declare it with withControls(\"" + candidates.get(0) + "\").";
    }
    return new TrialFinding(Kind.CONTROL, Severity.NOTE, text, cure, List.of(), List.of());
  }

  private static List<String> quoted(List<String> names) {
    return names.stream().map(name -> "\"" + name + "\"").toList();
  }
}
