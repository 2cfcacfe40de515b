package agro.weather.gap;

import agro.weather.DailyTemperatures;
import agro.weather.DayOrigin;
import agro.weather.TemperatureReadings;
import java.time.LocalDate;
import java.util.List;

/** Puts filled readings together to days. */
final class FilledDayAssembly {

  private final FilledReadings filled;
  private final List<FilledStretch> stretches;
  private final ReadingTrial trial;
  private final double leastShare;
  private final long step;
  private final long offset;
  private int firstStretch;

  FilledDayAssembly(
      FilledReadings filled, List<FilledStretch> stretches, ReadingTrial trial, double leastShare) {
    this.filled = filled;
    this.stretches = stretches;
    this.trial = trial;
    this.leastShare = leastShare;
    step = filled.observed().medianStepSeconds();
    offset = filled.observed().dayOffset().getTotalSeconds();
  }

  DailyTemperatures daily() {
    var readings = filled.readings();
    int size = readings.size();
    var days = DailyTemperatures.builder(readings.day(0), readings.day(size - 1));
    int from = 0;
    while (from < size) {
      var day = readings.day(from);
      int to = from;
      while (to < size && readings.day(to).equals(day)) {
        to++;
      }
      if (isComplete(readings, day, from, to)) {
        put(days, readings, day, from, to);
      }
      from = to;
    }
    return days.build(readings.place(), readings.medium());
  }

  private long midnight(LocalDate day) {
    return day.toEpochDay() * ReadingLookup.DAY_SECONDS - offset;
  }

  private boolean isComplete(TemperatureReadings readings, LocalDate day, int from, int to) {
    int own = 0;
    long before = from > 0 ? readings.epochSecond(from - 1) : midnight(day) - step;
    for (int i = from; i < to; i++) {
      if (isGap(before, readings.epochSecond(i))) {
        return false;
      }
      before = readings.epochSecond(i);
      own += filled.isFilled(i) ? 0 : 1;
    }
    long end = midnight(day) + ReadingLookup.DAY_SECONDS;
    boolean ended =
        to == readings.size() ? !isGap(before, end) : !isGap(before, readings.epochSecond(to));
    return ended && own >= leastShare * ReadingLookup.DAY_SECONDS / step;
  }

  private boolean isGap(long before, long after) {
    return after - before > ReadingLookup.GAP_STEPS * step;
  }

  private void put(
      DailyTemperatures.Builder days,
      TemperatureReadings readings,
      LocalDate day,
      int from,
      int to) {
    double min = Double.POSITIVE_INFINITY;
    double max = Double.NEGATIVE_INFINITY;
    boolean anyFilled = false;
    var moments = new long[to - from];
    for (int i = from; i < to; i++) {
      min = Math.min(min, readings.celsius(i));
      max = Math.max(max, readings.celsius(i));
      anyFilled |= filled.isFilled(i);
      moments[i - from] = readings.epochSecond(i);
    }
    if (!anyFilled) {
      days.put(day, min, max, DayOrigin.OBSERVED);
      return;
    }
    double minSquares = 0;
    double maxSquares = 0;
    long start = midnight(day);
    long end = start + ReadingLookup.DAY_SECONDS;
    while (!stretches.get(firstStretch).touches(start, Long.MAX_VALUE)) {
      firstStretch++;
    }
    for (int k = firstStretch; k < stretches.size() && stretches.get(k).touches(start, end); k++) {
      var errors = stretches.get(k).extremes(trial, moments);
      double fallback = errors.areTold() ? 0 : largestError(from, to);
      minSquares += square(errors.areTold() ? errors.at(0) : fallback);
      maxSquares += square(errors.areTold() ? errors.at(1) : fallback);
    }
    days.put(day, min, max, Math.sqrt(minSquares), Math.sqrt(maxSquares), DayOrigin.PARTLY_FILLED);
  }

  private double largestError(int from, int to) {
    double largest = 0;
    for (int i = from; i < to; i++) {
      largest = Math.max(largest, filled.standardErrorCelsius(i));
    }
    return largest;
  }

  private static double square(double value) {
    return value * value;
  }
}
