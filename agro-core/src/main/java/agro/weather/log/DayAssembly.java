package agro.weather.log;

import agro.report.InputProblem;
import agro.report.ReadReport;
import agro.report.ReadReport.Deed;
import agro.report.SourceLocation;
import agro.weather.DailyExtremes;
import agro.weather.DailyTemperatures;
import agro.weather.DayOrigin;
import agro.weather.DayRuns;
import agro.weather.Medium;
import java.time.Duration;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;

/** Puts readings together to days of 24 hours at a fixed offset. */
final class DayAssembly {

  private static final long DAY_SECONDS = 86_400;

  private final ReadingSeries readings;
  private final long offsetSeconds;
  private final Duration step;
  private final CompletenessRule rule;

  DayAssembly(ReadingSeries readings, ZoneOffset offset, Duration step, CompletenessRule rule) {
    this.readings = readings;
    this.offsetSeconds = offset.getTotalSeconds();
    this.step = step;
    this.rule = rule;
  }

  /** The complete days; incomplete and absent ones between them are missing, and all are told. */
  DailyTemperatures daily(
      String place, Medium medium, ReadReport.Collector collector, SourceLocation file) {
    var complete = new ArrayList<DailyExtremes>();
    var incomplete = new ArrayList<LocalDate>();
    var absent = new ArrayList<LocalDate>();
    int from = 0;
    while (from < readings.size()) {
      long day = day(from);
      int to = from;
      while (to < readings.size() && day(to) == day) {
        to++;
      }
      var date = LocalDate.ofEpochDay(day);
      if (isComplete(from, to, day)) {
        complete.add(extremes(date, from, to));
      } else {
        incomplete.add(date);
      }
      if (to < readings.size()) {
        date.plusDays(1).datesUntil(LocalDate.ofEpochDay(day(to))).forEach(absent::add);
      }
      from = to;
    }
    tellIncomplete(incomplete, collector, file);
    MissingDays.tell(absent, collector, file);
    requireAny(complete, incomplete, file);
    return DailyTemperatures.of(place, medium, complete, DayOrigin.OBSERVED);
  }

  private long day(int index) {
    return Math.floorDiv(readings.second(index) + offsetSeconds, DAY_SECONDS);
  }

  private boolean isComplete(int from, int to, long day) {
    double expected = (double) DAY_SECONDS / step.toSeconds();
    if (to - from < rule.leastShareOfReadings() * expected) {
      return false;
    }
    long start = day * DAY_SECONDS - offsetSeconds;
    long longest = start + DAY_SECONDS - readings.second(to - 1);
    long before = start;
    for (int i = from; i < to; i++) {
      longest = Math.max(longest, readings.second(i) - before);
      before = readings.second(i);
    }
    return longest <= rule.longestGap().toSeconds();
  }

  private DailyExtremes extremes(LocalDate date, int from, int to) {
    double min = readings.celsius(from);
    double max = min;
    for (int i = from + 1; i < to; i++) {
      min = Math.min(min, readings.celsius(i));
      max = Math.max(max, readings.celsius(i));
    }
    return new DailyExtremes(date, min, max);
  }

  private void tellIncomplete(
      List<LocalDate> days, ReadReport.Collector collector, SourceLocation file) {
    for (var run : DayRuns.of(days)) {
      collector.add(
          Deed.DROPPED,
          file,
          run.words() + ": left out, for a day needs " + rule.words() + " (" + stepWords() + ")");
    }
  }

  private String stepWords() {
    return "one every " + Durations.words(step);
  }

  private void requireAny(
      List<DailyExtremes> complete, List<LocalDate> incomplete, SourceLocation file) {
    if (complete.isEmpty()) {
      throw InputProblem.at(
              file, "none of " + incomplete.size() + " days is complete, with " + stepWords())
          .expected("days with " + rule.words())
          .because("the coldest or the warmest hour may be missing")
          .mend("declare the step or another completeness rule, or give a more complete log");
    }
  }
}
