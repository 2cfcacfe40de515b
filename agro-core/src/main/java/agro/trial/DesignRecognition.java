package agro.trial;

import agro.trial.TrialFinding.Kind;
import agro.trial.TrialFinding.Severity;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.ToIntFunction;

/** Recognises the design of one site and year from the plots alone. */
final class DesignRecognition {

  /** Numbers of Latin squares of the orders 2 to 7. */
  private static final double[] LATIN_SQUARES = {
    2, 12, 576, 161_280, 812_851_200d, 61_479_419_904_000d
  };

  /** Chance below which an arrangement is taken for intended although a block column is there. */
  private static final double INTENDED = 1e-4;

  /**
   * What was recognised.
   *
   * @param design the design
   * @param findings what has to be said about it
   */
  record Recognised(TrialDesign design, List<TrialFinding> findings) {}

  private final List<TrialPlot> plots;
  private final List<String> factors;
  private final List<TrialFinding> findings = new ArrayList<>();
  private final Set<String> treatments = new TreeSet<>(NaturalOrder.ofNames());

  private DesignRecognition(List<TrialPlot> plots, List<String> factors) {
    this.plots = plots;
    this.factors = factors;
    plots.forEach(plot -> treatments.add(plot.treatment()));
  }

  static Recognised recognise(List<TrialPlot> plots, List<String> factors) {
    var recognition = new DesignRecognition(plots, factors);
    var design = recognition.design();
    return new Recognised(design, List.copyOf(recognition.findings));
  }

  private TrialDesign design() {
    boolean blocked = plots.stream().noneMatch(plot -> plot.block().isEmpty());
    if (!blocked && plots.stream().anyMatch(plot -> !plot.block().isEmpty())) {
      note(
          Severity.ERROR,
          "Some plots have a block and others have none: "
              + PlotWords.list(plots.stream().filter(plot -> plot.block().isEmpty()).toList())
              + " stand without a block, so blocks are left out of account.",
          "Fill in the block of each plot.");
    }
    if (factors.size() > 1) {
      var split = SplitRecognition.of(plots, factors, blocked, findings);
      if (split.isPresent()) {
        return split.get();
      }
    }
    return latinSquare(blocked).orElseGet(() -> blocked ? inBlocks() : withoutBlocks());
  }

  private Optional<TrialDesign> latinSquare(boolean blocked) {
    int order = treatments.size();
    if (order < 3 || plots.size() <= order * (order - 1) || plots.size() > order * order) {
      return Optional.empty();
    }
    var rows = new HashMap<Integer, Set<String>>();
    var columns = new HashMap<Integer, Set<String>>();
    for (var plot : plots) {
      if (plot.place().isEmpty()) {
        return Optional.empty();
      }
      var place = plot.place().get();
      boolean once =
          rows.computeIfAbsent(place.row(), key -> new HashSet<>()).add(plot.treatment())
              && columns
                  .computeIfAbsent(place.column(), key -> new HashSet<>())
                  .add(plot.treatment());
      if (!once) {
        return Optional.empty();
      }
    }
    if (rows.size() != order || columns.size() != order) {
      return Optional.empty();
    }
    if (blocked && (!blocksAreLines() || chanceOfSquareInBlocks(order) > INTENDED)) {
      note(
          Severity.NOTE,
          "Each treatment also stands once in each row and column, which may be chance beside the"
              + " blocks that are written down.",
          "Declare a Latin square if rows and columns were both kept free of repetition on"
              + " purpose.");
      return Optional.empty();
    }
    return Optional.of(new TrialDesign.LatinSquare(factors));
  }

  private boolean blocksAreLines() {
    return sameGrouping(plot -> plot.place().orElseThrow().row())
        || sameGrouping(plot -> plot.place().orElseThrow().column());
  }

  private boolean sameGrouping(ToIntFunction<TrialPlot> line) {
    var lineOfBlock = new HashMap<String, Integer>();
    for (var plot : plots) {
      var known = lineOfBlock.putIfAbsent(plot.block(), line.applyAsInt(plot));
      if (known != null && known != line.applyAsInt(plot)) {
        return false;
      }
    }
    return new HashSet<>(lineOfBlock.values()).size() == lineOfBlock.size();
  }

  /** Chance that blocks at random in rows make a Latin square. */
  private static double chanceOfSquareInBlocks(int order) {
    if (order - 2 >= LATIN_SQUARES.length) {
      return 0;
    }
    double orders = 1;
    for (int i = 2; i <= order; i++) {
      orders *= i;
    }
    return LATIN_SQUARES[order - 2] / Math.pow(orders, order);
  }

  private TrialDesign inBlocks() {
    var blocks = new TreeMap<String, List<String>>(NaturalOrder.ofNames());
    for (var plot : plots) {
      blocks.computeIfAbsent(plot.block(), key -> new ArrayList<>()).add(plot.treatment());
    }
    if (blocks.size() == 1) {
      note(
          Severity.WARNING,
          "There is one block only, so blocks explain nothing.",
          "Analyse as completely randomised, or write the blocks down.");
      return new TrialDesign.CompletelyRandomised(factors);
    }
    long complete = blocks.values().stream().filter(block -> block.containsAll(treatments)).count();
    if (2 * complete >= blocks.size()) {
      return new TrialDesign.CompleteBlocks(factors);
    }
    boolean balanced = isBalanced(blocks.values().stream().toList());
    note(
        Severity.WARNING,
        "No more than "
            + complete
            + " of "
            + blocks.size()
            + " blocks hold all "
            + treatments.size()
            + " treatments: the blocks are incomplete"
            + (balanced ? " and balanced" : "")
            + ", so plain means of treatments carry differences between blocks.",
        factors.size() > 1
            ? "Compare means adjusted for blocks; an interaction may be confounded with blocks."
            : "Compare means adjusted for blocks.");
    return new TrialDesign.IncompleteBlocks(factors, balanced);
  }

  private boolean isBalanced(List<List<String>> blocks) {
    var sizes = new HashSet<Integer>();
    Map<String, Integer> together = new LinkedHashMap<>();
    Map<String, Integer> replicates = new LinkedHashMap<>();
    for (var block : blocks) {
      sizes.add(block.size());
      if (new HashSet<>(block).size() < block.size()) {
        return false;
      }
      block.forEach(treatment -> replicates.merge(treatment, 1, Integer::sum));
      for (var one : block) {
        for (var other : block) {
          if (one.compareTo(other) < 0) {
            together.merge(one + "\n" + other, 1, Integer::sum);
          }
        }
      }
    }
    int pairs = treatments.size() * (treatments.size() - 1) / 2;
    return sizes.size() == 1
        && together.size() == pairs
        && new HashSet<>(together.values()).size() == 1
        && new HashSet<>(replicates.values()).size() == 1;
  }

  private TrialDesign withoutBlocks() {
    if (plots.stream().allMatch(plot -> plot.place().isPresent())) {
      sayIfLinesAreComplete("row", plot -> plot.place().orElseThrow().row());
      sayIfLinesAreComplete("column", plot -> plot.place().orElseThrow().column());
    }
    return new TrialDesign.CompletelyRandomised(factors);
  }

  private void sayIfLinesAreComplete(String line, ToIntFunction<TrialPlot> number) {
    var lines = new TreeMap<Integer, Set<String>>();
    var sizes = new HashMap<Integer, Integer>();
    for (var plot : plots) {
      lines.computeIfAbsent(number.applyAsInt(plot), key -> new HashSet<>()).add(plot.treatment());
      sizes.merge(number.applyAsInt(plot), 1, Integer::sum);
    }
    boolean complete =
        lines.size() > 1
            && treatments.size() > 1
            && lines.values().stream().allMatch(set -> set.containsAll(treatments))
            && sizes.values().stream().allMatch(size -> size == treatments.size());
    if (complete) {
      note(
          Severity.WARNING,
          "Each " + line + " holds each treatment once, so it may be a block.",
          "Write the " + line + " as the block if treatments were drawn within it.");
    }
  }

  private void note(Severity severity, String text, String cure) {
    findings.add(new TrialFinding(Kind.DESIGN, severity, text, cure, List.of(), List.of()));
  }
}
