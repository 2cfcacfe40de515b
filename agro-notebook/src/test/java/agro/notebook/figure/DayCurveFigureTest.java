package agro.notebook.figure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import agro.development.DegreeDayModel;
import agro.development.Thresholds;
import agro.development.UpperCutoff;
import agro.report.InputProblem;
import agro.units.Temperature;
import agro.units.TemperatureDifference;
import agro.weather.DailyExtremes;
import agro.weather.curve.CurveDay;
import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class DayCurveFigureTest {

  private static final LocalDate DAY = LocalDate.of(2026, 5, 2);
  private static final Thresholds BOTH =
      Thresholds.between(Temperature.ofCelsius(10), Temperature.ofCelsius(30));

  /** With the threshold at the mean, the sine's area is its amplitude over pi. */
  @Test
  void wordsTellAreaAndPlainAverage() {
    var figure = DayCurveFigure.of(FigureSamples.MODEL, new DailyExtremes(DAY, 1, 13));
    assertThat(figure.alternative())
        .contains("1 to 13 °C")
        .contains("The shaded area is 1.9 °C·d")
        .contains("the plain average of the extremes would give 0.0 °C·d");
    assertThat(figure.caption()).contains("Baskerville").contains("single sine");
    assertThat(FigureSamples.cell(figure, 0, "Temperature")).isEqualTo("1.00");
    assertThat(FigureSamples.cell(figure, 6, "Temperature")).isEqualTo("7.00");
    assertThat(FigureSamples.cell(figure, 12, "Temperature")).isEqualTo("13.00");
    assertThat(FigureSamples.cell(figure, 12, "Counts above the threshold")).isEqualTo("6.00");
    assertThat(FigureSamples.holds(FigureSamples.picture(figure), FigureLook.PALE_BLUE)).isTrue();
  }

  /** What is shaded is what the model counts. */
  @ParameterizedTest
  @EnumSource(UpperCutoff.class)
  void shadedAreaIsTheModels(UpperCutoff cutoff) {
    var model = DegreeDayModel.singleSine(BOTH, cutoff);
    var day = new DailyExtremes(DAY, 8, 36);
    var plot = new DayCurvePlot(model, CurveDay.of(day));
    var sum = 0.0;
    var steps = 200_000;
    for (var i = 0; i < steps; i++) {
      sum += plot.rate(plot.temperature(24 * (i + 0.5) / steps)) / steps;
    }
    assertThat(sum).isCloseTo(model.degreeDays(day).degreeDaysC(), within(1e-3));
    FigureSamples.picture(DayCurveFigure.of(model, day));
  }

  @ParameterizedTest
  @CsvSource({"-3, 4", "12, 12", "31, 60", "7, 7", "-10, 7.2", "35, 35"})
  void drawsExtremeDays(double min, double max) {
    var day = new DailyExtremes(DAY, min, max);
    FigureSamples.picture(DayCurveFigure.of(FigureSamples.MODEL, day));
    FigureSamples.picture(
        DayCurveFigure.of(DegreeDayModel.singleSine(BOTH, UpperCutoff.INTERMEDIATE), day));
  }

  /** Range over 2 pi: 12 / 6.2832 = 1.91 °C·d. */
  @Test
  void comparisonTellsTheDifferenceAtTheThreshold() {
    var figure =
        DayCurveFigure.againstPlainAverage(FigureSamples.MODEL, new TemperatureDifference(12));
    assertThat(figure.alternative()).contains("the single sine 1.9 °C·d");
    var atThreshold =
        figure.data().rows().stream()
            .filter(row -> row.get(0).printed().equals("7.0"))
            .findFirst()
            .orElseThrow();
    assertThat(atThreshold.get(1).printed()).isEqualTo("1.91");
    assertThat(atThreshold.get(2).printed()).isEqualTo("0.00");
    FigureSamples.picture(figure);
  }

  @ParameterizedTest
  @CsvSource({"0", "0.5", "40"})
  void comparisonDrawsAnyRange(double range) {
    FigureSamples.picture(
        DayCurveFigure.againstPlainAverage(
            DegreeDayModel.singleSine(BOTH, UpperCutoff.VERTICAL),
            new TemperatureDifference(range)));
  }

  @Test
  void comparisonRefusesANegativeRange() {
    assertThatThrownBy(
            () ->
                DayCurveFigure.againstPlainAverage(
                    FigureSamples.MODEL, new TemperatureDifference(-1)))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("-1 °C");
  }
}
