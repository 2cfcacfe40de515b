package agro.units;

import java.util.ArrayList;

/** Makes one unit of a word, or refuses the word with all it may mean. */
final class UnitClarity {

  private static final String MANY = " stands for more than one unit";

  private UnitClarity() {}

  /**
   * The one unit that a word stands for.
   *
   * @param system mark of the other unit of the same rate, which serves both; may be empty
   */
  static Unit<?> clear(TextCursor cursor, UnitWord word, int start, int end, String system) {
    if (word.isClear()) {
      return word.unit();
    }
    var chosen = system.isEmpty() ? null : word.with(system);
    if (chosen != null) {
      return chosen.unit();
    }
    var written = cursor.text().substring(start, end).strip();
    int until = behindMark(cursor.text(), start + written.length());
    var readings = new ArrayList<String>();
    var sizes = new StringBuilder(written).append(" may be ");
    int count = word.candidates().size();
    for (int i = 0; i < count; i++) {
      var unit = word.candidates().get(i);
      readings.add(cursor.replaced(start, until, unit.symbol()));
      sizes.append(i == 0 ? "" : i == count - 1 ? " or " : ", ").append(size(unit));
    }
    boolean trap = !word.trap().isEmpty();
    throw cursor.problem(
        start,
        "\"" + written + "\"" + (trap ? " is not the unit it looks like" : MANY),
        "a unit of one size",
        trap ? word.trap() : sizes.toString(),
        readings);
  }

  /** The mark that a word carries, so that it can serve the other unit of the rate. */
  static String system(UnitWord word) {
    if (!word.system().isEmpty() || !word.isClear()) {
      return word.system();
    }
    var symbol = word.unit().symbol();
    if (symbol.endsWith("(US)")) {
      return "us";
    }
    return symbol.endsWith("(imp)") ? "imp" : "";
  }

  /** End of a mark in brackets that chose nothing, or the place itself. */
  private static int behindMark(String text, int end) {
    int open = end;
    while (open < text.length() && TextCursor.isSpace(text.charAt(open))) {
      open++;
    }
    int close = open < text.length() && text.charAt(open) == '(' ? text.indexOf(')', open) : -1;
    return close < 0 ? end : close + 1;
  }

  private static String size(Unit<?> unit) {
    double size = unit.toBase(1);
    boolean small = size < 1;
    return unit.symbol()
        + " of "
        + switch (unit.kind()) {
          case VOLUME -> small ? Numbers.plain(size * 1000) + " mL" : Numbers.plain(size) + " L";
          case MASS -> small ? Numbers.plain(size * 1000) + " g" : Numbers.plain(size) + " kg";
          case AREA -> Numbers.plain(size) + " m\u00b2";
          default -> Numbers.plain(size) + " " + Samples.baseSymbol(unit.kind());
        };
  }
}
