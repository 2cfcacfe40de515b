package agro.notebook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import agro.development.PublishedSpread;
import agro.development.cycle.LifeCycleRun;
import agro.development.field.BaseCriterion;
import agro.development.field.BaseTemperatureFit;
import agro.development.rate.DerivedPoint;
import agro.development.rate.RateComparison;
import agro.development.rate.RateFit;
import agro.development.rate.RateIntervals;
import agro.development.rate.RateModel;
import agro.development.rate.RearingData;
import agro.development.rate.RearingFate;
import agro.notebook.run.NotebookRun;
import agro.notebook.run.NotebookRunner;
import agro.stats.ConfidenceLimits;
import agro.working.Working;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * What the notebook on development rates says. Oligota flavicornis: durations read in the abstract
 * of the paper (authors not shown), least sums of squares by multi-start least squares in SciPy.
 * The rearing of Osmere Vale is invented; what stands behind it is a line above 7 °C with 440 °C·d.
 */
class RatesNotebookTest {

  private static NotebookRun run;

  @BeforeAll
  static void runTheNotebook() {
    run =
        NotebookRunner.standard()
            .withParameter("folder", "../demo-data/osmere-vale")
            .withParameter("refits", "200")
            .run(Path.of("..", "notebooks", "06-development-rates.ipynb"));
    assertThat(run.failed()).isEmpty();
  }

  @Test
  void theLineOnTheBlackboard() {
    assertThat(result("line", "lower threshold, where the line crosses zero"))
        .isEqualTo("10.590 °C");
    assertThat(result("line", "thermal constant")).isEqualTo("215.34 °C·d");
    assertThat(result("axis", "lower threshold, the slope")).isEqualTo("10.104 °C");
    assertThat(result("axis", "thermal constant, the intercept")).isEqualTo("232.21 °C·d");
  }

  private static String result(String check, String step) {
    return run.checked(check, Working.class).steps().stream()
        .filter(each -> each.name().equals(step))
        .findFirst()
        .orElseThrow()
        .result();
  }

  /** An optimum that lies below the independent one would be a finding, one above it a failure. */
  @ParameterizedTest
  @CsvSource({
    "BRIERE_1, 1.612245915e-4",
    "BRIERE_2, 2.119797734e-5",
    "LOGAN_6, 1.811769133e-5",
    "LACTIN_1, 1.811769133e-5",
    "LOGAN_10, 4.575672526e-6",
    "LACTIN_2, 4.666850224e-6",
    "TAYLOR, 1.913997316e-4",
    "SCHOOLFIELD_4, 2.833308466e-5",
  })
  void leastSumsOfSquares(RateModel model, double optimum) {
    var fit = run.checked("models", RateComparison.class).fit(model).orElseThrow();
    assertThat(fit.sumOfSquares()).isBetween(optimum * (1 - 1e-4), optimum * (1 + 1e-6));
  }

  @Test
  void fewDigitsSpoilTheCurve() {
    var rates = run.checked("rounded", List.class);
    assertThat((double) rates.get(0)).isCloseTo(0.07392, within(1e-5));
    assertThat((double) rates.get(1)).isCloseTo(0.06740, within(1e-5));
  }

  @Test
  void theRearingOfTheVale() {
    var rearing = run.checked("rearing", RearingData.class);
    assertThat(rearing.means()).hasSize(14);
    assertThat(rearing.animals().stream().mapToInt(each -> each.animals()).sum()).isEqualTo(252);
    assertThat(rearing.animals().stream().map(each -> each.fate()))
        .contains(RearingFate.DEVELOPED, RearingFate.ALIVE, RearingFate.DIED);
  }

  @Test
  void theLineHoldsTheTruthOfTheGenerator() {
    var intervals = run.checked("vale-line", RateIntervals.class);
    assertHolds(intervals.interval(DerivedPoint.LOWER_THRESHOLD).limits(), 7);
    assertHolds(intervals.interval(DerivedPoint.THERMAL_CONSTANT).limits(), 440);
  }

  /** The greatest true rate is 0.0448 at 29.1 °C; the curve of Brière is not the generator. */
  @Test
  void theCurveComesNearTheTruthAndItsThresholdDoesNot() {
    var bootstrap = run.checked("bootstrap", RateIntervals.class);
    var optimum = bootstrap.interval(DerivedPoint.OPTIMUM);
    assertThat(optimum.estimate()).isCloseTo(29.1, within(0.5));
    assertThat(bootstrap.interval(DerivedPoint.LOWER_THRESHOLD).limits().high()).isLessThan(7);
    var profile = run.checked("profile", RateIntervals.class).interval(DerivedPoint.OPTIMUM);
    assertThat(profile.limits().low()).isCloseTo(optimum.limits().low(), within(0.1));
    assertThat(profile.limits().high()).isCloseTo(optimum.limits().high(), within(0.1));
  }

  private static void assertHolds(ConfidenceLimits limits, double truth) {
    assertThat(truth).isBetween(limits.low(), limits.high());
  }

  @Test
  void theScatterOfAnimalsIsThatOfTheGenerator() {
    var fit = run.checked("durations", RateFit.class);
    assertThat(fit.observations()).isEqualTo(252);
    assertThat(fit.dispersion().orElseThrow()).isCloseTo(0.06, within(0.006));
  }

  @Test
  void broodsThroughTheSeason() {
    var cycle = run.checked("run", LifeCycleRun.class);
    assertThat(cycle.completedGenerations()).isCloseTo(2.98, within(0.02));
    assertThat(cycle.enteredBy(2, "moth", 0.5)).contains(LocalDate.of(2025, 7, 13));
    assertThat(cycle.completeness(4, "larva")).isCloseTo(0.28, within(0.02));
    assertThat(run.pictures())
        .containsKeys("rates", "rate-band", "life-cycle", "stages", "papers", "base-temperature");
  }

  @Test
  void papersAndField() {
    var spread = run.checked("spread", PublishedSpread.class);
    assertThat(spread.estimates()).hasSize(3).allMatch(each -> each.reached().isPresent());
    assertThat(spread.daysApart().orElseThrow()).isGreaterThan(3);
    var base = run.checked("base", BaseTemperatureFit.class);
    assertThat(base.durations()).hasSize(7);
    assertThat(base.by(BaseCriterion.LEAST_VARIATION).celsius().orElseThrow())
        .isCloseTo(7.48, within(0.05));
  }
}
