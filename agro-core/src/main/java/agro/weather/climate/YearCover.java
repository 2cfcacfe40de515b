package agro.weather.climate;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Which days of the year have enough observed days around them. */
final class YearCover {

  /** A leap year, so that 29 February has its place. */
  private static final LocalDate FIRST = LocalDate.of(2000, 1, 1);

  private static final int DAYS = 366;
  private static final DateTimeFormatter WORDS =
      DateTimeFormatter.ofPattern("d MMMM", Locale.ENGLISH);

  private YearCover() {}

  /** Place of a day in a leap year: 1 March has the same one in every year. */
  static int index(LocalDate day) {
    boolean later = !day.isLeapYear() && day.getMonthValue() > 2;
    return day.getDayOfYear() - 1 + (later ? 1 : 0);
  }

  static String words(LocalDate day) {
    return WORDS.format(day);
  }

  static List<Boolean> of(List<LocalDate> observed) {
    var counts = new int[DAYS];
    observed.forEach(day -> counts[index(day)]++);
    var covered = new ArrayList<Boolean>(DAYS);
    for (int day = 0; day < DAYS; day++) {
      int near = 0;
      for (int k = -ClimateNormals.NEARBY_DAYS; k <= ClimateNormals.NEARBY_DAYS; k++) {
        near += counts[Math.floorMod(day + k, DAYS)];
      }
      covered.add(near >= ClimateNormals.LEAST_NEARBY);
    }
    return List.copyOf(covered);
  }

  /** The stretches without cover in words, a stretch across New Year as one. */
  static List<String> openRuns(List<Boolean> covered) {
    var runs = new ArrayList<String>();
    int start = covered.indexOf(true);
    for (int i = 0; i < DAYS; i++) {
      int first = (start + i) % DAYS;
      int length = 0;
      while (i + length < DAYS && !covered.get((first + length) % DAYS)) {
        length++;
      }
      if (length > 0) {
        runs.add(
            "from "
                + words(FIRST.plusDays(first))
                + " to "
                + words(FIRST.plusDays((first + length - 1) % DAYS)));
        i += length;
      }
    }
    return runs;
  }
}
