package agro.generation;

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
 * @param givenStarts starts given by the user, by the year of the season
 */
public record FlightTiming(
    IntervalRange range,
    FlightCurve curve,
    BiofixRule biofixRule,
    Map<Integer, GivenStart> givenStarts) {

  /** Copies the map. */
  public FlightTiming {
    Objects.requireNonNull(range, "range");
    Objects.requireNonNull(curve, "curve");
    Objects.requireNonNull(biofixRule, "biofixRule");
    givenStarts = Map.copyOf(givenStarts);
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
    return new FlightTiming(range, other, biofixRule, givenStarts);
  }

  /**
   * The same with another biofix rule.
   *
   * @param rule the rule
   * @return the changed choices
   */
  public FlightTiming with(BiofixRule rule) {
    return new FlightTiming(range, curve, rule, givenStarts);
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
    return new FlightTiming(range, curve, biofixRule, starts);
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
}
