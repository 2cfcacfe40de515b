package agro.notebook.figure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import agro.report.InputProblem;
import agro.weather.DailyTemperatures;
import agro.weather.DayOrigin;
import agro.weather.Medium;
import agro.weather.TemperatureReadings;
import agro.weather.climate.ClimateNormals;
import agro.weather.gap.GapFilling;
import agro.weather.gap.ReadingGapFilling;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class GapFigureTest {

  /** Invented days with persistent weather. */
  static DailyTemperatures invented(LocalDate from, LocalDate to) {
    var random = new SplittableRandom(3);
    var builder = DailyTemperatures.builder(from, to);
    double weather = 0;
    for (var day = from; !day.isAfter(to); day = day.plusDays(1)) {
      weather = 0.7 * weather + 0.7 * random.nextGaussian();
      double usual = 6 - 8 * Math.cos(2 * Math.PI * (day.getDayOfYear() - 20) / 365.0);
      double range = 9 + 2 * random.nextGaussian();
      double min = usual + 3 * weather;
      builder.put(day, min, min + Math.max(1, range), DayOrigin.OBSERVED);
    }
    return builder.build("Osmere Vale", Medium.shelterAir());
  }

  private static DailyTemperatures without(DailyTemperatures series, int from, int days) {
    var builder = DailyTemperatures.builder(series.firstDay(), series.lastDay());
    series.copyInto(builder, series.firstDay());
    for (int i = from; i < from + days; i++) {
      builder.putAt(i, Double.NaN, Double.NaN, DayOrigin.MISSING);
    }
    return builder.build(series.place(), series.medium());
  }

  private static final DailyTemperatures YEAR =
      invented(LocalDate.of(2025, 3, 1), LocalDate.of(2025, 9, 30));

  @Test
  void filledDaysAreMarkedWithTheirErrors() {
    var station = without(without(YEAR, 100, 30), 60, 1);
    var gappy = without(without(without(without(YEAR, 20, 2), 60, 12), 105, 20), 0, 3);
    var history = invented(LocalDate.of(2015, 1, 1), LocalDate.of(2024, 12, 31));
    var filled =
        GapFilling.withDefaults()
            .interpolateUpTo(3)
            .neighbour(station)
            .climatology(ClimateNormals.of(history))
            .fill(gappy);
    var figure = GapFigure.days(filled);
    var image = FigureSamples.picture(figure);
    assertThat(FigureSamples.holds(image, FigureLook.BLUE)).isTrue();
    assertThat(FigureSamples.holds(image, FigureLook.VERMILION)).isTrue();
    assertThat(figure.alternative())
        .contains("interpolated: 2", "neighbour: 14", "climate normal: 21", "observed: 177");
    assertThat(figure.data().rows()).hasSize(214);
    var open = GapFigure.days(GapFilling.withDefaults().fill(gappy));
    assertThat(FigureSamples.holds(FigureSamples.picture(open), FigureLook.LIGHT_GREY)).isTrue();
    assertThat(open.alternative()).contains("missing: 37");
    var part = GapFigure.days(filled, LocalDate.of(2025, 4, 1), LocalDate.of(2025, 5, 31));
    assertThat(part.data().rows()).hasSize(61);
  }

  @Test
  void filledReadingsLieInTheirBand() {
    var seconds =
        IntStream.range(0, 20 * 24)
            .filter(i -> i < 200 || i > 209)
            .mapToLong(i -> LocalDate.of(2025, 5, 1).toEpochDay() * 86_400 + i * 3600L)
            .toArray();
    var random = new SplittableRandom(4);
    var celsius = new double[seconds.length];
    for (int i = 0; i < celsius.length; i++) {
      double hour = seconds[i] % 86_400 / 3600.0;
      celsius[i] = 12 + 6 * Math.sin((hour - 9) * Math.PI / 12) + 0.8 * random.nextGaussian();
    }
    var readings =
        TemperatureReadings.of(
            "Osmere Vale", Medium.shelterAir(), ZoneOffset.UTC, seconds, celsius);
    var filled = ReadingGapFilling.withDefaults().fill(readings);
    var figure = GapFigure.readings(filled, LocalDate.of(2025, 5, 7), LocalDate.of(2025, 5, 11));
    assertThat(FigureSamples.holds(FigureSamples.picture(figure), FigureLook.PALE_BLUE)).isTrue();
    assertThat(figure.alternative()).contains("110 observed and 10 filled in");
    assertThat(figure.data().rows()).hasSize(120);
    assertThatThrownBy(
            () -> GapFigure.readings(filled, LocalDate.of(2026, 1, 1), LocalDate.of(2026, 1, 2)))
        .isInstanceOf(InputProblem.class);
  }
}
