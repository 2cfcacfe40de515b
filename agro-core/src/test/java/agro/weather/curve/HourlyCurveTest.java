package agro.weather.curve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import agro.report.InputProblem;
import agro.weather.DailyExtremes;
import agro.weather.DailyTemperatures;
import agro.weather.DayOrigin;
import agro.weather.Medium;
import agro.weather.TemperatureReadings;
import agro.weather.sun.DayLength;
import agro.weather.sun.Latitude;
import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class HourlyCurveTest {

  private static final LocalDate FIRST = LocalDate.of(2001, 5, 1);
  private static final ZoneOffset CLOCK = ZoneOffset.ofHours(2);
  private static final DailyTemperatures DAYS =
      DailyTemperatures.of(
          "Mill Field",
          Medium.shelterAir(),
          List.of(
              new DailyExtremes(FIRST, 8, 20),
              new DailyExtremes(FIRST.plusDays(1), 10, 22),
              new DailyExtremes(FIRST.plusDays(3), 6, 18)),
          DayOrigin.OBSERVED);

  private static double at(TemperatureReadings readings, LocalDateTime moment) {
    long second = moment.toEpochSecond(readings.dayOffset());
    for (int i = 0; i < readings.size(); i++) {
      if (readings.epochSecond(i) == second) {
        return readings.celsius(i);
      }
    }
    return Double.NaN;
  }

  @Test
  void daysRunFromMinimumToMinimum() {
    var hours = HourlyCurve.of(DayCurve.DOUBLE_SINE, 5).readings(DAYS, CLOCK);
    assertThat(hours.size()).isEqualTo(3 * 24);
    assertThat(at(hours, FIRST.atTime(4, 0))).isNaN();
    assertThat(at(hours, FIRST.atTime(5, 0))).isEqualTo(8);
    assertThat(at(hours, FIRST.atTime(17, 0))).isCloseTo(20, within(1e-12));
    assertThat(at(hours, FIRST.plusDays(1).atTime(5, 0))).isEqualTo(10);
    // Half-way down from 20 to tomorrow's 10.
    assertThat(at(hours, FIRST.atTime(23, 0))).isCloseTo(15, within(1e-12));
    assertThat(at(hours, FIRST.plusDays(2).atTime(12, 0))).isNaN();
    // Tomorrow is missing, so the curve ends at the day's own minimum.
    assertThat(at(hours, FIRST.plusDays(2).atTime(4, 0)))
        .isCloseTo(16 - 6 * Math.cos(Math.PI / 12), within(1e-9));
    assertThat(hours.medium()).isEqualTo(DAYS.medium());
    assertThat(hours.place()).isEqualTo("Mill Field");
  }

  @Test
  void sunriseBeginsTheDayOfTheSineWithDecay() {
    var rule = DayLength.at(Latitude.north(46));
    double sunrise = rule.daylight(FIRST).sunriseHour();
    var tenMinutes =
        HourlyCurve.fromSunrise(DayCurve.SINE_AND_DECAY, rule)
            .withStep(Duration.ofMinutes(10))
            .readings(DAYS, CLOCK);
    double firstHour = (tenMinutes.epochSecond(0) + 7200) % 86400 / 3600.0;
    assertThat(firstHour).isBetween(sunrise, sunrise + 1 / 6.0);
    double warmest = 0;
    double when = 0;
    for (int i = 0; i < tenMinutes.size() && tenMinutes.day(i).equals(FIRST); i++) {
      if (tenMinutes.celsius(i) > warmest) {
        warmest = tenMinutes.celsius(i);
        when = (tenMinutes.epochSecond(i) + 7200) % 86400 / 3600.0;
      }
    }
    assertThat(warmest).isCloseTo(20, within(0.01));
    assertThat(when).isCloseTo(sunrise + (rule.hours(FIRST) + 4) / 2, within(0.1));
  }

  @Test
  void longitudeShiftsSunriseOnTheClock() {
    var solar = HourlyCurve.fromSunrise(DayCurve.SINGLE_SINE, DayLength.at(Latitude.north(46)));
    var minute = Duration.ofMinutes(1);
    var here = solar.withStep(minute).readings(DAYS, CLOCK);
    var there = solar.atLongitude(20).withStep(minute).readings(DAYS, CLOCK);
    // 10° west of the clock's meridian is 40 minutes late, a sundial 3 minutes ahead on 1 May.
    assertThat(there.epochSecond(0) - here.epochSecond(0)).isBetween(36 * 60L, 38 * 60L);
  }

  @ParameterizedTest
  @ValueSource(strings = {"PT7H", "PT0S", "-PT1H", "PT0.5S"})
  void refusesStepsThatDoNotDivideTheDay(String step) {
    var curve = HourlyCurve.of(DayCurve.SINGLE_SINE, 5);
    assertThatThrownBy(() -> curve.withStep(Duration.parse(step)))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("divide the day");
  }

  @Test
  void refusesACurveOfTheSunWithoutALatitude() {
    assertThatThrownBy(() -> HourlyCurve.of(DayCurve.SINE_AND_DECAY, 5))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("latitude");
    assertThatThrownBy(() -> HourlyCurve.of(DayCurve.SINGLE_SINE, 24))
        .isInstanceOf(InputProblem.class);
  }
}
