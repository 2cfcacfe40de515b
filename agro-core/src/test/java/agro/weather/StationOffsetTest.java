package agro.weather;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import agro.report.InputProblem;
import java.time.LocalDate;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class StationOffsetTest {

  private static final LocalDate FIRST = LocalDate.of(2001, 5, 1);

  private static DailyTemperatures series(
      int days, IntToDoubleFunction min, IntToDoubleFunction max) {
    var list =
        IntStream.range(0, days)
            .mapToObj(
                i ->
                    new DailyExtremes(
                        FIRST.plusDays(i), min.applyAsDouble(i), max.applyAsDouble(i)))
            .toList();
    return DailyTemperatures.of("Place", Medium.shelterAir(), list, DayOrigin.OBSERVED);
  }

  /** Minima 2 °C lower, maxima 1 °C higher in May (31 days) and 2 °C higher in June (30 days). */
  @Test
  void minimaAndMaximaHaveTheirOwnOffsets() {
    var station = series(61, i -> 5 + i % 4, i -> 15 + i % 7);
    var field = series(61, i -> 3 + i % 4, i -> 16 + i % 7 + (i < 31 ? 0 : 1));
    var offset = StationOffset.fit(field, station);
    assertThat(offset.minimum().meanCelsius()).isCloseTo(-2, within(1e-12));
    assertThat(offset.minimum().dayToDaySdCelsius()).isCloseTo(0, within(1e-12));
    assertThat(offset.maximum().meanCelsius()).isCloseTo(1 + 30 / 61.0, within(1e-12));
    // Two monthly means, 1 and 2 °C: standard deviation 1/√2.
    assertThat(offset.errorMaxCelsius()).isCloseTo(Math.sqrt(0.5), within(1e-12));
    assertThat(offset.days()).isEqualTo(61);
    assertThat(offset.months()).isEqualTo(2);
    var applied = offset.apply(station, 0.5, -0.5);
    assertThat(applied.minCelsius(FIRST)).isCloseTo(3.5, within(1e-12));
    assertThat(applied.origin(FIRST)).isEqualTo(DayOrigin.NEIGHBOUR);
    assertThat(offset.presentation().toText()).contains("minimum", "-2.00", "61 days");
  }

  @Test
  void oneMonthTakesTheDayToDaySpread() {
    var offset = StationOffset.fit(series(31, i -> i % 2, i -> 20), series(31, i -> 0, i -> 20));
    assertThat(offset.months()).isEqualTo(1);
    assertThat(offset.errorMinCelsius()).isEqualTo(offset.minimum().dayToDaySdCelsius());
    assertThat(offset.errorMinCelsius()).isGreaterThan(0.4);
  }

  @Test
  void crossedExtremesMeetInTheMiddleAndAreCounted() {
    var station = series(31, i -> 10, i -> i == 0 ? 11 : 20);
    var field = series(31, i -> 12, i -> i == 0 ? 12 : 19);
    var offset = StationOffset.fit(field, station);
    assertThat(offset.crossedDays()).isEqualTo(1);
    var applied = offset.apply(station);
    assertThat(applied.minCelsius(FIRST)).isEqualTo(applied.maxCelsius(FIRST));
  }

  @Test
  void refusesFewDays() {
    assertThatThrownBy(
            () -> StationOffset.fit(series(29, i -> 1, i -> 2), series(60, i -> 1, i -> 2)))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("29 days observed at both");
  }
}
