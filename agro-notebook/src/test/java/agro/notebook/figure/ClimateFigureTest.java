package agro.notebook.figure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import agro.report.InputProblem;
import agro.weather.DailyTemperatures;
import agro.weather.Medium;
import agro.weather.climate.ClimateNormals;
import java.time.LocalDate;
import org.junit.jupiter.api.Test;

class ClimateFigureTest {

  private static final DailyTemperatures YEARS =
      GapFigureTest.invented(LocalDate.of(2018, 1, 1), LocalDate.of(2025, 12, 31));

  @Test
  void theSeasonLiesOverItsNormalsAlsoAcrossNewYear() {
    var normals = ClimateNormals.of(YEARS.upTo(LocalDate.of(2024, 6, 30)));
    var season = YEARS.between(LocalDate.of(2024, 10, 1), LocalDate.of(2025, 3, 31));
    var figure = ClimateFigure.season(normals, season);
    var image = FigureSamples.picture(figure);
    assertThat(FigureSamples.holds(image, FigureLook.PALE_BLUE)).isTrue();
    assertThat(FigureSamples.holds(image, FigureLook.INK)).isTrue();
    assertThat(figure.alternative()).contains("minima", "were on average", "what is usual");
    assertThat(figure.data().rows()).hasSize(182);
    assertThat(figure.caption()).contains("8 days in 10", "usually rest on 30 years");
  }

  @Test
  void normalsAloneAreDrawnToo() {
    var figure = ClimateFigure.normals(ClimateNormals.of(YEARS), 2026);
    assertThat(FigureSamples.holds(FigureSamples.picture(figure), FigureLook.PALE_BLUE)).isTrue();
    assertThat(figure.alternative()).doesNotContain("season");
    assertThat(figure.data().rows()).hasSize(365);
  }

  @Test
  void soilIsNotComparedWithAir() {
    var soil =
        DailyTemperatures.builder(LocalDate.of(2025, 1, 1), LocalDate.of(2025, 1, 2))
            .build("bed", new Medium.Soil(0.1));
    assertThatThrownBy(() -> ClimateFigure.season(ClimateNormals.of(YEARS), soil))
        .isInstanceOf(InputProblem.class);
  }
}
