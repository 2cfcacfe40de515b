package agro.weather.log;

import java.time.DateTimeException;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.DoubleUnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A small invented log and a reader of its single lines that knows how they are written: the
 * yardstick for readers that do not.
 *
 * @param lines the log, heading lines first
 * @param separator what stands between cells
 * @param line how a line of data is written, with the groups y, M, d, H, m, v and perhaps half
 * @param toCelsius from the written value to °C
 */
record SmallLog(List<String> lines, char separator, Pattern line, DoubleUnaryOperator toCelsius) {

  private static final int HOURS = 96;

  /** The invented temperature of an hour, of one decimal, hardly ever the same twice. */
  private static double celsius(int hour) {
    double wave = 11 + 6 * Math.sin((hour % 24 - 9) * Math.PI / 12) + 0.13 * hour;
    return Math.round(10 * wave) / 10.0;
  }

  static List<SmallLog> all() {
    return List.of(iso(), german(), american(), tabbed(), columns(), quoted());
  }

  private static SmallLog iso() {
    return hours(
        List.of("time,temperature (°C)"),
        "yyyy-MM-dd HH:mm",
        "%s,%.1f",
        ',',
        "(?<y>\\d{1,4})-(?<M>\\d{1,2})-(?<d>\\d{1,2}) (?<H>\\d{1,2}):(?<m>\\d\\d),[ \u00a0]*(?<v>-?\\d*\\.?\\d+|-?\\d+\\.)",
        v -> v);
  }

  private static SmallLog german() {
    var log =
        hours(
            List.of("Logger 7", "", "Datum;Zeit;Luft °C;Feuchte %"),
            "dd.MM.yyyy;HH:mm",
            "%s;%.1f;61",
            ';',
            "(?<d>\\d{1,2})\\.(?<M>\\d{1,2})\\.(?<y>\\d{4});(?<H>\\d{1,2}):(?<m>\\d\\d);[ \u00a0]*(?<v>-?\\d*,?\\d+|-?\\d+,);.*",
            v -> v);
    var lines = new ArrayList<>(log.lines().subList(0, 3));
    for (var line : log.lines().subList(3, log.lines().size())) {
      var cells = line.split(";", -1);
      cells[2] = cells[2].replace('.', ',');
      lines.add(String.join(";", cells));
    }
    return new SmallLog(lines, ';', log.line(), log.toCelsius());
  }

  private static SmallLog american() {
    return hours(
        List.of("Record,Date Time,Temp (°F),Battery V"),
        "M/d/yyyy hh:mm a",
        "7,%s,%.1f,3.6",
        ',',
        "[^,]*,(?<M>\\d{1,2})/(?<d>\\d{1,2})/(?<y>\\d{4}) (?<H>\\d{1,2}):(?<m>\\d\\d) (?<half>AM|PM),"
            + "[ \u00a0]*(?<v>-?\\d*\\.?\\d+|-?\\d+\\.),.*",
        v -> (v - 32) / 1.8);
  }

  private static SmallLog tabbed() {
    return hours(
        List.of("# invented", "stamp\tT\tRH", "\tdegC\t%"),
        "yyyy-MM-dd'T'HH:mm'Z'",
        "%s\t%.1f\t60",
        '\t',
        "(?<y>\\d{4})-(?<M>\\d{1,2})-(?<d>\\d{1,2})T(?<H>\\d{1,2}):(?<m>\\d\\d)Z\t[ \u00a0]*(?<v>-?\\d*\\.?\\d+|-?\\d+\\.)\t.*",
        v -> v);
  }

  private static SmallLog columns() {
    return hours(
        List.of("Osmere Vale, invented", "Station Date     HHMM   Temp_C"),
        "yyyyMMdd HHmm",
        "OV      %s %8.1f",
        ' ',
        "OV +(?<y>\\d{4})(?<M>\\d\\d)(?<d>\\d\\d) (?<H>\\d\\d)(?<m>\\d\\d) *(?<v>-?\\d*\\.?\\d+|-?\\d+\\.)",
        v -> v);
  }

  private static SmallLog quoted() {
    var log =
        hours(
            List.of("\"Time, UTC+0\",\"Air (°C)\""),
            "dd/MM/yyyy HH:mm:ss",
            "\"%s\",\"%.1f\"",
            ',',
            "\"(?<d>\\d{1,2})/(?<M>\\d{1,2})/(?<y>\\d{4}) (?<H>\\d{1,2}):(?<m>\\d\\d):(?<s>\\d\\d)\",\""
                + "[ \u00a0]*(?<v>-?\\d*,?\\d+|-?\\d+,)\"?",
            v -> v);
    var lines = new ArrayList<String>();
    lines.add(log.lines().get(0));
    for (var line : log.lines().subList(1, log.lines().size())) {
      lines.add(line.replace('.', ','));
    }
    return new SmallLog(lines, ',', log.line(), log.toCelsius());
  }

  private static SmallLog hours(
      List<String> head,
      String pattern,
      String form,
      char separator,
      String line,
      DoubleUnaryOperator toCelsius) {
    var lines = new ArrayList<>(head);
    var start = LocalDateTime.of(2021, 5, 10, 0, 0);
    var writer = DateTimeFormatter.ofPattern(pattern, Locale.ENGLISH);
    boolean fahrenheit = toCelsius.applyAsDouble(32) == 0;
    for (int i = 0; i < HOURS; i++) {
      double value = fahrenheit ? celsius(i) * 1.8 + 32 : celsius(i);
      lines.add(String.format(Locale.ROOT, form, writer.format(start.plusHours(i)), value));
    }
    return new SmallLog(lines, separator, Pattern.compile(line), toCelsius);
  }

  int headLines() {
    return lines.size() - HOURS;
  }

  String text(List<String> some) {
    return String.join("\n", some) + "\n";
  }

  /** The time and value that a line says, by the line alone; null when it is damaged. */
  private double[] said(String text) {
    var found = line.matcher(text);
    if (!found.matches()) {
      return null;
    }
    try {
      int hour = Integer.parseInt(found.group("H"));
      if (line.pattern().contains("half")) {
        if (hour < 1 || hour > 12) {
          return null;
        }
        hour = hour % 12 + (found.group("half").equals("PM") ? 12 : 0);
      }
      var time = time(found, hour);
      double value = Double.parseDouble(found.group("v").replace(',', '.'));
      return new double[] {time.toEpochSecond(ZoneOffset.UTC), toCelsius.applyAsDouble(value)};
    } catch (DateTimeException e) {
      return null;
    }
  }

  private static LocalDateTime time(Matcher found, int hour) {
    var day =
        LocalDateTime.of(
            Integer.parseInt(found.group("y")),
            Integer.parseInt(found.group("M")),
            Integer.parseInt(found.group("d")),
            0,
            0);
    int minute = Integer.parseInt(found.group("m"));
    if (hour > 24 || minute > 59 || (hour == 24 && minute > 0)) {
      throw new DateTimeException("no time");
    }
    int second = found.pattern().pattern().contains("<s>") ? Integer.parseInt(found.group("s")) : 0;
    return day.plusHours(hour).plusMinutes(minute).plusSeconds(second);
  }

  /** What the lines of a text say, by their numbers. */
  Map<Integer, double[]> said(List<String> some) {
    var said = new HashMap<Integer, double[]>();
    for (int i = 0; i < some.size(); i++) {
      var pair = said(some.get(i));
      if (pair != null) {
        said.put(i + 1, pair);
      }
    }
    return said;
  }
}
