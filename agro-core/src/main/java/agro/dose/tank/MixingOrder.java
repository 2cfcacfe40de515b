package agro.dose.tank;

import agro.report.InputProblem;
import agro.source.Reference;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.OptionalInt;

/**
 * An order in which products go into a tank, with its source. The label of a product outranks every
 * such order.
 *
 * @param name name for print
 * @param steps the steps from first to last
 * @param source where the order comes from
 */
public record MixingOrder(String name, List<MixingStep> steps, Reference source) {

  /** Refuses an order without steps, and one that puts a class in twice. */
  public MixingOrder {
    Objects.requireNonNull(source, "source");
    steps = List.copyOf(steps);
    if (name.isBlank() || steps.isEmpty()) {
      throw InputProblem.of("an order of mixing with the name \"" + name + "\" and no steps")
          .expected("a name and at least one step")
          .because("the sheet names the order that was used")
          .mend("take a published order, or write down the order of the label");
    }
    var seen = new HashSet<MixClass>();
    for (var step : steps) {
      for (var each : step.classes()) {
        if (!seen.add(each)) {
          throw InputProblem.of("the order \"" + name + "\" puts " + each.words() + " in twice")
              .expected("each class of products in one step")
              .because("a product has one place in an order")
              .mend("take the class out of one of the two steps");
        }
      }
    }
  }

  /**
   * Where a class goes in.
   *
   * @param mixClass the class
   * @return index of the step, counted from 0; empty if the order does not name the class
   */
  public OptionalInt placeOf(MixClass mixClass) {
    for (int i = 0; i < steps.size(); i++) {
      if (steps.get(i).classes().contains(mixClass)) {
        return OptionalInt.of(i);
      }
    }
    return OptionalInt.empty();
  }
}
