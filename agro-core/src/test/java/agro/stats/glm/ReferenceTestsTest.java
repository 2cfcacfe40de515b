package agro.stats.glm;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import agro.ReferenceTable;
import agro.report.InputProblem;
import agro.stats.linear.Factor;
import agro.stats.linear.ModelTerm;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Tests of terms, profile limits and penalised fits against independent programs. */
class ReferenceTestsTest {

  private static double value(String table, String name, String quantity) {
    return ReferenceTable.read(ReferenceTestsTest.class, table).stream()
        .filter(line -> line.getField("case").equals(name))
        .filter(line -> line.getField("quantity").equals(quantity))
        .mapToDouble(line -> ReferenceTable.number(line, "value"))
        .findFirst()
        .orElseThrow();
  }

  private static void agrees(double ours, String name, String quantity, double tolerance) {
    double value = value("glm-reference.csv", name, quantity);
    assertThat(ours).as(name + " " + quantity).isCloseTo(value, within(tolerance * value));
  }

  @Test
  void sequentialTestsOfBreaksOfYarn() {
    var wool = Examples.factor("warpbreaks", "wool");
    var tension = Examples.factor("warpbreaks", "tension", "L", "M", "H");
    var design = PredictorDesign.of(ModelTerm.crossing(wool, tension));
    var breaks = ModelResponse.counts(Examples.column("warpbreaks", "breaks"));
    var rows =
        AnalysisOfDeviance.sequential(
                GeneralisedLinearModel.of(ErrorFamily.POISSON).fit(breaks, design))
            .rows();
    var quasi =
        AnalysisOfDeviance.sequential(
                GeneralisedLinearModel.of(ErrorFamily.QUASI_POISSON).fit(breaks, design))
            .rows();
    for (int i = 0; i < 3; i++) {
      agrees(rows.get(i).deviance(), "warpbreaks-anova", "deviance" + (i + 1), 1e-9);
      agrees(rows.get(i).p(), "warpbreaks-anova", "p" + (i + 1), 1e-8);
      agrees(quasi.get(i).statistic(), "warpbreaks-f", "f" + (i + 1), 1e-9);
      agrees(quasi.get(i).p(), "warpbreaks-f", "p" + (i + 1), 1e-8);
    }
    assertThat(quasi.get(0).sentence()).startsWith("F = ").contains("; df = 1, 48; P = 0.0");
  }

  @Test
  void marginalTestsOfCancer() {
    var fit =
        GeneralisedLinearModel.of(ErrorFamily.BINOMIAL)
            .fit(PublishedFitsTest.esophCounts(), PublishedFitsTest.esophDesign());
    var rows = AnalysisOfDeviance.marginal(fit).rows();
    for (int i = 0; i < 3; i++) {
      agrees(rows.get(i).statistic(), "esoph-drop", "lr" + (i + 1), 1e-9);
      agrees(rows.get(i).p(), "esoph-drop", "p" + (i + 1), 1e-7);
    }
  }

  /** F of 41.2164039009 and 310.712529702 on the insect sprays, computed with base R. */
  @Test
  void testsOfSprays() {
    var counts = Examples.sprayCounts();
    var quasi = GeneralisedLinearModel.of(ErrorFamily.QUASI_POISSON).fit(counts, Examples.spray());
    var row = AnalysisOfDeviance.sequential(quasi).row("spray");
    assertThat(row.statistic()).isCloseTo(41.2164039009, within(2e-5));
    assertThat(row.p() / 5.050240147e-19).isCloseTo(1, within(1e-5));
    assertThat(row.sentence()).isEqualTo("F = 41.22; df = 5, 66; P < 0.001");
    var poisson = GeneralisedLinearModel.of(ErrorFamily.POISSON);
    var ratio = LikelihoodRatio.between(poisson.fit(counts), poisson.fit(counts, Examples.spray()));
    assertThat(ratio.statistic()).isCloseTo(310.712529702, within(1e-8));
    var nb = GeneralisedLinearModel.of(ErrorFamily.NEGATIVE_BINOMIAL);
    var fitted = nb.fit(counts, Examples.spray());
    assertThat(LikelihoodRatio.between(nb.fit(counts), fitted).statistic())
        .isCloseTo(107.742494815, within(1e-7));
    var shape = LikelihoodRatio.ofShape(fitted);
    assertThat(shape.statistic()).isCloseTo(2 * (182.294604016 - 180.1089418095), within(1e-7));
    assertThat(shape.p()).isBetween(0.01, 0.05);
    assertThatThrownBy(() -> LikelihoodRatio.between(fitted, nb.fit(counts)))
        .isInstanceOf(InputProblem.class);
  }

  @Test
  void interactionOfBudworms() {
    var full = PublishedFitsTest.fitOf("budworm");
    var row = AnalysisOfDeviance.sequential(full).row("sex:dose");
    assertThat(row.statistic()).isCloseTo(1.7633369, within(5e-8));
    assertThat(row.p()).isCloseTo(0.18421, within(5e-6));
  }

  @Test
  void profileLimitsOfBeetles() {
    for (var link : new String[] {"logit", "probit"}) {
      var fit = PublishedFitsTest.fitOf("beetles-" + link);
      var limits = fit.profileLimits(0.95, "dose");
      agrees(limits.low(), "beetles-profile", link + "-low", 1e-8);
      agrees(limits.high(), "beetles-profile", link + "-high", 1e-8);
    }
  }

  @Test
  void penalisedFitsMaximiseThePenalisedLikelihood() {
    var y =
        ModelResponse.outOf(
            new double[] {3, 4, 5, 10, 10, 10},
            IntStream.range(0, 6).mapToDouble(i -> 10).toArray());
    var group = ModelTerm.of(Factor.of("group", "a", "a", "a", "b", "b", "b"));
    var names = new String[] {"logit", "probit", "cloglog"};
    var links =
        new LinkFunction[] {
          LinkFunction.LOGIT, LinkFunction.PROBIT, LinkFunction.COMPLEMENTARY_LOG_LOG
        };
    for (int i = 0; i < 3; i++) {
      var fit =
          GeneralisedLinearModel.of(ErrorFamily.BINOMIAL)
              .with(links[i])
              .with(EstimationMethod.PENALISED_LIKELIHOOD)
              .fit(y, group);
      for (int j = 0; j < 2; j++) {
        double value = value("glm-reference.csv", "penalised", names[i] + (j + 1));
        assertThat(fit.coefficients().get(j).estimate()).isCloseTo(value, within(1e-5));
      }
    }
  }

  @Test
  void negativeBinomialWithExposure() {
    double[] cycle = {1, 2, 3, 0.5};
    double[] exposure = IntStream.range(0, 72).mapToDouble(i -> cycle[i % 4]).toArray();
    var fit =
        GeneralisedLinearModel.of(ErrorFamily.NEGATIVE_BINOMIAL)
            .with(InformationKind.OBSERVED)
            .fit(Examples.sprayCounts().withExposure(exposure), Examples.spray());
    for (int j = 0; j < 6; j++) {
      var each = fit.coefficients().get(j);
      double value = value("ordinal-reference.csv", "nb-exposure", "estimate" + (j + 1));
      double error = value("ordinal-reference.csv", "nb-exposure", "error" + (j + 1));
      assertThat(each.estimate()).isCloseTo(value, within(1e-8));
      assertThat(each.standardError()).isCloseTo(error, within(1e-6));
    }
    double shape = value("ordinal-reference.csv", "nb-exposure", "shape");
    assertThat(fit.shape().orElseThrow().value()).isCloseTo(shape, within(1e-8));
    double likelihood = value("ordinal-reference.csv", "nb-exposure", "loglik");
    assertThat(fit.logLikelihood().orElseThrow()).isCloseTo(likelihood, within(1e-8));
  }
}
