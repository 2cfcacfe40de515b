package agro.weather.archive;

import static agro.weather.archive.InventedArchive.STATION;
import static agro.weather.archive.InventedArchive.dayLine;
import static agro.weather.archive.InventedArchive.evenMonth;
import static agro.weather.archive.InventedArchive.monthLine;
import static agro.weather.archive.InventedArchive.value;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import agro.report.InputProblem;
import agro.report.ReadReport.Deed;
import agro.weather.DayOrigin;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.zip.GZIPOutputStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** All files here are invented, in the layouts of the archive's readme files. */
class GhcnDailyTest {

  private static final YearMonth JUNE = YearMonth.of(2021, 6);
  private static final LocalDate FIRST = LocalDate.of(2021, 6, 1);

  @Test
  void aMonthOfFixedColumnsIsReadInTenthsOfADegree() {
    var read = GhcnDaily.withDefaults().of(evenMonth(JUNE, -35, 127), "a.dly");

    assertThat(read.daily().place()).isEqualTo(STATION);
    assertThat(read.daily().size()).isEqualTo(30);
    assertThat(read.daily().minCelsius(FIRST)).isEqualTo(-3.5);
    assertThat(read.daily().maxCelsius(FIRST.plusDays(29))).isEqualTo(12.7);
    assertThat(read.report().rowsRead()).isEqualTo(2);
    assertThat(read.report().entries()).isEmpty();
  }

  @ParameterizedTest
  @EnumSource(GhcnQualityFlag.class)
  void aFlaggedValueIsLeftOutAndNamed(GhcnQualityFlag flag) {
    var lines = evenMonth(JUNE, 100, 200);
    lines.set(
        0, lines.get(0).substring(0, 21) + value(999, flag.letter()) + lines.get(0).substring(29));

    var read = GhcnDaily.withDefaults().of(lines, "a.dly");
    var kept = GhcnDaily.withDefaults().keepingFlagged().of(lines, "a.dly");

    assertThat(read.daily().firstDay()).isEqualTo(FIRST.plusDays(1));
    assertThat(read.report().entries(Deed.DROPPED))
        .extracting(Object::toString)
        .anyMatch(text -> text.contains("line 1") && text.contains(flag.words()))
        .anyMatch(text -> text.contains("1 day with one extreme alone"));
    assertThat(kept.daily().maxCelsius(FIRST)).isEqualTo(99.9);
    assertThat(kept.report().entries(Deed.NOTED))
        .extracting(Object::toString)
        .anyMatch(text -> text.contains("kept, as asked") && text.contains(flag.words()));
  }

  @Test
  void aDayWithoutValueIsMissingAndOtherElementsArePassedOver() {
    var lines =
        List.of(
            monthLine(STATION, JUNE, "PRCP", Map.of(1, value(12, ' '))),
            monthLine(
                STATION,
                JUNE,
                "TMAX",
                Map.of(1, value(200, ' '), 2, value(210, ' '), 4, value(220, ' '))),
            monthLine(
                STATION,
                JUNE,
                "TMIN",
                Map.of(1, value(100, ' '), 3, value(90, ' '), 4, value(80, ' '))));

    var read = GhcnDaily.withDefaults().withPlace("the hill").of(lines, "a.dly");

    assertThat(read.daily().place()).isEqualTo("the hill");
    assertThat(read.daily().size()).isEqualTo(4);
    assertThat(read.daily().origin(FIRST.plusDays(1))).isEqualTo(DayOrigin.MISSING);
    assertThat(read.daily().origin(FIRST.plusDays(2))).isEqualTo(DayOrigin.MISSING);
    assertThat(read.report().toString())
        .contains("2 days with one extreme alone")
        .contains("passed over: PRCP");
  }

  @Test
  void aByStationFileIsReadWithItsTimesOfObservation() {
    var lines =
        List.of(
            "ID,DATE,ELEMENT,DATA_VALUE,M_FLAG,Q_FLAG,S_FLAG,OBS_TIME",
            dayLine(FIRST, "TMAX", 211, "", "0700"),
            dayLine(FIRST, "TMIN", 98, "", "0700"),
            dayLine(FIRST.plusDays(1), "TMAX", 230, "I", "0700"),
            dayLine(FIRST.plusDays(1), "TMIN", 101, "", "0700"),
            dayLine(FIRST.plusDays(2), "TMAX", 240, "", ""),
            dayLine(FIRST.plusDays(2), "TMIN", 111, "", ""));

    var read = GhcnDaily.withDefaults().of(lines, "a.csv");

    assertThat(read.daily().maxCelsius(FIRST)).isEqualTo(21.1);
    assertThat(read.daily().missingDays()).containsExactly(FIRST.plusDays(1));
    assertThat(read.report().toString())
        .contains("observed at 0700, not at midnight")
        .contains("internal consistency check");
  }

  @Test
  void aMinimumAboveItsMaximumIsLeftOutWithItsLine() {
    var lines =
        List.of(
            dayLine(FIRST, "TMAX", 100, "", ""),
            dayLine(FIRST, "TMIN", 150, "", ""),
            dayLine(FIRST.plusDays(1), "TMAX", 200, "", ""),
            dayLine(FIRST.plusDays(1), "TMIN", 150, "", ""));

    var read = GhcnDaily.withDefaults().of(lines, "a.csv");

    assertThat(read.daily().size()).isEqualTo(1);
    assertThat(read.report().toString()).contains("line 2").contains("minimum is above");
  }

  @Test
  void oneStationIsReadOutOfSeveral() {
    var other = evenMonth(JUNE, 0, 50).stream().map(l -> "XXM00000002" + l.substring(11)).toList();
    var lines = new ArrayList<>(evenMonth(JUNE, 100, 200));
    lines.addAll(other);

    assertThatThrownBy(() -> GhcnDaily.withDefaults().of(lines, "a.dly"))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("2 stations: XXM00000001, XXM00000002");
    var read = GhcnDaily.withDefaults().withStation("XXM00000002").of(lines, "a.dly");
    assertThat(read.daily().maxCelsius(FIRST)).isEqualTo(5.0);
    assertThatThrownBy(() -> GhcnDaily.withDefaults().withStation("XXM0").of(lines, "a.dly"))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("no station XXM0");
  }

  @Test
  void damageIsRefusedWithItsLine() {
    var lines = evenMonth(JUNE, 100, 200);
    refuses(List.of("nonsense"), "line 1", "nonsense");
    refuses(List.of(), "no line", "layout");
    refuses(List.of(lines.get(0), lines.get(1).substring(0, 32)), "line 2", "middle of a value");
    refuses(
        List.of(lines.get(0), lines.get(1).substring(0, 21) + " 12x4" + lines.get(1).substring(26)),
        "line 2",
        "day 1");
    refuses(
        List.of(lines.get(0), lines.get(1).substring(0, 27) + "q" + lines.get(1).substring(28)),
        "line 2",
        "quality flag");
    refuses(
        List.of(lines.get(0).substring(0, 15) + "13" + lines.get(0).substring(17)),
        "line 1",
        "month 13");
    refuses(List.of(lines.get(0).substring(0, 261) + value(123, ' ')), "line 1", "no such day");
    refuses(
        List.of(lines.get(0), lines.get(0).replace("  200", "  210"), lines.get(1)),
        "line 2",
        "again, with another value");
    refuses(List.of(lines.get(0)), "a.dly", "no day with a minimum and a maximum");
    refuses(
        List.of(
            dayLine(FIRST, "TMAX", 1, "", ""),
            dayLine(FIRST, "TMIN", 1, "", "").replace("20210601", "20210631")),
        "line 2",
        "20210631");
  }

  private static void refuses(List<String> lines, String... parts) {
    assertThatThrownBy(() -> GhcnDaily.withDefaults().of(lines, "a.dly"))
        .isInstanceOf(InputProblem.class)
        .hasMessageContainingAll(parts);
  }

  @Test
  void compressedAndPlainFilesReadAlike(@TempDir Path folder) throws IOException {
    var text = String.join("\n", evenMonth(JUNE, 100, 200)) + "\n";
    var plain = Files.writeString(folder.resolve("a.dly"), text, StandardCharsets.UTF_8);
    var compressed = folder.resolve("b.dly.gz");
    try (var out = new GZIPOutputStream(Files.newOutputStream(compressed))) {
      out.write(text.getBytes(StandardCharsets.UTF_8));
    }
    var cut = folder.resolve("c.dly.gz");
    var bytes = Files.readAllBytes(compressed);
    Files.write(cut, Arrays.copyOf(bytes, bytes.length / 2));

    assertThat(GhcnDaily.withDefaults().read(compressed).daily())
        .isEqualTo(GhcnDaily.withDefaults().read(plain).daily());
    assertThatThrownBy(() -> GhcnDaily.withDefaults().read(cut))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("damaged");
  }

  @Property(seed = "8", tries = 200)
  void bothLayoutsGiveBackWhatWasWritten(
      @ForAll @IntRange(min = -899, max = 600) int minTenths,
      @ForAll @IntRange(min = 0, max = 300) int rangeTenths,
      @ForAll @IntRange(min = 1, max = 12) int month) {
    var when = YearMonth.of(2020, month);
    var fixed = evenMonth(when, minTenths, minTenths + rangeTenths);
    var byStation = new ArrayList<String>();
    for (int day = 1; day <= when.lengthOfMonth(); day++) {
      byStation.add(dayLine(when.atDay(day), "TMIN", minTenths, "", ""));
      byStation.add(dayLine(when.atDay(day), "TMAX", minTenths + rangeTenths, "", ""));
    }

    var read = GhcnDaily.withDefaults().of(fixed, "a.dly").daily();

    assertThat(read).isEqualTo(GhcnDaily.withDefaults().of(byStation, "a.csv").daily());
    assertThat(read.size()).isEqualTo(when.lengthOfMonth());
    assertThat(read.minCelsius(when.atEndOfMonth())).isEqualTo(minTenths / 10.0);
  }
}
