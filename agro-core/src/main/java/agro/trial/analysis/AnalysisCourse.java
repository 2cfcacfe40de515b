package agro.trial.analysis;

import agro.working.Presentable;
import agro.working.Presentation;
import agro.working.ResultTable;
import java.util.List;

/**
 * Analyses of one variable on several days, each for itself. The days are looks at the same plots:
 * they are no replicates, and their tests are not independent.
 *
 * @param days one result for each day, in order
 */
public record AnalysisCourse(List<AnalysedTrial> days) implements Presentable {

  /** Copies the list and refuses an empty one. */
  public AnalysisCourse {
    days = List.copyOf(days);
    if (days.isEmpty()) {
      throw new IllegalArgumentException("a course needs at least one day");
    }
  }

  /**
   * The means with their letters over the days.
   *
   * @return a line for each treatment and a column for each day, the tests of the days below
   */
  public ResultTable table() {
    return CourseTables.means(this);
  }

  /**
   * The tests of the days.
   *
   * @return a line for each day
   */
  public ResultTable testTable() {
    return CourseTables.tests(this);
  }

  @Override
  public Presentation presentation() {
    return CourseTables.page(this);
  }

  @Override
  public String toString() {
    return String.join("\n", days.stream().map(AnalysedTrial::toString).toList());
  }
}
