package agro.reading;

import agro.report.InputProblem;
import agro.report.SourceLocation;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.regex.Pattern;

/** Dates as they are written in files: ISO 8601, year-month-day, nothing else. */
final class DateText {

  private static final Pattern ISO = Pattern.compile("[0-9]{4}-[0-9]{2}-[0-9]{2}");
  private static final Pattern DAY_OR_MONTH_FIRST =
      Pattern.compile("[0-9]{1,2}[./-][0-9]{1,2}[./-][0-9]{2,4}");

  private DateText() {}

  /**
   * Reads a date.
   *
   * @param text cell without surrounding white space, not empty
   * @param place where the cell stands
   * @return the day
   * @throws InputProblem for another shape or a day that the calendar does not have
   */
  static LocalDate date(String text, SourceLocation place) {
    if (!ISO.matcher(text).matches()) {
      boolean unclear = DAY_OR_MONTH_FIRST.matcher(text).matches();
      throw problem(text, place)
          .because(
              unclear
                  ? "day and month cannot be told apart with certainty"
                  : "dates in other shapes are not guessed at")
          .mend("write four digits of the year, two of the month and two of the day, with hyphens");
    }
    try {
      return LocalDate.parse(text);
    } catch (DateTimeException e) {
      throw problem(text, place)
          .because("the calendar has no such day")
          .mend("correct the month or the day");
    }
  }

  private static InputProblem.Awaited problem(String text, SourceLocation place) {
    return CellText.reads(text, place).expected("a date as year-month-day, such as 2024-05-31");
  }
}
