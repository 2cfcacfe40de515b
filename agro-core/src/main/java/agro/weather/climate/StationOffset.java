package agro.weather.climate;

import agro.report.InputProblem;
import agro.units.Numbers;
import agro.weather.DailyTemperatures;
import agro.weather.DayOrigin;
import agro.weather.Medium;
import agro.working.Cell;
import agro.working.Presentable;
import agro.working.Presentation;
import agro.working.ResultTable;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;

/**
 * How much warmer a field is than a station, for the daily minima and the daily maxima apart: cold
 * air drains at night and sun heats by day, so one figure for both would be wrong twice.
 *
 * @param field name of the field
 * @param fieldMedium medium of the field's thermometer
 * @param station name of the station
 * @param minimum field less station, daily minima
 * @param maximum field less station, daily maxima
 * @param days days observed at both
 * @param months calendar months with at least {@value #LEAST_DAYS_OF_MONTH} such days
 * @param seasons seasons with at least {@value #LEAST_DAYS} such days
 * @param crossedDays days on which the shifted minimum would be above the shifted maximum
 */
public record StationOffset(
    String field,
    Medium fieldMedium,
    String station,
    Shift minimum,
    Shift maximum,
    int days,
    int months,
    int seasons,
    int crossedDays)
    implements Presentable {

  /** Fewest days that both must have observed. */
  public static final int LEAST_DAYS = 30;

  /** Fewest days that make a month count for the error. */
  public static final int LEAST_DAYS_OF_MONTH = 10;

  /** Fewest seasons whose scatter tells what a new season may bring. */
  public static final int LEAST_SEASONS = 3;

  /**
   * The offset of one extreme.
   *
   * @param meanCelsius mean of field less station in °C
   * @param dayToDaySdCelsius standard deviation of the daily differences in °C
   * @param errorCelsius what the mean may miss in another season, in °C: with S seasons, {@value
   *     #LEAST_SEASONS} or more, the standard deviation between their means times √(1 + 1/S), the
   *     error of a new one predicted from their mean; with fewer the standard deviation between the
   *     means of months; with fewer than two months the day-to-day standard deviation
   */
  public record Shift(double meanCelsius, double dayToDaySdCelsius, double errorCelsius) {}

  /** Refuses nulls. */
  public StationOffset {
    Objects.requireNonNull(field, "field");
    Objects.requireNonNull(fieldMedium, "fieldMedium");
    Objects.requireNonNull(station, "station");
    Objects.requireNonNull(minimum, "minimum");
    Objects.requireNonNull(maximum, "maximum");
  }

  /**
   * Fits the offset on the days that were observed at both. Filled days are not used.
   *
   * @param field daily extremes of the field
   * @param station daily extremes of the station, in the same kind of medium
   * @return the offset
   * @throws InputProblem when fewer than {@value #LEAST_DAYS} days were observed at both, or one is
   *     of air and the other of soil
   */
  public static StationOffset fit(DailyTemperatures field, DailyTemperatures station) {
    station.medium().require(field.medium().kind(), "the offset to the field");
    var common = new ArrayList<LocalDate>();
    for (int i = 0; i < field.size(); i++) {
      var day = field.day(i);
      if (field.origin(day) == DayOrigin.OBSERVED && station.origin(day) == DayOrigin.OBSERVED) {
        common.add(day);
      }
    }
    requireEnough(field, station, common.size());
    double[] minimum = new double[common.size()];
    double[] maximum = new double[common.size()];
    for (int i = 0; i < minimum.length; i++) {
      var day = common.get(i);
      minimum[i] = field.minCelsius(day) - station.minCelsius(day);
      maximum[i] = field.maxCelsius(day) - station.maxCelsius(day);
    }
    var minimumShift = shift(common, minimum);
    var maximumShift = shift(common, maximum);
    double narrowest = minimumShift.meanCelsius() - maximumShift.meanCelsius();
    int crossed =
        (int)
            common.stream()
                .filter(day -> station.maxCelsius(day) - station.minCelsius(day) < narrowest)
                .count();
    return new StationOffset(
        field.place(),
        field.medium(),
        station.place(),
        minimumShift,
        maximumShift,
        common.size(),
        monthlyMeans(common, minimum).length,
        OffsetSeasons.departures(common, minimum).length,
        crossed);
  }

  private static void requireEnough(
      DailyTemperatures field, DailyTemperatures station, int commonDays) {
    if (commonDays < LEAST_DAYS) {
      throw InputProblem.of(
              commonDays
                  + " days observed at both "
                  + field.place()
                  + " ("
                  + field.firstDay()
                  + " to "
                  + field.lastDay()
                  + ") and "
                  + station.place()
                  + " ("
                  + station.firstDay()
                  + " to "
                  + station.lastDay()
                  + ")")
          .expected("at least " + LEAST_DAYS + " common days")
          .because("the offset of a few days is that of their weather and not of the place")
          .mend("read longer logs, or check that the years and places belong together");
    }
  }

  private static Shift shift(List<LocalDate> days, double[] differences) {
    double dayToDay = standardDeviation(differences);
    double[] seasons = OffsetSeasons.departures(days, differences);
    if (seasons.length >= LEAST_SEASONS) {
      double newSeason = standardDeviation(seasons) * Math.sqrt(1 + 1.0 / seasons.length);
      return new Shift(mean(differences), dayToDay, newSeason);
    }
    double[] monthly = monthlyMeans(days, differences);
    return new Shift(
        mean(differences), dayToDay, monthly.length < 2 ? dayToDay : standardDeviation(monthly));
  }

  private static double[] monthlyMeans(List<LocalDate> days, double[] differences) {
    Map<YearMonth, List<Double>> byMonth = new TreeMap<>();
    for (int i = 0; i < differences.length; i++) {
      byMonth
          .computeIfAbsent(YearMonth.from(days.get(i)), month -> new ArrayList<>())
          .add(differences[i]);
    }
    return byMonth.values().stream()
        .filter(month -> month.size() >= LEAST_DAYS_OF_MONTH)
        .mapToDouble(month -> month.stream().mapToDouble(Double::doubleValue).average().orElse(0))
        .toArray();
  }

  private static double mean(double[] values) {
    double sum = 0;
    for (double value : values) {
      sum += value;
    }
    return sum / values.length;
  }

  private static double standardDeviation(double[] values) {
    double mean = mean(values);
    double squares = 0;
    for (double value : values) {
      squares += (value - mean) * (value - mean);
    }
    return Math.sqrt(squares / (values.length - 1));
  }

  /**
   * What the mean offset of the minima may miss in another season.
   *
   * @return standard deviation in °C
   */
  public double errorMinCelsius() {
    return minimum.errorCelsius();
  }

  /**
   * What the mean offset of the maxima may miss in another season.
   *
   * @return standard deviation in °C
   */
  public double errorMaxCelsius() {
    return maximum.errorCelsius();
  }

  /**
   * The station's temperatures brought to the field with the mean offsets.
   *
   * @param stationDays daily extremes of the station, observed, forecast or of past years
   * @return a series under the field's name and medium, as {@link #apply(DailyTemperatures, double,
   *     double)} describes
   */
  public DailyTemperatures apply(DailyTemperatures stationDays) {
    return apply(stationDays, 0, 0);
  }

  /**
   * The station's temperatures brought to the field with the mean offsets and an error of them.
   * Observed days become {@link DayOrigin#NEIGHBOUR}; other origins stay. The standard error of a
   * day holds the day-to-day scatter of the offset, except for past years. Where the shifted
   * minimum would be above the shifted maximum, both are their mean.
   *
   * @param stationDays daily extremes of the station
   * @param shiftMinCelsius error of the offset of the minima in °C, added to it
   * @param shiftMaxCelsius error of the offset of the maxima in °C, added to it
   * @return a series under the field's name and medium
   * @throws InputProblem when the series is of another kind of medium
   */
  public DailyTemperatures apply(
      DailyTemperatures stationDays, double shiftMinCelsius, double shiftMaxCelsius) {
    stationDays.medium().require(fieldMedium.kind(), "the offset to the field");
    var builder = DailyTemperatures.builder(stationDays.firstDay(), stationDays.lastDay());
    double[] minima = stationDays.minimaCelsius();
    double[] maxima = stationDays.maximaCelsius();
    for (int i = 0; i < minima.length; i++) {
      double min = minima[i] + minimum.meanCelsius() + shiftMinCelsius;
      double max = maxima[i] + maximum.meanCelsius() + shiftMaxCelsius;
      if (min > max) {
        min = 0.5 * (min + max);
        max = min;
      }
      var origin = stationDays.originAt(i);
      if (origin == DayOrigin.MISSING) {
        continue;
      }
      var day = stationDays.day(i);
      builder.put(
          day,
          min,
          max,
          error(minimum, origin, stationDays.minStandardErrorCelsius(day)),
          error(maximum, origin, stationDays.maxStandardErrorCelsius(day)),
          origin == DayOrigin.OBSERVED ? DayOrigin.NEIGHBOUR : origin);
    }
    return builder.build(field, fieldMedium);
  }

  /**
   * Error of a shifted day: what the station's day itself may miss and the day-to-day scatter of
   * the offset. A past year's day stands for weather that may come and not for a field's day, so it
   * keeps its own. The error of the mean offset is the same on all days and is left to the caller.
   */
  private static double error(Shift shift, DayOrigin origin, double own) {
    return origin == DayOrigin.PAST_YEAR ? own : Math.hypot(shift.dayToDaySdCelsius(), own);
  }

  @Override
  public Presentation presentation() {
    var table =
        new ResultTable(
            field + " less " + station,
            List.of(
                new ResultTable.Column("Daily extreme", ""),
                new ResultTable.Column("Mean", "°C"),
                new ResultTable.Column("Day to day (sd)", "°C"),
                new ResultTable.Column("May miss another season by (sd)", "°C")),
            List.of(row("minimum", minimum), row("maximum", maximum)),
            notes());
    return Presentation.titled("Offset between field and station").table(table).build();
  }

  private static List<Cell> row(String extreme, Shift shift) {
    return List.of(
        Cell.text(extreme),
        Cell.number(shift.meanCelsius(), 2),
        Cell.number(shift.dayToDaySdCelsius(), 2),
        Cell.number(shift.errorCelsius(), 2));
  }

  private List<String> notes() {
    var notes = new ArrayList<String>();
    notes.add("From " + days + " days observed at both.");
    notes.add(
        seasons >= LEAST_SEASONS
            ? "The last column is the standard deviation between "
                + seasons
                + " seasons, times √(1 + 1/"
                + seasons
                + ") for a new one."
            : months < 2
                ? "There is no second month with "
                    + LEAST_DAYS_OF_MONTH
                    + " common days, so the day-to-day spread stands for the last column."
                : "The last column is the standard deviation between the means of "
                    + months
                    + " months, for there are fewer than "
                    + LEAST_SEASONS
                    + " seasons.");
    if (crossedDays > 0) {
      notes.add(
          "On "
              + crossedDays
              + " of these days the shifted minimum would be above the shifted maximum; there both"
              + " are their mean.");
    }
    return notes;
  }

  @Override
  public String toString() {
    return field
        + " less "
        + station
        + ": minima "
        + Numbers.fixed(minimum.meanCelsius(), 2)
        + " °C, maxima "
        + Numbers.fixed(maximum.meanCelsius(), 2)
        + " °C, from "
        + days
        + " days";
  }
}
