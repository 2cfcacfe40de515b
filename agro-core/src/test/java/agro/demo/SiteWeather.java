package agro.demo;

import java.time.LocalDate;

/** True hourly temperatures of one place, in standard time, and what follows from them. */
final class SiteWeather {
  private static final int DUSK_HOUR = 21;

  private final double[] celsius = new double[ValeWeather.HOURS];
  private final double[] wind;

  SiteWeather(ValeWeather vale, Site site, long seed) {
    var days = new ValeWeather.Lagged(36, 0.45, Draws.of(seed, "air of " + site.title));
    var weeks = new ValeWeather.Lagged(35, 0.3, Draws.of(seed, "weeks of " + site.title));
    wind = vale.wind;
    double slow = 0;
    for (int hour = 0; hour < celsius.length; hour++) {
      if (hour % 24 == 0) {
        slow = weeks.next();
      }
      celsius[hour] =
          vale.level[hour]
              + site.shiftCelsius
              + site.courseFactor * vale.course[hour]
              + days.next()
              + slow;
    }
  }

  /** Temperature at the start of an hour of standard time; minutes lie on the straight line. */
  double celsius(LocalDate day, int minuteOfDay) {
    int hour = ValeWeather.dayIndex(day) * 24 + minuteOfDay / 60;
    double part = minuteOfDay % 60 / 60.0;
    double next = celsius[Math.min(hour + 1, celsius.length - 1)];
    return (1 - part) * celsius[hour] + part * next;
  }

  double minimum(LocalDate day) {
    int from = ValeWeather.dayIndex(day) * 24;
    double least = celsius[from];
    for (int hour = from + 1; hour < from + 24; hour++) {
      least = Math.min(least, celsius[hour]);
    }
    return least;
  }

  double maximum(LocalDate day) {
    int from = ValeWeather.dayIndex(day) * 24;
    double most = celsius[from];
    for (int hour = from + 1; hour < from + 24; hour++) {
      most = Math.max(most, celsius[hour]);
    }
    return most;
  }

  /** Mean temperature of the four hours from dusk, when moths fly. */
  double evening(LocalDate day) {
    int dusk = ValeWeather.dayIndex(day) * 24 + DUSK_HOUR;
    return (celsius[dusk] + celsius[dusk + 1] + celsius[dusk + 2] + celsius[dusk + 3]) / 4;
  }

  /** Wind of the evening in m/s. */
  double wind(LocalDate day) {
    return wind[ValeWeather.dayIndex(day)];
  }

  /** True degree-days: hour by hour above the threshold, summed from the start of a day. */
  HourlyScale scale(double lowerCelsius, LocalDate start, LocalDate end) {
    int from = ValeWeather.dayIndex(start) * 24;
    int hours = (ValeWeather.dayIndex(end) + 1) * 24 - from;
    var sums = new double[hours + 1];
    for (int i = 0; i < hours; i++) {
      sums[i + 1] = sums[i] + Math.max(0, celsius[from + i] - lowerCelsius) / 24;
    }
    return new HourlyScale(start, sums);
  }
}
