package agro.weather;

import java.time.LocalDate;
import java.util.SplittableRandom;

/** Days from a known process: a yearly wave and autoregressive departures. */
public final class InventedWeather {

  /** Mean of the minima; the maxima lie twelve degrees higher. */
  public static final double MEAN_MINIMUM = 6;

  /** Half the yearly range. */
  public static final double WAVE = 8;

  private InventedWeather() {}

  /** Usual minimum of a day, warmest in July, or in January with a negative sign. */
  public static double usualMinimum(LocalDate day, double sign) {
    double phase = 2 * Math.PI * (day.getDayOfYear() - 0.5) / day.lengthOfYear();
    return MEAN_MINIMUM - sign * WAVE * Math.cos(phase - 0.3);
  }

  /** Departures of the minima have the standard deviation; those of the maxima one and a half. */
  public static DailyTemperatures days(
      String from, String to, double sign, double lag1, double deviation, long seed) {
    var random = new SplittableRandom(seed);
    var builder = DailyTemperatures.builder(LocalDate.parse(from), LocalDate.parse(to));
    double min = random.nextGaussian();
    double max = random.nextGaussian();
    for (var day = LocalDate.parse(from);
        !day.isAfter(LocalDate.parse(to));
        day = day.plusDays(1)) {
      double fresh = Math.sqrt(1 - lag1 * lag1);
      double shared = random.nextGaussian();
      min = lag1 * min + fresh * shared;
      max = lag1 * max + fresh * (0.6 * shared + 0.8 * random.nextGaussian());
      double usual = usualMinimum(day, sign);
      double low = usual + deviation * min;
      double high = usual + 12 + 1.5 * deviation * max;
      builder.put(day, Math.min(low, high), Math.max(low, high), DayOrigin.OBSERVED);
    }
    return builder.build("Osmere Vale", Medium.shelterAir());
  }
}
