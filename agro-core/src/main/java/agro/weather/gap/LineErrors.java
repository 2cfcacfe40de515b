package agro.weather.gap;

import agro.units.Numbers;

/** Errors of a straight line over a gap by place in the gap. Immutable. */
final class LineErrors {

  /** Day-to-day change that is assumed when the series is too short to tell, in °C. */
  static final double ASSUMED_STEP_CELSIUS = 2.5;

  private static final int LEAST_STEPS = 5;
  private static final double ASSUMED_MIN_TO_MAX = 0.5;

  private final double[] minErrors;
  private final double[] maxErrors;
  private final ErrorCorrelation correlation;
  private final String words;

  private LineErrors(
      double[] minErrors, double[] maxErrors, ErrorCorrelation correlation, String words) {
    this.minErrors = minErrors;
    this.maxErrors = maxErrors;
    this.correlation = correlation;
    this.words = words;
  }

  double minError(int index) {
    return minErrors[index];
  }

  double maxError(int index) {
    return maxErrors[index];
  }

  ErrorCorrelation correlation() {
    return correlation;
  }

  String words() {
    return words;
  }

  /**
   * Errors of a random walk tied down at both ends, when there are too few artificial gaps: the
   * variance after i of n + 1 steps is the variance of a step times i (n + 1 - i) / (n + 1).
   */
  static LineErrors ofRandomWalk(int length, double[] minSteps, double[] maxSteps) {
    boolean told = minSteps.length >= LEAST_STEPS;
    double minStep = told ? rootMeanSquare(minSteps) : ASSUMED_STEP_CELSIUS;
    double maxStep = told ? rootMeanSquare(maxSteps) : ASSUMED_STEP_CELSIUS;
    var min = new double[length];
    var max = new double[length];
    double correlations = 0;
    int span = length + 1;
    for (int i = 1; i <= length; i++) {
      double share = Math.sqrt(i * (span - i) / (double) span);
      min[i - 1] = share * minStep;
      max[i - 1] = share * maxStep;
      if (i > 1) {
        correlations += Math.sqrt((i - 1.0) * (span - i) / (i * (span - i + 1.0)));
      }
    }
    double dayToDay = length > 1 ? correlations / (length - 1) : 0;
    return new LineErrors(
        min,
        max,
        ErrorCorrelation.cut(dayToDay, ASSUMED_MIN_TO_MAX),
        told
            ? "too few observed days for artificial gaps; error from the day-to-day changes"
            : "too few observed days; error for an assumed day-to-day change of "
                + Numbers.fixed(ASSUMED_STEP_CELSIUS, 1)
                + " °C");
  }

  private static double rootMeanSquare(double[] values) {
    double squares = 0;
    for (double value : values) {
      squares += value * value;
    }
    return Math.sqrt(squares / values.length);
  }

  /** Adds up what artificial gaps missed. */
  static final class Sums {
    private final int length;
    private final double[] minSquares;
    private final double[] maxSquares;
    private final double[] crossProducts;
    private final double[] neighbourProducts;
    private int gaps;

    Sums(int length) {
      this.length = length;
      minSquares = new double[length];
      maxSquares = new double[length];
      crossProducts = new double[length];
      neighbourProducts = new double[2 * Math.max(0, length - 1)];
    }

    void add(double[] min, double[] max) {
      gaps++;
      for (int i = 0; i < length; i++) {
        minSquares[i] += min[i] * min[i];
        maxSquares[i] += max[i] * max[i];
        crossProducts[i] += min[i] * max[i];
        if (i > 0) {
          neighbourProducts[2 * (i - 1)] += min[i] * min[i - 1];
          neighbourProducts[2 * i - 1] += max[i] * max[i - 1];
        }
      }
    }

    /** The errors; places as far from one end as from the other share theirs. */
    LineErrors mean(boolean ofSeason) {
      var min = new double[length];
      var max = new double[length];
      double cross = 0;
      double neighbours = 0;
      for (int i = 0; i < length; i++) {
        int mirror = length - 1 - i;
        min[i] = Math.sqrt((minSquares[i] + minSquares[mirror]) / (2 * gaps));
        max[i] = Math.sqrt((maxSquares[i] + maxSquares[mirror]) / (2 * gaps));
        cross += correlation(crossProducts[i], minSquares[i], maxSquares[i]) / length;
        if (i > 0) {
          double both =
              correlation(neighbourProducts[2 * (i - 1)], minSquares[i], minSquares[i - 1])
                  + correlation(neighbourProducts[2 * i - 1], maxSquares[i], maxSquares[i - 1]);
          neighbours += both / (2 * (length - 1));
        }
      }
      return new LineErrors(
          min,
          max,
          ErrorCorrelation.cut(neighbours, cross),
          "error from "
              + gaps
              + " artificial gaps of "
              + length
              + (length == 1 ? " day" : " days")
              + (ofSeason ? " at this time of year" : ""));
    }

    private static double correlation(double products, double first, double second) {
      double scale = Math.sqrt(first * second);
      return scale > 0 ? products / scale : 0;
    }
  }
}
