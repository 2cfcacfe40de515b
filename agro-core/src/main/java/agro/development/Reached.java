package agro.development;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Objects;

/**
 * The moment at which a sum of degree-days is reached.
 *
 * @param day the day in the course of which it is reached
 * @param fractionOfDay share of that day that has gone by, above 0 to 1; 0 only for a sum of
 *     nothing, which is reached at the start
 */
public record Reached(LocalDate day, double fractionOfDay) {

  /** Checks the fraction. */
  public Reached {
    Objects.requireNonNull(day, "day");
    if (!(fractionOfDay >= 0 && fractionOfDay <= 1)) {
      throw new IllegalArgumentException("a fraction of a day is 0 to 1, not " + fractionOfDay);
    }
  }

  /**
   * Days that have gone by since the start of a day.
   *
   * @param start the day from whose beginning to count
   * @return days with their fraction
   */
  public double daysSinceStartOf(LocalDate start) {
    return ChronoUnit.DAYS.between(start, day) + fractionOfDay;
  }
}
