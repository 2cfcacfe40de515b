package agro.course.sheet;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Numbers as a person writes them down. */
public final class HandNumbers {

  private HandNumbers() {}

  /**
   * A number rounded as on paper: halves, judged by the shortest decimal form, away from zero.
   *
   * @param value any number
   * @param decimals decimals, 0 or more
   * @return the rounded number; NaN and infinities stay as they are
   */
  public static double rounded(double value, int decimals) {
    return Double.isFinite(value)
        ? BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP).doubleValue()
        : value;
  }

  /**
   * What a straight line between two printed entries gives, rounded to the decimals of the table.
   *
   * @param low entry before
   * @param high entry behind
   * @param share share of the step from the one to the other, 0 to 1
   * @param decimals decimals of the table
   * @return the interpolated entry
   */
  static double between(double low, double high, double share, int decimals) {
    return rounded(low + share * (high - low), decimals);
  }
}
