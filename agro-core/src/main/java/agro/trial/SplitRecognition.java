package agro.trial;

import agro.trial.TrialFinding.Kind;
import agro.trial.TrialFinding.Severity;
import agro.units.Numbers;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * Recognises split plots: by main plots that are written down, else by a factor whose level stays
 * the same over neighbouring plots more often than chance allows.
 */
final class SplitRecognition {

  /** Chance below which an order of plots is taken for a division into main plots. */
  private static final double UNLIKELY = 1e-3;

  private SplitRecognition() {}

  static Optional<TrialDesign> of(
      List<TrialPlot> plots, List<String> factors, boolean blocked, List<TrialFinding> findings) {
    if (plots.stream().noneMatch(plot -> plot.mainPlot().isEmpty())) {
      return written(plots, factors, blocked, findings);
    }
    return byOrder(plots, factors, blocked, findings);
  }

  private static Optional<TrialDesign> written(
      List<TrialPlot> plots, List<String> factors, boolean blocked, List<TrialFinding> findings) {
    var groups = grouped(plots, plot -> plot.block() + "\n" + plot.mainPlot());
    var main = new ArrayList<String>();
    var sub = new ArrayList<String>();
    for (var factor : factors) {
      (isConstantIn(groups, factor) ? main : sub).add(factor);
    }
    if (main.isEmpty()) {
      findings.add(
          finding(
              Severity.ERROR,
              "Main plots are written down, but no factor stays the same within all of them: "
                  + factors
                  + ".",
              "Check the levels of the factor that was laid on main plots, and typing errors in"
                  + " its names."));
      return Optional.empty();
    }
    if (sub.isEmpty()) {
      return Optional.empty();
    }
    if (sub.size() > 1) {
      var deeper = subPlotsByOrder(groups, sub);
      if (deeper.isPresent()) {
        var rest = new ArrayList<>(sub);
        rest.remove(deeper.get());
        return Optional.of(
            new TrialDesign.SplitSplitPlot(main, List.of(deeper.get()), rest, blocked));
      }
    }
    return Optional.of(new TrialDesign.SplitPlot(main, sub, blocked));
  }

  private static boolean isConstantIn(Map<String, List<TrialPlot>> groups, String factor) {
    return groups.values().stream()
        .allMatch(group -> group.stream().map(plot -> plot.level(factor)).distinct().count() == 1);
  }

  private static Optional<TrialDesign> byOrder(
      List<TrialPlot> plots, List<String> factors, boolean blocked, List<TrialFinding> findings) {
    var groups = grouped(plots, TrialPlot::block);
    if (!blocked || groups.size() < 2 || isSameOrderEverywhere(groups)) {
      return Optional.empty();
    }
    for (var factor : factors) {
      double chance = chanceOfRuns(groups, factor);
      if (chance < UNLIKELY) {
        findings.add(
            finding(
                Severity.WARNING,
                "The level of "
                    + factor
                    + " stays the same over neighbouring plots in each block, which plots drawn"
                    + " one by one would do with a chance of "
                    + Numbers.significant(chance, 2)
                    + ": this is taken for a split plot with "
                    + factor
                    + " on main plots.",
                "Write the main plots down, or declare the design."));
        return Optional.of(split(plots, factors, factor));
      }
    }
    return Optional.empty();
  }

  private static TrialDesign split(List<TrialPlot> plots, List<String> factors, String main) {
    var rest = new ArrayList<>(factors);
    rest.remove(main);
    if (rest.size() > 1) {
      var mainPlots = grouped(plots, plot -> plot.block() + "\n" + plot.level(main).orElseThrow());
      var deeper = subPlotsByOrder(mainPlots, rest);
      if (deeper.isPresent()) {
        rest.remove(deeper.get());
        return new TrialDesign.SplitSplitPlot(List.of(main), List.of(deeper.get()), rest, true);
      }
    }
    return new TrialDesign.SplitPlot(List.of(main), rest, true);
  }

  private static Optional<String> subPlotsByOrder(
      Map<String, List<TrialPlot>> mainPlots, List<String> factors) {
    if (isSameOrderEverywhere(mainPlots)) {
      return Optional.empty();
    }
    return factors.stream()
        .filter(factor -> chanceOfRuns(mainPlots, factor) < UNLIKELY)
        .findFirst();
  }

  /** Whether all groups have their treatments in one order, as in a table that was sorted. */
  private static boolean isSameOrderEverywhere(Map<String, List<TrialPlot>> groups) {
    return groups.values().stream()
            .map(group -> inFieldOrder(group, true).stream().map(TrialPlot::treatment).toList())
            .distinct()
            .count()
        == 1;
  }

  /**
   * Chance that a factor has one run of each level in each group when plots are drawn at random,
   * walking along the rows or along the columns, whichever is less likely, counted twice for the
   * two looks; 1 when some level has several runs, or nothing could be told.
   */
  private static double chanceOfRuns(Map<String, List<TrialPlot>> groups, String factor) {
    double alongRows = chanceOfRuns(groups, factor, true);
    double alongColumns = chanceOfRuns(groups, factor, false);
    return Math.min(1, 2 * Math.min(alongRows, alongColumns));
  }

  private static double chanceOfRuns(
      Map<String, List<TrialPlot>> groups, String factor, boolean alongRows) {
    double logChance = 0;
    for (var group : groups.values()) {
      var levels =
          inFieldOrder(group, alongRows).stream()
              .map(plot -> plot.level(factor).orElseThrow())
              .toList();
      Map<String, Integer> counts = new HashMap<>();
      Set<String> ended = new HashSet<>();
      for (int i = 0; i < levels.size(); i++) {
        counts.merge(levels.get(i), 1, Integer::sum);
        if (i > 0 && !levels.get(i).equals(levels.get(i - 1))) {
          ended.add(levels.get(i - 1));
        }
        if (ended.contains(levels.get(i))) {
          return 1;
        }
      }
      logChance += logFactorial(counts.size()) - logFactorial(levels.size());
      for (int count : counts.values()) {
        logChance += logFactorial(count);
      }
    }
    return Math.exp(logChance);
  }

  private static double logFactorial(int n) {
    double sum = 0;
    for (int i = 2; i <= n; i++) {
      sum += Math.log(i);
    }
    return sum;
  }

  /** By place, there and back along rows or columns, where places are known, else by name. */
  private static List<TrialPlot> inFieldOrder(List<TrialPlot> plots, boolean alongRows) {
    if (plots.stream().anyMatch(plot -> plot.place().isEmpty())) {
      return plots.stream()
          .sorted(Comparator.comparing(TrialPlot::name, NaturalOrder.ofNames()))
          .toList();
    }
    return plots.stream()
        .sorted(
            Comparator.comparingInt((TrialPlot plot) -> line(plot, alongRows))
                .thenComparingInt(plot -> thereAndBack(plot, alongRows)))
        .toList();
  }

  private static int line(TrialPlot plot, boolean alongRows) {
    var place = plot.place().orElseThrow();
    return alongRows ? place.row() : place.column();
  }

  private static int thereAndBack(TrialPlot plot, boolean alongRows) {
    int along = line(plot, !alongRows);
    return line(plot, alongRows) % 2 == 1 ? along : -along;
  }

  private static Map<String, List<TrialPlot>> grouped(
      List<TrialPlot> plots, Function<TrialPlot, String> by) {
    return plots.stream().collect(Collectors.groupingBy(by, TreeMap::new, Collectors.toList()));
  }

  private static TrialFinding finding(Severity severity, String text, String cure) {
    return new TrialFinding(Kind.DESIGN, severity, text, cure, List.of(), List.of());
  }
}
