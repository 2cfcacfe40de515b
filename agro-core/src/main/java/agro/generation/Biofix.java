package agro.generation;

import java.time.LocalDate;
import java.util.Objects;

/**
 * The biofix of one season: a rule and the days between which its event lies, for a catch happens
 * some time between two visits. The biofix day itself counts, from its start.
 *
 * @param rule the rule that was used
 * @param earliest first day on which the event can have happened
 * @param latest last day on which it can have happened
 * @param beganBefore whether the traps were set too late: the very first visit already fulfilled
 *     the rule, so that the event may have come before {@code earliest}
 */
public record Biofix(BiofixRule rule, LocalDate earliest, LocalDate latest, boolean beganBefore) {

  /** Checks the order of the days. */
  public Biofix {
    Objects.requireNonNull(rule, "rule");
    if (latest.isBefore(earliest)) {
      throw new IllegalArgumentException(
          "a biofix lies between two days in order, but got " + earliest + " and " + latest);
    }
  }

  /**
   * The biofix as it is printed.
   *
   * @return the interval of days, and whether the flight began before
   */
  @Override
  public String toString() {
    var days = earliest.equals(latest) ? earliest.toString() : earliest + " to " + latest;
    return beganBefore ? "before or on " + latest + " (traps set too late)" : days;
  }
}
