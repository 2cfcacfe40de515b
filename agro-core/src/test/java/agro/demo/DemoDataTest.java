package agro.demo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.time.LocalDate;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;

@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class DemoDataTest {
  private final OsmereVale vale = OsmereVale.of(OsmereVale.SEED);

  @Test
  void committedFilesAreWhatTheSeedGives() throws IOException {
    var folder = WriteDemoData.folder();
    var files = DemoFiles.of(vale);
    for (var file : files.entrySet()) {
      var committed = Files.readString(folder.resolve(file.getKey()), StandardCharsets.UTF_8);
      assertThat(committed.equals(file.getValue()))
          .as("%s is as the seed gives it; rewrite it as WriteDemoData says", file.getKey())
          .isTrue();
    }
    var present = new TreeSet<String>();
    try (var paths = Files.walk(folder)) {
      paths
          .filter(Files::isRegularFile)
          .forEach(path -> present.add(folder.relativize(path).toString().replace('\\', '/')));
    }
    assertThat(present).containsExactlyInAnyOrderElementsOf(files.keySet());
  }

  @Test
  void everyFileSaysThatItIsInvented() {
    assertThat(DemoFiles.of(vale).values())
        .allSatisfy(
            text ->
                assertThat(text.substring(0, Math.min(200, text.length()))).contains("invented"));
  }

  @Test
  void theScenarioHoldsWhatThePagesNeed() {
    var states = vale.leekMothVisits(2023).stream().map(VisitNote::state).toList();
    assertThat(states).contains("set", "working");
    assertThat(vale.leekMothVisits(2025).stream().map(VisitNote::state)).contains("failed");
    assertThat(vale.leekMothVisits(2024).stream().map(VisitNote::state)).contains("full");
    assertThat(vale.leekMothTruth(2024).flight(3).orElseThrow().dateOf(0.5)).isPresent();
    assertThat(vale.leekMothTruth(2025).flight(3).orElseThrow().dateOf(0.5)).isEmpty();
  }

  @Test
  void theRearingIsALineWithASoftFootAndAHotEnd() {
    assertThat((RearingBook.trueRate(20) - RearingBook.trueRate(16)) * 440 / 4)
        .isCloseTo(1, within(0.01));
    assertThat(RearingBook.trueRate(18)).isCloseTo(11.0 / 440, within(0.0001));
    assertThat(RearingBook.trueRate(36)).isZero();
    assertThat(RearingBook.trueRate(29.1))
        .isGreaterThan(RearingBook.trueRate(28.4))
        .isGreaterThan(RearingBook.trueRate(29.8));
    var lines = RearingBook.of(OsmereVale.SEED).lines().skip(3).map(line -> line.split(",", -1));
    assertThat(lines.map(cells -> cells[6]).distinct().toList())
        .containsExactlyInAnyOrder("developed", "died", "alive");
    assertThat(RearingBook.of(9)).isNotEqualTo(RearingBook.of(OsmereVale.SEED));
  }

  @Test
  void seriesInMemoryAreThoseOfTheFiles() {
    assertThat(vale.upperCroft(2024).missingDays()).hasSizeBetween(8, 12);
    assertThat(vale.upperCroft(2026).lastDay()).isEqualTo(HourlyLogger.LAST_READ);
    assertThat(vale.station().firstDay()).isEqualTo("2011-01-01");
    assertThat(vale.leekMothTraps(2026).visits().get(0).date()).isAfter("2026-03-20");
    assertThat(vale.leekMothTraps(2026).upTo(OsmereVale.ISSUE_DATE))
        .isEqualTo(vale.leekMothTraps(2026));
  }

  @Test
  void oneCallGivesTheSeasonsOfASeed() {
    var seasons = vale.leekMoth(OsmereVale.ISSUE_DATE);
    assertThat(seasons.observed()).hasSize(5);
    assertThat(seasons.underWay().orElseThrow().temperatures().lastDay())
        .isEqualTo(OsmereVale.ISSUE_DATE);
    assertThat(vale.diamondbackMoth(OsmereVale.ISSUE_DATE).seasons()).hasSize(5);
    assertThat(vale.leekMoth(LocalDate.of(2025, 7, 1)).seasons()).hasSize(4);
  }

  @Test
  void anotherSeedGivesAnotherVale() {
    assertThat(OsmereVale.of(9).leekMothVisits(2023)).isNotEqualTo(vale.leekMothVisits(2023));
  }
}
