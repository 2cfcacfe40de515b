package agro.programme.window;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import agro.reading.DelimitedFormat;
import agro.report.InputProblem;
import agro.units.LengthUnit;
import agro.units.SpeedUnit;
import agro.units.TemperatureUnit;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Weather by the hour as loggers and forecasts write it. */
class HourReaderTest {

  private static final ZoneId ZONE = InventedHours.ZONE;

  private static HourlyWeather read(String text, HourColumns columns) {
    return HourlyWeather.parse("hours.csv", text, columns, ZONE);
  }

  @Test
  void columnsUnitsAndClockAreDeclared() {
    var columns =
        HourColumns.withDefaults()
            .written(DelimitedFormat.SEMICOLON.withDecimalMark(','))
            .timed("when", "dd.MM.yyyy HH:mm")
            .wind("ws", SpeedUnit.KILOMETRE_PER_HOUR)
            .rain("rr", LengthUnit.INCH)
            .temperature("temp", TemperatureUnit.FAHRENHEIT)
            .humidity("rh")
            .missingAs("-999");
    var weather = read("when;ws;rr;temp;rh\n18.06.2026 07:00;7,2;0,1;68;-999\n", columns);
    var hour = weather.hours().get(0);
    assertThat(hour.start()).isEqualTo(Instant.parse("2026-06-18T05:00:00Z"));
    assertThat(hour.of(WeatherKind.WIND).orElseThrow().high()).isCloseTo(2, within(1e-12));
    assertThat(hour.of(WeatherKind.RAIN).orElseThrow().high()).isCloseTo(2.54, within(1e-12));
    assertThat(hour.of(WeatherKind.TEMPERATURE).orElseThrow().low()).isCloseTo(20, within(1e-9));
    assertThat(hour.of(WeatherKind.HUMIDITY)).isEmpty();
    assertThat(weather.kinds()).contains(WeatherKind.HUMIDITY).doesNotContain(WeatherKind.GUST);
  }

  @Test
  void partsOfAnHourArePutTogetherAndRainOfAPartIsNotKnown() {
    var text =
        """
        time,wind_m_s,rain_mm
        2026-06-18T06:00Z,1,0.1
        2026-06-18T06:20Z,4,0
        2026-06-18T06:40Z,2,0.3
        2026-06-18T07:00Z,3,0.2
        2026-06-18T07:20Z,3,0.2
        """;
    var weather = read(text, HourColumns.withDefaults());
    assertThat(weather.hours()).hasSize(2);
    var first = weather.hours().get(0);
    assertThat(first.of(WeatherKind.WIND)).contains(new WeatherHour.Span(1, 4));
    assertThat(first.of(WeatherKind.RAIN).orElseThrow().high()).isCloseTo(0.4, within(1e-12));
    assertThat(weather.hours().get(1).of(WeatherKind.RAIN)).isEmpty();
  }

  @Test
  void timesAtTheEndOfTheirHourAreMovedToItsBeginning() {
    var columns = HourColumns.withDefaults().timeIsTheEndOf(Duration.ofHours(1));
    var weather = read("time,rain_mm\n2026-06-18 08:00,1\n2026-06-18 09:00,0\n", columns);
    assertThat(weather.hours().get(0).start()).isEqualTo(Instant.parse("2026-06-18T05:00:00Z"));
  }

  @Test
  void hoursThatTheClockShowsTwiceAreTakenInOrder() {
    var text =
        """
        time,air_c
        2026-10-25 01:00,5
        2026-10-25 02:00,5
        2026-10-25 02:00,4
        2026-10-25 03:00,4
        """;
    var weather = read(text, HourColumns.withDefaults());
    assertThat(weather.hours().stream().map(WeatherHour::start))
        .containsExactly(
            Instant.parse("2026-10-24T23:00:00Z"),
            Instant.parse("2026-10-25T00:00:00Z"),
            Instant.parse("2026-10-25T01:00:00Z"),
            Instant.parse("2026-10-25T02:00:00Z"));
  }

  @Test
  void anHourThatTheClockLeavesOutIsRefusedUnlessTheFileHasItsOwnClock() {
    var text = "time,air_c\n2026-03-29 02:00,5\n";
    assertThatThrownBy(() -> read(text, HourColumns.withDefaults()))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("put forward");
    var columns = HourColumns.withDefaults().onClock(ZoneOffset.ofHours(1));
    assertThat(read(text, columns).hours().get(0).start())
        .isEqualTo(Instant.parse("2026-03-29T01:00:00Z"));
  }

  @Test
  void whatCannotBeReadNamesItsPlace(@TempDir Path folder) throws IOException {
    var columns = HourColumns.withDefaults();
    assertThatThrownBy(() -> read("time,air_c\nyesterday,5\n", columns))
        .hasMessageContaining("hours.csv")
        .hasMessageContaining("declare the pattern");
    assertThatThrownBy(() -> read("time,air_c\n2026-03-02 02:00,680\n", columns))
        .hasMessageContaining("declare the unit");
    assertThatThrownBy(() -> read("time,wind_m_s\n2026-03-02 02:00,-999\n", columns))
        .hasMessageContaining("missing value");
    assertThatThrownBy(() -> read("time,soil\n2026-03-02 02:00,6\n", columns))
        .hasMessageContaining("none of the columns");
    assertThatThrownBy(() -> read("time,air_c\n2026-03-02 02:00,6\n2026-03-02 02:00,6\n", columns))
        .hasMessageContaining("after that of the line before");
    assertThatThrownBy(() -> columns.timed("time", "jjjj-bb")).isInstanceOf(InputProblem.class);
    var file = folder.resolve("h.csv");
    Files.writeString(file, "time,air_c\n2026-03-02T02:00+01:00,6\n");
    assertThat(HourlyWeather.read(file, columns, ZONE).first().orElseThrow().start())
        .isEqualTo(Instant.parse("2026-03-02T01:00:00Z"));
  }
}
