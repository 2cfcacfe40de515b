package agro.dose.tank;

import agro.units.Numbers;
import agro.units.QuantityStyle;
import agro.units.Volume;
import agro.working.Caution;
import agro.working.Cell;
import agro.working.Presentable;
import agro.working.Presentation;
import agro.working.ResultTable;
import agro.working.ResultTable.Column;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.function.DoubleFunction;

/**
 * The products of a mix in the order in which they go into the tank.
 *
 * @param order the order that was used
 * @param steps the steps that this mix needs, with the products of each
 * @param withoutPlace products that the order does not place, or whose formulation is not stated
 * @param disagreements where another published order would have it the other way round
 */
public record MixingSequence(
    MixingOrder order, List<Placed> steps, List<String> withoutPlace, List<String> disagreements)
    implements Presentable {

  /** The lines that stand above every order. */
  private static final List<String> REMINDERS =
      List.of(
          "The labels come first: where a label of a partner gives an order or forbids a mix, it"
              + " overrides the order printed here.",
          "Make a jar test with the same water and the same shares before the tank is filled, and"
              + " look for flakes, gel, oil and heat.",
          "Mix no more than a few partners; every further one is a mix that nobody has tested."
              + " Wait until each is dispersed before the next goes in.");

  /**
   * A step with what goes in.
   *
   * @param step step of the order
   * @param products names of the products, none for water and agitation
   */
  public record Placed(MixingStep step, List<String> products) {
    /** Copies the list. */
    public Placed {
      Objects.requireNonNull(step, "step");
      products = List.copyOf(products);
    }
  }

  /** Copies the lists. */
  public MixingSequence {
    Objects.requireNonNull(order, "order");
    steps = List.copyOf(steps);
    withoutPlace = List.copyOf(withoutPlace);
    disagreements = List.copyOf(disagreements);
  }

  /**
   * What always has to be said beside an order of mixing: label first, jar test, few partners.
   *
   * @return three sentences
   */
  public static List<String> reminders() {
    return REMINDERS;
  }

  /**
   * The steps as a table for any load.
   *
   * @return one row a step, water as a share of the load, with the order and its source below
   */
  public ResultTable table() {
    return table(share -> Numbers.significant(100 * share, 3) + " % of the load");
  }

  /**
   * The steps as a table for one load.
   *
   * @param load finished spray of the load
   * @param style units of the reader
   * @return one row a step, water as a volume, with the order and its source below
   */
  public ResultTable table(Volume load, QuantityStyle style) {
    return table(share -> style.print(load.times(share)));
  }

  private ResultTable table(DoubleFunction<String> level) {
    var rows = new ArrayList<List<Cell>>();
    for (int i = 0; i < steps.size(); i++) {
      var placed = steps.get(i);
      rows.add(
          List.of(
              Cell.number(i + 1.0, 0),
              Cell.text(placed.step().words()),
              Cell.text(placed.step().fillTo().map(share -> fillTo(share, level)).orElse("")),
              Cell.text(String.join(", ", placed.products()))));
    }
    var columns =
        List.of(
            Column.of("Step"),
            Column.of("What"),
            Column.of("Tank filled to"),
            Column.of("Products of this mix"));
    var notes = new ArrayList<String>();
    notes.add("Order used: " + order.name() + "; source: " + order.source().citation() + ".");
    for (var product : withoutPlace) {
      notes.add(product + " has no place in this order; its label decides when it goes in.");
    }
    notes.addAll(disagreements);
    return new ResultTable("Order of mixing", columns, rows, notes);
  }

  private static String fillTo(MixingStep.WaterShare share, DoubleFunction<String> level) {
    var high = level.apply(share.high());
    return share.low() == share.high() ? high : level.apply(share.low()) + " to " + high;
  }

  @Override
  public Presentation presentation() {
    var page = Presentation.titled("Order of mixing");
    REMINDERS.forEach(page::paragraph);
    return page.table(table()).cautions(Caution.all()).sources(List.of(order.source())).build();
  }
}
