package agro.stats.assumption;

import agro.report.InputProblem;
import agro.source.Reference;
import agro.stats.NormalQuantile;
import agro.stats.NormalTail;
import agro.stats.TestSentence;
import java.util.Arrays;
import java.util.List;

/**
 * Shapiro-Wilk test of normality, after Royston 1995 for 3 to 5,000 values.
 *
 * <p>W is the squared correlation of the sorted values with weights that stand for the expected
 * order of normal values. Its chance comes from a normal approximation of ln(1 - W), and for three
 * values from the exact distribution.
 *
 * @param w statistic W, from above 0 to 1; small values speak against normality
 * @param pValue chance of such a W or a smaller one for normal values
 * @param n number of values
 * @param remarks what a reader has to know about the values, possibly nothing
 */
public record ShapiroWilk(double w, double pValue, int n, List<String> remarks) {

  private static final int LARGEST = 5000;
  private static final int SMALL_UP_TO = 11;
  private static final double RANGE_LOST_IN_ROUNDING = 1e-10;

  private static final double[] LAST_WEIGHT = {
    0, 0.221157, -0.147981, -2.07119, 4.434685, -2.706056
  };
  private static final double[] LAST_BUT_ONE = {
    0, 0.042981, -0.293762, -1.752461, 5.682633, -3.582633
  };
  private static final double[] GAMMA = {-2.273, 0.459};
  private static final double[] SMALL_MEAN = {0.5440, -0.39978, 0.025054, -6.714e-4};
  private static final double[] SMALL_LOG_SPREAD = {1.3822, -0.77857, 0.062767, -0.0020322};
  private static final double[] LARGE_MEAN = {-1.5861, -0.31082, -0.083751, 0.0038915};
  private static final double[] LARGE_LOG_SPREAD = {-0.4803, -0.082676, 0.0030302};

  /** Keeps the remarks as they are now. */
  public ShapiroWilk {
    remarks = List.copyOf(remarks);
  }

  /**
   * Tests values, for example the residuals of an analysis of variance.
   *
   * @param values 3 to 5,000 finite values, not all equal
   * @return the result
   * @throws InputProblem if there are too few or too many values, one is not finite, or all are
   *     equal
   */
  public static ShapiroWilk test(double... values) {
    double[] sorted = checked(values);
    int n = sorted.length;
    double lack = lackOfFit(sorted);
    double p = chance(lack, n);
    long different = Arrays.stream(sorted).distinct().count();
    var remarks =
        different <= n / 2
            ? List.of(
                "only "
                    + different
                    + " different values among "
                    + n
                    + ": ties lower W, and the chance is too small")
            : List.<String>of();
    return new ShapiroWilk(1 - lack, p, n, remarks);
  }

  private static double[] checked(double[] values) {
    int n = values.length;
    if (n < 3 || n > LARGEST) {
      throw InputProblem.of(n + " values were given to the test of Shapiro and Wilk")
          .expected("3 to 5000 values")
          .because("the approximation of its distribution was made for that range")
          .mend(
              n < 3
                  ? "take residuals of more plots"
                  : "look at the residuals in a figure; with so many values any test finds a trifle");
    }
    double[] sorted = values.clone();
    Arrays.sort(sorted);
    for (double value : sorted) {
      if (!Double.isFinite(value)) {
        throw InputProblem.of("One of the values is " + value)
            .expected("finite numbers")
            .because("a value that is not there has no place in the order")
            .mend("leave missing values out");
      }
    }
    double range = sorted[n - 1] - sorted[0];
    double size = Math.max(Math.abs(sorted[0]), Math.abs(sorted[n - 1]));
    if (range <= size * RANGE_LOST_IN_ROUNDING) {
      throw InputProblem.of("All " + n + " values equal " + sorted[0])
          .expected("values that differ")
          .because("equal values have no distribution that could be compared with the normal one")
          .mend("check the data: an analysis without scatter needs no test");
    }
    return sorted;
  }

  /** 1 - W, from a product of a difference and a sum so that W close to 1 keeps its digits. */
  private static double lackOfFit(double[] sorted) {
    int n = sorted.length;
    double[] weights = weights(n);
    double range = sorted[n - 1] - sorted[0];
    double mean = Arrays.stream(sorted).map(x -> x / range).sum() / n;
    double weightSquares = 0;
    double squares = 0;
    double products = 0;
    for (int i = 0; i < n; i++) {
      double deviation = sorted[i] / range - mean;
      weightSquares += weights[i] * weights[i];
      squares += deviation * deviation;
      products += weights[i] * deviation;
    }
    double root = Math.sqrt(weightSquares * squares);
    return (root - products) * (root + products) / (weightSquares * squares);
  }

  private static double[] weights(int n) {
    double[] weights = new double[n];
    if (n == 3) {
      weights[2] = Math.sqrt(0.5);
      weights[0] = -weights[2];
      return weights;
    }
    double[] expected = new double[n];
    double squares = 0;
    for (int i = 0; i < n; i++) {
      expected[i] = NormalQuantile.of((i + 1 - 0.375) / (n + 0.25));
      squares += expected[i] * expected[i];
    }
    double root = Math.sqrt(squares);
    double scale = 1 / Math.sqrt(n);
    double last = polynomial(LAST_WEIGHT, scale) + expected[n - 1] / root;
    double second = polynomial(LAST_BUT_ONE, scale) + expected[n - 2] / root;
    int fixed = n > 5 ? 2 : 1;
    double rest = squares - 2 * expected[n - 1] * expected[n - 1];
    double share = 1 - 2 * last * last;
    if (fixed == 2) {
      rest -= 2 * expected[n - 2] * expected[n - 2];
      share -= 2 * second * second;
    }
    double factor = Math.sqrt(rest / share);
    for (int i = fixed; i < n - fixed; i++) {
      weights[i] = expected[i] / factor;
    }
    weights[n - 1] = last;
    weights[0] = -last;
    if (fixed == 2) {
      weights[n - 2] = second;
      weights[1] = -second;
    }
    return weights;
  }

  private static double chance(double lack, int n) {
    if (n == 3) {
      double angle = Math.asin(Math.sqrt(1 - lack)) - Math.asin(Math.sqrt(0.75));
      return Math.min(1, Math.max(0, 6 / Math.PI * angle));
    }
    if (lack <= 0) {
      return 1;
    }
    double y = Math.log(lack);
    if (n > SMALL_UP_TO) {
      double log = Math.log(n);
      return NormalTail.above(
          (y - polynomial(LARGE_MEAN, log)) / Math.exp(polynomial(LARGE_LOG_SPREAD, log)));
    }
    double gamma = polynomial(GAMMA, n);
    if (y >= gamma) {
      return 0;
    }
    double transformed = -Math.log(gamma - y);
    return NormalTail.above(
        (transformed - polynomial(SMALL_MEAN, n)) / Math.exp(polynomial(SMALL_LOG_SPREAD, n)));
  }

  private static double polynomial(double[] coefficients, double x) {
    double sum = 0;
    for (int i = coefficients.length - 1; i >= 0; i--) {
      sum = sum * x + coefficients[i];
    }
    return sum;
  }

  /**
   * The work that the test rests on.
   *
   * @return Royston 1995
   */
  public Reference source() {
    return AssumptionSources.ROYSTON_1995;
  }

  /**
   * The result as papers print it.
   *
   * @return for example "W = 0.96; n = 72; P = 0.022"
   */
  public String sentence() {
    return String.format(java.util.Locale.ROOT, "W = %.4f; n = %d; ", w, n)
        + TestSentence.chance(pValue);
  }

  @Override
  public String toString() {
    return "Shapiro-Wilk: " + sentence();
  }
}
