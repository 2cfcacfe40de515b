package agro.season;

import agro.generation.ColdEnd;
import agro.generation.DayLengthCut;
import agro.generation.SeasonLimits;
import agro.report.InputProblem;
import agro.report.SourceLocation;
import agro.weather.sun.DayLength;
import agro.weather.sun.Latitude;
import java.time.LocalDate;
import java.time.MonthDay;
import java.util.Objects;
import java.util.Optional;

/**
 * What may end the season of a pest before its last day, whatever the year and the place.
 *
 * @param dayLength critical day length; empty when short days end nothing
 * @param cold cold that ends the season; empty when none does
 * @param lastUsefulDay day of the year after which a date does not matter, such as the end of
 *     harvest; empty when it matters to the end of the season
 */
public record PestLimits(
    Optional<CriticalDayLength> dayLength,
    Optional<ColdOfSeasonEnd> cold,
    Optional<MonthDay> lastUsefulDay) {

  /** Nothing but warmth limits the season. */
  public static final PestLimits NONE =
      new PestLimits(Optional.empty(), Optional.empty(), Optional.empty());

  /** Refuses nulls. */
  public PestLimits {
    Objects.requireNonNull(dayLength, "dayLength");
    Objects.requireNonNull(cold, "cold");
    Objects.requireNonNull(lastUsefulDay, "lastUsefulDay");
  }

  /**
   * The limits in one season at one place.
   *
   * @param window the season of the pest
   * @param year the year that names the season
   * @param place the place
   * @return the limits on days of the calendar
   * @throws InputProblem when day length matters and the latitude of the place is not stated
   */
  public SeasonLimits of(SeasonWindow window, int year, MonitoredPlace place) {
    return new SeasonLimits(
        dayLength.map(critical -> cut(critical, place)),
        cold.map(end -> new ColdEnd(end.minimum(), day(window, year, end.from()), end.source())),
        lastUsefulDay.map(day -> day(window, year, day)));
  }

  private static DayLengthCut cut(CriticalDayLength critical, MonitoredPlace place) {
    if (place.latitudeDegrees().isEmpty()) {
      throw InputProblem.at(
              SourceLocation.file(FolderLayout.PLACES.fileName()),
              "no latitude of " + place.name() + ", and the pest has a critical day length")
          .expected("the latitude of the place in degrees")
          .because("day length follows from it")
          .mend(
              "add the latitude to places.csv, or leave critical_day_length_h in pests.csv empty");
    }
    var latitude = new Latitude(place.latitudeDegrees().getAsDouble());
    return new DayLengthCut(
        DayLength.at(latitude).with(critical.ends()), critical.hours(), critical.source());
  }

  private static LocalDate day(SeasonWindow window, int year, MonthDay day) {
    return window
        .dayOf(year, day)
        .orElseThrow(
            () -> new IllegalArgumentException(day + " lies outside the season " + window.words()));
  }
}
