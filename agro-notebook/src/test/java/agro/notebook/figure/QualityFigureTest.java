package agro.notebook.figure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import agro.report.InputProblem;
import agro.weather.DailyTemperatures;
import agro.weather.DayOrigin;
import agro.weather.Medium;
import agro.weather.TemperatureReadings;
import agro.weather.quality.QualityControl;
import java.time.LocalDate;
import java.time.ZoneOffset;
import org.junit.jupiter.api.Test;

class QualityFigureTest {

  private static final LocalDate START = LocalDate.of(2021, 3, 1);

  private static TemperatureReadings log(int days, boolean spoilt) {
    var seconds = new long[24 * days];
    var celsius = new double[24 * days];
    for (int i = 0; i < seconds.length; i++) {
      seconds[i] = START.toEpochDay() * 86_400 + 3600L * i;
      double day = i / 24.0;
      celsius[i] =
          12
              + 5 * Math.sin(day / 9)
              + Math.sin(i * 0.7) / 3
              - 6 * Math.cos(2 * Math.PI * (day - 0.12));
    }
    if (spoilt) {
      celsius[300] += 15;
      celsius[900] -= 12;
      celsius[1200] = -99.9;
      java.util.Arrays.fill(celsius, 1500, 1550, celsius[1500]);
      for (int i = 1900; i < 2000; i++) {
        celsius[i] = 1.8 * celsius[i] + 32;
      }
    }
    return TemperatureReadings.of("Field", Medium.shelterAir(), ZoneOffset.UTC, seconds, celsius);
  }

  @Test
  void readingsWithFlags() {
    var flags = QualityControl.withDefaults().check(log(120, true));

    var figure = QualityFigure.of(flags);

    assertThat(figure.alternative())
        .contains("°F inside a log in °C 1, the first at 2021-05-19 04:00")
        .contains("spike 2, the first at 2021-03-13 12:00")
        .contains("outside the sensor's range 1")
        .contains("stuck 1");
    assertThat(figure.caption()).contains("no verdict", "4 °C off both neighbours");
    assertThat(figure.data().rows()).hasSize(flags.all().size());
    FigureSamples.picture(figure);
  }

  @Test
  void cleanLogSaysSo() {
    var figure = QualityFigure.of(QualityControl.withDefaults().check(log(12, false)));

    assertThat(figure.alternative()).endsWith("No value was flagged.");
    FigureSamples.picture(figure);
  }

  @Test
  void dailyExtremesOverSomeYears() {
    var builder = DailyTemperatures.builder(START, START.plusDays(1199));
    for (int i = 0; i < 1200; i++) {
      if (i < 400 || i > 430) {
        double mean = 10 - 9 * Math.cos(2 * Math.PI * (i + 45) / 365.25) + 3 * Math.sin(i * 0.9);
        double high = mean + 5 + (i == 600 ? 30 : 0);
        builder.putAt(i, mean - 5, high, DayOrigin.OBSERVED);
      }
    }
    var days = builder.build("Field", Medium.shelterAir());

    var figure = QualityFigure.of(QualityControl.withDefaults().check(days));

    assertThat(figure.alternative()).contains("spike of a day 1, the first at 2022-10-22");
    FigureSamples.picture(figure);
  }

  @Test
  void extremesOfAFileHaveNoSeries() {
    var flags =
        QualityControl.withDefaults()
            .checkExtremes("Field", Medium.shelterAir(), START, new double[] {5}, new double[] {3});

    assertThatThrownBy(() -> QualityFigure.of(flags)).isInstanceOf(InputProblem.class);
  }
}
