package agro.demo;

import agro.units.Numbers;
import agro.units.TemperatureUnit;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import java.util.Map;

/** The four logs of the vale as files, each with the habits of its logger. */
final class LogFiles {
  static final ZoneId CLOCK = ZoneId.of("Europe/Ljubljana");
  static final LocalDate SAND_LANE_FIRST = LocalDate.of(2026, 3, 1);
  static final LocalDate SAND_LANE_LAST = LocalDate.of(2026, 6, 13);

  private static final ZoneOffset STANDARD = ZoneOffset.ofHours(1);
  private static final DateTimeFormatter CIVIL =
      DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm", Locale.ROOT);
  private static final DateTimeFormatter POINTS =
      DateTimeFormatter.ofPattern("dd.MM.yyyy", Locale.ROOT);
  private static final DateTimeFormatter UTC =
      DateTimeFormatter.ofPattern("yyyy-MM-dd'T'HH:mm'Z'", Locale.ROOT);

  private final OsmereVale vale;

  LogFiles(OsmereVale vale) {
    this.vale = vale;
  }

  void addTo(Map<String, String> files) {
    for (int year : OsmereVale.seasons()) {
      files.put("logs/upper-croft-" + year + ".csv", upperCroft(year));
    }
    files.put("logs/mill-field.csv", millField());
    files.put("logs/sand-lane-2026.csv", sandLane());
    files.put("logs/osmere-station.csv", station());
  }

  private StringBuilder begin(String about) {
    return new StringBuilder("# invented for demonstration, seed ")
        .append(vale.seed())
        .append("\n# ")
        .append(about)
        .append('\n');
  }

  /** Hourly readings on the civil clock: one hour missing in spring, one twice in autumn. */
  private String upperCroft(int year) {
    var air = vale.air(Site.UPPER_CROFT);
    var text = begin("Upper Croft, hourly readings in °C, civil clock, -999 where none was stored");
    text.append("time,air_c\n");
    var last = HourlyLogger.lastDay(year);
    for (var day = HourlyLogger.firstDay(year); !day.isAfter(last); day = day.plusDays(1)) {
      boolean gap = vale.logger().dayLost(day);
      for (int hour = 0; hour < 24; hour++) {
        boolean lost = vale.logger().lost(day, hour);
        if (lost && gap) {
          continue;
        }
        var instant = day.atTime(hour, 0).toInstant(STANDARD);
        text.append(CIVIL.format(instant.atZone(CLOCK))).append(',');
        text.append(lost ? "-999" : Numbers.fixed(air.celsius(day, hour * 60), 1)).append('\n');
      }
    }
    return text.toString();
  }

  /** Daily extremes in °F with decimal commas, kept all year round. */
  private String millField() {
    var air = vale.air(Site.MILL_FIELD);
    var draws = Draws.of(vale.seed(), "book of Mill Field");
    var text = begin("Mill Field, extremes of the day in °F, -- where none was read");
    text.append("day;highest;lowest\n");
    var last = OsmereVale.ISSUE_DATE.minusDays(4);
    for (var day = LocalDate.of(2022, 1, 1); !day.isAfter(last); day = day.plusDays(1)) {
      boolean missed = draws.uniform() < 0.006;
      text.append(POINTS.format(day)).append(';');
      text.append(missed ? "--" : fahrenheit(air.maximum(day))).append(';');
      text.append(missed ? "--" : fahrenheit(air.minimum(day))).append('\n');
    }
    return text.toString();
  }

  private static String fahrenheit(double celsius) {
    return Numbers.fixed(TemperatureUnit.FAHRENHEIT.fromCelsius(celsius), 1).replace('.', ',');
  }

  /** Readings every fifteen minutes in UTC; the sensor sticks once and spikes now and then. */
  private String sandLane() {
    var air = vale.air(Site.SAND_LANE);
    var draws = Draws.of(vale.seed(), "sensor of Sand Lane");
    var stuckFrom = LocalDate.of(2026, 4, 1).plusDays(draws.whole(0, 40)).atTime(15, 0);
    var stuckTo = stuckFrom.plusHours(11);
    var text = begin("Sand Lane, a reading every fifteen minutes in °C, clock on UTC");
    text.append("utc,celsius\n");
    var end = SAND_LANE_LAST.plusDays(1).atStartOfDay();
    double stored = 0;
    for (var time = SAND_LANE_FIRST.atStartOfDay(); time.isBefore(end); ) {
      if (time.isBefore(stuckFrom) || !time.isBefore(stuckTo)) {
        stored = air.celsius(time.toLocalDate(), minuteOfDay(time)) + 0.08 * draws.gaussian();
      }
      double shown = draws.uniform() < 0.0008 ? spike(draws, stored) : stored;
      text.append(UTC.format(time.minusHours(1))).append(',');
      text.append(Numbers.fixed(shown, 2)).append('\n');
      time = time.plusMinutes(15);
    }
    return text.toString();
  }

  private static double spike(Draws draws, double celsius) {
    return draws.uniform() < 0.5 ? 85 : celsius + 22;
  }

  private static int minuteOfDay(LocalDateTime time) {
    return time.getHour() * 60 + time.getMinute();
  }

  private String station() {
    var air = vale.air(Site.STATION);
    var text = begin("Osmere station, extremes of the day in °C");
    text.append("date,min_c,max_c\n");
    var last = OsmereVale.ISSUE_DATE;
    for (var day = ValeWeather.FIRST_DAY; !day.isAfter(last); day = day.plusDays(1)) {
      text.append(day).append(',');
      text.append(Numbers.fixed(air.minimum(day), 1)).append(',');
      text.append(Numbers.fixed(air.maximum(day), 1)).append('\n');
    }
    return text.toString();
  }
}
