package agro.notebook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import agro.generation.DateDistribution;
import agro.generation.FlightShare;
import agro.generation.FlightTimingFit;
import agro.generation.GenerationForecast;
import agro.generation.IntervalVerdict;
import agro.notebook.run.CodeView;
import agro.notebook.run.NotebookRun;
import agro.notebook.run.NotebookRunner;
import agro.season.PestSeasons;
import agro.units.ThermalTime;
import agro.weather.DayOrigin;
import agro.working.Cell;
import agro.working.ResultTable;
import agro.working.Working;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The notebooks say what they are meant to say. Figures of Osmere Vale are a regression on
 * invented, seeded data and prove nothing about insects; the figures of single days are compared
 * with published or independently computed ones.
 */
class NotebookValuesTest {

  private static final Path NOTEBOOKS = Path.of("..", "notebooks");

  private static NotebookRun vale;

  private static NotebookRun run(String notebook, String folder) {
    var run =
        NotebookRunner.standard().withParameter("folder", folder).run(NOTEBOOKS.resolve(notebook));
    assertThat(run.failed()).isEmpty();
    return run;
  }

  @BeforeAll
  static void runTheForecast() {
    vale = run("01-the-next-generation.ipynb", "../demo-data/osmere-vale");
  }

  @Test
  void theSeasonOfOsmereVale() {
    var season = vale.checked("season", PestSeasons.class);
    assertThat(season.issueDate()).isEqualTo("2026-06-16");
    assertThat(season.pest().name()).isEqualTo("leek moth");
    assertThat(season.place().name()).isEqualTo("Upper Croft");
    assertThat(season.seasons()).hasSize(5);
    assertThat(season.underWay().orElseThrow().temperatures().origin(LocalDate.of(2026, 6, 12)))
        .isEqualTo(DayOrigin.NEIGHBOUR);
  }

  @Test
  void theSummaryAndThePicturesOfOsmereVale() {
    assertThat(vale.checked("forecast", ResultTable.class).rows()).hasSize(6);
    assertThat(vale.summary().replace('\u00a0', ' '))
        .contains("Flights to come: leek moth, Upper Croft, as of 16 June 2026", "not this season");
    assertThat(vale.pictures())
        .containsOnlyKeys("past-flights", "flights-to-come", "residuals", "all-fields");
  }

  @Test
  void theFitOfFourSeasons() {
    var fit = vale.checked("fit", FlightTimingFit.class);
    assertThat(fit.verdict()).isEqualTo(IntervalVerdict.SEVERAL_SEASONS);
    assertThat(fit.generations()).isEqualTo(3);
    var interval = fit.interval().orElseThrow();
    assertThat(interval.mean().degreeDaysC()).isCloseTo(537.2, within(0.5));
    assertThat(interval.halfWidthOfMeanC(0.9)).isCloseTo(27.3, within(0.5));
    assertThat(interval.bySeason())
        .zipSatisfy(
            List.of(512.1, 532.0, 536.4, 568.3),
            (fitted, expected) -> assertThat(fitted).isCloseTo(expected, within(0.5)));
    var pooled = fit.pooled().orElseThrow();
    assertThat(pooled.low()).isLessThan(pooled.estimate());
    assertThat(pooled.high()).isGreaterThan(pooled.estimate());
  }

  /** The forecast behind the table, made again from what the notebook fitted and read. */
  private static GenerationForecast forecast() {
    var season = vale.checked("season", PestSeasons.class);
    var forecast =
        GenerationForecast.of(
            vale.checked("fit", FlightTimingFit.class), season.ahead(1).underWay());
    assertThat(forecast.table()).isEqualTo(vale.checked("forecast", ResultTable.class));
    return forecast;
  }

  @ParameterizedTest
  @CsvSource({
    "2, FIRST, 2026-07-10, 0",
    "2, HALF, 2026-07-21, 0",
    "2, NEARLY_ALL, 2026-07-30, 0",
    "3, FIRST, 2026-09-02, 0.01",
    "3, HALF, 2026-09-20, 0.12",
    "3, NEARLY_ALL, , 0.53",
  })
  void datesAndChances(int flight, FlightShare share, LocalDate median, double notThisSeason) {
    var dates = forecast().flight(flight, share).orElseThrow().dates();
    assertThat(dates.median()).isEqualTo(Optional.ofNullable(median));
    assertThat(dates.chanceNotThisSeason()).isCloseTo(notThisSeason, within(0.005));
  }

  @Test
  void intervalsOfTheForecast() {
    var half = forecast().flight(2, FlightShare.HALF).orElseThrow().dates();
    assertThat(half.interval(0.9).from()).contains(LocalDate.of(2026, 7, 12));
    assertThat(half.interval(0.9).to()).contains(LocalDate.of(2026, 7, 31));
    assertThat(forecast().rows())
        .hasSize(6)
        .allSatisfy(
            row -> {
              assertLiesWithin(row.dates(), 0.5, 0.8);
              assertLiesWithin(row.dates(), 0.8, 0.9);
            });
  }

  private static void assertLiesWithin(DateDistribution dates, double inner, double outer) {
    assertThat(dates.quantileDays((1 - outer) / 2))
        .isLessThanOrEqualTo(dates.quantileDays((1 - inner) / 2));
    assertThat(dates.quantileDays((1 + outer) / 2))
        .isGreaterThanOrEqualTo(dates.quantileDays((1 + inner) / 2));
  }

  /** Another folder, another half of the earth, and nothing set but the folder. */
  @Test
  void theSameNotebookOnAnotherFolder() {
    var run =
        run(
            "01-the-next-generation.ipynb",
            "../agro-core/src/test/resources/agro/season/bellbird-flat");
    assertThat(run.checked("season", PestSeasons.class).place().name()).isEqualTo("Bellbird Flat");
    assertThat(run.checked("fit", FlightTimingFit.class).verdict())
        .isEqualTo(IntervalVerdict.NOT_IDENTIFIED);
    assertThat(run.summary().replace('\u00a0', ' '))
        .contains("tomato leafminer, Bellbird Flat, as of 10 February 2024", "Feb");
    assertThat(run.toPage(CodeView.FOLDED))
        .contains("2023-10-20: not in the log, left as missing", "from Town mast");
  }

  /**
   * A day from 5 to 25 °C above 10 °C by the sine is 6.089978 °C·d, one from 2 to 14 °C 1.0170
   * (numerical integration of the curve); the plain average sees 5 and 0.
   */
  @Test
  void degreeDays() {
    var run = run("02-degree-days.ipynb", "../demo-data/osmere-vale");
    var steps = run.checked("day", Working.class).steps();
    assertThat(steps.get(steps.size() - 1).result()).isEqualTo("6.0900 °C·d");
    var shortCut = run.checked("shortcut", ResultTable.class).rows();
    assertThat(value(shortCut.get(1).get(2))).isEqualTo(5);
    assertThat(value(shortCut.get(1).get(3))).isCloseTo(6.089978, within(1e-6));
    assertThat(value(shortCut.get(2).get(2))).isZero();
    assertThat(value(shortCut.get(2).get(3))).isCloseTo(1.0170, within(5e-5));
    assertThat(run.checked("fahrenheit", ThermalTime.class).degreeDaysC())
        .isCloseTo(100, within(1e-12));
    var cutoffs = run.checked("cutoffs", ResultTable.class).rows();
    for (var i = 0; i < 4; i++) {
      assertThat(value(cutoffs.get(i).get(1))).isCloseTo(hotDay(i), within(1e-4));
    }
    fromDaysToADate(run);
  }

  /** Invented temperatures: a regression, and warmer days that must hold more. */
  private static void fromDaysToADate(NotebookRun run) {
    assertThat(run.checked("reached", LocalDate.class)).isEqualTo("2025-07-22");
    assertThat(slips(run))
        .zipSatisfy(
            List.of(9.605, 30.350, 41.950, 35.350),
            (sum, expected) -> assertThat(sum).isCloseTo(expected, within(0.001)));
  }

  private static List<Double> slips(NotebookRun run) {
    return run.checked("slip", ResultTable.class).rows().stream()
        .map(row -> value(row.get(1)))
        .toList();
  }

  /** A day from 15 to 38 °C between 10 and 30 °C, by the midpoint rule on the rate itself. */
  private static double hotDay(int cutoff) {
    var points = 2_000_000;
    var sum = 0.0;
    for (var i = 0; i < points; i++) {
      var celsius = 26.5 - 11.5 * Math.cos(2 * Math.PI * (i + 0.5) / points);
      var above = celsius > 30;
      var rate = celsius - 10;
      if (above) {
        rate = new double[] {rate, 20, 50 - celsius, 0}[cutoff];
      }
      sum += Math.max(0, rate);
    }
    return sum / points;
  }

  private static double value(Cell cell) {
    return ((Cell.Figure) cell).value();
  }
}
