package agro.weather.gap;

import agro.weather.TemperatureReadings;
import java.util.Arrays;

/** Temperatures of a log at any moment that has readings close on both sides. */
final class ReadingLookup {

  static final long DAY_SECONDS = 86_400;

  /** Readings further apart than this share of the step have a gap between them. */
  static final double GAP_STEPS = 1.5;

  private final long[] seconds;
  private final double[] celsius;
  private final long step;

  ReadingLookup(TemperatureReadings readings) {
    seconds = readings.epochSeconds();
    celsius = readings.celsius();
    step = readings.medianStepSeconds();
  }

  long step() {
    return step;
  }

  boolean isGap(long before, long after) {
    return after - before > GAP_STEPS * step;
  }

  /** Temperature at a moment, between two readings on a straight line; NaN inside a gap. */
  double at(long second) {
    int place = Arrays.binarySearch(seconds, second);
    if (place >= 0) {
      return celsius[place];
    }
    int after = -place - 1;
    if (after == 0 || after == seconds.length || isGap(seconds[after - 1], seconds[after])) {
      return Double.NaN;
    }
    double share = (second - seconds[after - 1]) / (double) (seconds[after] - seconds[after - 1]);
    return celsius[after - 1] + share * (celsius[after] - celsius[after - 1]);
  }
}
