package agro.trial;

import agro.report.InputProblem;
import agro.report.ReadReport;
import agro.report.SourceLocation;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;

/** Describes the plots of a trial anew. */
final class Describing {

  private Describing() {}

  static TrialContent apply(TrialContent content, List<TrialPlot> plots) {
    var lines = new ArrayList<Assessment>();
    Set<TrialPlot> seen = new LinkedHashSet<>();
    for (var line : content.assessments()) {
      var plot = found(content, line, plots);
      seen.add(plot);
      lines.add(line.withPlot(plot));
    }
    var missing = plots.stream().filter(plot -> !seen.contains(plot)).toList();
    for (var plot : missing) {
      for (var response : content.responses()) {
        lines.add(
            new Assessment(
                plot,
                Optional.empty(),
                "",
                response.name(),
                OptionalDouble.empty(),
                OptionalInt.empty(),
                "",
                0));
      }
    }
    var entries = new ArrayList<ReadReport.Entry>();
    entries.add(entry(ReadReport.Deed.REPAIRED, "plots were described as they were laid out"));
    if (!missing.isEmpty()) {
      entries.add(
          entry(
              ReadReport.Deed.NOTED,
              PlotWords.list(missing) + " had no line and came in with missing values"));
    }
    var report = content.report().and(new ReadReport(content.name(), 0, entries));
    var known = plots.stream().map(TrialPlot::treatment).toList();
    var controls = content.controls().stream().filter(known::contains).toList();
    return content.withAssessments(lines, report).withControls(controls);
  }

  private static TrialPlot found(TrialContent content, Assessment line, List<TrialPlot> plots) {
    return plots.stream()
        .filter(plot -> plot.isSamePlot(line.plot()))
        .findFirst()
        .orElseThrow(
            () ->
                InputProblem.of(line.where() + " in " + content.name())
                    .expected("one of the plots as laid out")
                    .because("its treatment is not known")
                    .mend("check the number of the plot, and that the layout is of this trial"));
  }

  private static ReadReport.Entry entry(ReadReport.Deed deed, String text) {
    return new ReadReport.Entry(deed, SourceLocation.NONE, text);
  }
}
