package agro.stats.assumption;

import static agro.ReferenceTable.number;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import agro.ReferenceTable;
import agro.stats.GroupedValues;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Tests of equal variances against a published program on open data. */
class VarianceTestTest {

  @ParameterizedTest
  @ValueSource(strings = {"variance-tests.csv", "published-tests.csv"})
  void agrees(String table) {
    var lines = ReferenceTable.read(VarianceTestTest.class, table);
    assertThat(lines).hasSizeGreaterThanOrEqualTo(9);
    for (NamedCsvRecord line : lines) {
      var groups = groups(line.getField("set"));
      double statistic;
      double p;
      if (line.getField("test").equals("SHAPIRO_WILK")) {
        var result = ShapiroWilk.test(residuals(groups));
        statistic = result.w();
        p = result.pValue();
      } else {
        var result = VarianceTest.valueOf(line.getField("test")).test(groups);
        statistic = result.statistic();
        p = result.pValue();
        assertThat(result.degreesOfFreedom().get(0)).isEqualTo(number(line, "df1"));
        if (!line.getField("df2").isEmpty()) {
          assertThat(result.degreesOfFreedom().get(1)).isEqualTo(number(line, "df2"));
        }
      }
      assertThat(statistic)
          .as(line.toString())
          .isCloseTo(number(line, "statistic"), Percentage.withPercentage(1e-7));
      assertThat(p)
          .as(line.toString())
          .isCloseTo(number(line, "p"), Percentage.withPercentage(1e-6));
    }
  }

  static GroupedValues groups(String set) {
    var labels = new ArrayList<String>();
    var values = new ArrayList<Double>();
    for (var line : ReferenceTable.read(VarianceTestTest.class, "group-values.csv")) {
      if (line.getField("set").equals(set)) {
        labels.add(line.getField("group"));
        values.add(number(line, "value"));
      }
    }
    return GroupedValues.of(labels, values.stream().mapToDouble(x -> x).toArray());
  }

  private static double[] residuals(GroupedValues groups) {
    double[] residuals = new double[groups.total()];
    int at = 0;
    for (int i = 0; i < groups.groups(); i++) {
      for (double value : groups.values(i)) {
        residuals[at++] = value - groups.mean(i);
      }
    }
    return residuals;
  }

  @Property(seed = "8", tries = 50)
  void orderNamesUnitAndOriginDoNotMatter(@ForAll @IntRange(min = 1, max = 9999) int seed) {
    var random = new Random(seed);
    var rows = new ArrayList<Integer>();
    var labels = new ArrayList<String>();
    var values = new ArrayList<Double>();
    for (int i = 0; i < 24; i++) {
      rows.add(i);
      labels.add("g" + i % 4);
      values.add((double) random.nextInt(20));
    }
    Collections.shuffle(rows, random);
    double[] first = values.stream().mapToDouble(x -> x).toArray();
    double[] second = rows.stream().mapToDouble(i -> 0.1 * values.get(i) + 7).toArray();
    var renamed = rows.stream().map(i -> "other " + (char) ('z' - i % 4)).toList();
    for (VarianceTest test : VarianceTest.values()) {
      double p = test.test(GroupedValues.of(labels, first)).pValue();
      assertThat(test.test(GroupedValues.of(renamed, second)).pValue())
          .as(test.title())
          .isCloseTo(p, within(1e-9));
    }
  }

  @ParameterizedTest
  @EnumSource
  void groupsOfOneAndGroupsWithoutScatterAreTold(VarianceTest test) {
    assertThatThrownBy(
            () -> test.test(GroupedValues.numbered(new double[] {1, 2, 4}, new double[] {3})))
        .hasMessageContaining("Group 2 has 1 value");
    assertThatThrownBy(
            () -> test.test(GroupedValues.numbered(new double[] {1, 1}, new double[] {3, 3})))
        .isInstanceOf(agro.report.InputProblem.class);
  }

  @org.junit.jupiter.api.Test
  void constantGroupsAreNamed() {
    var groups =
        GroupedValues.of(List.of("a", "a", "a", "b", "b", "b"), new double[] {1, 2, 4, 7, 7, 7});
    assertThatThrownBy(() -> VarianceTest.BARTLETT.test(groups)).hasMessageContaining("equal in b");
    var result = VarianceTest.BROWN_FORSYTHE.test(groups);
    assertThat(result.remarks()).hasSize(2).first().asString().contains("all values of b");
    assertThat(result.groups().get(1).variance()).isEqualTo(0);
    assertThat(result).hasToString("Brown-Forsythe: F = 3.00; df = 1, 4; P = 0.158");
  }
}
