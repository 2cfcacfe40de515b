package agro.development.rate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import agro.ReferenceTable;
import agro.report.InputProblem;
import java.util.ArrayList;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class DurationFitTest {

  private static final RearingData ANIMALS = animals();

  private static RearingData animals() {
    var animals = new ArrayList<RearedAnimals>();
    for (var line : ReferenceTable.read(DurationFitTest.class, "animals.csv")) {
      var fate = RearingFate.valueOf(line.getField("fate").toUpperCase(java.util.Locale.ROOT));
      animals.add(
          new RearedAnimals(
              line.getField("cabinet"),
              ReferenceTable.number(line, "set_celsius"),
              OptionalDouble.empty(),
              ReferenceTable.number(line, "from_days"),
              fate == RearingFate.DEVELOPED
                  ? ReferenceTable.number(line, "to_days")
                  : Double.POSITIVE_INFINITY,
              fate,
              1));
    }
    return RearingData.ofAnimals("invented", animals);
  }

  private static RateFit fit(DurationDistribution distribution) {
    return RateFitting.of(RateModel.BRIERE_1).byDurations(distribution).fit(ANIMALS);
  }

  @Test
  void likelihoodsAgreeWithThoseOfBaseR() {
    for (var line : ReferenceTable.read(DurationFitTest.class, "durations.csv")) {
      var fit = fit(DurationDistribution.valueOf(line.getField("distribution")));
      assertThat(fit.logLikelihood())
          .hasValueCloseTo(-ReferenceTable.number(line, "minus_log_likelihood"), within(1e-5));
      for (var symbol : new String[] {"a", "T0", "TL"}) {
        double wanted = ReferenceTable.number(line, symbol);
        assertThat(fit.curve().parameter(symbol)).isCloseTo(wanted, within(1e-4 * wanted));
      }
      assertThat(fit.dispersion())
          .hasValueCloseTo(ReferenceTable.number(line, "dispersion"), within(2e-5));
      assertThat(fit.observations()).isEqualTo(168);
    }
  }

  @ParameterizedTest
  @EnumSource(DurationDistribution.class)
  void chancesOfAllLooksAddUpToOne(DurationDistribution distribution) {
    double sum = 0;
    for (int day = 0; day < 60; day++) {
      sum += Math.exp(distribution.logProbability(day, day + 1, 0.05, 0.2));
    }
    sum += Math.exp(distribution.logProbability(60, Double.POSITIVE_INFINITY, 0.05, 0.2));
    assertThat(sum).isCloseTo(1, within(1e-12));
    assertThat(distribution.logProbability(3, Double.POSITIVE_INFINITY, 0, 0.2)).isZero();
    assertThat(distribution.logProbability(3, 4, 0, 0.2)).isLessThan(-600);
  }

  /** Standard error and profile of the threshold agree, for a likelihood that is nearly normal. */
  @Test
  void standardErrorsAgreeWithProfiles() {
    var fit = fit(DurationDistribution.LOG_NORMAL);
    double error = fit.standardError("T0").orElseThrow();
    var limits = fit.profile(0.9).interval("T0").limits();
    assertThat(limits.width()).isCloseTo(2 * 1.6449 * error, within(0.05 * limits.width()));
    assertThat(fit.profile(0.9).notes().toString()).contains("within-cabinet only");
  }

  @Test
  void cabinetsAreDrawnWhereThereAreSeveralAndAnimalsOnRequest() {
    var fit = fit(DurationDistribution.LOG_NORMAL);
    assertThat(RateBootstrap.suitedTo(fit).resampling()).isEqualTo(Resampling.CABINETS);
    var cabinets = fit.bootstrap(RateBootstrap.suitedTo(fit).withRefits(100));
    assertThat(cabinets.notes().toString()).doesNotContain("within-cabinet");
    var animals = fit.bootstrap(RateBootstrap.of(Resampling.ANIMALS).withRefits(100));
    assertThat(animals.notes().toString()).contains("within-cabinet only");
    assertThat(animals.interval("T0").limits().covers(fit.curve().parameter("T0"))).isTrue();
    assertThatThrownBy(() -> fit.bootstrap(RateBootstrap.of(Resampling.RESIDUALS)))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("choose ANIMALS or CABINETS");
    assertThatThrownBy(
            () ->
                fit.bootstrap(RateBootstrap.suitedTo(fit).withLimits(BootstrapLimits.STUDENTISED)))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("profile intervals");
  }

  @Test
  void animalsAreDrawnForMeansToo() {
    var fit = RateFitting.of(RateModel.BRIERE_1).fit(ANIMALS);
    var within = fit.bootstrap(RateBootstrap.of(Resampling.ANIMALS).withRefits(200));
    assertThat(within.interval("TL").limits().covers(fit.curve().parameter("TL"))).isTrue();
    assertThat(within.presentation().toText()).contains("Within-cabinet only");
  }

  /** Leaving the slow animals out, as a mean must, makes development look faster. */
  @Test
  void censoringIsNotForgotten() {
    var animals = new ArrayList<RearedAnimals>();
    for (var one : ANIMALS.animals()) {
      boolean late = one.fate() == RearingFate.DEVELOPED && one.toDays() > 50;
      animals.add(late ? RearedAnimals.alive(one.cabinet(), one.celsius(), 50, 1) : one);
    }
    var data = RearingData.ofAnimals("stopped on day 50", animals);
    var byMeans = RateFitting.of(RateModel.BRIERE_1).fit(data).curve().rate(14);
    var byDurations =
        RateFitting.of(RateModel.BRIERE_1)
            .byDurations(DurationDistribution.LOG_NORMAL)
            .fit(data)
            .curve()
            .rate(14);
    double whole = fit(DurationDistribution.LOG_NORMAL).curve().rate(14);
    assertThat(Math.abs(byDurations - whole)).isLessThan(Math.abs(byMeans - whole));
  }
}
