package agro.generation;

import agro.weather.DailyExtremes;
import agro.weather.DailyTemperatures;
import agro.weather.DayOrigin;
import agro.weather.Medium;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.hipparchus.random.RandomDataGenerator;

/** Invented years that are exchangeable: a warmth of the year and lagged daily noise. */
final class YearsAlike {

  static final LocalDate FIRST = LocalDate.of(2026, 3, 1);
  static final LocalDate AS_OF = LocalDate.of(2026, 4, 30);
  static final LocalDate AHEAD = AS_OF.plusDays(1);
  static final LocalDate LAST = LocalDate.of(2026, 9, 15);

  private YearsAlike() {}

  /** Days at one temperature, so that the degree-days of a day are what stands above 7 °C. */
  static DailyTemperatures days(LocalDate first, double[] degreeDays, DayOrigin origin) {
    var days = new ArrayList<DailyExtremes>();
    for (var i = 0; i < degreeDays.length; i++) {
      days.add(new DailyExtremes(first.plusDays(i), 7 + degreeDays[i], 7 + degreeDays[i]));
    }
    return DailyTemperatures.of("Test field", Medium.shelterAir(), days, origin);
  }

  /** Degree-days of the days ahead in one year. */
  static double[] year(RandomDataGenerator random) {
    var days = new double[(int) ChronoUnit.DAYS.between(AHEAD, LAST) + 1];
    var warmth = random.nextNormal(9, 0.8);
    var spell = 0.0;
    for (var i = 0; i < days.length; i++) {
      spell = 0.6 * spell + random.nextNormal(0, 2);
      days[i] = Math.max(0, warmth + spell);
    }
    return days;
  }

  /** A season with 60 known days of 4 °C·d and the given years ahead. */
  static SeasonUnderWay season(List<double[]> years) {
    var known = new double[(int) ChronoUnit.DAYS.between(FIRST, AS_OF) + 1];
    Arrays.fill(known, 4);
    return new SeasonUnderWay(
        "test pest",
        InventedSeasons.MODEL,
        new TrapSeason(2026, List.of()),
        FIRST,
        LAST,
        AS_OF,
        days(FIRST, known, DayOrigin.OBSERVED),
        years.stream().map(year -> days(AHEAD, year, DayOrigin.PAST_YEAR)).toList());
  }

  /** Days from the seam until a sum is reached; infinity when the season ends before. */
  static double daysUntil(double degreeDaysC, double[] year) {
    var sum = 0.0;
    for (var i = 0; i < year.length; i++) {
      if (sum + year[i] >= degreeDaysC) {
        return i + (degreeDaysC - sum) / year[i];
      }
      sum += year[i];
    }
    return Double.POSITIVE_INFINITY;
  }
}
