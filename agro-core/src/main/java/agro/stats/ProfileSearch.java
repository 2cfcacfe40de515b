package agro.stats;

/**
 * Profile limits: the values at which the best fit that is still possible has become worse by a
 * given amount.
 *
 * <p>Venzon and Moolgavkar 1988, Applied Statistics 37:87-94; for least squares Bates and Watts
 * 1988, Nonlinear Regression Analysis and Its Applications, chapter 6 (both from memory). The root
 * of the worsening is nearly a straight line in the value, which a regula falsi makes use of.
 */
public final class ProfileSearch {

  private static final int MOST_STEPS_OUT = 30;
  private static final int MOST_STEPS_IN = 40;
  private static final double GROWTH = 1.6;
  private static final double CLOSE = 1e-6;

  private final Profiled profiled;
  private final double estimate;
  private final double least;
  private final double limit;

  private ProfileSearch(Profiled profiled, double estimate, double least, double limit) {
    this.profiled = profiled;
    this.estimate = estimate;
    this.least = least;
    this.limit = limit;
  }

  /** The best objective that is left when the profiled quantity is held at a value. */
  @FunctionalInterface
  public interface Profiled {

    /**
     * Fits with the quantity held.
     *
     * @param value where it is held
     * @return the least objective; infinite or NaN where no fit is possible
     */
    double at(double value);
  }

  /**
   * Searches both limits.
   *
   * @param profiled the best objective for each value
   * @param estimate value of the best fit of all
   * @param scale first distance to look at, such as a standard error; positive
   * @param least objective of the best fit of all
   * @param limit objective that counts as just worse enough
   * @return the limits; infinite on a side where the objective never gets that bad
   */
  public static ConfidenceLimits limits(
      Profiled profiled, double estimate, double scale, double least, double limit) {
    var search = new ProfileSearch(profiled, estimate, least, limit);
    return new ConfidenceLimits(search.side(-scale), search.side(scale));
  }

  /** Below zero inside the limits. */
  private double excess(double value) {
    double objective = profiled.at(value);
    if (Double.isNaN(objective)) {
      return Double.POSITIVE_INFINITY;
    }
    return Math.sqrt(Math.max(0, objective - least)) - Math.sqrt(limit - least);
  }

  private double side(double scale) {
    double inside = estimate;
    double insideExcess = -Math.sqrt(limit - least);
    double distance = scale;
    for (int i = 0; i < MOST_STEPS_OUT; i++) {
      double outside = estimate + distance;
      double excess = excess(outside);
      if (excess > 0) {
        return between(inside, insideExcess, outside, excess);
      }
      inside = outside;
      insideExcess = excess;
      distance *= GROWTH;
    }
    return Math.copySign(Double.POSITIVE_INFINITY, scale);
  }

  private double between(double from, double fromExcess, double to, double toExcess) {
    double inside = from;
    double low = fromExcess;
    double outside = to;
    double high = toExcess;
    double span = Math.abs(to - estimate);
    for (int i = 0; i < MOST_STEPS_IN && Math.abs(outside - inside) > CLOSE * span; i++) {
      double share = Double.isInfinite(high) || i % 3 == 2 ? 0.5 : -low / (high - low);
      double middle = inside + share * (outside - inside);
      double excess = excess(middle);
      if (Math.abs(excess) < CLOSE * Math.sqrt(limit - least)) {
        return middle;
      }
      if (excess <= 0) {
        inside = middle;
        low = excess;
      } else {
        outside = middle;
        high = excess;
      }
    }
    return 0.5 * (inside + outside);
  }
}
