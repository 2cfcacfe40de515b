package agro.units;

import java.util.List;

/** Reads the number or range at the head of a quantity. */
final class NumberReader {

  private static final String COMMA_WHY =
      "a comma is a decimal sign in some countries and groups thousands in others, and 1,5 must"
          + " never become 15";
  private static final String SUPERSCRIPTS =
      "\u2070\u00b9\u00b2\u00b3\u2074\u2075\u2076\u2077\u2078\u2079";

  /** A range this wide may be one whose power of ten was meant for both ends. */
  private static final double LEAST_POWER = 100;

  private final TextCursor cursor;

  NumberReader(TextCursor cursor) {
    this.cursor = cursor;
  }

  /** A number, or two with a dash or "to" between them. */
  NumberRange range() {
    int start = cursor.at();
    boolean between = cursor.skipWord("between");
    double low = number();
    int afterLow = cursor.at();
    if (!skipRangeSign(between)) {
      cursor.moveTo(afterLow);
      return new NumberRange(low, low);
    }
    int second = cursor.at();
    double high = number();
    if (high < low) {
      throw turned(start, afterLow, second);
    }
    if (high >= LEAST_POWER * low) {
      refuseSharedPower(start, afterLow, second, low, high);
    }
    return new NumberRange(low, high);
  }

  /** "1-2 x 10^6" may be meant from one million or from one. */
  private void refuseSharedPower(int start, int afterLow, int second, double low, double high) {
    int end = cursor.at();
    while (TextCursor.isSpace(cursor.text().charAt(end - 1))) {
      end--;
    }
    var other = cursor.text().substring(second, end);
    int tail = digitsFrom(second);
    if (charAt(tail) == '.') {
      tail = digitsFrom(tail + 1);
    }
    var power = cursor.text().substring(Math.min(tail, end), end);
    var sign = power.strip();
    if (sign.isEmpty() || "x\u00d7*\u00b7eEmM".indexOf(sign.charAt(0)) < 0) {
      return;
    }
    var one = cursor.text().substring(start, afterLow).strip();
    throw cursor.problem(
        tail,
        "a power stands behind the second number of a range alone",
        "the power behind both numbers, or none",
        "it may belong to both, or to the second only",
        List.of(
            cursor.replaced(start, end, one + power + " to " + other),
            cursor.replaced(start, end, Numbers.plain(low) + " to " + Numbers.plain(high))));
  }

  /** The range whose ends have been read one by one, each with its unit. */
  NumberRange upTo(double low, double high, int start, int afterLow, int second) {
    if (high < low) {
      throw turned(start, afterLow, second);
    }
    return new NumberRange(low, high);
  }

  /** Steps over the sign between the ends of a range if a number follows it. */
  boolean skipRangeSign(boolean between) {
    cursor.skipSpaces();
    if (between ? cursor.skipWord("and") : cursor.skipWord("to")) {
      return startsNumber();
    }
    if (cursor.peek() == '.' && cursor.peek(1) == '.') {
      cursor.skip(cursor.peek(2) == '.' ? 3 : 2);
    } else if (TextCursor.isDash(cursor.peek()) || cursor.peek() == '\u2026') {
      cursor.skip(1);
    } else {
      return false;
    }
    cursor.skipSpaces();
    return startsNumber();
  }

  boolean startsNumber() {
    char next = cursor.peek();
    return TextCursor.isDigit(next)
        || (next == '.' && TextCursor.isDigit(cursor.peek(1)))
        || fraction(next) != 0;
  }

  /** One number: decimal, fraction, mixed number or power of ten. */
  double number() {
    int start = cursor.at();
    if (!startsNumber()) {
      throw cursor.problem(
          start,
          cursor.atEnd() ? "the text ends where a number should stand" : "no number stands here",
          "a number such as 0.75, 1 000, 1/2 or 250-300",
          "an amount is a number with a unit",
          "write the number before its unit, for example \"0.75 L/ha\"");
    }
    if (fraction(cursor.peek()) != 0) {
      return glyph();
    }
    double value = decimal();
    if (cursor.peek() == '/' || cursor.peek() == '\u2044') {
      return TextCursor.isDigit(cursor.peek(1)) ? value / divisor() : value;
    }
    if (fraction(cursor.peek()) != 0) {
      return value + glyph();
    }
    return mixed(value, start);
  }

  private double mixed(double whole, int start) {
    int end = cursor.at();
    cursor.skipSpaces();
    if (fraction(cursor.peek()) != 0) {
      return whole + glyph();
    }
    int numerator = cursor.at();
    int digits = digitsFrom(numerator);
    char slash = cursor.peek(digits - numerator);
    if (digits > numerator
        && (slash == '/' || slash == '\u2044')
        && TextCursor.isDigit(cursor.peek(digits - numerator + 1))) {
      double above = Double.parseDouble(cursor.text().substring(numerator, digits));
      cursor.moveTo(digits);
      double part = above / divisor();
      if (part >= 1 || whole != Math.rint(whole)) {
        throw cursor.problem(
            start,
            "a mixed number needs a whole number and a fraction below one",
            "a number such as 2 1/2",
            "otherwise two numbers stand side by side",
            "write it as a decimal number");
      }
      return whole + part;
    }
    cursor.moveTo(end);
    return whole;
  }

  private double divisor() {
    cursor.skip(1);
    int start = cursor.at();
    int end = digitsFrom(start);
    double value = Double.parseDouble(cursor.text().substring(start, end));
    if (value == 0) {
      throw cursor.problem(
          start,
          "a fraction with nothing below its line",
          "a number above zero below the line",
          "nothing can be divided by zero",
          "write the number as a decimal number");
    }
    cursor.moveTo(end);
    return value;
  }

  private double decimal() {
    int start = cursor.at();
    int end = digitsFrom(start);
    boolean grouped = false;
    while ((grouped || end - start <= 3) && isGroup(end)) {
      end += 4;
      grouped = true;
    }
    if (charAt(end) == '.' && TextCursor.isDigit(charAt(end + 1))) {
      end = digitsFrom(end + 1);
    }
    refuseSigns(start, end);
    int mantissaEnd = end;
    end = exponentEnd(end);
    var digits = cursor.text().substring(start, end);
    cursor.moveTo(end);
    double value = Double.parseDouble(grouped ? ungrouped(digits) : digits);
    return finite(end == mantissaEnd ? power(value, start) : value, start);
  }

  private double finite(double value, int start) {
    if (Double.isInfinite(value)) {
      throw cursor.problem(
          start,
          "the number is beyond all measure",
          "a number below 1e308",
          "it cannot be held",
          "check the power of ten");
    }
    return value;
  }

  /** A factor such as "x 10^9", or the power of a bare "10^9". */
  private double power(double value, int start) {
    if (value == 10 && (cursor.peek() == '^' || superscript(cursor.peek()) >= 0)) {
      return Math.pow(10, exponent());
    }
    int end = cursor.at();
    cursor.skipSpaces();
    if (cursor.skipWord("million")) {
      return value * 1e6;
    }
    char sign = cursor.peek();
    if (sign == '\u00d7' || sign == 'x' || sign == '*' || sign == '\u00b7') {
      cursor.skip(1);
      cursor.skipSpaces();
      if (cursor.peek() == '1'
          && cursor.peek(1) == '0'
          && (cursor.peek(2) == '^' || superscript(cursor.peek(2)) >= 0)) {
        cursor.skip(2);
        return Double.parseDouble(Numbers.plain(value) + "e" + exponent());
      }
    }
    if (cursor.standsHere("billion")) {
      throw cursor.problem(
          cursor.at(),
          "\"billion\" has two sizes",
          "a power of ten",
          "a billion is 10^9 in one language and 10^12 in the next",
          List.of(
              cursor.replaced(start, cursor.at() + 7, Numbers.plain(value) + " x 10^9"),
              cursor.replaced(start, cursor.at() + 7, Numbers.plain(value) + " x 10^12")));
    }
    cursor.moveTo(end);
    return value;
  }

  private int exponent() {
    if (cursor.peek() == '^') {
      cursor.skip(1);
      int start = cursor.at();
      int end = digitsFrom(start);
      if (end == start || end - start > 3) {
        throw cursor.problem(
            start,
            "no power stands behind the sign ^",
            "a power of ten such as 10^9",
            "the size of the number hangs on it",
            "write the power as a whole number");
      }
      cursor.moveTo(end);
      return Integer.parseInt(cursor.text().substring(start, end));
    }
    int value = 0;
    for (int i = 0; superscript(cursor.peek()) >= 0 && i < 3; i++) {
      value = 10 * value + superscript(cursor.peek());
      cursor.skip(1);
    }
    return value;
  }

  /** End of "e9" or "E-3" behind a number, or the place itself if there is none. */
  private int exponentEnd(int end) {
    if (charAt(end) != 'e' && charAt(end) != 'E') {
      return end;
    }
    int digits = charAt(end + 1) == '-' || charAt(end + 1) == '+' ? end + 2 : end + 1;
    return TextCursor.isDigit(charAt(digits)) ? digitsFrom(digits) : end;
  }

  private void refuseSigns(int start, int end) {
    char next = charAt(end);
    if (next == ',' && TextCursor.isDigit(charAt(end + 1))) {
      int last = end;
      while (TextCursor.isDigit(charAt(last)) || charAt(last) == ',' || charAt(last) == '.') {
        last++;
      }
      if (!TextCursor.isDigit(charAt(last - 1))) {
        last--;
      }
      throw comma(start, end, last);
    }
    if ((next == '\'' || next == '\u2019') && TextCursor.isDigit(charAt(end + 1))) {
      throw cursor.problem(
          end,
          "an apostrophe stands inside a number",
          "digits with a blank between the thousands, or with nothing",
          "an apostrophe is also the sign of the foot",
          List.of(cursor.replaced(end, end + 1, "")));
    }
    if (next == '.' && charAt(end - 1) != '.' && TextCursor.isDigit(charAt(end + 1))) {
      throw cursor.problem(
          end,
          "a second point stands inside a number",
          "one decimal point",
          "points do not group thousands here",
          "write the thousands together or with a blank between them");
    }
  }

  private UnreadableQuantity comma(int start, int comma, int last) {
    var digits = cursor.text().substring(start, last);
    int first = digits.indexOf(',');
    boolean onlyOne = digits.indexOf(',', first + 1) < 0 && digits.indexOf('.') < 0;
    boolean threeBehind = digits.length() - first == 4;
    var joined = digits.replace(",", "");
    var decimal = digits.replace(".", "").replace(',', '.');
    int point = digits.indexOf('.');
    List<String> readings;
    if (!onlyOne) {
      boolean pointGroups = point >= 0 && point < first;
      readings = List.of(cursor.replaced(start, last, pointGroups ? decimal : joined));
    } else if (threeBehind) {
      readings =
          List.of(cursor.replaced(start, last, joined), cursor.replaced(start, last, decimal));
    } else {
      readings = List.of(cursor.replaced(start, last, decimal));
    }
    return cursor.problem(
        comma,
        "a comma stands inside the number " + digits,
        "a decimal point, and a blank or nothing between thousands",
        COMMA_WHY,
        readings);
  }

  private UnreadableQuantity turned(int start, int afterLow, int second) {
    var one = cursor.text().substring(start, afterLow).strip();
    var other = cursor.text().substring(second, cursor.at());
    var sign = cursor.text().substring(afterLow, second);
    boolean hyphenated = sign.equals("-") && other.indexOf('/') > 0;
    return cursor.problem(
        second,
        "the range runs from " + one + " down to " + other,
        "the lower number first",
        hyphenated
            ? "it may be a mixed number with a hyphen in it"
            : "a range that runs downwards is a slip of the pen, or a digit is missing",
        List.of(
            cursor.replaced(
                start, cursor.at(), hyphenated ? one + " " + other : other + sign + one)));
  }

  private boolean isGroup(int end) {
    return TextCursor.isSpace(charAt(end))
        && TextCursor.isDigit(charAt(end + 1))
        && TextCursor.isDigit(charAt(end + 2))
        && TextCursor.isDigit(charAt(end + 3))
        && !TextCursor.isDigit(charAt(end + 4))
        && charAt(end + 4) != '/'
        && charAt(end + 4) != '\u2044';
  }

  private static String ungrouped(String digits) {
    var joined = new StringBuilder(digits.length());
    for (int i = 0; i < digits.length(); i++) {
      if (!TextCursor.isSpace(digits.charAt(i))) {
        joined.append(digits.charAt(i));
      }
    }
    return joined.toString();
  }

  private int digitsFrom(int start) {
    int end = start;
    while (TextCursor.isDigit(charAt(end))) {
      end++;
    }
    return end;
  }

  private char charAt(int index) {
    return cursor.peek(index - cursor.at());
  }

  private static int superscript(char c) {
    return c == 0 ? -1 : SUPERSCRIPTS.indexOf(c);
  }

  private double glyph() {
    double value = fraction(cursor.peek());
    cursor.skip(1);
    return value;
  }

  private static double fraction(char c) {
    return switch (c) {
      case '\u00bd' -> 1 / 2.0;
      case '\u00bc' -> 1 / 4.0;
      case '\u00be' -> 3 / 4.0;
      case '\u2153' -> 1 / 3.0;
      case '\u2154' -> 2 / 3.0;
      case '\u2155' -> 1 / 5.0;
      case '\u2159' -> 1 / 6.0;
      case '\u215b' -> 1 / 8.0;
      case '\u215c' -> 3 / 8.0;
      case '\u215d' -> 5 / 8.0;
      case '\u215e' -> 7 / 8.0;
      default -> 0;
    };
  }
}
