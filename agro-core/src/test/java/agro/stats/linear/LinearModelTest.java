package agro.stats.linear;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import agro.report.InputProblem;
import java.util.Arrays;
import org.junit.jupiter.api.Test;

class LinearModelTest {

  private static final double[] INSECT_DAYS = {0, 120, 350, 610, 980, 1400, 1850, 2400};
  private static final double[] YIELD = {4.62, 4.55, 4.31, 4.20, 3.88, 3.61, 3.30, 2.79};

  /** lm(yield ~ days) in R 4.2.2, see lines-and-contrasts.R; the data are made up. */
  @Test
  void straightLine() {
    var days = Covariate.of("days", INSECT_DAYS);
    var fit = LinearModel.of(ModelTerm.slope(days)).fit(YIELD);
    var coefficients = fit.coefficients();
    assertThat(coefficients.get(0).estimate()).isCloseTo(4.6241529175342, within(1e-12));
    assertThat(coefficients.get(1).estimate()).isCloseTo(-0.0007436087341, within(1e-13));
    assertThat(coefficients.get(0).standardError().orElseThrow())
        .isCloseTo(0.02261024461, within(1e-11));
    assertThat(coefficients.get(1).standardError().orElseThrow())
        .isCloseTo(1.800777249e-05, within(1e-14));
    assertThat(fit.covariance(0, 1)).isCloseTo(-3.125247246e-07, within(1e-16));
    assertThat(Math.sqrt(fit.residualVariance().orElseThrow()))
        .isCloseTo(0.04099048261, within(1e-11));
    var at = fit.estimate("yield at 1000 insect-days", 1, 1000);
    assertThat(at.estimate()).isCloseTo(3.880544183, within(1e-9));
    assertThat(at.limits(0.95).low()).isCloseTo(3.845046788, within(1e-9));
    assertThat(at.limits(0.95).high()).isCloseTo(3.916041579, within(1e-9));
    var slope = fit.estimate("slope", 0, 1);
    assertThat(slope.t()).isCloseTo(-41.2937655, within(1e-6));
    assertThat(slope.pValue()).isCloseTo(1.348939e-08, within(1e-14));
  }

  @Test
  void referenceCodingGivesDifferencesToTheFirstLevel() {
    var fit = ReferenceCases.fit("sprays", "");
    var coded = fit.model().with(ContrastCoding.REFERENCE).fit(fit.response());
    var names = coded.coefficients().stream().map(FittedCoefficient::name).toList();
    assertThat(names).startsWith("intercept", "spray[B]", "spray[C]");
    assertThat(coded.coefficients().get(0).estimate()).isCloseTo(14.5, within(1e-12));
    assertThat(coded.coefficients().get(2).estimate()).isCloseTo(-12.4166666666667, within(1e-11));
    var test = coded.analysis(SumsOfSquares.MARGINAL).rows().get(0).test().orElseThrow();
    assertThat(test.f()).isCloseTo(34.7022820555, within(1e-9));
  }

  @Test
  void residualsAndLeverages() {
    var fit = ReferenceCases.fit("warp unequal", "1 2 3 11 28 29 40 41 42 50");
    double[] response = fit.response();
    double[] fitted = fit.fittedValues();
    double[] residuals = fit.residuals();
    double[] leverages = fit.leverages();
    double[] standardised = fit.standardisedResiduals();
    assertThat(Arrays.stream(leverages).sum()).isCloseTo(6, within(1e-12));
    // six loops of wool A under low tension are left
    assertThat(leverages[0]).isCloseTo(1.0 / 6, within(1e-12));
    double deviation = Math.sqrt(fit.residualVariance().orElseThrow());
    for (int i = 0; i < response.length; i++) {
      assertThat(fitted[i] + residuals[i]).isCloseTo(response[i], within(1e-12));
      assertThat(standardised[i])
          .isCloseTo(residuals[i] / (deviation * Math.sqrt(1 - leverages[i])), within(1e-12));
    }
    var limits = fit.varianceLimits(0.95);
    assertThat(limits.covers(deviation * deviation)).isTrue();
    // 38 s^2 over qchisq(0.975, 38) = 56.8955205
    assertThat(limits.low()).isCloseTo(4450.64484126984 / 56.895520522, within(1e-6));
  }

  @Test
  void anObservationAloneInItsCellIsNotMissed() {
    var a = Factor.of("a", "x", "x", "y");
    var fit = LinearModel.oneWay(a).fit(1, 2, 7);
    assertThat(fit.standardisedResiduals()[2]).isZero();
    assertThat(fit.leverages()[2]).isCloseTo(1, within(1e-12));
  }

  /** Means of a group with their numbers as weights fit as the single observations do. */
  @Test
  void weightsOfMeans() {
    var x = Covariate.of("x", 1, 1, 2, 2, 2, 4);
    var single = LinearModel.of(ModelTerm.slope(x)).fit(3, 5, 4, 6, 8, 9);
    var model = LinearModel.of(ModelTerm.slope(Covariate.of("x", 1, 2, 4)));
    var grouped = model.weighted(2, 3, 1).fit(4, 6, 9);
    assertThat(grouped.mean()).isCloseTo(single.mean(), within(1e-12));
    for (int j = 0; j < 2; j++) {
      assertThat(grouped.coefficients().get(j).estimate())
          .isCloseTo(single.coefficients().get(j).estimate(), within(1e-12));
    }
    assertThat(grouped.fittedValues()[1]).isCloseTo(single.fittedValues()[2], within(1e-12));
    var squares = grouped.analysis(SumsOfSquares.MARGINAL).rows().get(0).sumOfSquares();
    assertThat(squares)
        .isCloseTo(
            single.analysis(SumsOfSquares.MARGINAL).rows().get(0).sumOfSquares(), within(1e-12));
    assertThat(squares + grouped.residualSumOfSquares())
        .isCloseTo(grouped.totalSumOfSquares(), within(1e-12));
    assertThat(grouped.model().design().value(1, 1)).isEqualTo(2);
    assertThatThrownBy(() -> model.weighted(1, 0, 1))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("a positive weight for each of 3 observations");
  }

  @Test
  void aModelServesManyResponses() {
    var fit = ReferenceCases.fit("orchard", "");
    double[] doubled = Arrays.stream(fit.response()).map(y -> 2 * y).toArray();
    var second = fit.model().fit(doubled);
    assertThat(second.residualSumOfSquares())
        .isCloseTo(4 * fit.residualSumOfSquares(), within(1e-6));
    doubled[0] = 1e9;
    assertThat(second.response()[0]).isNotEqualTo(1e9);
  }

  @Test
  void wrongResponsesAreRefused() {
    var model = LinearModel.oneWay(Factor.of("a", "x", "x", "y", "y"));
    assertThatThrownBy(() -> model.fit(1, 2, 3))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("3 values of the response for 4 observations");
    assertThatThrownBy(() -> model.fit(1, 2, 3, Double.NaN))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("observation 4")
        .hasMessageContaining("missing plot needs no value");
    var fit = model.fit(1, 2, 3, 5);
    assertThatThrownBy(() -> fit.estimate("short", 1)).isInstanceOf(InputProblem.class);
  }

  @Test
  void functionsThatCannotBeToldAreRefused() {
    var fit = ReferenceCases.fit("npk", "");
    int last = fit.model().design().columns() - 1;
    assertThat(fit.coefficients().get(last).estimable()).isFalse();
    assertThat(fit.coefficients().get(last)).hasToString("N[0]:P[0]:K[0] not estimable");
    double[] function = new double[last + 1];
    function[last] = 1;
    assertThatThrownBy(() -> fit.estimate("N:P:K", function))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("N:P:K cannot be estimated: confounded with block");
  }

  /** Longley-like trouble: a large offset and small steps keep ten digits. */
  @Test
  void badlyScaledCovariates() {
    double[] year = {2001, 2002, 2003, 2004, 2005, 2006};
    double[] squares = Arrays.stream(year).map(y -> y * y).toArray();
    double[] response = Arrays.stream(year).map(y -> 3 + (y - 2003) * (y - 2003)).toArray();
    response[5] += 1;
    var fit =
        LinearModel.of(
                ModelTerm.slope(Covariate.of("year", year)),
                ModelTerm.slope(Covariate.of("square", squares)))
            .fit(response);
    assertThat(fit.residualDegreesOfFreedom()).isEqualTo(3);
    // the last of six equal steps pulls with leverage 23/28
    assertThat(fit.residuals()[5]).isCloseTo(5.0 / 28, within(1e-7));
  }
}
