package agro.weather.curve;

import static agro.ReferenceTable.number;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import agro.ReferenceTable;
import agro.report.InputProblem;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

class DayCurveTest {

  private static final CurveDay DAY = CurveDay.of(10, 30).withNextMinimum(12);

  static List<NamedCsvRecord> hours() {
    return ReferenceTable.read(DayCurveTest.class, "sine-and-decay-hours.csv");
  }

  @ParameterizedTest
  @MethodSource("hours")
  void sineAndDecayAgreesWithTheTable(NamedCsvRecord line) {
    for (int length : new int[] {12, 15}) {
      double celsius =
          DayCurve.SINE_AND_DECAY.celsiusAt(DAY.withDayLength(length), number(line, "hour"));
      assertThat(celsius).isCloseTo(number(line, "day_length_" + length), within(5e-4 + 1e-9));
    }
  }

  /** Maximum at half of day length and four hours; the hour after sunset is flat. */
  @Test
  void sineAndDecayPeaksLateAndStaysFlatAfterSunset() {
    var day = DAY.withDayLength(12);
    assertThat(DayCurve.SINE_AND_DECAY.celsiusAt(day, 8)).isCloseTo(30, within(1e-12));
    double sunset = DayCurve.SINE_AND_DECAY.celsiusAt(day, 12);
    assertThat(sunset).isCloseTo(10 + 20 * Math.sin(0.75 * Math.PI), within(1e-12));
    assertThat(DayCurve.SINE_AND_DECAY.celsiusAt(day, 12.5)).isEqualTo(sunset);
    assertThat(DayCurve.SINE_AND_DECAY.celsiusAt(day, 13)).isCloseTo(sunset, within(1e-12));
    assertThat(DayCurve.SINE_AND_DECAY.celsiusAt(day, 24)).isCloseTo(12, within(1e-12));
  }

  @Test
  void meansAgreeWithTheTable() {
    assertThat(DayCurve.SINE_AND_DECAY.meanCelsius(DAY.withDayLength(12)))
        .isCloseTo(20.4848, within(5e-5));
    assertThat(DayCurve.SINE_AND_DECAY.meanCelsius(DAY.withDayLength(15)))
        .isCloseTo(21.3273, within(5e-5));
    assertThat(DayCurve.SINGLE_SINE.meanCelsius(DAY)).isCloseTo(20, within(1e-12));
    assertThat(DayCurve.DOUBLE_TRIANGLE.meanCelsius(DAY)).isCloseTo(20.5, within(1e-12));
    assertThat(DayCurve.DOUBLE_SINE.meanCelsius(DAY.withNextMinimum(4)))
        .isCloseTo(18.5, within(1e-12));
  }

  @ParameterizedTest
  @EnumSource(DayCurve.class)
  void curvesMeetTheExtremes(DayCurve curve) {
    var day = DAY.withDayLength(14);
    assertThat(curve.celsiusAt(day, 0)).isCloseTo(10, within(1e-12));
    double end = curve.needsNextMinimum() ? 12 : 10;
    assertThat(curve.celsiusAt(day, 24)).isCloseTo(end, within(1e-12));
    assertThat(curve.celsiusAt(day, curve.needsDayLength() ? 9 : 12)).isCloseTo(30, within(1e-12));
    assertThat(curve.celsiusAt(day, 24.1)).isNaN();
    assertThat(curve.celsiusAt(day, -0.1)).isNaN();
  }

  @Test
  void whatIsNotKnownStaysNotKnown() {
    var alone = CurveDay.of(10, 30);
    assertThat(DayCurve.SINE_AND_DECAY.celsiusAt(alone, 5)).isNaN();
    assertThat(DayCurve.SINE_AND_DECAY.areaAbove(DAY, 40)).isNaN();
    var lastDay = alone.withNextMinimum(Double.NaN);
    assertThat(DayCurve.DOUBLE_SINE.areaAbove(lastDay, 8)).isNaN();
    assertThat(DayCurve.DOUBLE_SINE.shareAbove(lastDay, 40)).isNaN();
    assertThat(DayCurve.SINGLE_SINE.areaAbove(lastDay, 8)).isCloseTo(12, within(1e-12));
    assertThat(DayCurve.SINGLE_TRIANGLE.areaAbove(CurveDay.of(Double.NaN, 20), 30)).isNaN();
  }

  /** No record can pass from a day of at most 20 °C to one of at least 25 °C. */
  @Test
  void aNextMinimumAboveTheMaximumIsHeldThere() {
    var day = CurveDay.of(10, 20).withNextMinimum(25).withDayLength(12);
    assertThat(day.nextMinimumIsAboveMaximum()).isTrue();
    for (var curve : DayCurve.values()) {
      assertThat(curve.areaAbove(day, 20)).as("%s", curve).isZero();
    }
    assertThat(DayCurve.DOUBLE_SINE.meanCelsius(day)).isCloseTo(17.5, within(1e-12));
  }

  @Property(seed = "1990")
  void curvesStayBetweenTheirEnds(
      @ForAll DayCurve curve,
      @ForAll @DoubleRange(min = -30, max = 40) double min,
      @ForAll @DoubleRange(min = 0, max = 30) double range,
      @ForAll @DoubleRange(min = -15, max = 15) double change,
      @ForAll @DoubleRange(min = 0, max = 24) double length,
      @ForAll @DoubleRange(min = 0, max = 24) double hour) {
    var day = CurveDay.of(min, min + range).withNextMinimum(min + change).withDayLength(length);
    double lowest = Math.min(min, day.endCelsius());
    assertThat(curve.celsiusAt(day, hour)).isBetween(lowest - 1e-9, min + range + 1e-9);
    assertThat(curve.shareAbove(day, min + 0.3 * range)).isBetween(0.0, 1.0);
    assertThat(curve.areaAbove(day, lowest)).isBetween(0.0, min + range - lowest + 1e-9);
  }

  @Test
  void refusesWhatNoDayHas() {
    assertThatThrownBy(() -> CurveDay.of(21, 20))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("swapped");
    for (double hours : new double[] {-1, 24.5}) {
      assertThatThrownBy(() -> DAY.withDayLength(hours)).isInstanceOf(InputProblem.class);
    }
  }
}
