package agro.weather.climate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import agro.report.InputProblem;
import agro.weather.DailyExtremes;
import agro.weather.DailyTemperatures;
import agro.weather.DayOrigin;
import agro.weather.Medium;
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

  /** Offset 1, 2 and 4 °C in the seasons from October on: sd of (1, 2, 4) times √(1 + 1/3). */
  @Test
  void threeSeasonsAcrossNewYearTellWhatANewOneMayBring() {
    var station = southern(0, 0, 0);
    var offset = StationOffset.fit(southern(1, 2, 4), station);
    assertThat(offset.seasons()).isEqualTo(3);
    assertThat(offset.errorMinCelsius())
        .isCloseTo(Math.sqrt(7 / 3.0) * Math.sqrt(4 / 3.0), within(0.01));
    assertThat(offset.presentation().toText()).contains("between 3 seasons");
    var bridged = offset.apply(station);
    assertThat(bridged.minStandardErrorCelsius(station.firstDay()))
        .isEqualTo(offset.minimum().dayToDaySdCelsius());
  }

  /** A month that only one season has must not hide or make a difference between seasons. */
  @Test
  void twoSeasonsFallBackToMonths() {
    var builder = DailyTemperatures.builder(LocalDate.of(2001, 1, 1), LocalDate.of(2003, 12, 31));
    for (int year = 2001; year <= 2003; year++) {
      int month = 2 + 2 * (year - 2001);
      for (int day = 1; day <= 28; day++) {
        builder.put(LocalDate.of(year, month, day), year - 2000, 20, DayOrigin.OBSERVED);
        builder.put(LocalDate.of(year, month + 1, day), year - 2000, 20, DayOrigin.OBSERVED);
      }
    }
    var field = builder.build("Field", Medium.shelterAir());
    var station = series(1100, i -> 0, i -> 20);
    var early = DailyTemperatures.builder(LocalDate.of(2001, 1, 1), LocalDate.of(2001, 4, 30));
    for (int i = 0; i < 120; i++) {
      early.putAt(i, 0, 20, DayOrigin.OBSERVED);
    }
    var offset =
        StationOffset.fit(field, early.build("Place", Medium.shelterAir()).followedBy(station));
    assertThat(offset.seasons()).isZero();
    assertThat(offset.months()).isEqualTo(6);
    assertThat(offset.errorMinCelsius()).isCloseTo(Math.sqrt(0.8), within(1e-9));
  }

  private static DailyTemperatures southern(double... offsets) {
    var builder = DailyTemperatures.builder(LocalDate.of(2000, 10, 1), LocalDate.of(2003, 3, 31));
    for (int season = 0; season < 3; season++) {
      var end = LocalDate.of(2001 + season, 4, 1);
      for (var day = LocalDate.of(2000 + season, 10, 1); day.isBefore(end); day = day.plusDays(1)) {
        builder.put(day, 5 + offsets[season], 25, DayOrigin.OBSERVED);
      }
    }
    return builder.build("Place", Medium.shelterAir());
  }
}
