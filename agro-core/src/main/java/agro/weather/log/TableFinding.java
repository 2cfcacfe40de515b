package agro.weather.log;

import agro.report.InputProblem;
import agro.report.ReadReport;
import agro.report.ReadReport.Deed;
import agro.report.SourceLocation;
import java.util.ArrayList;
import java.util.List;

/** Finds the table in the text of a log: headings, units below them, rows, and what is around. */
final class TableFinding {

  /** Broken lines that a log may have before it is refused, as a share of its lines. */
  private static final double MOST_BROKEN = 0.05;

  private static final int FEW_BROKEN = 2;

  private final String name;
  private final List<TextLine> lines;
  private final TableForm declared;
  private final ReadReport.Collector report;
  private final SeparatorEvidence.Cut cut;
  private final boolean endsWithLine;

  private TableFinding(
      String name,
      List<TextLine> lines,
      boolean endsWithLine,
      SeparatorEvidence.Cut cut,
      TableForm declared,
      ReadReport.Collector report) {
    this.name = name;
    this.lines = lines;
    this.endsWithLine = endsWithLine;
    this.cut = cut;
    this.declared = declared;
    this.report = report;
  }

  static RawTable find(String name, String text, TableForm declared, ReadReport.Collector report) {
    var lines = QuotedLines.joined(TextLine.of(text));
    boolean endsWithLine = text.endsWith("\n") || text.endsWith("\r");
    var cut = SeparatorEvidence.find(lines, declared, name);
    return new TableFinding(name, lines, endsWithLine, cut, declared, report).find();
  }

  /** The table in whole lines of which it is known how they are cut. */
  static RawTable find(
      String name,
      List<TextLine> lines,
      SeparatorEvidence.Cut cut,
      TableForm declared,
      ReadReport.Collector report) {
    return new TableFinding(name, lines, true, cut, declared, report).find();
  }

  private RawTable find() {
    int first =
        declared.firstLine().isPresent() ? indexOf(declared.firstLine().getAsInt()) : first();
    var heading = HeadingFinding.find(name, lines, first, cut, declared, report);
    first = Math.max(heading.firstRow(), 0);
    int last = last(first);
    var rows = rows(first, last, heading);
    tellSurroundings(first, last, heading);
    if (rows.isEmpty()) {
      throw InputProblem.at(SourceLocation.file(name), "no line of data below the headings")
          .expected("at least one line with a time and a temperature")
          .because("there is nothing to compute from")
          .mend("look whether the export of the log was broken off");
    }
    var form =
        declared
            .withSeparator(cut.separator())
            .withFieldStarts(cut.starts())
            .withHeadingLine(heading.line())
            .withFirstLine(rows.get(0).line());
    boolean cutOff = !endsWithLine && last == lines.size() - 1;
    return new RawTable(
        name, form, heading.names(), heading.below(), heading.before(), rows, cutOff);
  }

  private int indexOf(int line) {
    for (int i = 0; i < lines.size(); i++) {
      if (lines.get(i).number() >= line) {
        return i;
      }
    }
    return lines.size();
  }

  private boolean isRow(int index) {
    var line = lines.get(index);
    return !line.isBlank() && !line.isComment() && cut.isRow(cut.cells(line.text()));
  }

  private int first() {
    int first = 0;
    while (first < lines.size() && !isRow(first)) {
      first++;
    }
    return first;
  }

  private int last(int first) {
    int last = lines.size() - 1;
    while (last > first && !isRow(last)) {
      last--;
    }
    return last;
  }

  private List<TableRow> rows(int first, int last, HeadingFinding heading) {
    var rows = new ArrayList<TableRow>(last - first + 1);
    var broken = new Tally(Deed.DROPPED, "a line with more or fewer cells than the others");
    var repeated = new Tally(Deed.DROPPED, "the headings again, between the data");
    var comments = new Tally(Deed.NOTED, "a comment between the data");
    for (int i = first; i <= last; i++) {
      var line = lines.get(i);
      var place = SourceLocation.line(name, line.number());
      if (line.isBlank()) {
        continue;
      }
      if (line.isComment()) {
        comments.add(place);
        continue;
      }
      var row = new TableRow(line.number(), cut.cells(line.text()));
      if (row.isEmpty()) {
        continue;
      }
      if (row.cells().equals(heading.cells())) {
        repeated.add(place);
      } else if (fits(row)) {
        rows.add(row);
      } else {
        broken.add(place);
      }
    }
    refuseManyBroken(broken, rows.size());
    comments.tell(report);
    repeated.tell(report);
    broken.tell(report);
    return rows;
  }

  private boolean fits(TableRow row) {
    return row.width() <= cut.width() && row.cells().size() >= cut.filled();
  }

  private void refuseManyBroken(Tally broken, int rows) {
    if (broken.count() > Math.max(FEW_BROKEN, MOST_BROKEN * rows)) {
      throw InputProblem.at(
              broken.first(),
              broken.count()
                  + " lines, this one first, have more or fewer than "
                  + cut.width()
                  + " cells with "
                  + cut.separator().words()
                  + " between them")
          .expected("lines of equal build")
          .because("it is unknown which cell belongs to which column")
          .mend(
              cut.separator() == CellSeparator.COMMA
                  ? "put numbers with a decimal comma into quotes, or separate the cells by"
                      + " semicolons; or declare the separator"
                  : "correct these lines, or declare the separator");
    }
  }

  private void tellSurroundings(int first, int last, HeadingFinding heading) {
    tellLines(0, first, heading.line(), "before the table", Deed.NOTED);
    tellLines(last + 1, lines.size(), heading.line(), "after the last line of data", Deed.DROPPED);
  }

  private void tellLines(int from, int to, int headingLine, String where, Deed deed) {
    var told = new Tally(deed, "a line " + where + ", not read as data");
    for (int i = from; i < to; i++) {
      var line = lines.get(i);
      if (!line.isBlank() && line.number() != headingLine) {
        told.add(SourceLocation.line(name, line.number()));
      }
    }
    told.tell(report);
  }
}
