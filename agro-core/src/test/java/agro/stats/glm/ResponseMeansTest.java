package agro.stats.glm;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import agro.report.InputProblem;
import agro.stats.linear.Factor;
import agro.stats.linear.MeanWeights;
import agro.stats.linear.ModelTerm;
import agro.stats.multiple.LetterOrder;
import java.util.Arrays;
import org.junit.jupiter.api.Test;

/** Marginal means on both scales. */
class ResponseMeansTest {

  private static final Factor SPRAY = Examples.factor("insect-sprays", "spray");

  @Test
  void oneFactorGivesTheMeansOfItsLevels() {
    var fit =
        GeneralisedLinearModel.of(ErrorFamily.POISSON)
            .fit(Examples.sprayCounts(), ModelTerm.of(SPRAY));
    var means = fit.marginalMeans(SPRAY);
    assertThat(means.mean("A").mean()).isCloseTo(14.5, within(1e-10));
    assertThat(means.mean("C").mean()).isCloseTo(25.0 / 12, within(1e-10));
    double error = Math.sqrt(1.0 / 25);
    double half = 1.959963984540054 * error;
    assertThat(means.mean("C").predictor().standardError()).isCloseTo(error, within(1e-10));
    assertThat(means.mean("C").limits().low()).isCloseTo(25.0 / 12 * Math.exp(-half), within(1e-9));
    assertThat(means.mean("C").limits().high()).isCloseTo(25.0 / 12 * Math.exp(half), within(1e-9));
    assertThat(means.mean("C").standardError()).isCloseTo(25.0 / 12 * error, within(1e-10));
  }

  @Test
  void pairsAreToldAsRatiosAndDifferences() {
    var fit =
        GeneralisedLinearModel.of(ErrorFamily.POISSON)
            .fit(Examples.sprayCounts(), ModelTerm.of(SPRAY));
    var pair = fit.marginalMeans(SPRAY).compare().pair("A", "C");
    double ratio = pair.pair().first().equals("A") ? 174.0 / 25 : 25.0 / 174;
    assertThat(pair.ratio().orElseThrow()).isCloseTo(ratio, within(1e-9));
    assertThat(pair.ratioLimits().orElseThrow().covers(ratio)).isTrue();
    assertThat(Math.abs(pair.difference())).isCloseTo(14.5 - 25.0 / 12, within(1e-9));
    double error = Math.sqrt(174.0 / 144 + 25.0 / 144);
    assertThat(pair.differenceError()).isCloseTo(error, within(1e-9));
    assertThat(pair.pair().standardError())
        .isCloseTo(Math.sqrt(1.0 / 174 + 1.0 / 25), within(1e-10));
  }

  /** The three strong sprays differ from the three weak ones under every family for counts. */
  @Test
  void lettersOfSpraysFallInTwoGroups() {
    for (var family :
        new ErrorFamily[] {ErrorFamily.QUASI_POISSON, ErrorFamily.NEGATIVE_BINOMIAL}) {
      var fit = GeneralisedLinearModel.of(family).fit(Examples.sprayCounts(), ModelTerm.of(SPRAY));
      var comparisons = fit.marginalMeans(SPRAY).compare();
      for (var pair : comparisons.pairs()) {
        boolean sameGroup =
            "ABF".contains(pair.pair().first()) == "ABF".contains(pair.pair().second());
        assertThat(pair.pair().isDifferent() && sameGroup && "ABF".contains(pair.pair().first()))
            .isFalse();
        assertThat(pair.pair().isDifferent() || sameGroup).isTrue();
      }
      var letters = comparisons.letters(LetterOrder.LARGEST_FIRST);
      assertThat(letters.share("A", "F")).isTrue();
      assertThat(letters.share("A", "C")).isFalse();
    }
  }

  @Test
  void exposuresGiveMeansPerUnit() {
    double[] exposure = new double[72];
    Arrays.setAll(exposure, i -> 1 + i % 3);
    var fit =
        GeneralisedLinearModel.of(ErrorFamily.POISSON)
            .fit(Examples.sprayCounts().withExposure(exposure), ModelTerm.of(SPRAY));
    var one = fit.marginalMeans(SPRAY).mean("A");
    assertThat(one.mean()).isCloseTo(174.0 / 24, within(1e-10));
    var many = ResponseMeansRequest.of(SPRAY).perExposure(50).from(fit).mean("A");
    assertThat(many.mean()).isCloseTo(50 * one.mean(), within(1e-8));
    assertThat(many.limits().high()).isCloseTo(50 * one.limits().high(), within(1e-8));
    assertThat(many.standardError()).isCloseTo(50 * one.standardError(), within(1e-8));
  }

  @Test
  void otherFactorsAreAveragedOnTheLinkScale() {
    var wool = Examples.factor("warpbreaks", "wool");
    var tension = Examples.factor("warpbreaks", "tension", "L", "M", "H");
    var fit =
        GeneralisedLinearModel.of(ErrorFamily.POISSON)
            .fit(
                ModelResponse.counts(Examples.column("warpbreaks", "breaks")),
                PredictorDesign.of(ModelTerm.crossing(wool, tension)));
    var cells = fit.marginalMeans(wool, tension);
    double average = 0;
    for (var level : tension.levels()) {
      average += Math.log(cells.mean("A:" + level).mean()) / 3;
    }
    assertThat(fit.marginalMeans(wool).mean("A").mean()).isCloseTo(Math.exp(average), within(1e-9));
    var proportional = ResponseMeansRequest.of(wool).with(MeanWeights.PROPORTIONAL).from(fit);
    assertThat(proportional.mean("A").mean()).isCloseTo(Math.exp(average), within(1e-9));
  }

  @Test
  void covariatesStandAtTheirMeanOrWhereAsked() {
    var fit = PublishedFitsTest.fitOf("budworm-parallel");
    var at = ResponseMeansRequest.of(Examples.BUDWORM_SEX).at(Examples.BUDWORM_DOSE, 3.263587404);
    var females = at.from(fit).mean("F");
    assertThat(females.mean()).isCloseTo(0.5, within(1e-9));
    assertThat(females.limits().low()).isBetween(0.3, 0.5);
    assertThat(females.limits().high()).isCloseTo(1 - females.limits().low(), within(1e-8));
    double middle = -3.473155307 + 2.5 * 1.064213970;
    assertThat(fit.marginalMeans(Examples.BUDWORM_SEX).mean("F").predictor().estimate())
        .isCloseTo(middle, within(1e-8));
  }

  @Test
  void emptyCellsAreNotEstimableAndSaid() {
    var a = Factor.of("a", "1", "1", "2", "2", "3", "3", "3", "3");
    var b = Factor.of("b", "x", "y", "x", "y", "x", "x", "x", "x");
    var fit =
        GeneralisedLinearModel.of(ErrorFamily.POISSON)
            .fit(
                ModelResponse.counts(3, 4, 5, 9, 2, 3, 4, 5),
                PredictorDesign.of(ModelTerm.crossing(a, b)));
    var means = fit.marginalMeans(a, b);
    assertThat(means.mean("3:y").predictor().state()).isEqualTo(EstimateState.NOT_ESTIMABLE);
    assertThat(means.mean("3:x").mean()).isCloseTo(3.5, within(1e-10));
    assertThat(means.leftOut()).containsExactly("3:y");
    assertThat(fit.remarks().toString()).contains("a[3]:b[y]");
    assertThat(means.toString() + fit).doesNotContain("NaN");
    assertThatThrownBy(() -> means.likelihoodRatio("3:x", "3:y")).isInstanceOf(InputProblem.class);
  }

  @Test
  void impossibleRequestsAreRefused() {
    var fit = PublishedFitsTest.fitOf("budworm");
    assertThatThrownBy(() -> fit.marginalMeans(SPRAY)).isInstanceOf(InputProblem.class);
    var request = ResponseMeansRequest.of(Examples.BUDWORM_SEX);
    assertThatThrownBy(() -> request.perExposure(2).from(fit)).isInstanceOf(InputProblem.class);
    assertThatThrownBy(() -> request.withLevel(95)).isInstanceOf(InputProblem.class);
    assertThatThrownBy(() -> request.perExposure(0)).isInstanceOf(InputProblem.class);
  }
}
