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
import java.util.List;
import java.util.Objects;
import java.util.stream.LongStream;
import org.hipparchus.distribution.continuous.BetaDistribution;

/**
 * How often the 90 % interval of the interval between flights holds the truth, tried on invented
 * seasons of seeds 1 to n, none of them chosen.
 *
 * @param flights the invented seasons
 * @param timing the fit that was tried
 * @param trials what each seed gave, in order
 */
public record FlightCoverage(InventedFlights flights, FlightTiming timing, List<Trial> trials)
    implements Presentable {

  private static final double LEVEL = 0.9;
  private static final int CHUNK = 16;

  /**
   * One seed.
   *
   * @param estimateC the mean interval of the seasons in °C·d; NaN when the fit gave none
   * @param halfWidthC half the width of its 90 % interval in °C·d
   */
  public record Trial(double estimateC, double halfWidthC) {

    /**
     * Whether the fit gave an interval at all.
     *
     * @return false when it was ambiguous, at the edge or not identified
     */
    public boolean given() {
      return Double.isFinite(halfWidthC);
    }

    /**
     * Whether the interval holds the truth.
     *
     * @return false too when there is no interval
     */
    public boolean covers() {
      return Math.abs(estimateC - InventedFlights.INTERVAL.degreeDaysC()) <= halfWidthC;
    }
  }

  /** Copies the list. */
  public FlightCoverage {
    Objects.requireNonNull(flights, "flights");
    Objects.requireNonNull(timing, "timing");
    trials = List.copyOf(trials);
  }

  /**
   * Tries the usual fit.
   *
   * @param world how the flights come about
   * @param seeds number of seeds, from 1 on
   * @return what came out
   */
  public static FlightCoverage of(FlightWorld world, int seeds) {
    return of(
        InventedFlights.of(world),
        FlightTiming.searching(InventedFlights.range()),
        seeds,
        Progress.ofThread());
  }

  /**
   * Tries a fit.
   *
   * @param flights the invented seasons, two or more
   * @param timing the fit to be tried
   * @param seeds number of seeds, from 1 on
   * @param progress hears of the seeds and may cancel
   * @return what came out
   */
  public static FlightCoverage of(
      InventedFlights flights, FlightTiming timing, int seeds, Progress progress) {
    if (flights.seasons() < 2 || seeds < 1) {
      throw InputProblem.of(seeds + " trials with " + flights.seasons() + " seasons each")
          .expected("one trial or more, of two seasons or more")
          .because("the interval comes from the scatter between seasons")
          .mend("take four seasons");
    }
    var trials = new ArrayList<Trial>();
    for (var from = 0; from < seeds; from += CHUNK) {
      progress.step("invented seasons", from, seeds);
      trials.addAll(
          LongStream.rangeClosed(from + 1L, Math.min(seeds, from + CHUNK))
              .parallel()
              .mapToObj(seed -> trial(flights.draw(seed), timing))
              .toList());
    }
    progress.step("invented seasons", seeds, seeds);
    return new FlightCoverage(flights, timing, trials);
  }

  private static Trial trial(List<ObservedSeason> seasons, FlightTiming timing) {
    return new FlightTimingProcedure(timing, seasons, Progress.silent())
        .intervalAlone()
        .filter(estimate -> estimate.seasons() > 1)
        .map(estimate -> new Trial(estimate.mean().degreeDaysC(), estimate.halfWidthOfMeanC(LEVEL)))
        .orElse(new Trial(Double.NaN, Double.NaN));
  }

  /**
   * Trials in which the fit gave an interval.
   *
   * @return 0 to the number of trials
   */
  public int given() {
    return (int) trials.stream().filter(Trial::given).count();
  }

  /**
   * Trials whose interval holds the truth.
   *
   * @return 0 to {@link #given()}
   */
  public int covered() {
    return (int) trials.stream().filter(Trial::covers).count();
  }

  /**
   * The share of intervals that hold the truth.
   *
   * @return 0 to 1; NaN when there was no interval
   */
  public double coverage() {
    return given() == 0 ? Double.NaN : covered() / (double) given();
  }

  /**
   * The exact binomial limits (Clopper and Pearson) of the coverage.
   *
   * @param level confidence, above 0 and below 1
   * @return lower and upper limit
   */
  public List<Double> limits(double level) {
    var tail = (1 - level) / 2;
    var n = given();
    var k = covered();
    return List.of(
        k == 0 ? 0 : new BetaDistribution(k, n - k + 1.0).inverseCumulativeProbability(tail),
        k == n ? 1 : new BetaDistribution(k + 1.0, n - k).inverseCumulativeProbability(1 - tail));
  }

  /**
   * Mean error of the estimates.
   *
   * @return °C·d, positive when too long
   */
  public double biasC() {
    return trials.stream()
            .filter(Trial::given)
            .mapToDouble(Trial::estimateC)
            .average()
            .orElse(Double.NaN)
        - InventedFlights.INTERVAL.degreeDaysC();
  }

  /**
   * Half the width of the interval, its mean over the trials.
   *
   * @return °C·d
   */
  public double meanHalfWidthC() {
    return trials.stream()
        .filter(Trial::given)
        .mapToDouble(Trial::halfWidthC)
        .average()
        .orElse(Double.NaN);
  }

  /**
   * Several trials side by side.
   *
   * @param studies what came out of each
   * @return a line a world and fit, with the coverage lost against 90 %
   */
  public static ResultTable sideBySide(List<FlightCoverage> studies) {
    return ResultTable.of(
            "Coverage of the 90 % interval on invented seasons",
            List.of(
                Column.of("World"),
                Column.of("Fit"),
                Column.of("Trials"),
                Column.of("With an interval"),
                Column.of("Holds the truth", "%"),
                Column.of("99 % limits", "%"),
                Column.of("Lost", "%"),
                Column.of("Bias", "°C·d"),
                Column.of("Half-width", "°C·d")),
            studies.stream().map(FlightCoverage::row).toList())
        .withNote(
            "Invented seasons, seeds from 1 on, "
                + "a demonstration and no proof. Lost: 90 % less what was reached.");
  }

  private List<Cell> row() {
    var limits = given() == 0 ? List.of(0.0, 1.0) : limits(0.99);
    return List.of(
        Cell.text(flights.world().words()),
        Cell.text(fitWords()),
        Cell.number(trials.size(), 0),
        Cell.number(given(), 0),
        Cell.number(100 * coverage(), 1),
        Cell.text(
            Numbers.fixed(100 * limits.get(0), 1) + " to " + Numbers.fixed(100 * limits.get(1), 1)),
        Cell.number(100 * (LEVEL - coverage()), 1),
        Cell.number(biasC(), 1),
        Cell.number(meanHalfWidthC(), 1));
  }

  private String fitWords() {
    return timing.conditions().words()
        + (timing.mostArrivals() > 1 ? "; up to " + timing.mostArrivals() + " arrivals" : "");
  }

  @Override
  public Presentation presentation() {
    return Presentation.titled("Does the interval hold the truth?")
        .table(sideBySide(List.of(this)))
        .build();
  }

  @Override
  public String toString() {
    return sideBySide(List.of(this)).toText();
  }
}
