package agro.generation;

import agro.units.Numbers;
import agro.working.Cell;
import agro.working.Presentable;
import agro.working.Presentation;
import agro.working.ResultTable;
import agro.working.ResultTable.Column;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * How interval and dates change when the lower threshold is a little wrong. The interval goes down
 * as the threshold goes up, so that both together tell nearly the same dates: an interval holds for
 * its threshold only, the dates hold for both.
 *
 * @param outcomes what each threshold gives, from the lowest up
 * @param used which of them is the threshold of the fit
 */
public record OtherThresholds(List<ThresholdOutcome> outcomes, int used) implements Presentable {

  /** Steps from the threshold of the fit at which it is looked at, in °C. */
  static final List<Double> STEPS_C = List.of(-2.0, 0.0, 2.0);

  /** Copies the list. */
  public OtherThresholds {
    outcomes = List.copyOf(outcomes);
  }

  /**
   * What the threshold of the fit gives.
   *
   * @return the outcome that the others are compared with
   */
  public ThresholdOutcome atUsed() {
    return outcomes.get(used);
  }

  /**
   * Number of flights in a season.
   *
   * @return 1 or more
   */
  public int flights() {
    return atUsed().days().stream().mapToInt(FlightDay::flight).max().orElse(1);
  }

  /**
   * Interval and dates by threshold.
   *
   * @return a line a threshold
   */
  public ResultTable table() {
    return outcomeTable("Other lower thresholds", outcomes, atUsed())
        .withNote(
            "Shift: mean over the seasons of the middle of a flight, later when positive, and the"
                + " largest distance. Each date is that of the season's own start and the interval of"
                + " all seasons. An interval holds for its threshold only.");
  }

  /** Lines of interval and dates beside those of one threshold. */
  static ResultTable outcomeTable(
      String title, List<ThresholdOutcome> outcomes, ThresholdOutcome base) {
    var flights = base.days().stream().mapToInt(FlightDay::flight).max().orElse(1);
    var columns =
        new ArrayList<>(
            List.of(
                Column.of("Lower threshold", "°C"),
                Column.of("Interval", "°C·d"),
                Column.of("± (90 %)", "°C·d"),
                Column.of("Log likelihood above")));
    for (var g = 1; g <= flights; g++) {
      columns.add(Column.of("Shift of flight " + g, "days"));
      columns.add(Column.of("Largest", "days"));
    }
    var rows = new ArrayList<List<Cell>>();
    for (var outcome : outcomes) {
      var row = new ArrayList<Cell>();
      row.add(Cell.number(outcome.lower().celsius(), 1));
      row.add(Cell.number(outcome.workingInterval().degreeDaysC(), 0));
      row.add(
          outcome
              .interval()
              .filter(k -> k.seasons() > 1)
              .map(k -> Cell.number(k.halfWidthOfMeanC(0.9), 0))
              .orElse(Cell.text("one season")));
      row.add(Cell.number(outcome.logLikelihood() - base.logLikelihood(), 1));
      for (var g = 1; g <= flights; g++) {
        row.add(cell(outcome.meanShiftDays(base, g)));
        row.add(cell(outcome.largestShiftDays(base, g)));
      }
      rows.add(row);
    }
    return ResultTable.of(title, columns, rows);
  }

  private static Cell cell(OptionalDouble days) {
    return days.isPresent() ? Cell.number(days.getAsDouble(), 1) : Cell.text("not reached");
  }

  /**
   * The finding in a sentence.
   *
   * @return how far interval and last flight move
   */
  public String words() {
    var low = outcomes.get(0);
    var high = outcomes.get(outcomes.size() - 1);
    var last = flights();
    return "with the lower threshold at "
        + Numbers.fixed(low.lower().celsius(), 1)
        + " to "
        + Numbers.fixed(high.lower().celsius(), 1)
        + " °C the interval goes from "
        + Numbers.fixed(low.workingInterval().degreeDaysC(), 0)
        + " to "
        + Numbers.fixed(high.workingInterval().degreeDaysC(), 0)
        + " °C·d, while flight "
        + last
        + " moves by "
        + Numbers.fixed(
            Math.max(
                low.largestShiftDays(atUsed(), last).orElse(0),
                high.largestShiftDays(atUsed(), last).orElse(0)),
            1)
        + " days at most";
  }

  @Override
  public Presentation presentation() {
    return Presentation.titled("If the lower threshold were another")
        .fact("In short", words())
        .table(table())
        .build();
  }

  @Override
  public String toString() {
    return presentation().toText();
  }
}
