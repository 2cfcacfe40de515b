package agro.stats;

import java.util.function.DoubleUnaryOperator;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;
import org.hipparchus.special.Beta;
import org.hipparchus.special.Gamma;

/**
 * Upper tail areas of the distributions of test statistics, computed as tails and never as one
 * minus the rest, so that a chance of 1e-17 keeps its digits; and the values that are exceeded with
 * a given chance.
 */
public final class UpperTail {

  private static final double ACCURACY = 1e-15;
  private static final int TERMS = 1_000_000;
  private static final int STEPS = 500;

  private UpperTail() {}

  /**
   * Chance that a chi-squared number exceeds a value.
   *
   * @param value any number; below zero the chance is 1
   * @param df degrees of freedom, positive
   * @return 0 to 1; NaN for NaN
   */
  public static double chiSquared(double value, double df) {
    if (Double.isNaN(value)) {
      return Double.NaN;
    }
    if (value <= 0) {
      return 1;
    }
    return value == Double.POSITIVE_INFINITY
        ? 0
        : Gamma.regularizedGammaQ(df / 2, value / 2, ACCURACY, TERMS);
  }

  /**
   * Chance that a ratio of variances exceeds a value.
   *
   * @param value any number; below zero the chance is 1
   * @param df1 degrees of freedom above the line, positive
   * @param df2 degrees of freedom below the line, positive
   * @return 0 to 1; NaN for NaN
   */
  public static double f(double value, double df1, double df2) {
    if (Double.isNaN(value)) {
      return Double.NaN;
    }
    if (value <= 0) {
      return 1;
    }
    return Beta.regularizedBeta(df2 / (df2 + df1 * value), df2 / 2, df1 / 2, ACCURACY, TERMS);
  }

  /**
   * Chance that Student's t exceeds a value.
   *
   * @param value any number
   * @param df degrees of freedom, positive; infinite for the normal distribution
   * @return 0 to 1; NaN for NaN
   */
  public static double t(double value, double df) {
    if (Double.isNaN(value)) {
      return Double.NaN;
    }
    if (Double.isInfinite(df)) {
      return NormalTail.above(value);
    }
    if (value < 0) {
      return 1 - t(-value, df);
    }
    double square = value * value;
    return 0.5 * Beta.regularizedBeta(df / (df + square), df / 2, 0.5, ACCURACY, TERMS);
  }

  /**
   * The value that Student's t exceeds with a given chance.
   *
   * @param chance between 0 and 1, both excluded
   * @param df degrees of freedom, positive; infinite for the normal distribution
   * @return the critical value
   * @throws IllegalArgumentException if the chance is not between 0 and 1
   */
  public static double tExceededWith(double chance, double df) {
    check(chance);
    if (Double.isInfinite(df)) {
      return -NormalQuantile.of(chance);
    }
    if (chance > 0.5) {
      return -tExceededWith(1 - chance, df);
    }
    return chance == 0.5 ? 0 : valueAt(chance, x -> t(x, df));
  }

  /**
   * The value that a ratio of variances exceeds with a given chance.
   *
   * @param chance between 0 and 1, both excluded
   * @param df1 degrees of freedom above the line, positive
   * @param df2 degrees of freedom below the line, positive
   * @return the critical value
   * @throws IllegalArgumentException if the chance is not between 0 and 1
   */
  public static double fExceededWith(double chance, double df1, double df2) {
    check(chance);
    return valueAt(chance, x -> f(x, df1, df2));
  }

  /**
   * The value that a chi-squared number exceeds with a given chance.
   *
   * @param chance between 0 and 1, both excluded
   * @param df degrees of freedom, positive
   * @return the critical value
   * @throws IllegalArgumentException if the chance is not between 0 and 1
   */
  public static double chiSquaredExceededWith(double chance, double df) {
    check(chance);
    return valueAt(chance, x -> chiSquared(x, df));
  }

  private static void check(double chance) {
    if (!(chance > 0 && chance < 1)) {
      throw new IllegalArgumentException(
          "a critical value needs a chance between 0 and 1, but got " + chance);
    }
  }

  private static double valueAt(double chance, DoubleUnaryOperator tail) {
    double low = 0;
    double high = 1;
    while (tail.applyAsDouble(high) > chance) {
      low = high;
      high *= 2;
    }
    while (low == 0 && high > Double.MIN_NORMAL && tail.applyAsDouble(high / 2) < chance) {
      high /= 2;
    }
    double target = Math.log(chance);
    var solver = new BracketingNthOrderBrentSolver(1e-15, 1e-300, 1e-16, 5);
    return solver.solve(
        STEPS, x -> Math.log(tail.applyAsDouble(x)) - target, low == 0 ? high / 2 : low, high);
  }
}
