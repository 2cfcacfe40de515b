package agro.weather.siting;

import agro.report.InputProblem;
import agro.units.Numbers;
import agro.weather.DailyTemperatures;
import agro.weather.DayOrigin;
import agro.weather.TemperatureReadings;
import agro.working.Cell;
import agro.working.Presentable;
import agro.working.Presentation;
import agro.working.ResultTable;
import agro.working.ResultTable.Column;
import java.time.Month;
import java.time.format.TextStyle;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;

/**
 * How far an observer's extremes are from those of calendar days, after each extreme was put on its
 * day.
 *
 * @param hour hour of observation
 * @param climate the log it was told from, in words
 * @param overall over all days
 * @param byMonth months with at least {@value #LEAST_DAYS_OF_MONTH} days
 */
public record ObservationBias(
    ObservationHour hour, String climate, Bias overall, Map<Month, Bias> byMonth)
    implements Presentable {

  /** Fewest complete days. */
  public static final int LEAST_DAYS = 30;

  /** Fewest days that make a month count by itself. */
  public static final int LEAST_DAYS_OF_MONTH = 20;

  /**
   * Differences observer less calendar day.
   *
   * @param minimumCelsius mean of the minima in °C
   * @param minimumSdCelsius standard deviation of the minima from day to day in °C
   * @param maximumCelsius mean of the maxima in °C
   * @param maximumSdCelsius standard deviation of the maxima from day to day in °C
   * @param days days used
   */
  public record Bias(
      double minimumCelsius,
      double minimumSdCelsius,
      double maximumCelsius,
      double maximumSdCelsius,
      int days) {}

  /** Copies the map. */
  public ObservationBias {
    Objects.requireNonNull(hour, "hour");
    Objects.requireNonNull(climate, "climate");
    Objects.requireNonNull(overall, "overall");
    byMonth = java.util.Collections.unmodifiableMap(new TreeMap<>(byMonth));
  }

  static ObservationBias fit(ObservationHour hour, TemperatureReadings readings) {
    var observed = hour.assign(hour.observe(readings)).days();
    var calendar = ObservationHour.MIDNIGHT.observe(readings);
    Map<Month, List<double[]>> months = new TreeMap<>();
    var all = new ArrayList<double[]>();
    for (int i = 0; i < observed.size(); i++) {
      var day = observed.day(i);
      double low = observed.minCelsius(day) - calendar.minCelsius(day);
      double high = observed.maxCelsius(day) - calendar.maxCelsius(day);
      if (!Double.isNaN(low + high)) {
        var pair = new double[] {low, high};
        all.add(pair);
        months.computeIfAbsent(day.getMonth(), month -> new ArrayList<>()).add(pair);
      }
    }
    if (all.size() < LEAST_DAYS) {
      throw InputProblem.of(readings + ": " + all.size() + " complete days")
          .expected("at least " + LEAST_DAYS)
          .because("the bias hangs on how the weather changes from day to day")
          .mend("take a longer log of the same climate, best of a whole year");
    }
    Map<Month, Bias> byMonth = new TreeMap<>();
    months.forEach(
        (month, pairs) -> {
          if (pairs.size() >= LEAST_DAYS_OF_MONTH) {
            byMonth.put(month, bias(pairs));
          }
        });
    return new ObservationBias(hour, readings.toString(), bias(all), byMonth);
  }

  private static Bias bias(List<double[]> pairs) {
    double[] low = moments(pairs, 0);
    double[] high = moments(pairs, 1);
    return new Bias(low[0], low[1], high[0], high[1], pairs.size());
  }

  private static double[] moments(List<double[]> pairs, int which) {
    double mean = pairs.stream().mapToDouble(pair -> pair[which]).average().orElse(0);
    double squares = pairs.stream().mapToDouble(pair -> Math.pow(pair[which] - mean, 2)).sum();
    return new double[] {mean, Math.sqrt(squares / Math.max(1, pairs.size() - 1))};
  }

  /**
   * An observer's days put on their days and freed of the mean bias of their month. The bias of a
   * single day is not known, so its standard deviation becomes the standard error.
   *
   * @param observed extremes under the day of their reading
   * @return the days, with origin {@link DayOrigin#MODELLED} where they were observed
   */
  public ObservationCorrection correct(DailyTemperatures observed) {
    var days = hour.assign(observed).days();
    var builder = DailyTemperatures.builder(days.firstDay(), days.lastDay());
    for (int i = 0; i < days.size(); i++) {
      if (days.originAt(i) == DayOrigin.MISSING) {
        continue;
      }
      var day = days.day(i);
      var bias = byMonth.getOrDefault(day.getMonth(), overall);
      double low = days.minCelsius(day) - bias.minimumCelsius();
      double high = days.maxCelsius(day) - bias.maximumCelsius();
      if (low > high) {
        low = 0.5 * (low + high);
        high = low;
      }
      builder.put(
          day,
          low,
          high,
          Math.hypot(days.minStandardErrorCelsius(day), bias.minimumSdCelsius()),
          Math.hypot(days.maxStandardErrorCelsius(day), bias.maximumSdCelsius()),
          days.originAt(i) == DayOrigin.OBSERVED ? DayOrigin.MODELLED : days.originAt(i));
    }
    var corrected = builder.build(days.place(), days.medium());
    return new ObservationCorrection(corrected, hour, Optional.of(this));
  }

  /**
   * The bias as a table.
   *
   * @return one line for each month and one for all days
   */
  public ResultTable table() {
    var rows = new ArrayList<List<Cell>>();
    byMonth.forEach(
        (month, bias) -> rows.add(row(month.getDisplayName(TextStyle.FULL, Locale.ENGLISH), bias)));
    rows.add(row("all days", overall));
    return ResultTable.of(
            "Read at " + hour.words() + " less calendar day",
            List.of(
                Column.of("Month"),
                Column.of("Minimum", "°C"),
                Column.of("its spread (sd)", "°C"),
                Column.of("Maximum", "°C"),
                Column.of("its spread (sd) ", "°C"),
                Column.of("Days")),
            rows)
        .withNote("From " + climate + ".");
  }

  private static List<Cell> row(String name, Bias bias) {
    return List.of(
        Cell.text(name),
        Cell.number(bias.minimumCelsius(), 2),
        Cell.number(bias.minimumSdCelsius(), 2),
        Cell.number(bias.maximumCelsius(), 2),
        Cell.number(bias.maximumSdCelsius(), 2),
        Cell.number(bias.days(), 0));
  }

  @Override
  public Presentation presentation() {
    return Presentation.titled("The hour of observation")
        .fact("Read at", hour.words())
        .paragraph(
            "A reset thermometer shows the temperature of that moment, and carries it into the next"
                + " day. Warm days that are followed by cool ones count twice when it is read in the"
                + " afternoon, cold nights that are followed by mild ones when it is read in the"
                + " morning. The bias below is a mean; a single day has all of it or none.")
        .table(table())
        .sources(ObservationCorrection.SOURCES)
        .build();
  }

  @Override
  public String toString() {
    return "Read at "
        + hour.words()
        + ": minima "
        + Numbers.fixed(overall.minimumCelsius(), 2)
        + " °C, maxima "
        + Numbers.fixed(overall.maximumCelsius(), 2)
        + " °C against calendar days";
  }
}
