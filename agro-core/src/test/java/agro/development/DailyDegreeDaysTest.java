package agro.development;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import agro.report.InputProblem;
import agro.units.Numbers;
import agro.units.Temperature;
import agro.weather.DailyExtremes;
import agro.weather.DailyTemperatures;
import agro.weather.DayOrigin;
import agro.weather.Medium;
import agro.weather.sun.DayLength;
import agro.weather.sun.Latitude;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class DailyDegreeDaysTest {

  private static final LocalDate FIRST = LocalDate.of(2001, 5, 1);
  private static final Thresholds TEN_TO_THIRTY =
      Thresholds.between(new Temperature(10), new Temperature(30));
  private static final DayLength SUN = DayLength.at(Latitude.north(46));

  /** The day 5 to 35 and the next minimum 18; a gap; a night that is warmer than the day before. */
  private static final DailyTemperatures DAYS =
      DailyTemperatures.of(
          "Mill Field",
          Medium.shelterAir(),
          List.of(
              new DailyExtremes(FIRST, 5, 35),
              new DailyExtremes(FIRST.plusDays(1), 18, 28),
              new DailyExtremes(FIRST.plusDays(3), 8, 14),
              new DailyExtremes(FIRST.plusDays(4), 16, 25)),
          DayOrigin.OBSERVED);

  private static DegreeDayModel model(DegreeDayMethod method) {
    return DegreeDayModel.of(method, TEN_TO_THIRTY, UpperCutoff.HORIZONTAL);
  }

  @Test
  void doubleCurvesEndAtTomorrowsMinimum() {
    var days = model(DegreeDayMethod.DOUBLE_SINE).daily(DAYS);
    assertThat(days.degreeDaysC(FIRST)).isCloseTo(12.655788, within(1e-6));
    assertThat(days.basis(FIRST)).isEqualTo(DayBasis.COMPLETE);
    var triangle = model(DegreeDayMethod.DOUBLE_TRIANGLE).daily(DAYS);
    assertThat(triangle.degreeDaysC(FIRST)).isCloseTo(12.882353, within(1e-6));
  }

  /** Not 0 °C, not a day lost: the single curve stands in, and the day says so. */
  @Test
  void withoutTomorrowTheSingleCurveStandsInAndSaysSo() {
    var days = model(DegreeDayMethod.DOUBLE_SINE).daily(DAYS);
    var single = model(DegreeDayMethod.SINGLE_SINE);
    for (int i : new int[] {1, 4}) {
      var day = DAYS.extremes(FIRST.plusDays(i)).orElseThrow();
      assertThat(days.basis(day.date())).isEqualTo(DayBasis.WITHOUT_TOMORROW);
      assertThat(days.degreeDaysC(day.date())).isEqualTo(single.degreeDays(day).degreeDaysC());
    }
    assertThat(days.daysWith(DayBasis.WITHOUT_TOMORROW))
        .containsExactly(FIRST.plusDays(1), FIRST.plusDays(4));
    assertThat(days.presentation().toText())
        .contains("Days without tomorrow's minimum", "2001-05-02, 2001-05-05", "Days missing");
  }

  @Test
  void aWarmerNextMinimumIsHeldAndMarked() {
    var days = model(DegreeDayMethod.DOUBLE_TRIANGLE).daily(DAYS);
    var day = FIRST.plusDays(3);
    assertThat(days.basis(day)).isEqualTo(DayBasis.TOMORROW_HELD);
    // Half of the triangle from 8 to 14, and half a day at 14.
    assertThat(days.degreeDaysC(day)).isCloseTo(0.5 * 16 / 12 + 0.5 * 4, within(1e-12));
  }

  @Test
  void missingDaysStayMissing() {
    var days = model(DegreeDayMethod.SINGLE_SINE).daily(DAYS);
    assertThat(days.degreeDaysC(FIRST.plusDays(2))).isNaN();
    assertThat(days.basis(FIRST.plusDays(2))).isEqualTo(DayBasis.MISSING);
    assertThat(days.basis(FIRST.minusDays(1))).isEqualTo(DayBasis.MISSING);
    assertThat(days.degreeDaysC(FIRST.plusDays(9))).isNaN();
    assertThat(days.size()).isEqualTo(5);
    assertThat(days.knownTotalC())
        .isCloseTo(
            days.valuesC()[0] + days.valuesC()[1] + days.valuesC()[3] + days.valuesC()[4],
            within(1e-12));
  }

  @ParameterizedTest
  @EnumSource(
      value = DegreeDayMethod.class,
      mode = EnumSource.Mode.EXCLUDE,
      names = "SUM_OVER_READINGS")
  void aSeriesIsItsDaysOneByOne(DegreeDayMethod method) {
    var model = new DegreeDayModel(method, TEN_TO_THIRTY, UpperCutoff.HORIZONTAL, Optional.of(SUN));
    var today = DAYS.extremes(FIRST).orElseThrow();
    var tomorrow = DAYS.extremes(FIRST.plusDays(1)).orElseThrow();
    var series = model.daily(DAYS);
    assertThat(series.degreeDaysC(FIRST))
        .isEqualTo(model.degreeDays(today, tomorrow).degreeDaysC())
        .isEqualTo(model.degreeDaysC(5, 35, 18, FIRST.getDayOfYear()));
    assertThat(model.working(today, tomorrow).toText())
        .contains(Numbers.fixed(series.degreeDaysC(FIRST), 4) + " °C·d");
    if (!method.needsDayLength()) {
      assertThat(model.degreeDaysC(DAYS.minimaCelsius(), DAYS.maximaCelsius()))
          .containsExactly(series.valuesC());
    }
  }

  @ParameterizedTest
  @EnumSource(
      value = DegreeDayMethod.class,
      names = {"AVERAGE_MEAN_LIMITED", "AVERAGE_EXTREMES_LIMITED"})
  void averagesRefuseCutoffsThatNeedMoments(DegreeDayMethod method) {
    for (var cutoff : new UpperCutoff[] {UpperCutoff.INTERMEDIATE, UpperCutoff.VERTICAL}) {
      assertThat(method.allows(cutoff)).isFalse();
      assertThatThrownBy(() -> DegreeDayModel.of(method, TEN_TO_THIRTY, cutoff))
          .isInstanceOf(InputProblem.class)
          .hasMessageContaining("does not say for how long")
          .hasMessageContaining("NONE or HORIZONTAL");
    }
    assertThatThrownBy(() -> method.shareAbove(5, 35, 10)).isInstanceOf(InputProblem.class);
  }

  @Test
  void methodsSayWhatTheyNeed() {
    var doubleSine = model(DegreeDayMethod.DOUBLE_SINE);
    assertThatThrownBy(() -> doubleSine.degreeDaysC(5, 35))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("tomorrow's minimum")
        .hasMessageContaining("SINGLE_SINE");
    assertThat(doubleSine.degreeDaysC(5, 35, Double.NaN)).isNaN();
    assertThatThrownBy(() -> model(DegreeDayMethod.SINE_AND_DECAY))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("latitude");
    var decay = DegreeDayModel.sineAndDecay(TEN_TO_THIRTY, UpperCutoff.NONE, SUN);
    assertThatThrownBy(() -> decay.degreeDaysC(5, 35, 10))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("fourth argument");
    assertThatThrownBy(() -> decay.degreeDaysC(new double[1], new double[1]))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("daily(temperatures)");
    assertThatThrownBy(() -> model(DegreeDayMethod.SUM_OVER_READINGS).daily(DAYS))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("ReadingSum");
    assertThatThrownBy(
            () ->
                doubleSine.degreeDays(
                    DAYS.extremes(FIRST).orElseThrow(),
                    DAYS.extremes(FIRST.plusDays(3)).orElseThrow()))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("the day after it");
  }

  @Test
  void daysBeyondTheReachOfTheCurveAreNamed() {
    var arctic = DayLength.at(Latitude.north(70));
    var june =
        DailyTemperatures.of(
            "Mill Field",
            Medium.shelterAir(),
            List.of(new DailyExtremes(LocalDate.of(2001, 6, 20), 5, 20)),
            DayOrigin.OBSERVED);
    var model = DegreeDayModel.sineAndDecay(TEN_TO_THIRTY, UpperCutoff.NONE, arctic);
    assertThat(model.daily(june).degreeDaysC(june.firstDay())).isPositive();
    assertThat(model.daily(june).presentation().toText())
        .contains("Days outside the 4 to 23 h that the curve is made for", "2001-06-20");
    var here = DegreeDayModel.sineAndDecay(TEN_TO_THIRTY, UpperCutoff.NONE, SUN);
    assertThat(here.daily(june).presentation().toText()).doesNotContain("Days outside");
  }

  @Test
  void partsKeepWhatTheyRestOn() {
    var days = model(DegreeDayMethod.DOUBLE_SINE).daily(DAYS);
    var part = days.between(FIRST, FIRST.plusDays(1));
    assertThat(part.valuesC()).containsExactly(days.valuesC()[0], days.valuesC()[1]);
    assertThat(part.basis(FIRST)).isEqualTo(DayBasis.COMPLETE);
    assertThatThrownBy(() -> days.between(FIRST, FIRST.plusDays(5)))
        .isInstanceOf(InputProblem.class);
  }
}
