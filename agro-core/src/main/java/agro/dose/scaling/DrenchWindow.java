package agro.dose.scaling;

import agro.report.InputProblem;
import agro.source.Reference;
import java.time.LocalDate;
import java.util.Objects;

/**
 * When a drench is given, in days after planting.
 *
 * @param firstDay first day after planting, 0 or more
 * @param lastDay last day after planting, not before the first
 * @param source where the days come from
 */
public record DrenchWindow(int firstDay, int lastDay, Reference source) {

  /** 55 to 60 days after planting; common practice without a source. */
  public static final DrenchWindow COMMON_PRACTICE =
      new DrenchWindow(55, 60, ScalingSources.DRENCH_TIME);

  /** Refuses days in the wrong order. */
  public DrenchWindow {
    Objects.requireNonNull(source, "source");
    if (firstDay < 0 || lastDay < firstDay) {
      throw InputProblem.of("a drench from day " + firstDay + " to day " + lastDay)
          .expected("days after planting in order, the first 0 or more")
          .because("a window that ends before it begins holds no day")
          .mend("count both days from the day of planting");
    }
  }

  /**
   * The first day of the window.
   *
   * @param planted day of planting
   * @return the day
   */
  public LocalDate opens(LocalDate planted) {
    return planted.plusDays(firstDay);
  }

  /**
   * The last day of the window.
   *
   * @param planted day of planting
   * @return the day
   */
  public LocalDate closes(LocalDate planted) {
    return planted.plusDays(lastDay);
  }

  /**
   * Whether a day lies in the window, ends included.
   *
   * @param planted day of planting
   * @param day the day
   * @return true from the first to the last day
   */
  public boolean holds(LocalDate planted, LocalDate day) {
    return !day.isBefore(opens(planted)) && !day.isAfter(closes(planted));
  }
}
