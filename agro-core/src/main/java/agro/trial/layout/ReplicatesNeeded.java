package agro.trial.layout;

import agro.stats.power.DifferencePower;
import agro.stats.power.NoncentralT;
import agro.stats.power.PlannedReplicates;
import agro.stats.power.ReplicationPlan;
import agro.trial.TrialDesign;
import agro.units.Numbers;
import agro.working.Block;
import agro.working.Cell;
import agro.working.Presentable;
import agro.working.Presentation;
import agro.working.ResultTable;
import java.util.ArrayList;
import java.util.List;

/**
 * How many blocks or replicates a plan needs to show a difference between two treatments. Extra
 * plots of a treatment are left out of account.
 *
 * @param plan the plan
 * @param wanted the difference to be shown
 * @param comparisons what each comparison needs; two for a split plot, else one
 */
public record ReplicatesNeeded(
    TrialPlan plan, WantedDifference wanted, List<Comparison> comparisons) implements Presentable {

  private static final int MORE_ROWS = 2;
  private static final int MOST_ROWS = 12;

  /**
   * A comparison of two means.
   *
   * @param between what is compared
   * @param needed the replicates that it needs
   */
  public record Comparison(String between, PlannedReplicates needed) {}

  /** Makes the list immutable. */
  public ReplicatesNeeded {
    comparisons = List.copyOf(comparisons);
  }

  static ReplicatesNeeded of(TrialPlan plan, WantedDifference wanted) {
    var comparisons = new ArrayList<Comparison>();
    int treatments = plan.treatments().size();
    if (plan.design() instanceof TrialDesign.SplitPlot split) {
      int main = 1;
      for (var factor : plan.factors()) {
        main *= split.mainFactors().contains(factor.name()) ? factor.levels().size() : 1;
      }
      int sub = treatments / main;
      comparisons.add(
          comparison(
              "levels of " + String.join(" and ", split.mainFactors()),
              ReplicationPlan.splitPlotWholePlots(main, sub),
              wanted));
      comparisons.add(
          comparison(
              "levels of " + String.join(" and ", split.subFactors()),
              ReplicationPlan.splitPlotSubplots(main, sub),
              wanted));
    } else if (plan.design() instanceof TrialDesign.LatinSquare) {
      comparisons.add(comparison("treatments", ReplicationPlan.latinSquares(treatments), wanted));
    } else if (plan.design() instanceof TrialDesign.CompleteBlocks) {
      comparisons.add(
          comparison("treatments", ReplicationPlan.randomisedBlocks(treatments), wanted));
    } else {
      comparisons.add(
          comparison("treatments", ReplicationPlan.completelyRandomised(treatments), wanted));
    }
    return new ReplicatesNeeded(plan, wanted, comparisons);
  }

  private static Comparison comparison(
      String between, ReplicationPlan design, WantedDifference wanted) {
    var needed =
        power(design, wanted)
            .replicatesFor(wanted.percent(), wanted.variationPercent(), wanted.power());
    return new Comparison(between, needed);
  }

  private static DifferencePower power(ReplicationPlan design, WantedDifference wanted) {
    return DifferencePower.of(design).withAlpha(wanted.level()).withSides(wanted.sides());
  }

  /**
   * The replicates with which each comparison has the wanted power.
   *
   * @return blocks, or replicates where there are none; for Latin squares a multiple of the order
   */
  public int replicates() {
    return comparisons.stream()
        .mapToInt(comparison -> comparison.needed().replicates())
        .max()
        .orElseThrow(() -> new IllegalStateException("a plan compares something"));
  }

  /**
   * The replicates with which, besides, each residual has the recommended 12 degrees of freedom.
   *
   * @return as many as {@link #replicates()} or more
   */
  public int replicatesWithEnoughDegrees() {
    int enough = replicates();
    for (var comparison : comparisons) {
      var design = comparison.needed().plan();
      while (design.errorDf(enough) < PlannedDegrees.RECOMMENDED_RESIDUAL) {
        enough += design.step();
      }
    }
    return enough;
  }

  /**
   * The answer in words.
   *
   * @return one sentence for each comparison
   */
  public String sentence() {
    var sentences = new ArrayList<String>();
    for (var comparison : comparisons) {
      var needed = comparison.needed();
      sentences.add(
          "To find "
              + wanted
              + " between two "
              + comparison.between()
              + ", the plan needs "
              + replicatesInWords(needed.replicates())
              + ": power "
              + Numbers.fixed(needed.power(), 3)
              + " with "
              + needed.errorDf()
              + " residual degrees of freedom.");
    }
    return String.join(" ", sentences);
  }

  private String replicatesInWords(int number) {
    if (plan.design() instanceof TrialDesign.LatinSquare) {
      int squares = number / plan.treatments().size();
      return squares + (squares == 1 ? " square" : " squares");
    }
    boolean free = plan.design() instanceof TrialDesign.CompletelyRandomised;
    return number + (free ? " replicates" : " blocks");
  }

  /**
   * The rule on residual degrees of freedom, held against the answer.
   *
   * @return one sentence
   */
  public String degreesNote() {
    int enough = replicatesWithEnoughDegrees();
    var rule =
        PlannedDegrees.RECOMMENDED_RESIDUAL
            + " residual degrees of freedom that trials of efficacy should have (EPPO PP 1/152,"
            + " value from memory)";
    return enough == replicates()
        ? "That leaves at least the " + rule + "."
        : "That leaves fewer than the " + rule + "; " + replicatesInWords(enough) + " do.";
  }

  @Override
  public Presentation presentation() {
    var page = Presentation.titled("Replicates needed for " + plan.name());
    page.paragraph(sentence()).paragraph(degreesNote());
    comparisons.forEach(comparison -> page.table(table(comparison)));
    return page.block(
            new Block.SourcesBlock(List.of(NoncentralT.source(), LayoutSources.EFFICACY_STANDARD)))
        .build();
  }

  private ResultTable table(Comparison comparison) {
    var design = comparison.needed().plan();
    var test = power(design, wanted);
    int last = comparison.needed().replicates() + MORE_ROWS * design.step();
    int first = Math.max(design.fewest(), last - (MOST_ROWS - 1) * design.step());
    var rows = new ArrayList<List<Cell>>();
    for (int number = first; number <= last; number += design.step()) {
      rows.add(
          List.of(
              Cell.text(replicatesInWords(number)),
              Cell.number(design.errorDf(number), 0),
              Cell.number(test.power(number, wanted.percent(), wanted.variationPercent()), 3),
              Cell.number(
                  test.smallestDifference(number, wanted.variationPercent(), wanted.power()), 1)));
    }
    var columns =
        List.of(
            ResultTable.Column.of("Replicates"),
            ResultTable.Column.of("Residual degrees of freedom"),
            ResultTable.Column.of("Power for " + Numbers.plain(wanted.percent()) + " %"),
            ResultTable.Column.of(
                "Smallest difference with power " + Numbers.plain(wanted.power()), "% of mean"));
    return ResultTable.of("Two " + comparison.between(), columns, rows);
  }

  @Override
  public String toString() {
    return sentence();
  }
}
