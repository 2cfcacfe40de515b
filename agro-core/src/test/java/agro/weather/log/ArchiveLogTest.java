package agro.weather.log;

import static agro.weather.archive.InventedArchive.STATION;
import static agro.weather.archive.InventedArchive.dayLine;
import static agro.weather.archive.InventedArchive.evenMonth;
import static agro.weather.archive.InventedArchive.hourLine;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import agro.report.InputProblem;
import agro.report.Progress;
import agro.report.ReadReport.Deed;
import agro.units.TemperatureUnit;
import agro.weather.Medium;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.YearMonth;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.zip.GZIPOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The one call reads the archives' layouts; all files here are invented. */
class ArchiveLogTest {

  private static final LocalDate DAY = LocalDate.of(2021, 6, 30);
  private static final YearMonth JUNE = YearMonth.of(2021, 6);

  @TempDir Path folder;

  private Path file(String name, List<String> lines) throws IOException {
    return Files.write(folder.resolve(name), lines);
  }

  private static List<String> hours(int days) {
    var lines = new ArrayList<String>();
    for (int hour = 0; hour < 24 * days; hour++) {
      lines.add(hourLine(DAY.plusDays(hour / 24), hour % 24, 100 + hour % 24 + 10 * (hour / 24)));
    }
    return lines;
  }

  @Test
  void monthsOfFixedColumnsAreDailyExtremes() throws IOException {
    var log = TemperatureLog.read(file("XXM00000001.dly", evenMonth(JUNE, -35, 127)));

    assertThat(log.readings()).isEmpty();
    assertThat(log.daily().size()).isEqualTo(30);
    assertThat(log.daily().place()).isEqualTo("XXM00000001");
    assertThat(log.daily().minCelsius(DAY)).isEqualTo(-3.5);
    assertThat(log.daily().maxCelsius(DAY)).isEqualTo(12.7);
    assertThat(log.report().rowsRead()).isEqualTo(2);
    assertThat(log.report().toString()).contains("Global Historical Climatology Network");
  }

  @Test
  void byStationFilesArePackedOrNotAndFlagsAreHonoured() throws IOException {
    var lines =
        List.of(
            "# invented",
            dayLine(DAY, "TMAX", 211, "", "0700"),
            dayLine(DAY, "TMIN", 98, "", "0700"),
            dayLine(DAY.plusDays(1), "TMAX", 230, "I", "0700"),
            dayLine(DAY.plusDays(1), "TMIN", 101, "", "0700"),
            dayLine(DAY.plusDays(2), "TMAX", 240, "", ""),
            dayLine(DAY.plusDays(2), "TMIN", 111, "", ""));
    var packed = folder.resolve("station.csv.gz");
    try (var out = new GZIPOutputStream(Files.newOutputStream(packed))) {
      out.write(String.join("\n", lines).getBytes(StandardCharsets.UTF_8));
    }
    var log = TemperatureLog.read(packed);

    assertThat(log.daily().missingDays()).containsExactly(DAY.plusDays(1));
    assertThat(log.daily()).isEqualTo(TemperatureLog.read(file("station.csv", lines)).daily());
    assertThat(log.report().toString())
        .contains("packed with gzip", "line 4", "internal consistency", "observed at 0700");
    assertThat(TemperatureLog.read(packed, log.format()).daily()).isEqualTo(log.daily());
  }

  @Test
  void hourlyFilesAreReadingsAndDaysByTheSameRule() throws IOException {
    var lines = hours(3);
    lines.subList(24 + 8, 24 + 14).clear();
    var log = TemperatureLog.read(file("hours.txt", lines));

    assertThat(log.readings().orElseThrow().size()).isEqualTo(66);
    assertThat(log.daily().missingDays()).containsExactly(DAY.plusDays(1));
    assertThat(log.daily().minCelsius(DAY)).isEqualTo(10.0);
    assertThat(log.daily().maxCelsius(DAY.plusDays(2))).isEqualTo(14.3);
    assertThat(log.report().entries(Deed.DROPPED)).singleElement().asString().contains("no gap");
    assertThat(log.report().toString())
        .contains("midnight of UTC", "at least 75 % of the readings", "one every 1 h");
    assertThat(log.format().declaration()).contains("withDayOffset");
    assertThat(TemperatureLog.read(file("hours.txt", lines), log.format()).daily())
        .isEqualTo(log.daily());
    var loose = LogFormat.detect().withCompleteness(new CompletenessRule(0.5, Duration.ofHours(8)));
    assertThat(TemperatureLog.read(file("hours.txt", lines), loose).daily().missingDays())
        .isEmpty();
  }

  @Test
  void daysOfHourlyFilesAreCutWhereItIsDeclared() throws IOException {
    var there = LogFormat.detect().withDayOffset(ZoneOffset.ofHours(-8));
    var log = TemperatureLog.read(file("hours.txt", hours(3)), there);

    assertThat(log.daily().firstDay()).isEqualTo(DAY);
    assertThat(log.daily().size()).isEqualTo(2);
    assertThat(log.daily().minCelsius(DAY)).isEqualTo(10.8);
    assertThat(log.report().entries(Deed.ASSUMED))
        .noneMatch(entry -> entry.toString().contains("UTC"));
  }

  @Test
  void onlyKnownDaysAreRead() throws IOException {
    for (var file : List.of(file("h.txt", hours(3)), file("d.dly", evenMonth(JUNE, 1, 2)))) {
      var log =
          TemperatureLog.readKnown(
              file,
              "log",
              LogFormat.detect(),
              "the hill",
              Medium.shelterAir(),
              day -> !day.isAfter(DAY),
              Progress.silent());
      assertThat(log.daily().lastDay()).isEqualTo(DAY);
      assertThat(log.readings().map(readings -> readings.size()).orElse(24)).isEqualTo(24);
    }
  }

  @Test
  void severalStationsAreAskedForOrAllRead() throws IOException {
    var lines = new ArrayList<>(evenMonth(JUNE, 100, 200));
    evenMonth(JUNE, 50, 90).forEach(line -> lines.add(line.replace(STATION, "XXM00000002")));
    var both = file("both.dly", lines);

    assertThatThrownBy(() -> TemperatureLog.read(both))
        .isInstanceOf(InputProblem.class)
        .hasMessageContainingAll("2 stations", "withSensor(\"XXM00000001\")", "readAll");
    var second = TemperatureLog.read(both, LogFormat.detect().withSensor("XXM00000002"));
    assertThat(second.daily().maxCelsius(DAY)).isEqualTo(9.0);
    var all = TemperatureLog.readAll(both, LogFormat.detect(), "hills", Medium.shelterAir());
    assertThat(all).containsOnlyKeys(STATION, "XXM00000002");
    assertThat(all.get("XXM00000002").daily().place()).isEqualTo("hills, XXM00000002");
  }

  @Test
  void declarationsAgainstTheLayoutAreRefused() throws IOException {
    var daily = file("d.dly", evenMonth(JUNE, 1, 2));
    assertThatThrownBy(
            () ->
                TemperatureLog.read(daily, LogFormat.detect().withUnit(TemperatureUnit.FAHRENHEIT)))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("tenths of a degree Celsius");
    var hourly = file("h.txt", hours(2));
    assertThatThrownBy(
            () ->
                TemperatureLog.read(hourly, LogFormat.detect().withZone(ZoneId.of("Europe/Paris"))))
        .isInstanceOf(InputProblem.class)
        .hasMessageContainingAll("hours in UTC", "withDayOffset");
  }

  @Test
  void aDamagedLineOfAnArchiveIsRefusedWithItsNumber() throws IOException {
    var lines = hours(2);
    lines.set(30, lines.get(30).substring(3));
    var damaged = file("h.txt", lines);
    assertThatThrownBy(() -> TemperatureLog.read(damaged))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("line 31");
  }

  @Test
  void whatNoThermometerShowsIsLeftOutAndGapsAreTold() throws IOException {
    var lines = new ArrayList<String>();
    for (int i = 0; i < 10; i++) {
      if (i < 5 || i > 7) {
        lines.add(dayLine(DAY.plusDays(i), "TMAX", i == 2 ? 827 : 211, "", ""));
        lines.add(dayLine(DAY.plusDays(i), "TMIN", 98, "", ""));
      }
    }
    var log = TemperatureLog.read(file("d.csv", lines));
    assertThat(log.daily().missingDays())
        .containsExactly(DAY.plusDays(2), DAY.plusDays(5), DAY.plusDays(6), DAY.plusDays(7));
    assertThat(log.report().toString())
        .contains("1 day beyond -90 to 60", "4 of 10 days", "2021-07-05 to 2021-07-07 (3 days)");

    var hours = hours(2);
    hours.set(5, hourLine(DAY, 5, 999));
    assertThat(TemperatureLog.read(file("h.txt", hours)).report().toString())
        .contains("1 hour beyond");
  }

  @Test
  void maximaOfAMorningReadingAreMovedWhenThatIsDeclared() throws IOException {
    var lines = new ArrayList<String>();
    for (int i = 0; i < 5; i++) {
      lines.add(dayLine(DAY.plusDays(i), "TMAX", 200 + i, "", "0700"));
      lines.add(dayLine(DAY.plusDays(i), "TMIN", i == 3 ? 195 : 90 + i, "", "0700"));
    }
    lines.set(8, dayLine(DAY.plusDays(4), "TMAX", 194, "", "0700"));
    var atSeven = new ExtremesReadAt(LocalTime.of(7, 0), ExtremesReadAt.MaximumDay.DAY_BEFORE);
    var format = LogFormat.detect().withExtremesReadAt(atSeven);
    var log = TemperatureLog.read(file("d.csv", lines), format);
    assertThat(log.daily().lastDay()).isEqualTo(DAY.plusDays(2));
    assertThat(log.daily().minCelsius(DAY)).isEqualTo(9.0);
    assertThat(log.daily().maxCelsius(DAY)).isEqualTo(20.1);
    assertThat(log.report().toString())
        .contains("each maximum is given to the day before", "1 days whose minimum");
  }

  /** Bytes changed at random: a reading or a refusal, never another exception. */
  @Test
  void damagedFilesAreReadOrRefused() throws IOException {
    var byStation = new ArrayList<String>();
    for (int i = 0; i < 20; i++) {
      byStation.add(dayLine(DAY.plusDays(i), "TMAX", 211, "", "0700"));
      byStation.add(dayLine(DAY.plusDays(i), "TMIN", 98, "", ""));
    }
    var random = new Random(20210630);
    int refused = 0;
    for (var lines : List.of(evenMonth(JUNE, -35, 127), byStation, hours(2))) {
      var whole = String.join("\n", lines).getBytes(StandardCharsets.US_ASCII);
      for (int i = 0; i < 100; i++) {
        var bytes = whole.clone();
        for (int change = 0; change <= random.nextInt(3); change++) {
          bytes[random.nextInt(bytes.length)] =
              (byte) (random.nextBoolean() ? random.nextInt(256) : '0' + random.nextInt(10));
        }
        var file = Files.write(folder.resolve("damaged"), bytes);
        try {
          assertThat(TemperatureLog.read(file).daily().size()).isPositive();
        } catch (InputProblem problem) {
          refused++;
        }
      }
    }
    assertThat(refused).isBetween(30, 280);
  }
}
