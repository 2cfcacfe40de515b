package agro.demo;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.HashSet;
import java.util.Set;

/**
 * The logger of Upper Croft: hourly readings that it keeps from late winter to late autumn, with
 * single hours lost, days lost, in one summer nine days lost, and no reading after its last visit.
 */
final class HourlyLogger {
  static final LocalDate LAST_READ = LocalDate.of(2026, 6, 9);
  private static final int LONG_GAP_YEAR = 2024;

  private final Set<LocalDateTime> lost = new HashSet<>();

  HourlyLogger(long seed) {
    for (int year = OsmereVale.FIRST_SEASON; year <= OsmereVale.LAST_SEASON; year++) {
      loseIn(year, Draws.of(seed, "logger " + year));
    }
  }

  static LocalDate firstDay(int year) {
    return LocalDate.of(year, 2, 20);
  }

  static LocalDate lastDay(int year) {
    return year == LAST_READ.getYear() ? LAST_READ : LocalDate.of(year, 11, 8);
  }

  /** Whether the reading of an hour of standard time is lost. */
  boolean lost(LocalDate day, int hour) {
    return lost.contains(day.atTime(hour, 0));
  }

  /** Whether so much of a day is lost that its extremes are not known. */
  boolean dayLost(LocalDate day) {
    int missing = 0;
    for (int hour = 0; hour < 24; hour++) {
      missing += lost(day, hour) ? 1 : 0;
    }
    return missing > 4;
  }

  private void loseIn(int year, Draws draws) {
    var first = firstDay(year);
    for (int i = 0; i < 12; i++) {
      lose(first.plusDays(draws.whole(0, 100)).atTime(draws.whole(0, 23), 0), 1);
    }
    int days = year == LONG_GAP_YEAR ? 9 : draws.whole(1, 2);
    int latest = year == LAST_READ.getYear() ? 60 : 170;
    lose(first.plusDays(draws.whole(30, latest)).atTime(draws.whole(8, 18), 0), days * 24);
  }

  private void lose(LocalDateTime from, int hours) {
    for (int i = 0; i < hours; i++) {
      lost.add(from.plusHours(i));
    }
  }
}
