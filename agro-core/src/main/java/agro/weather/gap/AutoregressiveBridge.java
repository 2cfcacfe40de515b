package agro.weather.gap;

/**
 * What is known about a departure inside a gap from those before and after it, when departures are
 * an autoregressive process of order one with variance 1: the conditional mean and variance of a
 * Gaussian Markov process between two fixed points. Without a departure at one end only the other
 * one counts; far from both the mean is 0 and the variance 1.
 */
final class AutoregressiveBridge {

  private final double lag1;
  private final long days;
  private final double before;
  private final double after;

  /**
   * A bridge over a gap.
   *
   * @param lag1 correlation of neighbouring days; negative ones count as 0
   * @param days days of the gap
   * @param before departure of the day before in standard deviations, NaN when unknown
   * @param after departure of the day after in standard deviations, NaN when unknown
   */
  AutoregressiveBridge(double lag1, long days, double before, double after) {
    this.lag1 = Math.max(0, Math.min(0.999, lag1));
    this.days = days;
    this.before = before;
    this.after = after;
  }

  /** Expected departure at a place in the gap, 1 for its first day, in standard deviations. */
  double mean(int place) {
    double near = Math.pow(lag1, place);
    double far = Math.pow(lag1, days + 1.0 - place);
    boolean left = Double.isFinite(before);
    boolean right = Double.isFinite(after);
    if (left && right) {
      return (before * near * (1 - far * far) + after * far * (1 - near * near)) / span();
    }
    return left ? before * near : right ? after * far : 0;
  }

  /** Standard deviation of the departure at a place in the gap. */
  double deviation(int place) {
    double near = Math.pow(lag1, 2.0 * place);
    double far = Math.pow(lag1, 2 * (days + 1.0 - place));
    boolean left = Double.isFinite(before);
    boolean right = Double.isFinite(after);
    if (left && right) {
      return Math.sqrt((1 - near) * (1 - far) / span());
    }
    return Math.sqrt(1 - (left ? near : right ? far : 0));
  }

  private double span() {
    return 1 - Math.pow(lag1, 2 * (days + 1.0));
  }
}
