package agro.development;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import agro.report.InputProblem;
import agro.units.Temperature;
import agro.units.ThermalTime;
import agro.weather.DailyTemperatures;
import agro.weather.DayOrigin;
import agro.weather.Medium;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

class StationSumsTest {

  private static final LocalDate FIRST = LocalDate.of(2001, 1, 1);
  private static final DegreeDayModel MODEL =
      DegreeDayModel.singleSine(
          Thresholds.between(new Temperature(8), new Temperature(30)), UpperCutoff.HORIZONTAL);

  private static DailyTemperatures station(
      String place, LocalDate first, int days, long seed, int... missing) {
    var random = new SplittableRandom(seed);
    var builder = DailyTemperatures.builder(first, first.plusDays(days - 1L));
    for (int i = 0; i < days; i++) {
      double min = 3 + 9 * Math.sin(2 * Math.PI * (i - 100) / 365.25) + 4 * random.nextDouble();
      builder.putAt(i, min, min + 4 + 8 * random.nextDouble(), DayOrigin.OBSERVED);
    }
    for (int day : missing) {
      builder.putAt(day, Double.NaN, Double.NaN, DayOrigin.MISSING);
    }
    return builder.build(place, Medium.shelterAir());
  }

  @Property(tries = 100, seed = "30")
  void agreesWithTheScaleOfOneStation(
      @ForAll @IntRange(min = 0, max = 799) int start, @ForAll @IntRange(max = 2500) int sum) {
    var one = station("Upper Croft", FIRST, 800, 1);
    var other = station("Mill Field", FIRST, 800, 2);
    var sums = DegreeDayBatch.of(MODEL).accumulate(List.of(one, other));
    var begin = FIRST.plusDays(start);
    var found = sums.daysUntil(begin, sum);
    var scales =
        List.of(one, other).stream().map(s -> ThermalTimeScale.of(MODEL, s, begin)).toList();
    for (int i = 0; i < 2; i++) {
      double expected = scales.get(i).daysUntil(sum);
      if (Double.isInfinite(expected)) {
        assertThat(found[i]).isEqualTo(expected);
      } else {
        assertThat(found[i]).isCloseTo(expected, within(1e-6));
        assertThat(
                sums.reached(i, begin, new ThermalTime(sum)).orElseThrow().daysSinceStartOf(begin))
            .isEqualTo(found[i]);
      }
      assertThat(sums.degreeDaysC(begin, sums.lastDay())[i])
          .isCloseTo(scales.get(i).totalC(), within(1e-8));
    }
  }

  @Test
  void stationsOfDifferentRunsAreLaidOverEachOther() {
    var early = station("Upper Croft", FIRST, 100, 1);
    var late = station("Mill Field", FIRST.plusDays(50), 100, 2);
    var sums = DegreeDayBatch.of(MODEL).accumulate(List.of(early, late));
    assertThat(sums.places()).containsExactly("Upper Croft", "Mill Field");
    assertThat(sums.firstDay()).isEqualTo(FIRST);
    assertThat(sums.lastDay()).isEqualTo(FIRST.plusDays(149));
    assertThat(sums.missingDays(0)).isEqualTo(50);
    assertThat(sums.missingDays(1)).isEqualTo(50);
    var last = FIRST.plusDays(99);
    assertThat(sums.degreeDaysC(FIRST, last)).satisfies(each -> assertThat(each[1]).isNaN());
    assertThat(sums.degreeDaysC(0, FIRST, last))
        .isCloseTo(ThermalTimeScale.of(MODEL, early, FIRST).totalC(), within(1e-9));
    assertThat(sums.degreeDaysC(1, FIRST.plusDays(50), sums.lastDay()))
        .isCloseTo(ThermalTimeScale.of(MODEL, late, late.firstDay()).totalC(), within(1e-9));
  }

  @Test
  void noFigureReachesAcrossAMissingDay() {
    var gappy = station("Sand Lane", FIRST, 400, 5, 180, 181);
    var sums = DegreeDayBatch.of(MODEL).accumulate(List.of(gappy));
    var scale = ThermalTimeScale.upToFirstMissing(MODEL, gappy, FIRST);
    double known = scale.totalC();
    assertThat(sums.daysUntil(0, FIRST, known - 0.1))
        .isCloseTo(scale.daysUntil(known - 0.1), within(1e-6));
    assertThat(sums.daysUntil(0, FIRST, known + 0.1)).isNaN();
    assertThat(sums.daysUntil(0, FIRST.plusDays(180), 1)).isNaN();
    assertThat(sums.daysUntil(0, FIRST.plusDays(182), 1)).isPositive().isFinite();
    assertThat(sums.daysUntil(0, FIRST.plusDays(182), 1e9)).isEqualTo(Double.POSITIVE_INFINITY);
    assertThat(sums.degreeDaysC(0, FIRST, FIRST.plusDays(180))).isNaN();
    assertThat(sums.degreeDaysC(0, FIRST, FIRST.plusDays(179))).isCloseTo(known, within(1e-9));
    assertThatThrownBy(() -> sums.reached(0, FIRST, new ThermalTime(known + 1)))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("Sand Lane")
        .hasMessageContaining("missing day");
  }

  @Test
  void sumsOfNothingAndBelowNothing() {
    var sums = DegreeDayBatch.of(MODEL).accumulate(List.of(station("Upper Croft", FIRST, 30, 1)));
    assertThat(sums.daysUntil(0, FIRST, 0)).isZero();
    assertThat(sums.daysUntil(0, FIRST, -1)).isEqualTo(Double.NEGATIVE_INFINITY);
    assertThat(sums.daysUntil(0, FIRST, Double.NaN)).isNaN();
    assertThat(sums.reached(0, FIRST, new ThermalTime(0))).contains(new Reached(FIRST, 0));
    assertThat(sums.reached(0, FIRST, new ThermalTime(1e6))).isEmpty();
    assertThatThrownBy(() -> sums.daysUntil(0, FIRST.minusDays(1), 5))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("2001-01-30");
    assertThatThrownBy(() -> sums.degreeDaysC(FIRST.plusDays(3), FIRST))
        .isInstanceOf(InputProblem.class);
  }

  @Test
  void arraysAndSeriesGiveTheSameSumsOnAnyNumberOfThreads() {
    int stations = 40;
    int days = 1000;
    var min = new double[stations * days];
    var max = new double[stations * days];
    var series = new ArrayList<DailyTemperatures>();
    for (int s = 0; s < stations; s++) {
      series.add(station("station " + (s + 1), FIRST, days, s, 17 * s));
      System.arraycopy(series.get(s).minimaCelsius(), 0, min, s * days, days);
      System.arraycopy(series.get(s).maximaCelsius(), 0, max, s * days, days);
    }
    var expected = DegreeDayBatch.of(MODEL).withThreads(1).accumulate(series);
    for (int threads = 1; threads <= 4; threads++) {
      var sums = DegreeDayBatch.of(MODEL).withThreads(threads).accumulate(FIRST, days, min, max);
      assertThat(sums.places()).isEqualTo(expected.places());
      assertThat(sums.bytes()).isEqualTo(8L * stations * days + 4L * stations);
      for (var start : List.of(FIRST, FIRST.plusDays(700))) {
        assertThat(sums.daysUntil(start, 90)).isEqualTo(expected.daysUntil(start, 90));
        assertThat(sums.degreeDaysC(start, sums.lastDay()))
            .isEqualTo(expected.degreeDaysC(start, sums.lastDay()));
      }
    }
  }

  @Test
  void whatIsNotWholeStationsIsRefused() {
    var batch = DegreeDayBatch.of(MODEL);
    assertThatThrownBy(() -> batch.accumulate(FIRST, 3, new double[10], new double[10]))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("10 station-days, with 3 for each station");
    assertThatThrownBy(() -> batch.accumulate(FIRST, 0, new double[0], new double[0]))
        .isInstanceOf(InputProblem.class);
    assertThatThrownBy(() -> batch.accumulate(List.of())).isInstanceOf(InputProblem.class);
  }

  @Test
  void presentationTellsTheSizeTheModelAndTheSource() {
    var sums =
        DegreeDayBatch.of(MODEL).accumulate(List.of(station("Upper Croft", FIRST, 30, 1, 4)));
    assertThat(sums.presentation().toText())
        .contains("stations", "2001-01-01 to 2001-01-30", "1 of 30", "single sine", "Baskerville");
  }
}
