package agro.weather.log;

import agro.report.InputProblem;
import agro.report.ReadReport;
import agro.report.ReadReport.Deed;
import agro.report.SourceLocation;
import agro.weather.DailyTemperatures;
import agro.weather.TemperatureReadings;
import agro.working.Presentable;
import agro.working.Presentation;
import java.time.Duration;
import java.util.Objects;

/**
 * Readings put together to days of 24 hours, from midnight to midnight at the offset of the
 * readings. A day that does not satisfy the {@link CompletenessRule} is missing, and the report
 * says which and why.
 *
 * @param daily daily extremes in °C
 * @param rule when a day counts
 * @param report the step and the rule that were used, and the days left out
 */
public record AssembledDays(DailyTemperatures daily, CompletenessRule rule, ReadReport report)
    implements Presentable {

  /** Refuses nulls. */
  public AssembledDays {
    Objects.requireNonNull(daily, "daily");
    Objects.requireNonNull(rule, "rule");
    Objects.requireNonNull(report, "report");
  }

  /**
   * Days of readings whose step is the median distance of neighbours.
   *
   * @param readings temperatures with their times, at least two
   * @param rule when a day counts
   * @return the days and the report
   * @throws InputProblem when there are fewer than two readings, or no day is complete
   */
  public static AssembledDays of(TemperatureReadings readings, CompletenessRule rule) {
    var step = Duration.ofSeconds(readings.medianStepSeconds());
    return of(readings, step, rule, readings.place());
  }

  /**
   * Days of readings at a stated step.
   *
   * @param readings temperatures with their times
   * @param step time between readings, above zero
   * @param rule when a day counts
   * @return the days and the report
   * @throws InputProblem when the step is not above zero, or no day is complete
   */
  public static AssembledDays of(
      TemperatureReadings readings, Duration step, CompletenessRule rule) {
    return of(readings, step, rule, readings.place());
  }

  static AssembledDays of(
      TemperatureReadings readings, Duration step, CompletenessRule rule, String name) {
    var file = SourceLocation.file(name);
    if (step.isZero() || step.isNegative()) {
      throw InputProblem.at(file, readings.size() + " readings with a step of " + step)
          .expected("at least two readings, or a step above zero")
          .because("the step tells how many readings a complete day has")
          .mend("give more readings, or declare for example Duration.ofHours(1)");
    }
    var collector = new ReadReport.Collector(name);
    var series = ReadingSeries.of(readings, name);
    var days =
        new DayAssembly(series, readings.dayOffset(), step, rule)
            .daily(readings.place(), readings.medium(), collector, file);
    collector.add(
        Deed.NOTED,
        file,
        "a day counts with " + rule.words() + " (one every " + Durations.words(step) + ")");
    return new AssembledDays(days, rule, collector.report());
  }

  @Override
  public Presentation presentation() {
    return Presentation.titled("Days of " + daily.place())
        .fact("medium", daily.medium().words())
        .fact("days", daily.firstDay() + " to " + daily.lastDay())
        .fact("days missing", daily.missingDays().size() + " of " + daily.size())
        .fact("a day counts with", rule.words())
        .part(Presentation.of(report))
        .build();
  }
}
