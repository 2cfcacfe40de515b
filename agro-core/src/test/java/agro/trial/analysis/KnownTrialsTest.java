package agro.trial.analysis;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import agro.stats.linear.SumsOfSquares;
import agro.stats.multiple.ComparisonMethod;
import agro.trial.TrialDesign;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Analyses of published data beside those of R. */
class KnownTrialsTest {

  private static final Percentage SAME = Percentage.withPercentage(1e-6);

  private static TrialAnalysis sprays(String scale) {
    var analysis = TrialAnalysis.of(KnownTrials.sprays(), "insects");
    return switch (scale) {
      case "raw" -> analysis;
      case "root" -> analysis.with(Transformation.squareRoot());
      case "root half" -> analysis.with(Transformation.squareRoot(0.5));
      case "log" -> analysis.with(Transformation.logarithm(1));
      case "poisson" -> analysis.with(AnalysisRoute.POISSON);
      default -> analysis.with(AnalysisRoute.QUASI_POISSON);
    };
  }

  private static void means(AnalysedTrial found, String name) {
    for (var row : KnownTrials.values(name)) {
      var quantity = row.getField("quantity");
      var label = row.getField("label");
      double expected = KnownTrials.value(name, quantity, label);
      switch (quantity) {
        case "mean" ->
            assertThat(found.treatmentMeans().mean(label).mean().getAsDouble())
                .isCloseTo(expected, SAME);
        case "low" ->
            assertThat(found.treatmentMeans().mean(label).limits().get().low())
                .isCloseTo(expected, SAME);
        case "high" ->
            assertThat(found.treatmentMeans().mean(label).limits().get().high())
                .isCloseTo(expected, SAME);
        default -> assertThat(label).isNotNull();
      }
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"raw", "root", "root half", "log"})
  void spraysOnFourScales(String scale) {
    var found = sprays(scale).compared(ComparisonMethod.FISHER_LSD).evaluate();

    means(found, scale);
    var test = found.treatmentEffects().get(0).test().orElseThrow();
    assertThat(test.statistic()).isCloseTo(KnownTrials.value(scale, "F", "treatment"), SAME);
    assertThat(test.pValue()).isCloseTo(KnownTrials.value(scale, "P", "treatment"), SAME);
    var means = found.treatmentMeans();
    assertThat(means.standardErrorOfDifference().orElseThrow().isOneNumber()).isTrue();
    assertThat(means.standardErrorOfDifference().orElseThrow().largest())
        .isCloseTo(KnownTrials.value(scale, "sed", ""), SAME);
    assertThat(means.significantDifference().orElseThrow().largest())
        .isCloseTo(KnownTrials.value(scale, "lsd", ""), SAME);
  }

  @ParameterizedTest
  @ValueSource(strings = {"poisson", "quasi-Poisson"})
  void spraysByGeneralisedLinearModels(String name) {
    means(sprays(name).evaluate(), name);
  }

  /** Letters of Tukey's method, known from the sets of pairs that differ. */
  @Test
  void lettersOfSprays() {
    var raw = sprays("raw").evaluate().treatmentMeans();
    var root = sprays("root").evaluate().treatmentMeans();

    assertThat(letters(raw)).isEqualTo("A a, B a, C b, D b, E b, F a");
    assertThat(letters(root)).isEqualTo("A a, B a, C c, D b, E bc, F a");
    assertThat(raw.significantDifference().orElseThrow().largest())
        .isCloseTo(4.69940851, within(5e-9));
    assertThat(root.significantDifference().orElseThrow().largest())
        .isCloseTo(0.75291314, within(5e-9));
  }

  private static String letters(TreatmentMeans means) {
    return means.means().stream()
        .map(mean -> mean.label() + " " + mean.mark())
        .collect(Collectors.joining(", "));
  }

  @Test
  void sentencesOfSprays() {
    assertThat(sprays("raw").evaluate().sentence()).isEqualTo("F = 34.70; df = 5, 66; P < 0.001");
    assertThat(sprays("quasi").evaluate().sentence()).isEqualTo("F = 41.22; df = 5, 66; P < 0.001");
    assertThat(sprays("poisson").evaluate().sentence())
        .isEqualTo("chi-squared = 310.71; df = 5; P < 0.001");
    assertThat(sprays("raw").with(AnalysisRoute.RANKS).evaluate().sentence())
        .isEqualTo("H = 54.69; df = 5; P < 0.001");
    assertThat(sprays("raw").with(AnalysisRoute.WELCH).evaluate().sentence())
        .isEqualTo("F = 36.07; df = 5, 30.0; P < 0.001");
  }

  /**
   * Published and computed values of section on assumptions: Bartlett 25.96, Shapiro-Wilk 0.960.
   */
  @Test
  void checksOfSprays() {
    var checks = sprays("raw").evaluate().checks();

    assertThat(checks.get(0).sentence()).contains("0.96").contains("P = 0.022");
    assertThat(checks).extracting(CheckedAssumption::sentence).anyMatch(s -> s.contains("25.96"));
    var root = sprays("root").evaluate();
    assertThat(root.checks().get(0).sentence()).contains("0.987").contains("P = 0.681");
    assertThat(sprays("raw").evaluate().advice()).anyMatch(text -> text.contains("power"));
  }

  @Test
  void dunnettAgainstC() {
    var found = sprays("root").against("C").evaluate().treatmentMeans();

    assertThat(letters(found)).isEqualTo("A *, B *, C , D *, E , F *");
    assertThat(found.pair("D", "C").pValue()).isCloseTo(0.00294860965, within(1e-10));
    assertThat(found.pair("E", "C").pValue()).isCloseTo(0.118498239, within(1e-8));
  }

  @Test
  void soybeanInBlocks() {
    var analysis = TrialAnalysis.of(KnownTrials.soybean(), "failures");
    var found = analysis.compared(ComparisonMethod.FISHER_LSD).evaluate();

    means(found, "soybean");
    assertThat(found.subject().design()).isInstanceOf(TrialDesign.CompleteBlocks.class);
    assertThat(found.sentence()).isEqualTo("F = 3.87; df = 4, 16; P = 0.022");
    assertThat(found.effect("block").test().orElseThrow().statistic())
        .isCloseTo(2.30314232902, within(1e-10));
    assertThat(found.precision().coefficientOfVariationPercent().getAsDouble())
        .isCloseTo(30.93006210, within(1e-8));
    assertThat(found.precision().blocking().get("block").ratio())
        .isCloseTo(1.217190388, within(1e-9));
    assertThat(found.treatmentMeans().significantDifference().orElseThrow().largest())
        .isCloseTo(3.118495263, within(1e-9));
    assertThat(found.treatmentMeans().detectable().orElseThrow().largest())
        .isCloseTo(KnownTrials.value("soybean", "detectable", ""), SAME);
    assertThat(analysis.evaluate().treatmentMeans().significantDifference().orElseThrow().largest())
        .isCloseTo(4.506828491, within(1e-9));
  }

  /** Yates 1937: the interaction of all three is confounded with blocks. */
  @Test
  void npkWithAConfoundedInteraction() {
    var found = TrialAnalysis.of(KnownTrials.npk(), "yield").evaluate();

    assertThat(found.effect("N").test().orElseThrow().statistic())
        .isCloseTo(12.2587342137, within(1e-9));
    assertThat(found.effect("N:K").test().orElseThrow().pValue())
        .isCloseTo(0.1686478785, within(1e-9));
    assertThat(found.effect("residual").degreesOfFreedom()).isEqualTo(12);
    assertThat(found.effect("N:P:K").test()).isEmpty();
    assertThat(found.effect("N:P:K").note()).contains("confounded");
    var means = found.meansOf("N");
    assertThat(means.mean("1").analysed().getAsDouble() - means.mean("0").analysed().getAsDouble())
        .isCloseTo(5.616666666667, within(1e-9));
    assertThat(found.treatmentMeans().pairs()).isEmpty();
    assertThat(found.treatmentMeans().notes()).isNotEmpty();
    assertThat(found.presentation().toText()).doesNotContain("NaN");
  }

  @Test
  void sumsOfSquaresAreStated() {
    var found =
        TrialAnalysis.of(KnownTrials.npk(), "yield").with(SumsOfSquares.SEQUENTIAL).evaluate();

    assertThat(found.reasons()).anyMatch(reason -> reason.contains("type I)"));
  }

  @Test
  void oatsInASplitPlot() {
    var found =
        TrialAnalysis.of(KnownTrials.oats(), "yield")
            .compared(ComparisonMethod.FISHER_LSD)
            .evaluate();

    var variety = found.effect("variety");
    assertThat(variety.stratum()).isEqualTo("main plot");
    assertThat(variety.test().orElseThrow().statistic()).isCloseTo(1.48534037943634, SAME);
    assertThat(found.effect("nitrogen").test().orElseThrow().statistic())
        .isCloseTo(37.6856470588235, SAME);
    assertThat(found.effect("variety:nitrogen").test().orElseThrow().pValue())
        .isCloseTo(0.932198758999225, SAME);
    for (var factor : List.of("variety", "nitrogen")) {
      assertThat(found.meansOf(factor).standardErrorOfDifference().orElseThrow().largest())
          .isCloseTo(KnownTrials.value("oats", "sed", factor), SAME);
    }
    var both = found.treatmentMeans().standardErrorOfDifference().orElseThrow();
    assertThat(both.smallest()).isCloseTo(KnownTrials.value("oats", "sed same", "both"), SAME);
    assertThat(both.largest()).isCloseTo(KnownTrials.value("oats", "sed different", "both"), SAME);
    assertThat(letters(found.meansOf("nitrogen"))).isEqualTo("0.0 d, 0.2 c, 0.4 b, 0.6 a");
    assertThat(found.meansOf("nitrogen").significantDifference().orElseThrow().largest())
        .isCloseTo(KnownTrials.value("oats", "lsd", "nitrogen"), SAME);
    var tukey = TrialAnalysis.of(KnownTrials.oats(), "yield").evaluate();
    assertThat(letters(tukey.meansOf("nitrogen"))).isEqualTo("0.0 c, 0.2 b, 0.4 a, 0.6 a");
    assertThat(letters(tukey.meansOf("variety")))
        .isEqualTo("Golden Rain a, Marvellous a, Victory a");
    assertThat(found.precision().residualDegreesOfFreedom()).isEqualTo(10);
    assertThat(found.precision().hasFewDegreesOfFreedom()).isTrue();
  }

  @Test
  void oatsWithMissingPlotsHaveRandomMainPlots() {
    var oats = KnownTrials.oats();
    var lines = oats.assessments();
    var some = lines.subList(3, lines.size());

    var found = TrialAnalysis.of(KnownTrials.of(oats, some), "yield").evaluate();

    assertThat(found.reasons()).anyMatch(reason -> reason.contains("mixed model"));
    var test = found.effect("nitrogen").test().orElseThrow();
    assertThat(test.degreesOfFreedom().get(1)).isBetween(38.0, 45.0);
    assertThat(test.pValue()).isLessThan(1e-9);
    assertThat(found.presentation().toText()).doesNotContain("NaN");
  }

  @Test
  void everyRouteHasAPageInAllForms() {
    var routes = Arrays.stream(AnalysisRoute.values()).filter(r -> !r.words().contains("binomial"));
    routes.forEach(
        route -> {
          var page = sprays("raw").with(route).evaluate();
          assertThat(page.presentation().toHtml()).contains("<table").doesNotContain("NaN");
          assertThat(page.presentation().toText()).doesNotContain("NaN").contains("Plots, insects");
          assertThat(page.meansTable().toCsv()).startsWith("Spray");
          assertThat(page.meansTable().toLatex()).contains("\\begin{tabular}{lrr").contains(" & ");
        });
  }
}
