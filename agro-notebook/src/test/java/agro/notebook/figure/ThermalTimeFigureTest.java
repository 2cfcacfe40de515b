package agro.notebook.figure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import agro.development.DegreeDayModel;
import agro.development.ThermalTimeScale;
import agro.development.Thresholds;
import agro.development.UpperCutoff;
import agro.report.InputProblem;
import agro.units.Temperature;
import agro.units.ThermalTime;
import agro.weather.DailyExtremes;
import agro.weather.DailyTemperatures;
import agro.weather.DayOrigin;
import agro.weather.Medium;
import agro.weather.sun.DayLength;
import agro.weather.sun.Latitude;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class ThermalTimeFigureTest {

  private static final LocalDate FIRST = LocalDate.of(2025, 12, 1);

  /** Sixty days, so many degree-days in each of them. */
  private static ThermalTimeScale scale(double aDay) {
    List<DailyExtremes> days =
        IntStream.range(0, 60)
            .mapToObj(i -> new DailyExtremes(FIRST.plusDays(i), 10 + aDay, 10 + aDay))
            .toList();
    return ThermalTimeScale.of(
        DegreeDayModel.singleSine(Thresholds.above(Temperature.ofCelsius(10)), UpperCutoff.NONE),
        DailyTemperatures.of("bed", Medium.shelterAir(), days, DayOrigin.OBSERVED),
        FIRST);
  }

  @Test
  void sumsWithTheDaysOnWhichTheyReachARequirementAcrossNewYear() {
    var figure =
        ThermalTimeFigure.of(
            Map.of("slow <bed>", scale(2), "fast", scale(5)), ThermalTime.ofDegreeDaysC(151));
    var image = FigureSamples.picture(figure);
    assertThat(FigureSamples.holds(image, FigureLook.VERMILION)).isTrue();
    assertThat(FigureSamples.holds(image, FigureLook.INK)).isTrue();
    assertThat(figure.alternative())
        .contains("fast 300 °C·d, 151 °C·d on 2025-12-31")
        .contains("slow <bed> 120 °C·d, 151 °C·d not reached");
    assertThat(figure.data().rows()).hasSize(2);
    assertThat(figure.data().rows().get(0).get(0).toString()).contains("fast");
    assertThat(figure.caption()).contains("Single sine, above 10 °C");
  }

  @Test
  void sumsWithoutARequirementAndOneThatIsNought() {
    var figure = ThermalTimeFigure.of(Map.of("cold", scale(-3)));
    assertThat(figure.png()).isNotEmpty();
    assertThat(figure.alternative()).contains("cold 0 °C·d").doesNotContain("reached");
    assertThatThrownBy(() -> ThermalTimeFigure.of(Map.of())).isInstanceOf(InputProblem.class);
  }

  /** Day lengths of the figure's table are those of the rule; the pole has its night. */
  @Test
  void lengthsOfTheDay() {
    var vale = DayLength.at(Latitude.north(46.4));
    var figure = DayLengthFigure.of(2024, vale, DayLength.at(Latitude.north(80)));
    var image = FigureSamples.picture(figure);
    assertThat(FigureSamples.holds(image, FigureLook.BLUE)).isTrue();
    assertThat(figure.data().rows()).hasSize(12);
    assertThat(figure.alternative())
        .contains("46.4° N 15.8 h on 21 June")
        .contains("80° N 24.0 h on 21 June and 0.0 h on 21 December");
    assertThatThrownBy(() -> DayLengthFigure.of(2024)).isInstanceOf(InputProblem.class);
  }
}
