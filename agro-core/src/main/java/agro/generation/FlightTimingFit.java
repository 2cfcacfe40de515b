package agro.generation;

import agro.development.DegreeDayModel;
import agro.report.ReadReport;
import agro.units.ThermalTime;
import agro.working.Presentable;
import agro.working.Presentation;
import agro.working.ResultTable;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

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
    Objects.requireNonNull(report, "report");
    seasons = List.copyOf(seasons);
    modes = List.copyOf(modes);
    visits = List.copyOf(visits);
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
