package agro.development;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import agro.report.InputProblem;
import agro.units.Temperature;
import agro.units.ThermalTime;
import agro.weather.DailyExtremes;
import agro.weather.DailyTemperatures;
import agro.weather.DayOrigin;
import agro.weather.Medium;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import org.junit.jupiter.api.Test;

/** Sums from a biofix, over gaps, and for other thresholds. */
class AccumulationTest {

  private static final LocalDate START = LocalDate.of(2001, 4, 1);
  private static final Thresholds EIGHT_TO_THIRTY =
      Thresholds.between(new Temperature(8), new Temperature(30));
  private static final DegreeDayModel MODEL =
      DegreeDayModel.singleSine(EIGHT_TO_THIRTY, UpperCutoff.HORIZONTAL);

  private static DailyTemperatures constant(double... celsius) {
    var days = new ArrayList<DailyExtremes>();
    for (int i = 0; i < celsius.length; i++) {
      if (!Double.isNaN(celsius[i])) {
        days.add(new DailyExtremes(START.plusDays(i), celsius[i], celsius[i]));
      }
    }
    return DailyTemperatures.of("Upper Croft", Medium.shelterAir(), days, DayOrigin.OBSERVED);
  }

  private static double[] repeated(double celsius, int days) {
    var values = new double[days];
    Arrays.fill(values, celsius);
    return values;
  }

  /** From six in the evening a quarter of the first day's 8 °C·d is left. */
  @Test
  void aStartAtAnHourLeavesOutTheDayBeforeIt() {
    var scale = ThermalTimeScale.of(MODEL, constant(16, 12, 12), START.atTime(18, 0));
    assertThat(scale.startFraction()).isEqualTo(0.75);
    assertThat(scale.sumsC()).containsExactly(0, 2, 6, 10);
    assertThat(scale.degreeDaysCAfter(0.5)).isZero();
    assertThat(scale.degreeDaysCAfter(0.875)).isCloseTo(1, within(1e-12));
    assertThat(scale.daysUntil(0)).isEqualTo(0.75);
    assertThat(scale.reached(ThermalTime.ZERO)).contains(new Reached(START, 0.75));
    assertThat(scale.reached(new ThermalTime(1))).contains(new Reached(START, 0.875));
    assertThat(scale.reached(new ThermalTime(1)).orElseThrow().moment())
        .isEqualTo(START.atTime(21, 0));
    assertThat(scale.reached(new ThermalTime(4))).contains(new Reached(START.plusDays(1), 0.5));
    assertThat(scale.toString()).contains("2001-04-01T18:00");
    assertThat(ThermalTimeScale.of(MODEL, constant(16, 12), START.atStartOfDay()).sumsC())
        .containsExactly(ThermalTimeScale.of(MODEL, constant(16, 12), START).sumsC());
  }

  /**
   * Tuta absoluta, lower threshold 8 °C and 416.7 °C·d (Krechemer & Foerster 2015, Eur. J. Entomol.
   * 112): a biofix five days late at 20 °C misses 60 °C·d, 14.4 % of K, which is 3 days at 28 °C
   * and 15 days at 12 °C.
   */
  @Test
  void aLateBiofixCostsMoreDaysInTheCold() {
    var start = START.plusDays(10);
    for (double[] afterwards : new double[][] {{28, 3}, {12, 15}}) {
      var days = new double[200];
      Arrays.fill(days, afterwards[0]);
      Arrays.fill(days, 0, 15, 20);
      var temperatures = constant(days);
      var requirement = new ThermalTime(416.7);
      var rightly = ThermalTimeScale.of(MODEL, temperatures, start).reached(requirement);
      var late = ThermalTimeScale.of(MODEL, temperatures, start.plusDays(5)).reached(requirement);
      assertThat(
              late.orElseThrow().daysSinceStartOf(start)
                  - rightly.orElseThrow().daysSinceStartOf(start))
          .isCloseTo(afterwards[1], within(1e-9));
    }
    assertThat(60 / 416.7).isCloseTo(0.144, within(5e-4));
  }

  @Test
  void certainBoundsCountAGapFromNothingToTheDistanceOfTheThresholds() {
    var daily = MODEL.daily(constant(18, 18, Double.NaN, 18, 18));
    var bounds = ThermalTimeBounds.certain(daily, START);
    assertThat(bounds.low().totalC()).isCloseTo(40, within(1e-12));
    assertThat(bounds.high().totalC()).isCloseTo(62, within(1e-12));
    assertThat(bounds.missingDays()).containsExactly(START.plusDays(2));
    assertThat(bounds.earliest(new ThermalTime(31)).orElseThrow())
        .isEqualTo(new Reached(START.plusDays(2), 0.5));
    assertThat(bounds.latest(new ThermalTime(31)).orElseThrow().day()).isEqualTo(START.plusDays(4));
    assertThat(bounds.latest(new ThermalTime(41))).isEmpty();
    assertThat(bounds.presentation().toText()).contains("2001-04-03", "40.0 to 62.0 °C·d");
    var uncut = DegreeDayModel.singleSine(EIGHT_TO_THIRTY, UpperCutoff.NONE);
    assertThatThrownBy(
            () -> ThermalTimeBounds.certain(uncut.daily(constant(18, Double.NaN, 18)), START))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("HORIZONTAL");
  }

  @Test
  void nearbyDaysBoundAGap() {
    var daily = MODEL.daily(constant(30, 12, 18, Double.NaN, 16, 28));
    var bounds = ThermalTimeBounds.ofNearbyDays(daily, START, 2);
    double known = 22 + 4 + 10 + 8 + 20;
    assertThat(bounds.low().totalC()).isCloseTo(known + 4, within(1e-12));
    assertThat(bounds.high().totalC()).isCloseTo(known + 20, within(1e-12));
    var wide =
        MODEL.daily(constant(18, Double.NaN, Double.NaN, Double.NaN, Double.NaN, Double.NaN, 18));
    assertThatThrownBy(() -> ThermalTimeBounds.ofNearbyDays(wide, START, 2))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("2001-04-04");
    assertThatThrownBy(() -> ThermalTimeBounds.ofNearbyDays(wide, START, 0))
        .isInstanceOf(InputProblem.class);
  }

  /**
   * At a constant 18 °C, 100 °C·d above 8 °C take 10 days, above 10 °C 12.5 and above 6 °C 8.33.
   */
  @Test
  void sensitivityMovesTheThresholdAloneAndWithTheRequirement() {
    var table =
        ThresholdSensitivity.of(
            MODEL,
            constant(repeated(18, 20)),
            START,
            new ThermalTime(100),
            new Temperature(18),
            -2,
            2);
    assertThat(table.rows()).hasSize(3);
    assertThat(table.chosen().totalC()).isCloseTo(200, within(1e-9));
    var warmer = table.rows().get(2);
    assertThat(warmer.lower()).isEqualTo(new Temperature(10));
    assertThat(warmer.totalC()).isCloseTo(160, within(1e-9));
    assertThat(warmer.alone().orElseThrow().daysSinceStartOf(START)).isCloseTo(12.5, within(1e-9));
    assertThat(warmer.together().degreeDaysC()).isCloseTo(80, within(1e-9));
    for (var line : table.rows()) {
      assertThat(line.withRequirement().orElseThrow().daysSinceStartOf(START))
          .isCloseTo(10, within(1e-9));
    }
    assertThat(table.table().toText()).contains("2001-04-13", "2.5", "-1.7");
    assertThatThrownBy(
            () ->
                ThresholdSensitivity.of(
                    MODEL,
                    constant(repeated(18, 20)),
                    START,
                    new ThermalTime(100),
                    new Temperature(9)))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("9 °C");
    assertThatThrownBy(
            () ->
                ThresholdSensitivity.of(
                    MODEL, constant(18), START, ThermalTime.ZERO, new Temperature(20)))
        .isInstanceOf(InputProblem.class);
  }

  @Test
  void comparisonRunsAllMethodsOverTheSameDays() {
    var comparison =
        MethodComparison.of(EIGHT_TO_THIRTY, constant(repeated(18, 20)), START)
            .with(new ThermalTime(100));
    var lines = comparison.lines();
    assertThat(lines).hasSize(2 * 2 + 4 * 4);
    assertThat(lines)
        .allSatisfy(
            line -> {
              assertThat(line.totalC()).isCloseTo(200, within(1e-9));
              assertThat(line.reached().orElseThrow().daysSinceStartOf(START))
                  .isCloseTo(10, within(1e-9));
            });
    assertThat(comparison.presentation().toText()).contains("double sine", "1 day without");
    assertThatThrownBy(
            () -> MethodComparison.of(EIGHT_TO_THIRTY, constant(18, Double.NaN, 18), START).lines())
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("2001-04-02");
  }
}
