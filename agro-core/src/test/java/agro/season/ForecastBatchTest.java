package agro.season;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import agro.report.InputProblem;
import agro.report.Progress;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CancellationException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Forecasts of many places, one bad among them, in one folder and in several. */
class ForecastBatchTest {

  @TempDir Path temporary;

  private BellbirdDistrict district(String name) {
    return new BellbirdDistrict(temporary.resolve(name));
  }

  private BellbirdDistrict two(String name) {
    var district = district(name);
    return district.withPlace("South Bed", district.tunnel());
  }

  @Test
  void everyPestAndPlaceHasAForecast() {
    var district = two("two");
    var batch = ForecastBatch.of(SeasonFolder.read(district.folder)).run(Progress.silent());
    assertThat(batch.places())
        .extracting(PlaceForecast::place)
        .containsExactly(BellbirdDistrict.FLAT, "South Bed");
    assertThat(batch.failed()).isEmpty();
    var alone = district.seasons();
    assertThat(batch.at(BellbirdDistrict.PEST, BellbirdDistrict.FLAT).orElseThrow())
        .isEqualTo(alone.forecast(alone.fit(), 1));
    var rows = batch.forecasts().stream().mapToInt(each -> each.rows().size()).sum();
    assertThat(batch.table().rows()).hasSize(rows);
    assertThat(batch.table().columns().get(0).name()).isEqualTo("Pest");
    assertThat(batch.presentation().toText())
        .contains("Flights to come", "South Bed", "Before you use these figures");
  }

  @Test
  void theNumberAtATimeDoesNotMatter() {
    var batch = ForecastBatch.ofFolders(List.of(two("two").folder));
    assertThat(batch.atATime(1).run(Progress.silent()))
        .isEqualTo(batch.atATime(3).run(Progress.silent()));
  }

  @Test
  void aBadStationIsToldAndTheOthersServed() {
    var district = district("bad");
    district.withPlace("South Bed", district.tunnel().replaceFirst("\t\\d+", "\tcold"));
    assertThatThrownBy(() -> SeasonFolder.read(district.folder)).isInstanceOf(InputProblem.class);
    var batch = ForecastBatch.ofFolders(List.of(district.folder)).run(Progress.silent());
    assertThat(batch.forecasts()).hasSize(1);
    assertThat(batch.failed())
        .singleElement()
        .extracting(PlaceForecast::place)
        .isEqualTo("South Bed");
    assertThat(batch.failed().get(0).problem()).contains("second.tsv").contains("cold");
    assertThat(batch.problems().toText()).contains("South Bed");
    assertThat(batch.presentation().toText()).contains("Places without a forecast");
  }

  /** A neighbour that cannot be read is missed by those that need it: silence would mislead. */
  @Test
  void aBadNeighbourIsToldOfEveryPlaceThatNeedsIt() {
    var district = two("mast").put("mast.txt", "stamp;tn;tx\n20230101;warm;300\n");
    var batch = ForecastBatch.ofFolders(List.of(district.folder)).run(Progress.silent());
    assertThat(batch.forecasts()).isEmpty();
    assertThat(batch.failed())
        .hasSize(2)
        .allSatisfy(place -> assertThat(place.problem()).contains("mast.txt"));
  }

  @Test
  void severalFoldersAndOneThatIsNone() {
    var first = district("first");
    var second = district("second");
    var nowhere = temporary.resolve("nowhere");
    var batch =
        ForecastBatch.ofFolders(List.of(first.folder, nowhere, second.folder))
            .run(Progress.silent());
    assertThat(batch.places())
        .extracting(PlaceForecast::folder)
        .containsExactly(first.folder.toString(), nowhere.toString(), second.folder.toString());
    assertThat(batch.forecasts()).hasSize(2);
    assertThat(batch.failed().get(0).problem()).contains("there is no such folder");
    assertThat(batch.table().columns().get(0).name()).isEqualTo("Folder");
  }

  @Test
  void anEarlierDayOfIssueHoldsForAll() {
    var day = LocalDate.of(2024, 1, 15);
    var district = two("two");
    var batch = ForecastBatch.ofFolders(List.of(district.folder)).asOf(day);
    assertThat(batch.run(Progress.silent()).forecasts())
        .hasSize(2)
        .allSatisfy(forecast -> assertThat(forecast.season().asOf()).isEqualTo(day));
    var open = ForecastBatch.of(SeasonFolder.read(district.folder)).asOf(day);
    assertThat(open.run(Progress.silent()).forecasts())
        .isEqualTo(batch.run(Progress.silent()).forecasts());
  }

  @Test
  void whatNobodyHasIsToldAtOnce() {
    var batch = ForecastBatch.of(SeasonFolder.read(two("two").folder));
    assertThat(batch.only("", "South Bed").run(Progress.silent()).places()).hasSize(1);
    assertThatThrownBy(() -> batch.only("onion fly", "").run(Progress.silent()))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("the pest \"onion fly\"");
    assertThatThrownBy(() -> batch.atATime(0)).hasMessageContaining("0 forecasts at a time");
    assertThatThrownBy(() -> ForecastBatch.ofFolders(List.of()))
        .hasMessageContaining("a batch of no folder");
  }

  @Test
  void progressIsHeardAndMayCancel() {
    var heard = new ArrayList<String>();
    var batch = ForecastBatch.ofFolders(List.of(two("two").folder)).atATime(1);
    batch.run(
        (what, done, total) -> {
          assertThat(done).isBetween(0L, total);
          heard.add(what);
          return true;
        });
    assertThat(heard).contains("season folders", "forecasts");
    assertThatThrownBy(() -> batch.run((what, done, total) -> !what.equals("forecasts")))
        .isInstanceOf(CancellationException.class)
        .hasMessageContaining("forecasts was cancelled");
  }
}
