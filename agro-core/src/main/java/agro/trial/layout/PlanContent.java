package agro.trial.layout;

import agro.trial.TrialDesign;
import agro.trial.TrialPlot;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What a {@link TrialPlan} is made of.
 *
 * @param name name of the trial
 * @param design design
 * @param factors factors, those of main plots first
 * @param replicates blocks or replicates
 * @param extraPlots more plots of some treatments in each block
 * @param controls named controls
 * @param numbering numbering of plots
 * @param differentNeighbours whether neighbours must differ
 * @param blinding what is told in the field
 * @param ground sizes
 * @param rowsInBlock rows of a block, 0 for the usual shape
 * @param blocksSideBySide blocks beside each other
 */
record PlanContent(
    String name,
    TrialDesign design,
    List<TreatmentFactor> factors,
    int replicates,
    Map<String, Integer> extraPlots,
    List<String> controls,
    PlotNumbering numbering,
    boolean differentNeighbours,
    Blinding blinding,
    TrialGround ground,
    int rowsInBlock,
    int blocksSideBySide) {

  PlanContent {
    factors = List.copyOf(factors);
    extraPlots = new LinkedHashMap<>(extraPlots);
    controls = List.copyOf(controls);
  }

  /** All treatments as levels of the factors, the last factor changing fastest. */
  List<Map<String, String>> treatments() {
    return combinations(factors);
  }

  /** The treatments of one block, or of the whole trial where there are no blocks. */
  List<Map<String, String>> treatmentsOfBlock() {
    boolean whole = design instanceof TrialDesign.CompletelyRandomised;
    var plots = new ArrayList<Map<String, String>>();
    for (var treatment : treatments()) {
      int times = (whole ? replicates : 1) + extraPlots.getOrDefault(words(treatment), 0);
      for (int i = 0; i < times; i++) {
        plots.add(treatment);
      }
    }
    return List.copyOf(plots);
  }

  boolean hasBlocks() {
    return design instanceof TrialDesign.CompleteBlocks || design instanceof TrialDesign.SplitPlot;
  }

  static String words(Map<String, String> levels) {
    return TrialPlot.of("any", "", levels).treatment();
  }

  static List<Map<String, String>> combinations(List<TreatmentFactor> factors) {
    List<Map<String, String>> all = List.of(Map.of());
    for (var factor : factors) {
      var longer = new ArrayList<Map<String, String>>();
      for (var start : all) {
        for (var level : factor.levels()) {
          var levels = new LinkedHashMap<>(start);
          levels.put(factor.name(), level);
          longer.add(levels);
        }
      }
      all = longer;
    }
    return all;
  }

  PlanContent withReplicates(int number) {
    return new PlanContent(
        name,
        design,
        factors,
        number,
        extraPlots,
        controls,
        numbering,
        differentNeighbours,
        blinding,
        ground,
        rowsInBlock,
        blocksSideBySide);
  }

  PlanContent withExtra(String treatment, int extra) {
    var more = new LinkedHashMap<>(extraPlots);
    more.put(treatment, extra);
    return new PlanContent(
        name,
        design,
        factors,
        replicates,
        more,
        controls,
        numbering,
        differentNeighbours,
        blinding,
        ground,
        rowsInBlock,
        blocksSideBySide);
  }

  PlanContent withControls(List<String> named) {
    return new PlanContent(
        name,
        design,
        factors,
        replicates,
        extraPlots,
        named,
        numbering,
        differentNeighbours,
        blinding,
        ground,
        rowsInBlock,
        blocksSideBySide);
  }

  PlanContent withNumbering(PlotNumbering way) {
    return new PlanContent(
        name,
        design,
        factors,
        replicates,
        extraPlots,
        controls,
        way,
        differentNeighbours,
        blinding,
        ground,
        rowsInBlock,
        blocksSideBySide);
  }

  PlanContent withDifferentNeighbours() {
    return new PlanContent(
        name,
        design,
        factors,
        replicates,
        extraPlots,
        controls,
        numbering,
        true,
        blinding,
        ground,
        rowsInBlock,
        blocksSideBySide);
  }

  PlanContent withBlinding(Blinding way) {
    return new PlanContent(
        name,
        design,
        factors,
        replicates,
        extraPlots,
        controls,
        numbering,
        differentNeighbours,
        way,
        ground,
        rowsInBlock,
        blocksSideBySide);
  }

  PlanContent withGround(TrialGround other) {
    return new PlanContent(
        name,
        design,
        factors,
        replicates,
        extraPlots,
        controls,
        numbering,
        differentNeighbours,
        blinding,
        other,
        rowsInBlock,
        blocksSideBySide);
  }

  PlanContent withShape(int rows, int sideBySide) {
    return new PlanContent(
        name,
        design,
        factors,
        replicates,
        extraPlots,
        controls,
        numbering,
        differentNeighbours,
        blinding,
        ground,
        rows,
        sideBySide);
  }
}
