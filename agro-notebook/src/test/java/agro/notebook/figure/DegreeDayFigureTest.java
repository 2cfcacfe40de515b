package agro.notebook.figure;

import static org.assertj.core.api.Assertions.assertThat;

import agro.generation.ObservedSeason;
import java.util.List;
import org.junit.jupiter.api.Test;

class DegreeDayFigureTest {

  /** 97 days of 10, 10 of 8 and 5 of 6 °C·d are known; 133 days of 1 to 11 °C·d may follow. */
  @Test
  void wordsTellTheSums() {
    var figure = DegreeDayFigure.accumulation(FigureSamples.season(), past());
    assertThat(figure.alternative())
        .contains("1080 °C·d from 1 March 2026 to 20 June 2026")
        .contains("between 1346 °C·d and 2410 °C·d on 31 October 2026, median 1878 °C·d")
        .contains("Season 2024 after as many days: 560 °C·d.");
    assertThat(figure.caption()).contains("As of 16 June 2026").contains("11 past years");
  }

  @Test
  void dataTellEachDayWithItsOrigin() {
    var figure = DegreeDayFigure.accumulation(FigureSamples.season(), past());
    assertThat(figure.data().rows()).hasSize(246);
    assertThat(FigureSamples.cell(figure, 0, "Known")).isEqualTo("0.0");
    assertThat(FigureSamples.cell(figure, 97, "Known")).isEqualTo("970.0");
    assertThat(FigureSamples.cell(figure, 97, "Day before from")).isEqualTo("observed");
    assertThat(FigureSamples.cell(figure, 98, "Day before from")).isEqualTo("neighbour");
    assertThat(FigureSamples.cell(figure, 112, "Day before from")).isEqualTo("forecast");
    assertThat(FigureSamples.cell(figure, 113, "Known")).isEmpty();
    assertThat(FigureSamples.cell(figure, 113, "Median of years")).isEqualTo("1086.0");
    assertThat(FigureSamples.cell(figure, 245, "90 % of years")).isEqualTo("2410.0");
    assertThat(FigureSamples.cell(figure, 245, "Season 2024")).isEqualTo("1225.0");
  }

  @Test
  void drawsWithAndWithoutPastSeasons() {
    var with = DegreeDayFigure.accumulation(FigureSamples.season(), past());
    var without = DegreeDayFigure.accumulation(FigureSamples.season());
    var image = FigureSamples.picture(with);
    assertThat(FigureSamples.holds(image, FigureLook.PALE_BLUE)).isTrue();
    assertThat(FigureSamples.holds(image, FigureLook.INK)).isTrue();
    FigureSamples.picture(without);
    assertThat(without.caption()).doesNotContain("past seasons");
  }

  private static List<ObservedSeason> past() {
    return List.of(FigureSamples.past(2024, 12), FigureSamples.past(2025, 12.1));
  }
}
