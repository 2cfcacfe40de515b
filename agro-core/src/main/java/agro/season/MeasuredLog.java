package agro.season;

import agro.report.Progress;
import agro.weather.log.TemperatureLog;
import java.time.LocalDate;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * A log as it was read.
 *
 * @param file where it lies and how it is written
 * @param log its days
 * @param firstLine day of its first line that was read, which may be no complete day
 * @param lastLine day of its last line that was read
 */
record MeasuredLog(LogFile file, TemperatureLog log, LocalDate firstLine, LocalDate lastLine) {

  /**
   * The log as it stood when only some of its days were known. Where lines fall away it is read
   * anew, for what is computed from a whole log, such as the step between readings, may not rest on
   * them. Nothing when no complete day is left.
   */
  Optional<MeasuredLog> known(KnownDays days) {
    if (days.knowsAll(firstLine, lastLine)) {
      return Optional.of(this);
    }
    var kept = log.daily();
    var any = kept.firstDay().datesUntil(kept.lastDay().plusDays(1)).anyMatch(days::knows);
    return any ? file.read(days::knows, Progress.silent()) : Optional.empty();
  }

  /** Notes the first and the last day of the lines that are read. */
  static final class Span {
    private LocalDate first;
    private LocalDate last;
    private boolean hidden;

    Predicate<LocalDate> noting(Predicate<LocalDate> known) {
      return day -> {
        var isKnown = known.test(day);
        if (isKnown) {
          first = first == null || day.isBefore(first) ? day : first;
          last = last == null || day.isAfter(last) ? day : last;
        }
        hidden |= !isKnown;
        return isKnown;
      };
    }

    /** Whether there were lines, and all of unknown days. */
    boolean hidAll() {
      return hidden && first == null;
    }

    LocalDate first() {
      return Objects.requireNonNull(first, "a log that was read has a line");
    }

    LocalDate last() {
      return Objects.requireNonNull(last, "a log that was read has a line");
    }
  }
}
