package agro.generation.skill;

import agro.generation.FlightShare;
import agro.report.Progress;
import java.util.List;

/**
 * Which forecasts of past seasons are made.
 *
 * @param schemes which seasons they may learn from
 * @param leads how long before each event they are issued
 * @param shares shares of a flight whose dates are forecast
 * @param atATime forecasts made at the same time, at least 1; the result does not depend on it
 */
public record HindcastPlan(
    List<HindcastScheme> schemes, List<LeadTime> leads, List<FlightShare> shares, int atATime) {

  /** Copies the lists and refuses a plan without a forecast. */
  public HindcastPlan {
    schemes = List.copyOf(schemes);
    leads = leads.stream().distinct().sorted().toList();
    shares = shares.stream().distinct().sorted().toList();
    if (schemes.isEmpty() || leads.isEmpty() || shares.isEmpty() || atATime < 1) {
      throw new IllegalArgumentException(
          "a hindcast needs a scheme, a lead time, a share of a flight and one forecast at a time");
    }
  }

  /**
   * Both schemes, 7, 14, 28 and 56 days before each event and at the start of the season, as many
   * forecasts at a time as there are processors.
   *
   * @return the usual plan
   */
  public static HindcastPlan usual() {
    return new HindcastPlan(
        List.of(HindcastScheme.values()),
        List.of(
            LeadTime.days(7),
            LeadTime.days(14),
            LeadTime.days(28),
            LeadTime.days(56),
            LeadTime.SEASON_START),
        List.of(FlightShare.values()),
        Runtime.getRuntime().availableProcessors());
  }

  /**
   * The same with other schemes.
   *
   * @param others the schemes
   * @return the changed plan
   */
  public HindcastPlan withSchemes(HindcastScheme... others) {
    return new HindcastPlan(List.of(others), leads, shares, atATime);
  }

  /**
   * The same with other lead times.
   *
   * @param others the leads
   * @return the changed plan
   */
  public HindcastPlan withLeads(LeadTime... others) {
    return new HindcastPlan(schemes, List.of(others), shares, atATime);
  }

  /**
   * The same for other shares of each flight.
   *
   * @param others the shares
   * @return the changed plan
   */
  public HindcastPlan withShares(FlightShare... others) {
    return new HindcastPlan(schemes, leads, List.of(others), atATime);
  }

  /**
   * The same with another number of forecasts made at the same time.
   *
   * @param number at least 1
   * @return the changed plan
   */
  public HindcastPlan withForecastsAtATime(int number) {
    return new HindcastPlan(schemes, leads, shares, number);
  }

  /**
   * Forecasts the past seasons of a pest at a place.
   *
   * @param archive the seasons and what was known of them
   * @return forecasts, dates and scores
   * @throws agro.report.InputProblem when no season is over
   */
  public Hindcast of(SeasonArchive archive) {
    return of(archive, Progress.ofThread());
  }

  /**
   * Forecasts the past seasons of a pest at a place and tells how far it has come.
   *
   * @param archive the seasons and what was known of them
   * @param progress hears of every day of issue and may cancel
   * @return forecasts, dates and scores
   * @throws agro.report.InputProblem when no season is over
   * @throws java.util.concurrent.CancellationException when the progress cancels
   */
  public Hindcast of(SeasonArchive archive, Progress progress) {
    return new HindcastProcedure(this, archive, progress).run();
  }
}
