package agro.stats.linear;

import static agro.ReferenceTable.number;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import agro.ReferenceTable;
import agro.report.InputProblem;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.util.stream.Stream;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class MarginalMeansTest {

  private static final Percentage CLOSE = Percentage.withPercentage(1e-9);

  static Stream<NamedCsvRecord> references() {
    return ReferenceTable.read(MarginalMeansTest.class, "means.csv").stream();
  }

  @ParameterizedTest
  @MethodSource("references")
  void agreeWithAveragesOfFittedCells(NamedCsvRecord line) {
    var fit = ReferenceCases.fit(line.getField("case"), line.getField("omitted"));
    var means = fit.means(ReferenceCases.factor(fit.model(), line.getField("factor")));
    String level = line.getField("level");
    int place = means.placeOf(level.equals("0") ? "0.0" : level);
    assertThat(means.estimate(place)).isCloseTo(number(line, "mean"), CLOSE);
    assertThat(means.standardError(place).orElseThrow()).isCloseTo(number(line, "se"), CLOSE);
    if (place > 0) {
      assertThat(Math.sqrt(means.differenceVariance(place, 0)))
          .isCloseTo(number(line, "seOfDifferenceToFirst"), CLOSE);
      assertThat(means.degreesOfFreedom(place, 0)).isEqualTo(fit.residualDegreesOfFreedom());
    }
  }

  /** Fisher's least significant difference: InsectSprays raw and root scale, soybean. */
  @Test
  void leastSignificantDifferences() {
    assertThat(lsd("sprays", "spray")).isCloseTo(3.19671860618, within(1e-10));
    assertThat(lsd("sprays root", "spray")).isCloseTo(0.512160507497, within(1e-11));
    assertThat(lsd("soybean", "treatment")).isCloseTo(3.118495263, within(1e-9));
  }

  private static double lsd(String name, String factor) {
    var fit = ReferenceCases.fit(name, "");
    return fit.means(ReferenceCases.factor(fit.model(), factor))
        .leastSignificantDifference(0, 1, 0.05);
  }

  @Test
  void proportionalWeightsGiveObservedMeans() {
    var data = TrialData.read("warpbreaks.csv").without("1 2 3 11 28 29 40 41 42 50");
    var wool = data.factor("wool");
    double[] y = data.numbers("breaks");
    var oneWay = LinearModel.oneWay(wool).fit(y);
    assertThat(oneWay.means(MeanWeights.PROPORTIONAL, wool).estimate(0))
        .isCloseTo(oneWay.means(wool).estimate(0), CLOSE);
    var fit = ReferenceCases.fit("warp unequal", "1 2 3 11 28 29 40 41 42 50");
    var cells = fit.means(wool, ReferenceCases.factor(fit.model(), "tension"));
    double sum = 0;
    for (int tension = 0; tension < 3; tension++) {
      int both = cells.observations(tension) + cells.observations(3 + tension);
      sum += both * cells.estimate(tension);
    }
    assertThat(fit.means(MeanWeights.PROPORTIONAL, wool).estimate(0))
        .isCloseTo(sum / y.length, CLOSE);
  }

  @Test
  void meansOverCellsThatLackAreNotEstimable() {
    var fit = ReferenceCases.fit("warp empty", "46 47 48 49 50 51 52 53 54");
    var wool = ReferenceCases.factor(fit.model(), "wool");
    var tension = ReferenceCases.factor(fit.model(), "tension");
    var means = fit.means(wool);
    assertThat(means.isEstimable(0)).isTrue();
    assertThat(means.isEstimable(1)).isFalse();
    assertThat(means.estimates().get(1)).isEmpty();
    assertThatThrownBy(() -> means.estimate(1))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("mean of B is not estimable");
    var cells = fit.means(wool, tension);
    assertThat(cells.isEstimable(cells.placeOf("B:L"))).isTrue();
    assertThat(cells.isEstimable(cells.placeOf("B:H"))).isFalse();
    assertThat(cells.observations(cells.placeOf("B:H"))).isZero();
  }

  @Test
  void nestedMeansAreThoseOfCellsThatExist() {
    var block = Factor.of("block", "1", "1", "1", "1", "2", "2", "2", "2");
    var plot = Factor.of("plot", "a", "a", "b", "b", "c", "c", "d", "d");
    var fit =
        LinearModel.of(ModelTerm.of(block), ModelTerm.nested(plot, block))
            .fit(1, 2, 3, 5, 6, 8, 9, 12);
    assertThat(fit.model().design().lostEffects()).isEmpty();
    var cells = fit.means(block, plot);
    assertThat(cells.labels()).containsExactly("1:a", "1:b", "2:c", "2:d");
    assertThat(cells.estimate(2)).isCloseTo(7, within(1e-12));
    assertThat(fit.means(block).estimate(1)).isCloseTo(8.75, within(1e-12));
    assertThat(fit.analysis(SumsOfSquares.MARGINAL).rows().get(1).degreesOfFreedom()).isEqualTo(2);
  }

  /** Two sets of treatments that never share a block: compared within sets only. */
  @Test
  void differencesWithinConnectedSets() {
    var block = Factor.of("block", "1", "1", "2", "2", "3", "3", "4", "4");
    var treatment = Factor.of("t", "a", "b", "a", "b", "c", "d", "c", "d");
    var fit =
        LinearModel.of(ModelTerm.of(block), ModelTerm.of(treatment)).fit(1, 3, 4, 5, 9, 2, 11, 5);
    var means = fit.means(treatment);
    assertThat(means.isEstimable(0)).isFalse();
    assertThat(means.difference(1, 0).estimate()).isCloseTo(1.5, within(1e-12));
    assertThat(means.differenceVariance(2, 3))
        .isCloseTo(fit.residualVariance().orElseThrow(), within(1e-12));
    assertThatThrownBy(() -> means.difference(0, 2))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("a - c is not estimable");
  }

  @Test
  void meansReadyForComparison() {
    var fit = ReferenceCases.fit("sprays", "");
    var compared = fit.means(ReferenceCases.factor(fit.model(), "spray")).compared();
    assertThat(compared.degreesOfFreedom()).isEqualTo(66);
    assertThat(compared.mean(0)).isCloseTo(14.5, CLOSE);
    assertThat(compared.differenceVariance(0, 3)).isCloseTo(15.3813131313131 / 6, CLOSE);
    var gaps = ReferenceCases.fit("warp empty", "46 47 48 49 50 51 52 53 54");
    var wool = ReferenceCases.factor(gaps.model(), "wool");
    var tension = ReferenceCases.factor(gaps.model(), "tension");
    assertThat(gaps.means(wool, tension).compared().labels())
        .containsExactly("A:L", "A:M", "A:H", "B:L", "B:M");
    assertThatThrownBy(() -> gaps.means(wool).compared())
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("1 estimable means");
  }

  @Test
  void foreignFactorsAreRefused() {
    var fit = ReferenceCases.fit("warp", "");
    assertThatThrownBy(() -> fit.means(Factor.of("other", "a", "b")))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("other");
  }
}
