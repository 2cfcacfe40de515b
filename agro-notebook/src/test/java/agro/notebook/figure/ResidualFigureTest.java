package agro.notebook.figure;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class ResidualFigureTest {

  @Test
  void wordsAndDataTellTheResiduals() {
    var figure = ResidualFigure.of(FigureSamples.fit(1, 1.5));
    assertThat(figure.alternative())
        .isEqualTo(
            "Pearson residuals of 4 visits by degree-days: mean 1.13, from -1.3 to 6.0; 1 lie"
                + " beyond 2 standard deviations.");
    assertThat(figure.caption()).contains("negative binomial").contains("2022: not known");
    assertThat(FigureSamples.cell(figure, 1, "Middle of the visit")).isEqualTo("225.0");
    assertThat(FigureSamples.cell(figure, 1, "Residual")).isEqualTo("6.00");
    FigureSamples.picture(figure);
  }

  @Test
  void drawsAFitWithoutVisits() {
    var figure = ResidualFigure.of(FigureSamples.fit(0, 1.5));
    assertThat(figure.alternative()).contains("no residuals");
    FigureSamples.picture(figure);
  }
}
