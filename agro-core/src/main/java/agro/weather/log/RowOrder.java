package agro.weather.log;

import agro.report.InputProblem;
import agro.report.ReadReport;
import agro.report.ReadReport.Deed;
import java.util.Arrays;

/**
 * Puts rows into the order of time. Single rows and blocks out of place are sorted in where they
 * meet their neighbours at about the usual step. A row that is out of order and lands far from all
 * others may have a wrong date, and is refused.
 */
final class RowOrder {

  private static final int USUAL_STEPS = 12;

  private RowOrder() {}

  /**
   * Places in ascending order of the times, equal times in the order of the file.
   *
   * @param times the time of each place
   * @param rows the row of the table at each place
   */
  static int[] of(long[] times, int[] rows, LogTimes written, ReadReport.Collector report) {
    var result = new int[times.length];
    boolean ascending = true;
    for (int i = 0; i < result.length; i++) {
      result[i] = i;
      ascending &= i == 0 || times[i] >= times[i - 1];
    }
    if (ascending) {
      return result;
    }
    var order = new Integer[times.length];
    Arrays.setAll(order, i -> i);
    sort(order, times, rows, written, report);
    Arrays.setAll(result, i -> order[i]);
    return result;
  }

  private static void sort(
      Integer[] order, long[] times, int[] rows, LogTimes written, ReadReport.Collector report) {
    var moved = new boolean[times.length];
    for (int i = 1; i < order.length; i++) {
      if (times[order[i]] < times[order[i - 1]]) {
        moved[order[i]] = true;
        moved[order[i - 1]] = true;
      }
    }
    Arrays.sort(order, (one, other) -> Long.compare(times[one], times[other]));
    long usual = Math.max(1, usualStep(order, times));
    var sorted = new Tally(Deed.REPAIRED, "a line out of order, sorted in by its time");
    for (int i = 0; i < order.length; i++) {
      int row = order[i];
      if (!moved[row]) {
        continue;
      }
      long before = i > 0 ? times[row] - times[order[i - 1]] : Long.MAX_VALUE;
      long after = i + 1 < order.length ? times[order[i + 1]] - times[row] : Long.MAX_VALUE;
      if (Math.min(before, after) > USUAL_STEPS * usual) {
        throw farOff(written, rows[row]);
      }
    }
    for (int row = 0; row < moved.length; row++) {
      if (moved[row]) {
        sorted.add(written.place(rows[row]));
      }
    }
    sorted.tell(report);
  }

  private static InputProblem farOff(LogTimes rows, int row) {
    return InputProblem.at(
            rows.place(row),
            "the time \"" + rows.text(row) + "\" is out of order and far from all others")
        .expected("times in ascending order, or lines that fit in where they belong")
        .because("the date may be wrong, and then the temperature would stand on another day")
        .mend("correct the date, or take the line out");
  }

  private static long usualStep(Integer[] order, long[] times) {
    var steps = new long[Math.max(1, order.length - 1)];
    for (int i = 1; i < order.length; i++) {
      steps[i - 1] = times[order[i]] - times[order[i - 1]];
    }
    Arrays.sort(steps);
    return steps[steps.length / 2];
  }

  /** Two rows at one time with different values. */
  static InputProblem contradiction(LogTimes rows, int row, int other, boolean zoneDeclared) {
    return InputProblem.at(
            rows.place(row),
            "the time \""
                + rows.text(row)
                + "\" stands also on line "
                + rows.place(other).line()
                + ", with another value")
        .expected("each time once, or twice with the same value")
        .because("two temperatures at one moment cannot both hold")
        .mend(
            rows.isTwelveHourClock()
                ? "export the log with AM and PM or with hours from 0 to 23: its hours run from 1 to"
                    + " 12 twice a day"
                : zoneDeclared
                    ? "take one of the two lines out"
                    : "take one of the two lines out, or declare the time zone with withZone if the"
                        + " clock was set back here");
  }
}
