package agro.trial.bioassay;

import java.util.Objects;
import java.util.function.DoubleFunction;

/**
 * The doses, or ratios of doses, that data leave possible at a confidence.
 *
 * @param shape form of the region
 * @param low lower limit; for {@link LimitShape#OUTSIDE} the end of the lower part; 0 or minus
 *     infinity where there is no lower limit
 * @param high upper limit; for {@link LimitShape#OUTSIDE} the beginning of the upper part; infinity
 *     where there is no upper limit
 */
public record DoseLimits(LimitShape shape, double low, double high) {

  /** Refuses what is no region. */
  public DoseLimits {
    Objects.requireNonNull(shape, "shape");
    if (Double.isNaN(low) || Double.isNaN(high) || low > high) {
      throw new IllegalArgumentException(
          "limits from " + low + " to " + high + " are no region of doses");
    }
  }

  static DoseLimits between(double low, double high) {
    boolean below = low == Double.NEGATIVE_INFINITY;
    boolean above = high == Double.POSITIVE_INFINITY;
    var shape =
        below && above
            ? LimitShape.EVERYWHERE
            : above
                ? LimitShape.NO_UPPER_LIMIT
                : below ? LimitShape.NO_LOWER_LIMIT : LimitShape.BOUNDED;
    return new DoseLimits(shape, low, high);
  }

  /**
   * All values v of a ratio m / d that satisfy (m − v d)² ≤ t² Var(m − v d): Fieller's theorem.
   *
   * @param m numerator
   * @param d denominator
   * @param mm variance of the numerator
   * @param md covariance of both
   * @param dd variance of the denominator
   * @param t deviate
   */
  static DoseLimits fieller(double m, double d, double mm, double md, double dd, double t) {
    double t2 = t * t;
    double square = d * d - t2 * dd;
    double half = m * d - t2 * md;
    double rest = m * m - t2 * mm;
    if (square == 0) {
      double border = rest / (2 * half);
      return half > 0
          ? between(border, Double.POSITIVE_INFINITY)
          : between(Double.NEGATIVE_INFINITY, border);
    }
    double discriminant = discriminant(m, d, mm, md, dd, t2);
    if (discriminant < 0) {
      return between(Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY);
    }
    double root = Math.sqrt(discriminant);
    double one = (half - root) / square;
    double other = (half + root) / square;
    return square > 0
        ? between(one, other)
        : new DoseLimits(LimitShape.OUTSIDE, Math.min(one, other), Math.max(one, other));
  }

  /** Half² − square × rest without the difference of two nearly equal products. */
  private static double discriminant(
      double m, double d, double mm, double md, double dd, double t2) {
    return t2 * (d * d * mm - 2 * m * d * md + m * m * dd - t2 * (mm * dd - md * md));
  }

  /** The region moved along its scale. */
  DoseLimits movedBy(double distance) {
    return new DoseLimits(shape, low + distance, high + distance);
  }

  /** The region on the axis of the assay, from one on the scale of the line. */
  DoseLimits inDoses(DoseScale scale) {
    return new DoseLimits(shape, scale.dose(low), scale.dose(high));
  }

  /**
   * Whether both limits exist.
   *
   * @return true for {@link LimitShape#BOUNDED}
   */
  public boolean isBounded() {
    return shape == LimitShape.BOUNDED;
  }

  /**
   * Whether a value belongs to the region.
   *
   * @param value dose or ratio
   * @return true when the data leave it possible
   */
  public boolean covers(double value) {
    return shape == LimitShape.OUTSIDE
        ? value <= low || value >= high
        : value >= low && value <= high;
  }

  /**
   * The region in words.
   *
   * @param print how a dose is printed
   * @return for example {@code "4.36 to 5.35 mg/L"} or a sentence that says what is unbounded
   */
  public String words(DoubleFunction<String> print) {
    return switch (shape) {
      case BOUNDED -> print.apply(low) + " to " + print.apply(high);
      case NO_UPPER_LIMIT -> "above " + print.apply(low) + "; unbounded upwards";
      case NO_LOWER_LIMIT -> "below " + print.apply(high) + "; unbounded downwards";
      case OUTSIDE ->
          "unbounded: below "
              + print.apply(low)
              + " or above "
              + print.apply(high)
              + "; the slope is not significantly different from zero";
      case EVERYWHERE ->
          "unbounded: no dose is refuted; the slope is not significantly different from zero";
    };
  }
}
