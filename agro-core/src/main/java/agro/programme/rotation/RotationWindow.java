package agro.programme.rotation;

import agro.report.InputProblem;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Objects;

/**
 * Days within which one mode of action may be used more than once, and after which it has to
 * change. Windows of pests that fly from field to field belong to the district.
 *
 * @param number number of the window in the season, from 1
 * @param first its first day
 * @param last its last day
 * @param basis where its days come from
 */
public record RotationWindow(int number, LocalDate first, LocalDate last, WindowBasis basis) {

  /** Refuses days out of order. */
  public RotationWindow {
    Objects.requireNonNull(basis, "basis");
    if (number < 1 || last.isBefore(first)) {
      throw InputProblem.of("window " + number + " from " + first + " to " + last)
          .expected("a number from 1 and a last day on or after the first one")
          .because("modes of action are counted within a window")
          .mend("look at the number and at both days");
    }
  }

  /**
   * Whether a day lies in the window.
   *
   * @param day the day
   * @return true from the first to the last day, both included
   */
  public boolean covers(LocalDate day) {
    return !day.isBefore(first) && !day.isAfter(last);
  }

  /**
   * Days of the window that lie within a span, both ends included.
   *
   * @param from first day of the span
   * @param to last day of the span
   * @return number of days, 0 if they do not meet
   */
  public long daysWithin(LocalDate from, LocalDate to) {
    var start = first.isAfter(from) ? first : from;
    var end = last.isBefore(to) ? last : to;
    return end.isBefore(start) ? 0 : ChronoUnit.DAYS.between(start, end) + 1;
  }

  @Override
  public String toString() {
    return "window " + number + ", " + first + " to " + last;
  }
}
