package agro.stats.linear;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import agro.report.InputProblem;
import java.util.List;
import org.junit.jupiter.api.Test;

class ContrastTest {

  /** Fisher and Yates 1963, Statistical Tables, table of orthogonal polynomials: 4 and 5 levels. */
  @Test
  void polynomialsOfEqualSteps() {
    check(Contrast.polynomials(3, 1, 2, 3, 4).get(0), -3, -1, 1, 3);
    check(Contrast.polynomials(3, 1, 2, 3, 4).get(1), 1, -1, -1, 1);
    check(Contrast.polynomials(3, 1, 2, 3, 4).get(2), -1, 3, -3, 1);
    check(Contrast.polynomials(4, 0, 5, 10, 15, 20).get(1), 2, -1, -2, -1, 2);
    check(Contrast.polynomials(4, 0, 5, 10, 15, 20).get(3), 1, -4, 6, -4, 1);
    assertThat(Contrast.polynomials(2, 1, 2, 3).get(1).name()).isEqualTo("quadratic");
  }

  private static void check(Contrast contrast, double... expected) {
    double square = 0;
    for (double each : expected) {
      square += each * each;
    }
    for (int i = 0; i < expected.length; i++) {
      assertThat(contrast.coefficients().get(i))
          .isCloseTo(expected[i] / Math.sqrt(square), within(1e-14));
    }
  }

  /** contr.poly(4, scores = c(0, 1, 2, 4)) in R 4.2.2. */
  @Test
  void polynomialsOfUnequalSteps() {
    var contrasts = Contrast.polynomials(2, 0, 1, 2, 4);
    check(contrasts.get(0), -1.75, -0.75, 0.25, 2.25);
    check(contrasts.get(1), 7, -4, -8, 5);
    assertThatThrownBy(() -> Contrast.polynomials(1, 1, 1, 2))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("different levels");
    assertThatThrownBy(() -> Contrast.polynomials(3, 1, 2, 3)).isInstanceOf(InputProblem.class);
  }

  @Test
  void orthogonalPartsAddUp() {
    var data = TrialData.read("yates-oats.csv");
    var nitrogen = data.factor("nitrogen");
    var fit =
        StratifiedModel.of(
                ModelTerm.crossing(data.factor("variety"), nitrogen),
                List.of(
                    ModelTerm.of(data.factor("block")),
                    ModelTerm.of(data.factor("block"), data.factor("variety"))))
            .fit(data.numbers("yield"));
    var means = fit.means(nitrogen);
    double sum = 0;
    for (Contrast contrast : Contrast.polynomials(3, 0, 0.2, 0.4, 0.6)) {
      var estimate = means.contrast(contrast);
      sum += estimate.sumOfSquares();
      assertThat(estimate.degreesOfFreedom()).isEqualTo(45);
    }
    assertThat(sum).isCloseTo(20020.5, within(1e-7));
    // linear response: 19536.4 with one degree of freedom, as printed for these data
    assertThat(means.contrast(Contrast.polynomials(1, 0, 0.2, 0.4, 0.6).get(0)).sumOfSquares())
        .isCloseTo(19536.4, within(1e-7));
  }

  @Test
  void partsOfUnequalReplicationAddUp() {
    var data = TrialData.read("tooth-growth.csv").without("1 2 3 4 15 16 31 47 48 49");
    var dose = data.factor("dose");
    var fit = LinearModel.oneWay(dose).fit(data.numbers("len"));
    double[] counts = java.util.Arrays.stream(dose.counts()).asDoubleStream().toArray();
    double sum = 0;
    for (Contrast contrast : Contrast.polynomials(2, new double[] {0.5, 1, 2}, counts)) {
      sum += fit.means(dose).contrast(contrast).sumOfSquares();
    }
    assertThat(sum)
        .isCloseTo(
            fit.analysis(SumsOfSquares.SEQUENTIAL).rows().get(0).sumOfSquares(), within(1e-8));
  }

  @Test
  void factorialContrastsAreTermsOfAFactorial() {
    var data = TrialData.read("npk.csv");
    var n = data.factor("N");
    var p = data.factor("P");
    var fit =
        LinearModel.of(ModelTerm.of(data.factor("block")))
            .and(ModelTerm.crossing(n, p, data.factor("K")))
            .fit(data.numbers("yield"));
    var two = Contrast.of("high - low", -1, 1);
    var interaction = fit.means(n, p).contrast(two.times(two));
    assertThat(interaction.sumOfSquares()).isCloseTo(21.2816666667, within(1e-8));
    assertThat(interaction.pValue()).isCloseTo(0.2631652829, within(1e-9));
    var nitrogen = fit.means(n).contrast(two);
    assertThat(nitrogen.t() * nitrogen.t()).isCloseTo(12.2587342137, within(1e-8));
    var limits = nitrogen.limits(0.95);
    assertThat((limits.low() + limits.high()) / 2).isCloseTo(nitrogen.estimate(), within(1e-12));
    assertThat(limits.width() / 2 / nitrogen.standardError())
        .isCloseTo(2.17881282966723, within(1e-12));
    assertThat(nitrogen.sentence()).isEqualTo("t = 3.50; df = 12; P = 0.004");
  }

  @Test
  void wrongFactorsAreRefused() {
    assertThatThrownBy(() -> Contrast.of("nothing", 0, 0)).isInstanceOf(InputProblem.class);
    assertThatThrownBy(() -> Contrast.of("nothing", 1, Double.NaN))
        .isInstanceOf(InputProblem.class);
    assertThat(Contrast.of("average", 0.5, 0.5).isComparison()).isFalse();
    assertThat(Contrast.of("thirds", 1, -1 / 3.0, -1 / 3.0, -1 / 3.0).isComparison()).isTrue();
    var data = TrialData.read("insect-sprays.csv");
    var means = ReferenceCases.fit("sprays", "").means(data.factor("spray"));
    assertThatThrownBy(() -> means.contrast(Contrast.of("short", 1, -1)))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("one factor for each");
  }
}
