package agro.weather.climate;

import agro.report.InputProblem;
import agro.report.ReadReport;
import agro.report.ReadReport.Deed;
import agro.report.SourceLocation;
import agro.units.Numbers;
import agro.weather.DailyTemperatures;
import agro.weather.DayOrigin;
import agro.weather.DayRuns;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Objects;

/**
 * Days of a weather forecast, to be appended to what is known. Observed days always win over
 * forecast ones, so a later log replaces them. Immutable.
 */
public final class ForecastDays {

  private final DailyTemperatures days;
  private final LocalDate issued;
  private final List<Double> errorsByLead;

  private ForecastDays(DailyTemperatures days, LocalDate issued, List<Double> errorsByLead) {
    this.days = days;
    this.issued = issued;
    this.errorsByLead = List.copyOf(errorsByLead);
  }

  /**
   * A forecast that is taken as exact as long as no error is stated.
   *
   * @param days forecast extremes
   * @param issued day on which it was issued; days before it are no forecast and are not used
   * @return the forecast
   * @throws InputProblem when no day lies on or after the day of issue
   */
  public static ForecastDays of(DailyTemperatures days, LocalDate issued) {
    if (days.lastDay().isBefore(issued)) {
      throw InputProblem.of("a forecast issued on " + issued + " for days to " + days.lastDay())
          .expected("days on or after the day of issue")
          .because("a forecast tells what is to come")
          .mend("look for a wrong date, or give the days as observed if they were");
    }
    return new ForecastDays(days, Objects.requireNonNull(issued, "issued"), List.of());
  }

  /**
   * States the standard error by lead time. Leads beyond the list have its last error.
   *
   * @param celsius standard errors in °C of the day of issue, the day after and so on, each 0 or
   *     more
   * @return this forecast with those errors
   * @throws InputProblem when the list is empty or holds a negative error
   */
  public ForecastDays withErrorsByLead(List<Double> celsius) {
    if (celsius.isEmpty() || celsius.stream().anyMatch(error -> !(error >= 0))) {
      throw InputProblem.of("errors of a forecast of " + celsius + " °C")
          .expected("at least one standard error, each 0 °C or more")
          .because("a day's error is looked up by its lead")
          .mend("give for example List.of(1.0, 1.3, 1.7, 2.2)");
    }
    return new ForecastDays(days, issued, celsius);
  }

  /**
   * The known days continued by the forecast. Known days stay as they are. Forecast days fill the
   * days from the day of issue on that are not known.
   *
   * @param known days that are known, missing ones among them
   * @return known days, then forecast days of origin {@link DayOrigin#FORECAST}; days between the
   *     two that neither knows are missing
   * @throws InputProblem when one is of air and the other of soil
   */
  public DailyTemperatures appendedTo(DailyTemperatures known) {
    days.medium().require(known.medium().kind(), "the run to be continued");
    var last = known.lastDay().isAfter(days.lastDay()) ? known.lastDay() : days.lastDay();
    var joined = DailyTemperatures.builder(known.firstDay(), last);
    known.copyInto(joined, known.firstDay());
    for (int i = 0; i < days.size(); i++) {
      var day = days.day(i);
      boolean wanted =
          days.originAt(i) != DayOrigin.MISSING
              && !day.isBefore(issued)
              && !day.isBefore(known.firstDay())
              && replaceable(known.origin(day));
      if (wanted) {
        double error = error(day);
        joined.put(
            day, days.minCelsius(day), days.maxCelsius(day), error, error, DayOrigin.FORECAST);
      }
    }
    return joined.build(known.place(), known.medium());
  }

  private static boolean replaceable(DayOrigin origin) {
    return switch (origin) {
      case MISSING, FORECAST, PAST_YEAR, CLIMATE_NORMAL -> true;
      case OBSERVED, PARTLY_FILLED, INTERPOLATED, NEIGHBOUR, MODELLED -> false;
    };
  }

  private double error(LocalDate day) {
    if (errorsByLead.isEmpty()) {
      return 0;
    }
    int lead = Math.toIntExact(ChronoUnit.DAYS.between(issued, day));
    return errorsByLead.get(Math.min(lead, errorsByLead.size() - 1));
  }

  /**
   * What was assumed of the forecast.
   *
   * @return one entry with its days, and one with its errors
   */
  public ReadReport report() {
    var collector = new ReadReport.Collector(days.place() + ", forecast of " + issued);
    var first = days.firstDay().isBefore(issued) ? issued : days.firstDay();
    collector.add(
        Deed.NOTED,
        SourceLocation.NONE,
        "forecast days " + new DayRuns.Run(first, days.lastDay()).words());
    collector.add(
        Deed.ASSUMED,
        SourceLocation.NONE,
        errorsByLead.isEmpty()
            ? "forecast days count as exact, since no error of them was stated"
            : "standard errors of "
                + Numbers.fixed(errorsByLead.get(0), 1)
                + " °C on the day of issue to "
                + Numbers.fixed(errorsByLead.get(errorsByLead.size() - 1), 1)
                + " °C "
                + (errorsByLead.size() - 1)
                + " days ahead and later, as stated");
    return collector.report();
  }

  @Override
  public String toString() {
    return "forecast of " + issued + " for " + days;
  }
}
