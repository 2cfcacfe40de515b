package agro.course.topic.development;

import agro.course.AnswerTolerance;
import agro.course.Givens;
import agro.course.NumberAnswer;
import agro.stats.LinearFit;
import agro.working.Block;
import agro.working.Cell;
import agro.working.ResultTable;
import agro.working.ResultTable.Column;
import agro.working.Working;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Mean durations at constant temperatures as an exercise prints them.
 *
 * @param at temperatures in the unit of the class
 * @param days durations in days
 */
record RearingTable(List<Double> at, List<Double> days) {

  private static final int SLOPE_DECIMALS = 6;

  RearingTable {
    at = List.copyOf(at);
    days = List.copyOf(days);
  }

  /** The table without one row. */
  RearingTable without(int row) {
    var fewer = new ArrayList<>(at);
    var fewerDays = new ArrayList<>(days);
    fewer.remove(row);
    fewerDays.remove(row);
    return new RearingTable(fewer, fewerDays);
  }

  /** Least squares of rates on temperatures. */
  LinearFit rates() {
    return LinearFit.of(array(at), array(days.stream().map(one -> 1 / one).toList()));
  }

  /** Least squares of durations on temperatures, which nobody should draw. */
  LinearFit durations() {
    return LinearFit.of(array(at), array(days));
  }

  double meanDays() {
    return days.stream().mapToDouble(Double::doubleValue).average().orElseThrow();
  }

  private static double[] array(List<Double> numbers) {
    return numbers.stream().mapToDouble(Double::doubleValue).toArray();
  }

  /** A slope, of which four digits are asked for. */
  static NumberAnswer slope(double slope) {
    return new NumberAnswer(slope, SLOPE_DECIMALS, AnswerTolerance.usual(slope), List.of());
  }

  Givens in(Givens givens) {
    return givens.withNumbers("temperatures", at).withNumbers("days", days);
  }

  Block exhibit(DevelopmentScale scale) {
    var words = scale.words();
    List<List<Cell>> rows =
        IntStream.range(0, at.size())
            .mapToObj(
                i ->
                    List.of(Cell.text(words.exact(at.get(i))), Cell.text(words.exact(days.get(i)))))
            .toList();
    return new Block.TableBlock(
        ResultTable.of(
            words.say("table.durations"),
            List.of(
                Column.of(words.say("table.temperature"), scale.degree()),
                Column.of(words.say("table.duration"), words.say("days.short"))),
            rows));
  }

  /** The steps to the slope. */
  Working slopeSteps(DevelopmentScale scale, Working working) {
    var fit = rates();
    var words = scale.words();
    var rates = days.stream().map(one -> words.number(1 / one)).toList();
    var first = scale.step(working, "rates", "", String.join("; ", rates));
    var means =
        scale.step(
            first, "means", "", words.number(fit.meanX()) + "; " + words.number(fit.meanY()));
    return scale.step(
        means,
        "slope",
        words.number(fit.slope() * fit.squaresX()) + " / " + words.number(fit.squaresX()),
        words.number(fit.slope(), SLOPE_DECIMALS));
  }
}
