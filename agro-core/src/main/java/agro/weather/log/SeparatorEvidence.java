package agro.weather.log;

import agro.report.InputProblem;
import agro.report.SourceLocation;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Finds what stands between the cells: what makes most lines into rows of equal width. */
final class SeparatorEvidence {

  private static final int MOST_LINES = 400;

  /**
   * A way of cutting lines.
   *
   * @param separator what stands between cells
   * @param starts where fields of fixed width begin
   * @param width the usual number of cells
   * @param filled the most cells that a row has before nothing but empty ones
   * @param dateColumn the usual place of the date, -1 where no cell is a date
   * @param rows how many lines of the sample it makes into rows of that width
   */
  record Cut(
      CellSeparator separator,
      List<Integer> starts,
      int width,
      int filled,
      int dateColumn,
      int rows) {

    List<String> cells(String line) {
      return separator.split(line, starts);
    }

    boolean isRow(List<String> cells) {
      int size = new TableRow(0, cells).width();
      boolean fits = size <= width && (cells.size() >= width || separator.isOneCharacter());
      if (!fits) {
        return false;
      }
      return dateColumn < 0
          ? CellLook.isNumeric(cells) && cells.size() >= width
          : dateColumn < cells.size() && CellLook.of(cells.get(dateColumn)) == CellLook.DATE;
    }
  }

  private final List<String> sample;

  private SeparatorEvidence(List<String> sample) {
    this.sample = sample;
  }

  static Cut find(List<TextLine> lines, TableForm declared, String name) {
    return findAmong(full(lines), declared, name);
  }

  /** The same from the lines that hold something and are no comments. */
  static Cut findAmong(List<String> full, TableForm declared, String name) {
    var evidence = new SeparatorEvidence(sample(full));
    Cut best = null;
    for (var separator : CellSeparator.values()) {
      if (declared.separator().isPresent() && declared.separator().get() != separator) {
        continue;
      }
      var cut = evidence.cut(separator, declared.fieldStarts());
      if (cut != null && (best == null || evidence.isBetter(cut, best))) {
        best = cut;
      }
    }
    if (best == null) {
      throw InputProblem.at(SourceLocation.file(name), "no line with a date and a number in it")
          .expected("lines of times and temperatures, such as 2021-05-01 12:00, 14.5")
          .because("without them it is no temperature log that can be read")
          .mend(
              "look whether this is the file that was meant; if its lines are written in an unusual"
                  + " way, declare separator and columns");
    }
    return best;
  }

  /** Lines that hold something and are no comments. */
  static List<String> full(List<TextLine> lines) {
    var full = new ArrayList<String>();
    for (var line : lines) {
      if (!line.isBlank() && !line.isComment()) {
        full.add(line.text());
      }
    }
    return full;
  }

  /** Lines from the beginning and the middle. */
  private static List<String> sample(List<String> full) {
    if (full.size() <= MOST_LINES) {
      return full;
    }
    int part = MOST_LINES / 2;
    var sample = new ArrayList<>(full.subList(0, part));
    int middle = Math.max(part, full.size() / 2);
    sample.addAll(full.subList(middle, Math.min(full.size(), middle + part)));
    return sample;
  }

  /** Dates count for more than bare numbers; then the number of rows, then the first one tried. */
  private boolean isBetter(Cut cut, Cut best) {
    if ((cut.dateColumn() >= 0) != (best.dateColumn() >= 0)) {
      return cut.dateColumn() >= 0 && cut.rows() * 5 >= sample.size();
    }
    if (cut.separator() == CellSeparator.FIXED_WIDTH) {
      return cut.rows() > best.rows() * 1.02 + 1 && best.separator() == CellSeparator.BLANKS;
    }
    // Blanks also part what other separators hold together, so they have to be clearly better.
    boolean blanks = cut.separator() == CellSeparator.BLANKS;
    return cut.rows() > (blanks ? best.rows() * 1.05 + 1 : best.rows());
  }

  private Cut cut(CellSeparator separator, List<Integer> declaredStarts) {
    var starts = declaredStarts;
    if (separator == CellSeparator.FIXED_WIDTH && starts.isEmpty()) {
      starts = BlankCells.fieldStarts(linesWithNumbers());
      if (starts.size() < 2) {
        return null;
      }
    }
    Map<Integer, Integer> dated = new HashMap<>();
    Map<Integer, Integer> numeric = new HashMap<>();
    for (var line : sample) {
      var cells = separator.split(line, starts);
      if (cells.size() < 2) {
        continue;
      }
      int date = CellLook.dateIn(cells);
      if (date >= 0 && CellLook.hasValueBeside(cells, date)) {
        dated.merge(cells.size() * 1000 + date, 1, Integer::sum);
      } else if (date < 0 && CellLook.isNumeric(cells)) {
        numeric.merge(cells.size() * 1000 + 999, 1, Integer::sum);
      }
    }
    boolean withDates = !dated.isEmpty() && sum(dated) * 2 >= sum(numeric);
    var counted = withDates ? dated : numeric;
    if (counted.isEmpty()) {
      return null;
    }
    int usual = usual(counted);
    int width = usual / 1000;
    int date = withDates ? usual % 1000 : -1;
    return new Cut(
        separator, starts, width, filled(separator, starts, width, date), date, counted.get(usual));
  }

  private int filled(CellSeparator separator, List<Integer> starts, int width, int date) {
    int filled = 0;
    for (var line : sample) {
      var row = new TableRow(0, separator.split(line, starts));
      boolean counts = row.cells().size() == width;
      if (counts && (date < 0 || CellLook.of(row.cell(date)) == CellLook.DATE)) {
        filled = Math.max(filled, row.width());
      }
    }
    return filled;
  }

  private List<String> linesWithNumbers() {
    var lines = new ArrayList<String>();
    for (var line : sample) {
      long digits = line.chars().filter(c -> c >= '0' && c <= '9').count();
      if (digits * 4 >= line.strip().length()) {
        lines.add(line);
      }
    }
    return lines;
  }

  private static int sum(Map<Integer, Integer> counts) {
    return counts.values().stream().mapToInt(Integer::intValue).sum();
  }

  /** The most frequent; of two as frequent, the wider one, since cells are lost, not found. */
  private static int usual(Map<Integer, Integer> counts) {
    int usual = -1;
    for (var entry : counts.entrySet()) {
      int most = usual < 0 ? 0 : counts.get(usual);
      if (entry.getValue() > most || (entry.getValue() == most && entry.getKey() > usual)) {
        usual = entry.getKey();
      }
    }
    return usual;
  }
}
