package agro.course.sheet;

import static agro.ReferenceTable.number;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import agro.ReferenceTable;
import agro.development.DegreeDayMethod;
import agro.report.InputProblem;
import agro.weather.curve.CurveDay;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Degree-days and sines as a student reads them from print. */
class SineTableTest {

  @Test
  void factorsAreAreasOfTheSine() {
    for (var line : ReferenceTable.read(SineTableTest.class, "sine-factors.csv")) {
      double z = number(line, "z");
      assertThat(SineTable.factor(z))
          .as("z = %s", z)
          .isCloseTo(number(line, "factor"), within(1e-10));
    }
  }

  @Test
  void everyReadingIsWithinItsBound() {
    for (int decimals = 3; decimals <= 5; decimals++) {
      var table = new SineTable(decimals);
      double worst = 0;
      for (int i = -12000; i <= 12000; i += 7) {
        double z = i / 10000.0;
        double off = Math.abs(table.lookUp(z) - SineTable.factor(z));
        worst = Math.max(worst, off);
      }
      assertThat(worst).isLessThanOrEqualTo(table.errorBound());
      assertThat(worst).as("the bound is not idle").isGreaterThan(0.5 * table.errorBound());
    }
  }

  @Test
  void straightLinesBetweenExactEntriesAreWithinTheirShareOfTheBound() {
    double worst = 0;
    for (int i = -10000; i < 10000; i++) {
      double z = i / 10000.0;
      double low = Math.floor(z * 100 + 1e-9) / 100;
      double line =
          SineTable.factor(low)
              + (z - low) * 100 * (SineTable.factor(low + 0.01) - SineTable.factor(low));
      worst = Math.max(worst, Math.abs(line - SineTable.factor(z)));
    }
    assertThat(worst).isBetween(4e-5, 4.5e-5);
  }

  @Test
  void daysAgreeWithTheSingleSine() {
    var random = new Random(14);
    var table = SineTable.of();
    for (int i = 0; i < 2000; i++) {
      double min = HandNumbers.rounded(-5 + 25 * random.nextDouble(), 1);
      double max = HandNumbers.rounded(min + 20 * random.nextDouble(), 1);
      double threshold = HandNumbers.rounded(5 + 10 * random.nextDouble(), 1);
      double exact = DegreeDayMethod.SINGLE_SINE.areaAbove(CurveDay.of(min, max), threshold);
      double half = (max - min) / 2;
      assertThat(table.degreeDays(min, max, threshold))
          .as("%s to %s above %s", min, max, threshold)
          .isCloseTo(exact, within(half * table.errorBound() + 1e-9));
    }
  }

  @Test
  void endsAndRefusals() {
    var table = SineTable.of();
    assertThat(table.lookUp(-1)).isEqualTo(1);
    assertThat(table.lookUp(1)).isZero();
    assertThat(table.lookUp(-1.75)).isEqualTo(1.75);
    assertThat(table.lookUp(1.2)).isZero();
    assertThat(table.lookUp(0)).isEqualTo(0.3183);
    assertThat(table.degreeDays(12, 12, 10)).isEqualTo(2);
    assertThat(table.degreeDays(8, 8, 10)).isZero();
    assertThatThrownBy(() -> table.lookUp(Double.NaN)).isInstanceOf(InputProblem.class);
    assertThatThrownBy(() -> table.degreeDays(20, 10, 8)).isInstanceOf(InputProblem.class);
    assertThatThrownBy(() -> table.entry(101)).isInstanceOf(InputProblem.class);
    assertThatThrownBy(() -> new SineTable(9)).isInstanceOf(InputProblem.class);
  }

  @Test
  void anUpperThresholdIsADifference() {
    double day = DegreeDayMethod.SINGLE_SINE.areaAbove(CurveDay.of(8, 34), 10);
    double cut = DegreeDayMethod.SINGLE_SINE.areaAbove(CurveDay.of(8, 34), 30);
    double mean = 21;
    double half = 13;
    var table = SineTable.of();
    double byTable = half * (table.lookUp((10 - mean) / half) - table.lookUp((30 - mean) / half));
    assertThat(byTable).isCloseTo(day - cut, within(2 * half * table.errorBound()));
  }

  @Test
  void sinesForwardsAndBackwards() {
    var table = SineArcTable.of();
    for (int i = 0; i <= 9000; i += 7) {
      double degrees = i / 100.0;
      double sine = Math.sin(Math.toRadians(degrees));
      assertThat(table.sine(degrees)).isCloseTo(sine, within(1.4e-4));
      if (degrees <= 80) {
        assertThat(table.arc(sine))
            .as("%s", degrees)
            .isCloseTo(Math.toRadians(degrees), within(6e-4));
        assertThat(table.arc(-sine)).isEqualTo(-table.arc(sine));
      }
    }
    assertThat(table.arc(1)).isEqualTo(1.5708);
    assertThat(table.sine(90)).isEqualTo(1);
    assertThatThrownBy(() -> table.sine(91)).isInstanceOf(InputProblem.class);
    assertThatThrownBy(() -> table.arc(1.01)).isInstanceOf(InputProblem.class);
  }
}
