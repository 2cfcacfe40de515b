package agro.trial.series;

import agro.stats.linear.Factor;
import agro.stats.linear.ModelTerm;
import agro.trial.TrialPlot;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/** The factors of plots that stand at several sites. */
final class SiteFactors {

  private final List<TrialPlot> plots;

  SiteFactors(PlotFigures figures) {
    this.plots = figures.figures().stream().map(PlotFigure::plot).toList();
  }

  Factor treatment() {
    return Factor.of("treatment", labels(TrialPlot::treatment));
  }

  /** Sites with their years, called by what tells them apart. */
  Factor environment() {
    return Factor.of(environmentName(), labels(TrialPlot::environment));
  }

  String environmentName() {
    int environments = count(TrialPlot::environment);
    if (count(TrialPlot::site) == environments) {
      return "site";
    }
    return count(SiteFactors::year) == environments ? "year" : "site and year";
  }

  /** Blocks within their sites, or nothing where no site has two of them. */
  Optional<ModelTerm> blocks(Factor environment) {
    boolean none = count(SiteFactors::block) == count(TrialPlot::environment);
    return none
        ? Optional.empty()
        : Optional.of(ModelTerm.nested(Factor.of("block", labels(TrialPlot::block)), environment));
  }

  /** Random terms that could be told apart, larger units first; names stand in print. */
  Map<String, List<String>> randomCandidates() {
    var candidates = new LinkedHashMap<String, List<String>>();
    var name = environmentName();
    boolean crossed = name.equals("site and year");
    var groupings = new LinkedHashMap<String, Function<TrialPlot, String>>();
    if (crossed) {
      groupings.put("site", TrialPlot::site);
      groupings.put("year", SiteFactors::year);
    }
    groupings.put(name, TrialPlot::environment);
    groupings.forEach((term, label) -> candidates.put(term, labels(label)));
    candidates.put("block within " + name, labels(SiteFactors::block));
    groupings.forEach(
        (term, label) ->
            candidates.put(
                "treatment by " + term, labels(plot -> pair(label.apply(plot), plot.treatment()))));
    return candidates;
  }

  /** Random terms that group rows in a way of their own, with the names of those left out. */
  List<Factor> random(List<String> leftOut) {
    var kept = new ArrayList<Factor>();
    var seen = new HashSet<List<Integer>>();
    seen.add(grouping(labels(TrialPlot::treatment)));
    randomCandidates()
        .forEach(
            (name, labels) -> {
              int levels = new HashSet<>(labels).size();
              if (levels < 2 || levels == plots.size() || !seen.add(grouping(labels))) {
                leftOut.add(name);
              } else {
                kept.add(Factor.of(name, labels));
              }
            });
    return kept;
  }

  private static List<Integer> grouping(List<String> labels) {
    var places = new HashMap<String, Integer>();
    return labels.stream().map(each -> places.computeIfAbsent(each, key -> places.size())).toList();
  }

  int count(Function<TrialPlot, String> label) {
    return new LinkedHashSet<>(labels(label)).size();
  }

  private List<String> labels(Function<TrialPlot, String> label) {
    return plots.stream().map(label).map(each -> each.isBlank() ? "not written" : each).toList();
  }

  private static String year(TrialPlot plot) {
    return plot.year().isPresent() ? Integer.toString(plot.year().getAsInt()) : "";
  }

  private static String block(TrialPlot plot) {
    return pair(plot.environment(), plot.block());
  }

  /** Two labels as one; the length keeps different pairs different. */
  private static String pair(String one, String other) {
    return one.length() + " " + one + ", " + other;
  }
}
