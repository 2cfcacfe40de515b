package agro.programme.bulletin;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;

/**
 * Days along the lower edge of a picture; a day begins at its place and ends at that of the next.
 *
 * @param first first day
 * @param last last day
 * @param left millimetres of the beginning of the first day
 * @param right millimetres of the end of the last day
 */
record DateScale(LocalDate first, LocalDate last, double left, double right) {

  double at(LocalDate day) {
    return at((double) ChronoUnit.DAYS.between(first, day));
  }

  private double at(double days) {
    return left + (right - left) * days / (ChronoUnit.DAYS.between(first, last) + 1);
  }

  /** The middle of a day. */
  double middle(LocalDate day) {
    return at((double) ChronoUnit.DAYS.between(first, day) + 0.5);
  }

  boolean holds(LocalDate day) {
    return !day.isBefore(first) && !day.isAfter(last);
  }
}
