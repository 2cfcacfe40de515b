package agro.weather.gap;

import java.util.Arrays;
import java.util.Optional;

/**
 * Values over a stretch of moments whose first and last are known. Only the two ends and, for the
 * shape, other days are looked at, so that a stretch that was observed can be filled for trial.
 */
final class ReadingBridge {

  /** Neighbouring days that the shape is the mean of, at most. */
  static final int MOST_SHAPE_DAYS = 6;

  /** Fewest of them. */
  static final int LEAST_SHAPE_DAYS = 2;

  /** How far away they may be, in days. */
  static final int FARTHEST_SHAPE_DAY = 7;

  private final ReadingLookup lookup;

  ReadingBridge(ReadingLookup lookup) {
    this.lookup = lookup;
  }

  /** Values at all moments, ends included; nothing when the method cannot tell. */
  Optional<double[]> values(long[] moments, ReadingGapMethod method) {
    double first = lookup.at(moments[0]);
    double last = lookup.at(moments[moments.length - 1]);
    if (Double.isNaN(first) || Double.isNaN(last)) {
      return Optional.empty();
    }
    if (method == ReadingGapMethod.STRAIGHT_LINE) {
      return Optional.of(shifted(moments, new double[moments.length], first, last));
    }
    return shape(moments).map(shape -> shifted(moments, shape, first, last));
  }

  /** The shape moved so that it meets both ends. */
  private static double[] shifted(long[] moments, double[] shape, double first, double last) {
    int end = moments.length - 1;
    var values = new double[moments.length];
    for (int i = 0; i <= end; i++) {
      double share = (moments[i] - moments[0]) / (double) (moments[end] - moments[0]);
      values[i] = shape[i] + (1 - share) * (first - shape[0]) + share * (last - shape[end]);
    }
    return values;
  }

  /** Mean of the same hours of the nearest days that are known throughout. */
  private Optional<double[]> shape(long[] moments) {
    var sum = new double[moments.length];
    int days = 0;
    for (int away = 1; away <= FARTHEST_SHAPE_DAY && days < MOST_SHAPE_DAYS; away++) {
      for (int side = -1; side <= 1; side += 2) {
        var course = course(moments, (long) side * away * ReadingLookup.DAY_SECONDS);
        if (course.isPresent() && days < MOST_SHAPE_DAYS) {
          days++;
          Arrays.setAll(sum, i -> sum[i] + course.get()[i]);
        }
      }
    }
    if (days < LEAST_SHAPE_DAYS) {
      return Optional.empty();
    }
    int count = days;
    Arrays.setAll(sum, i -> sum[i] / count);
    return Optional.of(sum);
  }

  /** Temperatures of all moments moved to another day, which must lie outside the stretch. */
  private Optional<double[]> course(long[] moments, long shift) {
    if (moments[moments.length - 1] - moments[0] >= Math.abs(shift)) {
      return Optional.empty();
    }
    var course = new double[moments.length];
    for (int i = 0; i < course.length; i++) {
      course[i] = lookup.at(moments[i] + shift);
      if (Double.isNaN(course[i])) {
        return Optional.empty();
      }
    }
    return Optional.of(course);
  }
}
