package agro.development;

import static agro.ReferenceTable.number;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import agro.ReferenceTable;
import agro.report.InputProblem;
import agro.units.Temperature;
import agro.units.ThermalTime;
import agro.weather.DailyExtremes;
import agro.weather.DailyTemperatures;
import agro.weather.DayOrigin;
import agro.weather.Medium;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class ThermalTimeScaleTest {

  private static final LocalDate START = LocalDate.of(2001, 4, 1);
  private static final DegreeDayModel ABOVE_EIGHT =
      DegreeDayModel.singleSine(Thresholds.above(new Temperature(8)), UpperCutoff.NONE);

  private static DailyTemperatures series(double... constantCelsius) {
    var days =
        IntStream.range(0, constantCelsius.length)
            .filter(i -> !Double.isNaN(constantCelsius[i]))
            .mapToObj(
                i -> new DailyExtremes(START.plusDays(i), constantCelsius[i], constantCelsius[i]))
            .toList();
    return DailyTemperatures.of("Upper Croft", Medium.shelterAir(), days, DayOrigin.OBSERVED);
  }

  static List<NamedCsvRecord> tuta() {
    return ReferenceTable.read(ThermalTimeScaleTest.class, "tuta-absoluta-forward.csv");
  }

  /** Krechemer & Foerster 2015, Eur. J. Entomol. 112: lower threshold 8.0 °C, K 416.7 °C·d. */
  @ParameterizedTest
  @MethodSource("tuta")
  void reachesThePublishedRequirementAtConstantTemperature(NamedCsvRecord line) {
    double celsius = number(line, "celsius");
    var warm = series(IntStream.range(0, 70).mapToDouble(i -> celsius).toArray());
    var reached =
        ThermalTimeScale.of(ABOVE_EIGHT, warm, START).reached(new ThermalTime(416.7)).orElseThrow();
    assertThat(reached.daysSinceStartOf(START)).isCloseTo(number(line, "days"), within(1e-3));
  }

  @Test
  void theStartDayCountsFromItsBeginning() {
    var scale = ThermalTimeScale.of(ABOVE_EIGHT, series(9, 10, 12, 8), START.plusDays(1));
    assertThat(scale.degreeDaysCAtStartOf(START.plusDays(1))).isZero();
    assertThat(scale.degreeDaysCAtStartOf(START.plusDays(2))).isEqualTo(2);
    assertThat(scale.degreeDaysCAtStartOf(START.plusDays(4))).isEqualTo(6);
    assertThat(scale.sumsC()).containsExactly(0, 2, 6, 6);
    assertThat(scale.firstDay()).isEqualTo(START.plusDays(1));
    assertThat(scale.lastDay()).isEqualTo(START.plusDays(3));
  }

  @Test
  void momentsAreInterpolatedWithinTheDay() {
    var scale = ThermalTimeScale.of(ABOVE_EIGHT, series(10, 8, 12), START);
    assertThat(scale.reached(new ThermalTime(1))).contains(new Reached(START, 0.5));
    assertThat(scale.reached(new ThermalTime(2))).contains(new Reached(START, 1));
    assertThat(scale.reached(new ThermalTime(3))).contains(new Reached(START.plusDays(2), 0.25));
    assertThat(scale.reached(ThermalTime.ZERO)).contains(new Reached(START, 0));
    assertThat(scale.daysUntil(2)).isEqualTo(1);
    assertThat(scale.degreeDaysCAfter(2.25)).isEqualTo(3);
    assertThat(scale.degreeDaysCAfter(3)).isEqualTo(6);
    assertThat(scale.degreeDaysCAfter(3.1)).isNaN();
  }

  @Test
  void aSumThatIsNotReachedIsSaidSo() {
    var scale = ThermalTimeScale.of(ABOVE_EIGHT, series(10, 8, 12), START);
    assertThat(scale.reached(new ThermalTime(6))).contains(new Reached(START.plusDays(2), 1));
    assertThat(scale.reached(new ThermalTime(6.1))).isEmpty();
    assertThat(scale.daysUntil(6.1)).isEqualTo(Double.POSITIVE_INFINITY);
    assertThat(scale.daysUntil(-0.1)).isEqualTo(Double.NEGATIVE_INFINITY);
    assertThat(scale.daysUntil(Double.NaN)).isNaN();
  }

  @Test
  void refusesANegativeSum() {
    var scale = ThermalTimeScale.of(ABOVE_EIGHT, series(10), START);
    assertThatThrownBy(() -> scale.reached(new ThermalTime(-1))).isInstanceOf(InputProblem.class);
  }

  @Test
  void refusesAMissingDayInside() {
    var gap = series(10, 11, Double.NaN, 12);
    assertThatThrownBy(() -> ThermalTimeScale.of(ABOVE_EIGHT, gap, START))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("Upper Croft: no temperatures for 2001-04-03")
        .hasMessageContaining("neighbouring station");
  }

  @Test
  void stopsBeforeAMissingDayWhenAskedTo() {
    var gap = series(10, 11, Double.NaN, 12);
    var scale = ThermalTimeScale.upToFirstMissing(ABOVE_EIGHT, gap, START);
    assertThat(scale.lastDay()).isEqualTo(START.plusDays(1));
    assertThat(scale.firstMissing()).contains(START.plusDays(2));
    assertThat(scale.totalC()).isEqualTo(5);
    assertThatThrownBy(() -> ThermalTimeScale.upToFirstMissing(ABOVE_EIGHT, gap, START.plusDays(2)))
        .isInstanceOf(InputProblem.class);
  }

  @Test
  void refusesABiofixOutsideTheLog() {
    var log = series(10, 11, 12);
    for (var biofix : List.of(START.minusDays(1), START.plusDays(3))) {
      assertThatThrownBy(() -> ThermalTimeScale.of(ABOVE_EIGHT, log, biofix))
          .isInstanceOf(InputProblem.class)
          .hasMessageContaining("a start on " + biofix)
          .hasMessageContaining("from 2001-04-01 to 2001-04-03");
    }
  }

  @Test
  void refusesSumsOfDaysOutsideTheScale() {
    var scale = ThermalTimeScale.of(ABOVE_EIGHT, series(10, 11), START);
    assertThatThrownBy(() -> scale.degreeDaysCAtStartOf(START.plusDays(3)))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("from 2001-04-01 to 2001-04-03");
  }
}
