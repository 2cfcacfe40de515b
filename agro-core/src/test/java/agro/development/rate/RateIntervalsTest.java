package agro.development.rate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import agro.ReferenceTable;
import agro.report.InputProblem;
import agro.stats.RefitOutcome;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;

class RateIntervalsTest {

  private static final RearingData OLIGOTA = Rearings.named("oligota");
  private static final RateFit BRIERE = RateFitting.of(RateModel.BRIERE_1).fit(OLIGOTA);

  @Test
  void profileLimitsAgreeWithThoseOfBaseR() {
    var intervals = BRIERE.profile(0.9);
    for (var line : ReferenceTable.read(RateIntervalsTest.class, "profile.csv")) {
      var one = intervals.interval(line.getField("parameter"));
      double low = ReferenceTable.number(line, "low");
      double high = ReferenceTable.number(line, "high");
      assertThat(one.limits().low()).isCloseTo(low, within(1e-5 * low));
      assertThat(one.limits().high()).isCloseTo(high, within(1e-5 * high));
    }
    var threshold = intervals.interval(DerivedPoint.LOWER_THRESHOLD).limits();
    assertThat(threshold.low()).isCloseTo(intervals.interval("T0").limits().low(), within(1e-4));
    assertThat(intervals.sample()).isEmpty();
    assertThat(intervals.rateAt(25)).isEmpty();
  }

  /** Of a straight line the profile of a parameter is the t interval. */
  @Test
  void profilesOfALineAreStudentsT() {
    var fit = RateFitting.of(RateModel.LINEAR).betweenCelsius(12, 30).fit(OLIGOTA);
    double t = 2.131846786; // qt(0.95, 4) in base R
    double half = t * fit.standardError("b").orElseThrow();
    var limits = fit.profile(0.9).interval("b").limits();
    assertThat(limits.width()).isCloseTo(2 * half, within(1e-5 * half));
    var k = fit.profile(0.9).interval(DerivedPoint.THERMAL_CONSTANT).limits();
    assertThat(k.low()).isCloseTo(1 / limits.high(), within(1e-3));
  }

  @Test
  void theBootstrapDoesNotDependOnThreadsOrOrder() {
    var once = BRIERE.bootstrap();
    var again = BRIERE.bootstrap();
    assertThat(again.toString()).isEqualTo(once.toString());
    var other = BRIERE.bootstrap(RateBootstrap.suitedTo(BRIERE).withSeed(2));
    assertThat(other.toString()).isNotEqualTo(once.toString());
    assertThat(once.sample().orElseThrow().size()).isEqualTo(1000);
  }

  /** Both kinds of limits lie near the profile, which is exact but for the curvature. */
  @Test
  void bootstrapLimitsLieNearTheProfile() {
    var profile = BRIERE.profile(0.9).interval("TL").limits();
    for (var limits : BootstrapLimits.values()) {
      var boot = BRIERE.bootstrap(RateBootstrap.of(Resampling.RESIDUALS).withLimits(limits));
      var one = boot.interval("TL").limits();
      assertThat(one.low()).isCloseTo(profile.low(), within(0.5));
      assertThat(one.width()).isBetween(0.5 * profile.width(), 2 * profile.width());
      assertThat(boot.presentation().toText())
          .contains(limits.words())
          .contains("0 of 1000 refits failed");
    }
  }

  @Test
  void refitsOnTheEdgeAreCountedAndShown() {
    var fit = RateFitting.of(RateModel.LOGAN_6).fit(OLIGOTA);
    var intervals = fit.bootstrap(RateBootstrap.of(Resampling.RESIDUALS).withRefits(200));
    int edge = intervals.sample().orElseThrow().count(RefitOutcome.ON_BOUNDARY);
    assertThat(edge).isPositive();
    assertThat(intervals.presentation().toText())
        .contains(edge + " ended on the edge")
        .contains("A ridge: psi, rho, D");
  }

  @Test
  void theBandHoldsTheCurveAndIsNarrowWhereTheDataAre() {
    var intervals = BRIERE.bootstrap();
    var at20 = intervals.rateAt(20).orElseThrow();
    assertThat(at20.covers(BRIERE.curve().rate(20))).isTrue();
    assertThat(at20.width()).isPositive();
    assertThat(intervals.rateAt(45).orElseThrow().width()).isZero();
  }

  @Test
  void meansWithSpreadAreDrawnWithTheirErrors() {
    var means = new ArrayList<RearingMean>();
    for (var mean : OLIGOTA.means()) {
      double days = mean.meanDays().orElseThrow();
      means.add(mean.withSpread(25, 0.1 * days));
    }
    var fit =
        RateFitting.of(RateModel.BRIERE_2)
            .withWeights(RateWeights.STANDARD_ERRORS)
            .fit(RearingData.of("with spread", means));
    var intervals = fit.bootstrap();
    assertThat(intervals.method()).contains("standard errors of the cabinets' means");
    assertThat(intervals.notes().toString()).contains("within-cabinet only");
    var equal = RateFitting.of(RateModel.BRIERE_2).fit(OLIGOTA);
    assertThatThrownBy(() -> equal.bootstrap(RateBootstrap.of(Resampling.PARAMETRIC)))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("12 °C has no number of animals or no spread");
    assertThatThrownBy(
            () ->
                RateFitting.of(RateModel.BRIERE_1)
                    .withWeights(RateWeights.STANDARD_ERRORS)
                    .fit(OLIGOTA))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("no mean of the rearing has a number of animals and a spread");
  }

  @Test
  void scatterOfAnimalsThatExplainsTooLittleIsSaid() {
    var means = new ArrayList<RearingMean>();
    for (var mean : OLIGOTA.means()) {
      means.add(mean.withSpread(400, 0.02 * mean.meanDays().orElseThrow()));
    }
    var fit = RateFitting.of(RateModel.BRIERE_1).fit(RearingData.of("exact", means));
    assertThat(fit.hasRemark(RateRemark.Kind.LACK_OF_FIT)).isTrue();
    assertThat(fit.remarks().toString()).contains("times as far as the scatter of animals");
  }

  @Test
  void cabinetsAreDrawnWithinTemperatures() {
    var means = new ArrayList<RearingMean>();
    for (var mean : OLIGOTA.means()) {
      double days = mean.meanDays().orElseThrow();
      means.add(RearingMean.of(mean.celsius(), 0.96 * days).inCabinet("A"));
      means.add(RearingMean.of(mean.celsius(), 1.04 * days).inCabinet("B"));
    }
    var fit = RateFitting.of(RateModel.BRIERE_2).fit(RearingData.of("two cabinets", means));
    var intervals = fit.bootstrap(RateBootstrap.of(Resampling.CABINETS));
    assertThat(intervals.interval("T0").limits().width()).isPositive();
    assertThat(intervals.notes().toString()).doesNotContain("within-cabinet");
    assertThatThrownBy(() -> BRIERE.bootstrap(RateBootstrap.of(Resampling.CABINETS)))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("one cabinet at 12 °C");
    assertThatThrownBy(() -> BRIERE.bootstrap(RateBootstrap.of(Resampling.ANIMALS)))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("holds means alone");
  }

  @Test
  void aSaturatedFitHasNoIntervals() {
    var fit = RateFitting.of(RateModel.SCHOOLFIELD_6).fit(OLIGOTA);
    assertThatThrownBy(fit::bootstrap)
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("6 parameters to 7 rates")
        .hasMessageContaining("two rates more than parameters");
    assertThatThrownBy(() -> fit.profile(0.9)).isInstanceOf(InputProblem.class);
  }

  @Test
  void refusesLevelsAndPointsThatAreNone() {
    assertThatThrownBy(() -> BRIERE.profile(1))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("level of 1");
    assertThatThrownBy(() -> RateBootstrap.of(Resampling.RESIDUALS).withRefits(3))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("at least 100 refits");
    var taylor = RateFitting.of(RateModel.TAYLOR).fit(OLIGOTA).profile(0.9);
    assertThatThrownBy(() -> taylor.interval(DerivedPoint.LOWER_THRESHOLD))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("has no lower threshold");
  }

  @Test
  void tellsProgressAndMayBeCancelled() {
    var told = new AtomicInteger();
    BRIERE.bootstrap(
        RateBootstrap.suitedTo(BRIERE),
        (what, done, total) -> {
          told.incrementAndGet();
          return true;
        });
    assertThat(told.get()).isGreaterThan(2);
    assertThatThrownBy(
            () ->
                BRIERE.bootstrap(RateBootstrap.suitedTo(BRIERE), (what, done, total) -> done < 100))
        .isInstanceOf(CancellationException.class);
  }

  @Test
  void everyModelCarriesBothKindsOfIntervals() {
    var models =
        List.of(RateModel.BRIERE_2, RateModel.LACTIN_2, RateModel.TAYLOR, RateModel.WANG_ENGEL);
    for (var model : models) {
      var fit = RateFitting.of(model).fit(OLIGOTA);
      var boot = fit.bootstrap(RateBootstrap.suitedTo(fit).withRefits(200));
      var profile = fit.profile(0.8);
      assertThat(boot.all()).hasSameSizeAs(profile.all());
      var optimum = fit.curve().derived(DerivedPoint.OPTIMUM).orElseThrow();
      assertThat(profile.interval(DerivedPoint.OPTIMUM).limits().covers(optimum)).isTrue();
      assertThat(boot.interval(DerivedPoint.OPTIMUM).limits().covers(optimum)).isTrue();
    }
  }
}
