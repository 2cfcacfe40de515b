package agro.weather.log;

import agro.report.InputProblem;
import agro.report.ReadReport;
import agro.report.ReadReport.Deed;
import agro.report.SourceLocation;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;

/**
 * The headings above a table.
 *
 * @param line line of the headings, 0 where there are none
 * @param cells the headings as written
 * @param names a different name for each column
 * @param below the line of units below the headings
 * @param before lines before the headings
 * @param firstRow index of the first line of data
 */
record HeadingFinding(
    int line,
    List<String> cells,
    List<String> names,
    List<String> below,
    List<String> before,
    int firstRow) {

  private static final int MOST_LINES_ABOVE = 6;

  static HeadingFinding find(
      String name,
      List<TextLine> lines,
      int first,
      SeparatorEvidence.Cut cut,
      TableForm declared,
      ReadReport.Collector report) {
    int heading = -1;
    if (declared.headingLine().isPresent()) {
      int wanted = declared.headingLine().getAsInt();
      for (int i = 0; i < lines.size() && wanted > 0; i++) {
        heading = lines.get(i).number() == wanted ? i : heading;
      }
    } else {
      heading = best(lines, first, cut);
    }
    var before = new ArrayList<String>();
    for (int i = 0; i < (heading < 0 ? first : heading); i++) {
      before.add(lines.get(i).text());
    }
    if (heading < 0) {
      report.add(Deed.NOTED, SourceLocation.file(name), "the log has no headings");
      return new HeadingFinding(
          0, List.of(), unique(Collections.nCopies(cut.width(), "")), List.of(), before, first);
    }
    var written = withLineAbove(lines, heading, cut);
    requireWidth(name, lines.get(heading), written, cut);
    int row = declared.firstLine().isPresent() ? first : firstRow(lines, heading, first, cut);
    return new HeadingFinding(
        lines.get(heading).number(),
        cut.cells(lines.get(heading).text()),
        unique(padded(written, cut.width())),
        below(lines, heading, row, cut),
        before,
        row);
  }

  /** The line above the data whose cells are most like headings. */
  private static int best(List<TextLine> lines, int first, SeparatorEvidence.Cut cut) {
    int best = -1;
    int bestScore = 0;
    int seen = 0;
    for (int i = first - 1; i >= 0 && seen < MOST_LINES_ABOVE; i--) {
      if (lines.get(i).isBlank()) {
        continue;
      }
      seen++;
      int score = score(headings(lines.get(i).text(), cut), cut.width());
      if (score >= bestScore && score > 0) {
        best = i;
        bestScore = score;
      }
    }
    return best;
  }

  /** Headings that go over two lines, with nothing above the columns of the time, are one. */
  private static List<String> withLineAbove(
      List<TextLine> lines, int heading, SeparatorEvidence.Cut cut) {
    var written = headings(lines.get(heading).text(), cut);
    if (heading == 0 || !cut.separator().isOneCharacter() || written.size() != cut.width()) {
      return written;
    }
    var above = cut.cells(lines.get(heading - 1).text());
    boolean joins = above.size() == cut.width() && above.get(0).isEmpty();
    int full = 0;
    for (int i = 0; i < above.size() && joins; i++) {
      boolean time = HeadingWords.kind(written.get(i)) == ColumnKind.TIME;
      joins = NumberCell.of(above.get(i)).isEmpty() && !(time && !above.get(i).isEmpty());
      full += above.get(i).isEmpty() ? 0 : 1;
    }
    if (!joins || full < 2) {
      return written;
    }
    var joined = new ArrayList<String>();
    for (int i = 0; i < written.size(); i++) {
      joined.add((above.get(i) + " " + written.get(i)).strip());
    }
    return joined;
  }

  private static int score(List<String> cells, int width) {
    int known = 0;
    int text = 0;
    for (var cell : cells) {
      var kind = HeadingWords.kind(cell);
      boolean isUnit = UnitWords.ofCell(cell).isPresent() || HeadingWords.words(cell).isEmpty();
      known += kind == ColumnKind.UNKNOWN || isUnit ? 0 : 1;
      text += cell.isEmpty() || NumberCell.of(cell).isPresent() ? 0 : 1;
    }
    if (text * 2 < cells.size() || cells.size() < 2) {
      return 0;
    }
    return cells.size() == width ? 1 + 3 * known + text : known >= 2 ? 2 * known : 0;
  }

  private static List<String> headings(String line, SeparatorEvidence.Cut cut) {
    var text = line.stripLeading();
    while (text.startsWith("#") || text.startsWith("/") || text.startsWith("!")) {
      text = text.substring(1).stripLeading();
    }
    if (cut.separator().isOneCharacter()) {
      var cells = cut.cells(text);
      int width = new TableRow(0, cells).width();
      return cells.subList(0, Math.max(Math.min(cut.width(), cells.size()), width));
    }
    if (cut.separator() == CellSeparator.FIXED_WIDTH) {
      var cells = cut.cells(line);
      var words = BlankCells.words(text);
      return words.size() == cut.width() ? words : cells;
    }
    return ofBlanks(text, cut.width());
  }

  /** Names between blanks may hold blanks themselves, and date and time may be one cell below. */
  private static List<String> ofBlanks(String text, int width) {
    var wide = BlankCells.wideWords(text);
    if (wide.size() == width) {
      return wide;
    }
    var words = new ArrayList<>(BlankCells.words(text));
    for (int i = 0; i + 1 < words.size() && words.size() > width; i++) {
      boolean dateAndTime =
          HeadingWords.kind(words.get(i)) == ColumnKind.TIME
              && HeadingWords.kind(words.get(i + 1)) == ColumnKind.TIME;
      if (dateAndTime) {
        words.set(i, words.get(i) + " " + words.remove(i + 1));
      }
    }
    return words;
  }

  private static void requireWidth(
      String name, TextLine line, List<String> written, SeparatorEvidence.Cut cut) {
    if (written.size() == cut.width()
        || (written.size() < cut.width() && written.size() >= cut.filled())) {
      return;
    }
    boolean commas = cut.separator() == CellSeparator.COMMA && written.size() < cut.width();
    throw InputProblem.at(
            SourceLocation.line(name, line.number()),
            written.size()
                + " headings above lines of "
                + cut.width()
                + " cells, with "
                + cut.separator().words()
                + " between them")
        .expected("a heading for each cell")
        .because(
            commas
                ? "a comma that separates cells and one that is a decimal mark look the same"
                : "it is unknown which cell belongs to which column")
        .mend(
            commas
                ? "export the log with semicolons between the cells or with decimal points, or put"
                    + " the numbers into quotes"
                : "complete the headings, or declare the separator and the line of the headings");
  }

  /** A line of numbers right above the first sure row is data too, with a time that is damaged. */
  private static int firstRow(
      List<TextLine> lines, int heading, int first, SeparatorEvidence.Cut cut) {
    int row = first;
    for (int i = first - 1; i > heading; i--) {
      var line = lines.get(i);
      if (line.isBlank() || line.isComment()) {
        continue;
      }
      boolean number = false;
      for (var cell : cut.cells(line.text())) {
        number |= NumberCell.of(cell).isPresent();
      }
      if (!number) {
        break;
      }
      row = i;
    }
    return row;
  }

  private static List<String> below(
      List<TextLine> lines, int heading, int row, SeparatorEvidence.Cut cut) {
    for (int i = heading + 1; i < row; i++) {
      var cells = headings(lines.get(i).text(), cut);
      boolean units = false;
      for (var cell : cells) {
        units |= UnitWords.ofCell(cell).isPresent();
      }
      if (units && cells.size() <= cut.width()) {
        return List.copyOf(cells);
      }
    }
    return List.of();
  }

  private static List<String> padded(List<String> names, int width) {
    var padded = new ArrayList<>(names);
    while (padded.size() < width) {
      padded.add("");
    }
    return padded;
  }

  private static List<String> unique(List<String> written) {
    var names = new ArrayList<String>();
    var taken = new HashSet<String>();
    for (int i = 0; i < written.size(); i++) {
      var name = written.get(i).isEmpty() ? "column " + (i + 1) : written.get(i);
      if (!taken.add(name.toLowerCase(Locale.ROOT))) {
        name = name + " (column " + (i + 1) + ")";
        taken.add(name.toLowerCase(Locale.ROOT));
      }
      names.add(name);
    }
    return List.copyOf(names);
  }
}
