package agro.notebook.figure;

import static org.assertj.core.api.Assertions.assertThat;

import agro.generation.skill.HindcastScheme;
import org.junit.jupiter.api.Test;

class HindcastFigureTest {

  @Test
  void forecastsBesideWhatCame() {
    var figure = HindcastFigure.of(HindcastSamples.hindcast(), HindcastScheme.LEAVE_ONE_OUT);
    assertThat(figure.alternative())
        .contains("leek moth at Upper Croft")
        .contains("issued 7 days before: 2 forecasts, mean absolute error 6.0 days")
        .contains("bias 6.0 days, 1 dates inside")
        .contains("issued at the season's start: no forecast");
    assertThat(figure.caption()).contains("2 past seasons").contains("leave one season out");
    assertThat(figure.data().rows()).hasSize(2);
    assertThat(FigureSamples.cell(figure, 1, "Season")).isEqualTo("2025");
    assertThat(FigureSamples.cell(figure, 1, "Observed")).isEqualTo("2025-06-09");
    assertThat(FigureSamples.cell(figure, 1, "Median")).isEqualTo("12.0");
    assertThat(FigureSamples.cell(figure, 1, "8 in 10 from")).isEqualTo("8.0");
    var image = FigureSamples.picture(figure);
    assertThat(FigureSamples.holds(image, FigureLook.MIDDLE_GREY)).isTrue();
    assertThat(FigureSamples.holds(image, FigureLook.VERMILION)).isTrue();
  }

  @Test
  void skillByLead() {
    var figure = SkillFigure.of(HindcastSamples.hindcast());
    assertThat(figure.alternative())
        .contains("Leave one season out, issued 7 days before:")
        .contains("over mean calendar date, not known over first catch plus mean days");
    assertThat(figure.caption()).contains("a demonstration, never proof");
    assertThat(figure.data().rows()).hasSize(6);
    assertThat(Double.parseDouble(FigureSamples.cell(figure, 0, "Skill"))).isBetween(0.5, 0.95);
    assertThat(FigureSamples.cell(figure, 1, "Skill")).isEqualTo("not known");
    assertThat(FigureSamples.holds(FigureSamples.picture(figure), FigureLook.BLUE)).isTrue();
  }

  @Test
  void drawsNothingWhereThereIsNothing() {
    var empty = HindcastSamples.empty();
    assertThat(HindcastFigure.of(empty, HindcastScheme.LEAVE_ONE_OUT).data().rows()).isEmpty();
    FigureSamples.picture(HindcastFigure.of(empty, HindcastScheme.LEAVE_ONE_OUT));
    FigureSamples.picture(SkillFigure.of(empty));
  }
}
