package agro.generation;

import java.util.List;

/** Correlation of threshold and interval from the profile of the likelihood over thresholds. */
final class ProfileCurvature {

  /** Points this far below the top still lie on the parabola about it. */
  private static final double NEAR_TOP = 4;

  private ProfileCurvature() {}

  /**
   * With {@code v} the variance of the threshold (one over the curvature of the profile), {@code b}
   * the slope of the best interval by the threshold and {@code e} the error of the interval given
   * the threshold, the interval has the variance {@code e^2 + b^2 v} and the covariance {@code b v}
   * with the threshold.
   */
  static double correlation(List<ThresholdPoint> points) {
    var best = 0;
    for (var i = 1; i < points.size(); i++) {
      best = points.get(i).drop() < points.get(best).drop() ? i : best;
    }
    var middle = Math.min(points.size() - 2, Math.max(1, best));
    var step = points.get(middle + 1).lowerC() - points.get(middle).lowerC();
    var curvature = curvature(points, middle, step);
    if (!(curvature > 0)) {
      return Double.NaN;
    }
    var slope =
        (points.get(middle + 1).intervalC() - points.get(middle - 1).intervalC()) / (2 * step);
    var variance = 1 / curvature;
    var error = points.get(middle).intervalErrorC();
    return slope * variance / Math.sqrt(variance * (error * error + slope * slope * variance));
  }

  /** Second derivative of the drop, from the widest symmetric pair that is still near the top. */
  private static double curvature(List<ThresholdPoint> points, int middle, double step) {
    var reach = 1;
    while (middle - reach - 1 >= 0
        && middle + reach + 1 < points.size()
        && points.get(middle - reach - 1).drop() < NEAR_TOP
        && points.get(middle + reach + 1).drop() < NEAR_TOP) {
      reach++;
    }
    var distance = reach * step;
    return (points.get(middle - reach).drop()
            - 2 * points.get(middle).drop()
            + points.get(middle + reach).drop())
        / (distance * distance);
  }
}
