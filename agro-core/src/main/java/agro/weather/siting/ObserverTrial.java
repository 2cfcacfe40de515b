package agro.weather.siting;

import agro.report.InputProblem;
import agro.weather.DailyTemperatures;
import agro.weather.DayOrigin;
import agro.weather.TemperatureReadings;
import java.time.LocalDate;

/** Plays the observer of a minimum-maximum thermometer on a log. */
final class ObserverTrial {

  private static final long DAY = 86_400;

  /** Longest time without a reading inside an observer's day. */
  private static final long LONGEST_GAP = 4 * 3600;

  private ObserverTrial() {}

  /** Extremes between resets, under the day that the later reset is on. */
  static DailyTemperatures observe(TemperatureReadings readings, long secondOfDay) {
    int size = readings.size();
    if (size < 2) {
      throw incomplete(readings);
    }
    long offset = readings.dayOffset().getTotalSeconds();
    long firstDay = Math.floorDiv(readings.epochSecond(0) + offset, DAY);
    long lastDay = Math.floorDiv(readings.epochSecond(size - 1) + offset, DAY);
    var builder =
        DailyTemperatures.builder(LocalDate.ofEpochDay(firstDay), LocalDate.ofEpochDay(lastDay));
    int known = 0;
    int at = 0;
    for (long day = firstDay; day <= lastDay; day++) {
      long end = day * DAY + secondOfDay - offset;
      long start = end - DAY;
      while (at < size && readings.epochSecond(at) < start) {
        at++;
      }
      double[] extremes = between(readings, at, start, end);
      if (extremes.length > 0) {
        builder.putAt((int) (day - firstDay), extremes[0], extremes[1], DayOrigin.MODELLED);
        known++;
      }
    }
    if (known == 0) {
      throw incomplete(readings);
    }
    return builder.build(readings.place(), readings.medium());
  }

  private static InputProblem incomplete(TemperatureReadings readings) {
    return InputProblem.of(readings + ": no day without a gap of four hours")
        .expected("a log of at least one complete day from reading to reading")
        .because("the extremes between two readings are not known otherwise")
        .mend("take a denser or longer log");
  }

  /** Lowest and highest, the moments of both resets included; nothing with a long gap. */
  private static double[] between(TemperatureReadings readings, int from, long start, long end) {
    double atStart = at(readings, from, start);
    double low = atStart;
    double high = atStart;
    long before = start;
    int i = from;
    while (i < readings.size() && readings.epochSecond(i) <= end) {
      if (readings.epochSecond(i) - before > LONGEST_GAP) {
        return new double[0];
      }
      low = Math.min(low, readings.celsius(i));
      high = Math.max(high, readings.celsius(i));
      before = readings.epochSecond(i);
      i++;
    }
    double atEnd = at(readings, i, end);
    if (Double.isNaN(atStart) || Double.isNaN(atEnd) || end - before > LONGEST_GAP) {
      return new double[0];
    }
    return new double[] {Math.min(low, atEnd), Math.max(high, atEnd)};
  }

  /**
   * Temperature at a moment, on a straight line between the readings around it. At the ends of the
   * log the nearest reading up to one step away stands for it.
   *
   * @param next place of the first reading at or after the moment, or past it
   */
  private static double at(TemperatureReadings readings, int next, long moment) {
    if (next > 0 && readings.epochSecond(next - 1) == moment) {
      return readings.celsius(next - 1);
    }
    if (next == 0 || next == readings.size()) {
      int edge = next == 0 ? 0 : next - 1;
      long away = Math.abs(readings.epochSecond(edge) - moment);
      return away <= readings.medianStepSeconds() ? readings.celsius(edge) : Double.NaN;
    }
    long before = readings.epochSecond(next - 1);
    long after = readings.epochSecond(next);
    if (after == moment) {
      return readings.celsius(next);
    }
    if (after - before > LONGEST_GAP) {
      return Double.NaN;
    }
    double share = (double) (moment - before) / (after - before);
    return readings.celsius(next - 1)
        + share * (readings.celsius(next) - readings.celsius(next - 1));
  }

  /** Days whose maximum is the one that was read on the next morning. */
  static DailyTemperatures maximaToTheDayBefore(DailyTemperatures observed) {
    var first = observed.firstDay().minusDays(1);
    var builder = DailyTemperatures.builder(first, observed.lastDay());
    for (int i = 0; i < observed.size(); i++) {
      var day = observed.day(i);
      var next = day.plusDays(1);
      double low = observed.minCelsius(day);
      double high = observed.maxCelsius(next);
      if (Double.isNaN(low) || Double.isNaN(high)) {
        continue;
      }
      if (low > high) {
        low = 0.5 * (low + high);
        high = low;
      }
      builder.put(
          day,
          low,
          high,
          observed.minStandardErrorCelsius(day),
          observed.maxStandardErrorCelsius(next),
          observed.originAt(i));
    }
    return builder.build(observed.place(), observed.medium());
  }
}
