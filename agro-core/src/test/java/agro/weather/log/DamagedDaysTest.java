package agro.weather.log;

import static org.assertj.core.api.Assertions.assertThat;

import agro.report.InputProblem;
import agro.report.Progress;
import agro.weather.Medium;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * Damaged logs of daily extremes: each day of a result is what some line says, or what the
 * undamaged log says of that day.
 */
class DamagedDaysTest {

  private static final int DAYS = 96;
  private static final Pattern LINE =
      Pattern.compile(
          "(?<d>\\d{1,2})/(?<M>\\d{1,2})/(?<y>\\d{4});[ \\u00a0]*(?<hi>-?\\d*,?\\d+|-?\\d+,);"
              + "[ \\u00a0]*(?<lo>-?\\d*,?\\d+|-?\\d+,)");

  private static SmallLog log() {
    var lines = new ArrayList<>(List.of("# invented", "Date;Max Temp (°C);Min Temp (°C)"));
    var start = LocalDate.of(2021, 3, 1);
    for (int i = 0; i < DAYS; i++) {
      var day = start.plusDays(i);
      double low = 3 + 0.1 * i + i * 7 % 5;
      lines.add(
          String.format(
                  Locale.ROOT,
                  "%02d/%02d/%d;%.1f;%.1f",
                  day.getDayOfMonth(),
                  day.getMonthValue(),
                  day.getYear(),
                  low + 8 + i * 3 % 4,
                  low)
              .replace('.', ','));
    }
    return new SmallLog(lines, ';', LINE, value -> value);
  }

  @Test
  void twoHundredDamagedLogs() {
    damage(0, 200);
  }

  @Test
  @Tag("slow")
  void threeThousandDamagedLogs() {
    damage(50_000, 3_000);
  }

  private static void damage(int firstSeed, int cases) {
    var log = log();
    var truth = said(log.lines());
    var wrong = new ArrayList<String>();
    int read = 0;
    for (int seed = firstSeed; seed < firstSeed + cases; seed++) {
      var random = new Random(seed);
      var damage = LogDamage.any(random);
      var bytes = damage.damaged(log, random);
      try {
        var result =
            new DetectedLog(
                    FileBytes.of(bytes, "log"),
                    "log",
                    LogFormat.detect(),
                    "Osmere Vale",
                    Medium.shelterAir(),
                    Progress.silent())
                .readOne();
        read++;
        var text = new String(bytes, result.format().table().charset().orElseThrow());
        var said = said(Arrays.asList(text.split("[\r\n]+", -1)));
        if (!isRight(result, said, truth)) {
          wrong.add("seed " + seed + ", " + damage + "\n" + result.report());
        }
      } catch (InputProblem refusal) {
        assertThat(refusal.cure()).isNotBlank();
      }
    }
    assertThat(wrong).isEmpty();
    assertThat(read).isGreaterThan(cases / 4);
  }

  private static boolean isRight(
      TemperatureLog result,
      Map<LocalDate, List<double[]>> said,
      Map<LocalDate, List<double[]>> truth) {
    var days = result.daily();
    for (int i = 0; i < days.size(); i++) {
      var extremes = days.extremes(days.day(i));
      if (extremes.isEmpty()) {
        continue;
      }
      var found = new double[] {extremes.get().minCelsius(), extremes.get().maxCelsius()};
      boolean right = isAmong(found, said.get(days.day(i)));
      if (!right && !isAmong(found, truth.get(days.day(i)))) {
        return false;
      }
    }
    return true;
  }

  private static boolean isAmong(double[] found, List<double[]> pairs) {
    return pairs != null && pairs.stream().anyMatch(pair -> Arrays.equals(pair, found));
  }

  private static Map<LocalDate, List<double[]>> said(List<String> lines) {
    var said = new HashMap<LocalDate, List<double[]>>();
    for (var line : lines) {
      var found = LINE.matcher(line);
      if (!found.matches()) {
        continue;
      }
      try {
        var day =
            LocalDate.of(
                Integer.parseInt(found.group("y")),
                Integer.parseInt(found.group("M")),
                Integer.parseInt(found.group("d")));
        said.computeIfAbsent(day, d -> new ArrayList<>())
            .add(new double[] {number(found.group("lo")), number(found.group("hi"))});
      } catch (DateTimeException noDay) {
        // Such a line says nothing.
      }
    }
    return said;
  }

  private static double number(String text) {
    return Double.parseDouble(text.replace(',', '.'));
  }
}
