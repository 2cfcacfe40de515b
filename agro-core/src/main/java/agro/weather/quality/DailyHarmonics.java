package agro.weather.quality;

import java.util.Arrays;

/**
 * The first harmonic of each day of a log, as a vector that points at the warmest hour and is as
 * long as the amplitude. Days that are missing or too thin have the vector zero.
 */
final class DailyHarmonics {

  private static final int LEAST_READINGS = 8;

  /** Fewest of the six four-hour parts of a day that must hold a reading. */
  private static final int LEAST_PARTS = 6;

  /** Amplitude in °C below which a window of days has no daily wave to speak of. */
  private static final double LEAST_AMPLITUDE = 0.5;

  private static final int HOURS = 24;
  private static final int BINS = 10 * HOURS;

  private final double[] cosine;
  private final double[] sine;
  private final int[] firstPlaces;
  private final int[] lastPlaces;

  private DailyHarmonics(int days) {
    cosine = new double[days];
    sine = new double[days];
    firstPlaces = new int[days];
    lastPlaces = new int[days];
    Arrays.fill(firstPlaces, -1);
  }

  static DailyHarmonics of(ReadingsInTest series) {
    int[] places = series.usable();
    if (places.length == 0) {
      return new DailyHarmonics(0);
    }
    long firstDay = series.epochDay(places[0]);
    var days =
        new DailyHarmonics((int) (series.epochDay(places[places.length - 1]) - firstDay) + 1);
    for (int from = 0; from < places.length; ) {
      long day = series.epochDay(places[from]);
      int to = from;
      while (to < places.length && series.epochDay(places[to]) == day) {
        to++;
      }
      days.put((int) (day - firstDay), series, Arrays.copyOfRange(places, from, to));
      from = to;
    }
    return days;
  }

  private void put(int day, ReadingsInTest series, int[] places) {
    firstPlaces[day] = places[0];
    lastPlaces[day] = places[places.length - 1];
    int parts = 0;
    double mean = 0;
    for (int place : places) {
      parts |= 1 << (series.secondOfDay(place) / 14_400);
      mean += series.celsius(place) / places.length;
    }
    if (places.length < LEAST_READINGS || Integer.bitCount(parts) < LEAST_PARTS) {
      return;
    }
    for (int place : places) {
      double angle = 2 * Math.PI * series.secondOfDay(place) / 86_400;
      double share = 2 * (series.celsius(place) - mean) / places.length;
      cosine[day] += share * Math.cos(angle);
      sine[day] += share * Math.sin(angle);
    }
  }

  int firstPlace(int day) {
    return firstPlaces[day];
  }

  int lastPlace(int day) {
    return lastPlaces[day];
  }

  /** Warmest hour of some days taken together; NaN without a daily wave. */
  double peak(int fromDay, int toDay) {
    double x = 0;
    double y = 0;
    int known = 0;
    for (int day = Math.max(0, fromDay); day <= Math.min(toDay, cosine.length - 1); day++) {
      if (cosine[day] != 0 || sine[day] != 0) {
        x += cosine[day];
        y += sine[day];
        known++;
      }
    }
    return known == 0 || Math.hypot(x, y) / known < LEAST_AMPLITUDE ? Double.NaN : hour(x, y);
  }

  private static double hour(double x, double y) {
    double hour = Math.atan2(y, x) * HOURS / (2 * Math.PI);
    return hour < 0 ? hour + HOURS : hour;
  }

  /** Warmest hour around each day; NaN where the window does not lie within the log. */
  double[] windowPeaks(int half) {
    var peaks = new double[cosine.length];
    for (int day = 0; day < peaks.length; day++) {
      peaks[day] =
          cosine.length > 2 * half && firstPlaces[day] >= 0
              ? peak(day - half, day + half)
              : Double.NaN;
    }
    return peaks;
  }

  /** The hour that is nearest to all hours on the circle; NaN when there is none. */
  static double commonHour(double[] hours) {
    var count = new int[BINS];
    int known = 0;
    for (double hour : hours) {
      if (!Double.isNaN(hour)) {
        count[(int) Math.round(hour * BINS / HOURS) % BINS]++;
        known++;
      }
    }
    double best = Double.POSITIVE_INFINITY;
    double common = Double.NaN;
    for (int candidate = 0; candidate < BINS && known > 0; candidate++) {
      double hour = (double) candidate * HOURS / BINS;
      double distance = 0;
      for (int bin = 0; bin < BINS; bin++) {
        if (count[bin] > 0) {
          distance += count[bin] * Math.abs(difference((double) bin * HOURS / BINS, hour));
        }
      }
      if (distance < best) {
        best = distance;
        common = hour;
      }
    }
    return common;
  }

  /** How much later one hour is than another, from -12 to 12; NaN for NaN. */
  static double difference(double hour, double from) {
    double later = hour - from;
    return later - HOURS * Math.rint(later / HOURS);
  }

  /** First day from which on the second hour fits better than the first one. */
  int firstBetter(int fromDay, int toDay, double before, double after) {
    int low = Math.max(0, fromDay);
    int high = Math.min(toDay, cosine.length);
    int best = low;
    double most = 0;
    double gain = 0;
    for (int day = low; day < high; day++) {
      gain += fit(day, before) - fit(day, after);
      if (gain > most) {
        most = gain;
        best = day + 1;
      }
    }
    while (best < cosine.length - 1 && firstPlaces[best] < 0) {
      best++;
    }
    return best;
  }

  /** The day, or the last one before it that has a reading. */
  int lastWithReadings(int day) {
    int last = day;
    while (last > 0 && firstPlaces[last] < 0) {
      last--;
    }
    return last;
  }

  private double fit(int day, double hour) {
    double angle = 2 * Math.PI * hour / HOURS;
    return cosine[day] * Math.cos(angle) + sine[day] * Math.sin(angle);
  }
}
