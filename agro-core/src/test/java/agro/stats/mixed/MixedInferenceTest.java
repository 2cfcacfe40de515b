package agro.stats.mixed;

import static agro.ReferenceTable.number;
import static agro.ReferenceTable.whole;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import agro.ReferenceTable;
import agro.stats.linear.Contrast;
import agro.stats.linear.ContrastEstimate;
import agro.stats.linear.Factor;
import agro.stats.linear.ModelTerm;
import agro.stats.multiple.ComparedMeans;
import java.util.List;
import java.util.stream.IntStream;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Tests, means and predictions of mixed models, and what is told when there can be none. */
class MixedInferenceTest {

  private static MixedModelFit fit(String model) {
    return TrialData.model(model).fit(TrialData.of(model).y());
  }

  @Test
  void balancedDesignsAgreeWithStrata() {
    for (var line : ReferenceTable.read(MixedInferenceTest.class, "strata.csv")) {
      var name = line.getField("term");
      var test =
          fit(line.getField("model")).tests().stream()
              .filter(each -> each.name().equals(name))
              .findFirst()
              .orElseThrow();
      assertThat(test.df1()).isEqualTo(whole(line, "df1"));
      assertThat(test.df2()).isCloseTo(number(line, "df2"), Percentage.withPercentage(1e-6));
      assertThat(test.f()).isCloseTo(number(line, "f"), Percentage.withPercentage(1e-6));
      assertThat(test.pValue()).isCloseTo(number(line, "p"), Percentage.withPercentage(1e-5));
    }
  }

  /**
   * Mean squares of the oats: 601.33 of whole plots on 10, 177.08 of subplots on 45 (Yates 1935).
   */
  @Test
  void differencesOfASplitPlotHaveTheErrorOfTheirStratum() {
    var fit = fit("oats");
    var data = TrialData.of("oats");
    var nitrogen = fit.means(data.factor("fixed")).difference(0, 3);
    assertThat(nitrogen.standardError()).isCloseTo(Math.sqrt(2 * 177.08333 / 18), within(1e-5));
    assertThat(nitrogen.degreesOfFreedom()).isCloseTo(45, within(1e-5));
    var variety = fit.means(data.factor("other")).difference(0, 1);
    assertThat(variety.standardError()).isCloseTo(Math.sqrt(2 * 601.33056 / 24), within(1e-5));
    assertThat(variety.degreesOfFreedom()).isCloseTo(10, within(1e-5));
    assertThat(fit.variance("residual").estimate()).isCloseTo(177.08333333, within(1e-6));
    assertThat(fit.variance("group").levels()).isEqualTo(6);
    // Residual limits: 45 x 177.08 / chi-squared on 45 degrees of freedom
    assertThat(fit.variance("residual").limits(0.95).low())
        .isCloseTo(45 * 177.08333 / 65.41016, within(1e-3));
    assertThat(fit.test(ModelTerm.of(data.factor("fixed"))).sentence())
        .isEqualTo("F = 37.69; df = 3, 45; P < 0.001");
  }

  @Test
  void unbalancedDegreesOfFreedomAgreeWithNumericalDifferences() {
    var fit = fit("oats with gaps");
    var data = TrialData.of("oats with gaps");
    var nitrogen = fit.means(data.factor("fixed"));
    var variety = fit.means(data.factor("other"));
    var cells = fit.means(data.factor("fixed"), data.factor("other"));
    var lines = ReferenceTable.read(MixedInferenceTest.class, "satterthwaite.csv");
    List<ContrastEstimate> found =
        List.of(
            difference(nitrogen, "0.0", "0.6"),
            difference(variety, "Victory", "Marvellous"),
            difference(cells, "0.0:Victory", "0.0:Marvellous"),
            nitrogen.mean(nitrogen.labels().indexOf("0.2")));
    for (int i = 0; i < found.size(); i++) {
      var line = lines.get(i);
      assertThat(found.get(i).estimate())
          .isCloseTo(number(line, "estimate"), Percentage.withPercentage(1e-4));
      assertThat(found.get(i).standardError())
          .isCloseTo(number(line, "standardError"), Percentage.withPercentage(1e-4));
      assertThat(found.get(i).degreesOfFreedom())
          .as(line.toString())
          .isCloseTo(number(line, "df"), Percentage.withPercentage(0.1));
    }
  }

  private static ContrastEstimate difference(MixedMeans means, String one, String other) {
    return means.difference(means.labels().indexOf(one), means.labels().indexOf(other));
  }

  @ParameterizedTest
  @ValueSource(strings = {"oats with gaps", "OrchardSprays", "chicks"})
  void orderOfRowsDoesNotMatterAndUnitsScale(String name) {
    var before = fit(name);
    var other = TrialData.of(name).shuffled(7);
    double[] y =
        IntStream.range(0, other.y().length).mapToDouble(i -> 3 - 20 * other.y()[i]).toArray();
    var after = other.modelOf(name).fit(y);
    for (int k = 0; k < before.variances().size(); k++) {
      assertThat(after.variances().get(k).estimate())
          .isCloseTo(400 * before.variances().get(k).estimate(), Percentage.withPercentage(1e-4));
    }
    for (FixedEffectTest test : before.tests()) {
      var again =
          after.tests().stream()
              .filter(x -> x.name().equals(test.name()))
              .findFirst()
              .orElseThrow();
      assertThat(again.f()).isCloseTo(test.f(), Percentage.withPercentage(1e-4));
      assertThat(again.df2()).isCloseTo(test.df2(), Percentage.withPercentage(1e-3));
    }
  }

  @Test
  void aVarianceAtZeroIsToldAndDropsOut() {
    var block = Factor.of("block", "1", "1", "2", "2", "3", "3", "4", "4");
    var treatment = Factor.of("treatment", "a", "b", "a", "b", "a", "b", "a", "b");
    double[] y = {5, 1, 2, 4.5, 5.5, 2, 2.5, 5};
    var model = MixedModel.of(List.of(ModelTerm.of(treatment)), List.of(ModelTerm.of(block)));
    var fit = model.fit(y);
    var variance = fit.variance("block");
    assertThat(variance.isAtZero()).isTrue();
    assertThat(variance.standardError()).isEmpty();
    assertThat(variance.limits(0.95).low()).isNaN();
    assertThat(variance).hasToString("block: 0 (at the bound; no standard error)");
    // Without blocks: residual degrees of freedom of a free arrangement
    assertThat(fit.tests().get(0).df2()).isCloseTo(6, within(1e-9));
    assertThat(fit.randomEffects("block")).allMatch(each -> each.effect() == 0);
  }

  /** In balanced blocks a prediction is the deviation times n s² / (n s² + residual). */
  @Test
  void predictionsShrinkDeviations() {
    var fit = fit("npk");
    var data = TrialData.of("npk");
    double s = fit.variance("group").estimate();
    double shrunk = 4 * s / (4 * s + fit.variance("residual").estimate());
    double[] y = data.y();
    double mean = IntStream.range(0, 24).mapToDouble(i -> y[i]).average().orElseThrow();
    var effects = fit.randomEffects("group");
    for (int block = 0; block < 6; block++) {
      int from = 4 * block;
      double own = IntStream.range(from, from + 4).mapToDouble(i -> y[i]).average().orElseThrow();
      assertThat(effects.get(block).effect()).isCloseTo(shrunk * (own - mean), within(1e-9));
      assertThat(effects.get(block).standardError()).isPositive().isLessThan(Math.sqrt(s));
    }
    assertThat(effects.stream().mapToDouble(RandomEffect::effect).sum()).isCloseTo(0, within(1e-9));
    assertThatThrownBy(() -> fit.randomEffects("site")).hasMessageContaining("no random term site");
  }

  @Test
  void meansGoOnToComparisons() {
    var fit = fit("oats");
    var means = fit.means(TrialData.of("oats").factor("fixed"));
    ComparedMeans compared = means.compared();
    assertThat(compared.degreesOfFreedom()).isCloseTo(45, within(1e-5));
    assertThat(compared.mean(0)).isCloseTo(means.mean(0).estimate(), within(1e-12));
    assertThat(means.untold()).isEmpty();
    var linear = means.contrast(Contrast.of("linear", -3, -1, 1, 3));
    assertThat(linear.estimate()).isCloseTo(147.333333, within(1e-5));
    assertThatThrownBy(() -> means.contrast(Contrast.of("short", 1, -1)))
        .hasMessageContaining("2 coefficients for 4 means");
    assertThatThrownBy(() -> fit.means(Factor.of("else", "a", "b")))
        .hasMessageContaining("means of [else]");
  }

  @Test
  void modelsThatCannotBeFittedAreTold() {
    var treatment = ModelTerm.of(Factor.of("treatment", "a", "b", "a", "b", "a", "b"));
    var block = ModelTerm.of(Factor.of("block", "1", "1", "2", "2", "3", "3"));
    var again = ModelTerm.of(Factor.of("site", "x", "x", "y", "y", "z", "z"));
    var rows = ModelTerm.of(Factor.of("plot", "1", "2", "3", "4", "5", "6"));
    var same = ModelTerm.of(Factor.of("sprayer", "p", "q", "p", "q", "p", "q"));
    var one = ModelTerm.of(Factor.of("year", "1", "1", "1", "1", "1", "1"));
    assertThatThrownBy(() -> MixedModel.of(List.of(treatment), List.of(block, again)))
        .hasMessageContaining("group the rows alike");
    assertThatThrownBy(() -> MixedModel.of(List.of(treatment), List.of(rows)))
        .hasMessageContaining("one observation in each level");
    assertThatThrownBy(() -> MixedModel.of(List.of(treatment), List.of(one)))
        .hasMessageContaining("one level");
    double[] y = {1, 3, 2, 5, 4, 4};
    assertThatThrownBy(() -> MixedModel.of(List.of(treatment), List.of(same)).fit(y))
        .hasMessageContaining("random term number 1");
    var model = MixedModel.of(List.of(treatment), List.of(block));
    assertThatThrownBy(() -> model.fit(1, 2)).hasMessageContaining("2 values for 6");
    assertThatThrownBy(() -> model.fit(1, 2, 3, 4, 5, Double.NaN))
        .hasMessageContaining("Value number 6");
    assertThatThrownBy(() -> model.fit(1, 2, 1, 2, 1, 2)).hasMessageContaining("exactly");
    assertThatThrownBy(() -> model.fit(1, 2, 3, 4, 5, 6))
        .isInstanceOf(agro.report.InputProblem.class);
    var plots = Factor.of("plot", "1", "1", "2", "2", "3", "3");
    assertThatThrownBy(() -> WithinSubject.autoregressive(plots, 1, 1, 1, 2, 1, 2))
        .hasMessageContaining("observed twice");
    assertThatThrownBy(() -> WithinSubject.autoregressive(plots, 1, 2))
        .hasMessageContaining("2 times");
  }
}
