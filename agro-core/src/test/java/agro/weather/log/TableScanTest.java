package agro.weather.log;

import static org.assertj.core.api.Assertions.assertThat;

import agro.report.InputProblem;
import agro.report.Progress;
import agro.report.ReadReport;
import agro.units.TemperatureUnit;
import agro.weather.Medium;
import java.nio.charset.StandardCharsets;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Detection by a scan of the bytes gives what detection through text gives, report and all. */
class TableScanTest {

  private static final String NAME = "log.csv";
  private static final LogFormat OPEN = LogFormat.detect();

  private static String told(byte[] bytes, LogFormat format, int leastScannedBytes) {
    try {
      var log =
          new DetectedLog(
                  FileBytes.of(bytes, NAME),
                  NAME,
                  format,
                  "Mill Field",
                  Medium.shelterAir(),
                  Progress.silent(),
                  leastScannedBytes)
              .readOne();
      var words = new StringBuilder(log.report().toString()).append('\n').append(log.format());
      words.append('\n').append(log.daily().firstDay());
      words.append(Arrays.toString(log.daily().minimaCelsius()));
      words.append(Arrays.toString(log.daily().maximaCelsius()));
      log.readings()
          .ifPresent(
              all ->
                  words
                      .append(Arrays.toString(all.epochSeconds()))
                      .append(Arrays.toString(all.celsius())));
      return words.toString();
    } catch (InputProblem problem) {
      return String.valueOf(problem.getMessage());
    }
  }

  /** Whether the scan takes a log; compares both ways in any case. */
  private static boolean scans(byte[] bytes, LogFormat format) {
    assertThat(told(bytes, format, 0))
        .as(new String(bytes, StandardCharsets.ISO_8859_1))
        .isEqualTo(told(bytes, format, Integer.MAX_VALUE));
    return TableScan.find(bytes, NAME, format, new ReadReport.Collector(NAME)).isPresent();
  }

  private static boolean scans(String text, LogFormat format) {
    return scans(text.getBytes(StandardCharsets.UTF_8), format);
  }

  /** An invented log, every so many values replaced by others. */
  private static String log(String heading, String row, int hours, String... odd) {
    var pattern = row.contains("T") ? "yyyy-MM-dd'T'HH:mm:ss" : "yyyy-MM-dd HH:mm";
    var time = DateTimeFormatter.ofPattern(pattern, Locale.ROOT);
    var start = LocalDateTime.of(2021, 3, 20, 0, 0);
    var text = new StringBuilder(heading).append('\n');
    for (int i = 0; i < hours; i++) {
      var value =
          String.format(Locale.ROOT, "%.1f", 9 + 0.01 * i + 6 * Math.sin((i - 9) * Math.PI / 12));
      boolean isOdd = odd.length > 0 && i % 23 == 7;
      text.append(
          row.replace("T", time.format(start.plusHours(i)))
              .replace("D", time.format(start.plusHours(i)))
              .replace("v", isOdd ? odd[i / 23 % odd.length] : value));
      text.append('\n');
    }
    return text.toString();
  }

  @Test
  void plainLogsAreScanned() {
    assertThat(scans(log("time,temp_c", "D,v", 700), OPEN)).isTrue();
    assertThat(scans(log("time;Temperatur °C;Feuchte %", "T;v;60", 300), OPEN)).isTrue();
    assertThat(scans(log("# invented\n\nsite,stamp,T,RH", "mill,TZ,v,60", 96), OPEN)).isTrue();
    assertThat(scans(log("Logger 7\ntime\tair", "T+02:00\tv", 96), OPEN)).isTrue();
    assertThat(scans(log("time,temp", "D, v ", 96).replace("\n", "\r\n"), OPEN)).isTrue();
    assertThat(scans(log("time,temp_f", "D,v", 96).strip(), OPEN)).isTrue();
    assertThat(scans(log("2021-03-19 23:00,5.0", "D,v", 96), OPEN)).isTrue();
    assertThat(scans("\uFEFF" + log("time,temp_c", "D,v", 96), OPEN)).isTrue();
    var comma = log("time;temp_c", "D;v", 700).replace('.', ',');
    assertThat(scans(comma, OPEN)).isTrue();
  }

  @Test
  void whatIsDeclaredCountsInTheScanToo() {
    var two = log("time,air,soil", "D,v,-999", 200, "-999", "x1");
    assertThat(scans(log("time,air,soil", "D,v,8.5", 200), OPEN)).isFalse();
    assertThat(scans(log("time,air,soil", "D,v,8.5", 200), OPEN.withSensor("air"))).isTrue();
    assertThat(scans(two, OPEN.withSensor("air"))).isFalse();
    var codes = OPEN.withSensor("air").withMissingCodes(Set.of("-999", "x1"));
    assertThat(scans(two, codes)).isTrue();
    assertThat(scans(log("time,t", "D,v", 24 * 60), OPEN.withZone(ZoneId.of("Europe/Ljubljana"))))
        .isTrue();
    var kelvin = OPEN.withUnit(TemperatureUnit.FAHRENHEIT);
    assertThat(scans(log("time,t", "D,v", 200), kelvin)).isTrue();
    var columns = OPEN.withColumns(new LogColumns.Readings("when", "what"));
    assertThat(scans(log("what,when", "v,D", 200), columns)).isTrue();
    assertThat(scans(log("time,t", "D,v", 200), OPEN.withTimePattern("yyyy-MM-dd HH:mm")))
        .isFalse();
    assertThat(scans(log("time,t", "D,v", 200), OPEN.withFirstLine(2))).isTrue();
  }

  @Test
  void oddTemperaturesAreTakenOneByOne() {
    var odd =
        List.of("", "NaN", "-", "+5", ".5", "-.5", "5", "5.", "7.25", "1e1", "5 C", "-999", "99.9");
    for (var cell : odd) {
      assertThat(scans(log("time,temp", "D,v", 250, cell), OPEN)).as(cell).isTrue();
    }
    assertThat(scans(log("time,temp", "D,v", 250, odd.toArray(String[]::new)), OPEN)).isTrue();
  }

  @Test
  void whatIsUnusualGoesTheGeneralWay() {
    var good = log("time,temp", "D,v", 250);
    for (var line :
        new String[] {
          "2021-03-31 00:00,\"5.0\"",
          "2021-03-31 00:00,5,0",
          "2021-03-31 00:00",
          "2021-03-31 00:00,5 °C",
          "2021-03-31 00:00:00,5",
          "2021-02-30 00:00,5",
          "2021-03-31,5",
          "2021-03-31 00:00 PM,5",
          "31.03.2021 00:00,5",
          "1066-03-31 00:00,5",
          "# a comment",
          "time,temp",
          "the end"
        }) {
      scans(good + line, OPEN);
      scans(good + line + "\n" + good.replace("2021", "2022"), OPEN);
    }
    assertThat(scans(good + "\n# the end\n", OPEN)).isFalse();
    assertThat(scans(log("date,min,max", "D,v,30", 9).replace(" 0", "\t0"), OPEN)).isFalse();
    assertThat(scans("", OPEN.withSensor("air")) || scans("time,temp\n", OPEN)).isFalse();
  }

  @Test
  void rowsOutOfOrderAndNewestFirstAreDetectedAlike() {
    var lines = new ArrayList<>(log("time,temp", "D,v", 250).lines().toList());
    java.util.Collections.reverse(lines.subList(1, lines.size()));
    assertThat(scans(String.join("\n", lines), OPEN)).isTrue();
    java.util.Collections.swap(lines, 60, 61);
    assertThat(scans(String.join("\n", lines), OPEN)).isTrue();
    lines.add(90, lines.get(89));
    assertThat(scans(String.join("\n", lines), OPEN)).isTrue();
  }

  private static int damaged(int files, long seed) {
    var random = new Random(seed);
    var logs = SmallLog.all();
    int scanned = 0;
    for (int i = 0; i < files; i++) {
      // The first log and the fourth are written as the scan wants them.
      var log = i % 4 == 3 ? logs.get(random.nextInt(logs.size())) : logs.get(i % 4 == 2 ? 3 : 0);
      var bytes = LogDamage.any(random).damaged(log, random);
      scanned += bytes.length > 0 && scans(bytes, OPEN) ? 1 : 0;
    }
    return scanned;
  }

  @Test
  void damagedLogsAreDetectedAlike() {
    assertThat(damaged(400, 5)).isBetween(60, 340);
  }

  @Test
  @Tag("slow")
  void manyDamagedLogsAreDetectedAlike() {
    assertThat(damaged(6000, 6)).isBetween(900, 5100);
  }
}
