package agro.weather;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/** Days grouped into unbroken runs, so that a report names a gap once and not day by day. */
final class DayRuns {

  /** An unbroken run of days, both ends included. */
  record Run(LocalDate first, LocalDate last) {
    long days() {
      return last.toEpochDay() - first.toEpochDay() + 1;
    }

    /** For example {@code "2001-05-03"} or {@code "2001-05-03 to 2001-05-06 (4 days)"}. */
    String words() {
      return first.equals(last)
          ? first.toString()
          : first + " to " + last + " (" + days() + " days)";
    }
  }

  private DayRuns() {}

  /** Groups days that are in ascending order. */
  static List<Run> of(List<LocalDate> ascendingDays) {
    var runs = new ArrayList<Run>();
    for (var day : ascendingDays) {
      var last = runs.isEmpty() ? null : runs.get(runs.size() - 1);
      if (last != null && last.last().plusDays(1).equals(day)) {
        runs.set(runs.size() - 1, new Run(last.first(), day));
      } else {
        runs.add(new Run(day, day));
      }
    }
    return runs;
  }
}
