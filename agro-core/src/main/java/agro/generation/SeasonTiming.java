package agro.generation;

import agro.units.ThermalTime;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * What one season tells.
 *
 * @param year the year that names the season
 * @param start thermal time from the season's start day to the middle of the first flight
 * @param startDay the day on which that middle falls; nothing when it lies beyond the temperatures
 * @param interval interval from flight to flight in this season alone; nothing when its flights do
 *     not stand apart
 * @param catchSizes adults that one trap open all through a flight would have taken, flight by
 *     flight; NaN for a flight of which the traps saw less than a hundredth
 * @param biofix the biofix by the chosen rule; nothing when the rule was not fulfilled
 * @param visits visits that entered the fit
 * @param totalCatch adults caught in them
 * @param residualCorrelation correlation of the Pearson residuals of running visits of which one
 *     adult or more is expected, less that which the fit itself brings about
 * @param site name of the site where several are fitted at once; otherwise empty
 * @param shareBeforeTraps share of the first flight that had flown before the first trap was set
 * @param arrivals the arrivals of the first flight, one or more
 */
public record SeasonTiming(
    int year,
    ThermalTime start,
    Optional<LocalDate> startDay,
    Optional<ThermalTime> interval,
    List<Double> catchSizes,
    Optional<Biofix> biofix,
    int visits,
    long totalCatch,
    double residualCorrelation,
    String site,
    double shareBeforeTraps,
    List<FlightArrival> arrivals) {

  /** A start is left-censored when traps were set after this share of the first flight. */
  private static final double BEGAN_BEFORE = 0.1;

  /** Copies the lists. */
  public SeasonTiming {
    Objects.requireNonNull(start, "start");
    Objects.requireNonNull(startDay, "startDay");
    Objects.requireNonNull(interval, "interval");
    Objects.requireNonNull(biofix, "biofix");
    Objects.requireNonNull(site, "site");
    catchSizes = List.copyOf(catchSizes);
    arrivals = List.copyOf(arrivals);
  }

  /**
   * A season of one place whose traps stood in time, with one arrival.
   *
   * @param year the year that names the season
   * @param start thermal time to the middle of the first flight
   * @param startDay the day on which that middle falls
   * @param interval interval from flight to flight in this season alone
   * @param catchSizes adults that one trap open all through a flight would have taken
   * @param biofix the biofix by the chosen rule
   * @param visits visits that entered the fit
   * @param totalCatch adults caught in them
   * @param residualCorrelation correlation of the Pearson residuals of running visits
   */
  public SeasonTiming(
      int year,
      ThermalTime start,
      Optional<LocalDate> startDay,
      Optional<ThermalTime> interval,
      List<Double> catchSizes,
      Optional<Biofix> biofix,
      int visits,
      long totalCatch,
      double residualCorrelation) {
    this(
        year,
        start,
        startDay,
        interval,
        catchSizes,
        biofix,
        visits,
        totalCatch,
        residualCorrelation,
        "",
        0,
        List.of(FlightArrival.ONLY));
  }

  /**
   * Whether the first flight had begun before the first trap was set, so that its start follows
   * from its end and from later flights alone.
   *
   * @return true when more than a tenth of it had flown
   */
  public boolean beganBeforeTraps() {
    return shareBeforeTraps > BEGAN_BEFORE;
  }

  /**
   * Year, and site where there are several.
   *
   * @return the name of the season in print
   */
  public String label() {
    return site.isEmpty() ? Integer.toString(year) : year + " at " + site;
  }
}
