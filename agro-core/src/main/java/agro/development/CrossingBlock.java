package agro.development;

import agro.report.InputProblem;

/**
 * Degree-days of a few hundred days at a time by a {@link CrossingCurve}, in small arrays that stay
 * in the fastest cache. Not thread-safe: each thread has its own.
 *
 * <p>Each loop reads and writes whole small arrays from their beginning; with an offset into a long
 * array the JIT compiler of JDK 17 leaves the loop as it is, at a quarter of the speed.
 */
final class CrossingBlock {

  /** Days of a block: its arrays together fill half of a first-level cache of 32 KB. */
  static final int DAYS = 256;

  /** Added to an amplitude, it keeps a day without any from being divided by nothing. */
  private static final double NEXT_TO_NOTHING = Double.MIN_NORMAL;

  private final CrossingCurve curve;
  private final double lower;
  private final double upper;
  private final UpperCutoff cutoff;

  private final double[] min = new double[DAYS];
  private final double[] max = new double[DAYS];
  private final double[] perAmplitude = new double[DAYS];
  private final double[] distance = new double[DAYS];
  private final double[] depth = new double[DAYS];
  private final double[] straight = new double[DAYS];
  private final double[] net = new double[DAYS];
  private final double[] aboveUpper = new double[DAYS];

  CrossingBlock(CrossingCurve curve, Thresholds thresholds, UpperCutoff cutoff) {
    this.curve = curve;
    this.cutoff = cutoff;
    lower = thresholds.lower().celsius();
    upper = cutoff.needsUpperThreshold() ? thresholds.upper().orElseThrow().celsius() : Double.NaN;
  }

  /**
   * Degree-days of a stretch of days.
   *
   * @param minCelsius lowest temperatures
   * @param maxCelsius highest temperatures
   * @param from first day
   * @param days number of days, at most {@link #DAYS}
   * @param degreeDaysC where they go, at the same places
   * @throws InputProblem when a minimum is above its maximum
   */
  void degreeDays(
      double[] minCelsius, double[] maxCelsius, int from, int days, double[] degreeDaysC) {
    System.arraycopy(minCelsius, from, min, 0, days);
    System.arraycopy(maxCelsius, from, max, 0, days);
    int swapped = firstSwapped(min, max, days);
    if (swapped >= 0) {
      throw unordered(from + swapped, min[swapped], max[swapped]);
    }
    reciprocals(min, max, perAmplitude, days);
    cross(min, max, lower, perAmplitude, distance, depth, straight, days);
    curve.areas(distance, depth, straight, net, days);
    if (cutoff != UpperCutoff.NONE) {
      subtractAboveUpper(days);
    }
    System.arraycopy(net, 0, degreeDaysC, from, days);
  }

  private void subtractAboveUpper(int days) {
    cross(min, max, upper, perAmplitude, distance, depth, straight, days);
    curve.areas(distance, depth, straight, aboveUpper, days);
    switch (cutoff) {
      case INTERMEDIATE -> subtract(net, aboveUpper, 2, days);
      case VERTICAL -> {
        depths(min, max, upper, perAmplitude, depth, days);
        curve.shares(depth, straight, days);
        addStep(min, max, upper, upper - lower, straight, aboveUpper, days);
        subtract(net, aboveUpper, 1, days);
      }
      default -> subtract(net, aboveUpper, 1, days);
    }
  }

  private static int firstSwapped(double[] min, double[] max, int days) {
    for (int i = 0; i < days; i++) {
      if (min[i] > max[i]) {
        return i;
      }
    }
    return -1;
  }

  private static InputProblem unordered(int index, double minCelsius, double maxCelsius) {
    return InputProblem.of(
            "at place "
                + index
                + " of the arrays a day with minimum "
                + minCelsius
                + " °C and maximum "
                + maxCelsius
                + " °C")
        .expected("a minimum that is not above the maximum")
        .because("a day cannot be colder at its warmest than at its coldest")
        .mend("look whether the two values are swapped or one is mistyped");
  }

  private static void reciprocals(double[] min, double[] max, double[] perAmplitude, int days) {
    for (int i = 0; i < days; i++) {
      perAmplitude[i] = 1 / (0.5 * (max[i] - min[i]) + NEXT_TO_NOTHING);
    }
  }

  /**
   * Distance and depth of the threshold in each day, and the mean over the threshold. The larger of
   * x and 0 is (x + |x|) / 2 and the smaller of p and q is (p + q − |p − q|) / 2: exact here, and
   * without the special cases of the methods for it.
   */
  private static void cross(
      double[] min,
      double[] max,
      double threshold,
      double[] perAmplitude,
      double[] distance,
      double[] depth,
      double[] straight,
      int days) {
    for (int i = 0; i < days; i++) {
      double toMax = max[i] - threshold;
      double toMin = threshold - min[i];
      double difference = toMax - toMin;
      double twiceNearer = toMax + toMin - Math.abs(difference);
      double u = 0.25 * (twiceNearer + Math.abs(twiceNearer));
      distance[i] = u;
      depth[i] = u * perAmplitude[i];
      straight[i] = 0.25 * (difference + Math.abs(difference));
    }
  }

  /**
   * Depths whose relative error is that of one rounding even next to an extreme, as the share of
   * the day needs them: it falls there like a square root.
   */
  private static void depths(
      double[] min,
      double[] max,
      double threshold,
      double[] perAmplitude,
      double[] depth,
      int days) {
    for (int i = 0; i < days; i++) {
      double nearer = Math.min(max[i] - threshold, threshold - min[i]);
      depth[i] = 0.5 * (nearer + Math.abs(nearer)) * perAmplitude[i];
    }
  }

  /**
   * Adds the height of the step at the upper threshold times the share of the day above it. That
   * share is f above the mean and 1 − f below it; a day all at the threshold is not above it.
   */
  private static void addStep(
      double[] min,
      double[] max,
      double threshold,
      double height,
      double[] shares,
      double[] areas,
      int days) {
    for (int i = 0; i < days; i++) {
      double difference = (max[i] - threshold) - (threshold - min[i]) - NEXT_TO_NOTHING;
      double side = difference / Math.abs(difference);
      areas[i] += height * (0.5 + side * (0.5 - shares[i]));
    }
  }

  private static void subtract(double[] net, double[] other, double times, int days) {
    for (int i = 0; i < days; i++) {
      double x = net[i] - times * other[i];
      net[i] = 0.5 * (x + Math.abs(x));
    }
  }
}
