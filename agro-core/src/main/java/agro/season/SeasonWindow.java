package agro.season;

import agro.report.InputProblem;
import java.time.LocalDate;
import java.time.MonthDay;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * The part of the year in which degree-days of a pest are counted. It may cross New Year, as it
 * does south of the equator; a season is named after the year in which it starts. 29 February
 * stands for 28 February in other years.
 *
 * @param start first day, from whose beginning degree-days run
 * @param end last day
 */
public record SeasonWindow(MonthDay start, MonthDay end) {

  private static final DateTimeFormatter DAY =
      DateTimeFormatter.ofPattern("d MMMM", Locale.ENGLISH);

  /**
   * Refuses a window without an end.
   *
   * @throws InputProblem when the season starts and ends on the same day
   */
  public SeasonWindow {
    Objects.requireNonNull(start, "start");
    Objects.requireNonNull(end, "end");
    if (start.equals(end)) {
      throw InputProblem.of("a season that starts and ends on " + dayWords(start))
          .expected("two different days of the year")
          .because("one day could mean a season of a day or of a year")
          .mend("give the last day of the season, for example the day before its start");
    }
  }

  /**
   * The window in words.
   *
   * @return its first and last day in words, for example {@code "1 March to 31 October"}
   */
  public String words() {
    return dayWords(start) + " to " + dayWords(end);
  }

  private static String dayWords(MonthDay day) {
    return DAY.format(day);
  }

  /**
   * Whether the season crosses New Year.
   *
   * @return true when its end comes before its start in the calendar
   */
  public boolean crossesNewYear() {
    return end.isBefore(start);
  }

  /**
   * First day of a season.
   *
   * @param year the year that names the season
   * @return the day from whose beginning degree-days run
   */
  public LocalDate start(int year) {
    return start.atYear(year);
  }

  /**
   * Last day of a season.
   *
   * @param year the year that names the season
   * @return its last day, in the following year when the season crosses New Year
   */
  public LocalDate end(int year) {
    return end.atYear(crossesNewYear() ? year + 1 : year);
  }

  /**
   * A day of the year inside a season.
   *
   * @param year the year that names the season
   * @param day month and day
   * @return the day of the calendar; empty when it lies between two seasons
   */
  public Optional<LocalDate> dayOf(int year, MonthDay day) {
    for (int in = year; in <= year + 1; in++) {
      var date = day.atYear(in);
      if (!date.isBefore(start(year)) && !date.isAfter(end(year))) {
        return Optional.of(date);
      }
    }
    return Optional.empty();
  }

  /**
   * The season that a day belongs to.
   *
   * @param day any day
   * @return the year that names the season; empty between two seasons
   */
  public OptionalInt yearOf(LocalDate day) {
    for (int year = day.getYear() - 1; year <= day.getYear(); year++) {
      if (!day.isBefore(start(year)) && !day.isAfter(end(year))) {
        return OptionalInt.of(year);
      }
    }
    return OptionalInt.empty();
  }
}
