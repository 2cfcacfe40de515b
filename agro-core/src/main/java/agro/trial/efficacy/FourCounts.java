package agro.trial.efficacy;

import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * Totals and densities of a treatment and its control, in one block or over several.
 *
 * @param treated treated plots
 * @param control control plots
 * @param before whether the counts before enter
 */
record FourCounts(List<PlotCounts> treated, List<PlotCounts> control, boolean before) {

  FourCounts {
    treated = List.copyOf(treated);
    control = List.copyOf(control);
  }

  double treatedBefore() {
    return before ? density(treated, FourCounts::beforeOf, PlotCounts::unitsBefore) : 1;
  }

  double treatedAfter() {
    return density(treated, PlotCounts::after, PlotCounts::unitsAfter);
  }

  double controlBefore() {
    return before ? density(control, FourCounts::beforeOf, PlotCounts::unitsBefore) : 1;
  }

  double controlAfter() {
    return density(control, PlotCounts::after, PlotCounts::unitsAfter);
  }

  private static double density(
      List<PlotCounts> plots, ToDoubleFunction<PlotCounts> count, ToDoubleFunction<PlotCounts> of) {
    return sum(plots, count) / sum(plots, of);
  }

  static double beforeOf(PlotCounts plot) {
    return plot.before().orElseThrow();
  }

  /** A sum that does not depend on the order of the plots. */
  static double sum(List<PlotCounts> plots, ToDoubleFunction<PlotCounts> number) {
    return plots.stream().mapToDouble(number).sorted().sum();
  }

  LiveCounts liveCounts() {
    return before
        ? LiveCounts.of(treatedBefore(), treatedAfter(), controlBefore(), controlAfter())
        : LiveCounts.after(treatedAfter(), controlAfter());
  }
}
