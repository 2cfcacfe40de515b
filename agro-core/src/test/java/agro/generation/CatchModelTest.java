package agro.generation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import agro.report.ReadReport;
import agro.units.Temperature;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The mean catch, its derivatives and the score of the fit. */
class CatchModelTest {

  private static final int GENERATIONS = 3;
  private static final double SIZE = 0.8;

  @ParameterizedTest
  @EnumSource(FlightCurve.class)
  void slopesAgreeWithCentralDifferences(FlightCurve curve) {
    slopesAgree(new CatchModel(twoSeasons(CatchConditions.NONE), GENERATIONS, curve));
  }

  @Test
  void slopesOfArrivalsAgreeWithCentralDifferences() {
    slopesAgree(
        new CatchModel(twoSeasons(CatchConditions.NONE), GENERATIONS, 3, FlightCurve.NORMAL));
  }

  @Test
  void slopesUnderConditionsAgreeWithCentralDifferences() {
    slopesAgree(new CatchModel(twoSeasons(everyCondition()), GENERATIONS, 2, FlightCurve.NORMAL));
  }

  private static CatchConditions everyCondition() {
    return CatchConditions.NONE
        .with(LureFade.halfLife(20))
        .with(FitNights.minimumAtLeast(Temperature.ofCelsius(6)))
        .with(AdultLife.exponential(8));
  }

  private static void slopesAgree(CatchModel model) {
    var at = somewhere(model);
    for (var s = 0; s < 2; s++) {
      var visits = model.seasons.get(s).visits();
      var slopes = new double[visits][model.columns()];
      model.means(s, at, new double[visits], slopes);
      var columns = model.columnsOf(s);
      for (var i = 0; i < columns.length; i++) {
        var p = columns[i];
        var step = 1e-4 * Math.max(1, Math.abs(at[p]) / 100);
        var up = means(model, s, moved(at, p, step));
        var down = means(model, s, moved(at, p, -step));
        for (var v = 0; v < visits; v++) {
          assertThat(slopes[v][i])
              .as("parameter %d, visit %d", p, v)
              .isCloseTo(
                  (up[v] - down[v]) / (2 * step), within(2e-5 * (1 + Math.abs(slopes[v][i]))));
        }
      }
    }
  }

  @ParameterizedTest
  @EnumSource(FlightCurve.class)
  void scoreAgreesWithCentralDifferences(FlightCurve curve) {
    scoreAgrees(new CatchModel(twoSeasons(CatchConditions.NONE), GENERATIONS, curve));
  }

  @Test
  void scoreOfArrivalsUnderConditionsAgreesWithCentralDifferences() {
    scoreAgrees(new CatchModel(twoSeasons(everyCondition()), GENERATIONS, 3, FlightCurve.NORMAL));
  }

  private static void scoreAgrees(CatchModel model) {
    assertThat(model.seasons.get(0).full).contains(true);
    var prior = new WeakPrior(model, 400);
    var at = somewhere(model);
    var score = score(model, prior, at);
    for (var p = 0; p < at.length; p++) {
      var step = 1e-4 * Math.max(1, Math.abs(at[p]) / 100);
      var up = penalised(model, prior, moved(at, p, step));
      var down = penalised(model, prior, moved(at, p, -step));
      assertThat(score[p])
          .as("parameter %d", p)
          .isCloseTo((up - down) / (2 * step), within(1e-4 * (1 + Math.abs(score[p]))));
    }
  }

  /** The derivative by the size, full traps included, against central differences. */
  @Test
  void sizeScoreAgreesWithCentralDifferences() {
    var model = new CatchModel(twoSeasons(CatchConditions.NONE), GENERATIONS, FlightCurve.NORMAL);
    var prior = new WeakPrior(model, 400);
    for (var size : new double[] {0.05, 0.8, 12, 300}) {
      var step = 1e-4;
      var score = fitAt(model, prior, somewhere(model), size).sizeScore();
      var up = penalised(model, prior, somewhere(model), size * Math.exp(step));
      var down = penalised(model, prior, somewhere(model), size * Math.exp(-step));
      assertThat(score).isCloseTo((up - down) / (2 * step), within(1e-5 * (1 + Math.abs(score))));
    }
  }

  /** At the optimum the penalised likelihood falls to all sides, whichever parameter is moved. */
  @Test
  void fitEndsOnTheTop() {
    var model = new CatchModel(twoSeasons(CatchConditions.NONE), GENERATIONS, FlightCurve.NORMAL);
    var prior = new WeakPrior(model, 400);
    var free = new boolean[model.parameters()];
    Arrays.fill(free, true);
    var fit =
        new CatchFit(model, prior, free, 280, 560)
            .maximise(prior.start(new double[] {130, 130}, 400), 1, false);
    for (var p = 0; p < fit.parameters.length; p++) {
      var step = p <= model.intervalIndex() ? 0.5 : 0.02;
      for (var side : new double[] {-step, step}) {
        assertThat(penalised(model, prior, moved(fit.parameters, p, side), 1))
            .as("parameter %d", p)
            .isLessThan(fit.objective);
      }
    }
  }

  /** On the edge of the range the other parameters reach what they reach with K held there. */
  @Test
  void fitOnTheEdgeOfTheRangeIsTheBestOnTheEdge() {
    var model = new CatchModel(twoSeasons(CatchConditions.NONE), GENERATIONS, FlightCurve.NORMAL);
    var prior = new WeakPrior(model, 400);
    for (var edge : new double[] {340, 370, 430, 460}) {
      var low = edge < 400 ? 200 : edge;
      var high = edge < 400 ? edge : 600;
      var free = new boolean[model.parameters()];
      Arrays.fill(free, true);
      var bounded =
          new CatchFit(model, prior, free, low, high)
              .maximise(prior.start(new double[] {130, 130}, edge < 400 ? 320 : 480), 1, true);
      free[model.intervalIndex()] = false;
      var held =
          new CatchFit(model, prior, free, low, high)
              .maximise(prior.start(new double[] {130, 130}, edge), 1, true);
      assertThat(bounded.parameters[model.intervalIndex()]).isEqualTo(edge);
      assertThat(bounded.atBoundary()).isTrue();
      assertThat(bounded.objective).as("edge %.0f", edge).isCloseTo(held.objective, within(1e-3));
    }
  }

  /** Two nights apart, or both in one visit: the mean and the size add up, and so the variance. */
  @Test
  void mergedVisitsHaveTheVarianceOfTheirSum() {
    var day = LocalDate.of(2020, 5, 1);
    var apart =
        new CatchData(
            2020,
            List.of(
                TrapVisit.working("A", day, day.plusDays(2), 3),
                TrapVisit.working("A", day.plusDays(2), day.plusDays(5), 9)),
            new double[] {100, 120},
            new double[] {120, 150});
    var merged =
        new CatchData(
            2020,
            List.of(TrapVisit.working("A", day, day.plusDays(5), 12)),
            new double[] {100},
            new double[] {150});
    var model = new CatchModel(List.of(apart), 1, FlightCurve.NORMAL);
    var mergedModel = new CatchModel(List.of(merged), 1, FlightCurve.NORMAL);
    var at = new double[] {130, 400, Math.log(40), 1, Math.log(60)};
    var means = means(model, 0, at);
    var sum = means(mergedModel, 0, at)[0];
    assertThat(means[0] + means[1]).isCloseTo(sum, within(1e-12));
    // equal rates: 2 and 3 nights at 4 adults a night
    assertThat(NegativeBinomial.variance(8, 2 * SIZE) + NegativeBinomial.variance(12, 3 * SIZE))
        .isCloseTo(NegativeBinomial.variance(20, 5 * SIZE), within(1e-12));
    var convolved = 0.0;
    for (var y = 0; y <= 12; y++) {
      convolved +=
          Math.exp(
              NegativeBinomial.logProbability(y, 8, 2 * SIZE)
                  + NegativeBinomial.logProbability(12 - y, 12, 3 * SIZE));
    }
    assertThat(convolved)
        .isCloseTo(Math.exp(NegativeBinomial.logProbability(12, 20, 5 * SIZE)), within(1e-12));
  }

  /** Two traps that stray to opposite sides and stay there: visits run together trap by trap. */
  @Test
  void residualsAreCorrelatedTrapByTrap() {
    var traps = new String[] {"A", "B", "A", "B", "A", "B", "A", "B"};
    var residuals = new double[] {1, -1, 1, -1, 1, -1, 1, -1};
    assertThat(ResidualCorrelation.lagOne(traps, residuals)).isCloseTo(6.0 / 8, within(1e-12));
    var oneTrap = new String[] {"A", "A", "A", "A", "A", "A", "A", "A"};
    assertThat(ResidualCorrelation.lagOne(oneTrap, residuals)).isCloseTo(-7.0 / 8, within(1e-12));
    assertThat(ResidualCorrelation.lagOne(new String[] {"A"}, new double[] {2})).isNaN();
  }

  private static List<CatchData> twoSeasons(CatchConditions conditions) {
    var report = new ReadReport.Collector("test");
    var data = new ArrayList<CatchData>();
    for (var season : new InventedSeasons(5, InventedSeasons.Truth.usual()).seasons(2)) {
      var visits = new ArrayList<>(season.traps().visits());
      var visit = visits.get(8);
      visits.set(
          8,
          new TrapVisit(
              "A", visit.from(), visit.date(), 14, TrapState.FULL, visit.nights() - 0.5, false));
      data.add(
          new ObservedSeason(
                  new TrapSeason(season.year(), visits), season.scale(), season.temperatures(), "")
              .usable(conditions, report));
    }
    return data;
  }

  private static double[] somewhere(CatchModel model) {
    var at = new WeakPrior(model, 400).start(new double[] {118, 151}, 391);
    at[model.addedScaleIndex()] -= 0.4;
    for (var p = model.catchIndex(0, 0); p < at.length; p++) {
      at[p] += 0.1 * (p % 4) - 0.2;
    }
    return at;
  }

  private static double[] moved(double[] at, int parameter, double by) {
    var moved = at.clone();
    moved[parameter] += by;
    return moved;
  }

  private static double[] means(CatchModel model, int season, double[] at) {
    var means = new double[model.seasons.get(season).visits()];
    model.means(season, at, means, null);
    return means;
  }

  private static double[] score(CatchModel model, WeakPrior prior, double[] at) {
    return fitAt(model, prior, at, SIZE).score();
  }

  private static double penalised(CatchModel model, WeakPrior prior, double[] at) {
    return penalised(model, prior, at, SIZE);
  }

  private static double penalised(CatchModel model, WeakPrior prior, double[] at, double size) {
    return fitAt(model, prior, at, size).objective;
  }

  private static CatchFit fitAt(CatchModel model, WeakPrior prior, double[] at, double size) {
    return new CatchFit(model, prior, new boolean[model.parameters()], 100, 900).at(at, size);
  }
}
