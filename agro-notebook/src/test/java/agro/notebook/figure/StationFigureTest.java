package agro.notebook.figure;

import static org.assertj.core.api.Assertions.assertThat;

import agro.generation.FlightShare;
import agro.generation.ForecastRow;
import agro.season.BatchForecast;
import agro.season.PlaceForecast;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class StationFigureTest {

  private static final LocalDate JULY = LocalDate.of(2026, 7, 10);

  private static PlaceForecast place(String pest, String place, ForecastRow... rows) {
    return new PlaceForecast(
        "vale", pest, place, Optional.of(FigureSamples.forecast(List.of(rows))), "");
  }

  private static BatchForecast batch() {
    return new BatchForecast(
        List.of(
            place(
                "leek moth",
                "Upper Croft",
                FigureSamples.row(2, FlightShare.HALF, JULY.plusDays(6), 0),
                FigureSamples.row(3, FlightShare.HALF, JULY.plusDays(76), 4)),
            place("leek moth", "Mill Field", FigureSamples.row(2, FlightShare.HALF, JULY, 0)),
            new PlaceForecast("vale", "leek moth", "Sand Lane", Optional.empty(), "a bad log"),
            place(
                "diamondback moth",
                "Long Acre",
                FigureSamples.row(3, FlightShare.HALF, JULY.plusDays(30), 1),
                FigureSamples.row(4, FlightShare.HALF, JULY.plusDays(60), 9)),
            place("diamondback moth", "Deep Bed")));
  }

  @Test
  void stationsAreOrderedByDateWithinTheirPest() {
    var figure = StationFigure.of(batch());
    var names = new ArrayList<String>();
    for (var i = 0; i < figure.data().rows().size(); i++) {
      names.add(FigureSamples.cell(figure, i, "Place"));
    }
    assertThat(names)
        .containsExactly("Mill Field", "Upper Croft", "Sand Lane", "Long Acre", "Deep Bed");
    assertThat(FigureSamples.cell(figure, 0, "Median")).isEqualTo("2026-07-15");
    assertThat(FigureSamples.cell(figure, 2, "Flight")).isEqualTo("no forecast");
    assertThat(FigureSamples.cell(figure, 4, "Flight")).isEqualTo("no flight is left this season");
    assertThat(figure.alternative())
        .contains("leek moth at Mill Field, flight 2: half by 15 Jul, 8 in 10 between 10 Jul and")
        .contains("leek moth at Sand Lane: no forecast")
        .contains("diamondback moth at Long Acre, flight 3: half by");
    assertThat(figure.caption()).contains("leek moth: single sine, above 7 °C");
  }

  @Test
  void allFlightsHaveALineEach() {
    var figure = StationFigure.ofAllFlights(batch());
    assertThat(figure.data().rows()).hasSize(7);
    assertThat(figure.alternative()).contains("Long Acre, flight 4: not this season 90 %");
    assertThat(figure.heightPoints()).isGreaterThan(StationFigure.of(batch()).heightPoints());
  }

  @Test
  void pictureShowsBars() {
    var image = FigureSamples.picture(StationFigure.ofAllFlights(batch()));
    assertThat(FigureSamples.holds(image, FigureLook.DARK_GREY)).isTrue();
    assertThat(FigureSamples.holds(image, FigureLook.MIDDLE_GREY)).isTrue();
    assertThat(FigureSamples.holds(image, FigureLook.LIGHT_GREY)).isTrue();
    assertThat(FigureSamples.holds(image, FigureLook.BLUE)).isTrue();
  }

  /** A median before the day of issue is passed, so the flight after it is the next one. */
  @Test
  void passedFlightsAreNotTheNext() {
    var passed = FigureSamples.row(1, FlightShare.HALF, FigureSamples.AS_OF.minusDays(20), 0);
    var next = FigureSamples.row(2, FlightShare.HALF, JULY, 0);
    var figure =
        StationFigure.of(new BatchForecast(List.of(place("leek moth", "Hill", passed, next))));
    assertThat(FigureSamples.cell(figure, 0, "Flight")).isEqualTo("2");
  }

  @Test
  void nothingToDrawIsDrawnAsNothing() {
    var none =
        new BatchForecast(
            List.of(new PlaceForecast("far-vale", "", "", Optional.empty(), "no such folder")));
    var figure = StationFigure.of(none);
    assertThat(figure.alternative()).contains("far-vale: no forecast");
    assertThat(figure.png()).isNotEmpty();
  }
}
