package agro.reading;

import agro.report.InputProblem;
import agro.report.SourceLocation;
import java.util.regex.Pattern;

/** Numbers as they are written in files: strictly, with the declared decimal mark, no grouping. */
final class NumberText {

  private static final Pattern DECIMAL =
      Pattern.compile("[+-]?([0-9]+\\.?[0-9]*|\\.[0-9]+)([eE][+-]?[0-9]+)?");
  private static final Pattern WHOLE = Pattern.compile("[+-]?[0-9]+");
  private static final Pattern GROUPED =
      Pattern.compile("[+-]?[0-9]{1,3}([.,'\\s\\h][0-9]{3})+([.,][0-9]+)?");

  /** Signs that print uses for minus: the minus sign proper and the dashes. */
  private static final String SIGN_FROM_PRINT = "\u2212\u2010\u2011\u2012\u2013\u2014";

  private static final int MOST_PLAIN = 15;
  private static final double[] POWERS_OF_TEN = new double[MOST_PLAIN + 1];

  static {
    POWERS_OF_TEN[0] = 1;
    for (int i = 1; i <= MOST_PLAIN; i++) {
      POWERS_OF_TEN[i] = 10 * POWERS_OF_TEN[i - 1];
    }
  }

  private NumberText() {}

  /**
   * Reads a number.
   *
   * @param text cell without surrounding white space, not empty
   * @param decimalMark point or comma
   * @param place where the cell stands
   * @return a finite number
   * @throws InputProblem for anything else
   */
  static double number(String text, char decimalMark, SourceLocation place) {
    double plain = plainDecimal(text, decimalMark);
    if (!Double.isNaN(plain)) {
      return plain;
    }
    char otherMark = decimalMark == ',' ? '.' : ',';
    boolean usesOtherMark = text.indexOf(otherMark) >= 0;
    var pointed = decimalMark == ',' ? text.replace(',', '.') : text;
    if (!usesOtherMark && DECIMAL.matcher(pointed).matches()) {
      double value = Double.parseDouble(pointed);
      if (Double.isFinite(value)) {
        return value;
      }
      throw problem(text, decimalMark, place)
          .because("the number is larger than any that can be computed with")
          .mend("check the exponent");
    }
    var swapped = text.replace(decimalMark, '_').replace(otherMark, '.');
    if (usesOtherMark && DECIMAL.matcher(swapped).matches()) {
      throw problem(text, decimalMark, place)
          .because(
              "'"
                  + otherMark
                  + "' may be a decimal mark or a grouping mark, and guessing could change the"
                  + " value a thousandfold")
          .mend(
              "declare the decimal mark '"
                  + otherMark
                  + "' for this file, or write the number with '"
                  + decimalMark
                  + "'");
    }
    throw problem(text, decimalMark, place)
        .because("the cell must be computed with")
        .mend(cure(text));
  }

  /**
   * A short number without exponent, as nearly every cell of a log holds one. Its digits make a
   * whole number below 2^53, and dividing that by a power of ten below 10^23 rounds once, as the
   * full parser does.
   *
   * @return the number, or NaN for any other text
   */
  private static double plainDecimal(String text, char decimalMark) {
    int at = text.charAt(0) == '-' ? 1 : 0;
    if (text.length() == at || text.length() - at > MOST_PLAIN) {
      return Double.NaN;
    }
    long digits = 0;
    int decimals = -1;
    for (; at < text.length(); at++) {
      char c = text.charAt(at);
      if (c >= '0' && c <= '9') {
        digits = 10 * digits + (c - '0');
        decimals += decimals >= 0 ? 1 : 0;
      } else if (c == decimalMark && decimals < 0 && at > 0 && text.charAt(at - 1) != '-') {
        decimals = 0;
      } else {
        return Double.NaN;
      }
    }
    double size = digits / POWERS_OF_TEN[Math.max(0, decimals)];
    return text.charAt(0) == '-' ? -size : size;
  }

  private static InputProblem.Awaited problem(String text, char mark, SourceLocation place) {
    return CellText.reads(text, place)
        .expected("a number with the decimal mark '" + mark + "', such as 12" + mark + "5");
  }

  private static String cure(String text) {
    if (GROUPED.matcher(text).matches()) {
      return "write the number without grouping marks";
    }
    if (SIGN_FROM_PRINT.indexOf(text.charAt(0)) >= 0) {
      return "write the minus sign as a hyphen: -";
    }
    boolean startsWithDigit = Character.digit(text.codePointAt(0), 10) >= 0;
    return startsWithDigit
        ? "leave the number alone in the cell, without unit or remark, or leave the cell empty"
        : "write a number, or leave the cell empty if the value is not known";
  }

  /**
   * Reads a whole number.
   *
   * @param text cell without surrounding white space, not empty
   * @param place where the cell stands
   * @return the number
   * @throws InputProblem for anything else, decimals included
   */
  static int wholeNumber(String text, SourceLocation place) {
    if (!WHOLE.matcher(text).matches()) {
      throw notWhole(text, place)
          .because("things that are counted have no fractions, and a mark could mean thousands")
          .mend("write the number in digits alone, or leave the cell empty where it may be");
    }
    try {
      return Integer.parseInt(text);
    } catch (NumberFormatException e) {
      throw notWhole(text, place)
          .because("the number is outside -2147483648 to 2147483647")
          .mend("check the number of digits");
    }
  }

  private static InputProblem.Awaited notWhole(String text, SourceLocation place) {
    return CellText.reads(text, place)
        .expected("a whole number without decimals and grouping, such as 12");
  }
}
