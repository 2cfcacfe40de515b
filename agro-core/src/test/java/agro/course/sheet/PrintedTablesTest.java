package agro.course.sheet;

import static agro.ReferenceTable.number;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import agro.ReferenceTable;
import agro.report.InputProblem;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Printed tables against R and against classical tables. */
class PrintedTablesTest {

  private static List<de.siegmar.fastcsv.reader.NamedCsvRecord> table(String name) {
    return ReferenceTable.read(PrintedTablesTest.class, name);
  }

  @Test
  void probitsAreQuantilesPlusFive() {
    for (var line : table("probits.csv")) {
      double percent = number(line, "percent");
      double probit = number(line, "probit");
      assertThat(ProbitLine.probit(percent)).isCloseTo(probit, within(1e-9));
      assertThat(ProbitLine.percent(probit)).isCloseTo(percent, within(1e-9));
      if (percent >= 0.1 && percent <= 99.9) {
        for (int decimals = 2; decimals <= 4; decimals++) {
          assertThat(new ProbitTable(decimals).lookUp(percent))
              .isEqualTo(HandNumbers.rounded(probit, decimals));
        }
      }
    }
  }

  @Test
  void probitsBetweenEntriesAreWithinTheLastDigits() {
    var table = ProbitTable.of();
    for (int i = 100; i <= 9900; i++) {
      double percent = i / 100.0;
      assertThat(table.lookUp(percent))
          .as("%s %%", percent)
          .isCloseTo(ProbitLine.probit(percent), within(0.0125));
    }
  }

  @Test
  void probitsAreReadBackwards() {
    var table = ProbitTable.of();
    for (int percent = 10; percent <= 90; percent++) {
      assertThat(table.lookUpPercent(table.lookUp(percent))).isEqualTo(percent);
    }
    assertThat(table.lookUpPercent(5)).isEqualTo(50);
    assertThat(table.lookUpPercent(5.26)).isCloseTo(60.3, within(0.1001));
    assertThatThrownBy(() -> table.lookUpPercent(8.2)).isInstanceOf(InputProblem.class);
    assertThatThrownBy(() -> table.lookUp(0))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("working probits");
    assertThatThrownBy(() -> table.lookUp(100)).isInstanceOf(InputProblem.class);
  }

  @Test
  void workingProbitsAreThoseOfTheDefinitions() {
    for (var line : table("working-probits.csv")) {
      var at = WorkingProbit.at(number(line, "expected"));
      assertThat(at.least()).isCloseTo(number(line, "least"), withinPercentage(1e-7));
      assertThat(at.range()).isCloseTo(number(line, "range"), withinPercentage(1e-7));
      assertThat(at.most()).isCloseTo(number(line, "most"), withinPercentage(1e-7));
      assertThat(at.weight()).isCloseTo(number(line, "weight"), withinPercentage(1e-7));
    }
  }

  @Test
  void weightsAreThoseOfTheClassicalTables() {
    for (var line : table("published-weights.csv")) {
      double expected = number(line, "expected");
      double weight = number(line, "weight");
      assertThat(WorkingProbit.at(expected).weight()).isCloseTo(weight, within(5.001e-6));
      assertThat(WorkingProbitTable.of().lookUp(expected).weight())
          .isEqualTo(HandNumbers.rounded(WorkingProbit.at(expected).weight(), 4));
    }
  }

  @Test
  void workingProbitsAreInterpolated() {
    var entry = WorkingProbitTable.of().lookUp(5.55);
    // a straight line over a step of 0.1 is off by up to 0.01 / 8 of the second derivative, 0.4
    // here
    assertThat(entry.weight()).isCloseTo(WorkingProbit.at(5.55).weight(), within(6e-4));
    assertThat(entry.least()).isCloseTo(WorkingProbit.at(5.55).least(), within(5e-3));
    assertThat(entry.range()).isCloseTo(WorkingProbit.at(5.55).range(), within(7e-3));
    assertThat(entry.most()).isCloseTo(WorkingProbit.at(5.55).most(), within(5e-3));
    assertThat(WorkingProbitTable.of().lookUp(9).weight()).isGreaterThan(0);
    assertThatThrownBy(() -> WorkingProbitTable.of().lookUp(0.9)).isInstanceOf(InputProblem.class);
  }

  @Test
  void criticalValuesAreQuantiles() {
    for (var line : table("critical-values.csv")) {
      int df = ReferenceTable.whole(line, "df");
      var level = level(number(line, "level"));
      for (int decimals = 2; decimals <= 4; decimals++) {
        double half = 0.5001 * Math.pow(10, -decimals);
        assertThat(new StudentTable(decimals).lookUp(df, level))
            .isCloseTo(number(line, "t"), within(half));
        if (df <= 30) {
          assertThat(new ChiSquaredTable(decimals).lookUp(df, level))
              .isCloseTo(number(line, "chi"), within(half));
        }
      }
    }
  }

  private static TableLevel level(double chance) {
    return List.of(TableLevel.values()).stream()
        .filter(level -> level.chance() == chance)
        .findFirst()
        .orElseThrow();
  }

  @Test
  void missingRowsOfStudentErrOnTheSafeSide() {
    var table = StudentTable.of();
    assertThat(table.lookUp(35, TableLevel.FIVE_PERCENT))
        .isEqualTo(table.lookUp(30, TableLevel.FIVE_PERCENT));
    assertThat(table.lookUp(1000, TableLevel.FIVE_PERCENT))
        .isEqualTo(table.lookUp(120, TableLevel.FIVE_PERCENT))
        .isGreaterThan(table.lookUpUnlimited(TableLevel.FIVE_PERCENT));
    assertThat(table.lookUpUnlimited(TableLevel.FIVE_PERCENT)).isEqualTo(1.96);
    assertThatThrownBy(() -> table.lookUp(0, TableLevel.ONE_PERCENT))
        .isInstanceOf(InputProblem.class);
    assertThatThrownBy(() -> ChiSquaredTable.of().lookUp(31, TableLevel.ONE_PERCENT))
        .isInstanceOf(InputProblem.class);
  }

  @Test
  void areasAreThoseOfTheNormalCurve() {
    for (var line : table("normal-areas.csv")) {
      double deviate = number(line, "deviate");
      double area = number(line, "area");
      for (int decimals = 3; decimals <= 5; decimals++) {
        double half = 0.5001 * Math.pow(10, -decimals);
        var table = new NormalAreaTable(decimals);
        assertThat(table.lookUp(deviate)).isCloseTo(area, within(half));
        assertThat(table.lookUp(-deviate)).isCloseTo(1 - area, within(half));
      }
    }
    assertThat(NormalAreaTable.of().lookUp(1.645)).isEqualTo(0.95);
    assertThat(NormalAreaTable.of().lookUp(7)).isEqualTo(1);
    assertThat(NormalAreaTable.of().lookUp(-7)).isZero();
    assertThat(NormalAreaTable.of().lookUpDeviate(0.975)).isEqualTo(1.96);
    assertThat(NormalAreaTable.of().lookUpDeviate(0.025)).isEqualTo(-1.96);
    assertThatThrownBy(() -> NormalAreaTable.of().lookUpDeviate(1.5))
        .isInstanceOf(InputProblem.class);
  }
}
