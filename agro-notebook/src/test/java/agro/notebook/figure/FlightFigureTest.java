package agro.notebook.figure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import agro.report.InputProblem;
import org.junit.jupiter.api.Test;

class FlightFigureTest {

  @Test
  void wordsTellCatchAndMiddleOfEachFlight() {
    var figure = FlightFigure.of(FigureSamples.fit(2, 1.5));
    assertThat(figure.alternative())
        .contains("2022: 33 adults in 4 visits, flight 1 about 200 °C·d, flight 2 about 700 °C·d")
        .contains("2023: 33 adults in 4 visits, flight 1 about 200 °C·d, flight 2 about 710 °C·d");
    assertThat(figure.caption())
        .contains("505 °C·d, 90 % interval ± 32 from 2 seasons")
        .contains("single sine, above 7 °C")
        .contains("size 1.50 per open trap-night");
  }

  @Test
  void dataHoldEveryVisitPerTrapNight() {
    var figure = FlightFigure.of(FigureSamples.fit(2, 1.5));
    assertThat(figure.data().rows()).hasSize(8);
    assertThat(FigureSamples.cell(figure, 1, "Count")).isEqualTo("30");
    assertThat(FigureSamples.cell(figure, 1, "Catch")).isEqualTo("7.50");
    assertThat(FigureSamples.cell(figure, 1, "Fitted mean")).isEqualTo("3.00");
    assertThat(FigureSamples.cell(figure, 1, "Trap")).isEqualTo("full");
  }

  @Test
  void eachSeasonHasAPanel() {
    var one = FlightFigure.of(FigureSamples.fit(3, 1.5), 2023);
    var all = FlightFigure.of(FigureSamples.fit(3, 1.5));
    assertThat(one.data().rows()).hasSize(4);
    assertThat(FigureSamples.cell(one, 0, "Season")).isEqualTo("2023");
    assertThat(all.heightPoints()).isGreaterThan(one.heightPoints());
    var image = FigureSamples.picture(all);
    assertThat(FigureSamples.holds(image, FigureLook.BLUE)).isTrue();
    assertThat(FigureSamples.holds(image, FigureLook.PALE_BLUE)).isTrue();
    FigureSamples.picture(one);
  }

  @Test
  void oneSeasonIsSaidToBeOne() {
    var figure = FlightFigure.of(FigureSamples.fit(1, Double.POSITIVE_INFINITY));
    assertThat(figure.caption()).contains("500 °C·d (one season only)").contains("Poisson counts");
    FigureSamples.picture(figure);
  }

  @Test
  void refusesASeasonThatIsNotInTheFit() {
    var fit = FigureSamples.fit(2, 1.5);
    assertThatThrownBy(() -> FlightFigure.of(fit, 1999))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("1999")
        .hasMessageContaining("2022, 2023");
  }

  @Test
  void drawsAFitWithoutACatch() {
    var figure = FlightFigure.of(FigureSamples.fit(0, 1));
    assertThat(figure.alternative()).contains("No season with a catch");
    assertThat(figure.caption()).contains("published 500 °C·d");
    FigureSamples.picture(figure);
  }
}
