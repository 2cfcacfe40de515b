package agro.generation;

import agro.development.DegreeDayModel;
import agro.development.ThermalRequirement;
import agro.report.InputProblem;
import agro.report.ReadReport;
import agro.units.ThermalTime;
import agro.working.Presentable;
import agro.working.Presentation;
import agro.working.ResultTable;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.SortedMap;

/**
 * The fitted timing of a pest's flights at a place.
 *
 * @param timing the choices of the fit
 * @param model the degree-day model of all seasons; nothing when there was no season with a catch
 * @param verdict what the counts can tell about the interval
 * @param generations number of flights in a season
 * @param interval the interval from flight to flight with its scatter between seasons; nothing
 *     unless the verdict says that it may be used
 * @param pooled the interval that holds within these seasons; nothing unless the verdict says so
 * @param shape form and spread of the flights
 * @param sizePerNight size of the negative binomial of one open trap-night
 * @param seasons what each season tells
 * @param modes all explanations found, the best first
 * @param visits every visit that was used, with its mean and residual
 * @param conditions what a catch was taken to depend on, an estimated half-life of the lures filled
 *     in
 * @param lure the half-life of the lures, where it was estimated
 * @param sensitivity interval and dates at thresholds 2 °C lower and higher; nothing when the
 *     seasons came without temperatures or the interval may not be used
 * @param report what was dropped or assumed
 */
public record FlightTimingFit(
    FlightTiming timing,
    Optional<DegreeDayModel> model,
    IntervalVerdict verdict,
    int generations,
    Optional<IntervalEstimate> interval,
    Optional<PooledInterval> pooled,
    FlightShape shape,
    double sizePerNight,
    List<SeasonTiming> seasons,
    List<FlightMode> modes,
    List<VisitFit> visits,
    CatchConditions conditions,
    Optional<LureEstimate> lure,
    Optional<OtherThresholds> sensitivity,
    ReadReport report)
    implements Presentable {

  /** Copies the lists. */
  public FlightTimingFit {
    Objects.requireNonNull(timing, "timing");
    Objects.requireNonNull(model, "model");
    Objects.requireNonNull(verdict, "verdict");
    Objects.requireNonNull(interval, "interval");
    Objects.requireNonNull(pooled, "pooled");
    Objects.requireNonNull(shape, "shape");
    Objects.requireNonNull(conditions, "conditions");
    Objects.requireNonNull(lure, "lure");
    Objects.requireNonNull(sensitivity, "sensitivity");
    Objects.requireNonNull(report, "report");
    seasons = List.copyOf(seasons);
    modes = List.copyOf(modes);
    visits = List.copyOf(visits);
  }

  /**
   * A fit without special conditions and without other thresholds.
   *
   * @param timing the choices of the fit
   * @param model the degree-day model of all seasons
   * @param verdict what the counts can tell about the interval
   * @param generations number of flights in a season
   * @param interval the interval with its scatter between seasons
   * @param pooled the interval that holds within these seasons
   * @param shape form and spread of the flights
   * @param sizePerNight size of the negative binomial of one open trap-night
   * @param seasons what each season tells
   * @param modes all explanations found, the best first
   * @param visits every visit that was used
   * @param report what was dropped or assumed
   */
  public FlightTimingFit(
      FlightTiming timing,
      Optional<DegreeDayModel> model,
      IntervalVerdict verdict,
      int generations,
      Optional<IntervalEstimate> interval,
      Optional<PooledInterval> pooled,
      FlightShape shape,
      double sizePerNight,
      List<SeasonTiming> seasons,
      List<FlightMode> modes,
      List<VisitFit> visits,
      ReadReport report) {
    this(
        timing,
        model,
        verdict,
        generations,
        interval,
        pooled,
        shape,
        sizePerNight,
        seasons,
        modes,
        visits,
        CatchConditions.NONE,
        Optional.empty(),
        Optional.empty(),
        report);
  }

  /**
   * The interval to reckon with: the mean of the seasons where it may be used, otherwise the
   * published one.
   *
   * @return thermal time from flight to flight
   */
  public ThermalTime workingInterval() {
    return interval.map(IntervalEstimate::mean).orElse(timing.range().expected());
  }

  /**
   * Whether the counts scatter no more than a Poisson distribution.
   *
   * @return true when the size ran to infinity
   */
  public boolean poisson() {
    return sizePerNight >= CatchFit.POISSON_SIZE;
  }

  /**
   * Correlation of the residuals of running visits, averaged over the seasons.
   *
   * @return -1 to 1; NaN when no season tells it
   */
  public double residualCorrelation() {
    return seasons.stream()
        .mapToDouble(SeasonTiming::residualCorrelation)
        .filter(Double::isFinite)
        .average()
        .orElse(Double.NaN);
  }

  /**
   * Sets a published requirement beside the fitted interval, or says why the two are not the same
   * quantity: another span than a whole generation, or other thresholds.
   *
   * @param published the requirement with its span and thresholds
   * @return a sentence without a full stop
   */
  public String comparedWith(ThermalRequirement published) {
    return LiteratureComparison.sentence(this, published);
  }

  /**
   * Share of a flight that flies on each day of a season, to be handed to a life cycle as its
   * founders.
   *
   * @param season a season of this fit
   * @param generation number of the flight, 1 for the first
   * @return every day of the season's temperatures with its share; they add up to 1 when the whole
   *     flight lies in these days
   * @throws InputProblem when the season is not one of this fit or the flight is not in it
   */
  public SortedMap<LocalDate, Double> shareByDay(ObservedSeason season, int generation) {
    return FlightByDay.of(this, season, generation);
  }

  /**
   * What each season tells, as a table.
   *
   * @return a line a season
   */
  public ResultTable seasonTable() {
    return FitPages.seasons(this);
  }

  @Override
  public Presentation presentation() {
    return FitPages.page(this);
  }

  @Override
  public String toString() {
    return presentation().toText();
  }
}
