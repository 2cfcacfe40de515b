package agro.development;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.temporal.ChronoUnit;
import java.util.Objects;

/**
 * The moment at which a sum of degree-days is reached.
 *
 * @param day the day in the course of which it is reached
 * @param fractionOfDay share of that day that has gone by, above 0 to 1; for a sum of nothing,
 *     which is reached at the start, the share of the start day before it, mostly 0
 */
public record Reached(LocalDate day, double fractionOfDay) {

  private static final double MINUTES_OF_A_DAY = 1440;

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

  /**
   * The moment by the clock at whose midnight days are cut.
   *
   * @return the moment, rounded to a minute
   */
  public LocalDateTime moment() {
    return day.atStartOfDay().plusMinutes(Math.round(fractionOfDay * MINUTES_OF_A_DAY));
  }

  /** The moment by the clock, for example {@code "2024-07-21 00:03"}. */
  @Override
  public String toString() {
    return moment().toLocalDate() + " " + moment().toLocalTime();
  }
}
