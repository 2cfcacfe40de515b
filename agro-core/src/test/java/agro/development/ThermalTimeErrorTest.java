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
import agro.weather.SeattleDays;
import agro.weather.climate.ClimateNormals;
import agro.weather.gap.ErrorCorrelation;
import agro.weather.gap.FilledDays;
import agro.weather.gap.GapFilling;
import java.time.LocalDate;
import java.util.SplittableRandom;
import org.hipparchus.stat.descriptive.DescriptiveStatistics;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class ThermalTimeErrorTest {

  private static final LocalDate START = LocalDate.of(2014, 3, 1);
  private static final DegreeDayModel ABOVE_TEN =
      DegreeDayModel.singleSine(
          Thresholds.between(new Temperature(10), new Temperature(30)), UpperCutoff.HORIZONTAL);

  private static final DegreeDayModel ABOVE_ZERO =
      DegreeDayModel.singleSine(Thresholds.above(new Temperature(0)), UpperCutoff.NONE);

  /** Days of 7 to 13 °C, wholly above 0 °C, with errors on days 3 to 7. */
  private static DailyTemperatures plain(double minError, double maxError) {
    var builder = DailyTemperatures.builder(START, START.plusDays(9));
    for (int i = 0; i < 10; i++) {
      boolean filled = i >= 2 && i < 7;
      builder.put(
          START.plusDays(i),
          7,
          13,
          filled ? minError : 0,
          filled ? maxError : 0,
          filled ? DayOrigin.INTERPOLATED : DayOrigin.OBSERVED);
    }
    return builder.build("Osmere Vale", Medium.shelterAir());
  }

  /**
   * Wholly above the threshold degree-days are the mean: five days of errors 1 and 2 °C, by hand.
   */
  @ParameterizedTest
  @CsvSource({
    // dayToDay, minToMax, variance: 5 (1/4 + 4/4 + 2 r·1·2/4) for independent days; 25 times for
    // full
    "0, 0, 6.25",
    "0, 0.5, 8.75",
    "1, 0, 31.25",
    "1, 1, 56.25",
    "0.5, 0, 13.90625"
  })
  void agreesWithHandCalculation(double dayToDay, double minToMax, double variance) {
    var error =
        ThermalTimeError.of(
            ABOVE_ZERO, plain(1, 2), START, new ErrorCorrelation(dayToDay, minToMax));
    assertThat(error.totalStandardErrorC()).isCloseTo(Math.sqrt(variance), within(1e-9));
    assertThat(error.expectedExcessCAtStartOf(START.plusDays(10))).isCloseTo(0, within(1e-9));
    assertThat(error.standardErrorCAtStartOf(START.plusDays(2))).isZero();
    assertThat(error.standardErrorCAtStartOf(START.plusDays(8)))
        .isEqualTo(error.totalStandardErrorC());
    assertThat(error.parts())
        .singleElement()
        .satisfies(part -> assertThat(part.degreeDaysC()).isCloseTo(50, within(1e-9)));
  }

  @Test
  void exactDaysHaveNoError() {
    var error = ThermalTimeError.of(ABOVE_ZERO, plain(0, 0), START, ErrorCorrelation.FULL);
    assertThat(error.totalStandardErrorC()).isZero();
    assertThat(error.parts()).isEmpty();
    var date = error.reached(new ThermalTime(55), 0.9).orElseThrow();
    assertThat(date.standardErrorDays()).isZero();
    assertThat(date.earliest()).contains(START.plusDays(5));
    assertThat(date.latest()).contains(START.plusDays(5));
  }

  /** 10 °C·d a day, error 10 °C·d of the sum at the end: the date moves by a day. */
  @Test
  void theDateMovesByTheErrorOverTheDailySum() {
    var error = ThermalTimeError.of(ABOVE_ZERO, plain(2, 2), START, new ErrorCorrelation(1, 1));
    assertThat(error.totalStandardErrorC()).isCloseTo(10, within(1e-9));
    var date = error.reached(new ThermalTime(85), 0.6826894921).orElseThrow();
    assertThat(date.reached().day()).isEqualTo(START.plusDays(8));
    assertThat(date.standardErrorDays()).isCloseTo(1, within(1e-6));
    assertThat(date.earliest()).contains(START.plusDays(7));
    assertThat(date.latest()).contains(START.plusDays(9));
    assertThat(error.reached(new ThermalTime(95), 0.9).orElseThrow().latest()).isEmpty();
    assertThat(error.reached(new ThermalTime(101), 0.9)).isEmpty();
    assertThat(date.toString()).contains("68 % from 2014-03-08 to 2014-03-10");
  }

  private static FilledDays gappySpring() {
    var series =
        SeattleDays.without(
            SeattleDays.without(
                SeattleDays.without(SeattleDays.all(), "2014-03-10", "2014-03-24"),
                "2014-04-20",
                "2014-04-22"),
            "2014-05-05",
            "2014-06-10");
    return GapFilling.withDefaults()
        .interpolateUpTo(3)
        .climatology(ClimateNormals.of(SeattleDays.all().upTo(LocalDate.of(2013, 12, 31))))
        .fill(series);
  }

  /**
   * Monte Carlo with the same error process, seeded: standard error, expected excess and the spread
   * of the date. Thresholds lie where spring days cross them, so that the answer is bent.
   */
  @ParameterizedTest
  @EnumSource(
      value = UpperCutoff.class,
      names = {"NONE", "HORIZONTAL"})
  void agreesWithMonteCarlo(UpperCutoff cutoff) {
    var filled = gappySpring();
    var model =
        DegreeDayModel.singleSine(
            Thresholds.between(new Temperature(8), new Temperature(20)), cutoff);
    var end = LocalDate.of(2014, 7, 15);
    var error =
        ThermalTimeError.of(
            model, new FilledDays(filled.daily().upTo(end), filled.gaps(), filled.notes()), START);
    var random = new SplittableRandom(17);
    double target = 0.7 * error.scale().totalC();
    var totals = new DescriptiveStatistics();
    var dates = new DescriptiveStatistics();
    for (int draw = 0; draw < 4000; draw++) {
      var scale = ThermalTimeScale.of(model, drawn(filled, end, random), START);
      totals.addValue(scale.totalC());
      dates.addValue(scale.daysUntil(target));
    }
    double excess = error.expectedExcessCAtStartOf(end.plusDays(1));
    assertThat(error.totalStandardErrorC())
        .isCloseTo(totals.getStandardDeviation(), within(0.06 * totals.getStandardDeviation()));
    assertThat(error.scale().totalC() + excess)
        .isCloseTo(totals.getMean(), within(0.15 * totals.getStandardDeviation()));
    var date = error.reached(new ThermalTime(target), 0.9).orElseThrow();
    assertThat(date.standardErrorDays())
        .isCloseTo(dates.getStandardDeviation(), within(0.12 * dates.getStandardDeviation()));
    assertThat((double) date.earliest().orElseThrow().toEpochDay() - START.toEpochDay())
        .isCloseTo(dates.getPercentile(5), within(1.6));
    assertThat((double) date.latest().orElseThrow().toEpochDay() - START.toEpochDay())
        .isCloseTo(dates.getPercentile(95), within(1.6));
  }

  /** Days of a gap from its error process: independent code, day by day with two noises. */
  private static DailyTemperatures drawn(
      FilledDays filled, LocalDate end, SplittableRandom random) {
    var daily = filled.daily().between(START, end);
    var builder = DailyTemperatures.builder(START, end);
    daily.copyInto(builder, START);
    for (var gap : filled.gaps()) {
      double u = random.nextGaussian();
      double v = mixed(gap.correlation().minToMax(), u, random);
      double phi = gap.correlation().dayToDay();
      for (int i = 0; i < gap.days().days(); i++) {
        var day = gap.days().first().plusDays(i);
        double fresh = random.nextGaussian();
        double other = mixed(gap.correlation().minToMax(), fresh, random);
        u = i == 0 ? u : phi * u + Math.sqrt(1 - phi * phi) * fresh;
        v = i == 0 ? v : phi * v + Math.sqrt(1 - phi * phi) * other;
        double min = daily.minCelsius(day) + u * daily.minStandardErrorCelsius(day);
        double max = daily.maxCelsius(day) + v * daily.maxStandardErrorCelsius(day);
        builder.put(day, Math.min(min, max), Math.max(min, max), daily.origin(day));
      }
    }
    return builder.build(daily.place(), daily.medium());
  }

  private static double mixed(double correlation, double with, SplittableRandom random) {
    return correlation * with + Math.sqrt(1 - correlation * correlation) * random.nextGaussian();
  }

  /** The truth is known: sums of the filled series miss it by what is stated, over many gaps. */
  @Test
  void statedErrorsCoverTheTruthOnOpenData() {
    var all = SeattleDays.all();
    int inside = 0;
    int count = 0;
    for (int year = 2012; year <= 2015; year++) {
      for (int shift = 0; shift < 120; shift += 4) {
        var first = LocalDate.of(year, 4, 10).plusDays(shift);
        var series =
            SeattleDays.without(all, first.toString(), first.plusDays(9).toString())
                .between(LocalDate.of(year, 3, 1), LocalDate.of(year, 9, 30));
        var normals = ClimateNormals.of(SeattleDays.without(all, year + "-01-01", year + "-12-31"));
        var filled = GapFilling.withDefaults().climatology(normals).fill(series);
        var error = ThermalTimeError.of(ABOVE_TEN, filled, series.firstDay());
        double truth =
            ThermalTimeScale.of(
                    ABOVE_TEN, all.between(series.firstDay(), series.lastDay()), series.firstDay())
                .totalC();
        double miss = Math.abs(error.scale().totalC() - truth);
        inside += miss <= 1.645 * error.totalStandardErrorC() ? 1 : 0;
        count++;
      }
    }
    assertThat(inside / (double) count).isBetween(0.82, 0.97);
  }

  @Test
  void differentGapsAreIndependentAndStopAtOpenDays() {
    var filled = gappySpring();
    var error = ThermalTimeError.of(ABOVE_TEN, filled, START);
    assertThat(error.parts()).hasSize(3);
    double squares =
        error.parts().stream().mapToDouble(p -> p.standardErrorC() * p.standardErrorC()).sum();
    assertThat(error.totalStandardErrorC()).isCloseTo(Math.sqrt(squares), within(1e-9));
    assertThat(error.presentation().toText())
        .contains("2014-05-05 to 2014-06-10 (37 days)", "climate normal");
    assertThat(error.working().steps()).hasSize(4);
    assertThat(error.working().toText()).contains("√((", "37 days");
    var open =
        GapFilling.withDefaults()
            .fill(SeattleDays.without(SeattleDays.all(), "2014-05-05", "2014-06-10"));
    assertThat(ThermalTimeError.of(ABOVE_TEN, open, START).scale().lastDay())
        .isEqualTo(LocalDate.of(2014, 5, 4));
  }

  @Test
  void refusesLevelsOutsideZeroToOne() {
    var error = ThermalTimeError.of(ABOVE_TEN, plain(1, 1), START, ErrorCorrelation.NONE);
    assertThatThrownBy(() -> error.reached(new ThermalTime(10), 1))
        .isInstanceOf(InputProblem.class);
    assertThatThrownBy(() -> error.standardErrorCAtStartOf(START.minusDays(1)))
        .isInstanceOf(InputProblem.class);
  }
}
