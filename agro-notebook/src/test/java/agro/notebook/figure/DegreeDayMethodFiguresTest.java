package agro.notebook.figure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import agro.development.DegreeDayMethod;
import agro.development.DegreeDayModel;
import agro.development.MethodComparison;
import agro.development.ThresholdSensitivity;
import agro.development.Thresholds;
import agro.development.UpperCutoff;
import agro.report.InputProblem;
import agro.units.Temperature;
import agro.units.ThermalTime;
import agro.weather.DailyExtremes;
import agro.weather.DailyTemperatures;
import agro.weather.DayOrigin;
import agro.weather.Medium;
import agro.weather.curve.DayCurve;
import agro.weather.curve.HourlyCurve;
import agro.weather.sun.DayLength;
import agro.weather.sun.Latitude;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class DegreeDayMethodFiguresTest {

  private static final LocalDate FIRST = LocalDate.of(2026, 4, 1);
  private static final DayLength SUN = DayLength.at(Latitude.north(46.4));
  private static final Thresholds BOTH =
      Thresholds.between(Temperature.ofCelsius(10), Temperature.ofCelsius(24));

  /** Invented days that warm towards the middle of July. */
  private static DailyTemperatures days(int count) {
    var days =
        IntStream.range(0, count)
            .mapToObj(
                i -> {
                  var mean = 13 + 9 * Math.sin(Math.PI * (i - 10) / 200) + 2 * Math.sin(1.7 * i);
                  return new DailyExtremes(FIRST.plusDays(i), mean - 6, mean + 7);
                })
            .toList();
    return DailyTemperatures.of("Upper Croft", Medium.shelterAir(), days, DayOrigin.OBSERVED);
  }

  /** What is shaded is what the method counts. */
  @ParameterizedTest
  @EnumSource(
      value = DegreeDayMethod.class,
      mode = EnumSource.Mode.EXCLUDE,
      names = "SUM_OVER_READINGS")
  void shadedAreaIsTheMethods(DegreeDayMethod method) {
    var day = new DailyExtremes(FIRST, 6, 32);
    var tomorrow = new DailyExtremes(FIRST.plusDays(1), 9, 30);
    for (var cutoff : UpperCutoff.values()) {
      if (method.allows(cutoff)) {
        var model = new DegreeDayModel(method, BOTH, cutoff, Optional.of(SUN));
        var plot = new DayCurvePlot(model, model.curveDay(day, tomorrow));
        var sum = 0.0;
        var steps = 40_000;
        for (var i = 0; i < steps; i++) {
          sum += plot.rate(plot.temperature(24 * (i + 0.5) / steps)) / steps;
        }
        assertThat(sum)
            .as("%s", cutoff)
            .isCloseTo(model.degreeDays(day, tomorrow).degreeDaysC(), within(1e-3));
      }
    }
    var figure =
        DayCurveFigure.of(
            new DegreeDayModel(method, BOTH, UpperCutoff.HORIZONTAL, Optional.of(SUN)),
            day,
            tomorrow);
    assertThat(figure.alternative()).contains(method.words());
    FigureSamples.picture(figure);
  }

  @Test
  void aCurveThatEndsTomorrowNeedsTomorrow() {
    var model = DegreeDayModel.of(DegreeDayMethod.DOUBLE_SINE, BOTH, UpperCutoff.NONE);
    assertThatThrownBy(() -> DayCurveFigure.of(model, new DailyExtremes(FIRST, 6, 32)))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("tomorrow's minimum");
  }

  @Test
  void comparisonShowsEveryMethodAndCutoff() {
    var temperatures = days(120);
    var hours = HourlyCurve.fromSunrise(DayCurve.SINE_AND_DECAY, SUN);
    var inner = temperatures.between(FIRST.plusDays(1), FIRST.plusDays(118));
    var comparison =
        MethodComparison.of(BOTH, inner, FIRST.plusDays(1))
            .with(SUN)
            .with(hours.readings(temperatures, ZoneOffset.ofHours(1)))
            .with(new ThermalTime(450));
    var figure = MethodComparisonFigure.of(comparison);
    assertThat(figure.data().rows()).hasSize(2 + 2 + 6 * 4);
    assertThat(figure.alternative())
        .contains("Upper Croft", "single sine, vertical", "sine by day and decay by night");
    FigureSamples.picture(figure);
  }

  @Test
  void comparisonWithoutUpperThresholdHasNoCutoffs() {
    var lower = Thresholds.above(Temperature.ofCelsius(7));
    var figure = MethodComparisonFigure.of(MethodComparison.of(lower, days(20), FIRST));
    assertThat(figure.data().rows()).hasSize(6);
    FigureSamples.picture(figure);
  }

  @Test
  void sensitivityShowsDatesByThreshold() {
    var model = DegreeDayModel.singleSine(BOTH, UpperCutoff.HORIZONTAL);
    var table =
        ThresholdSensitivity.of(
            model, days(150), FIRST, new ThermalTime(450), Temperature.ofCelsius(22));
    var figure = ThresholdSensitivityFigure.of(table);
    assertThat(figure.alternative()).contains("Above 8 °C", "Above 12 °C", "Chosen 10 °C");
    assertThat(figure.data().rows()).hasSize(9);
    FigureSamples.picture(figure);
    var never =
        ThresholdSensitivity.of(
            model, days(5), FIRST, new ThermalTime(450), Temperature.ofCelsius(22));
    assertThatThrownBy(() -> ThresholdSensitivityFigure.of(never))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("no date to draw");
  }
}
