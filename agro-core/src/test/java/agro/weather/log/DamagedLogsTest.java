package agro.weather.log;

import static org.assertj.core.api.Assertions.assertThat;

import agro.report.InputProblem;
import agro.report.Progress;
import agro.weather.Medium;
import java.nio.charset.Charset;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * Damaged logs end in a correct reading, a reported repair or a refusal.
 *
 * <p>What is correct is said by {@link SmallLog}, line by line and without any detection. A reading
 * must be what some line says, or what the undamaged log says of that moment; a digit that became
 * another digit is therefore read as it stands. And each line that can be understood alone must be
 * among the readings, or its number must stand in the report.
 */
class DamagedLogsTest {

  private static final double TOLERANCE = 1e-9;
  private static final Pattern NUMBER = Pattern.compile("\\d+");

  @Test
  void fiveHundredDamagedLogs() {
    damage(0, 500);
  }

  @Test
  @Tag("slow")
  void twentyThousandDamagedLogs() {
    damage(1_000, 20_000);
  }

  private static void damage(int firstSeed, int cases) {
    var logs = SmallLog.all();
    var wrong = new ArrayList<String>();
    var read = new EnumMap<LogDamage, Integer>(LogDamage.class);
    for (int seed = firstSeed; seed < firstSeed + cases; seed++) {
      var random = new Random(seed);
      var log = logs.get(random.nextInt(logs.size()));
      var damage = LogDamage.any(random);
      var bytes = damage.damaged(log, random);
      var words = "seed " + seed + ", " + damage + "\n";
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
        read.merge(damage, 1, Integer::sum);
        judge(log, damage, bytes, result).ifPresent(what -> wrong.add(words + what));
      } catch (InputProblem refusal) {
        assertThat(refusal.read()).isNotBlank();
        assertThat(refusal.cure()).isNotBlank();
      } catch (RuntimeException unexpected) {
        wrong.add(words + unexpected + " " + Arrays.toString(unexpected.getStackTrace()));
      }
    }
    assertThat(wrong).isEmpty();
    assertUsefulnessOf(read);
  }

  /** A reader that refuses all would pass the rest; these cases have one clear reading. */
  private static void assertUsefulnessOf(Map<LogDamage, Integer> read) {
    for (var damage :
        List.of(
            LogDamage.LINES_SWAPPED,
            LogDamage.NEWEST_FIRST,
            LogDamage.LINE_CUT,
            LogDamage.COLUMNS_SWAPPED,
            LogDamage.SEPARATOR_CHANGED,
            LogDamage.BITS_FLIPPED)) {
      assertThat(read).containsKey(damage);
    }
  }

  /** What is wrong with a result, with the log and the report; nothing when all is right. */
  private static Optional<String> judge(
      SmallLog log, LogDamage damage, byte[] bytes, TemperatureLog result) {
    var text = new String(bytes, charset(result)).replace("\r\n", "\n").replace('\r', '\n');
    var lines = Arrays.asList(text.split("\n", -1));
    var said = log.said(damage.keepsWhatLinesSay() ? log.lines() : lines);
    var truth = byTime(log.said(log.lines()));
    var readings = result.readings().orElseThrow();
    var found = new HashMap<Long, Double>();
    for (int i = 0; i < readings.size(); i++) {
      long second = readings.epochSecond(i);
      double value = readings.celsius(i);
      found.put(second, value);
      boolean isSaid =
          said.values().stream().anyMatch(pair -> (long) pair[0] == second && near(pair[1], value));
      boolean isTrue = truth.containsKey(second) && near(truth.get(second), value);
      if (!isSaid && !isTrue) {
        return Optional.of(
            "no line says "
                + value
                + " at "
                + Instant.ofEpochSecond(second)
                + "\n"
                + result.report());
      }
    }
    for (var one : said.entrySet()) {
      var value = found.get((long) one.getValue()[0]);
      boolean isRead = value != null && near(value, one.getValue()[1]);
      if (!isRead && !tells(result, one.getKey())) {
        return Optional.of(
            "lost: " + lines.get(one.getKey() - 1) + " " + one.getKey() + "\n" + result.report());
      }
    }
    return Optional.empty();
  }

  private static Charset charset(TemperatureLog result) {
    return result.format().table().charset().orElseThrow();
  }

  private static boolean near(double one, double other) {
    return Math.abs(one - other) < TOLERANCE;
  }

  private static Map<Long, Double> byTime(Map<Integer, double[]> said) {
    var truth = new HashMap<Long, Double>();
    said.values().forEach(pair -> truth.put((long) pair[0], pair[1]));
    return truth;
  }

  /** Whether the report names a line, by its place or in its list of lines. */
  private static boolean tells(TemperatureLog result, int line) {
    for (var entry : result.report().entries()) {
      int lines = entry.text().indexOf(" lines: ");
      if (entry.location().line() == line) {
        return true;
      }
      if (lines >= 0) {
        var numbers = NUMBER.matcher(entry.text().substring(lines));
        while (numbers.find()) {
          if (Integer.parseInt(numbers.group()) == line) {
            return true;
          }
        }
      }
    }
    return false;
  }
}
