package agro.season;

import agro.reading.DelimitedLine;
import agro.report.ReadReport;
import java.nio.file.Path;
import java.util.Map;
import java.util.Set;

/** Reads the table of traps. */
final class TrapTable {

  private TrapTable() {}

  static Map<String, PlacedTrap> read(
      Path folder, Set<String> places, Set<String> pests, ReadReport.Collector report) {
    return FolderTable.named(
        FolderTable.lines(folder, FolderLayout.TRAPS, report),
        FolderLayout.TRAPS,
        line -> {
          report.countRow();
          return trap(line, places, pests);
        });
  }

  private static PlacedTrap trap(DelimitedLine line, Set<String> places, Set<String> pests) {
    return new PlacedTrap(
        line.text("trap"),
        FolderTable.reference(line, "place", FolderLayout.PLACES, places),
        FolderTable.reference(line, "pest", FolderLayout.PESTS, pests));
  }
}
