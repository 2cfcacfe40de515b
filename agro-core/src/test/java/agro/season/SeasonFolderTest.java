package agro.season;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import agro.generation.TrapState;
import agro.report.InputProblem;
import agro.report.ReadReport.Deed;
import agro.weather.DayOrigin;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SeasonFolderTest {
  @TempDir Path folder;

  private PestSeasons redMoth(SmallFolder small) {
    return SeasonFolder.read(small.writeTo(folder)).pestAt("red moth", "Long Acre");
  }

  @Test
  void everythingForOnePestAtOnePlace() {
    var seasons = redMoth(new SmallFolder());
    assertThat(seasons.issueDate()).isEqualTo("2024-04-20");
    assertThat(seasons.report().entries(Deed.ASSUMED).get(0).text())
        .contains("day of issue 2024-04-20");
    assertThat(seasons.pest().range().expected().degreeDaysC()).isEqualTo(450);
    assertThat(seasons.pest().range().low().degreeDaysC()).isCloseTo(315, within(1e-9));
    assertThat(seasons.pest().range().sources()).hasSize(2);
    assertThat(seasons.seasons()).hasSize(1);
    var season = seasons.underWay().orElseThrow();
    assertThat(season.year()).isEqualTo(2024);
    assertThat(season.traps().visits()).hasSize(5);
    assertThat(season.traps().totalCatch()).isEqualTo(45);
    assertThat(season.traps().visits().get(4).state()).isEqualTo(TrapState.FULL);
    assertThat(season.traps().visits().get(4).lureRenewed()).isTrue();
  }

  @Test
  void theNeighbourBridgesFromTheEndOfTheLogToTheDayOfIssue() {
    var temperatures = redMoth(new SmallFolder()).underWay().orElseThrow().temperatures();
    assertThat(temperatures.firstDay()).isEqualTo("2024-03-01");
    assertThat(temperatures.lastDay()).isEqualTo("2024-04-20");
    var bridged = LocalDate.of(2024, 4, 19);
    assertThat(temperatures.origin(LocalDate.of(2024, 4, 17))).isEqualTo(DayOrigin.OBSERVED);
    assertThat(temperatures.origin(bridged)).isEqualTo(DayOrigin.NEIGHBOUR);
    // The field is one degree warmer on every day: 3 + 110 % 5 + 1.
    assertThat(temperatures.minCelsius(bridged)).isCloseTo(4, within(1e-9));
  }

  @Test
  void gapsAreFilledAndReported() {
    var small = new SmallFolder();
    var log = SmallFolder.days(LocalDate.of(2024, 2, 20), LocalDate.of(2024, 4, 17), 4);
    log = log.replaceAll("2024-03-1[0-5],.*\n", "").replaceAll("2024-03-20,.*\n", "");
    var seasons = redMoth(small.put("logs/long-acre.csv", log));
    var temperatures = seasons.underWay().orElseThrow().temperatures();
    assertThat(temperatures.origin(LocalDate.of(2024, 3, 12))).isEqualTo(DayOrigin.NEIGHBOUR);
    assertThat(temperatures.origin(LocalDate.of(2024, 3, 20))).isEqualTo(DayOrigin.INTERPOLATED);
    assertThat(seasons.report().entries(Deed.FILLED))
        .extracting(entry -> entry.text())
        .anyMatch(text -> text.contains("2024-03-10 to 2024-03-15"))
        .anyMatch(text -> text.contains("2024-03-20"));
  }

  @Test
  void withoutANeighbourTheSeasonEndsAtTheGapAndLaterVisitsAreDropped() {
    var log = SmallFolder.days(LocalDate.of(2024, 2, 20), LocalDate.of(2024, 4, 17), 4);
    var seasons =
        redMoth(
            new SmallFolder()
                .replacing("places.csv", "2,Hill Top", "2,")
                .put("logs/long-acre.csv", log.replaceAll("2024-04-0[6-9],.*\n", "")));
    var season = seasons.underWay().orElseThrow();
    assertThat(season.temperatures().lastDay()).isEqualTo("2024-04-05");
    assertThat(season.traps().visits()).hasSize(1);
    assertThat(seasons.report().entries(Deed.DROPPED))
        .extracting(entry -> entry.toString())
        .anyMatch(text -> text.contains("visits.csv, line 4"));
  }

  @Test
  void aSeasonWhoseStartIsNotKnownIsLeftOutOrRefused() {
    var late = SmallFolder.days(LocalDate.of(2024, 3, 5), LocalDate.of(2024, 4, 17), 4);
    var small = new SmallFolder().replacing("places.csv", "2,Hill Top", "2,");
    assertThatThrownBy(() -> redMoth(small.put("logs/long-acre.csv", late)))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("season_start");
  }

  @Test
  void aYearWithoutALogIsBridgedOrLeftOut() {
    var visits = "T1,2023-05-01,set,,\nT1,2023-05-05,working,2,\n";
    var small =
        new SmallFolder()
            .replacing("visits.csv", "T1,2024-04-01,set", visits + "T1,2024-04-01,set");
    var bridged = redMoth(small);
    assertThat(bridged.seasons()).extracting(FieldSeason::year).containsExactly(2023, 2024);
    assertThat(bridged.seasons().get(0).temperatures().origin(LocalDate.of(2023, 5, 1)))
        .isEqualTo(DayOrigin.NEIGHBOUR);
    var alone = redMoth(small.replacing("places.csv", "2,Hill Top", "2,"));
    assertThat(alone.seasons()).extracting(FieldSeason::year).containsExactly(2024);
    assertThat(alone.report().entries(Deed.DROPPED))
        .extracting(entry -> entry.text())
        .anyMatch(text -> text.contains("season 2023, with 1 visits"));
  }

  @Test
  void theDayOfIssueCutsEverythingThatCameLater() {
    var day = LocalDate.of(2024, 4, 10);
    var cut = SeasonFolder.read(new SmallFolder().writeTo(folder)).upTo(day);
    var spoilt = SmallFolder.days(LocalDate.of(2024, 2, 20), LocalDate.of(2024, 4, 17), 4);
    spoilt = spoilt.replaceAll("(2024-04-1[1-7]),.*", "$1,-9,33");
    var other =
        SeasonFolder.read(
                new SmallFolder()
                    .put("logs/long-acre.csv", spoilt)
                    .replacing("visits.csv", "full,40", "full,4000")
                    .writeTo(folder))
            .upTo(day);
    var seasons = cut.pestAt("red moth", "Long Acre");
    assertThat(seasons.seasons()).isEqualTo(other.pestAt("red moth", "Long Acre").seasons());
    assertThat(seasons.underWay().orElseThrow().temperatures().lastDay()).isEqualTo(day);
    assertThat(seasons.underWay().orElseThrow().traps().visits()).hasSize(3);
    assertThat(seasons.report().entries(Deed.ASSUMED))
        .noneMatch(entry -> entry.text().contains("day of issue"));
  }

  @Test
  void columnsThatTheLayoutDoesNotKnowAreReported() {
    var read =
        SeasonFolder.read(
            new SmallFolder()
                .replacing("traps.csv", "trap,place,pest", "trap,place,pest,nots")
                .replacing("traps.csv", "red moth\n", "red moth,x\n")
                .replacing("traps.csv", "root fly\n", "root fly,x\n")
                .writeTo(folder));
    assertThat(read.report().entries(Deed.NOTED))
        .anyMatch(entry -> entry.toString().contains("\"nots\""));
  }

  @Test
  void blankNamesAreChosenAndReported() {
    var read = SeasonFolder.read(new SmallFolder().writeTo(folder));
    var chosen = read.chosen("", "");
    assertThat(chosen.pest().name()).isEqualTo("red moth");
    assertThat(chosen.place().name()).isEqualTo("Long Acre");
    assertThat(chosen.report().entries(Deed.ASSUMED))
        .anyMatch(entry -> entry.text().startsWith("pest red moth"))
        .anyMatch(entry -> entry.text().startsWith("place Long Acre"));
    assertThat(chosen.seasons()).isEqualTo(read.pestAt("red moth", "Long Acre").seasons());
    assertThat(read.chosen("red moth", "Long Acre").report())
        .isEqualTo(read.pestAt("red moth", "Long Acre").report());
    assertThatThrownBy(() -> read.chosen("red mots", ""))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("red moth");
  }

  private static SmallFolder withSecondLog(int minimum) {
    return new SmallFolder()
        .put(
            "logs/more.csv",
            SmallFolder.days(LocalDate.of(2024, 4, 10), LocalDate.of(2024, 4, 19), minimum))
        .replacing(
            "logs.csv",
            "logs/hill-top.csv,",
            "logs/more.csv,Long Acre,daily extremes,day,min,max,°C\nlogs/hill-top.csv,");
  }

  @Test
  void logsOfAPlaceAreJoined() {
    var own = redMoth(withSecondLog(4)).own();
    assertThat(own.firstDay()).isEqualTo("2024-02-20");
    assertThat(own.lastDay()).isEqualTo("2024-04-19");
    assertThat(own.missingDays()).isEmpty();
  }

  @Test
  void logsOfAPlaceThatContradictEachOtherAreRefused() {
    assertThatThrownBy(() -> redMoth(withSecondLog(6)))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("two logs of Long Acre")
        .hasMessageContaining("2024-04-10");
  }

  @Test
  void forecastDaysCountOnlyIfTheyWereMadeByTheDayOfIssue() {
    var small =
        new SmallFolder()
            .put(
                "logs/may.csv",
                SmallFolder.days(LocalDate.of(2024, 4, 19), LocalDate.of(2024, 4, 25), 9))
            .put(
                "logs.csv",
                """
                file,place,kind,time_column,min_column,max_column,unit,made_on
                logs/long-acre.csv,Long Acre,daily extremes,day,min,max,°C,
                logs/hill-top.csv,Hill Top,daily extremes,day,min,max,°C,
                logs/may.csv,Long Acre,forecast days,day,min,max,°C,2024-04-18
                """);
    var read = SeasonFolder.read(small.writeTo(folder));
    var foreseen = read.pestAt("red moth", "Long Acre").forecastDays().orElseThrow();
    assertThat(foreseen.firstDay()).isEqualTo("2024-04-21");
    assertThat(foreseen.origin(foreseen.lastDay())).isEqualTo(DayOrigin.FORECAST);
    var earlier = read.upTo(LocalDate.of(2024, 4, 17)).pestAt("red moth", "Long Acre");
    assertThat(earlier.forecastDays()).isEmpty();
  }

  @Test
  void theTemplateIsReadableOnceItIsFilledIn() throws IOException {
    var target = folder.resolve("new");
    SeasonFolder.template(target);
    assertThat(SmallFolder.textOf(target.resolve("README.md")))
        .contains("## `visits.csv`")
        .contains("| `state` | no |");
    for (var table : FolderLayout.values()) {
      var file = target.resolve(table.fileName());
      // The examples are comments; without their marks they are lines of data.
      var lines = SmallFolder.textOf(file).lines().toList();
      var filled = new StringBuilder(lines.get(1)).append('\n');
      lines.stream().skip(2).forEach(line -> filled.append(line.substring(2)).append('\n'));
      Files.writeString(file, filled);
    }
    Files.createDirectories(target.resolve("logs"));
    var log = new StringBuilder("time,air\n");
    for (int hour = 0; hour < 24; hour++) {
      log.append(String.format(Locale.ROOT, "2026-03-20 %02d:00,%d\n", hour, 5 + hour % 12));
    }
    Files.writeString(target.resolve("logs/long-acre-2026.csv"), log);
    Files.writeString(target.resolve("logs/district-station.csv"), "day,min,max\n2026-03-20,2,9\n");
    var read = SeasonFolder.read(target);
    assertThat(read.places()).hasSize(2);
    assertThat(read.traps()).hasSize(1);
    assertThat(read.issueDate()).isEqualTo("2026-03-24");
  }

  @Test
  void theTemplateOverwritesNothing() throws IOException {
    Files.writeString(folder.resolve("traps.csv"), "mine");
    assertThatThrownBy(() -> SeasonFolder.template(folder))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("traps.csv");
    assertThat(SmallFolder.textOf(folder.resolve("traps.csv"))).isEqualTo("mine");
    assertThat(folder.resolve("README.md")).doesNotExist();
  }
}
