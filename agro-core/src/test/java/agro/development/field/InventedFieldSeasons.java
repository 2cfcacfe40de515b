package agro.development.field;

import agro.development.DegreeDayMethod;
import agro.development.DegreeDayModel;
import agro.development.Thresholds;
import agro.development.UpperCutoff;
import agro.units.Temperature;
import agro.weather.DailyTemperatures;
import agro.weather.DayOrigin;
import agro.weather.Medium;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.simple.RandomSource;

/** Invented seasons in which an insect needs 300 °C·d above a known base, within 3 %. */
final class InventedFieldSeasons {

  private static final int DAYS = 200;

  private InventedFieldSeasons() {}

  /**
   * Seasons with warming springs.
   *
   * @param coldest mean temperature on the first day of the coldest season in °C
   */
  static List<FieldSeasonLog> of(int seasons, double base, double coldest, long seed) {
    var random = RandomSource.XO_SHI_RO_256_PP.create(seed);
    var model =
        new DegreeDayModel(
            DegreeDayMethod.SINGLE_SINE,
            Thresholds.above(Temperature.ofCelsius(base)),
            UpperCutoff.NONE);
    var logs = new ArrayList<FieldSeasonLog>();
    for (int s = 0; s < seasons; s++) {
      var start = LocalDate.of(2000 + s, 3, 1);
      var builder = DailyTemperatures.builder(start, start.plusDays(DAYS - 1L));
      double need = 300 * (1 + 0.03 * normal(random));
      double sum = 0;
      LocalDate event = null;
      for (int i = 0; i < DAYS; i++) {
        double mean = coldest + 8.0 * s / (seasons - 1) + 0.04 * i + 1.5 * normal(random);
        mean = coldest > base ? Math.max(mean, base + 2) : mean;
        double half = coldest > base ? Math.min(4, mean - base) : 4;
        builder.putAt(i, mean - half, mean + half, DayOrigin.OBSERVED);
        sum += model.degreeDaysC(mean - half, mean + half);
        if (sum >= need && event == null) {
          event = start.plusDays(i + 1L);
        }
      }
      logs.add(
          new FieldSeasonLog(
              Integer.toString(2000 + s),
              builder.build("invented", Medium.shelterAir()),
              start,
              event));
    }
    return logs;
  }

  /** A standard normal number by the method of Box and Muller. */
  private static double normal(UniformRandomProvider random) {
    double radius = Math.sqrt(-2 * Math.log(1 - random.nextDouble()));
    return radius * Math.cos(2 * Math.PI * random.nextDouble());
  }
}
