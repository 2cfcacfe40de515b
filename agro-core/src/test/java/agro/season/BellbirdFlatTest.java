package agro.season;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import agro.development.UpperCutoff;
import agro.generation.TrapState;
import agro.report.ReadReport.Deed;
import agro.units.TemperatureUnit;
import agro.weather.DayOrigin;
import agro.weather.Medium;
import java.net.URISyntaxException;
import java.nio.file.Path;
import java.time.LocalDate;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** A folder made by hand: south of the equator, other units, other separators, one season. */
class BellbirdFlatTest {
  private static PestSeasons seasons;

  @BeforeAll
  static void read() throws URISyntaxException {
    var folder = Path.of(BellbirdFlatTest.class.getResource("bellbird-flat").toURI());
    seasons = SeasonFolder.read(folder).pestAt("tomato leafminer", "Bellbird Flat");
  }

  @Test
  void theSeasonCrossesNewYear() {
    assertThat(seasons.seasons()).hasSize(1);
    var season = seasons.underWay().orElseThrow();
    assertThat(season.year()).isEqualTo(2023);
    assertThat(season.end()).isEqualTo("2024-04-30");
    assertThat(season.temperatures().firstDay()).isEqualTo("2023-09-01");
    assertThat(season.temperatures().lastDay()).isEqualTo("2024-02-10");
  }

  @Test
  void unitsAndPatternsAreThoseOfTheLoggers() {
    var own = seasons.own();
    assertThat(own.medium()).isEqualTo(new Medium.Tunnel());
    assertThat(own.minCelsius(LocalDate.of(2023, 9, 1)))
        .isCloseTo(TemperatureUnit.FAHRENHEIT.toCelsius(48), within(1e-12));
    var mast = seasons.neighbour().orElseThrow();
    assertThat(mast.maxCelsius(LocalDate.of(2018, 7, 2))).isCloseTo(14.35, within(1e-9));
    assertThat(mast.origin(LocalDate.of(2021, 11, 3))).isEqualTo(DayOrigin.MISSING);
    assertThat(seasons.pest().model().cutoff()).isEqualTo(UpperCutoff.HORIZONTAL);
  }

  @Test
  void gapsAndTheLastWeekAreFilled() {
    var temperatures = seasons.underWay().orElseThrow().temperatures();
    assertThat(temperatures.origin(LocalDate.of(2023, 10, 20))).isEqualTo(DayOrigin.INTERPOLATED);
    assertThat(temperatures.origin(LocalDate.of(2024, 2, 3))).isEqualTo(DayOrigin.OBSERVED);
    assertThat(temperatures.origin(LocalDate.of(2024, 2, 4))).isEqualTo(DayOrigin.NEIGHBOUR);
    assertThat(seasons.offset().orElseThrow().maximum().meanCelsius()).isCloseTo(5, within(0.3));
  }

  @Test
  void visitsAreReadWithTheirNights() {
    var traps = seasons.underWay().orElseThrow().traps();
    assertThat(traps.visits()).hasSize(46);
    assertThat(traps.visits().get(0).from()).isEqualTo("2023-09-01");
    assertThat(traps.visits().stream().filter(visit -> visit.state() == TrapState.FAILED))
        .singleElement()
        .satisfies(visit -> assertThat(visit.date()).isEqualTo("2023-11-14"));
    assertThat(traps.visits().stream().filter(visit -> visit.nightsOpen() == 5)).hasSize(1);
  }

  @Test
  void whatIsNotStatedIsReported() {
    assertThat(seasons.report().entries(Deed.ASSUMED))
        .extracting(entry -> entry.text())
        .anyMatch(text -> text.contains("day of issue 2024-02-10"))
        .anyMatch(text -> text.contains("first egg is not stated"))
        .anyMatch(text -> text.contains("medium air"));
    assertThat(seasons.report().entries(Deed.NOTED))
        .anyMatch(entry -> entry.toString().contains("\"put up by\""));
  }

  @Test
  void theScaleServesTheFit() {
    var observed = seasons.observed().get(0);
    assertThat(observed.scale().firstDay()).isEqualTo("2023-09-01");
    assertThat(observed.scale().degreeDaysCAtStartOf(LocalDate.of(2024, 2, 10)))
        .isBetween(1700.0, 2000.0);
  }
}
