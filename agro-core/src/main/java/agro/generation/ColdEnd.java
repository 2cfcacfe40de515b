package agro.generation;

import agro.source.Reference;
import agro.units.Temperature;
import java.time.LocalDate;
import java.util.Objects;

/**
 * A cold day ends the season of the pest: what has not come before it does not come this season.
 *
 * @param minimum a day whose lowest temperature is this or below ends the season
 * @param from first day on which it may; colder days before it, as in spring, end nothing
 * @param source where the temperature comes from
 */
public record ColdEnd(Temperature minimum, LocalDate from, Reference source) {

  /** Refuses nulls. */
  public ColdEnd {
    Objects.requireNonNull(minimum, "minimum");
    Objects.requireNonNull(from, "from");
    Objects.requireNonNull(source, "source");
  }
}
