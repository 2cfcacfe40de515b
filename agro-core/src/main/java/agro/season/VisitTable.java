package agro.season;

import agro.reading.DelimitedLine;
import agro.report.InputProblem;
import agro.report.ReadReport;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/** Reads the visit book. */
final class VisitTable {
  private static final String COUNT = "count";

  private VisitTable() {}

  static List<VisitLine> read(
      Path folder, Set<String> traps, KnownDays known, ReadReport.Collector report) {
    var lines = new ArrayList<VisitLine>();
    for (var line : FolderTable.lines(folder, FolderLayout.VISITS, report)) {
      if (known.knows(line.date("date"))) {
        report.countRow();
        lines.add(visit(line, traps));
      }
    }
    VisitBook.requireOrder(lines);
    return List.copyOf(lines);
  }

  private static VisitLine visit(DelimitedLine line, Set<String> traps) {
    var trap = FolderTable.reference(line, "trap", FolderLayout.TRAPS, traps);
    var date = line.date("date");
    var state = line.choice("state", VisitState.class);
    requireCountWhereItBelongs(line, state);
    return new VisitLine(
        trap,
        date,
        state,
        line.optionalCount(COUNT),
        line.optionalNumber(FolderLayout.NIGHTS_OPEN),
        line.optionalYesOrNo("lure_renewed").orElse(false),
        line.location());
  }

  private static void requireCountWhereItBelongs(DelimitedLine line, VisitState state) {
    boolean counted = line.optionalText(COUNT).isPresent();
    var word = line.text("state");
    if (state.needsCount() && !counted) {
      throw InputProblem.at(line.location(COUNT), "no count, with the state " + word)
          .expected("a whole number; 0 when the trap was empty")
          .because("an empty trap and an unknown catch are different things")
          .mend("write the count, or the state failed if the catch is not known");
    }
    if (!state.needsCount() && counted) {
      throw InputProblem.at(
              line.location(COUNT), "the count " + line.text(COUNT) + ", with the state " + word)
          .expected("an empty cell")
          .because("the state " + word + " says that nothing is known of a catch")
          .mend("empty the cell, or write the state working if the count holds");
    }
  }
}
