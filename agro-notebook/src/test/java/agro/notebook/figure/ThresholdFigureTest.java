package agro.notebook.figure;

import static org.assertj.core.api.Assertions.assertThat;

import agro.generation.FlightTiming;
import agro.generation.FlightWorld;
import agro.generation.InventedFlights;
import org.junit.jupiter.api.Test;

class ThresholdFigureTest {

  private static final FlightTiming TIMING = FlightTiming.searching(InventedFlights.range());

  @Test
  void showsIntervalAndDatesByThreshold() {
    var seasons = InventedFlights.of(FlightWorld.INTERVAL_VARIES).draw(1);
    var figure = ThresholdFigure.of(TIMING.fit(seasons).sensitivity().orElseThrow());
    assertThat(figure.alternative())
        .startsWith("With the lower threshold at 5.4 to 9.4 °C the interval goes from 344 to 210");
    assertThat(FigureSamples.cell(figure, 0, "Lower threshold")).isEqualTo("5.4");
    assertThat(FigureSamples.cell(figure, 2, "Interval")).isEqualTo("210");
    FigureSamples.picture(figure);
  }

  @Test
  void showsTheRegionOfThePair() {
    var seasons = InventedFlights.of(FlightWorld.INTERVAL_VARIES).draw(1);
    var figure = ThresholdFigure.of(TIMING.profileThresholds(seasons));
    assertThat(figure.alternative()).startsWith("Threshold 8.4 °C with an interval of 241 °C·d");
    assertThat(figure.caption()).contains("within these seasons");
    FigureSamples.picture(figure);
  }
}
