package agro.units;

/** Reads units, the word "per" and what a unit is an amount of. */
final class UnitReader {

  private static final int MOST_WORDS = 7;

  private final TextCursor cursor;
  private final int[] ends = new int[64];

  UnitReader(TextCursor cursor) {
    this.cursor = cursor;
  }

  /** A unit; refused with the nearest known one if there is none here. */
  UnitWord unit() {
    var found = unitOrNull();
    if (found == null) {
      throw QuantityRefusals.unknownUnit(cursor, "a unit such as mL, L, g, kg, lb or fl oz (US)");
    }
    return found;
  }

  /** The longest unit that stands here, or null; the cursor moves behind it. */
  UnitWord unitOrNull() {
    int start = cursor.at();
    int count = findEnds(start);
    for (int i = count - 1; i >= 0; i--) {
      var spelling = spelling(start, ends[i]);
      var found = spelling.isEmpty() ? null : UnitLexicon.find(spelling);
      if (found != null) {
        cursor.moveTo(ends[i]);
        return found;
      }
    }
    return null;
  }

  /** A thing such as "plants", or null. */
  String thing() {
    int start = cursor.at();
    int count = findEnds(start);
    for (int i = count - 1; i >= 0; i--) {
      var found = RateThings.thing(spelling(start, ends[i]));
      if (found != null) {
        cursor.moveTo(ends[i]);
        return found;
      }
    }
    return null;
  }

  /** What the unit is an amount of: "ai", "of product", "seed"; empty if the text does not say. */
  String substance() {
    int before = cursor.at();
    cursor.skipSpaces();
    boolean bracket = cursor.peek() == '(';
    if (bracket) {
      cursor.skip(1);
    }
    cursor.skipWord("of");
    int start = cursor.at();
    int count = findEnds(start);
    for (int i = count - 1; i >= 0; i--) {
      var words = spelling(start, ends[i]);
      if (RateThings.isSubstance(words)) {
        cursor.moveTo(ends[i]);
        if (bracket && cursor.peek() == ')') {
          cursor.skip(1);
        }
        return TextCursor.lower(words);
      }
    }
    cursor.moveTo(before);
    return "";
  }

  /** A mark in brackets that stands at the end for the whole rate, or an empty text. */
  String trailingMark() {
    int before = cursor.at();
    cursor.skipSpaces();
    var rest = TextCursor.lower(cursor.rest()).strip();
    boolean bracketed = rest.length() > 2 && rest.charAt(0) == '(' && rest.endsWith(")");
    var mark = bracketed ? UnitWord.standardMark(rest.substring(1, rest.length() - 1).strip()) : "";
    if (mark.equals("us") || mark.equals("imp")) {
      cursor.moveTo(cursor.text().length());
      return mark;
    }
    cursor.moveTo(before);
    return "";
  }

  /** Steps over "/", "per", "a" or "in" if a rate goes on behind it. */
  boolean skipPer() {
    int before = cursor.at();
    cursor.skipSpaces();
    if (cursor.peek() == '/') {
      cursor.skip(1);
      cursor.skipSpaces();
      cursor.skipWord("per");
      return true;
    }
    if (cursor.skipWord("per")) {
      if (!cursor.skipWord("each")) {
        cursor.skipWord("a");
      }
      return true;
    }
    if (cursor.skipWord("a")
        || cursor.skipWord("an")
        || cursor.skipWord("in")
        || cursor.skipWord("each")
        || cursor.skipWord("every")) {
      return true;
    }
    cursor.moveTo(before);
    return false;
  }

  /** Whether the power -1 stands here. */
  boolean standsInverse() {
    int skip = cursor.peek() == '^' ? 1 : 0;
    boolean raised = cursor.peek() == '\u207b' && cursor.peek(1) == '\u00b9';
    boolean minus =
        TextCursor.isDash(cursor.peek(skip))
            && cursor.peek(skip + 1) == '1'
            && !TextCursor.isLetterOrDigit(cursor.peek(skip + 2))
            && cursor.peek(skip + 2) != '.'
            && cursor.peek(skip + 2) != '/';
    return raised || minus;
  }

  /** A second unit with the power -1 behind it, as in "L ha-1", or null. */
  UnitWord inverseUnit() {
    int before = cursor.at();
    cursor.skipSpaces();
    if (cursor.peek() == '\u00b7' || cursor.peek() == '.') {
      cursor.skip(1);
      cursor.skipSpaces();
    }
    if (!cursor.atEnd()) {
      var found = unitOrNull();
      if (found != null && standsInverse()) {
        cursor.skip(cursor.peek() == '^' ? 3 : 2);
        return found;
      }
    }
    cursor.moveTo(before);
    return null;
  }

  /** The places where a unit that begins here may end, in rising order. */
  private int findEnds(int start) {
    var text = cursor.text();
    int last = lastEnd(start);
    int count = 0;
    for (int i = start + 1; i < last && count < MOST_WORDS; i++) {
      char before = text.charAt(i - 1);
      boolean edge = isBoundary(text.charAt(i)) || before == ')' || before == '%';
      if (edge && !TextCursor.isSpace(before)) {
        ends[count++] = i;
      }
    }
    if (last > start && count < ends.length && !TextCursor.isSpace(text.charAt(last - 1))) {
      ends[count++] = last;
    }
    return count;
  }

  /** Where the line of a rate ends the unit at the latest. */
  private int lastEnd(int start) {
    var text = cursor.text();
    boolean percent = text.charAt(Math.min(start, text.length() - 1)) == '%';
    for (int i = start; i < text.length(); i++) {
      char next = text.charAt(i);
      boolean perWord =
          next == ' '
              && i > start
              && text.startsWith(" per ", i)
              && !text.startsWith("force", Math.max(0, i - 5));
      if (perWord || (next == '/' && !percent && !isPartOfUnit(start, i))) {
        return i;
      }
    }
    return text.length();
  }

  /** Whether a slash belongs to a unit of pressure, or to the basis of a share. */
  private boolean isPartOfUnit(int start, int slash) {
    var text = cursor.text();
    if (slash + 1 >= text.length() || slash == start) {
      return false;
    }
    char before = text.charAt(slash - 1);
    char after = text.charAt(slash + 1);
    boolean basis = "wvm".indexOf(before) >= 0 && "wvm".indexOf(after) >= 0;
    boolean weight = text.startsWith("kg", start) || text.startsWith("lb", start);
    return basis || (weight && slash - start <= 3 && "cis".indexOf(after) >= 0);
  }

  private static boolean isBoundary(char c) {
    return TextCursor.isSpace(c)
        || TextCursor.isDash(c)
        || c == '/'
        || c == '('
        || c == ')'
        || c == '^'
        || c == '\u207b'
        || c == '\u00b7'
        || c == ','
        || c == ';'
        || c == ':'
        || c == '.';
  }

  /** The text with single blanks, without the points of abbreviations. */
  private String spelling(int start, int end) {
    var text = cursor.text();
    boolean plain = true;
    for (int i = start; i < end && plain; i++) {
      char c = text.charAt(i);
      boolean single = c == ' ' && text.charAt(i - 1) != ' ';
      plain = c != '.' && (single || !TextCursor.isSpace(c));
    }
    if (plain) {
      return text.substring(start, end);
    }
    var words = new StringBuilder(end - start);
    for (int i = start; i < end; i++) {
      char c = text.charAt(i);
      boolean space = TextCursor.isSpace(c);
      boolean abbreviated = c == '.' && i > start && Character.isLetter(text.charAt(i - 1));
      if (abbreviated
          && i + 1 < end
          && Character.isLetter(text.charAt(i + 1))
          && words.length() > 1) {
        words.append(' ');
      } else if (space && !words.isEmpty() && words.charAt(words.length() - 1) != ' ') {
        words.append(' ');
      } else if (!space && !abbreviated) {
        words.append(c);
      }
    }
    return words.toString().strip();
  }
}
