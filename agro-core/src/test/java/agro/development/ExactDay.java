package agro.development;

import java.math.BigDecimal;
import java.math.MathContext;

/**
 * Degree-days of one day in decimal arithmetic of 34 digits, by the power series of the arccosine
 * and of its integral; the temperatures are taken as the exact numbers that the doubles are.
 */
final class ExactDay {

  private static final MathContext DIGITS = MathContext.DECIMAL128;
  private static final BigDecimal TWO = BigDecimal.valueOf(2);
  private static final BigDecimal FOUR = BigDecimal.valueOf(4);
  private static final BigDecimal PI = new BigDecimal("3.14159265358979323846264338327950288");
  private static final BigDecimal SMALLEST = new BigDecimal("1e-26");

  private final CrossingCurve curve;
  private final BigDecimal min;
  private final BigDecimal max;
  private final BigDecimal amplitude;

  ExactDay(CrossingCurve curve, double min, double max) {
    this.curve = curve;
    this.min = new BigDecimal(min);
    this.max = new BigDecimal(max);
    amplitude = this.max.subtract(this.min).divide(TWO);
  }

  double degreeDays(double lower, double upper, UpperCutoff cutoff) {
    var net = area(lower);
    switch (cutoff) {
      case NONE -> {}
      case HORIZONTAL -> net = net.subtract(area(upper));
      case INTERMEDIATE -> net = net.subtract(area(upper).multiply(TWO));
      case VERTICAL -> {
        var step = new BigDecimal(upper).subtract(new BigDecimal(lower)).multiply(share(upper));
        net = net.subtract(area(upper)).subtract(step);
      }
    }
    return Math.max(0, net.doubleValue());
  }

  private BigDecimal area(double threshold) {
    var toMax = max.subtract(new BigDecimal(threshold));
    var toMin = new BigDecimal(threshold).subtract(min);
    if (toMax.signum() <= 0) {
      return BigDecimal.ZERO;
    }
    var straight = toMax.subtract(toMin).divide(TWO).max(BigDecimal.ZERO);
    if (toMin.signum() <= 0) {
      return straight;
    }
    var distance = toMax.min(toMin);
    var depth = distance.divide(amplitude, DIGITS);
    var tip =
        curve == CrossingCurve.TRIANGLE
            ? depth.divide(FOUR)
            : depth.sqrt(DIGITS).multiply(series(depth, true), DIGITS);
    return straight.add(distance.multiply(tip, DIGITS));
  }

  private BigDecimal share(double threshold) {
    var toMax = max.subtract(new BigDecimal(threshold));
    var toMin = new BigDecimal(threshold).subtract(min);
    if (toMax.signum() <= 0) {
      return BigDecimal.ZERO;
    }
    if (toMin.signum() <= 0) {
      return BigDecimal.ONE;
    }
    var depth = toMax.min(toMin).divide(amplitude, DIGITS);
    var beyond =
        curve == CrossingCurve.TRIANGLE
            ? depth.divide(TWO)
            : depth.sqrt(DIGITS).multiply(series(depth, false), DIGITS);
    return toMax.compareTo(toMin) > 0 ? BigDecimal.ONE.subtract(beyond) : beyond;
  }

  /** √2 / π times the sum of C(2k, k) / (8^k (2k + 1)) t^k, each over k + 3/2 for the area. */
  private static BigDecimal series(BigDecimal depth, boolean ofArea) {
    var term = TWO.sqrt(DIGITS).divide(PI, DIGITS);
    var sum = BigDecimal.ZERO;
    for (int k = 0; term.compareTo(SMALLEST) > 0; k++) {
      var part = term.divide(BigDecimal.valueOf(2 * k + 1), DIGITS);
      sum = sum.add(ofArea ? part.divide(BigDecimal.valueOf(k + 1.5), DIGITS) : part, DIGITS);
      var ratio =
          BigDecimal.valueOf((2L * k + 1) * (2 * k + 2))
              .divide(BigDecimal.valueOf(8L * (k + 1) * (k + 1)), DIGITS);
      term = term.multiply(ratio, DIGITS).multiply(depth, DIGITS);
    }
    return sum;
  }
}
