package agro.stats.linear;

import static agro.ReferenceTable.number;
import static agro.ReferenceTable.whole;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import agro.ReferenceTable;
import agro.report.InputProblem;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.util.List;
import java.util.stream.Stream;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class StratifiedModelTest {

  private static final Percentage CLOSE = Percentage.withPercentage(1e-7);

  static Stream<NamedCsvRecord> references() {
    return ReferenceTable.read(StratifiedModelTest.class, "strata.csv").stream();
  }

  private static ModelTerm of(TrialData data, String... names) {
    ModelTerm term = ModelTerm.of(data.factor(names[0]));
    for (int k = 1; k < names.length; k++) {
      term = term.times(data.factor(names[k]));
    }
    return term;
  }

  private static StratifiedFit fit(String name) {
    return switch (name) {
      case "oats" -> oats(TrialData.read("yates-oats.csv"), false);
      case "oats as strips" -> oats(TrialData.read("yates-oats.csv"), true);
      case "npk" -> {
        var data = TrialData.read("npk.csv");
        yield StratifiedModel.of(
                ModelTerm.crossing(data.factor("N"), data.factor("P"), data.factor("K")),
                List.of(of(data, "block")))
            .fit(data.numbers("yield"));
      }
      case "orchard" -> {
        var data = TrialData.read("orchard-sprays.csv");
        yield StratifiedModel.of(
                List.of(of(data, "treatment")), List.of(of(data, "rowpos"), of(data, "colpos")))
            .fit(data.numbers("decrease"));
      }
      case "soybean" -> {
        var data = TrialData.read("soybean.csv");
        yield StratifiedModel.of(List.of(of(data, "treatment")), List.of(of(data, "block")))
            .fit(data.numbers("failures"));
      }
      case "uptake" -> {
        var data = TrialData.read("carbon-dioxide.csv");
        yield StratifiedModel.of(
                ModelTerm.crossing(
                    data.factor("Type"), data.factor("Treatment"), data.factor("conc")),
                List.of(of(data, "Plant")))
            .fit(data.numbers("uptake"));
      }
      default -> throw new IllegalArgumentException(name);
    };
  }

  private static StratifiedFit oats(TrialData data, boolean strips) {
    var units =
        strips
            ? List.of(
                of(data, "block"), of(data, "block", "variety"), of(data, "block", "nitrogen"))
            : List.of(of(data, "block"), of(data, "block", "variety"));
    return StratifiedModel.of(
            ModelTerm.crossing(data.factor("variety"), data.factor("nitrogen")), units)
        .fit(data.numbers("yield"));
  }

  @ParameterizedTest
  @MethodSource("references")
  void agreesWithErrorStrata(NamedCsvRecord line) {
    var fit = fit(line.getField("case"));
    String name = line.getField("stratum");
    var table = fit.stratum(name.equals("Within") ? "within" : name);
    String term = line.getField("term").replace("factor(conc)", "conc");
    var row =
        term.equals("Residuals")
            ? table.residual()
            : table.rows().stream()
                .filter(each -> each.source().equals(term))
                .findFirst()
                .orElseThrow();
    assertThat(row.degreesOfFreedom()).isEqualTo(whole(line, "df"));
    assertThat(row.sumOfSquares()).isCloseTo(number(line, "ss"), within(1e-8));
    if (!term.equals("Residuals")) {
      assertThat(row.test().orElseThrow().f()).isCloseTo(number(line, "f"), CLOSE);
      assertThat(row.test().orElseThrow().pValue()).isCloseTo(number(line, "p"), CLOSE);
    }
  }

  /**
   * Sums of squares as published for the oats of Yates 1935; standard errors of differences by the
   * formulas of Cochran and Cox 1957, section 7.2, degrees of freedom by Satterthwaite 1946.
   */
  @Test
  void differencesOfASplitPlot() {
    var data = TrialData.read("yates-oats.csv");
    var fit = fit("oats");
    double main = 6013.30555555556 / 10;
    double sub = 7968.75 / 45;
    var variety = fit.means(data.factor("variety")).difference(0, 1);
    var nitrogen = fit.means(data.factor("nitrogen")).difference(0, 1);
    assertThat(variety.standardError()).isCloseTo(Math.sqrt(2 * main / 24), CLOSE);
    assertThat(variety.degreesOfFreedom()).isEqualTo(10);
    assertThat(nitrogen.standardError()).isCloseTo(Math.sqrt(2 * sub / 18), CLOSE);
    assertThat(nitrogen.degreesOfFreedom()).isEqualTo(45);

    var both = fit.means(data.factor("variety"), data.factor("nitrogen"));
    int first = both.placeOf("Victory:0.0");
    var same = both.difference(first, both.placeOf("Victory:0.6"));
    var other = both.difference(first, both.placeOf("Marvellous:0.0"));
    assertThat(same.standardError()).isCloseTo(Math.sqrt(2 * sub / 6), CLOSE);
    assertThat(same.degreesOfFreedom()).isEqualTo(45);
    double mixed = 3 * sub + main;
    assertThat(other.standardError()).isCloseTo(Math.sqrt(2 * mixed / 24), CLOSE);
    double df = mixed * mixed / (9 * sub * sub / 45 + main * main / 10);
    assertThat(other.degreesOfFreedom()).isCloseTo(df, CLOSE);
    assertThat(other.standardError()).isCloseTo(9.715, within(5e-4));
    assertThat(other.degreesOfFreedom()).isCloseTo(30.23, within(5e-3));
    assertThat(both.standardError(first)).isEmpty();
    assertThat(both.estimate(first)).isCloseTo(71.5, within(1e-9));
  }

  @Test
  void strataAddUp() {
    var fit = fit("oats as strips");
    double sum = 0;
    int df = 0;
    for (StratumTable table : fit.strata()) {
      sum += table.residual().sumOfSquares();
      df += table.residual().degreesOfFreedom();
      for (VarianceRow row : table.rows()) {
        sum += row.sumOfSquares();
        df += row.degreesOfFreedom();
      }
    }
    assertThat(df).isEqualTo(71);
    assertThat(sum).isCloseTo(51985.9444444444, within(1e-6));
  }

  /** Plants of a plot: the analysis of plot means tests the same F. */
  @Test
  void subSamplesAreNoReplicates() {
    var data = TrialData.read("carbon-dioxide.csv");
    var plant = data.factor("Plant");
    double[] uptake = data.numbers("uptake");
    var nested =
        StratifiedModel.of(List.of(of(data, "Treatment")), List.of(ModelTerm.of(plant)))
            .fit(uptake);
    var means = UnitMeans.of(plant, uptake);
    var ofMeans =
        LinearModel.oneWay(means.factor(data.factor("Treatment")))
            .fit(means.means())
            .analysis(SumsOfSquares.SEQUENTIAL);
    var test = nested.stratum("Plant").rows().get(0).test().orElseThrow();
    assertThat(means.isEqual()).isTrue();
    assertThat(test.df2()).isEqualTo(10);
    assertThat(test.f()).isCloseTo(ofMeans.rows().get(0).test().orElseThrow().f(), CLOSE);
    assertThatThrownBy(() -> means.factor(data.factor("conc")))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("one level of conc in each unit");
  }

  @Test
  void unbalancedDataAreRefused() {
    var missing = TrialData.read("yates-oats.csv").without("7");
    assertThatThrownBy(() -> oats(missing, false))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("as many observations in each unit");
    var data = TrialData.read("soybean.csv").without("1 7 13 19 25");
    assertThatThrownBy(
            () -> StratifiedModel.of(List.of(of(data, "treatment")), List.of(of(data, "block"))))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining(
            "effects of treatment lie partly in each of the strata [block, within]")
        .hasMessageContaining("mixed model");
  }

  @Test
  void unitsThatOverlapUnevenlyAreRefused() {
    var a = Factor.of("a", "1", "1", "2", "2", "3", "3");
    var b = Factor.of("b", "1", "2", "2", "3", "3", "1");
    var t = Factor.of("t", "x", "y", "x", "y", "x", "y");
    assertThatThrownBy(
            () ->
                StratifiedModel.of(
                    List.of(ModelTerm.of(t)), List.of(ModelTerm.of(a), ModelTerm.of(b))))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("a and b overlap unevenly");
  }

  @Test
  void stratumWithoutErrorSaysSo() {
    var block = Factor.of("block", "1", "1", "2", "2");
    var main = Factor.of("main", "x", "x", "y", "y");
    var sub = Factor.of("sub", "u", "v", "u", "v");
    var fit =
        StratifiedModel.of(
                List.of(ModelTerm.of(main), ModelTerm.of(sub)), List.of(ModelTerm.of(block)))
            .fit(1, 3, 2, 6);
    assertThat(fit.stratum("block").rows().get(0).test()).isEmpty();
    assertThat(fit.stratum("block").residual().note()).contains("no degrees of freedom");
    assertThatThrownBy(() -> fit.means(main).difference(0, 1))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("stratum block");
    assertThat(fit.means(sub).difference(1, 0).estimate()).isCloseTo(3, within(1e-12));
  }
}
