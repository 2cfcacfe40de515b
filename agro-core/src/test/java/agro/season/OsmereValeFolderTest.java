package agro.season;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import agro.demo.OsmereVale;
import agro.report.InputProblem;
import agro.report.ReadReport.Deed;
import agro.weather.DayOrigin;
import java.nio.file.Path;
import java.time.LocalDate;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The demonstration folder from end to end. */
class OsmereValeFolderTest {
  private static SeasonFolder folder;

  @BeforeAll
  static void read() {
    folder =
        SeasonFolder.read(
            Path.of(System.getProperty("basedir", ".")).resolve("../demo-data/osmere-vale"));
  }

  @Test
  void theDayOfIssueIsTheNewestDay() {
    assertThat(folder.issueDate()).isEqualTo("2026-06-16");
    assertThat(folder.pests()).extracting(MonitoredPest::name).contains("leek moth");
    assertThat(folder.traps()).hasSize(5);
  }

  @Test
  void fourSeasonsAndOneUnderWay() {
    var leekMoth = folder.pestAt("leek moth", "Upper Croft");
    assertThat(leekMoth.seasons())
        .extracting(FieldSeason::year)
        .containsExactly(2022, 2023, 2024, 2025, 2026);
    for (var season : leekMoth.seasons().subList(0, 4)) {
      assertThat(season.temperatures().firstDay()).isEqualTo(season.year() + "-03-01");
      assertThat(season.temperatures().lastDay()).isEqualTo(season.year() + "-10-31");
    }
    assertThat(leekMoth.pest().range().expected().degreeDaysC()).isCloseTo(469.6, within(1e-9));
    assertThat(leekMoth.observed()).hasSize(5);
  }

  @Test
  void theStationBridgesTheLastWeekAndTheLongGap() {
    var leekMoth = folder.pestAt("leek moth", "Upper Croft");
    var now = leekMoth.underWay().orElseThrow().temperatures();
    assertThat(now.origin(LocalDate.of(2026, 6, 8))).isEqualTo(DayOrigin.OBSERVED);
    assertThat(now.origin(LocalDate.of(2026, 6, 10))).isEqualTo(DayOrigin.NEIGHBOUR);
    assertThat(now.lastDay()).isEqualTo("2026-06-16");
    var gap = leekMoth.seasons().get(2).temperatures();
    long bridged =
        gap.firstDay()
            .datesUntil(gap.lastDay())
            .filter(day -> gap.origin(day) == DayOrigin.NEIGHBOUR)
            .count();
    assertThat(bridged).isBetween(8L, 10L);
    assertThat(leekMoth.report().entries(Deed.FILLED)).isNotEmpty();
    assertThat(leekMoth.offset().orElseThrow().maximum().meanCelsius()).isBetween(-2.5, -0.5);
  }

  @Test
  void theFilesTellWhatTheSeedTellsInMemory() {
    var read = folder.pestAt("leek moth", "Upper Croft");
    var made = OsmereVale.of(OsmereVale.SEED).leekMoth(folder.issueDate());
    for (int i = 0; i < 5; i++) {
      var one = read.seasons().get(i).temperatures();
      var other = made.seasons().get(i).temperatures();
      assertThat(read.seasons().get(i).traps().visits())
          .containsExactlyElementsOf(made.seasons().get(i).traps().visits());
      assertThat(one.lastDay()).isEqualTo(other.lastDay());
      one.firstDay()
          .datesUntil(one.lastDay())
          .filter(day -> one.origin(day) == DayOrigin.OBSERVED)
          .filter(day -> other.origin(day) == DayOrigin.OBSERVED)
          .forEach(
              day ->
                  assertThat(one.maxCelsius(day))
                      .as("maximum of %s", day)
                      .isBetween(other.maxCelsius(day) - 2, other.maxCelsius(day)));
    }
  }

  @Test
  void thePageShowsWhatWasUsed() {
    var text = folder.pestAt("leek moth", "Upper Croft").presentation().toText();
    assertThat(text)
        .contains("leek moth (Acrolepiopsis assectella)")
        .contains("2026-06-16, nothing later is used")
        .contains("329 to 657 °C·d, expected 470")
        .contains("Mason et al. (2010)")
        .contains("Offset between field and station");
  }

  @Test
  void fahrenheitWithDecimalCommas() {
    var diamondback = folder.pestAt("diamondback moth", "Mill Field");
    assertThat(diamondback.seasons()).hasSize(5);
    assertThat(diamondback.own().maxCelsius(LocalDate.of(2023, 7, 15))).isBetween(10.0, 40.0);
  }

  @Test
  void thresholdsForSoilRefuseTheAirOfSandLane() {
    assertThatThrownBy(() -> folder.pestAt("cabbage root fly", "Sand Lane"))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("soil");
  }

  @Test
  void aFolderIsFoundFromTheFoldersBelowItsPlace(@TempDir Path elsewhere) {
    var found = SeasonFolder.find("demo-data/osmere-vale");
    assertThat(found.report().rowsRead()).isEqualTo(folder.report().rowsRead());
    assertThat(Path.of(found.report().source())).endsWithRaw(Path.of("demo-data", "osmere-vale"));
    assertThatThrownBy(() -> SeasonFolder.find("no-such-folder/anywhere"))
        .hasMessageContaining("no-such-folder")
        .hasMessageContaining("there is no such folder");
    assertThatThrownBy(() -> SeasonFolder.find(elsewhere.resolve("absent").toString()))
        .hasMessageContaining("there is no such folder");
  }
}
