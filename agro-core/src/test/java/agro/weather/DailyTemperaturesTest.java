package agro.weather;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import agro.report.InputProblem;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;

class DailyTemperaturesTest {

  private static final LocalDate FIRST = LocalDate.of(2000, 2, 27);
  private static final Medium AIR = Medium.shelterAir();

  private static DailyExtremes day(int offset, double min, double max) {
    return new DailyExtremes(FIRST.plusDays(offset), min, max);
  }

  private static DailyTemperatures observed(DailyExtremes... days) {
    return DailyTemperatures.of("Upper Croft", AIR, List.of(days), DayOrigin.OBSERVED);
  }

  @Test
  void daysLeftOutAreMissing() {
    var series = observed(day(0, 1, 5), day(3, 2, 6));
    assertThat(series.size()).isEqualTo(4);
    assertThat(series.lastDay()).isEqualTo(LocalDate.of(2000, 3, 1));
    assertThat(series.missingDays())
        .containsExactly(LocalDate.of(2000, 2, 28), LocalDate.of(2000, 2, 29));
    assertThat(series.minCelsius(FIRST.plusDays(1))).isNaN();
    assertThat(series.maxCelsius(FIRST.plusDays(3))).isEqualTo(6);
    assertThat(series.maxCelsius(FIRST.plusDays(4))).isNaN();
    assertThat(series.origin(FIRST)).isEqualTo(DayOrigin.OBSERVED);
    assertThat(series.origin(FIRST.plusDays(1))).isEqualTo(DayOrigin.MISSING);
    assertThat(series.extremes(FIRST.plusDays(2))).isEmpty();
    assertThat(series)
        .hasToString(
            "Upper Croft, air in a shelter at 2 m, 2000-02-27 to 2000-03-01 (4 days, 2 missing)");
  }

  @Test
  void refusesDaysOutOfOrderAndTwice() {
    assertThatThrownBy(() -> observed(day(2, 1, 5), day(1, 1, 5)))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("2000-02-28 after 2000-02-29");
    assertThatThrownBy(() -> observed(day(2, 1, 5), day(2, 1, 5)))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("2000-02-29 twice");
    assertThatThrownBy(DailyTemperaturesTest::observed).isInstanceOf(InputProblem.class);
  }

  @Test
  void refusesExtremesThatCannotBe() {
    assertThatThrownBy(() -> day(0, 6, 5))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("minimum 6.0 above maximum 5.0");
    assertThatThrownBy(() -> day(0, Double.NaN, 5)).isInstanceOf(InputProblem.class);
  }

  @Test
  void arraysAreCopies() {
    var series = observed(day(0, 1, 5));
    series.minimaCelsius()[0] = 99;
    series.maximaCelsius()[0] = 99;
    assertThat(series).isEqualTo(observed(day(0, 1, 5)));
  }

  @Test
  void continuesWithLaterDaysOnly() {
    var station =
        DailyTemperatures.of(
            "Station",
            AIR,
            List.of(day(0, 9, 9), day(1, 9, 9), day(2, 9, 9), day(4, 3, 7)),
            DayOrigin.NEIGHBOUR);
    var joined = observed(day(0, 1, 5), day(2, 2, 6)).followedBy(station);
    assertThat(joined.minimaCelsius()).containsExactly(1, Double.NaN, 2, Double.NaN, 3);
    assertThat(joined.origin(FIRST.plusDays(4))).isEqualTo(DayOrigin.NEIGHBOUR);
    assertThat(joined.place()).isEqualTo("Upper Croft");
    var ended = observed(day(5, 1, 5));
    assertThat(ended.followedBy(station)).isSameAs(ended);
  }

  @Test
  void fillsMissingDaysOnly() {
    var station =
        DailyTemperatures.of(
            "Station", AIR, List.of(day(1, 8, 9), day(2, 9, 9)), DayOrigin.NEIGHBOUR);
    var filled = observed(day(0, 1, 5), day(2, 2, 6), day(4, 3, 7)).filledFrom(station);
    assertThat(filled.minimaCelsius()).containsExactly(1, 8, 2, Double.NaN, 3);
    assertThat(filled.origin(FIRST.plusDays(1))).isEqualTo(DayOrigin.NEIGHBOUR);
    assertThat(filled.origin(FIRST.plusDays(3))).isEqualTo(DayOrigin.MISSING);
  }

  @Test
  void soilAndAirDoNotMix() {
    var soil =
        DailyTemperatures.of(
            "Bed", new Medium.Soil(0.06), List.of(day(9, 8, 9)), DayOrigin.OBSERVED);
    var air = observed(day(0, 1, 5));
    assertThatThrownBy(() -> air.followedBy(soil))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("soil at 6 cm");
    assertThatThrownBy(() -> soil.filledFrom(air)).isInstanceOf(InputProblem.class);
  }

  @Test
  void takesParts() {
    var series = observed(day(0, 1, 5), day(1, 2, 6), day(2, 3, 7));
    assertThat(series.between(FIRST.plusDays(1), FIRST.plusDays(2)).minimaCelsius())
        .containsExactly(2, 3);
    assertThat(series.upTo(FIRST.plusDays(1))).isEqualTo(observed(day(0, 1, 5), day(1, 2, 6)));
    assertThat(series.upTo(FIRST.plusDays(9))).isSameAs(series);
    assertThatThrownBy(() -> series.between(FIRST, FIRST.plusDays(3)))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("2000-02-27 to 2000-02-29");
    assertThatThrownBy(() -> series.upTo(FIRST.minusDays(1))).isInstanceOf(InputProblem.class);
  }

  @Test
  void mediaAreTold() {
    assertThat(Medium.shelterAir().words()).isEqualTo("air in a shelter at 2 m");
    assertThat(new Medium.CanopyAir(0.3).kind()).isEqualTo(MediumKind.AIR);
    assertThat(new Medium.Tunnel().words()).isEqualTo("air in a tunnel");
    assertThatThrownBy(() -> new Medium.Soil(0)).isInstanceOf(InputProblem.class);
  }
}
