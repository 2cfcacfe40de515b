package agro.trial.efficacy;

import agro.stats.ConfidenceLimits;
import java.util.function.DoubleUnaryOperator;
import org.hipparchus.distribution.continuous.BetaDistribution;
import org.hipparchus.distribution.continuous.NormalDistribution;

/**
 * Limits of a ratio of two shares or of two counts, where animals live and die one by one without
 * regard to each other. Ratios are those of what is left; efficacy is 100 (1 − ratio).
 */
final class CountLimits {

  private static final double HALF = 0.5;
  private static final int STEPS = 200;
  private static final double PRECISION = 1e-15;

  private CountLimits() {}

  /**
   * Standard error of Abbott's efficacy as a share, by the delta method: √(pT qT / (nT pC²) + pT²
   * pC qC / (nC pC⁴)) with the shares p left alive.
   */
  static double binomialError(double aliveT, double totalT, double aliveC, double totalC) {
    double pT = aliveT / totalT;
    double pC = aliveC / totalC;
    double ratio = pT / pC;
    return Math.sqrt(pT * (1 - pT) / (totalT * pC * pC) + ratio * ratio * (1 - pC) / (totalC * pC));
  }

  /**
   * Limits of a ratio of two shares by scores (Koopman 1984). They exist when nothing is left of
   * the treated; the upper one is infinite when nothing is left of the control.
   */
  static ConfidenceLimits shares(
      double aliveT, double totalT, double aliveC, double totalC, double level) {
    double critical = normal(level);
    double estimate = aliveT / totalT / (aliveC / totalC);
    DoubleUnaryOperator score =
        logRatio -> score(Math.exp(logRatio), aliveT, totalT, aliveC, totalC);
    double middle = Math.log(aliveT > 0 ? estimate : HALF / totalT / (aliveC / totalC));
    double low = aliveT == 0 ? 0 : Math.exp(root(score, critical, middle, -1));
    double high =
        aliveC == 0 ? Double.POSITIVE_INFINITY : Math.exp(root(score, -critical, middle, 1));
    return new ConfidenceLimits(low, high);
  }

  /** Signed root of Koopman's statistic; it falls as the ratio rises. */
  private static double score(double ratio, double x, double m, double y, double n) {
    // Shares of control and treated under the ratio: the smaller root of a quadratic.
    double b = -(ratio * (m + y) + x + n);
    double c = x + y;
    double q = HALF * (Math.sqrt(Math.max(0, b * b - 4 * ratio * (m + n) * c)) - b);
    double pC = Math.min(c / q, Math.min(1, 1 / ratio));
    double pT = Math.min(1, ratio * pC);
    double apart = x / m - ratio * y / n;
    double variance = pT * (1 - pT) / m + ratio * ratio * pC * (1 - pC) / n;
    return variance > 0 ? apart / Math.sqrt(variance) : Math.signum(apart) * Double.MAX_VALUE;
  }

  private static double root(
      DoubleUnaryOperator falling, double target, double from, int direction) {
    double inside = from;
    double step = 1;
    double outside = from + direction * step;
    for (int i = 0; i < STEPS && beyond(falling, outside, target) != direction; i++) {
      inside = outside;
      step *= 1.5;
      outside += direction * step;
    }
    for (int i = 0; i < STEPS; i++) {
      double middle = HALF * (inside + outside);
      if (beyond(falling, middle, target) == direction) {
        outside = middle;
      } else {
        inside = middle;
      }
    }
    return HALF * (inside + outside);
  }

  private static int beyond(DoubleUnaryOperator falling, double at, double target) {
    return falling.applyAsDouble(at) < target ? 1 : -1;
  }

  /**
   * Exact limits of the ratio of two Poisson means given the sum of both counts (Przyborowski and
   * Wilenski 1940; Clopper and Pearson 1934).
   */
  static ConfidenceLimits poisson(
      double countT, double unitsT, double countC, double unitsC, double level) {
    double tail = HALF - HALF * level;
    double scale = unitsC / unitsT;
    double low =
        countT == 0
            ? 0
            : odds(
                new BetaDistribution(countT, countC + 1, PRECISION)
                    .inverseCumulativeProbability(tail));
    double high =
        countC == 0
            ? Double.POSITIVE_INFINITY
            : odds(
                new BetaDistribution(countT + 1, countC, PRECISION)
                    .inverseCumulativeProbability(1 - tail));
    return new ConfidenceLimits(scale * low, scale * high);
  }

  private static double odds(double share) {
    return share / (1 - share);
  }

  /**
   * Limits of (Ta Cb) / (Tb Ca) for four Poisson counts, on the log scale; half a count is added to
   * each where nothing is left of the treated (Haldane 1956). Densities differ from totals by the
   * factor given.
   */
  static ConfidenceLimits poisson(
      double tb, double ta, double cb, double ca, double factor, double level) {
    double more = ta == 0 ? HALF : 0;
    double log =
        Math.log(ta + more) - Math.log(tb + more) + Math.log(cb + more) - Math.log(ca + more);
    double error = Math.sqrt(1 / (ta + more) + 1 / (tb + more) + 1 / (cb + more) + 1 / (ca + more));
    double half = normal(level) * error;
    double low = ta == 0 ? 0 : factor * Math.exp(log - half);
    return new ConfidenceLimits(low, factor * Math.exp(log + half));
  }

  static double normal(double level) {
    return new NormalDistribution().inverseCumulativeProbability(HALF + HALF * level);
  }
}
