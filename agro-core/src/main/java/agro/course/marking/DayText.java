package agro.course.marking;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;

/** Days as people write them in two languages. */
final class DayText {

  private static final int FLAGS = Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE;
  private static final String ORDINAL = "(?:st|nd|rd|th|\\.)?";
  private static final Pattern ISO = Pattern.compile("(\\d{4})[-/.](\\d{1,2})[-/.](\\d{1,2})");
  private static final Pattern DAY_FIRST =
      Pattern.compile(
          "(\\d{1,2})" + ORDINAL + "[ -]?(?:of )?(\\p{L}{3,9})\\.?,?(?:[ -](\\d{4}|\\d{2}))?",
          FLAGS);
  private static final Pattern MONTH_FIRST =
      Pattern.compile(
          "(\\p{L}{3,9})\\.?[ -]?(?:the )?(\\d{1,2})" + ORDINAL + ",?(?: (\\d{4}))?", FLAGS);
  private static final Pattern POINTS =
      Pattern.compile("(\\d{1,2})\\. ?(\\d{1,2})(?:\\.|\\. ?(\\d{4}|\\d{2}))?\\.?");
  private static final Pattern SLASHES =
      Pattern.compile("(\\d{1,2})[/-](\\d{1,2})(?:[/-](\\d{4}|\\d{2}))?");
  private static final Pattern WEEKDAY =
      Pattern.compile(
          "^(?:am |on |der |den |the |vom )*(?:(?:mon|tues|wednes|thurs|fri|satur|sun)day,? |"
              + "(?:mon|diens|donners|frei|sams|sonn)tag,? |mittwoch,? )?(?:der |den |the )?",
          FLAGS);
  private static final List<List<String>> MONTHS =
      List.of(
          List.of("january", "januar", "jänner"),
          List.of("february", "februar"),
          List.of("march", "märz", "maerz", "mrz"),
          List.of("april"),
          List.of("may", "mai"),
          List.of("june", "juni"),
          List.of("july", "juli"),
          List.of("august"),
          List.of("september"),
          List.of("october", "oktober"),
          List.of("november"),
          List.of("december", "dezember"));
  private static final int MONTHS_OF_YEAR = 12;
  private static final int CENTURY = 2000;

  private DayText() {}

  /**
   * The days that a text may mean, the nearest to a day first if no year is written; both readings
   * if day and month cannot be told apart.
   */
  static List<LocalDate> read(String typed, LocalDate near) {
    var text = WEEKDAY.matcher(typed).replaceFirst("");
    var iso = ISO.matcher(text);
    if (iso.matches()) {
      return days(iso.group(3), number(iso.group(2)), iso.group(1), near);
    }
    var dayFirst = DAY_FIRST.matcher(text);
    if (dayFirst.matches()) {
      return days(dayFirst.group(1), month(dayFirst.group(2)), dayFirst.group(3), near);
    }
    var monthFirst = MONTH_FIRST.matcher(text);
    if (monthFirst.matches()) {
      return days(monthFirst.group(2), month(monthFirst.group(1)), monthFirst.group(3), near);
    }
    var points = POINTS.matcher(text);
    if (points.matches()) {
      return days(points.group(1), number(points.group(2)), points.group(3), near);
    }
    var slashes = SLASHES.matcher(text);
    if (!slashes.matches()) {
      return List.of();
    }
    var one = days(slashes.group(1), number(slashes.group(2)), slashes.group(3), near);
    var other = days(slashes.group(2), number(slashes.group(1)), slashes.group(3), near);
    return isDoubtful(text) ? List.of(one.get(0), other.get(0)) : one.isEmpty() ? other : one;
  }

  /** Whether it looks like day and month, though the calendar may have no such day. */
  static boolean looksLikeDay(String text) {
    return SLASHES.matcher(text).matches()
        || ISO.matcher(text).matches()
        || (POINTS.matcher(text).matches() && text.endsWith("."))
        || isWithMonth(text);
  }

  /** Whether a month is named, or the whole text is a date of the standard form. */
  static boolean isWithMonth(String typed) {
    var text = WEEKDAY.matcher(typed).replaceFirst("");
    var dayFirst = DAY_FIRST.matcher(text);
    if (dayFirst.matches() && month(dayFirst.group(2)) > 0) {
      return true;
    }
    var monthFirst = MONTH_FIRST.matcher(text);
    return ISO.matcher(text).matches() || (monthFirst.matches() && month(monthFirst.group(1)) > 0);
  }

  /** Whether day and month cannot be told apart. */
  static boolean isDoubtful(String text) {
    var slashes = SLASHES.matcher(WEEKDAY.matcher(text).replaceFirst(""));
    if (!slashes.matches()) {
      return false;
    }
    int one = number(slashes.group(1));
    int other = number(slashes.group(2));
    return one != other && isMonth(one) && isMonth(other);
  }

  private static boolean isMonth(int number) {
    return number >= 1 && number <= MONTHS_OF_YEAR;
  }

  private static int month(String word) {
    var lower = word.toLowerCase(Locale.ROOT);
    for (int i = 0; i < MONTHS.size(); i++) {
      for (var name : MONTHS.get(i)) {
        if (name.startsWith(lower)) {
          return i + 1;
        }
      }
    }
    return 0;
  }

  private static List<LocalDate> days(String day, int month, String year, LocalDate near) {
    var found = new ArrayList<LocalDate>();
    int least = year == null ? near.getYear() - 1 : year(year);
    int most = year == null ? near.getYear() + 1 : least;
    for (int i = least; i <= most; i++) {
      day(i, month, number(day)).ifPresent(found::add);
    }
    found.sort(Comparator.comparingLong(one -> Math.abs(ChronoUnit.DAYS.between(one, near))));
    return found;
  }

  /** The day; nothing if the calendar of this year has no such day, as another year's may. */
  private static Optional<LocalDate> day(int year, int month, int day) {
    try {
      return Optional.of(LocalDate.of(year, month, day));
    } catch (DateTimeException missing) {
      return Optional.empty();
    }
  }

  private static int year(String year) {
    return year.length() == 2 ? CENTURY + number(year) : number(year);
  }

  private static int number(String digits) {
    return Integer.parseInt(digits);
  }
}
