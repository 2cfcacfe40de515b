package agro.programme.window;

import agro.reading.DelimitedFormat;
import agro.report.InputProblem;
import agro.units.Length;
import agro.units.LengthUnit;
import agro.units.Speed;
import agro.units.SpeedUnit;
import agro.units.Temperature;
import agro.units.TemperatureUnit;
import agro.units.Unit;
import java.time.Duration;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;

/**
 * How a log or a forecast by the hour is written: declared, never guessed. Columns that the file
 * does not have are left out, and said to be missing.
 *
 * @param format separator, decimal mark and character set
 * @param time column of the time
 * @param pattern pattern of the time; nothing for ISO 8601, with or without an offset
 * @param zone clock of the times that carry no offset; nothing for the clock of the field
 * @param lag from the beginning of the span that a line is of to its time: zero when the time is
 *     its beginning, the length of the span when it is its end
 * @param columns column of each kind of weather
 * @param scales from the unit of the column to m/s, mm, °C or %
 * @param missing word for a value that is missing; an empty cell always is
 */
public record HourColumns(
    DelimitedFormat format,
    String time,
    Optional<String> pattern,
    Optional<ZoneId> zone,
    Duration lag,
    Map<WeatherKind, String> columns,
    Map<WeatherKind, DoubleUnaryOperator> scales,
    Optional<String> missing) {

  private static final double MILLIMETRES = 1000;

  /** Copies the maps and refuses a pattern that is none. */
  public HourColumns {
    Objects.requireNonNull(format, "format");
    Objects.requireNonNull(time, "time");
    Objects.requireNonNull(lag, "lag");
    columns = Map.copyOf(columns);
    scales = Map.copyOf(scales);
    pattern = pattern.filter(each -> requirePattern(each) != null);
  }

  private static DateTimeFormatter requirePattern(String pattern) {
    try {
      return DateTimeFormatter.ofPattern(pattern, Locale.ROOT);
    } catch (IllegalArgumentException e) {
      throw InputProblem.of("the pattern of times \"" + pattern + "\"")
          .expected("a pattern such as yyyy-MM-dd HH:mm")
          .because("times are read by it, letter by letter")
          .mend("look for a letter that has no meaning: " + e.getMessage());
    }
  }

  /**
   * Commas, a column {@code time} in ISO 8601, and {@code wind_m_s}, {@code gust_m_s}, {@code
   * rain_mm}, {@code air_c}, {@code humidity_percent}. A time is the beginning of its hour.
   *
   * @return the declaration
   */
  public static HourColumns withDefaults() {
    var columns = new EnumMap<WeatherKind, String>(WeatherKind.class);
    columns.put(WeatherKind.WIND, "wind_m_s");
    columns.put(WeatherKind.GUST, "gust_m_s");
    columns.put(WeatherKind.RAIN, "rain_mm");
    columns.put(WeatherKind.TEMPERATURE, "air_c");
    columns.put(WeatherKind.HUMIDITY, "humidity_percent");
    return new HourColumns(
        DelimitedFormat.COMMA,
        "time",
        Optional.empty(),
        Optional.empty(),
        Duration.ZERO,
        columns,
        Map.of(),
        Optional.empty());
  }

  /**
   * The same columns in another kind of file.
   *
   * @param other separator, decimal mark and character set
   * @return a new declaration
   */
  public HourColumns written(DelimitedFormat other) {
    return new HourColumns(other, time, pattern, zone, lag, columns, scales, missing);
  }

  /**
   * The same file with another column of times.
   *
   * @param column name of the column
   * @param timePattern its pattern, such as {@code yyyy-MM-dd HH:mm}
   * @return a new declaration
   */
  public HourColumns timed(String column, String timePattern) {
    return new HourColumns(
        format, column, Optional.of(timePattern), zone, lag, columns, scales, missing);
  }

  /**
   * The same file, its times on a clock of their own.
   *
   * @param clock the clock
   * @return a new declaration
   */
  public HourColumns onClock(ZoneId clock) {
    return new HourColumns(
        format, time, pattern, Optional.of(clock), lag, columns, scales, missing);
  }

  /**
   * The same file, each time being the end of the span that the line is of.
   *
   * @param span length of the span, such as one hour
   * @return a new declaration
   */
  public HourColumns timeIsTheEndOf(Duration span) {
    return new HourColumns(format, time, pattern, zone, span, columns, scales, missing);
  }

  /**
   * The same file with a word for missing values.
   *
   * @param word for example {@code -999}
   * @return a new declaration
   */
  public HourColumns missingAs(String word) {
    return new HourColumns(format, time, pattern, zone, lag, columns, scales, Optional.of(word));
  }

  /**
   * The same file with another column of wind.
   *
   * @param column name of the column
   * @param unit its unit
   * @return a new declaration
   */
  public HourColumns wind(String column, Unit<Speed> unit) {
    return with(WeatherKind.WIND, column, speed(unit));
  }

  /**
   * The same file with another column of gusts.
   *
   * @param column name of the column
   * @param unit its unit
   * @return a new declaration
   */
  public HourColumns gust(String column, Unit<Speed> unit) {
    return with(WeatherKind.GUST, column, speed(unit));
  }

  /**
   * The same file with another column of rain.
   *
   * @param column name of the column
   * @param unit its unit
   * @return a new declaration
   */
  public HourColumns rain(String column, Unit<Length> unit) {
    return with(
        WeatherKind.RAIN, column, value -> MILLIMETRES * Length.of(value, unit).inBaseUnit());
  }

  /**
   * The same file with another column of temperature.
   *
   * @param column name of the column
   * @param unit its unit
   * @return a new declaration
   */
  public HourColumns temperature(String column, TemperatureUnit unit) {
    return with(WeatherKind.TEMPERATURE, column, value -> Temperature.of(value, unit).celsius());
  }

  /**
   * The same file with another column of relative humidity in per cent.
   *
   * @param column name of the column
   * @return a new declaration
   */
  public HourColumns humidity(String column) {
    return with(WeatherKind.HUMIDITY, column, DoubleUnaryOperator.identity());
  }

  private static DoubleUnaryOperator speed(Unit<Speed> unit) {
    return unit == SpeedUnit.METRE_PER_SECOND
        ? DoubleUnaryOperator.identity()
        : value -> Speed.of(value, unit).metresPerSecond();
  }

  private HourColumns with(WeatherKind kind, String column, DoubleUnaryOperator scale) {
    var names = new EnumMap<WeatherKind, String>(WeatherKind.class);
    names.putAll(columns);
    names.put(kind, column);
    var factors = new EnumMap<WeatherKind, DoubleUnaryOperator>(WeatherKind.class);
    factors.putAll(scales);
    factors.put(kind, scale);
    return new HourColumns(format, time, pattern, zone, lag, names, factors, missing);
  }

  /** A value of a column in m/s, mm, °C or %. */
  double scaled(WeatherKind kind, double value) {
    return scales.getOrDefault(kind, DoubleUnaryOperator.identity()).applyAsDouble(value);
  }

  /** The default unit of rain, for messages. */
  static String unit(WeatherKind kind) {
    return switch (kind) {
      case WIND, GUST -> SpeedUnit.METRE_PER_SECOND.symbol();
      case RAIN -> LengthUnit.MILLIMETRE.symbol();
      case TEMPERATURE -> TemperatureUnit.CELSIUS.symbol();
      case HUMIDITY -> "%";
    };
  }
}
