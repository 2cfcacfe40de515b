package agro.weather.log;

import agro.report.ReadReport;
import agro.report.ReadReport.Deed;
import agro.report.SourceLocation;
import agro.weather.DayRuns;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** Tells which days a log lacks. */
final class MissingDays {

  private MissingDays() {}

  /** One entry for each run of days without any value, with the years that are wholly missing. */
  static void tell(
      List<LocalDate> ascendingDays, ReadReport.Collector collector, SourceLocation file) {
    for (var run : DayRuns.of(ascendingDays)) {
      collector.add(
          Deed.NOTED, file, run.words() + ": not in the log, left as missing" + wholeYears(run));
    }
  }

  private static String wholeYears(DayRuns.Run run) {
    var years =
        IntStream.rangeClosed(run.first().getYear(), run.last().getYear())
            .filter(year -> !run.first().isAfter(LocalDate.of(year, 1, 1)))
            .filter(year -> !run.last().isBefore(LocalDate.of(year, 12, 31)))
            .mapToObj(Integer::toString)
            .collect(Collectors.joining(", "));
    return years.isEmpty() ? "" : "; no day at all of " + years;
  }
}
