package agro.weather.log;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.Optional;
import java.util.OptionalLong;

/**
 * A cell that holds a date, a time of the day or both, taken apart but not yet put in order: which
 * number is the day and which the month may be known only from all cells of the column.
 *
 * @param date numbers of the date; empty for a time of the day alone
 * @param clock seconds since midnight as written; 86 400 for 24:00; negative where none is written
 * @param offsetSeconds offset from UTC where one is written
 * @param zone abbreviation of a zone, or empty
 * @param shape how the cell is written, digits apart; equal for cells of one habit
 * @param widths for each number of one or two digits how it is written: 1 for one digit, 0 for two
 *     that begin with a zero, 2 for others
 * @param hasFraction whether fractions of a second other than zero were left away
 */
record WrittenTime(
    Optional<DateParts> date,
    int clock,
    OptionalLong offsetSeconds,
    String zone,
    String shape,
    String widths,
    boolean hasFraction) {

  static final int NO_CLOCK = -1;

  /** Thermometers are read since about 1650; a year far ahead is a slip of the clock. */
  private static final int FIRST_YEAR = 1650;

  private static final int LAST_YEAR = 2150;
  private static final long FIRST_DAY = LocalDate.of(FIRST_YEAR, 1, 1).toEpochDay();
  private static final long LAST_DAY = LocalDate.of(LAST_YEAR, 12, 31).toEpochDay();

  /**
   * The numbers of a date in the order in which they are written.
   *
   * @param first first number
   * @param second second number
   * @param third third number
   * @param form what the numbers are
   */
  record DateParts(int first, int second, int third, Form form) {

    /** What the numbers of a date are, as far as the cell alone tells. */
    enum Form {
      /** Four digits of the year come first. */
      YEAR_FIRST,
      /** Four digits of the year come last. */
      YEAR_LAST,
      /** Two digits each. */
      SHORT,
      /** The month has its name, and the year four digits; day in the first place. */
      NAMED,
      /** The month has its name, and the year two digits; day in the first place. */
      NAMED_SHORT,
      /** Year and number of the day in it. */
      DAY_OF_YEAR
    }

    /** The day, or nothing when there is none with these numbers in that order. */
    Optional<LocalDate> day(DateOrder order) {
      return switch (form) {
        case YEAR_FIRST -> day(first, second, third);
        case NAMED -> day(third, second, first);
        case NAMED_SHORT -> day(fullYear(third), second, first);
        case DAY_OF_YEAR -> ordinal(first, second);
        case YEAR_LAST ->
            order == DateOrder.YEAR_FIRST
                ? Optional.empty()
                : day(third, part(order.monthPlace()), part(order.dayPlace()));
        case SHORT ->
            day(
                fullYear(part(order.yearPlace())),
                part(order.monthPlace()),
                part(order.dayPlace()));
      };
    }

    private int part(int place) {
      return place == 0 ? first : place == 1 ? second : third;
    }

    /** Two digits of a year stand for 1950 to 2049. */
    private static int fullYear(int year) {
      return year < 50 ? 2000 + year : 1900 + year;
    }

    private static Optional<LocalDate> day(int year, int month, int day) {
      boolean exists =
          month >= 1
              && month <= 12
              && day >= 1
              && isYear(year)
              && day <= YearMonth.of(year, month).lengthOfMonth();
      return exists ? Optional.of(LocalDate.of(year, month, day)) : Optional.empty();
    }

    private static Optional<LocalDate> ordinal(int year, int dayOfYear) {
      boolean exists =
          isYear(year) && dayOfYear >= 1 && dayOfYear <= LocalDate.of(year, 1, 1).lengthOfYear();
      return exists ? Optional.of(LocalDate.ofYearDay(year, dayOfYear)) : Optional.empty();
    }

    private static boolean isYear(int year) {
      return year >= FIRST_YEAR && year <= LAST_YEAR;
    }

    boolean isShort() {
      return form == Form.SHORT || form == Form.NAMED_SHORT;
    }

    boolean needsOrder() {
      return form == Form.SHORT || form == Form.YEAR_LAST;
    }
  }

  /** Takes a cell apart; nothing when it is no date and no time. */
  static Optional<WrittenTime> of(String cell) {
    return cell.isEmpty() || cell.length() > 60
        ? Optional.empty()
        : new WrittenTimeParser(cell).parse();
  }

  /** Whether a day, counted from 1970-01-01, lies in a year in which thermometers are read. */
  static boolean isUsualDay(long epochDay) {
    return epochDay >= FIRST_DAY && epochDay <= LAST_DAY;
  }

  boolean hasClock() {
    return clock != NO_CLOCK;
  }

  boolean isDateOnly() {
    return date.isPresent() && !hasClock();
  }

  boolean isClockOnly() {
    return date.isEmpty();
  }
}
