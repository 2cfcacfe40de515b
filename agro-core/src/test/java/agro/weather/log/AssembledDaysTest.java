package agro.weather.log;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import agro.report.InputProblem;
import agro.weather.Medium;
import agro.weather.TemperatureReadings;
import java.time.Duration;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class AssembledDaysTest {

  private static final LocalDate DAY = LocalDate.of(2021, 7, 1);

  /** Readings every quarter of an hour from midnight, the warmest at the end of each day. */
  private static TemperatureReadings quarters(int readings, IntStream without) {
    var left = without.boxed().toList();
    var kept = IntStream.range(0, readings).filter(i -> !left.contains(i)).toArray();
    long start = DAY.toEpochDay() * 86_400;
    return TemperatureReadings.of(
        "Sand Lane",
        Medium.shelterAir(),
        ZoneOffset.UTC,
        IntStream.of(kept).mapToLong(i -> start + 900L * i).toArray(),
        IntStream.of(kept).mapToDouble(i -> i % 96 / 10.0).toArray());
  }

  @Test
  void daysAreWholeWithThreeQuartersOfTheirReadings() {
    var three = AssembledDays.of(quarters(288, IntStream.range(100, 115)), CompletenessRule.USUAL);
    assertThat(three.daily().missingDays()).isEmpty();
    assertThat(three.daily().maxCelsius(DAY)).isEqualTo(9.5);
    assertThat(three.report().toString()).contains("one every 15 min");

    var gap = AssembledDays.of(quarters(288, IntStream.range(100, 116)), CompletenessRule.USUAL);
    assertThat(gap.daily().missingDays()).containsExactly(DAY.plusDays(1));
    assertThat(gap.report().toString()).contains("2021-07-02", "no gap above 4 h");

    var spread = IntStream.range(96, 192).filter(i -> i % 96 % 4 != 0).limit(25);
    var thin = AssembledDays.of(quarters(288, spread), CompletenessRule.USUAL);
    assertThat(thin.daily().missingDays()).containsExactly(DAY.plusDays(1));
    assertThat(
            AssembledDays.of(
                    quarters(288, IntStream.range(100, 116)),
                    new CompletenessRule(0.75, Duration.ofHours(5)))
                .daily()
                .missingDays())
        .isEmpty();
  }

  /** Four hours in five are there, but the evening or the night may hold the extreme. */
  @Test
  void gapsAtTheEndsOfADayCountToo() {
    var evening =
        AssembledDays.of(quarters(288, IntStream.range(174, 192)), CompletenessRule.USUAL);
    assertThat(evening.daily().missingDays()).containsExactly(DAY.plusDays(1));
    var night = AssembledDays.of(quarters(288, IntStream.range(96, 114)), CompletenessRule.USUAL);
    assertThat(night.daily().missingDays()).containsExactly(DAY.plusDays(1));
    var shorter =
        AssembledDays.of(quarters(288, IntStream.range(177, 192)), CompletenessRule.USUAL);
    assertThat(shorter.daily().missingDays()).isEmpty();
  }

  @Test
  void nothingWithoutWholeDays() {
    assertThatThrownBy(
            () -> AssembledDays.of(quarters(40, IntStream.empty()), CompletenessRule.USUAL))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("none of 1 days is complete");
    assertThatThrownBy(
            () -> AssembledDays.of(quarters(1, IntStream.empty()), CompletenessRule.USUAL))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("at least two readings");
  }
}
