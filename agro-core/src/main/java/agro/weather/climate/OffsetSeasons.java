package agro.weather.climate;

import java.time.LocalDate;
import java.time.Month;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * Differences between field and station season by season. A season goes from the quietest month of
 * the common days to the next one, so that one across New Year stays whole. What a calendar month
 * has in common in all seasons is taken out first: a log that covers spring in one year and autumn
 * in the next would otherwise show their difference as one between years.
 */
final class OffsetSeasons {

  private OffsetSeasons() {}

  /** Mean departure of each season with enough common days, in °C, ascending by season. */
  static double[] departures(List<LocalDate> days, double[] differences) {
    var first = firstMonth(days);
    Map<Month, Mean> months = new EnumMap<>(Month.class);
    Map<Month, Set<Integer>> seasonsOfMonth = new EnumMap<>(Month.class);
    for (int i = 0; i < differences.length; i++) {
      var month = days.get(i).getMonth();
      months.computeIfAbsent(month, any -> new Mean()).add(differences[i]);
      seasonsOfMonth.computeIfAbsent(month, any -> new TreeSet<>()).add(season(days.get(i), first));
    }
    var seasons = new TreeMap<Integer, Mean>();
    for (int i = 0; i < differences.length; i++) {
      var month = days.get(i).getMonth();
      // A month of one season alone has nothing to depart from.
      if (seasonsOfMonth.get(month).size() > 1) {
        seasons
            .computeIfAbsent(season(days.get(i), first), any -> new Mean())
            .add(differences[i] - months.get(month).value());
      }
    }
    return seasons.values().stream()
        .filter(season -> season.count >= StationOffset.LEAST_DAYS)
        .mapToDouble(Mean::value)
        .toArray();
  }

  private static int season(LocalDate day, Month first) {
    return day.getYear() - (day.getMonthValue() < first.getValue() ? 1 : 0);
  }

  /** The month after the one with fewest common days; January when all have as many. */
  private static Month firstMonth(List<LocalDate> days) {
    var counts = new int[13];
    days.forEach(day -> counts[day.getMonthValue()]++);
    int quietest = 12;
    for (int month = 12; month >= 1; month--) {
      quietest = counts[month] < counts[quietest] ? month : quietest;
    }
    return Month.of(quietest).plus(1);
  }

  private static final class Mean {
    private double sum;
    private int count;

    void add(double value) {
      sum += value;
      count++;
    }

    double value() {
      return sum / count;
    }
  }
}
