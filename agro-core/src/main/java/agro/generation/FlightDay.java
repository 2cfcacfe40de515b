package agro.generation;

import java.time.LocalDate;
import java.util.Objects;
import java.util.Optional;

/**
 * The day on which the middle of a flight falls in a fitted season.
 *
 * @param season the season, with its site where there are several
 * @param flight number of the flight, 1 for the first
 * @param middle the day; nothing when it lies beyond the season's temperatures
 * @param daysIntoSeason days since the season's first day, with their fraction; infinite when not
 *     reached
 */
public record FlightDay(
    String season, int flight, Optional<LocalDate> middle, double daysIntoSeason) {

  /** Refuses nulls. */
  public FlightDay {
    Objects.requireNonNull(season, "season");
    Objects.requireNonNull(middle, "middle");
  }
}
