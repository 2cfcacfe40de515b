package agro.development.rate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import agro.ReferenceTable;
import agro.report.InputProblem;
import org.junit.jupiter.api.Test;

class ThermalLineTest {

  @Test
  void givesTheLinesOfThePublishedRearingsAgain() {
    for (var line : ReferenceTable.read(ThermalLineTest.class, "lines.csv")) {
      var thermal =
          ThermalLine.of(
              Rearings.named(line.getField("set")),
              LineMethod.valueOf(line.getField("method")),
              ReferenceTable.number(line, "low"),
              ReferenceTable.number(line, "high"));
      assertThat(thermal.lowerCelsius())
          .as(line.toString())
          .isCloseTo(
              ReferenceTable.number(line, "lower"),
              within(ReferenceTable.number(line, "tolerance_lower")));
      assertThat(thermal.degreeDaysC())
          .as(line.toString())
          .isCloseTo(
              ReferenceTable.number(line, "degree_days"),
              within(ReferenceTable.number(line, "tolerance_degree_days")));
      check(line.getField("lower_error"), thermal.lowerStandardError(), 0.02);
      check(line.getField("degree_days_error"), thermal.degreeDaysStandardError(), 0.1);
      check(line.getField("r"), thermal.correlation(), 1e-5);
    }
  }

  private static void check(String wanted, double got, double tolerance) {
    if (!wanted.isEmpty()) {
      assertThat(got).isCloseTo(Double.parseDouble(wanted), within(tolerance));
    }
  }

  /** Two temperatures, 12.0 d at 15 °C and 4.5 d at 30 °C: Kersting, Satar & Uygun 1999 (read). */
  @Test
  void twoTemperaturesGiveALineWithoutErrors() {
    var data = RearingData.ofMeans("two", new double[] {15, 30}, new double[] {12, 4.5});
    var line = ThermalLine.of(data, LineMethod.LEAST_SQUARES);
    assertThat(line.lowerCelsius()).isCloseTo(6.0, within(1e-9));
    assertThat(line.degreeDaysC()).isCloseTo(108, within(1e-9));
    assertThat(line.lowerStandardError()).isNaN();
    assertThat(line.presentation().toText()).contains("no standard error from two points");
    assertThat(ThermalLine.of(data, LineMethod.REDUCED_MAJOR_AXIS).lowerCelsius())
        .isCloseTo(6.0, within(1e-9));
  }

  @Test
  void theWorkingShowsTheSteps() {
    var line = ThermalLine.of(Rearings.named("gastrophysa"), LineMethod.LEAST_SQUARES);
    assertThat(line.working().toText())
        .contains("r = 1/D")
        .contains("= 0.0032835 /(d °C)")
        .contains("= 7.095 °C")
        .contains("= 304.55 °C·d")
        .contains("= 35.06 °C·d")
        .contains("= 1.89 °C");
    var axis = ThermalLine.of(Rearings.named("gastrophysa"), LineMethod.REDUCED_MAJOR_AXIS);
    assertThat(axis.working().toText()).contains("= 7.796 °C").contains("= 290.95 °C·d");
    assertThat(axis.daysAt(20)).isCloseTo(290.951 / (20 - 7.79598), within(1e-3));
    assertThat(axis.daysAt(5)).isInfinite();
  }

  @Test
  void refusesALineThatFalls() {
    var data = RearingData.ofMeans("swapped", new double[] {15, 20, 25}, new double[] {5, 8, 12});
    assertThatThrownBy(() -> ThermalLine.of(data, LineMethod.LEAST_SQUARES))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("development is not faster where it is warmer")
        .hasMessageContaining("below the optimum alone");
    assertThatThrownBy(() -> ThermalLine.of(data, LineMethod.REDUCED_MAJOR_AXIS))
        .isInstanceOf(InputProblem.class);
  }
}
