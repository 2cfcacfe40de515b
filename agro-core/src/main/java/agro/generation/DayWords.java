package agro.generation;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

/** Days in print, never broken over two lines. */
final class DayWords {

  static final char NO_BREAK = '\u00a0';

  /** Between two days of different months; a line may break after it. */
  static final String TO = NO_BREAK + "to ";

  private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMM", Locale.ENGLISH);
  private static final DateTimeFormatter IN_FULL =
      DateTimeFormatter.ofPattern("d MMMM yyyy", Locale.ENGLISH);

  private DayWords() {}

  /** Day and month, the year being clear from the context. */
  static String day(LocalDate day) {
    return DAY.format(day).replace(' ', NO_BREAK);
  }

  /** Two days, the month once where it is the same. */
  static String between(LocalDate from, LocalDate to) {
    if (from.equals(to)) {
      return day(to);
    }
    return from.getMonth() == to.getMonth() && from.getYear() == to.getYear()
        ? from.getDayOfMonth() + TO.replace(' ', NO_BREAK) + day(to)
        : day(from) + TO + day(to);
  }

  static String inFull(LocalDate day) {
    return IN_FULL.format(day);
  }
}
