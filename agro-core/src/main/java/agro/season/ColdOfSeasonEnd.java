package agro.season;

import agro.source.Reference;
import agro.units.Temperature;
import java.time.MonthDay;
import java.util.Objects;

/**
 * The cold that ends the season of a pest.
 *
 * @param minimum a day whose lowest temperature is this or below ends the season
 * @param from first day of the year on which it may
 * @param source where the temperature comes from
 */
public record ColdOfSeasonEnd(Temperature minimum, MonthDay from, Reference source) {

  /** Refuses nulls. */
  public ColdOfSeasonEnd {
    Objects.requireNonNull(minimum, "minimum");
    Objects.requireNonNull(from, "from");
    Objects.requireNonNull(source, "source");
  }
}
