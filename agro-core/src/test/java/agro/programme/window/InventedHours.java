package agro.programme.window;

import agro.programme.FarmField;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.Locale;
import java.util.function.IntFunction;

/** Invented weather by the hour for one field. */
final class InventedHours {

  static final ZoneId ZONE = ZoneId.of("Europe/Ljubljana");
  static final FarmField FIELD = FarmField.of("Upper Croft", ZONE).at(46.4, 14.1);
  static final String HEADING = "time,wind_m_s,gust_m_s,rain_mm,air_c,humidity_percent\n";
  static final String CALM = "2.0,4.0,0,16,60";

  private InventedHours() {}

  /** Running hours from the midnight of a day; the cells of each by its number. */
  static HourlyWeather hours(LocalDate from, int count, IntFunction<String> cells) {
    return parse(HEADING, from, count, cells);
  }

  static HourlyWeather parse(String heading, LocalDate from, int count, IntFunction<String> cells) {
    var text = new StringBuilder(heading);
    Instant start = from.atStartOfDay(ZONE).toInstant();
    for (int i = 0; i < count; i++) {
      var time = OffsetDateTime.ofInstant(start.plus(Duration.ofHours(i)), ZoneOffset.UTC);
      text.append(String.format(Locale.ROOT, "%s,%s%n", time, cells.apply(i)));
    }
    return HourlyWeather.parse(
        "hours.csv", text.toString().replace("\r\n", "\n"), HourColumns.withDefaults(), ZONE);
  }
}
