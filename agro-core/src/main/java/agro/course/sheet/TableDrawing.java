package agro.course.sheet;

import agro.units.Numbers;
import agro.working.Sheet;
import agro.working.Sheet.Align;
import agro.working.Wording;
import java.util.ArrayList;
import java.util.List;

/**
 * A table of numbers to look up in: a bold head row and a bold first column, a gap or line behind
 * every fifth row.
 *
 * @param heads head of each column
 * @param rows one text for each column
 */
record TableDrawing(List<String> heads, List<List<String>> rows) {

  private static final int GROUP = 5;

  TableDrawing {
    heads = List.copyOf(heads);
    rows = rows.stream().map(List::copyOf).toList();
  }

  /** Ten columns 0 to 9 behind a first column. */
  static List<String> digits(String first) {
    var heads = new ArrayList<String>();
    heads.add(first);
    for (int digit = 0; digit <= 9; digit++) {
      heads.add(Integer.toString(digit));
    }
    return heads;
  }

  static String number(Wording words, double value, int decimals) {
    return words.quantity(Numbers.fixed(value, decimals)).replace('-', '−');
  }

  /**
   * Draws the table.
   *
   * @return lower edge of the table
   */
  double draw(Sheet.Builder page, double x, double y, double width, double rowHeight) {
    double column = width / heads.size();
    double size = Math.min(3.4, 0.68 * rowHeight);
    var bold = new Sheet.Type(size, true, Align.MIDDLE);
    var plain = new Sheet.Type(size, false, Align.MIDDLE);
    double headHeight = rowHeight + 0.6;
    page.shade(
        List.of(
            new Sheet.Place(x, y),
            new Sheet.Place(x + width, y),
            new Sheet.Place(x + width, y + headHeight),
            new Sheet.Place(x, y + headHeight)),
        0.88);
    for (int i = 0; i < heads.size(); i++) {
      page.words(x + (i + 0.5) * column, y + 0.5 * headHeight + 0.35 * size, heads.get(i), bold);
    }
    double line = y + headHeight;
    for (int row = 0; row < rows.size(); row++) {
      double base = line + 0.5 * rowHeight + 0.35 * size;
      for (int i = 0; i < heads.size(); i++) {
        page.words(x + (i + 0.5) * column, base, rows.get(row).get(i), i == 0 ? bold : plain);
      }
      line += rowHeight;
      if (row % GROUP == GROUP - 1 && row < rows.size() - 1) {
        page.line(x, line, x + width, line, PaperPage.MIDDLE);
      }
    }
    page.line(x, y + headHeight, x + width, y + headHeight, PaperPage.STRONG);
    page.line(x + column, y, x + column, line, PaperPage.STRONG);
    page.box(x, y, width, line - y, PaperPage.FRAME);
    return line;
  }
}
