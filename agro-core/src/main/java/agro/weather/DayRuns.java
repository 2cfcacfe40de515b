package agro.weather;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/** Days grouped into unbroken runs, so that a report names a gap once and not day by day. */
public final class DayRuns {

  /**
   * An unbroken run of days, both ends included.
   *
   * @param first first day
   * @param last last day, not before the first
   */
  public record Run(LocalDate first, LocalDate last) {
    /** Refuses nulls. */
    public Run {
      Objects.requireNonNull(first, "first");
      Objects.requireNonNull(last, "last");
    }

    /**
     * Number of days.
     *
     * @return 1 or more
     */
    public long days() {
      return last.toEpochDay() - first.toEpochDay() + 1;
    }

    /**
     * The run in words.
     *
     * @return for example {@code "2001-05-03"} or {@code "2001-05-03 to 2001-05-06 (4 days)"}
     */
    public String words() {
      return first.equals(last)
          ? first.toString()
          : first + " to " + last + " (" + days() + " days)";
    }
  }

  private DayRuns() {}

  /**
   * Groups days.
   *
   * @param ascendingDays days in ascending order
   * @return the runs in ascending order
   */
  public static List<Run> of(List<LocalDate> ascendingDays) {
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
