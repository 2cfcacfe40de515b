package agro.course;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Objects;

/**
 * A day.
 *
 * @param day the day
 * @param days days by which an answer may differ, 0 or more
 */
public record DayAnswer(LocalDate day, int days) implements ExpectedAnswer {

  /** Refuses what is missing and a negative tolerance. */
  public DayAnswer {
    Objects.requireNonNull(day, "day");
    if (days < 0) {
      throw new IllegalArgumentException("a tolerance is 0 days or more, but got " + days);
    }
  }

  @Override
  public AnswerValue value() {
    return new AnswerValue.OfDay(day);
  }

  @Override
  public boolean accepts(AnswerValue other) {
    return other instanceof AnswerValue.OfDay typed
        && Math.abs(ChronoUnit.DAYS.between(day, typed.day())) <= days;
  }

  @Override
  public boolean meets(ExpectedAnswer other) {
    return other instanceof DayAnswer typed
        && Math.abs(ChronoUnit.DAYS.between(day, typed.day)) <= days + typed.days;
  }

  @Override
  public String print(CourseWords words) {
    return words.day(day);
  }
}
