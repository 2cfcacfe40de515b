package agro.weather.climate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import agro.report.InputProblem;
import agro.report.ReadReport.Deed;
import agro.weather.DailyTemperatures;
import agro.weather.DayOrigin;
import agro.weather.Medium;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;

class ForecastDaysTest {

  private static final LocalDate ISSUED = LocalDate.of(2025, 12, 30);

  private static DailyTemperatures days(
      LocalDate first, int days, double min, DayOrigin origin, Medium medium) {
    var builder = DailyTemperatures.builder(first, first.plusDays(days - 1L));
    for (int i = 0; i < days; i++) {
      builder.put(first.plusDays(i), min, min + 10, origin);
    }
    return builder.build("Osmere Vale", medium);
  }

  private static DailyTemperatures observed(int days) {
    return days(ISSUED.minusDays(3), days, 5, DayOrigin.OBSERVED, Medium.shelterAir());
  }

  private static final ForecastDays FORECAST =
      ForecastDays.of(
              days(ISSUED.minusDays(1), 6, 7, DayOrigin.OBSERVED, Medium.shelterAir()), ISSUED)
          .withErrorsByLead(List.of(1.0, 1.5, 2.5));

  @Test
  void daysAreAppendedAndMarkedAcrossNewYear() {
    var joined = FORECAST.appendedTo(observed(3));
    assertThat(joined.lastDay()).isEqualTo(LocalDate.of(2026, 1, 3));
    assertThat(joined.origin(ISSUED.minusDays(1))).isEqualTo(DayOrigin.OBSERVED);
    assertThat(joined.minCelsius(ISSUED.minusDays(1))).isEqualTo(5);
    assertThat(joined.origin(ISSUED)).isEqualTo(DayOrigin.FORECAST);
    assertThat(joined.minStandardErrorCelsius(ISSUED)).isEqualTo(1.0);
    assertThat(joined.maxStandardErrorCelsius(ISSUED.plusDays(1))).isEqualTo(1.5);
    assertThat(joined.maxStandardErrorCelsius(ISSUED.plusDays(4))).isEqualTo(2.5);
    assertThat(FORECAST.report().entries(Deed.ASSUMED).get(0).text())
        .contains("1.0 °C on the day of issue to 2.5 °C 2 days ahead");
  }

  @Test
  void observedDaysReplaceForecastOnes() {
    var joined = FORECAST.appendedTo(observed(3));
    var later = observed(6);
    // Either way round: a later log under the old forecast, or a forecast appended to it anew.
    var again = FORECAST.appendedTo(later);
    assertThat(again.origin(ISSUED.plusDays(2))).isEqualTo(DayOrigin.OBSERVED);
    assertThat(again.minCelsius(ISSUED.plusDays(2))).isEqualTo(5);
    assertThat(again.minStandardErrorCelsius(ISSUED.plusDays(2))).isZero();
    assertThat(again.origin(ISSUED.plusDays(3))).isEqualTo(DayOrigin.FORECAST);
    assertThat(later.followedBy(joined)).isEqualTo(again);
  }

  @Test
  void aNewerForecastReplacesAnOlderOne() {
    var newer =
        ForecastDays.of(
            days(ISSUED.plusDays(1), 6, 9, DayOrigin.FORECAST, Medium.shelterAir()),
            ISSUED.plusDays(1));
    var joined = newer.appendedTo(FORECAST.appendedTo(observed(3)));
    assertThat(joined.minCelsius(ISSUED)).isEqualTo(7);
    assertThat(joined.minCelsius(ISSUED.plusDays(1))).isEqualTo(9);
    assertThat(joined.minStandardErrorCelsius(ISSUED.plusDays(1))).isZero();
    assertThat(newer.report().entries(Deed.ASSUMED).get(0).text()).contains("count as exact");
  }

  /** A forecast is none of the past: gaps before its issue stay open. */
  @Test
  void daysBeforeTheIssueAreNotTaken() {
    var joined = FORECAST.appendedTo(observed(1));
    assertThat(joined.origin(ISSUED.minusDays(1))).isEqualTo(DayOrigin.MISSING);
    assertThat(joined.origin(ISSUED)).isEqualTo(DayOrigin.FORECAST);
  }

  @Test
  void refusesWhatIsNoForecast() {
    var days = days(ISSUED, 2, 7, DayOrigin.FORECAST, Medium.shelterAir());
    assertThatThrownBy(() -> ForecastDays.of(days, ISSUED.plusDays(2)))
        .isInstanceOf(InputProblem.class);
    assertThatThrownBy(() -> FORECAST.withErrorsByLead(List.of())).isInstanceOf(InputProblem.class);
    assertThatThrownBy(() -> FORECAST.withErrorsByLead(List.of(-1.0)))
        .isInstanceOf(InputProblem.class);
    var soil = days(ISSUED, 2, 7, DayOrigin.OBSERVED, new Medium.Soil(0.1));
    assertThatThrownBy(() -> FORECAST.appendedTo(soil)).isInstanceOf(InputProblem.class);
  }
}
