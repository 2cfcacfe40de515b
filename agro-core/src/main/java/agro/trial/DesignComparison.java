package agro.trial;

import agro.trial.TrialFinding.Kind;
import agro.trial.TrialFinding.Severity;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/** Holds the declared design against the one that the data show. */
final class DesignComparison {

  private DesignComparison() {}

  static List<TrialFinding> compare(
      TrialDesign declared, TrialDesign shown, List<TrialPlot> plots) {
    var known = plots.get(0).levels().keySet();
    if (!known.equals(Set.copyOf(declared.factors()))) {
      return List.of(
          finding(
              Severity.ERROR,
              "The declared design has the factors "
                  + declared.factors()
                  + ", but the table has "
                  + List.copyOf(known)
                  + ".",
              "Name the factors as their columns are headed."));
    }
    if (agree(declared, shown)) {
      return List.of();
    }
    if (declared instanceof TrialDesign.LatinSquare) {
      return latinSquare(declared, shown, plots);
    }
    if (declared instanceof TrialDesign.SplitPlot split) {
      return splitPlot(split.words(), split.mainFactors(), split.inBlocks(), shown, plots);
    }
    if (declared instanceof TrialDesign.SplitSplitPlot split) {
      return splitPlot(split.words(), split.mainFactors(), split.inBlocks(), shown, plots);
    }
    return simpler(declared, shown, plots);
  }

  private static boolean agree(TrialDesign declared, TrialDesign shown) {
    if (declared instanceof TrialDesign.SplitPlot one
        && shown instanceof TrialDesign.SplitPlot two) {
      return sameSet(one.mainFactors(), two.mainFactors()) && one.inBlocks() == two.inBlocks();
    }
    if (declared instanceof TrialDesign.SplitSplitPlot one
        && shown instanceof TrialDesign.SplitSplitPlot two) {
      return sameSet(one.mainFactors(), two.mainFactors())
          && sameSet(one.subFactors(), two.subFactors())
          && one.inBlocks() == two.inBlocks();
    }
    if (declared instanceof TrialDesign.IncompleteBlocks one
        && shown instanceof TrialDesign.IncompleteBlocks two) {
      return one.balanced() == two.balanced();
    }
    return declared.getClass().equals(shown.getClass())
        && !(declared instanceof TrialDesign.SplitPlot);
  }

  private static boolean sameSet(List<String> one, List<String> other) {
    return Set.copyOf(one).equals(Set.copyOf(other));
  }

  private static List<TrialFinding> latinSquare(
      TrialDesign declared, TrialDesign shown, List<TrialPlot> plots) {
    var unblocked = plots.stream().map(DesignComparison::withoutBlock).toList();
    var seen = DesignRecognition.recognise(unblocked, declared.factors()).design();
    if (seen instanceof TrialDesign.LatinSquare) {
      return List.of();
    }
    return List.of(
        disagree(
            Severity.ERROR,
            declared.words(),
            shown,
            "A Latin square needs row and column of each plot, and each treatment once in each of"
                + " them: check the places."));
  }

  private static TrialPlot withoutBlock(TrialPlot plot) {
    return new TrialPlot(
        plot.site(), plot.year(), "", "", plot.name(), plot.place(), plot.levels(), plot.area());
  }

  private static List<TrialFinding> splitPlot(
      String words,
      List<String> mainFactors,
      boolean inBlocks,
      TrialDesign shown,
      List<TrialPlot> plots) {
    boolean blocked = plots.stream().noneMatch(plot -> plot.block().isEmpty());
    boolean written = plots.stream().noneMatch(plot -> plot.mainPlot().isEmpty());
    if (inBlocks != blocked) {
      return List.of(
          disagree(
              Severity.ERROR,
              words,
              shown,
              inBlocks
                  ? "Write the block of each plot."
                  : "Say whether the main plots were drawn within the blocks that are written."));
    }
    if (written) {
      return List.of(
          disagree(
              Severity.ERROR,
              words,
              shown,
              "The factors "
                  + mainFactors
                  + " have to stay the same within each main plot: check the main plots and the"
                  + " spelling of the levels."));
    }
    return List.of(
        finding(
            Severity.NOTE,
            "The main plots of the declared "
                + words
                + " are not written down, so a main plot is taken to be the plots of one level of "
                + String.join(" and ", mainFactors)
                + (blocked ? " in one block." : "."),
            blocked
                ? "Add a column \"main plot\" if a level has several main plots in a block."
                : "Add a column \"main plot\": without blocks it cannot be known which plots"
                    + " share one."));
  }

  private static List<TrialFinding> simpler(
      TrialDesign declared, TrialDesign shown, List<TrialPlot> plots) {
    if (shown instanceof TrialDesign.SplitPlot || shown instanceof TrialDesign.SplitSplitPlot) {
      return List.of(
          disagree(
              Severity.ERROR,
              declared.words(),
              shown,
              "The main-plot factor would be tested against the error of the small plots: declare"
                  + " the split plot, or mend the places."));
    }
    if (declared instanceof TrialDesign.CompletelyRandomised) {
      return List.of(
          disagree(
              Severity.WARNING,
              declared.words(),
              shown,
              "If treatments were drawn within blocks or lines, the analysis has to keep them."));
    }
    if (declared instanceof TrialDesign.CompleteBlocks
        && shown instanceof TrialDesign.IncompleteBlocks) {
      return List.of(disagree(Severity.ERROR, declared.words(), shown, missingWords(plots)));
    }
    return List.of(
        disagree(
            Severity.ERROR,
            declared.words(),
            shown,
            "Check the blocks and places of the plots, or declare the design that was laid out."));
  }

  private static String missingWords(List<TrialPlot> plots) {
    Map<String, Set<String>> blocks = new LinkedHashMap<>();
    var treatments = new TreeSet<>(NaturalOrder.ofNames());
    for (var plot : plots) {
      treatments.add(plot.treatment());
      blocks.computeIfAbsent(plot.block(), key -> new TreeSet<>()).add(plot.treatment());
    }
    int missing = 0;
    for (var block : blocks.values()) {
      missing += treatments.size() - block.size();
    }
    return missing
        + (missing == 1 ? " treatment is" : " treatments are")
        + " missing in their blocks: add lost plots with an empty value, and look for misspelt"
        + " treatments.";
  }

  private static TrialFinding disagree(
      Severity severity, String declared, TrialDesign shown, String cure) {
    return finding(
        severity,
        "The design was declared as " + declared + ", but the data show " + shown.words() + ".",
        cure);
  }

  private static TrialFinding finding(Severity severity, String text, String cure) {
    return new TrialFinding(Kind.DESIGN_DISAGREES, severity, text, cure, List.of(), List.of());
  }
}
