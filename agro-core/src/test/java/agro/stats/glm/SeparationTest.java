package agro.stats.glm;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import agro.stats.linear.Covariate;
import agro.stats.linear.Factor;
import agro.stats.linear.ModelTerm;
import java.util.Arrays;
import org.junit.jupiter.api.Test;

/** Levels and lines without finite estimates. */
class SeparationTest {

  private static final Factor TREATMENT =
      Factor.of("treatment", "A", "A", "A", "B", "B", "B", "C", "C", "C");
  private static final Factor BLOCK =
      Factor.of("block", "1", "2", "3", "1", "2", "3", "1", "2", "3");

  @Test
  void aTreatmentWithoutAnyInsectsIsNamed() {
    var counts = ModelResponse.counts(12, 15, 9, 4, 6, 3, 0, 0, 0);
    var fit =
        GeneralisedLinearModel.of(ErrorFamily.POISSON)
            .fit(counts, ModelTerm.of(TREATMENT), ModelTerm.of(BLOCK));
    assertThat(fit.converged()).isTrue();
    assertThat(fit.remarks().get(0)).contains("All 3 counts of treatment C are 0");
    assertThat(fit.coefficient("treatment[C]").state()).isEqualTo(EstimateState.MINUS_INFINITY);
    assertThat(fit.toString()).doesNotContain("NaN").doesNotContain("Infinity");
    int[] first = {0, 1, 2, 3, 4, 5};
    var rest =
        GeneralisedLinearModel.of(ErrorFamily.POISSON)
            .fit(
                ModelResponse.counts(12, 15, 9, 4, 6, 3),
                ModelTerm.of(TREATMENT.select(first)),
                ModelTerm.of(BLOCK.select(first)));
    assertThat(fit.coefficient("treatment[B]").estimate())
        .isCloseTo(rest.coefficient("treatment[B]").estimate(), within(1e-10));
    assertThat(fit.coefficient("treatment[B]").standardError())
        .isCloseTo(rest.coefficient("treatment[B]").standardError(), within(1e-10));
    assertThat(fit.deviance()).isCloseTo(rest.deviance(), within(1e-10));
    assertThat(fit.residualDegreesOfFreedom()).isEqualTo(rest.residualDegreesOfFreedom());
    var tests = AnalysisOfDeviance.marginal(fit);
    assertThat(tests.row("treatment").degreesOfFreedom()).isEqualTo(2);
    assertThat(tests.row("treatment").p()).isLessThan(1e-9);
  }

  /** With a Poisson count the upper limit is where 2 n mean reaches chi-squared. */
  @Test
  void aMeanOfNothingHasAnUpperLimit() {
    var counts = ModelResponse.counts(12, 15, 9, 4, 6, 3, 0, 0, 0);
    var fit = GeneralisedLinearModel.of(ErrorFamily.POISSON).fit(counts, ModelTerm.of(TREATMENT));
    var none = fit.marginalMeans(TREATMENT).mean("C");
    assertThat(none.mean()).isZero();
    assertThat(none.limits().low()).isZero();
    assertThat(none.limits().high()).isCloseTo(3.841458820694124 / 6, within(1e-7));
    assertThat(fit.marginalMeans(TREATMENT).leftOut()).containsExactly("C");
    assertThat(fit.marginalMeans(TREATMENT).compare().pairs()).hasSize(1);
    var test = fit.marginalMeans(TREATMENT).likelihoodRatio("B", "C");
    double fall = 2 * 13 * Math.log(2);
    assertThat(test.statistic()).isCloseTo(fall, within(1e-7));
  }

  @Test
  void allDeadAndNoneDeadAreNamed() {
    var dead =
        ModelResponse.outOf(
            new double[] {10, 9, 10, 4, 0, 0}, new double[] {10, 9, 10, 10, 10, 12});
    var group = Factor.of("dose", "high", "high", "high", "mid", "zero", "zero");
    var fit = GeneralisedLinearModel.of(ErrorFamily.BINOMIAL).fit(dead, ModelTerm.of(group));
    assertThat(fit.remarks().toString())
        .contains("All of the individuals of dose high responded")
        .contains("None of the individuals of dose zero responded");
    var means = fit.marginalMeans(group);
    assertThat(means.mean("high").mean()).isEqualTo(1);
    assertThat(means.mean("zero").mean()).isZero();
    assertThat(means.mean("mid").mean()).isCloseTo(0.4, within(1e-12));
    assertThat(means.mean("high").limits().low()).isBetween(0.85, 0.99);
    assertThat(fit.logLikelihood().orElseThrow())
        .isCloseTo(Math.log(210 * Math.pow(0.4, 4) * Math.pow(0.6, 6)), within(1e-9));
  }

  @Test
  void aLineThatSeparatesCompletelyIsSaid() {
    var dead = ModelResponse.outOf(new double[] {0, 0, 0, 8, 9}, new double[] {8, 9, 10, 8, 9});
    var dose = Covariate.of("dose", 1, 2, 3, 4, 5);
    for (var link :
        new LinkFunction[] {
          LinkFunction.LOGIT, LinkFunction.PROBIT, LinkFunction.COMPLEMENTARY_LOG_LOG
        }) {
      var fit =
          GeneralisedLinearModel.of(ErrorFamily.BINOMIAL)
              .with(link)
              .fit(dead, ModelTerm.slope(dose));
      assertThat(fit.isSeparated()).isTrue();
      assertThat(fit.coefficient("dose").state()).isEqualTo(EstimateState.PLUS_INFINITY);
      assertThat(fit.coefficient("(intercept)").state()).isEqualTo(EstimateState.MINUS_INFINITY);
      assertThat(fit.remarks().get(0)).contains("The predictor separates").contains("dose");
      assertThat(fit.deviance()).isZero();
      assertThat(fit.toString()).doesNotContain("NaN");
      var limits = fit.profileLimits(0.95, "dose");
      assertThat(limits.low()).isPositive().isLessThan(20);
      assertThat(limits.high()).isInfinite();
    }
  }

  @Test
  void oneMiddleDoseIsQuasiComplete() {
    var dead = ModelResponse.outOf(new double[] {0, 0, 4, 8, 9}, new double[] {8, 9, 10, 8, 9});
    var fit =
        GeneralisedLinearModel.of(ErrorFamily.BINOMIAL)
            .fit(dead, ModelTerm.slope(Covariate.of("dose", 1, 2, 3, 4, 5)));
    assertThat(fit.isSeparated()).isTrue();
    assertThat(fit.fittedMeans()[2]).isCloseTo(0.4, within(1e-12));
    assertThat(fit.function("middle", 1, 3).estimate())
        .isCloseTo(Math.log(0.4 / 0.6), within(1e-10));
    var steep =
        GeneralisedLinearModel.of(ErrorFamily.BINOMIAL)
            .fit(
                ModelResponse.outOf(new double[] {0, 1, 4, 8, 9}, new double[] {8, 9, 10, 8, 9}),
                ModelTerm.slope(Covariate.of("dose", 1, 2, 3, 4, 5)));
    assertThat(steep.isSeparated()).isFalse();
    assertThat(steep.converged()).isTrue();
  }

  @Test
  void differencesOfTwoEmptyTreatmentsAreNotDetermined() {
    var counts = ModelResponse.counts(12, 15, 9, 0, 0, 0, 0, 0, 0);
    for (var family : new ErrorFamily[] {ErrorFamily.POISSON, ErrorFamily.NEGATIVE_BINOMIAL}) {
      var fit = GeneralisedLinearModel.of(family).fit(counts, ModelTerm.of(TREATMENT));
      assertThat(fit.function("B - C", 0, 1, -1).state()).isEqualTo(EstimateState.UNDETERMINED);
      assertThat(fit.function("B", 1, 1, 0).state()).isEqualTo(EstimateState.MINUS_INFINITY);
      assertThat(fit.remarks().toString()).contains("treatment B").contains("treatment C");
    }
  }

  @Test
  void anEmptyCellOfAnInteractionIsNamed() {
    var a = Factor.of("spray", "x", "x", "x", "x", "y", "y", "y", "y");
    var b = Factor.of("stage", "egg", "egg", "larva", "larva", "egg", "egg", "larva", "larva");
    var counts = ModelResponse.counts(3, 5, 7, 8, 4, 2, 0, 0);
    var fit =
        GeneralisedLinearModel.of(ErrorFamily.POISSON)
            .fit(counts, PredictorDesign.of(ModelTerm.crossing(a, b)));
    assertThat(fit.remarks().get(0)).contains("All 2 counts of spray y, stage larva are 0");
    assertThat(fit.coefficient("spray[y]").isFinite()).isTrue();
    var single = fit.marginalMeans(a, b).mean("x:larva");
    assertThat(single.mean()).isCloseTo(7.5, within(1e-10));
  }

  /** 1,000 single animals with a steep line: hardly any overlap, but some. */
  @Test
  void manySingleAnimalsThatOverlapAreNotSeparated() {
    int n = 1000;
    double[] dose = new double[n];
    double[] dead = new double[n];
    double[] ones = new double[n];
    Arrays.fill(ones, 1);
    for (int i = 0; i < n; i++) {
      dose[i] = 0.01 * i + 1e-4 * (i % 7);
      dead[i] = i > 500 ? 1 : 0;
    }
    var line = ModelTerm.slope(Covariate.of("dose", dose));
    var apart =
        GeneralisedLinearModel.of(ErrorFamily.BINOMIAL).fit(ModelResponse.outOf(dead, ones), line);
    assertThat(apart.isSeparated()).isTrue();
    dead[495] = 1;
    dead[505] = 0;
    var overlap =
        GeneralisedLinearModel.of(ErrorFamily.BINOMIAL).fit(ModelResponse.outOf(dead, ones), line);
    assertThat(overlap.isSeparated()).isFalse();
    assertThat(overlap.converged()).isTrue();
    assertThat(overlap.coefficient("dose").estimate()).isGreaterThan(10);
  }

  @Test
  void penalisedEstimatesStayFinite() {
    var dead = ModelResponse.outOf(new double[] {0, 0, 0, 8, 9}, new double[] {8, 9, 10, 8, 9});
    var dose = ModelTerm.slope(Covariate.of("dose", 1, 2, 3, 4, 5));
    var fit =
        GeneralisedLinearModel.of(ErrorFamily.BINOMIAL)
            .with(EstimationMethod.PENALISED_LIKELIHOOD)
            .fit(dead, dose);
    assertThat(fit.converged()).isTrue();
    assertThat(fit.isSeparated()).isFalse();
    assertThat(fit.coefficient("dose").estimate()).isBetween(1.0, 10.0);
    var limits = fit.profileLimits(0.95, "dose");
    assertThat(limits.covers(fit.coefficient("dose").estimate())).isTrue();
    assertThat(limits.low()).isPositive();
    assertThat(limits.high()).isFinite();
  }

  /** In one group Firth's estimate adds a half to both outcomes, or to a count. */
  @Test
  void penalisedMeansAddAHalf() {
    var model =
        GeneralisedLinearModel.of(ErrorFamily.BINOMIAL).with(EstimationMethod.PENALISED_LIKELIHOOD);
    var fit =
        model.fit(
            ModelResponse.outOf(new double[] {0, 10}, new double[] {5, 10}),
            ModelTerm.of(Factor.of("g", "a", "b")));
    assertThat(fit.fittedMeans()[0]).isCloseTo(0.5 / 6, within(1e-10));
    assertThat(fit.fittedMeans()[1]).isCloseTo(10.5 / 11, within(1e-10));
    var counts =
        GeneralisedLinearModel.of(ErrorFamily.POISSON)
            .with(EstimationMethod.PENALISED_LIKELIHOOD)
            .fit(ModelResponse.counts(12, 15, 9, 4, 6, 3, 0, 0, 0), ModelTerm.of(TREATMENT));
    double[] means = counts.fittedMeans();
    assertThat(Arrays.stream(means).skip(6).toArray())
        .containsOnly(new double[] {means[6]}, within(1e-9));
    assertThat(means[6]).isCloseTo(0.5 / 3, within(1e-10));
  }
}
