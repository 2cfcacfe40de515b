package agro.notebook.figure;

import static org.assertj.core.api.Assertions.assertThat;

import agro.generation.FlightShare;
import agro.generation.ForecastRow;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;

class ForecastFigureTest {

  private static final LocalDate JULY = LocalDate.of(2026, 7, 10);

  @Test
  void wordsTellTheNumbers() {
    var figure =
        ForecastFigure.of(
            FigureSamples.forecast(
                List.of(
                    FigureSamples.row(2, FlightShare.HALF, JULY, 0),
                    FigureSamples.row(3, FlightShare.NEARLY_ALL, LocalDate.of(2026, 10, 1), 3))));
    assertThat(figure.alternative())
        .contains("leek moth at Upper Croft as of 16 June 2026")
        .contains("Flight 2, half: median 15 Jul, 9 in 10 between 10 Jul and 19 Jul")
        .contains("not this season below 1 %")
        .contains("Flight 3, nearly all (95 %): median 6 Oct, 9 in 10 between 1 Oct and")
        .contains("not this season 30 %");
    assertThat(figure.caption())
        .contains("16 June 2026")
        .contains("single sine, above 7 °C")
        .contains("11 past years from 21 June 2026 on");
  }

  @Test
  void dataHoldEveryIntervalAndTheChanceOfNone() {
    var figure =
        ForecastFigure.of(
            FigureSamples.forecast(List.of(FigureSamples.row(2, FlightShare.FIRST, JULY, 2))));
    assertThat(FigureSamples.cell(figure, 0, "Flight")).isEqualTo("2");
    assertThat(FigureSamples.cell(figure, 0, "Share over")).isEqualTo("first 5 %");
    assertThat(FigureSamples.cell(figure, 0, "Median")).isEqualTo("2026-07-15");
    assertThat(FigureSamples.cell(figure, 0, "5 in 10 from")).isEqualTo("2026-07-12");
    assertThat(FigureSamples.cell(figure, 0, "5 in 10 to")).isEqualTo("2026-07-17");
    assertThat(FigureSamples.cell(figure, 0, "9 in 10 from")).isEqualTo("2026-07-10");
    assertThat(FigureSamples.cell(figure, 0, "9 in 10 to")).isEqualTo("not this season");
    assertThat(FigureSamples.cell(figure, 0, "Not this season")).isEqualTo("20.0");
  }

  @Test
  void pictureShowsBarsAndGrowsWithTheRows() {
    var one =
        ForecastFigure.of(
            FigureSamples.forecast(List.of(FigureSamples.row(2, FlightShare.HALF, JULY, 0))));
    var two =
        ForecastFigure.of(
            FigureSamples.forecast(
                List.of(
                    FigureSamples.row(2, FlightShare.HALF, JULY, 0),
                    FigureSamples.row(2, FlightShare.NEARLY_ALL, JULY.plusDays(20), 0))));
    var image = FigureSamples.picture(one);
    assertThat(FigureSamples.holds(image, FigureLook.DARK_GREY)).isTrue();
    assertThat(FigureSamples.holds(image, FigureLook.MIDDLE_GREY)).isTrue();
    assertThat(FigureSamples.holds(image, FigureLook.LIGHT_GREY)).isTrue();
    assertThat(FigureSamples.holds(image, FigureLook.BLUE)).isTrue();
    assertThat(two.heightPoints()).isGreaterThan(one.heightPoints());
  }

  @Test
  void drawsAFlightThatDoesNotCome() {
    var figure =
        ForecastFigure.of(
            FigureSamples.forecast(List.of(FigureSamples.row(4, FlightShare.HALF, JULY, 10))));
    assertThat(figure.alternative()).contains("Flight 4, half: not this season above 99 %");
    assertThat(FigureSamples.cell(figure, 0, "9 in 10 from")).isEqualTo("not this season");
    assertThat(FigureSamples.holds(FigureSamples.picture(figure), FigureLook.DARK_GREY)).isFalse();
  }

  @Test
  void namesTheStageOfARow() {
    var flight = FigureSamples.row(2, FlightShare.HALF, JULY, 0);
    var eggs = new ForecastRow(2, "eggs hatch", FlightShare.HALF, flight.dates(), flight.spread());
    var figure = ForecastFigure.of(FigureSamples.forecast(List.of(flight, eggs)));
    assertThat(figure.alternative()).contains("Flight 2, eggs hatch, half: median 15 Jul");
    assertThat(FigureSamples.cell(figure, 1, "Share over")).isEqualTo("eggs hatch, half");
    FigureSamples.picture(figure);
  }

  @Test
  void drawsASeasonWithNothingLeft() {
    var figure = ForecastFigure.of(FigureSamples.forecast(List.of()));
    assertThat(figure.alternative()).contains("no flight is left this season");
    assertThat(figure.data().rows()).isEmpty();
    FigureSamples.picture(figure);
  }

  @Test
  void drawsDatesBeforeTheDayOfIssue() {
    var figure =
        ForecastFigure.of(
            FigureSamples.forecast(
                List.of(FigureSamples.row(1, FlightShare.FIRST, FigureSamples.FIRST_DAY, 0))));
    assertThat(figure.alternative()).contains("median 6 Mar");
    FigureSamples.picture(figure);
  }
}
