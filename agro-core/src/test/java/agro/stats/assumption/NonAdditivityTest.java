package agro.stats.assumption;

import static agro.ReferenceTable.number;
import static agro.ReferenceTable.whole;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import agro.ReferenceTable;
import agro.stats.BlockedValues;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;

/** Non-additivity and the largest residual against a published program. */
class NonAdditivityTest {

  private static final Percentage NINE_DIGITS = Percentage.withPercentage(1e-7);

  private final List<String> blocks = new ArrayList<>();
  private final List<String> treatments = new ArrayList<>();
  private double[] values;

  private BlockedValues read(String set, boolean backwards) {
    var lines =
        new ArrayList<>(ReferenceTable.read(NonAdditivityTest.class, "additive-tables.csv"));
    lines.removeIf(line -> !line.getField("set").equals(set));
    if (backwards) {
      Collections.reverse(lines);
    }
    blocks.clear();
    treatments.clear();
    lines.forEach(line -> blocks.add(line.getField("block")));
    lines.forEach(line -> treatments.add(line.getField("treatment")));
    values = lines.stream().mapToDouble(line -> number(line, "value")).toArray();
    return BlockedValues.of(blocks, treatments, values);
  }

  @Test
  void agreesWithTheSquaredFitAsCovariate() {
    for (var line : ReferenceTable.read(NonAdditivityTest.class, "non-additivity.csv")) {
      for (boolean backwards : new boolean[] {false, true}) {
        var result = NonAdditivity.test(read(line.getField("set"), backwards));
        assertThat(result.sumOfSquares()).isCloseTo(number(line, "sum"), NINE_DIGITS);
        assertThat(result.remainder()).isCloseTo(number(line, "remainder"), NINE_DIGITS);
        assertThat(result.remainderDf()).isEqualTo(whole(line, "df"));
        assertThat(result.f()).isCloseTo(number(line, "f"), NINE_DIGITS);
        assertThat(result.pValue()).isCloseTo(number(line, "p"), NINE_DIGITS);
      }
    }
  }

  @Test
  void agreesWithTheFormulaForCompleteBlocks() {
    var table = read("soybean", false);
    double mean = IntStream.range(0, values.length).mapToDouble(i -> values[i]).average().orElse(0);
    double product = 0;
    double rows = 0;
    double columns = 0;
    for (int b = 0; b < 5; b++) {
      double row = IntStream.range(0, 5).mapToDouble(at(table, b)).sum() / 5 - mean;
      rows += row * row;
    }
    for (int t = 0; t < 5; t++) {
      double column = 0;
      for (int b = 0; b < 5; b++) {
        column += (table.value(b, t) - mean) / 5;
      }
      columns += column * column;
      for (int b = 0; b < 5; b++) {
        double row = IntStream.range(0, 5).mapToDouble(at(table, b)).sum() / 5 - mean;
        product += table.value(b, t) * row * column;
      }
    }
    var result = NonAdditivity.test(table);
    assertThat(result.sumOfSquares())
        .isCloseTo(product * product / (rows * columns), within(1e-10));
    assertThat(result.slope()).isCloseTo(product / (rows * columns), within(1e-10));
    assertThat(result.suggestedPower()).isCloseTo(1 - result.slope() * mean, within(1e-10));
  }

  private static java.util.function.IntToDoubleFunction at(BlockedValues table, int block) {
    return t -> table.value(block, t);
  }

  @Test
  void productsAskForTheLogarithm() {
    var rows = new ArrayList<String>();
    var columns = new ArrayList<String>();
    double[] y = new double[20];
    for (int i = 0; i < 20; i++) {
      rows.add("b" + i / 4);
      columns.add("t" + i % 4);
      y[i] = (10 + i / 4) * (8 + i % 4) + 0.01 * Math.sin(7 * i);
    }
    var result = NonAdditivity.test(BlockedValues.of(rows, columns, y));
    assertThat(result.pValue()).isLessThan(1e-6);
    assertThat(result.suggestedPower()).isCloseTo(0, within(0.01));
  }

  @Test
  void tablesWithoutAnythingToTestAreTold() {
    var rows = List.of("1", "1", "2", "2");
    var columns = List.of("a", "b", "a", "b");
    assertThatThrownBy(
            () -> NonAdditivity.test(BlockedValues.of(rows, columns, new double[] {1, 2, 3, 5})))
        .hasMessageContaining("1 degrees of freedom");
    var more = List.of("1", "1", "2", "2", "3", "3");
    var cells = List.of("a", "b", "a", "b", "a", "b");
    assertThatThrownBy(
            () ->
                NonAdditivity.test(BlockedValues.of(more, cells, new double[] {1, 2, 1, 2, 1, 2})))
        .hasMessageContaining("do not differ");
    assertThatThrownBy(
            () ->
                NonAdditivity.test(BlockedValues.of(more, cells, new double[] {1, 2, 2, 3, 4, 5})))
        .hasMessageContaining("exactly");
  }

  @Test
  void theLargestResidualIsNamed() {
    var all = ReferenceTable.read(NonAdditivityTest.class, "residuals.csv");
    for (var line : ReferenceTable.read(NonAdditivityTest.class, "largest-residuals.csv")) {
      read(line.getField("set"), false);
      var own = all.stream().filter(x -> x.getField("set").equals(line.getField("set"))).toList();
      var labels =
          IntStream.range(0, values.length)
              .mapToObj(i -> blocks.get(i) + " " + treatments.get(i))
              .toList();
      var result =
          LargestResidual.find(
              labels,
              own.stream().mapToDouble(x -> number(x, "residual")).toArray(),
              own.stream().mapToDouble(x -> number(x, "leverage")).toArray(),
              whole(line, "df"));
      assertThat(result.label())
          .isEqualTo(line.getField("block") + " " + line.getField("treatment"));
      assertThat(result.standardised()).isCloseTo(number(line, "standardised"), NINE_DIGITS);
      assertThat(result.studentised()).isCloseTo(number(line, "studentised"), NINE_DIGITS);
      assertThat(result.pValue()).isCloseTo(number(line, "p"), NINE_DIGITS);
      assertThat(result.remarks()).isEmpty();
    }
  }

  @Test
  void rowsThatCannotBeTestedAreTold() {
    var labels = List.of("a", "b", "c", "d");
    var result =
        LargestResidual.find(
            labels, new double[] {0, 1, -2, 1}, new double[] {1, 1 / 3.0, 1 / 3.0, 1 / 3.0}, 2);
    assertThat(result.label()).isEqualTo("c");
    assertThat(result.tested()).isEqualTo(3);
    assertThat(result.studentised()).isEqualTo(Double.NEGATIVE_INFINITY);
    assertThat(result.remarks()).hasSize(2);
    assertThatThrownBy(() -> LargestResidual.find(labels, new double[4], new double[4], 2))
        .hasMessageContaining("zero");
    assertThatThrownBy(() -> LargestResidual.find(labels, new double[4], new double[4], 1))
        .hasMessageContaining("1 degrees of freedom");
  }
}
