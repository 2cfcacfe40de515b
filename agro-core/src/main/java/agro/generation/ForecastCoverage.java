package agro.generation;

import agro.report.InputProblem;
import agro.report.Progress;
import agro.units.Numbers;
import agro.working.Cell;
import agro.working.Presentable;
import agro.working.Presentation;
import agro.working.ResultTable;
import agro.working.ResultTable.Column;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.stream.LongStream;
import org.hipparchus.distribution.continuous.BetaDistribution;

/**
 * How often the intervals of forecast dates hold the truth, tried on invented seasons of seeds 1 to
 * n, none of them chosen. Of the seasons of a seed all but the last are fitted, and the last one is
 * foretold.
 *
 * <p>A forecast is issued some days before the date that the fitted seasons had for the event on
 * the mean, which is known beforehand. Counting back from the date that came would choose the day
 * of issue by the outcome, which may spoil the coverage at short leads. Odd seeds are tried on the
 * second flight, even ones on the third, so that the forecasts of one lead are independent.
 *
 * @param flights the invented seasons
 * @param timing the fit that was tried
 * @param trials what each seed and lead gave, in order
 */
public record ForecastCoverage(InventedFlights flights, FlightTiming timing, List<Trial> trials)
    implements Presentable {

  private static final List<Integer> LEADS = List.of(7, 14, 28, 56);
  private static final int YEARS = 15;
  private static final int CHUNK = 16;

  /**
   * One forecast of the date on which half of a flight has flown.
   *
   * @param leadDays days before the mean date of the fitted seasons
   * @param flight number of the flight
   * @param trueDays the true date, in days since the start of the season's first day
   * @param medianDays the median of the forecast
   * @param chanceBelow the chance that the forecast gave to dates before the true one
   */
  public record Trial(
      int leadDays, int flight, double trueDays, double medianDays, double chanceBelow) {

    /**
     * Whether the central interval of a chance holds the truth.
     *
     * @param chance for example 0.9, above 0 and below 1
     * @return true when it does
     */
    public boolean inside(double chance) {
      return Math.abs(chanceBelow - 0.5) <= chance / 2;
    }
  }

  /** Copies the list. */
  public ForecastCoverage {
    Objects.requireNonNull(flights, "flights");
    Objects.requireNonNull(timing, "timing");
    trials = List.copyOf(trials);
  }

  /**
   * Tries the usual fit on five seasons, 7, 14, 28 and 56 days before the second or third flight.
   *
   * @param world how the flights come about
   * @param seeds number of seeds, from 1 on
   * @return what came out
   */
  public static ForecastCoverage of(FlightWorld world, int seeds) {
    return of(
        new InventedFlights(world, 5),
        FlightTiming.searching(InventedFlights.range()),
        LEADS,
        seeds,
        Progress.ofThread());
  }

  /**
   * Tries a fit and its forecasts.
   *
   * @param flights the invented seasons, three or more
   * @param timing the fit to be tried
   * @param leadDays days before the mean date of each flight, 1 or more
   * @param seeds number of seeds, from 1 on
   * @param progress hears of the seeds and may cancel
   * @return what came out
   */
  public static ForecastCoverage of(
      InventedFlights flights,
      FlightTiming timing,
      List<Integer> leadDays,
      int seeds,
      Progress progress) {
    if (flights.seasons() < 3 || seeds < 1 || leadDays.isEmpty()) {
      throw InputProblem.of(
              seeds + " trials of " + leadDays + " days with " + flights.seasons() + " seasons")
          .expected("one trial and one lead or more, with three seasons or more")
          .because("two seasons are needed for a spread between seasons, and one to foretell")
          .mend("take five seasons");
    }
    var trials = new ArrayList<Trial>();
    for (var from = 0; from < seeds; from += CHUNK) {
      progress.step("invented seasons", from, seeds);
      trials.addAll(
          LongStream.rangeClosed(from + 1L, Math.min(seeds, from + CHUNK))
              .parallel()
              .mapToObj(seed -> new ForecastTrials(flights, timing, leadDays, seed).run())
              .flatMap(List::stream)
              .toList());
    }
    progress.step("invented seasons", seeds, seeds);
    return new ForecastCoverage(flights, timing, trials);
  }

  static int pastYears() {
    return YEARS;
  }

  /**
   * The leads that were tried.
   *
   * @return days, short ones first
   */
  public List<Integer> leadDays() {
    return trials.stream().map(Trial::leadDays).distinct().sorted().toList();
  }

  /**
   * Forecasts of one lead.
   *
   * @param leadDays the lead
   * @return the forecasts, one a seed
   */
  public List<Trial> ofLead(int leadDays) {
    return trials.stream().filter(trial -> trial.leadDays() == leadDays).toList();
  }

  /**
   * Share of the forecasts of a lead whose interval holds the truth.
   *
   * @param leadDays the lead
   * @param chance chance that the interval claims, for example 0.9
   * @return 0 to 1; NaN without forecasts
   */
  public double coverage(int leadDays, double chance) {
    var some = ofLead(leadDays);
    return some.isEmpty() ? Double.NaN : inside(some, chance) / (double) some.size();
  }

  private static long inside(List<Trial> some, double chance) {
    return some.stream().filter(trial -> trial.inside(chance)).count();
  }

  /**
   * The exact binomial limits (Clopper and Pearson) of a coverage.
   *
   * @param leadDays the lead
   * @param chance chance that the interval claims
   * @param level confidence of the limits, above 0 and below 1
   * @return lower and upper limit
   */
  public List<Double> limits(int leadDays, double chance, double level) {
    var some = ofLead(leadDays);
    var n = some.size();
    var k = (int) inside(some, chance);
    var tail = (1 - level) / 2;
    return List.of(
        k == 0 ? 0 : new BetaDistribution(k, n - k + 1.0).inverseCumulativeProbability(tail),
        k == n ? 1 : new BetaDistribution(k + 1.0, n - k).inverseCumulativeProbability(1 - tail));
  }

  /**
   * Several trials side by side.
   *
   * @param studies what came out of each
   * @return a line a world and lead
   */
  public static ResultTable sideBySide(List<ForecastCoverage> studies) {
    var rows = new ArrayList<List<Cell>>();
    for (var study : studies) {
      for (var lead : study.leadDays()) {
        rows.add(study.row(lead));
      }
    }
    return ResultTable.of(
            "Coverage of forecast dates on invented seasons",
            List.of(
                Column.of("World"),
                Column.of("Days before the mean date"),
                Column.of("Forecasts"),
                Column.of("50 % interval holds", "%"),
                Column.of("80 %", "%"),
                Column.of("90 %", "%"),
                Column.of("99 % limits of the last", "%"),
                Column.of("Bias", "d"),
                Column.of("Mean absolute error", "d")),
            rows)
        .withNote("Invented seasons, seeds from 1 on, a demonstration and no proof.");
  }

  private List<Cell> row(int lead) {
    var some = ofLead(lead);
    var limits = limits(lead, 0.9, 0.99);
    var errors =
        some.stream()
            .mapToDouble(trial -> trial.medianDays() - trial.trueDays())
            .filter(Double::isFinite)
            .toArray();
    return List.of(
        Cell.text(flights.world().words()),
        Cell.number(lead, 0),
        Cell.number(some.size(), 0),
        Cell.number(100 * coverage(lead, 0.5), 1),
        Cell.number(100 * coverage(lead, 0.8), 1),
        Cell.number(100 * coverage(lead, 0.9), 1),
        Cell.text(
            Numbers.fixed(100 * limits.get(0), 1) + " to " + Numbers.fixed(100 * limits.get(1), 1)),
        Cell.number(Arrays.stream(errors).average().orElse(Double.NaN), 1),
        Cell.number(Arrays.stream(errors).map(Math::abs).average().orElse(Double.NaN), 1));
  }

  @Override
  public Presentation presentation() {
    return Presentation.titled("Do the intervals of forecast dates hold the truth?")
        .table(sideBySide(List.of(this)))
        .build();
  }

  @Override
  public String toString() {
    return sideBySide(List.of(this)).toText();
  }
}
