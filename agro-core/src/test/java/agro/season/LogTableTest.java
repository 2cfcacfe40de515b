package agro.season;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import agro.report.InputProblem;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LogTableTest {
  private static final String LINE =
      "readings.txt,Long Acre,readings,tab,comma,stamp,dd/MM/yyyy HH:mm,UTC,+10:00,air,K,x -1";

  @TempDir Path folder;

  /** Hourly readings of two days; the coldest is at 15:00 UTC, which is 1:00 at +10:00. */
  private static String readings() {
    var text = new StringBuilder("stamp\tair\n");
    var pattern = DateTimeFormatter.ofPattern("dd/MM/yyyy HH:mm", Locale.ROOT);
    var start = LocalDateTime.of(2024, 2, 28, 14, 0);
    for (int hour = 0; hour < 96; hour++) {
      var value = hour == 30 ? "x" : 280 + (hour % 24 == 1 ? 0 : 10) + ",5";
      text.append(pattern.format(start.plusHours(hour))).append('\t').append(value).append('\n');
    }
    return text.toString();
  }

  private SeasonFolder reading(String line) {
    return SeasonFolder.read(
        new SmallFolder()
            .put("readings.txt", readings())
            .put(
                "logs.csv",
                "file,place,kind,separator,decimal,time_column,time_pattern,zone,day_offset,"
                    + "value_column,unit,missing\n"
                    + line
                    + "\n")
            .writeTo(folder));
  }

  @Test
  void everyHabitOfALoggerCanBeDeclared() {
    var own =
        new SmallFolder()
            .replacing("places.csv", "2,Hill Top", "2,")
            .put("readings.txt", readings())
            .put(
                "logs.csv",
                "file,place,kind,separator,decimal,time_column,time_pattern,zone,day_offset,"
                    + "value_column,unit,missing\n"
                    + LINE
                    + "\n")
            .replacing("visits.csv", "2024-04-0", "2024-03-0")
            .replacing("visits.csv", "2024-04-1", "2024-03-1");
    var days = SeasonFolder.read(own.writeTo(folder)).pestAt("red moth", "Long Acre").own();
    assertThat(days.firstDay()).isEqualTo("2024-02-29");
    assertThat(days.lastDay()).isEqualTo("2024-03-03");
    assertThat(days.minCelsius(days.lastDay())).isEqualTo(280.5 - 273.15);
    assertThat(days.maxCelsius(days.lastDay())).isEqualTo(290.5 - 273.15);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        ",tab,|,pipe,|comma, semicolon, tab",
        ",UTC,|,Nowhere/City,|\"zone\"",
        ",+10:00,|,ten hours,|\"day_offset\"",
        ",K,|,Kelvin,|°C (Cel)",
        "dd/MM/yyyy HH:mm|dd/qq/yyyy bb:mm|line 2",
        ",air,|,,|\"value_column\"",
        "readings.txt|reading.txt|reading.txt",
      })
  void whatIsDeclaredMustMakeSense(String old, String by, String expected) {
    assertThatThrownBy(() -> reading(LINE.replace(old, by)))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining(expected)
        .hasMessageContaining("Mend:");
  }
}
