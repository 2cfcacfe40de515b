package agro.season;

import agro.generation.FlightTiming;
import agro.generation.FlightTimingFit;
import agro.generation.GenerationForecast;
import agro.generation.ObservedSeason;
import agro.generation.SeasonUnderWay;
import agro.report.InputProblem;
import agro.report.Progress;
import agro.report.ReadReport;
import agro.weather.DailyTemperatures;
import agro.weather.climate.StationOffset;
import agro.working.Presentable;
import agro.working.Presentation;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * What a season folder knows of one pest at one place on the day of issue: all that a fit of flight
 * timing and a forecast need.
 *
 * @param pest the pest with its degree-day model and the range of its interval
 * @param place the place
 * @param issueDate day after which nothing is known
 * @param seasons seasons in order of years; the last one may be under way
 * @param offset shift from the neighbour to the place; empty without a neighbour that helps
 * @param neighbour all days of the neighbour's log up to the day of issue, as measured there; empty
 *     when the place has none
 * @param own all days of the place's own log up to the day of issue, gaps left open
 * @param forecastDays days foreseen after the day of issue; empty when none were given
 * @param report everything that was assumed, dropped, repaired or filled
 */
public record PestSeasons(
    MonitoredPest pest,
    MonitoredPlace place,
    LocalDate issueDate,
    List<FieldSeason> seasons,
    Optional<StationOffset> offset,
    Optional<DailyTemperatures> neighbour,
    DailyTemperatures own,
    Optional<DailyTemperatures> forecastDays,
    ReadReport report)
    implements Presentable {

  /** Makes the list immutable. */
  public PestSeasons {
    Objects.requireNonNull(pest, "pest");
    Objects.requireNonNull(place, "place");
    Objects.requireNonNull(issueDate, "issueDate");
    Objects.requireNonNull(offset, "offset");
    Objects.requireNonNull(neighbour, "neighbour");
    Objects.requireNonNull(own, "own");
    Objects.requireNonNull(forecastDays, "forecastDays");
    Objects.requireNonNull(report, "report");
    seasons = List.copyOf(seasons);
  }

  /**
   * The seasons on the degree-day scale of the pest.
   *
   * @return what the fit of flight timing takes, in order of years
   */
  public List<ObservedSeason> observed() {
    return seasons.stream().map(season -> season.observed(pest.model())).toList();
  }

  /**
   * The season that the day of issue lies in.
   *
   * @return the season under way; empty between two seasons, or when its temperatures are not known
   */
  public Optional<FieldSeason> underWay() {
    var year = pest.season().yearOf(issueDate);
    return seasons.stream()
        .filter(season -> year.isPresent() && season.year() == year.getAsInt())
        .findFirst();
  }

  /**
   * The seasons that were over on the day of issue, on the degree-day scale of the pest.
   *
   * @return what the fit of flight timing takes for a forecast, in order of years
   */
  public List<ObservedSeason> past() {
    var current = pest.season().yearOf(issueDate);
    return seasons.stream()
        .filter(season -> current.isEmpty() || season.year() != current.getAsInt())
        .map(season -> season.observed(pest.model()))
        .toList();
  }

  /**
   * The season under way: visits and temperatures up to the day of issue, then forecast days, then
   * every past year of the neighbour station, or of the place itself when it has none.
   *
   * @param seed seed of the order in which the errors of the station's offset are dealt out
   * @return what a forecast takes
   * @throws InputProblem when no season is under way on the day of issue, or when too few past
   *     years are known
   */
  public SeasonAhead ahead(long seed) {
    var season = underWay().orElseThrow(this::nothingUnderWay);
    var known =
        forecastDays
            .filter(days -> days.lastDay().isAfter(season.temperatures().lastDay()))
            .map(season.temperatures()::followedBy)
            .orElse(season.temperatures());
    var lastDay = season.end();
    known = known.lastDay().isAfter(lastDay) ? known.upTo(lastDay) : known;
    var ahead = known.lastDay().plusDays(1);
    var trend = place.trend().map(ClimateTrend::celsiusPerDecade).orElse(0.0);
    var weather =
        ahead.isAfter(lastDay)
            ? PastWeather.NOTHING_AHEAD
            : new PastWeather(offset.isPresent() ? neighbour.orElseThrow() : own, offset, trend)
                .between(ahead, lastDay, seed);
    return new SeasonAhead(
        new SeasonUnderWay(
            pest.name(),
            pest.model(),
            season.traps(),
            known.firstDay(),
            lastDay,
            issueDate,
            known,
            weather.members(),
            pest.limits().of(pest.season(), season.year(), place),
            BridgedDayErrors.of(own, neighbour, offset),
            trend),
        weather.report());
  }

  /**
   * The forecast of the season under way with the stages of the folder, from a fit of the seasons
   * before it.
   *
   * @param fit what {@link #fit} gave, or a fit by other choices
   * @param seed seed of the order in which the errors of the station's offset are dealt out
   * @return the forecast
   * @throws InputProblem as from {@link #ahead}, and when nothing tells when the flights begin
   */
  public GenerationForecast forecast(FlightTimingFit fit, long seed) {
    return GenerationForecast.of(fit, ahead(seed).underWay(), pest.stages(), Progress.ofThread());
  }

  /**
   * The usual fit of flight timing to the seasons that were over on the day of issue.
   *
   * @return the fit
   */
  public FlightTimingFit fit() {
    return FlightTiming.searching(pest.range()).fit(past());
  }

  private InputProblem nothingUnderWay() {
    return InputProblem.of("no season of " + pest.name() + " is under way on " + issueDate)
        .expected("a day of issue " + pest.season().words() + " with temperatures up to it")
        .because("a forecast goes on from the degree-days that have already come together")
        .mend("choose a day of issue inside the season, or give the temperatures of the season");
  }

  @Override
  public Presentation presentation() {
    return SeasonsPage.of(this);
  }

  @Override
  public String toString() {
    return pest.name()
        + " at "
        + place.name()
        + " on "
        + issueDate
        + ": "
        + seasons.size()
        + (seasons.size() == 1 ? " season" : " seasons");
  }
}
