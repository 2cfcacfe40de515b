package agro.trial;

import agro.trial.TrialFinding.Kind;
import agro.trial.TrialFinding.Severity;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** Checks of how treatments lie on the plots of one site and year. */
final class LayoutChecks {

  private static final int LARGEST_GAP = 2;

  private final FieldTrial trial;
  private final List<TrialPlot> plots;
  private final TrialDesign design;
  private final Map<String, List<TrialPlot>> byTreatment = new TreeMap<>(NaturalOrder.ofNames());
  private final List<TrialFinding> findings = new ArrayList<>();

  private LayoutChecks(FieldTrial trial, List<TrialPlot> plots, TrialDesign design) {
    this.trial = trial;
    this.plots = plots;
    this.design = design;
    plots.forEach(
        plot -> byTreatment.computeIfAbsent(plot.treatment(), key -> new ArrayList<>()).add(plot));
  }

  static List<TrialFinding> of(FieldTrial trial, List<TrialPlot> plots, TrialDesign design) {
    var checks = new LayoutChecks(trial, plots, design);
    checks.replication();
    checks.blocks();
    checks.places();
    checks.numbering();
    return List.copyOf(checks.findings);
  }

  private void replication() {
    var single =
        byTreatment.values().stream()
            .filter(list -> list.size() == 1)
            .map(list -> list.get(0))
            .toList();
    if (!single.isEmpty() && !(design instanceof TrialDesign.IncompleteBlocks)) {
      boolean all = single.size() == byTreatment.size();
      add(
          Kind.NO_REPLICATION,
          all && !design.isFactorial() ? Severity.ERROR : Severity.WARNING,
          (all ? "Each treatment has one plot only: " : "One plot only have the treatments of ")
              + PlotWords.list(single)
              + ".",
          "Plants within a plot do not replace a second plot; without replicates there is no error"
              + " to compare with.",
          single);
    }
    var counts = new TreeSet<Integer>();
    byTreatment.values().forEach(list -> counts.add(list.size()));
    if (counts.size() > 1) {
      add(
          Kind.UNEQUAL_REPLICATION,
          Severity.WARNING,
          "Treatments differ in their number of plots"
              + at()
              + ": "
              + byTreatment.entrySet().stream()
                  .map(entry -> entry.getKey() + " " + entry.getValue().size())
                  .collect(Collectors.joining("; "))
              + ".",
          "The analysis has to state its kind of sums of squares, and means differ in their"
              + " standard errors.",
          List.of());
    }
  }

  private String at() {
    var environment = plots.get(0).environment();
    return environment.isEmpty() ? "" : " at " + environment;
  }

  private void blocks() {
    if (plots.stream().anyMatch(plot -> plot.block().isEmpty())) {
      return;
    }
    var times = new LinkedHashMap<String, Map<String, List<TrialPlot>>>();
    plots.forEach(
        plot ->
            times
                .computeIfAbsent(plot.block(), key -> new TreeMap<>(NaturalOrder.ofNames()))
                .computeIfAbsent(plot.treatment(), key -> new ArrayList<>())
                .add(plot));
    if (times.size() < 2) {
      return;
    }
    for (var treatment : byTreatment.keySet()) {
      treatmentInBlocks(treatment, times);
    }
  }

  private void treatmentInBlocks(
      String treatment, Map<String, Map<String, List<TrialPlot>>> times) {
    var counts = new TreeSet<Integer>();
    times.values().forEach(block -> counts.add(block.getOrDefault(treatment, List.of()).size()));
    if (counts.size() == 1 && counts.first() > 1) {
      add(
          Kind.TWICE_IN_BLOCK,
          Severity.NOTE,
          "\"" + treatment + "\" stands " + counts.first() + " times in each block" + at() + ".",
          "",
          List.of());
      return;
    }
    times.forEach(
        (block, treatments) -> {
          var here = treatments.getOrDefault(treatment, List.of());
          if (here.size() > 1) {
            add(
                Kind.TWICE_IN_BLOCK,
                Severity.WARNING,
                "\""
                    + treatment
                    + "\" stands "
                    + (here.size() == 2 ? "twice" : here.size() + " times")
                    + " in block "
                    + block
                    + at()
                    + ", in "
                    + PlotWords.list(here)
                    + PlotWords.lines(lines(here))
                    + ".",
                "Check the field map; if it is so, the design is not balanced there.",
                here);
          } else if (here.isEmpty() && !(design instanceof TrialDesign.IncompleteBlocks)) {
            add(
                Kind.MISSING_IN_BLOCK,
                Severity.WARNING,
                "\"" + treatment + "\" has no plot in block " + block + at() + ".",
                "Add its lines with an empty value if the plot was lost, and look for a misspelt"
                    + " name in that block.",
                List.of());
          }
        });
  }

  private List<Long> lines(List<TrialPlot> some) {
    return some.stream().flatMap(plot -> trial.linesOf(plot).stream()).sorted().toList();
  }

  private void places() {
    var taken = new LinkedHashMap<PlotPlace, TrialPlot>();
    for (var plot : plots) {
      if (plot.place().isPresent()) {
        var other = taken.putIfAbsent(plot.place().get(), plot);
        if (other != null) {
          add(
              Kind.SAME_PLACE,
              Severity.ERROR,
              PlotWords.list(List.of(other, plot)) + " both lie in " + plot.place().get() + ".",
              "Mend row or column of one of them.",
              List.of(other, plot));
        }
      }
    }
    int rows = taken.keySet().stream().mapToInt(PlotPlace::row).max().orElse(0);
    int columns = taken.keySet().stream().mapToInt(PlotPlace::column).max().orElse(0);
    int empty = rows * columns - taken.size();
    if (empty > 0 && taken.size() == plots.size() && 5 * empty <= plots.size()) {
      add(
          Kind.MISSING_PLOT,
          Severity.WARNING,
          empty
              + (empty == 1 ? " place" : " places")
              + " of the grid of "
              + rows
              + " by "
              + columns
              + " plots"
              + at()
              + " is not in the table.",
          "Add lost plots with an empty value, so that it is known that they existed.",
          List.of());
    }
  }

  private void numbering() {
    var numbers = new TreeSet<Integer>();
    for (var plot : plots) {
      if (!plot.name().matches("[1-9][0-9]{0,6}")) {
        return;
      }
      numbers.add(Integer.parseInt(plot.name()));
    }
    var gaps = new ArrayList<String>();
    Integer before = numbers.first() <= LARGEST_GAP + 1 ? Integer.valueOf(0) : null;
    for (var number : numbers) {
      if (before != null && number - before - 1 <= LARGEST_GAP) {
        for (int missing = before + 1; missing < number; missing++) {
          gaps.add(Integer.toString(missing));
        }
      }
      before = number;
    }
    if (!gaps.isEmpty() && 5 * gaps.size() <= plots.size()) {
      add(
          Kind.MISSING_PLOT,
          Severity.WARNING,
          "The numbers of plots leave out " + PlotWords.and(gaps) + at() + ".",
          "Add lost plots with an empty value, so that it is known that they existed.",
          List.of());
    }
  }

  private void add(Kind kind, Severity severity, String text, String cure, List<TrialPlot> about) {
    findings.add(new TrialFinding(kind, severity, text, cure, about, lines(about)));
  }
}
