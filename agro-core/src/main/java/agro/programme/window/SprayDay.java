package agro.programme.window;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * The hours of one day on the clock of the field. Days on which the clock is changed have 23 or 25
 * hours.
 *
 * @param day the day
 * @param hours verdicts of its hours in order; hours without weather are left out
 * @param dayHours hours that the day has on the clock
 * @param meeting hours that meet all limits
 * @param longestRun most hours without a break that begin on this day; a run may go on past
 *     midnight
 * @param runStart when that run begins; nothing when no hour meets the limits
 */
public record SprayDay(
    LocalDate day,
    List<HourVerdict> hours,
    int dayHours,
    int meeting,
    int longestRun,
    Optional<Instant> runStart) {

  /** Copies the list. */
  public SprayDay {
    hours = List.copyOf(hours);
  }

  /**
   * Whether the weather of all hours of the day is there.
   *
   * @return false when hours are missing or a value of one is unknown
   */
  public boolean complete() {
    return hours.size() == dayHours && hours.stream().allMatch(each -> each.unknown().isEmpty());
  }

  /**
   * Whether a job fits into the longest run.
   *
   * @param job the job
   * @return true when the run is at least as long
   */
  public boolean fits(SprayJob job) {
    return longestRun > 0 && longestRun >= job.hours();
  }
}
