package agro.trial.efficacy;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;

/**
 * One treatment and the control, block by block, as far as blocks have both. Blocks stand in an
 * order made from their numbers, so that neither rows nor names change a result.
 *
 * @param treatment the treatment
 * @param blocks blocks with counts of both
 * @param names names of these blocks
 * @param notes what was left out
 */
record BlockRatios(
    String treatment, List<FourCounts> blocks, List<String> names, List<String> notes) {

  private record Named(String name, FourCounts counts) {}

  static BlockRatios of(EfficacyData data, EfficacyFormula formula, String treatment) {
    boolean before = formula.needsBefore() || data.isMortality();
    var notes = new ArrayList<String>();
    var treated = usable(data.of(treatment), before, notes);
    var control = usable(data.of(data.control()), before, notes);
    var kept = new ArrayList<Named>();
    for (var block : data.blocks()) {
      var here = in(block, treated);
      var there = in(block, control);
      if (!here.isEmpty() && !there.isEmpty()) {
        kept.add(new Named(block, new FourCounts(here, there, before)));
      } else if (here.isEmpty() != there.isEmpty()) {
        notes.add(
            "block "
                + block
                + " has no counts of "
                + (here.isEmpty() ? treatment : data.control())
                + " that can be used and is left out for "
                + treatment);
      }
    }
    kept.sort(
        Comparator.<Named>comparingDouble(one -> one.counts().controlAfter())
            .thenComparingDouble(one -> one.counts().treatedAfter())
            .thenComparingDouble(one -> one.counts().controlBefore())
            .thenComparingDouble(one -> one.counts().treatedBefore()));
    return new BlockRatios(
        treatment,
        kept.stream().map(Named::counts).toList(),
        kept.stream().map(Named::name).toList(),
        List.copyOf(notes));
  }

  private static List<PlotCounts> usable(
      List<PlotCounts> plots, boolean before, List<String> notes) {
    if (!before) {
      return plots;
    }
    var lacking =
        plots.stream()
            .filter(plot -> plot.before().isEmpty())
            .map(PlotCounts::plot)
            .collect(Collectors.joining(", "));
    if (!lacking.isEmpty()) {
      notes.add("left out for lack of a count before the treatment: plot " + lacking);
    }
    return plots.stream().filter(plot -> plot.before().isPresent()).toList();
  }

  private static List<PlotCounts> in(String block, List<PlotCounts> plots) {
    return plots.stream().filter(plot -> plot.block().equals(block)).toList();
  }

  boolean before() {
    return !blocks.isEmpty() && blocks.get(0).before();
  }

  int size() {
    return blocks.size();
  }

  /** Densities as four rows: treated before and after, control before and after. */
  double[][] densities() {
    double[][] rows = new double[4][size()];
    for (int i = 0; i < size(); i++) {
      var block = blocks.get(i);
      rows[0][i] = block.treatedBefore();
      rows[1][i] = block.treatedAfter();
      rows[2][i] = block.controlBefore();
      rows[3][i] = block.controlAfter();
    }
    return rows;
  }

  /** All plots in one, for a trial without blocks and for limits of individuals. */
  FourCounts together() {
    return new FourCounts(
        blocks.stream().flatMap(block -> block.treated().stream()).toList(),
        blocks.stream().flatMap(block -> block.control().stream()).toList(),
        before());
  }
}
