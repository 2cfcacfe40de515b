package agro.season;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import agro.generation.FlightTiming;
import agro.generation.GenerationForecast;
import agro.generation.skill.HindcastScheme;
import agro.generation.skill.SeasonArchive;
import java.nio.file.Path;
import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** No datum later than the day of issue reaches a forecast, whatever it reads. */
class NothingLaterTest {

  @TempDir private Path folder;

  private static PestSeasons leekMoth(Path folder, LocalDate day) {
    return SeasonFolder.read(folder, day).pestAt("leek moth", "Upper Croft");
  }

  /** One that stands in the middle of an interval between visits, others at its ends. */
  @ParameterizedTest
  @CsvSource({
    "2022-06-15,NaN,NaN",
    "2023-07-11,1e6,1000000",
    "2024-05-20,NaN,",
    "2025-03-01,1e6,NaN",
    "2026-06-02,1e6,1000000"
  })
  void laterDataChangeNothing(LocalDate day, String temperature, String count) {
    SpoiltLater.write(folder, date -> date.isAfter(day), temperature, count == null ? "" : count);
    var honest = leekMoth(SpoiltLater.DEMO, day);
    var tried = leekMoth(folder, day);
    assertThat(tried.seasons()).isEqualTo(honest.seasons());
    assertThat(tried.offset()).isEqualTo(honest.offset());
    assertThat(tried.neighbour()).isEqualTo(honest.neighbour());
    assertThat(tried.own()).isEqualTo(honest.own());
    assertThat(tried.report().entries()).isEqualTo(honest.report().entries());
    assertThat(tried.ahead(3)).isEqualTo(honest.ahead(3));
    // A folder that was read whole and cut afterwards knows the same.
    var cut = SeasonFolder.read(SpoiltLater.DEMO).upTo(day).pestAt("leek moth", "Upper Croft");
    assertThat(cut.seasons()).isEqualTo(honest.seasons());
    assertThat(cut.ahead(3)).isEqualTo(honest.ahead(3));
  }

  @Test
  void theForecastIsTheSameToTheLastBit() {
    var day = LocalDate.of(2024, 5, 20);
    SpoiltLater.write(folder, date -> date.isAfter(day), "1e6", "1000000");
    var honest = forecast(leekMoth(SpoiltLater.DEMO, day));
    var tried = forecast(leekMoth(folder, day));
    assertThat(tried.rows()).isNotEmpty().isEqualTo(honest.rows());
    assertThat(tried.report()).isEqualTo(honest.report());
    assertThat(tried.fit().visits()).isEqualTo(honest.fit().visits());
  }

  private static GenerationForecast forecast(PestSeasons seasons) {
    var fit = FlightTiming.searching(seasons.pest().range()).fit(seasons.past());
    return GenerationForecast.of(fit, seasons.ahead(1).underWay());
  }

  /** The control: what was known does matter. */
  @Test
  void earlierDataDo() {
    var day = LocalDate.of(2024, 5, 20);
    SpoiltLater.write(folder, date -> date.equals(day), "11.25", "7");
    var honest = leekMoth(SpoiltLater.DEMO, day);
    var tried = leekMoth(folder, day);
    assertThat(tried.seasons()).isNotEqualTo(honest.seasons());
    assertThat(tried.ahead(3)).isNotEqualTo(honest.ahead(3));
  }

  @ParameterizedTest
  @CsvSource({"2022-06-15,-999,0", "2023-07-11,48.5,1000000", "2025-03-01,-999,1000000"})
  void theRestOfASeasonChangesNothingWhenItIsLeftOut(
      LocalDate day, String temperature, String count) {
    SpoiltLater.write(
        folder,
        date -> date.isAfter(day) && date.getYear() == day.getYear(),
        temperature.equals("-999") ? "" : temperature,
        count);
    var honest = known(SpoiltLater.DEMO, day);
    var tried = known(folder, day);
    assertThat(tried.underWay()).isEqualTo(honest.underWay());
    assertThat(tried.past()).hasSameSizeAs(honest.past()).hasSize(4);
    for (var i = 0; i < tried.past().size(); i++) {
      assertThat(tried.past().get(i).traps()).isEqualTo(honest.past().get(i).traps());
      assertThat(tried.past().get(i).scale().sumsC())
          .isEqualTo(honest.past().get(i).scale().sumsC());
    }
    assertThat(tried.past()).noneMatch(past -> past.year() == day.getYear());
    assertThat(tried.past()).anyMatch(past -> past.year() > day.getYear());
  }

  private static SeasonArchive.Known known(Path folder, LocalDate day) {
    return SeasonFolder.read(folder)
        .archive("leek moth", "Upper Croft")
        .known(day.getYear(), day, HindcastScheme.LEAVE_ONE_OUT);
  }

  /** The station has run since 2011; the season that is forecast is none of the years ahead. */
  @Test
  void theWeatherAheadIsNeverThatOfTheSeasonItself() {
    var archive = SeasonFolder.read(SpoiltLater.DEMO).archive("", "");
    var day = LocalDate.of(2024, 6, 1);
    var earlier = archive.known(2024, day, HindcastScheme.ONLY_EARLIER).underWay();
    assertThat(earlier.members()).hasSize(2023 - 2011 + 1);
    var others = archive.known(2024, day, HindcastScheme.LEAVE_ONE_OUT).underWay();
    assertThat(others.members()).hasSize(2025 - 2011);
  }

  @Test
  void onADayBeforeEverythingNothingIsKnown() {
    assertThatThrownBy(() -> SeasonFolder.read(SpoiltLater.DEMO, LocalDate.of(2000, 1, 1)))
        .hasMessageContaining("nothing was known on that day")
        .hasMessageContaining("choose a later day");
  }

  @Test
  void seasonsThatAreOver() {
    var archive = SeasonFolder.read(SpoiltLater.DEMO).archive("", "");
    assertThat(archive.seasons())
        .extracting(season -> season.year())
        .containsExactly(2022, 2023, 2024, 2025);
    assertThat(archive.pest()).isEqualTo("leek moth");
    assertThat(archive.place()).isEqualTo("Upper Croft");
    assertThat(archive.lastDay(2024)).isEqualTo("2024-10-31");
  }
}
