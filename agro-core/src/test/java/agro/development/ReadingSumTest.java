package agro.development;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import agro.report.InputProblem;
import agro.units.Temperature;
import agro.weather.Medium;
import agro.weather.TemperatureReadings;
import java.time.Duration;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class ReadingSumTest {

  private static final LocalDate FIRST = LocalDate.of(2026, 3, 28);
  private static final ZoneOffset STANDARD = ZoneOffset.ofHours(1);
  private static final ZoneId CIVIL = ZoneId.of("Europe/Zurich");
  private static final Thresholds ABOVE_TWO = Thresholds.above(new Temperature(2));
  private static final Thresholds TEN_TO_THIRTY =
      Thresholds.between(new Temperature(10), new Temperature(30));

  private static TemperatureReadings every(
      Duration step, int count, DoubleUnaryOperator celsiusAtHour) {
    long midnight = FIRST.atStartOfDay().toEpochSecond(STANDARD);
    return TemperatureReadings.of(
        "Sand Lane",
        Medium.shelterAir(),
        STANDARD,
        LongStream.range(0, count).map(i -> midnight + i * step.toSeconds()).toArray(),
        IntStream.range(0, count)
            .mapToDouble(i -> celsiusAtHour.applyAsDouble(i * step.toSeconds() / 3600.0))
            .toArray());
  }

  /** 5 to 25 °C, coldest at five in the morning by standard time. */
  private static double daily(double hour) {
    return 15 - 10 * Math.cos(2 * Math.PI * (hour - 5) / 24);
  }

  private static TemperatureReadings without(TemperatureReadings readings, int from, int to) {
    var keep = IntStream.range(0, readings.size()).filter(i -> i < from || i >= to).toArray();
    return TemperatureReadings.of(
        readings.place(),
        readings.medium(),
        readings.dayOffset(),
        IntStream.of(keep).mapToLong(readings::epochSecond).toArray(),
        IntStream.of(keep).mapToDouble(readings::celsius).toArray());
  }

  @ParameterizedTest
  @EnumSource(ReadingRule.class)
  void aDayOfHourlyReadingsIsTheirMean(ReadingRule rule) {
    var days =
        ReadingSum.of(ABOVE_TWO, UpperCutoff.NONE)
            .with(rule)
            .daily(every(Duration.ofHours(1), 48, ReadingSumTest::daily));
    assertThat(days.degreeDaysC(FIRST)).isCloseTo(13, within(1e-9));
    assertThat(days.basis(FIRST.plusDays(1))).isEqualTo(DayBasis.COMPLETE);
    assertThat(days.model().method()).isEqualTo(DegreeDayMethod.SUM_OVER_READINGS);
  }

  /**
   * Hourly readings of the same days cut by a civil calendar. The day of the change to summer time
   * has 23 hours and counts 12.753 °C·d, not 13.307, the mean of its readings; the sums over the
   * days are those of standard time. Values: computed with NumPy from the sine.
   */
  @Test
  void daysOf23And25HoursCountTheirOwnTime() {
    var readings = every(Duration.ofHours(1), 24 * 240, ReadingSumTest::daily);
    var sum = ReadingSum.of(ABOVE_TWO, UpperCutoff.NONE).with(ReadingRule.HELD);
    var civil = sum.daily(readings, CIVIL);
    var spring = LocalDate.of(2026, 3, 29);
    var autumn = LocalDate.of(2026, 10, 25);
    assertThat(civil.degreeDaysC(spring)).isCloseTo((13 * 24 - (daily(23) - 2)) / 24, within(1e-9));
    assertThat(civil.degreeDaysC(spring.plusDays(1))).isCloseTo(13, within(1e-9));
    assertThat(civil.degreeDaysC(autumn)).isCloseTo((13 * 24 + (daily(23) - 2)) / 24, within(1e-9));
    double standard = sum.daily(readings).knownTotalC();
    assertThat(civil.knownTotalC()).isCloseTo(standard, within(1e-6));
  }

  /** Eight and 24 samples of a sine day that barely crosses: 0.125 and 0.1593, exact 0.1628. */
  @Test
  void coarseReadingsMissWhatIsBetweenThem() {
    DoubleUnaryOperator sine = hour -> 7.5 - 3.5 * Math.cos(2 * Math.PI * hour / 24);
    var sum = ReadingSum.of(TEN_TO_THIRTY, UpperCutoff.NONE).with(ReadingRule.HELD);
    assertThat(sum.daily(every(Duration.ofHours(3), 8, sine)).degreeDaysC(FIRST))
        .isCloseTo(0.125, within(5e-4));
    assertThat(sum.daily(every(Duration.ofHours(1), 24, sine)).degreeDaysC(FIRST))
        .isCloseTo(0.1593, within(5e-5));
    double exact = DegreeDayMethod.SINGLE_SINE.areaAbove(4, 11, 10);
    var fine = ReadingSum.of(TEN_TO_THIRTY, UpperCutoff.NONE);
    assertThat(fine.daily(every(Duration.ofMinutes(1), 1440, sine)).degreeDaysC(FIRST))
        .isCloseTo(exact, within(1e-5));
  }

  /** Two readings and a line between them are half a triangle day. */
  @ParameterizedTest
  @EnumSource(UpperCutoff.class)
  void straightLinesAreTriangles(UpperCutoff cutoff) {
    var readings = every(Duration.ofHours(12), 3, hour -> hour == 12 ? 38 : 4);
    var sum = ReadingSum.of(TEN_TO_THIRTY, cutoff).withLongestGap(Duration.ofHours(12));
    var triangle = DegreeDayModel.of(DegreeDayMethod.SINGLE_TRIANGLE, TEN_TO_THIRTY, cutoff);
    assertThat(sum.daily(readings).degreeDaysC(FIRST))
        .isCloseTo(triangle.degreeDaysC(4, 38), within(1e-12));
  }

  @Test
  void readingsAreWeightedByElapsedTime() {
    long midnight = FIRST.atStartOfDay().toEpochSecond(STANDARD);
    var uneven =
        TemperatureReadings.of(
            "Sand Lane",
            Medium.shelterAir(),
            STANDARD,
            new long[] {midnight, midnight + 3600, midnight + 12 * 3600, midnight + 86_400},
            new double[] {20, 12, 22, 22});
    var sum =
        ReadingSum.of(TEN_TO_THIRTY, UpperCutoff.NONE)
            .with(ReadingRule.HELD)
            .withLongestGap(Duration.ofHours(12));
    assertThat(sum.daily(uneven).degreeDaysC(FIRST))
        .isCloseTo((1 * 10 + 11 * 2 + 12 * 12) / 24.0, within(1e-12));
  }

  @Test
  void longGapsMakeADayMissingAndShortOnesAreBridged() {
    var whole = every(Duration.ofHours(1), 72, ReadingSumTest::daily);
    var sum = ReadingSum.of(ABOVE_TWO, UpperCutoff.NONE);
    var second = FIRST.plusDays(1);
    var bridged = sum.daily(without(whole, 30, 32)).degreeDaysC(second);
    assertThat(bridged).isCloseTo(13, within(0.1));
    var gap = sum.daily(without(whole, 30, 36));
    assertThat(gap.degreeDaysC(second)).isNaN();
    assertThat(gap.basis(second)).isEqualTo(DayBasis.MISSING);
    assertThat(gap.basis(FIRST)).isEqualTo(DayBasis.COMPLETE);
    assertThat(gap.daysWith(DayBasis.MISSING)).containsExactly(second);
    var partly = sum.withLeastShareOfDay(0.7).daily(without(whole, 30, 36));
    assertThat(partly.basis(second)).isEqualTo(DayBasis.PARTLY_READ);
    assertThat(partly.degreeDaysC(second)).isBetween(11.0, 15.0);
    assertThat(sum.withLeastShareOfDay(0.9).daily(without(whole, 30, 36)).degreeDaysC(second))
        .isNaN();
  }

  /** A day of which 18 hours were read at 12 °C counts as one of 24 such hours. */
  @Test
  void partlyReadDaysCountWithTheMeanRateOfTheirReadPart() {
    var constant = without(every(Duration.ofHours(1), 24, hour -> 12), 8, 14);
    var days =
        ReadingSum.of(TEN_TO_THIRTY, UpperCutoff.HORIZONTAL)
            .withLeastShareOfDay(0.5)
            .daily(constant);
    assertThat(days.degreeDaysC(FIRST)).isCloseTo(2, within(1e-12));
  }

  @Test
  void aTotalIsNeverBelowZero() {
    var hot = every(Duration.ofHours(1), 24, hour -> 55);
    assertThat(ReadingSum.of(TEN_TO_THIRTY, UpperCutoff.INTERMEDIATE).daily(hot).degreeDaysC(FIRST))
        .isZero();
  }

  @Test
  void sumsFeedTheScale() {
    var daily =
        ReadingSum.of(ABOVE_TWO, UpperCutoff.NONE)
            .daily(every(Duration.ofHours(1), 72, ReadingSumTest::daily));
    var scale = ThermalTimeScale.of(daily, FIRST, MissingDayPolicy.REFUSE);
    assertThat(scale.totalC()).isCloseTo(daily.knownTotalC(), within(1e-9));
    assertThat(scale.degreeDaysCAtStartOf(FIRST.plusDays(2))).isCloseTo(26, within(1e-6));
  }

  @Test
  void refusesWhatItCannotAddUp() {
    var sum = ReadingSum.of(ABOVE_TWO, UpperCutoff.NONE);
    var none =
        TemperatureReadings.of(
            "Sand Lane", Medium.shelterAir(), STANDARD, new long[0], new double[0]);
    assertThatThrownBy(() -> sum.daily(none))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("no reading at all");
    assertThatThrownBy(() -> sum.withLongestGap(Duration.ZERO)).isInstanceOf(InputProblem.class);
    assertThatThrownBy(() -> sum.withLeastShareOfDay(0)).isInstanceOf(InputProblem.class);
    assertThatThrownBy(() -> sum.withLeastShareOfDay(1.1)).isInstanceOf(InputProblem.class);
    var sine = DegreeDayModel.singleSine(ABOVE_TWO, UpperCutoff.NONE);
    assertThatThrownBy(() -> new ReadingSum(sine, ReadingRule.HELD, Duration.ofHours(1), 1))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("SUM_OVER_READINGS");
    assertThatThrownBy(() -> sum.model().degreeDaysC(5, 20))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("ReadingSum");
  }
}
