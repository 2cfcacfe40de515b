package agro.weather.log;

import static org.assertj.core.api.Assertions.assertThat;

import agro.weather.Medium;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.time.ZoneId;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Five years of quarter-hours, invented. */
@Tag("slow")
class LogReadingSpeedTest {

  private static final int ROWS = 175_200;

  @Test
  void fiveYearsOfQuarterHoursAreReadWhole(@TempDir Path folder) throws IOException {
    var start = LocalDateTime.of(2015, 1, 1, 0, 0);
    var text = new StringBuilder("time,temperature\n");
    for (int i = 0; i < ROWS; i++) {
      text.append(start.plusMinutes(15L * i)).append(',').append(10 + i % 96 / 10.0).append('\n');
    }
    var file = Files.writeString(folder.resolve("log.csv"), text);
    var format = LogFormat.readings().withZone(ZoneId.of("Europe/Ljubljana"));
    long best = Long.MAX_VALUE;
    for (int round = 0; round < 5; round++) {
      long begun = System.nanoTime();
      var log = TemperatureLog.read(file, format, "Sand Lane", Medium.shelterAir());
      best = Math.min(best, System.nanoTime() - begun);
      assertThat(log.report().rowsRead()).isEqualTo(ROWS);
      assertThat(log.daily().missingDays()).isEmpty();
    }
    System.out.println("read " + ROWS + " rows in " + best / 1_000_000 + " ms");
  }
}
