package agro.weather.log;

import static org.assertj.core.api.Assertions.assertThat;

import agro.reading.DelimitedFormat;
import agro.reading.DelimitedText;
import agro.report.InputProblem;
import agro.report.Progress;
import agro.units.TemperatureUnit;
import agro.weather.Medium;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.Arrays;
import java.util.Locale;
import java.util.Set;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Reading through bytes has to give what reading through text gives, to the last bit. */
class ScannedLogTest {

  private static final LogFormat PLAIN = LogFormat.readings();

  @TempDir private Path folder;

  private Path file(String text) throws IOException {
    return Files.writeString(folder.resolve("log.csv"), text, StandardCharsets.UTF_8);
  }

  private static String scanned(Path file, LogFormat format) {
    try {
      return ScannedLog.read(
              file,
              file.toString(),
              format,
              "Mill Field",
              Medium.shelterAir(),
              TemperatureLog.EVERY_DAY,
              Progress.silent())
          .map(ScannedLogTest::told)
          .orElse("");
    } catch (InputProblem problem) {
      return String.valueOf(problem.getMessage());
    }
  }

  private static String general(Path file, LogFormat format) {
    try {
      var text = DelimitedText.read(file, format.plainText(), format.plainColumns().names());
      return told(
          TemperatureLog.of(text, format, "Mill Field", Medium.shelterAir(), Progress.silent()));
    } catch (InputProblem problem) {
      return String.valueOf(problem.getMessage());
    }
  }

  private static String told(TemperatureLog log) {
    var words = new StringBuilder(log.report().toString()).append('\n').append(log.daily());
    log.readings()
        .ifPresent(
            all ->
                words
                    .append(Arrays.hashCode(all.epochSeconds()))
                    .append(' ')
                    .append(Arrays.hashCode(all.celsius())));
    for (var day = log.daily().firstDay();
        !day.isAfter(log.daily().lastDay());
        day = day.plusDays(1)) {
      words
          .append('\n')
          .append(day)
          .append(' ')
          .append(log.daily().minCelsius(day))
          .append(' ')
          .append(log.daily().maxCelsius(day));
    }
    return words.toString();
  }

  private void readsAlike(String text, LogFormat format) throws IOException {
    var file = file(text);
    var found = scanned(file, format);
    assertThat(found).as(text).isNotEmpty().isEqualTo(general(file, format));
  }

  private void goesTheGeneralWay(String text, LogFormat format) throws IOException {
    assertThat(scanned(file(text), format)).as(text).isEmpty();
  }

  private static String hours(int days, String pattern, String between, Locale numbers) {
    var form = DateTimeFormatter.ofPattern(pattern, Locale.ROOT);
    var start = LocalDateTime.of(2021, 3, 20, 0, 0);
    var text = new StringBuilder();
    for (int hour = 0; hour < 24 * days; hour++) {
      double value = 12 + 7 * Math.sin(2 * Math.PI * (hour - 9) / 24.0);
      text.append(form.format(start.plusHours(hour)))
          .append(between)
          .append(String.format(numbers, "%.1f", value))
          .append('\n');
    }
    return text.toString();
  }

  @ParameterizedTest
  @CsvSource({
    "yyyy-MM-dd HH:mm",
    "yyyy-MM-dd HH:mm:ss",
    "yyyy-MM-dd'T'HH:mm",
    "yyyy-MM-dd'T'HH:mm'Z'",
    "yyyy-MM-dd'T'HH:mm:ss'+02:00'"
  })
  void isoTimesAreReadAlike(String pattern) throws IOException {
    readsAlike("time,temperature\n" + hours(4, pattern, ",", Locale.ROOT), PLAIN);
  }

  @Test
  void declaredPatternsUnitsAndMarksAreReadAlike() throws IOException {
    var format =
        PLAIN
            .withText(DelimitedFormat.SEMICOLON.withCharset(StandardCharsets.ISO_8859_1))
            .withTimePattern("dd.MM.yyyy HH:mm")
            .withUnit(TemperatureUnit.FAHRENHEIT)
            .withZone(ZoneId.of("Europe/Ljubljana"));
    readsAlike(
        "\n# invented\nTIME;Temperature\n" + hours(60, "dd.MM.yyyy HH:mm", "; ", Locale.GERMANY),
        format);
  }

  @Test
  void codesRepetitionsOddValuesAndOtherColumnsAreReadAlike() throws IOException {
    var format = PLAIN.withMissingCodes(Set.of("-999", "NA")).withZone(ZoneOffset.ofHours(1));
    var lines = hours(10, "yyyy-MM-dd HH:mm", ",", Locale.ROOT).lines().toList();
    var text = new StringBuilder("station,time,temperature,humidity\r\n");
    for (int i = 0; i < lines.size(); i++) {
      var value = i % 17 == 3 ? "-999" : i % 29 == 5 ? "NA" : i % 41 == 7 ? "" : "99.9";
      var good = lines.get(i);
      boolean keep = value.equals("99.9") && i % 50 != 11;
      var line = keep ? good : good.substring(0, good.indexOf(',') + 1) + value;
      text.append("a,").append(line).append(",80\r\n");
      if (i % 70 == 9) {
        text.append("a,").append(line).append(",80\r\n\r\n# a remark\r\n");
      }
    }
    readsAlike(text.toString(), format);
  }

  @Test
  void clockChangesOfWholeYearsAreReadAlike() throws IOException {
    var text = new StringBuilder("time,temperature\n");
    var zone = ZoneId.of("Europe/Ljubljana");
    var instant = LocalDateTime.of(2020, 1, 1, 0, 0).atZone(zone);
    for (int i = 0; i < 24 * 800; i++) {
      text.append(instant.plusHours(i).toLocalDateTime()).append(',').append(i % 23).append('\n');
    }
    readsAlike(text.toString(), PLAIN.withZone(zone));
    readsAlike(
        text.append("2022-03-27T02:30,4\n2022-03-27T03:30,4\n").toString(), PLAIN.withZone(zone));
  }

  @Test
  void whatIsUnusualGoesTheGeneralWay() throws IOException {
    var day = hours(2, "yyyy-MM-dd HH:mm", ",", Locale.ROOT);
    var head = "time,temperature\n";
    for (var line :
        new String[] {
          "2021-03-22 00:00,5,0",
          "2021-03-22 00:00",
          "2021-03-22 00:00,5 °C",
          "2021-03-22 00:00,n/a",
          "2021-02-30 00:00,5",
          "2021-03-22 25:00,5",
          "2021-03-22 0:00,5",
          "2021-03-22\t00:00,5",
          "22.03.2021 00:00,5",
          "2021-03-20 00:00,5",
          "2021-03-21 23:00,5",
          "2021-03-22 00:00,\"5\n2021-03-22 01:00,5\"",
          "2021-03-22 00:00Z,5",
          "2021-03-22 00:00,5\r2021-03-22 01:00,5",
          "2021-03-22 00:00,\0"
        }) {
      goesTheGeneralWay(head + day + line, PLAIN);
      goesTheGeneralWay(head + day + line + "\n", PLAIN);
    }
    goesTheGeneralWay("", PLAIN);
    goesTheGeneralWay(head, PLAIN);
    goesTheGeneralWay("\"time\",temperature\n" + day, PLAIN);
    goesTheGeneralWay("\uFEFFtime,temperature\n" + day, PLAIN);
    goesTheGeneralWay("when,temperature\n" + day, PLAIN);
    goesTheGeneralWay(head + day, PLAIN.withTimePattern("d.M.yyyy HH:mm"));
    goesTheGeneralWay(head + day, PLAIN.withTimePattern("HH:mm"));
    goesTheGeneralWay(
        head + day, PLAIN.withText(DelimitedFormat.COMMA.withCharset(StandardCharsets.UTF_16LE)));
    assertThat(scanned(folder.resolve("none.csv"), PLAIN)).isEmpty();
    assertThat(scanned(folder, PLAIN)).isEmpty();
  }

  @Test
  void aFewOddLinesAreReadAlikeByThemselves() throws IOException {
    var day = hours(2, "yyyy-MM-dd HH:mm", ",", Locale.ROOT);
    var head = "time,temperature,place\n";
    var more = day.replace("\n", ",a\n");
    for (var line :
        new String[] {
          "2021-03-22 00:00,\"5.0\",a",
          "\"2021-03-22 00:00\",5.0,\"a, b\"",
          "2021-03-22 00:00,1e1,a",
          "2021-03-22 00:00,+5,a",
          "2021-03-22 00:00,5,a,",
          "2021-03-22 00:00,.5,a",
          "2021-03-22T00:00,5,a",
          "2021-03-22 00:00:30,5,Höhe",
          "2021-03-22 00:00,\"\",a",
          "2021-03-22 00:00,\"-99\",a",
          "# 5 °C\n2021-03-22 00:00,5,a",
          " ",
          ",,"
        }) {
      readsAlike(
          head + more + line + "\n2021-03-22 01:00,7.5,a\n", PLAIN.withMissingCodes(Set.of("-99")));
      readsAlike(head + more + line, PLAIN.withMissingCodes(Set.of("-99")));
    }
  }

  @Test
  void tooManyOddLinesGoTheGeneralWay() throws IOException {
    var text = new StringBuilder("time,temperature\n");
    var start = LocalDateTime.of(2021, 3, 20, 0, 0);
    for (int i = 0; i < 2100; i++) {
      text.append(start.plusHours(i)).append(",+").append(i % 20).append('\n');
    }
    goesTheGeneralWay(text.toString(), PLAIN);
  }

  /**
   * Bytes of a good log replaced, inserted, lines cut and doubled: both ways agree all the same.
   */
  @Test
  void damagedLogsAreReadAlikeOrGoTheGeneralWay() throws IOException {
    var random = new SplittableRandom(17);
    var good = "time,temperature\n" + hours(3, "yyyy-MM-dd HH:mm", ",", Locale.ROOT);
    var signs = "0123456789-.,;:T \n\r\"#NA";
    int taken = 0;
    for (int round = 0; round < 400; round++) {
      var text = new StringBuilder(good);
      for (int hit = random.nextInt(1, 4); hit > 0; hit--) {
        int at = random.nextInt(17, text.length() - 1);
        var sign = String.valueOf(signs.charAt(random.nextInt(signs.length())));
        switch (random.nextInt(3)) {
          case 0 -> text.replace(at, at + 1, sign);
          case 1 -> text.insert(at, sign);
          default -> {
            int from = text.lastIndexOf("\n", at) + 1;
            int end = text.indexOf("\n", at) + 1;
            var line = text.substring(from, end);
            text.replace(from, end, random.nextBoolean() ? "" : line + line);
          }
        }
      }
      var format = PLAIN.withMissingCodes(Set.of("NA", "-9"));
      var file = file(text.toString());
      var found = scanned(file, format);
      if (!found.isEmpty()) {
        taken++;
        assertThat(found).as(text.toString()).isEqualTo(general(file, format));
      }
    }
    assertThat(taken).isBetween(60, 340);
  }
}
