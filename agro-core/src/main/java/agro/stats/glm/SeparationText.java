package agro.stats.glm;

import agro.stats.linear.Factor;
import agro.stats.linear.ModelTerm;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/** Says in plain sentences which levels have no finite estimate, and why. */
final class SeparationText {

  private final GeneralisedLinearFit fit;
  private final ScoringProblem problem;
  private final SeparationCone cone;
  private final Set<Integer> open = new LinkedHashSet<>();

  private SeparationText(GeneralisedLinearFit fit) {
    this.fit = fit;
    this.problem = fit.state().problem;
    this.cone = fit.state().cone;
    for (int i = 0; i < problem.rows; i++) {
      if (cone.separates(i)) {
        open.add(i);
      }
    }
  }

  static List<String> of(GeneralisedLinearFit fit) {
    var text = new SeparationText(fit);
    var sentences = new ArrayList<String>();
    var groupings = new LinkedHashSet<List<Factor>>();
    fit.design().factors().forEach(each -> groupings.add(List.of(each)));
    fit.design().terms().stream()
        .sorted(Comparator.comparingInt(term -> term.allFactors().size()))
        .map(ModelTerm::allFactors)
        .filter(each -> each.size() > 1)
        .forEach(groupings::add);
    groupings.forEach(each -> text.addCells(each, sentences));
    if (!text.open.isEmpty()) {
      sentences.add(text.rest());
    }
    sentences.add(text.consequence());
    return sentences;
  }

  /** Cells of some factors in which all observations run to one limit. */
  private void addCells(List<Factor> factors, List<String> sentences) {
    var cells = new LinkedHashMap<String, List<Integer>>();
    for (int i = 0; i < problem.rows; i++) {
      if (problem.weight[i] > 0) {
        int row = i;
        String cell =
            factors.stream()
                .map(each -> each.name() + " " + each.label(row))
                .collect(Collectors.joining(", "));
        cells.computeIfAbsent(cell, key -> new ArrayList<>()).add(i);
      }
    }
    cells.entrySet().stream()
        .sorted(Map.Entry.comparingByKey())
        .forEach(
            cell -> {
              var rows = cell.getValue();
              int limit = SeparationCone.limitOf(problem, rows.get(0));
              boolean all =
                  rows.stream()
                      .allMatch(
                          i -> cone.separates(i) && SeparationCone.limitOf(problem, i) == limit);
              if (all && open.removeAll(rows)) {
                sentences.add(sentence(cell.getKey(), rows.size(), limit));
              }
            });
  }

  private String sentence(String cell, int rows, int limit) {
    boolean outOf = fit.model().family().countsOutOfTotal();
    String what =
        outOf
            ? (limit > 0 ? "All" : "None") + " of the individuals of " + cell + " responded"
            : rows == 1
                ? "The only count of " + cell + " is 0"
                : "All " + rows + " counts of " + cell + " are 0";
    return what
        + ", so its mean runs to "
        + (limit > 0 ? "1" : "0")
        + " and has no finite estimate on the scale of the link; no standard error is given.";
  }

  private String rest() {
    String names =
        fit.coefficients().stream()
            .filter(each -> !each.isFinite() && each.state() != EstimateState.NOT_ESTIMABLE)
            .map(CoefficientEstimate::name)
            .collect(Collectors.joining(", "));
    boolean complete = fit.state().keptRows.length == 0;
    return (complete
            ? "The predictor separates "
            : "In a part of the data the predictor separates ")
        + (fit.model().family().countsOutOfTotal()
            ? "observations in which all responded from those in which none did"
            : "observations of 0 from the others")
        + " ("
        + open.size()
        + " of "
        + problem.rows
        + " observations): "
        + names
        + " have no finite estimates.";
  }

  private String consequence() {
    boolean firth =
        fit.model().family() == ErrorFamily.BINOMIAL || fit.model().family() == ErrorFamily.POISSON;
    return "Estimates that do not need them, the likelihood and its tests stand; limits from the"
        + " profile of the likelihood exist on one side"
        + (firth ? ", and a penalised likelihood gives finite estimates throughout." : ".");
  }
}
