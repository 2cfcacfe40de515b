package agro.stats.glm;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import agro.ReferenceTable;
import agro.report.InputProblem;
import agro.stats.linear.Factor;
import agro.stats.linear.ModelTerm;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Scores on ordinal scales. */
class OrdinalModelTest {

  @ParameterizedTest
  @EnumSource(
      value = LinkFunction.class,
      names = {"LOGIT", "PROBIT"})
  void agreesWithAnIndependentProgram(LinkFunction link) {
    var fit = Housing.fit(link);
    assertThat(fit.converged()).isTrue();
    int seen = 0;
    for (var line : ReferenceTable.read(getClass(), "ordinal-reference.csv")) {
      if (line.getField("case").equalsIgnoreCase(link.name())) {
        var quantity = line.getField("quantity");
        double value = ReferenceTable.number(line, "value");
        double tolerance = quantity.equals("loglik") ? 1e-9 : 2e-6;
        assertThat(measure(fit, quantity))
            .as(quantity)
            .isCloseTo(value, within(tolerance * Math.abs(value)));
        seen++;
      }
    }
    assertThat(seen).isGreaterThan(17);
  }

  private static double measure(OrdinalFit fit, String quantity) {
    int last = Character.digit(quantity.charAt(quantity.length() - 1), 10);
    if (quantity.startsWith("estimate")) {
      return fit.coefficients().get(last - 1).estimate();
    }
    if (quantity.startsWith("error")) {
      return fit.coefficients().get(last - 1).standardError();
    }
    if (quantity.startsWith("cut")) {
      return fit.cutPoints().get(last - 1).estimate();
    }
    if (quantity.startsWith("lr")) {
      return fit.termTests().stream()
          .filter(each -> each.term().equals(quantity.substring(2)))
          .findFirst()
          .orElseThrow()
          .statistic();
    }
    return quantity.equals("parallel") ? fit.parallelCuts().statistic() : fit.logLikelihood();
  }

  /** Residual deviance, AIC and errors of cut points of Venables and Ripley 2002, from memory. */
  @Test
  void meetsTheTableAsRemembered() {
    var fit = Housing.fit(LinkFunction.LOGIT);
    assertThat(fit.deviance()).isCloseTo(3479.149, within(5e-4));
    assertThat(fit.akaike()).isCloseTo(3495.149, within(5e-4));
    assertThat(fit.cutPoints().get(0).name()).isEqualTo("Low|Medium");
    assertThat(fit.cutPoints().get(0).standardError()).isCloseTo(0.1248, within(5e-5));
    assertThat(fit.cutPoints().get(1).standardError()).isCloseTo(0.1255, within(5e-5));
    var test = fit.parallelCuts();
    assertThat(test.degreesOfFreedom()).isEqualTo(6);
    assertThat(test.p()).isBetween(0.15, 0.25);
    assertThat(test.coefficients()).hasSize(6);
  }

  @Test
  void sharesOfALevelSumToOne() {
    var fit = Housing.fit(LinkFunction.LOGIT);
    var means = fit.means(Housing.TYPE);
    for (var level : means.levels()) {
      double sum = level.shares().stream().mapToDouble(Double::doubleValue).sum();
      assertThat(sum).isCloseTo(1, within(1e-12));
      assertThat(level.standardErrors()).allSatisfy(each -> assertThat(each).isPositive());
      for (var each : level.cumulative()) {
        assertThat(each.limits().covers(each.share())).isTrue();
      }
    }
    double terrace = fit.coefficient("Type[Terrace]").estimate();
    assertThat(means.compared().mean(3) - means.compared().mean(0))
        .isCloseTo(terrace, within(1e-12));
    assertThat(Math.sqrt(means.compared().differenceVariance(3, 0)))
        .isCloseTo(fit.coefficient("Type[Terrace]").standardError(), within(1e-12));
  }

  /** With one factor, two classes and logit link the model is logistic regression. */
  @Test
  void twoClassesAreLogisticRegression() {
    var scores = OrdinalScores.of(List.of("no", "yes"), List.of("no", "yes", "no", "yes"));
    scores = scores.withFrequencies(30, 12, 17, 25);
    var group = Factor.of("group", "a", "a", "b", "b");
    var fit = OrdinalModel.withDefaults().fit(scores, ModelTerm.of(group));
    assertThat(fit.coefficient("group[b]").estimate())
        .isCloseTo(Math.log(25.0 / 17) - Math.log(12.0 / 30), within(1e-12));
    assertThat(fit.cutPoints().get(0).estimate()).isCloseTo(Math.log(30.0 / 12), within(1e-12));
    assertThatThrownBy(fit::parallelCuts).isInstanceOf(InputProblem.class);
  }

  @Test
  void aLevelAtOneEndIsSaidAndOthersStand() {
    var scores =
        OrdinalScores.ofNumbers(0, 1, 2, 1, 0, 2, 1, 1, 2, 2, 2, 2)
            .withFrequencies(3, 4, 2, 1, 5, 1, 2, 3, 1, 1, 1, 1);
    var treatment =
        Factor.of("treatment", "a", "a", "a", "a", "b", "b", "b", "b", "c", "c", "c", "c");
    var fit = OrdinalModel.withDefaults().fit(scores, ModelTerm.of(treatment));
    assertThat(fit.isSeparated()).isTrue();
    assertThat(fit.coefficient("treatment[c]").state()).isEqualTo(EstimateState.PLUS_INFINITY);
    assertThat(fit.coefficient("treatment[b]").isFinite()).isTrue();
    assertThat(fit.remarks().toString()).contains("treatment[c]").doesNotContain("NaN");
    var two =
        OrdinalModel.withDefaults()
            .fit(
                OrdinalScores.ofNumbers(0, 1, 2, 1, 0, 2, 1, 1)
                    .withFrequencies(3, 4, 2, 1, 5, 1, 2, 3),
                ModelTerm.of(Factor.of("treatment", "a", "a", "a", "a", "b", "b", "b", "b")));
    assertThat(fit.logLikelihood()).isCloseTo(two.logLikelihood(), within(1e-7));
    assertThat(fit.coefficient("treatment[b]").estimate())
        .isCloseTo(two.coefficient("treatment[b]").estimate(), within(1e-6));
    assertThat(fit.means(treatment).level("c").shares().get(2)).isEqualTo(1);
    assertThat(fit.means(treatment).leftOut()).containsExactly("c");
  }

  /** Turning the scale round turns the sign of every coefficient. */
  @Test
  void aScaleTurnedRoundTurnsTheSigns() {
    int[] up = {0, 1, 2, 3, 1, 0, 2, 2, 3, 3, 1, 2, 0, 1};
    int[] down = Arrays.stream(up).map(each -> 3 - each).toArray();
    var treatment =
        ModelTerm.of(
            Factor.of("t", "a", "a", "a", "a", "a", "b", "b", "b", "b", "b", "c", "c", "c", "c"));
    for (var link : new LinkFunction[] {LinkFunction.LOGIT, LinkFunction.PROBIT}) {
      var model = new OrdinalModel(link);
      var one = model.fit(OrdinalScores.ofNumbers(up), treatment);
      var other = model.fit(OrdinalScores.ofNumbers(down), treatment);
      for (int j = 0; j < 2; j++) {
        assertThat(other.coefficients().get(j).estimate())
            .isCloseTo(-one.coefficients().get(j).estimate(), within(1e-8));
        assertThat(other.coefficients().get(j).standardError())
            .isCloseTo(one.coefficients().get(j).standardError(), within(1e-8));
      }
      assertThat(other.parallelCuts().statistic())
          .isCloseTo(one.parallelCuts().statistic(), within(1e-6));
    }
  }

  @Test
  void badScoresAreRefused() {
    assertThatThrownBy(() -> OrdinalScores.of(List.of("a", "b"), List.of("a", "c")))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("\"c\"");
    assertThatThrownBy(() -> OrdinalScores.ofNumbers(3, 3, 3)).isInstanceOf(InputProblem.class);
    assertThatThrownBy(() -> new OrdinalModel(LinkFunction.LOG)).isInstanceOf(InputProblem.class);
    assertThat(OrdinalScores.of(List.of("0", "1", "2"), List.of("0", "2")).unused())
        .containsExactly("1");
  }

  @Test
  void largerAndSmallerModelsAreTested() {
    var fit = Housing.fit(LinkFunction.LOGIT);
    var smaller =
        OrdinalModel.withDefaults()
            .fit(Housing.SCORES, ModelTerm.of(Housing.INFLUENCE), ModelTerm.of(Housing.TYPE));
    var contact = fit.against(smaller);
    assertThat(contact.degreesOfFreedom()).isEqualTo(1);
    assertThat(contact.statistic()).isCloseTo(14.306206065, within(1e-6));
    assertThatThrownBy(() -> smaller.against(fit)).isInstanceOf(InputProblem.class);
    assertThat(Stream.of(fit.toString(), contact.toString()))
        .allSatisfy(each -> assertThat(each).doesNotContain("NaN"));
  }
}
