package agro.weather.quality;

import agro.weather.DailyTemperatures;
import agro.weather.DayOrigin;
import agro.weather.Medium;
import agro.weather.TemperatureReadings;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Random;

/**
 * Invented temperatures from a seed: a season, weather that lasts for days, days of more or less
 * sun whose warmest hour is 15 and whose coldest is 5, and a sensor of 0.1 °C.
 */
final class InventedLog {

  static final LocalDate START = LocalDate.of(2021, 1, 1);
  private static final long DAY = 86_400;

  final long[] seconds;
  final double[] celsius;

  InventedLog(long seed, int days, int stepMinutes) {
    this(seed, seed + 1, days, stepMinutes);
  }

  /** Logs of one weather seed are neighbours. */
  InventedLog(long weatherSeed, long sensorSeed, int days, int stepMinutes) {
    var weather = new Random(weatherSeed);
    var sensor = new Random(sensorSeed);
    int perDay = 1440 / stepMinutes;
    var mean = new double[days + 2];
    var swing = new double[days + 2];
    double state = 0;
    for (int day = 0; day < mean.length; day++) {
      state = 0.75 * state + 2.2 * weather.nextGaussian();
      mean[day] = 9 - 8 * Math.cos(2 * Math.PI * (day - 15) / 365.25) + state;
      swing[day] = 1.2 + (2.8 - 2 * Math.cos(2 * Math.PI * day / 365.25)) * weather.nextDouble();
    }
    seconds = new long[days * perDay];
    celsius = new double[days * perDay];
    for (int i = 0; i < seconds.length; i++) {
      seconds[i] = START.toEpochDay() * DAY + i * 60L * stepMinutes;
      double at = (double) i / perDay;
      int day = (int) at;
      double share = at - day;
      double level = mean[day] + share * (mean[day + 1] - mean[day]);
      double width = swing[day] + share * (swing[day + 1] - swing[day]);
      double exact = level + width * shape(24 * share) + 0.15 * sensor.nextGaussian();
      celsius[i] = Math.rint(10 * exact) / 10;
    }
  }

  /** From -1 at 5 h to 1 at 15 h and back. */
  private static double shape(double hour) {
    return hour >= 5 && hour <= 15
        ? -Math.cos(Math.PI * (hour - 5) / 10)
        : Math.cos(Math.PI * ((hour + 9) % 24) / 14);
  }

  TemperatureReadings readings() {
    return TemperatureReadings.of(
        "Invented Field", Medium.shelterAir(), ZoneOffset.UTC, seconds, celsius);
  }

  DailyTemperatures daily(String place) {
    int perDay = (int) (DAY / (seconds[1] - seconds[0]));
    int days = seconds.length / perDay;
    var builder = DailyTemperatures.builder(START, START.plusDays(days - 1));
    for (int day = 0; day < days; day++) {
      double low = Double.POSITIVE_INFINITY;
      double high = Double.NEGATIVE_INFINITY;
      for (int i = day * perDay; i < (day + 1) * perDay; i++) {
        low = Math.min(low, celsius[i]);
        high = Math.max(high, celsius[i]);
      }
      builder.putAt(day, low, high, DayOrigin.OBSERVED);
    }
    return builder.build(place, Medium.shelterAir());
  }
}
