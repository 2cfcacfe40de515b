package agro.stats.glm;

import agro.report.InputProblem;
import agro.stats.linear.Covariate;
import agro.stats.linear.Factor;
import agro.stats.linear.MeanWeights;
import agro.stats.linear.ModelTerm;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Linear functions that give the predictor of levels, averaged over everything else. */
final class ReferenceGrid {

  private final PredictorDesign design;
  private final List<Factor> targets;
  private final Map<Covariate, Double> fixed;
  private final List<Factor> others = new ArrayList<>();
  private final Map<List<Integer>, Double> cells = new LinkedHashMap<>();

  ReferenceGrid(
      PredictorDesign design,
      List<Factor> targets,
      MeanWeights weights,
      Map<Covariate, Double> fixed) {
    this.design = design;
    this.targets = List.copyOf(targets);
    this.fixed = Map.copyOf(fixed);
    for (Factor target : targets) {
      if (!design.factors().contains(target)) {
        throw InputProblem.of("means of factor " + target.name())
            .expected("a factor of the fitted model, one of " + names(design.factors()))
            .because("the model knows nothing of the others")
            .mend("add the factor to the model");
      }
    }
    for (Factor factor : design.factors()) {
      if (!targets.contains(factor)) {
        others.add(factor);
      }
    }
    boolean nested = design.terms().stream().anyMatch(ModelTerm::isNested);
    if (weights == MeanWeights.PROPORTIONAL || nested) {
      observedCells(weights);
    } else {
      crossedCells(new ArrayList<>());
    }
  }

  static List<Factor> factors(Factor first, Factor... more) {
    var factors = new ArrayList<Factor>();
    factors.add(first);
    factors.addAll(Arrays.asList(more));
    return factors;
  }

  private static List<String> names(List<Factor> factors) {
    return factors.stream().map(Factor::name).toList();
  }

  private void observedCells(MeanWeights weights) {
    for (int i = 0; i < design.observations(); i++) {
      int row = i;
      var cell = others.stream().map(each -> each.code(row)).toList();
      cells.merge(cell, 1.0, weights == MeanWeights.PROPORTIONAL ? Double::sum : (a, b) -> a);
    }
  }

  private void crossedCells(List<Integer> chosen) {
    if (chosen.size() == others.size()) {
      cells.put(List.copyOf(chosen), 1.0);
      return;
    }
    for (int level = 0; level < others.get(chosen.size()).levelCount(); level++) {
      chosen.add(level);
      crossedCells(chosen);
      chosen.remove(chosen.size() - 1);
    }
  }

  /** Labels of the combinations of the targets with their functions, in the order of levels. */
  Map<String, double[]> functions() {
    var functions = new LinkedHashMap<String, double[]>();
    add(functions, new ArrayList<>());
    return functions;
  }

  private void add(Map<String, double[]> functions, List<Integer> levels) {
    if (levels.size() == targets.size()) {
      var labels = new ArrayList<String>();
      for (int t = 0; t < levels.size(); t++) {
        labels.add(targets.get(t).levels().get(levels.get(t)));
      }
      functions.put(String.join(":", labels), function(levels));
      return;
    }
    for (int level = 0; level < targets.get(levels.size()).levelCount(); level++) {
      levels.add(level);
      add(functions, levels);
      levels.remove(levels.size() - 1);
    }
  }

  private double[] function(List<Integer> levels) {
    double all = cells.values().stream().mapToDouble(Double::doubleValue).sum();
    double[] function = new double[design.names().size()];
    if (design.hasIntercept()) {
      function[0] = 1;
    }
    Map<Factor, Integer> place = new HashMap<>();
    for (int t = 0; t < levels.size(); t++) {
      place.put(targets.get(t), levels.get(t));
    }
    for (var cell : cells.entrySet()) {
      for (int f = 0; f < others.size(); f++) {
        place.put(others.get(f), cell.getKey().get(f));
      }
      for (TermColumns block : design.blocks()) {
        block.add(function, 0, cell.getValue() / all, place::get, this::value);
      }
    }
    return function;
  }

  private double value(Covariate covariate) {
    return fixed.getOrDefault(covariate, covariate.mean());
  }
}
