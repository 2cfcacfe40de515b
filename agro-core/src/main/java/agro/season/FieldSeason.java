package agro.season;

import agro.development.DegreeDayModel;
import agro.generation.ObservedSeason;
import agro.generation.TrapSeason;
import agro.weather.DailyTemperatures;
import java.time.LocalDate;
import java.util.Objects;

/**
 * One season at one place: its temperatures without a gap, and its trap visits.
 *
 * @param traps visits of the season, perhaps none; it also names the season's year
 * @param temperatures days from the season's start to its end, or to the last day that is known; no
 *     day is missing, and each tells where it comes from
 * @param end last day of the season, which may lie after the last day known
 */
public record FieldSeason(TrapSeason traps, DailyTemperatures temperatures, LocalDate end) {

  /** Refuses nulls and gaps. */
  public FieldSeason {
    Objects.requireNonNull(traps, "traps");
    Objects.requireNonNull(end, "end");
    if (!temperatures.missingDays().isEmpty()) {
      throw new IllegalArgumentException("days are missing: " + temperatures.missingDays());
    }
  }

  /**
   * The year that names the season.
   *
   * @return the year in which it starts
   */
  public int year() {
    return traps.year();
  }

  /**
   * The visits on the degree-day scale of the season.
   *
   * @param model degree-day model of the pest
   * @return what the fit of flight timing takes
   */
  public ObservedSeason observed(DegreeDayModel model) {
    return ObservedSeason.of(traps, model, temperatures);
  }
}
