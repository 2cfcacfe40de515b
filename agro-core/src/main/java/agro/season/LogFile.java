package agro.season;

import agro.report.InputProblem;
import agro.report.Progress;
import agro.weather.Medium;
import agro.weather.log.LogFormat;
import agro.weather.log.TemperatureLog;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * A temperature log as a line of logs.csv describes it.
 *
 * @param path where it lies
 * @param name the name that logs.csv gives it, which is what messages show
 * @param format how it is written
 * @param place where it was recorded
 * @param medium what was measured there
 * @param madeOn for days foreseen, the day on which they were foretold; empty for measured ones
 * @param errorsByLead standard errors of days foreseen in °C, of the day they were foretold and so
 *     on; empty when they count as exact
 */
record LogFile(
    Path path,
    String name,
    LogFormat format,
    String place,
    Medium medium,
    Optional<LocalDate> madeOn,
    List<Double> errorsByLead) {

  /** Reads the lines of known days only; nothing when there is none. */
  Optional<MeasuredLog> read(Predicate<LocalDate> known, Progress progress) {
    var span = new MeasuredLog.Span();
    try {
      var log =
          TemperatureLog.readKnown(path, name, format, place, medium, span.noting(known), progress);
      return Optional.of(new MeasuredLog(this, log, span.first(), span.last()));
    } catch (InputProblem problem) {
      if (span.hidAll()) {
        return Optional.empty();
      }
      throw problem;
    }
  }
}
