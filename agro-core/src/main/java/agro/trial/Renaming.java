package agro.trial;

import agro.report.InputProblem;
import agro.report.ReadReport;
import agro.report.SourceLocation;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.TreeSet;

/** Renames a level of a treatment factor in all lines of a trial. */
final class Renaming {

  private Renaming() {}

  static TrialContent apply(TrialContent content, String from, String to) {
    if (to.isBlank()) {
      throw new IllegalArgumentException("a treatment needs a name, but got \"" + to + "\"");
    }
    var names = new TreeSet<>(NaturalOrder.ofNames());
    var lines = new ArrayList<Assessment>();
    int changed = 0;
    for (var line : content.assessments()) {
      names.addAll(line.plot().levels().values());
      boolean has = line.plot().levels().containsValue(from);
      changed += has ? 1 : 0;
      lines.add(has ? line.withPlot(renamed(line.plot(), from, to)) : line);
    }
    if (changed == 0) {
      throw InputProblem.of("no treatment is written \"" + from + "\" in " + content.name())
          .expected("one of " + names)
          .because("there is nothing to rename")
          .mend("write the name exactly as it stands in the table");
    }
    var entry =
        new ReadReport.Entry(
            ReadReport.Deed.REPAIRED,
            SourceLocation.NONE,
            "the treatment \"" + from + "\" was renamed \"" + to + "\" in " + changed + " values");
    var report = content.report().and(new ReadReport(content.name(), 0, List.of(entry)));
    var controls =
        content.controls().stream().map(control -> control.equals(from) ? to : control).toList();
    return content
        .withAssessments(lines, report)
        .withControls(controls.stream().distinct().toList());
  }

  private static TrialPlot renamed(TrialPlot plot, String from, String to) {
    var levels = new LinkedHashMap<>(plot.levels());
    levels.replaceAll((factor, level) -> level.equals(from) ? to : level);
    return plot.withLevels(levels);
  }
}
