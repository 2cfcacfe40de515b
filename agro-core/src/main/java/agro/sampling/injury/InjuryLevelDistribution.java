package agro.sampling.injury;

import agro.report.InputProblem;
import agro.sampling.CountSample;
import agro.stats.BootstrapSample;
import agro.units.Numbers;
import agro.working.Cell;
import agro.working.Presentable;
import agro.working.Presentation;
import agro.working.ResultTable;
import agro.working.ResultTable.Column;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;

/** How an injury level is spread when its terms are uncertain. */
public final class InjuryLevelDistribution implements Presentable {

  private static final long DENSITY_STREAM = 0x5DEECE66DL;

  private final UncertainInjuryLevel terms;
  private final double[] cost;
  private final double[] savedPerPest;
  private final double[] sorted;

  InjuryLevelDistribution(UncertainInjuryLevel terms, double[] cost, double[] savedPerPest) {
    this.terms = terms;
    this.cost = cost;
    this.savedPerPest = savedPerPest;
    sorted = new double[cost.length];
    for (int i = 0; i < sorted.length; i++) {
      sorted[i] = cost[i] / savedPerPest[i];
    }
    Arrays.sort(sorted);
  }

  /**
   * The uncertain terms.
   *
   * @return terms with number and seed of the draws
   */
  public UncertainInjuryLevel terms() {
    return terms;
  }

  /**
   * What the level is stated in.
   *
   * @return pests or pest-days for each unit
   */
  public PestMeasure measure() {
    return terms.best().measure();
  }

  /**
   * The level below which a share of the draws lies.
   *
   * @param share 0 to 1
   * @return pests or pest-days
   */
  public double quantile(double share) {
    if (!(share >= 0 && share <= 1)) {
      throw InputProblem.of("a share of " + share)
          .expected("0 to 1")
          .because("a quantile is asked for by its share")
          .mend("divide per cent by 100");
    }
    return BootstrapSample.quantile(sorted, share);
  }

  /**
   * Chance that treating pays at a density that is known.
   *
   * @param density pests or pest-days for each unit, 0 or more
   * @return share of the draws whose level lies below the density
   */
  public double chanceOfPaying(double density) {
    int low = 0;
    int high = sorted.length;
    while (low < high) {
      int middle = (low + high) >>> 1;
      if (sorted[middle] < density) {
        low = middle + 1;
      } else {
        high = middle;
      }
    }
    return (double) low / sorted.length;
  }

  /**
   * Whether treating pays where so many were counted, with the error of the sample.
   *
   * @param counts counts in the unit of the level
   * @return chance, gain and verdict
   * @throws InputProblem when the counts belong to another unit or the level is one of pest-days
   */
  public TreatmentDecision decide(CountSample counts) {
    measure().unit().requireSame(counts.unit(), "a count and its injury level");
    if (measure().kind() == PestMeasure.Kind.PEST_DAYS) {
      throw InputProblem.of("a count of one day against a level in " + measure().words())
          .expected("pest-days")
          .because("pests of one day and pests summed over days are two quantities")
          .mend("add up InsectDays, and hand in their total as a density");
    }
    return decide(UncertainNumber.densityOf(counts));
  }

  /**
   * Whether treating pays at a density with its own error.
   *
   * @param density pests or pest-days for each unit
   * @return chance, gain and verdict
   * @throws InputProblem when more than one value in twenty of the density is below zero
   */
  public TreatmentDecision decide(UncertainNumber density) {
    if (density.chanceUpTo(-Double.MIN_VALUE) > 0.05) {
      throw InputProblem.of("a density of " + density.words())
          .expected("a density of 0 or more")
          .because("there are never fewer than no pests")
          .mend("take densityOf(counts), which never goes below zero");
    }
    int n = cost.length;
    var random = new SplittableRandom(terms.seed() ^ DENSITY_STREAM);
    double[] pests =
        UncertainInjuryLevel.drawn(density, -Double.MIN_VALUE, Double.POSITIVE_INFINITY, n, random);
    int paying = 0;
    double gains = 0;
    double losses = 0;
    for (int i = 0; i < n; i++) {
      double gain = savedPerPest[i] * pests[i] - cost[i];
      if (gain > 0) {
        paying++;
        gains += gain;
      } else {
        losses -= gain;
      }
    }
    return new TreatmentDecision(
        this, density, (double) paying / n, gains / n, losses / n, 0.1, 0.9);
  }

  @Override
  public Presentation presentation() {
    var rows = new ArrayList<List<Cell>>();
    for (double share : new double[] {0.05, 0.1, 0.25, 0.5, 0.75, 0.9, 0.95}) {
      rows.add(
          List.of(Cell.number(100 * share, 0), Cell.text(Numbers.significant(quantile(share), 4))));
    }
    return Presentation.titled("Injury level with its uncertainty")
        .fact("Best values", Numbers.significant(terms.best().level(), 4) + " " + measure().words())
        .fact("Cost per hectare", terms.costPerHectare().words())
        .fact("Value", terms.value().words())
        .fact("Loss for each pest", terms.lossPerPest().words())
        .fact("Share prevented", terms.sharePrevented().words())
        .fact("Threshold over injury level", terms.thresholdRatio().words())
        .table(
            ResultTable.of(
                "Chance that treating pays at a density",
                List.of(Column.of("Chance", "%"), Column.of("Density", measure().words())),
                rows))
        .paragraph(
            terms.draws()
                + " draws by a Latin hypercube with seed "
                + terms.seed()
                + "; the terms vary apart from one another.")
        .build();
  }
}
