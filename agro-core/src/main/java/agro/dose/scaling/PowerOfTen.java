package agro.dose.scaling;

import agro.units.Numbers;

/** Very large and very small numbers in print, as they are written on a label: 2 × 10^9. */
final class PowerOfTen {

  private static final double LARGE = 1e6;
  private static final double SMALL = 1e-4;
  private static final int DIGITS = 4;

  private PowerOfTen() {}

  static String print(double number) {
    if (number == 0 || (number < LARGE && number >= SMALL)) {
      return Numbers.significant(number, DIGITS);
    }
    int exponent = (int) Math.floor(Math.log10(number));
    var mantissa = Numbers.significant(number / Math.pow(10, exponent), DIGITS);
    if (mantissa.equals("10")) {
      mantissa = "1";
      exponent++;
    }
    return mantissa.equals("1") ? "10^" + exponent : mantissa + " × 10^" + exponent;
  }

  /** Both ends of a range, or one number where they are the same in print. */
  static String range(double low, double high) {
    var first = print(low);
    var second = print(high);
    return first.equals(second) ? first : first + " to " + second;
  }
}
