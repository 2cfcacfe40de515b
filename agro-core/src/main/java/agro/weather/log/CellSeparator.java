package agro.weather.log;

import java.util.ArrayList;
import java.util.List;

/** What stands between the cells of a log. */
public enum CellSeparator {
  /** A tab. */
  TAB('\t', "a tab"),
  /** A semicolon. */
  SEMICOLON(';', "a semicolon"),
  /** A vertical bar. */
  BAR('|', "a vertical bar"),
  /** A comma. */
  COMMA(',', "a comma"),
  /**
   * One or more blanks or tabs; a date, a time and AM or PM that follow each other are one cell.
   */
  BLANKS(' ', "blanks"),
  /** Nothing: each cell has its own columns of characters. */
  FIXED_WIDTH('\0', "fixed widths");

  private final char character;
  private final String words;

  CellSeparator(char character, String words) {
    this.character = character;
    this.words = words;
  }

  /**
   * The separator in words.
   *
   * @return for example {@code "a semicolon"}
   */
  public String words() {
    return words;
  }

  /** Whether one character separates cells. */
  boolean isOneCharacter() {
    return this != BLANKS && this != FIXED_WIDTH;
  }

  char character() {
    return character;
  }

  /** The trimmed cells of a line; quotes around a cell are taken off. */
  List<String> split(String line, List<Integer> fieldStarts) {
    return switch (this) {
      case BLANKS -> BlankCells.split(line);
      case FIXED_WIDTH -> BlankCells.cut(line, fieldStarts);
      default -> line.indexOf('"') < 0 ? plain(line) : quoted(line);
    };
  }

  private List<String> plain(String line) {
    var cells = new ArrayList<String>();
    int from = 0;
    int at = line.indexOf(character);
    while (at >= 0) {
      cells.add(BlankCells.trimmed(line, from, at));
      from = at + 1;
      at = line.indexOf(character, from);
    }
    cells.add(BlankCells.trimmed(line, from, line.length()));
    return cells;
  }

  /** A quote opens a cell only at its start, so that inch marks in headings stay what they are. */
  private List<String> quoted(String line) {
    var cells = new ArrayList<String>();
    var cell = new StringBuilder();
    boolean inQuotes = false;
    for (int i = 0; i < line.length(); i++) {
      char c = line.charAt(i);
      if (inQuotes && c == '"' && i + 1 < line.length() && line.charAt(i + 1) == '"') {
        cell.append('"');
        i++;
      } else if (c == '"' && (inQuotes || cell.toString().isBlank())) {
        inQuotes = !inQuotes;
      } else if (c == character && !inQuotes) {
        cells.add(BlankCells.trimmed(cell.toString(), 0, cell.length()));
        cell.setLength(0);
      } else {
        cell.append(c);
      }
    }
    // A quote that is never closed stays visible, so that its cell is no number.
    var rest = inQuotes ? '"' + cell.toString() : cell.toString();
    cells.add(BlankCells.trimmed(rest, 0, rest.length()));
    return cells;
  }
}
