package agro.trial.bioassay;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import agro.report.InputProblem;
import agro.stats.glm.LinkFunction;
import org.junit.jupiter.api.Test;

/** Curves that end below 100 %, with natural mortality beside. */
class ImmunityTest {

  private static final double[][] GROUPS = {
    {0, 100, 5},
    {1, 100, 9},
    {2, 100, 24},
    {4, 100, 50},
    {8, 100, 72},
    {16, 100, 79},
    {32, 100, 81},
    {64, 100, 79}
  };

  private static double logLikelihood(double a, double b, double c, double d) {
    double sum = 0;
    for (var group : GROUPS) {
      double f = group[0] == 0 ? 0 : LinkFunction.PROBIT.mean(a + b * Math.log10(group[0]));
      double p = c + (1 - c - d) * f;
      sum += group[2] * Math.log(p) + (group[1] - group[2]) * Math.log(1 - p);
    }
    return sum;
  }

  @Test
  void noNeighbourIsMoreLikely() {
    var fit =
        DoseResponse.withDefaults()
            .with(NaturalMortality.inModel())
            .withImmunity()
            .fit(Assays.of(GROUPS));
    double a = fit.intercept();
    double b = fit.slope();
    double c = fit.naturalMortality();
    double d = fit.immuneShare();
    assertThat(d).isBetween(0.15, 0.25);
    assertThat(fit.degreesOfFreedom()).isEqualTo(4);
    double best = logLikelihood(a, b, c, d);
    for (double step : new double[] {-1e-4, 1e-4}) {
      assertThat(logLikelihood(a + step, b, c, d)).isLessThan(best);
      assertThat(logLikelihood(a, b + step, c, d)).isLessThan(best);
      assertThat(logLikelihood(a, b, c + step, d)).isLessThan(best);
      assertThat(logLikelihood(a, b, c, d + step)).isLessThan(best);
    }
    assertThat(fit.immuneShareStandardError()).isBetween(0.01, 0.05);
    assertThat(fit.responseAt(1e9)).isCloseTo(1 - d, within(1e-12));
    assertThat(fit.lethalDose(50).limits().isBounded()).isTrue();
    assertThat(fit.presentation().toText()).contains("Immune animals").doesNotContain("NaN");
  }

  /** Observed information against second differences of the likelihood. */
  @Test
  void theInformationIsTheCurvature() {
    var fit =
        DoseResponse.withDefaults()
            .with(NaturalMortality.inModel())
            .with(FisherInformation.OBSERVED)
            .withImmunity()
            .fit(Assays.of(GROUPS));
    double[] at = {fit.intercept(), fit.slope(), fit.naturalMortality(), fit.immuneShare()};
    var information = new double[4][4];
    double h = 1e-4;
    for (int i = 0; i < 4; i++) {
      for (int k = 0; k < 4; k++) {
        information[i][k] =
            -(moved(at, i, h, k, h)
                    - moved(at, i, h, k, -h)
                    - moved(at, i, -h, k, h)
                    + moved(at, i, -h, k, -h))
                / (4 * h * h);
      }
    }
    var inverse = SmallMatrix.inverse(information, new boolean[4]);
    assertThat(fit.slopeStandardError()).isCloseTo(Math.sqrt(inverse[1][1]), within(1e-3));
    assertThat(fit.immuneShareStandardError()).isCloseTo(Math.sqrt(inverse[3][3]), within(1e-4));
  }

  private static double moved(double[] at, int i, double di, int k, double dk) {
    var there = at.clone();
    there[i] += di;
    there[k] += dk;
    return logLikelihood(there[0], there[1], there[2], there[3]);
  }

  @Test
  void tooFewDosesForFourParameters() {
    var choices = DoseResponse.withDefaults().with(NaturalMortality.inModel()).withImmunity();
    assertThatThrownBy(
            () ->
                choices.fit(
                    Assays.of(
                        new double[] {0, 50, 2},
                        new double[] {1, 50, 20},
                        new double[] {2, 50, 30})))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("at least 4 for 4 parameters");
  }
}
