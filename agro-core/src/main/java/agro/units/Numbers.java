package agro.units;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Locale;

/**
 * Numbers in print: a decimal point, no grouping, never an exponent, independent of the machine's
 * locale. Rounding happens here and nowhere in a calculation.
 */
public final class Numbers {

  /** Whole numbers below it have no more than ten digits and print as they are. */
  private static final double WHOLE = 1e9;

  private Numbers() {}

  /**
   * A number with up to ten significant digits and no trailing zeros, which hides the noise of
   * binary fractions. All digits before the decimal point are printed, also beyond ten.
   *
   * @param value any number; NaN prints as {@code "not known"}
   * @return the printed number
   */
  public static String plain(double value) {
    if (!Double.isFinite(value)) {
      return special(value);
    }
    if (value == 0) {
      return "0";
    }
    if (value == Math.rint(value) && Math.abs(value) < WHOLE) {
      return Long.toString((long) value);
    }
    var exact = new BigDecimal(value);
    int digitsBeforePoint = exact.precision() - exact.scale();
    return exact
        .round(new MathContext(Math.max(10, digitsBeforePoint), RoundingMode.HALF_EVEN))
        .stripTrailingZeros()
        .toPlainString();
  }

  /**
   * A number with a fixed number of decimals; a value half-way between two, judged by its shortest
   * decimal form, is rounded away from zero, as on paper.
   *
   * @param value any number; NaN prints as {@code "not known"}
   * @param decimals decimals, 0 or more
   * @return the printed number, never a negative zero
   */
  public static String fixed(double value, int decimals) {
    if (!Double.isFinite(value)) {
      return special(value);
    }
    var printed = String.format(Locale.ROOT, "%." + decimals + "f", value);
    return isNegativeZero(printed) ? printed.substring(1) : printed;
  }

  /**
   * A number with a fixed number of significant digits at most, and no trailing zeros. All digits
   * before the decimal point are printed, those beyond the significant ones as zeros.
   *
   * @param value any number; NaN prints as {@code "not known"}
   * @param digits significant digits, 1 or more
   * @return the printed number
   */
  public static String significant(double value, int digits) {
    if (!Double.isFinite(value)) {
      return special(value);
    }
    if (value == 0) {
      return "0";
    }
    return BigDecimal.valueOf(value)
        .round(new MathContext(digits, RoundingMode.HALF_UP))
        .stripTrailingZeros()
        .toPlainString();
  }

  private static boolean isNegativeZero(String printed) {
    return printed.charAt(0) == '-'
        && printed.chars().allMatch(sign -> sign == '-' || sign == '0' || sign == '.');
  }

  private static String special(double value) {
    if (Double.isNaN(value)) {
      return "not known";
    }
    return value > 0 ? "unbounded" : "unbounded below";
  }
}
