package agro.trial.load;

import agro.report.InputProblem;
import agro.units.Numbers;
import agro.working.Caution;
import agro.working.Cell;
import agro.working.Presentable;
import agro.working.Presentation;
import agro.working.ResultTable;
import agro.working.ResultTable.Column;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * What the treatments of a trial were worth, money for a hectare.
 *
 * @param settings prices, costs and control
 * @param plots value of each plot, a response for the analysis
 * @param treatments value and gain of each treatment
 */
public record TrialValue(
    GradedYield settings, List<PlotGross> plots, List<TreatmentValue> treatments)
    implements Presentable {

  /** Copies the lists. */
  public TrialValue {
    Objects.requireNonNull(settings, "settings");
    plots = List.copyOf(plots);
    treatments = List.copyOf(treatments);
  }

  /**
   * One treatment.
   *
   * @param name its name
   * @return its value
   * @throws InputProblem when there is no such treatment
   */
  public TreatmentValue treatment(String name) {
    return treatments.stream()
        .filter(one -> one.treatment().equals(name))
        .findFirst()
        .orElseThrow(
            () ->
                InputProblem.of("the treatment \"" + name + '"')
                    .expected(
                        "one of " + treatments.stream().map(TreatmentValue::treatment).toList())
                    .because("no other was harvested")
                    .mend("write the name as it stands in the data"));
  }

  /**
   * Values and gains, one line for each treatment.
   *
   * @return the table
   */
  public ResultTable table() {
    var money = settings.currency() + "/ha";
    var rows = new ArrayList<List<Cell>>();
    for (var one : treatments) {
      boolean control = one.treatment().equals(settings.control());
      rows.add(
          List.of(
              Cell.text(one.treatment()),
              Cell.number(one.gross(), 0),
              Cell.number(one.cost(), 0),
              Cell.number(one.net(), 0),
              control ? Cell.notKnown() : Cell.number(one.netGain(), 0),
              one.netLimits().<Cell>map(l -> Cell.number(l.low(), 0)).orElse(Cell.notKnown()),
              one.netLimits().<Cell>map(l -> Cell.number(l.high(), 0)).orElse(Cell.notKnown()),
              control ? Cell.notKnown() : Cell.number(one.breakEvenCost(), 0),
              one.breakEvenPrice().isPresent()
                  ? Cell.number(100 * one.breakEvenPrice().getAsDouble(), 0)
                  : Cell.notKnown()));
    }
    var table =
        ResultTable.of(
            "Value of graded yields",
            List.of(
                Column.of("Treatment"),
                Column.of("Value", money),
                Column.of("Cost", money),
                Column.of("After cost", money),
                Column.of("Net gain", money),
                Column.of("Lower limit", money),
                Column.of("Upper limit", money),
                Column.of("Pays up to a cost of", money),
                Column.of("Pays down to", "% of the prices")),
            rows);
    table =
        table.withNote(
            "Net gain: value beyond that of the control "
                + settings.control()
                + " less the extra cost; limits of "
                + Numbers.plain(100 * settings.level())
                + " %.");
    for (var one : treatments) {
      if (!one.treatment().equals(settings.control())) {
        table = table.withNote(one.treatment() + ": " + one.note());
      }
    }
    return table;
  }

  @Override
  public Presentation presentation() {
    var builder = Presentation.titled("Value of graded yields").fact("Control", settings.control());
    settings.prices().forEach(price -> builder.fact("Price", price.toString()));
    builder.table(table());
    for (var one : treatments) {
      one.netLimits()
          .ifPresent(
              limits -> {
                if (limits.low() <= 0 && limits.high() >= 0) {
                  builder.paragraph(
                      one.treatment()
                          + ": the limits hold zero; this trial does not show that it pays or"
                          + " loses.");
                }
              });
    }
    return builder.cautions(List.of(Caution.LABEL_FIRST, Caution.REGISTERED_USE)).build();
  }
}
