package agro.weather.gap;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import agro.report.InputProblem;
import agro.weather.DailyTemperatures;
import agro.weather.DayOrigin;
import agro.weather.Medium;
import agro.weather.TemperatureReadings;
import java.time.Duration;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.SplittableRandom;
import java.util.function.LongPredicate;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ReadingGapFillingTest {

  private static final ZoneOffset OFFSET = ZoneOffset.ofHours(2);
  private static final LocalDate FIRST = LocalDate.of(2025, 5, 1);
  private static final int HOUR = 3600;

  /** Second of an hour of a day, days and hours counted from 0. */
  private static long second(int day, int hour) {
    return FIRST.plusDays(day).toEpochDay() * 86_400L
        + hour * (long) HOUR
        - OFFSET.getTotalSeconds();
  }

  /** Hourly temperatures: a sine through the day, warm and cold days, and hourly scatter. */
  private static TemperatureReadings hourly(int days, double weather, LongPredicate isKept) {
    var random = new SplittableRandom(5);
    var seconds = LongStream.range(0, 24L * days).map(i -> second(0, 0) + i * HOUR).toArray();
    var celsius = new double[seconds.length];
    double slow = 0;
    double fast = 0;
    for (int i = 0; i < celsius.length; i++) {
      slow = 0.99 * slow + Math.sqrt(1 - 0.99 * 0.99) * random.nextGaussian();
      fast = 0.6 * fast + 0.8 * random.nextGaussian();
      double shape = 6 * Math.sin(2 * Math.PI * (i % 24 - 9) / 24.0);
      celsius[i] = 14 + shape + weather * (3 * slow + 0.4 * fast);
    }
    var kept =
        LongStream.range(0, seconds.length).filter(i -> isKept.test(seconds[(int) i])).toArray();
    return TemperatureReadings.of(
        "Osmere Vale",
        Medium.shelterAir(),
        OFFSET,
        LongStream.of(kept).map(i -> seconds[(int) i]).toArray(),
        LongStream.of(kept).mapToDouble(i -> celsius[(int) i]).toArray());
  }

  private static LongPredicate without(int day, int fromHour, int hours) {
    long from = second(day, fromHour);
    return second -> second < from || second >= from + (long) hours * HOUR;
  }

  private static DailyTemperatures truth(double weather) {
    return ReadingGapFilling.withDefaults().fill(hourly(40, weather, second -> true)).daily();
  }

  @Test
  void aWholeLogStaysAsItIs() {
    var readings = hourly(3, 1, second -> true);
    var filled = ReadingGapFilling.withDefaults().fill(readings);
    assertThat(filled.readings()).isEqualTo(readings);
    assertThat(filled.gaps()).isEmpty();
    assertThat(filled.daily().size()).isEqualTo(3);
    assertThat(filled.daily().origin(FIRST)).isEqualTo(DayOrigin.OBSERVED);
  }

  @Test
  void threeHoursLieOnALineAndMarkTheDay() {
    var readings = hourly(40, 1, without(20, 13, 3));
    var filled = ReadingGapFilling.withDefaults().fill(readings);
    assertThat(filled.readings().size()).isEqualTo(40 * 24);
    var gap = filled.gaps().get(0);
    assertThat(gap.method()).isEqualTo(ReadingGapMethod.STRAIGHT_LINE);
    assertThat(gap.length()).isEqualTo(Duration.ofHours(3));
    assertThat(gap.first().toString()).isEqualTo("2025-05-21T13:00+02:00");
    int at = 20 * 24 + 13;
    assertThat(filled.isFilled(at - 1)).isFalse();
    assertThat(filled.isFilled(at)).isTrue();
    assertThat(filled.isFilled(at + 3)).isFalse();
    var values = filled.readings();
    assertThat(values.celsius(at + 1))
        .isCloseTo(0.5 * (values.celsius(at - 1) + values.celsius(at + 3)), within(1e-12));
    assertThat(filled.standardErrorCelsius(at - 1)).isZero();
    assertThat(filled.standardErrorCelsius(at + 1)).isBetween(0.4, 3.0);
    var day = FIRST.plusDays(20);
    assertThat(filled.daily().origin(day)).isEqualTo(DayOrigin.PARTLY_FILLED);
    // The warmest hours are gone: the maximum is not sure, the minimum of the night is.
    assertThat(filled.daily().maxStandardErrorCelsius(day)).isGreaterThan(0.2);
    assertThat(filled.daily().minStandardErrorCelsius(day)).isZero();
    assertThat(filled.daily().origin(day.plusDays(1))).isEqualTo(DayOrigin.OBSERVED);
  }

  /** Where all days are alike the shape gives the readings back and a line does not. */
  @Test
  void theShapeOfTheDayBringsTheAfternoonBack() {
    var filled = ReadingGapFilling.withDefaults().fill(hourly(20, 0, without(10, 8, 12)));
    var gap = filled.gaps().get(0);
    assertThat(gap.method()).isEqualTo(ReadingGapMethod.DIURNAL_SHAPE);
    assertThat(gap.errorCelsius()).isLessThan(1e-9);
    var whole = hourly(20, 0, second -> true);
    for (int i = 0; i < whole.size(); i++) {
      assertThat(filled.readings().celsius(i)).isCloseTo(whole.celsius(i), within(1e-9));
    }
    assertThat(filled.daily().maxCelsius(FIRST.plusDays(10))).isCloseTo(20, within(1e-9));
    assertThat(filled.presentation().toText())
        .contains("2025-05-11 08:00", "12.0", "after the same hours", "at least 50 %");
  }

  @Test
  void longGapsAndLimitsLeaveDaysMissing() {
    var readings = hourly(20, 1, without(10, 8, 30));
    var filled = ReadingGapFilling.withDefaults().fill(readings);
    assertThat(filled.gaps().get(0).isFilled()).isFalse();
    assertThat(filled.gaps().get(0).words()).contains("longer than what may be filled");
    assertThat(filled.daily().missingDays())
        .containsExactly(FIRST.plusDays(10), FIRST.plusDays(11));
    var longer =
        ReadingGapFilling.withDefaults().diurnalShapeUpTo(Duration.ofDays(2)).fill(readings);
    assertThat(longer.gaps().get(0).isFilled()).isTrue();
    // 16 of the 24 hours of the first day and 14 of the second are filled.
    assertThat(longer.daily().missingDays())
        .containsExactly(FIRST.plusDays(10), FIRST.plusDays(11));
    var lenient =
        ReadingGapFilling.withDefaults()
            .diurnalShapeUpTo(Duration.ofDays(2))
            .leastShareObserved(0.3)
            .fill(readings);
    assertThat(lenient.daily().missingDays()).isEmpty();
    var strict =
        ReadingGapFilling.withDefaults()
            .interpolateUpTo(Duration.ZERO)
            .diurnalShapeUpTo(Duration.ZERO)
            .fill(hourly(20, 1, without(10, 8, 1)));
    assertThat(strict.daily().missingDays()).containsExactly(FIRST.plusDays(10));
  }

  @Test
  void aShortLogCannotJudgeItsError() {
    var filled = ReadingGapFilling.withDefaults().fill(hourly(3, 1, without(1, 13, 2)));
    assertThat(filled.gaps().get(0).isFilled()).isFalse();
    assertThat(filled.gaps().get(0).words()).contains("only 2 other days");
  }

  @Test
  void firstAndLastDayNeedTheirEnds() {
    var filled =
        ReadingGapFilling.withDefaults()
            .fill(hourly(5, 1, s -> s >= second(0, 6) && s < second(4, 20)));
    assertThat(filled.daily().missingDays()).containsExactly(FIRST, FIRST.plusDays(4));
  }

  /** Gaps of many lengths at all hours: stated intervals of the daily extremes hold the truth. */
  @ParameterizedTest
  @ValueSource(ints = {2, 3, 6, 10})
  void statedErrorsOfTheExtremesAreHonest(int hours) {
    var truth = truth(1);
    int inside = 0;
    int count = 0;
    double misses = 0;
    double stated = 0;
    for (int day = 3; day < 37; day++) {
      for (int hour = day % 3; hour + hours < 24; hour += 3) {
        var daily =
            ReadingGapFilling.withDefaults().fill(hourly(40, 1, without(day, hour, hours))).daily();
        var date = FIRST.plusDays(day);
        double minError = daily.minStandardErrorCelsius(date);
        double maxError = daily.maxStandardErrorCelsius(date);
        double min = daily.minCelsius(date) - truth.minCelsius(date);
        double max = daily.maxCelsius(date) - truth.maxCelsius(date);
        misses += min * min + max * max;
        stated += minError * minError + maxError * maxError;
        if (maxError > 0.05) {
          count++;
          inside += Math.abs(max) <= 1.645 * maxError ? 1 : 0;
        }
        if (minError > 0.05) {
          count++;
          inside += Math.abs(min) <= 1.645 * minError ? 1 : 0;
        }
      }
    }
    assertThat(count).isGreaterThan(100);
    assertThat(inside / (double) count).isBetween(0.85, 0.97);
    assertThat(Math.sqrt(stated / misses)).isCloseTo(1, within(0.15));
  }

  @ParameterizedTest
  @ValueSource(doubles = {Double.NaN, 1e6})
  void asOfADayNothingLaterCounts(double nonsense) {
    var readings = hourly(40, 1, without(20, 9, 8));
    var asOf = FIRST.plusDays(21);
    var filling = ReadingGapFilling.withDefaults().asOf(asOf);
    var known = filling.fill(readings);
    int later = 0;
    while (!readings.day(later).isAfter(asOf)) {
      later++;
    }
    var seconds = readings.epochSeconds();
    var celsius = readings.celsius();
    int end = Double.isNaN(nonsense) ? later : celsius.length;
    for (int i = later; i < end; i++) {
      celsius[i] = nonsense;
    }
    var spoilt =
        filling.fill(
            TemperatureReadings.of(
                readings.place(),
                readings.medium(),
                OFFSET,
                Arrays.copyOf(seconds, end),
                Arrays.copyOf(celsius, end)));
    assertThat(spoilt.readings()).isEqualTo(known.readings());
    assertThat(spoilt.daily()).isEqualTo(known.daily());
    assertThat(spoilt.gaps()).isEqualTo(known.gaps());
    assertThat(known.daily().lastDay()).isEqualTo(asOf);
    assertThat(known.gaps().get(0).isFilled()).isTrue();
  }

  @Test
  void refusesWhatCannotBe() {
    var filling = ReadingGapFilling.withDefaults();
    assertThatThrownBy(() -> filling.interpolateUpTo(Duration.ofHours(-1)))
        .isInstanceOf(InputProblem.class);
    assertThatThrownBy(() -> filling.leastShareObserved(0)).isInstanceOf(InputProblem.class);
    assertThatThrownBy(() -> filling.fill(hourly(1, 1, s -> s == second(0, 3))))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("1 readings");
  }
}
