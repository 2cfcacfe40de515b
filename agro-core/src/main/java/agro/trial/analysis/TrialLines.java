package agro.trial.analysis;

import agro.report.InputProblem;
import agro.stats.linear.Factor;
import agro.stats.linear.ModelTerm;
import agro.trial.PlotValues;
import agro.trial.TrialDesign;
import agro.trial.TrialPlot;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.function.UnaryOperator;

/**
 * The model of a design for the plots that have a value: terms of the ground and of the treatments,
 * and the values on the scale of the analysis.
 */
final class TrialLines {

  private final PlotValues values;
  private final TrialDesign design;
  private final List<Factor> factors;
  private final List<ModelTerm> ground;
  private final List<ModelTerm> units;
  private final List<String> remarks = new ArrayList<>();

  TrialLines(PlotValues values, TrialDesign design) {
    this.values = values;
    this.design = design;
    this.factors = treatmentFactors();
    this.ground = new ArrayList<>();
    this.units = new ArrayList<>();
    layOut();
  }

  private List<Factor> treatmentFactors() {
    var names = design.factors();
    var list = new ArrayList<Factor>();
    long cells = 1;
    for (String name : names) {
      var factor = Factor.of(name, levels(name));
      list.add(factor);
      cells *= factor.levelCount();
    }
    var observed = new LinkedHashSet<>(values.treatments()).size();
    if (names.size() > 1 && observed < cells && !isDivided()) {
      remarks.add(
          observed
              + " of the "
              + cells
              + " combinations of "
              + String.join(" and ", names)
              + " are in the trial, so that treatments are taken as levels of one factor; contrasts"
              + " can compare groups of them.");
      return List.of(Factor.of(TrialPlot.TREATMENT, values.treatments()));
    }
    return List.copyOf(list);
  }

  private List<String> levels(String name) {
    try {
      return values.levels(name);
    } catch (IllegalArgumentException unknown) {
      throw InputProblem.of("a design with the factor \"" + name + "\"")
          .expected("factors of the trial: " + values.plots().get(0).levels().keySet())
          .because("the model needs a level of each factor for each plot")
          .mend("declare a design of the factors that the table has");
    }
  }

  boolean isDivided() {
    return design instanceof TrialDesign.SplitPlot || design instanceof TrialDesign.SplitSplitPlot;
  }

  private void layOut() {
    if (design instanceof TrialDesign.CompleteBlocks
        || design instanceof TrialDesign.IncompleteBlocks) {
      ground.add(ModelTerm.of(ground("block", TrialPlot::block)));
    } else if (design instanceof TrialDesign.LatinSquare) {
      ground.add(ModelTerm.of(ground("row", place(place -> place.place().map(p -> p.row())))));
      ground.add(ModelTerm.of(ground("column", place(plot -> plot.place().map(p -> p.column())))));
    } else if (design instanceof TrialDesign.SplitPlot split) {
      divide(split.inBlocks(), List.of(split.mainFactors()));
    } else if (design instanceof TrialDesign.SplitSplitPlot split) {
      divide(split.inBlocks(), List.of(split.mainFactors(), split.subFactors()));
    }
  }

  private static Function<TrialPlot, String> place(
      Function<TrialPlot, java.util.Optional<Integer>> number) {
    return plot -> number.apply(plot).map(Object::toString).orElse("");
  }

  /** Units of each size as one factor of labels that are unique in the trial. */
  private void divide(boolean inBlocks, List<List<String>> factorsOfUnits) {
    UnaryOperator<String> part = text -> text + "\u0001";
    Function<TrialPlot, String> label = plot -> "";
    if (inBlocks) {
      var block = ground("block", TrialPlot::block);
      units.add(ModelTerm.of(block));
      label = plot -> part.apply(plot.block());
    }
    boolean written = values.plots().stream().noneMatch(plot -> plot.mainPlot().isEmpty());
    if (!inBlocks && !written) {
      throw InputProblem.of("a split plot without blocks whose main plots are not written down")
          .expected("the main plot of each plot")
          .because("the error of the main treatment is the scatter of main plots treated alike")
          .mend("fill in the main plot of each plot");
    }
    String[] names = {"main plot", "sub-plot"};
    for (int size = 0; size < factorsOfUnits.size(); size++) {
      var before = label;
      boolean byName = size == 0 && written;
      var own = factorsOfUnits.get(size);
      label =
          plot ->
              before.apply(plot)
                  + part.apply(byName ? plot.mainPlot() : String.join("\u0002", levels(plot, own)));
      units.add(ModelTerm.of(ground(names[size], label)));
    }
  }

  private static List<String> levels(TrialPlot plot, List<String> factors) {
    return factors.stream().map(factor -> plot.level(factor).orElseThrow()).toList();
  }

  private Factor ground(String name, Function<TrialPlot, String> label) {
    var labels = values.labels(label);
    int without = labels.indexOf("");
    if (without >= 0) {
      throw InputProblem.of(
              values.plots().get(without).label() + " has no " + name + " in " + design.words())
          .expected("a " + name + " for each plot")
          .because("the model takes what " + name + "s differ by out of the error")
          .mend("fill in the " + name + " of each plot, or declare another design");
    }
    return Factor.of(freeName(name), labels);
  }

  /** A treatment factor may be called "row" or "block" as well. */
  private String freeName(String name) {
    return factors.stream().anyMatch(factor -> factor.name().equals(name))
        ? name + " of the field"
        : name;
  }

  PlotValues values() {
    return values;
  }

  TrialDesign design() {
    return design;
  }

  List<String> remarks() {
    return List.copyOf(remarks);
  }

  /** Treatment factors of the model. */
  List<Factor> factors() {
    return factors;
  }

  Factor[] factorArray() {
    return factors.toArray(Factor[]::new);
  }

  /** Blocks, rows and columns whose differences are taken out; none for divided plots. */
  List<ModelTerm> ground() {
    return List.copyOf(ground);
  }

  /** Units with an error of their own, larger ones first; none unless plots are divided. */
  List<ModelTerm> units() {
    return List.copyOf(units);
  }

  List<ModelTerm> treatments() {
    return ModelTerm.crossing(factorArray());
  }

  /** Ground or units first, then the treatments. */
  List<ModelTerm> allTerms() {
    var terms = new ArrayList<ModelTerm>(ground);
    terms.addAll(units);
    terms.addAll(treatments());
    return terms;
  }

  /** The treatments' words for labels of cells that are joined by colons. */
  Map<String, String> wordsOf(List<Factor> some) {
    var words = new HashMap<String, String>();
    for (int i = 0; i < values.values().size(); i++) {
      var cell = new ArrayList<String>();
      var spoken = new ArrayList<String>();
      for (Factor factor : some) {
        cell.add(factor.label(i));
        spoken.add(factor.name() + " " + factor.label(i));
      }
      words.put(String.join(":", cell), some.size() == 1 ? cell.get(0) : String.join(", ", spoken));
    }
    return words;
  }
}
