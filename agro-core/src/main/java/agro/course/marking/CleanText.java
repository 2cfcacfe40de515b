package agro.course.marking;

import java.util.Map;

/**
 * A typed text in plain signs: blanks, minus signs, digits and fractions as a keyboard has them.
 */
final class CleanText {

  private static final String SUPERSCRIPTS = "⁰¹²³⁴⁵⁶⁷⁸⁹";
  private static final String DASHES = "‐‑‒–—−";
  private static final String QUOTES = "’‘`´ʼ";
  private static final Map<Character, String> SIGNS =
      Map.ofEntries(
          Map.entry('½', " 1/2"),
          Map.entry('¼', " 1/4"),
          Map.entry('¾', " 3/4"),
          Map.entry('⅓', " 1/3"),
          Map.entry('⅔', " 2/3"),
          Map.entry('⅕', " 1/5"),
          Map.entry('⅖', " 2/5"),
          Map.entry('⅗', " 3/5"),
          Map.entry('⅘', " 4/5"),
          Map.entry('⅙', " 1/6"),
          Map.entry('⅛', " 1/8"),
          Map.entry('⅜', " 3/8"),
          Map.entry('⅝', " 5/8"),
          Map.entry('⅞', " 7/8"),
          Map.entry('℃', "°C"),
          Map.entry('℉', "°F"),
          Map.entry('º', "°"),
          Map.entry('˚', "°"),
          Map.entry('ℓ', "l"),
          Map.entry('㎖', "mL"),
          Map.entry('㎏', "kg"),
          Map.entry('\u212a', "K"),
          Map.entry('⁄', "/"),
          Map.entry('∕', "/"),
          Map.entry('÷', "/"),
          Map.entry('⋅', "·"),
          Map.entry('∙', "·"),
          Map.entry('•', "·"),
          Map.entry('％', "%"));

  private CleanText() {}

  static String of(String raw) {
    var clean = new StringBuilder(raw.length() + 8);
    boolean power = false;
    for (int i = 0; i < raw.length(); i++) {
      char next = raw.charAt(i);
      boolean raised = SUPERSCRIPTS.indexOf(next) >= 0 || next == '⁻';
      if (raised && (power || endsWithTen(clean))) {
        clean.append(power ? "" : "^").append(next == '⁻' ? "-" : SUPERSCRIPTS.indexOf(next));
        power = true;
      } else {
        power = false;
        append(clean, next);
      }
    }
    return clean.toString().strip();
  }

  private static boolean endsWithTen(StringBuilder text) {
    int end = text.length();
    return end >= 2
        && text.charAt(end - 1) == '0'
        && text.charAt(end - 2) == '1'
        && (end == 2 || !Character.isDigit(text.charAt(end - 3)));
  }

  private static void append(StringBuilder clean, char next) {
    var sign = SIGNS.get(next);
    if (sign != null) {
      boolean blanks = sign.charAt(0) == ' ' && clean.toString().endsWith(" ");
      clean.append(blanks ? sign.substring(1) : sign);
    } else if (Character.isWhitespace(next) || Character.isSpaceChar(next)) {
      if (!clean.isEmpty() && clean.charAt(clean.length() - 1) != ' ') {
        clean.append(' ');
      }
    } else if (DASHES.indexOf(next) >= 0) {
      clean.append('-');
    } else if (QUOTES.indexOf(next) >= 0) {
      clean.append('\'');
    } else if (Character.isDigit(next)) {
      clean.append((char) ('0' + Character.digit(next, 10)));
    } else if (next > '\uff00' && next < '\uff5f') {
      clean.append((char) (next - 0xfee0));
    } else if (!Character.isISOControl(next) && Character.getType(next) != Character.FORMAT) {
      clean.append(next);
    }
  }
}
