package agro.stats.linear;

import static agro.ReferenceTable.number;
import static agro.ReferenceTable.whole;
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
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

class AnalysisOfVarianceTest {

  private static final Percentage CLOSE = Percentage.withPercentage(1e-7);

  static Stream<NamedCsvRecord> references() {
    return ReferenceTable.read(AnalysisOfVarianceTest.class, "analyses.csv").stream();
  }

  @ParameterizedTest
  @MethodSource("references")
  void agreesWithNestedFits(NamedCsvRecord line) {
    var fit = ReferenceCases.fit(line.getField("case"), line.getField("omitted"));
    if (line.getField("kind").equals("RESIDUAL")) {
      assertThat(fit.residualSumOfSquares()).isCloseTo(number(line, "ss"), CLOSE);
      assertThat(fit.residualDegreesOfFreedom()).isEqualTo(whole(line, "df"));
      return;
    }
    var kind = SumsOfSquares.valueOf(line.getField("kind"));
    var row = fit.analysis(kind).row(ReferenceCases.term(fit.model(), line.getField("term")));
    assertThat(row.degreesOfFreedom()).isEqualTo(whole(line, "df"));
    double slack = 1e-9 * number(line, "ss") + 1e-11 * fit.totalSumOfSquares();
    assertThat(row.sumOfSquares()).isCloseTo(number(line, "ss"), within(slack));
    if (row.degreesOfFreedom() > 0) {
      assertThat(row.test().orElseThrow().pValue()).isCloseTo(number(line, "p"), CLOSE);
    } else {
      assertThat(row.test()).isEmpty();
      assertThat(row.note()).contains("N:P:K").contains("block");
    }
  }

  /** Beall 1942 by McNeil 1977, aov(count ~ spray) and aov(sqrt(count) ~ spray) in base R. */
  @Test
  void tailsKeepTheirDigits() {
    var raw = ReferenceCases.fit("sprays", "").analysis(SumsOfSquares.SEQUENTIAL);
    var root = ReferenceCases.fit("sprays root", "").analysis(SumsOfSquares.SEQUENTIAL);
    var test = raw.rows().get(0).test().orElseThrow();
    assertThat(test.f()).isCloseTo(34.7022820555, within(1e-10));
    assertThat(test.pValue()).isCloseTo(3.18258372615e-17, Percentage.withPercentage(1e-9));
    assertThat(test.sentence()).isEqualTo("F = 34.70; df = 5, 66; P < 0.001");
    assertThat(root.rows().get(0).test().orElseThrow().pValue())
        .isCloseTo(6.33450506916e-20, Percentage.withPercentage(1e-9));
  }

  @Test
  void blockingOfTheSoybeanTrial() {
    var fit = ReferenceCases.fit("soybean", "");
    var table = fit.analysis(SumsOfSquares.SEQUENTIAL);
    var block = fit.model().terms().get(0);
    assertThat(table.row(block).sumOfSquares()).isCloseTo(49.84, within(1e-10));
    assertThat(table.coefficientOfVariationPercent()).isCloseTo(30.93006210, within(1e-8));
    var efficiency = table.relativeEfficiency(block);
    assertThat(efficiency.ratio()).isCloseTo(1.217190388, within(1e-9));
    assertThat(efficiency.corrected()).isCloseTo(1.217190388 * 17 * 23 / (19.0 * 21), within(1e-9));
    assertThat(table.etaShare(fit.model().terms().get(1))).isCloseTo(83.84 / 220.24, within(1e-12));
    assertThat(table.partialEtaShare(fit.model().terms().get(1)))
        .isCloseTo(83.84 / 170.4, within(1e-12));
  }

  /** Rows of a Latin square: columns would have stayed (Cochran and Cox 1957, section 4.3). */
  @Test
  void blockingOfALatinSquare() {
    var fit = ReferenceCases.fit("orchard", "");
    var table = fit.analysis(SumsOfSquares.SEQUENTIAL);
    var terms = fit.model().terms();
    double error = 15994.90625 / 42;
    double expected = (7 * (4767.484375 / 7) + 49 * error) / (56 * error);
    assertThat(table.relativeEfficiency(terms.get(0), terms.get(1)).ratio())
        .isCloseTo(expected, within(1e-12));
  }

  @ParameterizedTest
  @EnumSource(SumsOfSquares.class)
  void kindsAgreeForBalancedData(SumsOfSquares kind) {
    var fit = ReferenceCases.fit("warp", "");
    var rows = fit.analysis(kind).rows();
    double sum = rows.stream().mapToDouble(VarianceRow::sumOfSquares).sum();
    assertThat(sum + fit.residualSumOfSquares()).isCloseTo(fit.totalSumOfSquares(), within(1e-8));
  }

  @Test
  void marginalMeansOfCellsThatLackAreNotTested() {
    var fit = ReferenceCases.fit("warp empty", "46 47 48 49 50 51 52 53 54");
    var table = fit.analysis(SumsOfSquares.MARGINAL);
    assertThat(table.rows().get(0).test()).isEmpty();
    assertThat(table.rows().get(0).note()).startsWith("not testable");
    var interaction = table.rows().get(2);
    assertThat(interaction.degreesOfFreedom()).isEqualTo(1);
    assertThat(interaction.sumOfSquares()).isCloseTo(1002.77777777778, within(1e-8));
    assertThat(interaction.note())
        .isEqualTo(
            "1 of 2 effects of wool:tension cannot be estimated: no observation in wool B,"
                + " tension H");
  }

  /** A value put by Yates' formula leaves the residual of least squares without the plot. */
  @Test
  void missingPlotByTheFormulaOfYates() {
    var data = TrialData.read("soybean.csv");
    double[] filled = data.numbers("failures");
    filled[7] = yates(data, 7);
    var whole = ReferenceCases.fit("soybean", "").model().fit(filled);
    var without = ReferenceCases.fit("soybean missing", "8");
    assertThat(whole.residualSumOfSquares())
        .isCloseTo(without.residualSumOfSquares(), within(1e-9));
    assertThat(whole.residuals()[7]).isCloseTo(0, within(1e-10));
  }

  private static double yates(TrialData data, int missing) {
    double[] y = data.numbers("failures");
    var treatment = data.factor("treatment");
    var block = data.factor("block");
    double ofTreatment = 0;
    double ofBlock = 0;
    double grand = 0;
    for (int i = 0; i < y.length; i++) {
      if (i != missing) {
        grand += y[i];
        ofTreatment += treatment.code(i) == treatment.code(missing) ? y[i] : 0;
        ofBlock += block.code(i) == block.code(missing) ? y[i] : 0;
      }
    }
    return (5 * ofTreatment + 5 * ofBlock - grand) / 16;
  }

  @Test
  void confoundedEffectsAreNotedWhereTheyLack() {
    var table = ReferenceCases.fit("npk", "").analysis(SumsOfSquares.HIERARCHICAL);
    assertThat(table.rows().get(0).note())
        .isEqualTo("1 of 5 effects of block are confounded with other terms");
    assertThat(table.rows().get(1).note()).isEmpty();
    assertThat(table.kind().words()).isEqualTo("hierarchical (type II)");
    assertThat(table.kind().source().toString()).contains("1977");
  }

  @Test
  void oneReplicateHasNoTest() {
    var a = Factor.of("a", "x", "y", "x", "y");
    var b = Factor.of("b", "u", "u", "v", "v");
    var fit = LinearModel.of(ModelTerm.crossing(a, b)).fit(1, 2, 3, 5);
    var table = fit.analysis(SumsOfSquares.HIERARCHICAL);
    assertThat(table.rows()).allMatch(row -> row.test().isEmpty());
    assertThat(table.residual().note()).contains("one replicate");
    assertThatThrownBy(table::coefficientOfVariationPercent)
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("no degrees of freedom");
    assertThatThrownBy(() -> fit.means(a).difference(0, 1)).isInstanceOf(InputProblem.class);
    assertThat(fit.means(a).estimate(0)).isCloseTo(2, within(1e-12));
  }

  @Test
  void equalValuesHaveNoTest() {
    var a = Factor.of("a", "x", "x", "y", "y");
    var equal = LinearModel.oneWay(a).fit(0.1, 0.1, 0.1, 0.1);
    var table = equal.analysis(SumsOfSquares.SEQUENTIAL);
    assertThat(table.rows().get(0).test()).isEmpty();
    assertThat(table.residual().note()).contains("there is no variance");
    assertThatThrownBy(() -> table.etaShare(ModelTerm.of(a))).isInstanceOf(InputProblem.class);
    var exact = LinearModel.oneWay(a).fit(0.1, 0.1, 0.3, 0.3).analysis(SumsOfSquares.MARGINAL);
    assertThat(exact.rows().get(0).test()).isEmpty();
    assertThat(exact.residual().note()).contains("no error variance");
  }

  @Test
  void foreignTermsAreRefused() {
    var fit = ReferenceCases.fit("warp", "");
    var table = fit.analysis(SumsOfSquares.SEQUENTIAL);
    assertThatThrownBy(() -> table.row(ModelTerm.of(Factor.of("other", "a", "b"))))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("other");
  }
}
