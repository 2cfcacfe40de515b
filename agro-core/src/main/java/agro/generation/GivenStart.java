package agro.generation;

import agro.units.ThermalTime;
import java.time.LocalDate;
import java.util.Objects;

/**
 * A biofix that the user gives for a season. It takes the place of the estimated middle of the
 * first flight, which is then not estimated as well.
 *
 * @param biofix the day, which counts from its start
 * @param toMiddle thermal time from the biofix to the middle of the first flight; zero when the
 *     biofix is the middle itself
 */
public record GivenStart(LocalDate biofix, ThermalTime toMiddle) {

  /** Refuses nulls. */
  public GivenStart {
    Objects.requireNonNull(biofix, "biofix");
    Objects.requireNonNull(toMiddle, "toMiddle");
  }
}
