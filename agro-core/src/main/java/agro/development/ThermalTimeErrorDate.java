package agro.development;

import agro.units.Numbers;
import java.time.LocalDate;
import java.util.Objects;
import java.util.Optional;

/**
 * The date of reaching a sum with the error that filled days give it.
 *
 * @param reached the date on the sums as they stand
 * @param standardErrorDays standard error in days: half the distance between the dates on which the
 *     sum less and plus one standard error is reached; infinite when one is not reached
 * @param level chance that the interval covers the date
 * @param earliest first day of the interval; empty when even the upper sums do not reach it
 * @param latest last day of the interval; empty when it lies past the last day
 */
public record ThermalTimeErrorDate(
    Reached reached,
    double standardErrorDays,
    double level,
    Optional<LocalDate> earliest,
    Optional<LocalDate> latest) {

  /** Refuses nulls. */
  public ThermalTimeErrorDate {
    Objects.requireNonNull(reached, "reached");
    Objects.requireNonNull(earliest, "earliest");
    Objects.requireNonNull(latest, "latest");
  }

  @Override
  public String toString() {
    return reached
        + ", standard error "
        + Numbers.fixed(standardErrorDays, 2)
        + " days, "
        + Numbers.fixed(100 * level, 0)
        + " % from "
        + earliest.map(LocalDate::toString).orElse("not known")
        + " to "
        + latest.map(LocalDate::toString).orElse("past the last day");
  }
}
