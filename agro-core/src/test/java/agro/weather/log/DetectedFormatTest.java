package agro.weather.log;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import agro.report.InputProblem;
import agro.report.ReadReport.Deed;
import agro.weather.Medium;
import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What the reader tells of what it found. */
class DetectedFormatTest {

  @TempDir Path folder;

  @Test
  void theFormatIsALineOfJava() throws URISyntaxException {
    var log = TemperatureLog.read(AwkwardLogsTest.file("semicolon-comma.csv"));
    assertThat(log.format().declaration())
        .isEqualTo(
            "LogFormat.detect().withCharset(Charset.forName(\"UTF-8\"))"
                + ".withSeparator(CellSeparator.SEMICOLON).withDecimalMark(DecimalMark.COMMA)"
                + ".withHeadingLine(1).withFirstLine(2).withDateOrder(DateOrder.DAY_FIRST)"
                + ".withStep(Duration.parse(\"PT1H\"))"
                + ".withColumns(new LogColumns.Readings(\"Datum\", \"Temperatur (°C)\"))"
                + ".withUnit(TemperatureUnit.CELSIUS).withMissingCodes(Set.of())");
    assertThat(log.presentation().toText()).contains("LogFormat.detect()", "to declare next time");
    assertThat(log.presentation().toHtml()).contains("semicolon-comma");
  }

  /** A value that was measured is no statement of the unit of all others. */
  @ParameterizedTest
  @CsvSource({"extremes of the day in °F, FAHRENHEIT", "sensor checked at 77 °F, CELSIUS"})
  void unitInALineBeforeTheTable(String line, String unit) throws IOException {
    var file = folder.resolve("book.csv");
    Files.writeString(
        file,
        "# "
            + line
            + "\nday;highest;lowest\n13.05.2022;28,6;19,1\n14.05.2022;25,8;14,5\n"
            + "15.05.2022;24,3;15,5\n16.05.2022;--;--\n17.05.2022;30,9;20,6\n");
    var log = TemperatureLog.read(file);
    assertThat(log.format().unit().orElseThrow()).hasToString(unit);
  }

  @Test
  void aCodeForAMissingValueIsNoNumberThatWasCutOff() throws IOException {
    var file = folder.resolve("hours.csv");
    var text = new StringBuilder("time,air_c\n");
    for (int hour = 0; hour < 48; hour++) {
      text.append("2024-05-0").append(1 + hour / 24).append('T').append(hour % 24 < 10 ? "0" : "");
      text.append(hour % 24).append(":00,").append(hour == 30 ? "-999" : 11 + hour % 7 + ".5");
      text.append('\n');
    }
    Files.writeString(file, text);
    assertThat(TemperatureLog.read(file).report().toString())
        .contains("-999")
        .doesNotContain("cut off");
  }

  @Test
  void quotesInNamesAreEscapedInTheLineOfJava() {
    var format = LogFormat.detect().withSensor("2\" depth \\ soil");
    assertThat(format.declaration())
        .isEqualTo("LogFormat.detect().withSensor(\"2\\\" depth \\\\ soil\")");
  }

  @Test
  void allSensorsAreReadApart() throws URISyntaxException {
    var file = AwkwardLogsTest.file("two-sensors.csv");
    var logs = TemperatureLog.readAll(file, LogFormat.detect(), "Mill Field", Medium.shelterAir());
    assertThat(logs).containsOnlyKeys("Air temp (°C)", "Soil temp (°C)");
    var day = LocalDate.of(2021, 5, 1);
    var air = logs.get("Air temp (°C)").daily();
    var soil = logs.get("Soil temp (°C)").daily();
    assertThat(air.maxCelsius(day)).isEqualTo(18.0);
    assertThat(soil.maxCelsius(day)).isEqualTo(9.0);
    assertThat(soil.place()).isEqualTo("Mill Field, Soil temp (°C)");
  }

  @Test
  void placeAndMediumAreAssumedFromNothing() throws URISyntaxException {
    var log = TemperatureLog.read(AwkwardLogsTest.file("packed.csv.gz"));
    assertThat(log.daily().place()).isEqualTo("packed");
    assertThat(log.report().entries(Deed.ASSUMED))
        .anyMatch(entry -> entry.text().contains("air in a shelter at 2 m"));
  }

  @Test
  void maximaMoveOnlyWhenDeclared() throws URISyntaxException {
    var file = AwkwardLogsTest.file("daily-read-at-nine.csv");
    var day = LocalDate.of(2021, 4, 25);
    var written = TemperatureLog.read(file).daily();
    var moved = TemperatureLog.read(file, AwkwardLogsTest.format("moved=09:00"));
    assertThat(written.maxCelsius(day)).isEqualTo(14.0);
    assertThat(moved.daily().maxCelsius(day)).isEqualTo(14.2);
    assertThat(moved.daily().minCelsius(day)).isEqualTo(written.minCelsius(day));
    assertThat(moved.daily().size()).isEqualTo(written.size() - 1);
  }

  /** Cells that a reader must not take for a time of another day. */
  @ParameterizedTest
  @CsvSource({
    "2021-05-01 24:00, 2021-05-02T00:00",
    "20210501T2359, 2021-05-01T23:59",
    "'May 1, 2021 12:30 AM', 2021-05-01T00:30",
    "1-May-2021 12:30 PM, 2021-05-01T12:30",
    "'Sat, 01 May 2021 06:00', 2021-05-01T06:00",
    "2021-121 06:00, 2021-05-01T06:00",
    "2021121, 2021-05-01T00:00",
    "2021/5/1 6:00:05.25, 2021-05-01T06:00:05",
    "202105010600, 2021-05-01T06:00",
  })
  void writtenTimes(String cell, String expected) {
    var time = WrittenTime.of(cell).orElseThrow();
    var day = time.date().orElseThrow().day(DateOrder.YEAR_FIRST).orElseThrow();
    assertThat(day.atStartOfDay().plusSeconds(Math.max(0, time.clock()))).isEqualTo(expected);
  }

  @ParameterizedTest
  @CsvSource({
    "2021-05-01 24:01", "2021-05-01 13:00 PM", "2021-05-01 0:30 AM", "2021-5-1 6", "12.50",
    "2021-05-01 12:60", "2021-05-01T12:00+25:00", "2021-05-01 12:00:0", "10:5", "1.5.2"
  })
  void whatIsNoTime(String cell) {
    assertThat(WrittenTime.of(cell)).isEmpty();
  }

  @Test
  void datesOnBothSidesOfTheEvidenceAreNotGuessed() throws IOException {
    var text = new StringBuilder("date,min,max\n");
    text.append("01/02/2021,1,5\n13/02/2021,1,5\n02/14/2021,1,5\n");
    var file = Files.writeString(folder.resolve("both.csv"), text);
    assertThatThrownBy(() -> TemperatureLog.read(file))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("13/02/2021")
        .hasMessageContaining("a day of the calendar");
  }

  @Test
  void aMissingFileIsSaid() {
    assertThatThrownBy(() -> TemperatureLog.read(folder.resolve("none.csv")))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("no such file");
    assertThatThrownBy(() -> TemperatureLog.read(folder))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("folder");
  }
}
