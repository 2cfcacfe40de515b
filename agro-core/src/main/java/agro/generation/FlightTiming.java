package agro.generation;

import agro.report.InputProblem;
import agro.report.Progress;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/**
 * How the timing of flights is fitted to trap counts.
 *
 * <p>Degree-days run from one start day for all seasons. The middle of flight g of season s lies at
 * {@code start_s + (g - 1) K}. The mean catch of a visit is the catch size of the flight, times the
 * traps open on average, times the share of the flight curve between the two visits; counts are
 * negative binomial with a size per open trap-night. Maximum likelihood, all seasons at once, then
 * season by season for the scatter of K.
 *
 * @param range where the interval K is sought
 * @param curve form of a flight
 * @param biofixRule rule by which each season's biofix is read
 * @param givenStarts starts given by the user, by the year of the season; with several sites a
 *     start holds for all of them
 * @param conditions what a catch depends on beside the flight
 * @param mostArrivals up to how many arrivals a first flight may have; more than one enters only
 *     where it lowers the Bayesian information criterion
 */
public record FlightTiming(
    IntervalRange range,
    FlightCurve curve,
    BiofixRule biofixRule,
    Map<Integer, GivenStart> givenStarts,
    CatchConditions conditions,
    int mostArrivals) {

  /** More arrivals than this cannot be told from a wide flight. */
  private static final int MOST_ARRIVALS = 4;

  /** Copies the map. */
  public FlightTiming {
    Objects.requireNonNull(range, "range");
    Objects.requireNonNull(curve, "curve");
    Objects.requireNonNull(biofixRule, "biofixRule");
    Objects.requireNonNull(conditions, "conditions");
    givenStarts = Map.copyOf(givenStarts);
    if (mostArrivals < 1 || mostArrivals > MOST_ARRIVALS) {
      throw InputProblem.of("a first flight of up to " + mostArrivals + " arrivals")
          .expected("1 to " + MOST_ARRIVALS + " arrivals")
          .because("each needs counts of its own that tell it from the others")
          .mend("allow two, or leave it at one");
    }
  }

  /**
   * Choices without special conditions of the catch and with one arrival.
   *
   * @param range where the interval K is sought
   * @param curve form of a flight
   * @param biofixRule rule by which each season's biofix is read
   * @param givenStarts starts given by the user, by the year of the season
   */
  public FlightTiming(
      IntervalRange range,
      FlightCurve curve,
      BiofixRule biofixRule,
      Map<Integer, GivenStart> givenStarts) {
    this(range, curve, biofixRule, givenStarts, CatchConditions.NONE, 1);
  }

  /**
   * The usual fit: normal flights, the biofix at the first of two running visits with a catch,
   * starts estimated.
   *
   * @param range where the interval from flight to flight is sought
   * @return the choices
   */
  public static FlightTiming searching(IntervalRange range) {
    return new FlightTiming(range, FlightCurve.NORMAL, new BiofixRule.FirstOfRun(2), Map.of());
  }

  /**
   * The same with another form of the flights.
   *
   * @param other the form
   * @return the changed choices
   */
  public FlightTiming with(FlightCurve other) {
    return new FlightTiming(range, other, biofixRule, givenStarts, conditions, mostArrivals);
  }

  /**
   * The same with another biofix rule.
   *
   * @param rule the rule
   * @return the changed choices
   */
  public FlightTiming with(BiofixRule rule) {
    return new FlightTiming(range, curve, rule, givenStarts, conditions, mostArrivals);
  }

  /**
   * The same under other conditions of the catch: fading lures, nights unfit for flight, adults
   * that live for some days.
   *
   * @param other what a catch depends on beside the flight
   * @return the changed choices
   */
  public FlightTiming with(CatchConditions other) {
    return new FlightTiming(range, curve, biofixRule, givenStarts, other, mostArrivals);
  }

  /**
   * The same with first flights that may come in several arrivals, such as two waves of migrants.
   * Every later flight follows each arrival by the interval.
   *
   * @param most up to how many arrivals, 1 to 4
   * @return the changed choices
   */
  public FlightTiming withArrivalsUpTo(int most) {
    return new FlightTiming(range, curve, biofixRule, givenStarts, conditions, most);
  }

  /**
   * The same with the start of one season given instead of estimated.
   *
   * @param year the year that names the season
   * @param start the biofix
   * @return the changed choices
   */
  public FlightTiming withStart(int year, GivenStart start) {
    var starts = new HashMap<>(givenStarts);
    starts.put(year, start);
    return withStarts(starts);
  }

  /**
   * The same with other given starts.
   *
   * @param starts starts given by the user, by the year of the season, instead of the present ones
   * @return the changed choices
   */
  public FlightTiming withStarts(Map<Integer, GivenStart> starts) {
    return new FlightTiming(range, curve, biofixRule, starts, conditions, mostArrivals);
  }

  /**
   * Fits the timing.
   *
   * @param seasons observed seasons of one place and pest, none twice; seasons without a catch are
   *     left out and reported
   * @return the fit, which says how far it can be trusted
   * @throws agro.report.InputProblem when a season stands there twice or a given biofix lies
   *     outside its log
   */
  public FlightTimingFit fit(List<ObservedSeason> seasons) {
    return fit(seasons, Progress.ofThread());
  }

  /**
   * Fits the timing and tells how far it has come.
   *
   * @param seasons observed seasons of one place and pest
   * @param progress hears of each start of the search and may cancel
   * @return the fit
   * @throws agro.report.InputProblem when a season stands there twice or a given biofix lies
   *     outside its log
   */
  public FlightTimingFit fit(List<ObservedSeason> seasons, Progress progress) {
    return new FlightTimingProcedure(this, seasons, progress).run();
  }

  /**
   * Fits the timing and refits it to counts drawn anew: a parametric bootstrap over seasons.
   *
   * @param seasons observed seasons of one pest
   * @param refits number of refits, 1,000 for intervals that are shown
   * @param seed seed of the random numbers; equal seeds give equal results
   * @return the refits with their intervals
   * @throws InputProblem when the counts give no usable interval
   */
  public FlightBootstrap bootstrap(List<ObservedSeason> seasons, int refits, long seed) {
    return bootstrap(seasons, refits, seed, Progress.ofThread());
  }

  /**
   * Fits the timing, refits it to counts drawn anew, and tells how far it has come.
   *
   * @param seasons observed seasons of one pest
   * @param refits number of refits
   * @param seed seed of the random numbers
   * @param progress hears of the refits and may cancel
   * @return the refits with their intervals
   * @throws InputProblem when the counts give no usable interval
   */
  public FlightBootstrap bootstrap(
      List<ObservedSeason> seasons, int refits, long seed, Progress progress) {
    return new BootstrapProcedure(this, seasons, progress).run(refits, seed);
  }

  /**
   * Estimates the lower threshold together with the interval, by profile likelihood over thresholds
   * from 5 °C below to 5 °C above the one of the seasons in steps of half a degree.
   *
   * @param seasons observed seasons of one pest, with their temperatures
   * @return the pair's region, which is refused when it is too wide
   * @throws InputProblem when the seasons have no temperatures or the counts give no interval
   */
  public ThresholdProfile profileThresholds(List<ObservedSeason> seasons) {
    return profileThresholds(seasons, 5, 0.5, Progress.ofThread());
  }

  /**
   * Estimates the lower threshold together with the interval.
   *
   * @param seasons observed seasons of one pest, with their temperatures
   * @param reachC how far below and above the threshold of the seasons, in °C
   * @param stepC step between thresholds, in °C
   * @param progress hears of each threshold and may cancel
   * @return the pair's region, which is refused when it is too wide
   * @throws InputProblem when the seasons have no temperatures or the counts give no interval
   */
  public ThresholdProfile profileThresholds(
      List<ObservedSeason> seasons, double reachC, double stepC, Progress progress) {
    return new FlightTimingProcedure(this, seasons, progress).profileThresholds(reachC, stepC);
  }
}
