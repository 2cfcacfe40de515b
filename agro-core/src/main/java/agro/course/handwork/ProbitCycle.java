package agro.course.handwork;

import agro.course.sheet.ProbitLine;
import java.util.ArrayList;
import java.util.List;

/**
 * One cycle: expected probits, weights, working probits, sums, and the line through them.
 *
 * @param number 1 for the first
 * @param from the line that gave the expected probits
 * @param rows one for each dose
 * @param sums the sums over the doses
 * @param to the new line
 */
public record ProbitCycle(
    int number, ProbitLine from, List<CycleRow> rows, RegressionSums sums, ProbitLine to) {

  /** Copies the rows. */
  public ProbitCycle {
    rows = List.copyOf(rows);
  }

  static ProbitCycle of(int number, ProbitLine from, HandProbit question, double natural) {
    var rows = new ArrayList<CycleRow>();
    var sums = RegressionSums.EMPTY;
    for (var group : question.groups()) {
      var row = CycleRow.of(group, from, natural, question.weights(), question.rounding());
      rows.add(row);
      sums = sums.with(row.weight(), group.logDose(), row.working());
    }
    return new ProbitCycle(number, from, rows, sums, sums.line(question.rounding()));
  }

  /**
   * By how much the cycle moved the line.
   *
   * @return greatest change of an expected probit among the doses
   */
  public double change() {
    return rows.stream()
        .mapToDouble(row -> row.group().logDose())
        .map(x -> Math.abs(to.at(x) - from.at(x)))
        .max()
        .orElse(0);
  }
}
