package agro.working;

import agro.report.ReadReport;
import java.util.ArrayList;
import java.util.List;

/** The layout of a {@link ReadReport} for a reader. */
final class ReportLayout {

  /** Entries of one kind that a reader still looks through. */
  private static final int MOST_SHOWN = 20;

  private ReportLayout() {}

  static Presentation lay(ReadReport report) {
    var counts = report.source() + ": " + rowsRead(report);
    if (report.entries().isEmpty()) {
      return Presentation.untitled(
          new Block.Paragraph(counts + "; nothing was assumed, mended, dropped or filled."));
    }
    var kinds = new ArrayList<String>();
    var rows = new ArrayList<List<Cell>>();
    for (var deed : ReadReport.Deed.values()) {
      var entries = report.entries(deed);
      if (!entries.isEmpty()) {
        kinds.add(entries.size() + " " + deed.words());
      }
      entries.stream().limit(MOST_SHOWN).map(ReportLayout::row).forEach(rows::add);
    }
    var columns =
        List.of(
            ResultTable.Column.of("Deed"),
            ResultTable.Column.of("Place"),
            ResultTable.Column.of("What and why"));
    var table = ResultTable.of("Assumed, mended, dropped, filled", columns, rows);
    int left = report.entries().size() - rows.size();
    return Presentation.untitled(
        new Block.Folded(
            counts + "; " + String.join(", ", kinds),
            List.of(new Block.TableBlock(left == 0 ? table : table.withNote(leftOut(left))))));
  }

  private static String rowsRead(ReadReport report) {
    return report.rowsRead() + (report.rowsRead() == 1 ? " row read" : " rows read");
  }

  private static List<Cell> row(ReadReport.Entry entry) {
    var place = entry.location().toString();
    return List.of(
        Cell.text(entry.deed().words()),
        Cell.text(place.isEmpty() ? "all" : place),
        Cell.text(entry.text()));
  }

  private static String leftOut(int entries) {
    return entries
        + (entries == 1 ? " more entry is" : " more entries are")
        + " not shown here; the report object holds them all.";
  }
}
