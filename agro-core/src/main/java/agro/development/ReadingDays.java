package agro.development;

import agro.weather.TemperatureReadings;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Arrays;

/** Cuts the time that readings stand for into days and adds up what falls on each. */
final class ReadingDays {

  private static final double DAY_SECONDS = 86_400;

  /** A day short by less than this many seconds counts as read in full. */
  private static final double ROUNDING_SECONDS = 1e-3;

  private final ReadingSum sum;
  private final TemperatureReadings readings;
  private final LocalDate firstDay;

  /** Seconds at which each day begins, and at which the last one ends. */
  private final long[] begins;

  private final double[] rateSeconds;
  private final double[] readSeconds;

  ReadingDays(ReadingSum sum, TemperatureReadings readings, ZoneId zone) {
    this.sum = sum;
    this.readings = readings;
    firstDay = day(readings.epochSecond(0), zone);
    var lastDay = day(readings.epochSecond(readings.size() - 1), zone);
    int days = Math.toIntExact(lastDay.toEpochDay() - firstDay.toEpochDay() + 1);
    begins = new long[days + 1];
    for (int i = 0; i <= days; i++) {
      begins[i] = firstDay.plusDays(i).atStartOfDay(zone).toEpochSecond();
    }
    rateSeconds = new double[days];
    readSeconds = new double[days];
  }

  private static LocalDate day(long epochSecond, ZoneId zone) {
    return LocalDate.ofInstant(Instant.ofEpochSecond(epochSecond), zone);
  }

  DailyDegreeDays daily() {
    long usual = Math.min(readings.medianStepSeconds(), sum.longestGap().toSeconds());
    int day = 0;
    for (int i = 0; i < readings.size(); i++) {
      long from = readings.epochSecond(i);
      boolean last = i + 1 == readings.size();
      long next = last ? Long.MAX_VALUE : readings.epochSecond(i + 1);
      while (from >= begins[day + 1]) {
        day++;
      }
      if (!last && next - from <= sum.longestGap().toSeconds()) {
        spread(day, from, next, readings.celsius(i), readings.celsius(i + 1));
      } else {
        spread(day, from, Math.min(from + usual, next), readings.celsius(i), readings.celsius(i));
      }
    }
    var values = new double[rateSeconds.length];
    var bases = new DayBasis[values.length];
    Arrays.setAll(bases, this::basis);
    Arrays.setAll(values, i -> bases[i] == DayBasis.MISSING ? Double.NaN : value(i));
    return new DailyDegreeDays(
        sum.model(), readings.place(), readings.medium(), firstDay, values, bases);
  }

  /** Adds the time from one moment to another to the days on which it falls. */
  private void spread(int firstDayOfPart, long from, long to, double before, double after) {
    double length = to - from;
    for (int day = firstDayOfPart; day < rateSeconds.length && begins[day] < to; day++) {
      double begin = Math.max(from, begins[day]);
      double end = Math.min(to, begins[day + 1]);
      if (end > begin) {
        double rate =
            sum.rule()
                .meanRate(
                    sum.model(), before, after, (begin - from) / length, (end - from) / length);
        rateSeconds[day] += rate * (end - begin);
        readSeconds[day] += end - begin;
      }
    }
  }

  private double length(int day) {
    return begins[day + 1] - begins[day];
  }

  private DayBasis basis(int day) {
    if (readSeconds[day] >= length(day) - ROUNDING_SECONDS) {
      return DayBasis.COMPLETE;
    }
    return readSeconds[day] > 0 && readSeconds[day] >= sum.leastShareOfDay() * length(day)
        ? DayBasis.PARTLY_READ
        : DayBasis.MISSING;
  }

  private double value(int day) {
    return Math.max(0, rateSeconds[day] / readSeconds[day] * length(day) / DAY_SECONDS);
  }
}
