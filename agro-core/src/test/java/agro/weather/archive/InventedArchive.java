package agro.weather.archive;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** Writes invented values in the layouts of the archives. */
public final class InventedArchive {

  public static final String STATION = "XXM00000001";

  private InventedArchive() {}

  /** One line of a .dly file; days that are not in the map have no value. */
  public static String monthLine(
      String station, YearMonth month, String element, Map<Integer, String> valuesWithFlags) {
    var line =
        new StringBuilder(station)
            .append(String.format(Locale.ROOT, "%04d%02d", month.getYear(), month.getMonthValue()))
            .append(element);
    for (int day = 1; day <= 31; day++) {
      line.append(valuesWithFlags.getOrDefault(day, "-9999   "));
    }
    return line.toString();
  }

  /** A value of five characters with its three flags. */
  public static String value(int tenths, char qualityFlag) {
    return String.format(Locale.ROOT, "%5d %cS", tenths, qualityFlag);
  }

  /** A line of a by-station file. */
  public static String dayLine(
      LocalDate day, String element, int tenths, String quality, String time) {
    return String.format(
        Locale.ROOT,
        "%s,%s,%s,%d,,%s,S,%s",
        STATION,
        day.toString().replace("-", ""),
        element,
        tenths,
        quality,
        time);
  }

  /** A line of an hourly file. */
  public static String hourLine(LocalDate day, int hour, int tenths) {
    return String.format(
        Locale.ROOT,
        "%04d %02d %02d %02d%6d%6d%6d%6d%6d%6d%6d%6d",
        day.getYear(),
        day.getMonthValue(),
        day.getDayOfMonth(),
        hour,
        tenths,
        -9999,
        10132,
        0,
        15,
        -9999,
        -9999,
        -9999);
  }

  /** The month lines of both elements for a month of the same two values on each day. */
  public static List<String> evenMonth(YearMonth month, int minTenths, int maxTenths) {
    var minima = new HashMap<Integer, String>();
    var maxima = new HashMap<Integer, String>();
    for (int day = 1; day <= month.lengthOfMonth(); day++) {
      minima.put(day, value(minTenths, ' '));
      maxima.put(day, value(maxTenths, ' '));
    }
    var lines = new ArrayList<String>();
    lines.add(monthLine(STATION, month, "TMAX", maxima));
    lines.add(monthLine(STATION, month, "TMIN", minima));
    return lines;
  }
}
