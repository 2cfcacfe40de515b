package agro.stats.glm;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import agro.report.InputProblem;
import agro.stats.linear.Covariate;
import agro.stats.linear.Factor;
import agro.stats.linear.ModelTerm;
import java.util.Arrays;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Test;

/** What cannot be fitted is refused with a reason, and what is odd about a fit is said. */
class GeneralisedLinearInputTest {

  private static final ModelTerm GROUP = ModelTerm.of(Factor.of("g", "a", "a", "b", "b"));

  private static void refused(ThrowingCallable attempt, String... words) {
    assertThatThrownBy(attempt)
        .isInstanceOf(InputProblem.class)
        .hasMessageContainingAll(words)
        .hasMessageNotContaining("NaN");
  }

  private static double[] of4(double a, double b, double c, double d) {
    return new double[] {a, b, c, d};
  }

  @Test
  void badCountsAreRefused() {
    double[] ten = of4(10, 10, 10, 10);
    refused(
        () -> ModelResponse.outOf(of4(1, 12, 3, 4), ten), "observation 2", "12 events out of 10");
    refused(() -> ModelResponse.outOf(of4(1, -2, 3, 4), ten), "-2");
    refused(() -> ModelResponse.outOf(of4(1, 2.5, 3, 4), ten), "2.5", "whole number");
    refused(() -> ModelResponse.outOf(of4(0, 0, 3, 4), of4(10, 0, 10, 10)), "total of 0");
    refused(() -> ModelResponse.outOf(new double[] {1}, ten), "4 totals for 1");
    refused(() -> ModelResponse.counts(1, -1, 2), "observation 2");
    refused(() -> ModelResponse.measurements(1, 0), "measurement of 0");
    refused(() -> ModelResponse.counts(), "without observations");
    refused(
        () ->
            GeneralisedLinearModel.of(ErrorFamily.POISSON)
                .fit(ModelResponse.counts(1, 2.5, 2, 3), GROUP),
        "2.5");
    refused(
        () ->
            GeneralisedLinearModel.of(ErrorFamily.BINOMIAL)
                .fit(ModelResponse.counts(1, 2, 2, 3), GROUP),
        "OUT_OF");
    refused(() -> ModelResponse.counts(1, 2).withExposure(1, 0), "exposure of observation 2");
    refused(() -> ModelResponse.counts(1, 2).withPriorWeights(0, 0), "all weights are zero");
    refused(
        () -> GeneralisedLinearModel.of(ErrorFamily.POISSON).fit(ModelResponse.counts(1, 2), GROUP),
        "4 observations");
  }

  @Test
  void quasiFamiliesTakeMeansOfCounts() {
    var fit =
        GeneralisedLinearModel.of(ErrorFamily.QUASI_POISSON)
            .fit(ModelResponse.counts(1.5, 2.5, 4, 6), GROUP);
    assertThat(fit.converged()).isTrue();
    assertThat(fit.logLikelihood()).isEmpty();
    assertThat(fit.akaike()).isEmpty();
  }

  @Test
  void badModelsAreRefused() {
    var poisson = GeneralisedLinearModel.of(ErrorFamily.POISSON);
    refused(() -> poisson.with(LinkFunction.PROBIT), "PROBIT", "IDENTITY");
    refused(() -> poisson.withShape(3), "shape");
    refused(
        () -> GeneralisedLinearModel.of(ErrorFamily.NEGATIVE_BINOMIAL).withShape(-1), "shape -1");
    refused(
        () ->
            GeneralisedLinearModel.of(ErrorFamily.GAMMA)
                .with(EstimationMethod.PENALISED_LIKELIHOOD),
        "penalised");
    refused(() -> PredictorDesign.of(GROUP, GROUP), "each term once");
    var single = ModelTerm.of(Factor.of("g", "a", "a"));
    refused(() -> PredictorDesign.of(single), "one level");
    var other = ModelTerm.slope(Covariate.of("g", 1, 2, 3, 4));
    refused(() -> PredictorDesign.of(GROUP, other), "two different variables named g");
    refused(
        () ->
            GeneralisedLinearModel.of(ErrorFamily.QUASI_POISSON)
                .fit(ModelResponse.counts(3, 3, 4, 4), GROUP),
        "scatter");
    var penalised =
        poisson
            .with(EstimationMethod.PENALISED_LIKELIHOOD)
            .fit(ModelResponse.counts(3, 3, 4, 4), GROUP);
    refused(() -> AnalysisOfDeviance.sequential(penalised), "penalised");
    refused(() -> penalised.coefficient("h"), "g[b]");
  }

  @Test
  void countsWithoutExcessScatterHaveAnUnboundedShape() {
    var fit =
        GeneralisedLinearModel.of(ErrorFamily.NEGATIVE_BINOMIAL)
            .fit(ModelResponse.counts(4, 5, 9, 10), GROUP);
    var poisson =
        GeneralisedLinearModel.of(ErrorFamily.POISSON)
            .fit(ModelResponse.counts(4, 5, 9, 10), GROUP);
    assertThat(fit.shape().orElseThrow().isUnbounded()).isTrue();
    assertThat(fit.remarks().toString()).contains("no more than a Poisson");
    assertThat(fit.logLikelihood().orElseThrow())
        .isCloseTo(poisson.logLikelihood().orElseThrow(), within(1e-12));
    assertThat(fit.coefficient("g[b]").standardError())
        .isCloseTo(poisson.coefficient("g[b]").standardError(), within(1e-12));
    assertThat(fit.toString()).doesNotContain("NaN").doesNotContain("Infinity");
    assertThat(LikelihoodRatio.ofShape(fit).p()).isGreaterThan(0.49);
  }

  @Test
  void excessScatterIsSaid() {
    var fit =
        GeneralisedLinearModel.of(ErrorFamily.POISSON)
            .fit(ModelResponse.counts(1, 30, 5, 60), GROUP);
    assertThat(fit.remarks().toString()).contains("times that of the family");
    var full =
        GeneralisedLinearModel.of(ErrorFamily.POISSON)
            .fit(
                ModelResponse.counts(1, 30, 5, 60),
                ModelTerm.of(Factor.of("plot", "1", "2", "3", "4")));
    assertThat(full.remarks().toString()).contains("as many coefficients as observations");
  }

  /** Links that do not keep means in their range may have their maximum at its edge. */
  @Test
  void aMeanAtTheEdgeOfItsRangeIsSaid() {
    var x = ModelTerm.slope(Covariate.of("x", 0, 0.1, 1, 2, 3, 4, 5));
    var straight =
        GeneralisedLinearModel.of(ErrorFamily.POISSON)
            .with(LinkFunction.IDENTITY)
            .fit(ModelResponse.counts(0, 0, 3, 4, 8, 9, 10), x);
    var dose = ModelTerm.slope(Covariate.of("dose", 1, 2, 3, 4, 5));
    var risk =
        GeneralisedLinearModel.of(ErrorFamily.BINOMIAL)
            .with(LinkFunction.LOG)
            .fit(
                ModelResponse.outOf(new double[] {1, 2, 3, 8, 9}, new double[] {8, 9, 10, 8, 9}),
                dose);
    for (var fit : new GeneralisedLinearFit[] {straight, risk}) {
      assertThat(fit.converged()).isFalse();
      assertThat(fit.coefficients()).allMatch(each -> each.state() == EstimateState.AT_EDGE);
      assertThat(fit.remarks().get(0)).contains("edge of its range");
      assertThat(fit.toString()).doesNotContain("NaN");
    }
  }

  @Test
  void allCountsZeroIsSaid() {
    for (var family : new ErrorFamily[] {ErrorFamily.POISSON, ErrorFamily.NEGATIVE_BINOMIAL}) {
      var fit = GeneralisedLinearModel.of(family).fit(ModelResponse.counts(0, 0, 0, 0), GROUP);
      assertThat(fit.isSeparated()).isTrue();
      assertThat(fit.remarks().toString()).contains("g a").contains("g b");
      assertThat(fit.coefficients()).noneMatch(CoefficientEstimate::isFinite);
      assertThat(fit.toString()).doesNotContain("NaN");
    }
    refused(
        () ->
            GeneralisedLinearModel.of(ErrorFamily.QUASI_POISSON)
                .fit(ModelResponse.counts(0, 0, 0, 0), GROUP),
        "scatter");
  }

  @Test
  void quantileResidualsAreSeededAndNormal() {
    var fit =
        GeneralisedLinearModel.of(ErrorFamily.NEGATIVE_BINOMIAL)
            .fit(Examples.sprayCounts(), Examples.spray());
    double[] residuals = fit.quantileResiduals(7);
    assertThat(fit.quantileResiduals(7)).containsExactly(residuals);
    double mean = Arrays.stream(residuals).average().orElseThrow();
    double square = Arrays.stream(residuals).map(each -> each * each).average().orElseThrow();
    assertThat(mean).isBetween(-0.3, 0.3);
    assertThat(square).isBetween(0.6, 1.5);
  }
}
