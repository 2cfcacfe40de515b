package agro.sampling.sequential;

import agro.report.InputProblem;
import agro.report.Progress;
import agro.sampling.CountSample;
import agro.stats.Bootstrap;
import agro.stats.BootstrapSample;
import agro.stats.RefitOutcome;
import agro.working.Cell;
import agro.working.Presentable;
import agro.working.Presentation;
import agro.working.ResultTable;
import agro.working.ResultTable.Column;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.SplittableRandom;

/**
 * A plan walked many times: through invented fields of known means, or through the counts of a real
 * field drawn anew. Walks are dealt to the processors in blocks with seeds of their own, so that
 * the result does not depend on how many there are.
 *
 * @param plan the plan
 * @param walked what was walked through, in words
 * @param points what happened, one for each mean
 * @param walks walks for each mean
 * @param seed start of all chance
 */
public record PlanValidation(
    SequentialPlan plan, String walked, List<WalkedPoint> points, int walks, long seed)
    implements Presentable {

  private static final int BLOCK = 100;
  private static final int WIDTH = 6;
  private static final int MOST_UNITS = 1_000_000;

  /**
   * What happened at one mean.
   *
   * @param mean mean of the field
   * @param chanceLow share of the walks that called it low
   * @param chanceHigh share that called it high
   * @param chanceUndecided share without a decision at the end
   * @param meanUnits mean number of units
   * @param chanceError standard error of the share called low, from the number of walks
   * @param unitsError standard error of the mean number of units
   * @param achievedError root of the mean square by which the means of the walks miss that of the
   *     field, over the mean of the field: the precision that the walks achieve
   */
  public record WalkedPoint(
      double mean,
      double chanceLow,
      double chanceHigh,
      double chanceUndecided,
      double meanUnits,
      double chanceError,
      double unitsError,
      double achievedError) {}

  /** Makes the list immutable. */
  public PlanValidation {
    Objects.requireNonNull(plan, "plan");
    points = List.copyOf(points);
  }

  /**
   * Walks through invented fields.
   *
   * @param plan the plan
   * @param family distribution of the counts in the fields
   * @param means mean counts for each unit
   * @param walks walks for each mean, 1 or more; rounded up to whole hundreds
   * @param seed start of all chance
   * @return what happened
   * @throws InputProblem when a mean is not possible in the family or there is no walk
   * @throws java.util.concurrent.CancellationException when the listener of this thread cancels
   */
  public static PlanValidation simulate(
      SequentialPlan plan, CountFamily family, List<Double> means, int walks, long seed) {
    var points = new ArrayList<WalkedPoint>();
    for (int i = 0; i < means.size(); i++) {
      double mean = means.get(i);
      if (!family.allows(mean)) {
        throw InputProblem.of("a mean of " + mean)
            .expected("a mean that is possible for " + family.words())
            .because("no field has such counts")
            .mend("ask for means above 0, and below 1 for shares");
      }
      var draws = CountDraws.of(family, mean);
      points.add(walk(plan, draws, mean, walks, seed + i, processors()));
    }
    return new PlanValidation(
        plan, "invented fields, " + family.words(), points, whole(walks), seed);
  }

  /**
   * Walks through the counts of a real field, drawn with replacement.
   *
   * @param plan the plan
   * @param counts the counts
   * @param walks walks, 1 or more; rounded up to whole hundreds
   * @param seed start of all chance
   * @return what happened, with one point at the mean of the counts
   * @throws InputProblem when there is no walk
   * @throws java.util.concurrent.CancellationException when the listener of this thread cancels
   */
  public static PlanValidation resample(
      SequentialPlan plan, CountSample counts, int walks, long seed) {
    return resample(plan, counts, walks, seed, processors());
  }

  /** On a given number of threads, which changes nothing but the time it takes. */
  static PlanValidation resample(
      SequentialPlan plan, CountSample counts, int walks, long seed, int threads) {
    var point = walk(plan, CountDraws.of(counts), counts.mean(), walks, seed, threads);
    var walked = counts.size() + " counts drawn anew, " + counts.label();
    return new PlanValidation(plan, walked, List.of(point), whole(walks), seed);
  }

  private static int whole(int walks) {
    return (walks + BLOCK - 1) / BLOCK * BLOCK;
  }

  private static int processors() {
    return Runtime.getRuntime().availableProcessors();
  }

  private static WalkedPoint walk(
      SequentialPlan plan, CountDraws draws, double mean, int walks, long seed, int threads) {
    if (walks < 1) {
      throw InputProblem.of(walks + " walks")
          .expected("1 or more")
          .because("chances are shares of the walks")
          .mend("take some thousands");
    }
    var progress = Progress.ofThread();
    int blocks = whole(walks) / BLOCK;
    var sums =
        Bootstrap.run(
            blocks,
            WIDTH,
            seed,
            (what, done, total) -> progress.tell("walks", done, total),
            () -> {
              var table = new StopTable(plan);
              return (random, values) -> {
                for (int i = 0; i < BLOCK; i++) {
                  oneWalk(plan, table, draws, mean, random, values);
                }
                return RefitOutcome.GOOD;
              };
            },
            threads);
    return point(sums, mean, blocks * BLOCK);
  }

  private static void oneWalk(
      SequentialPlan plan,
      StopTable table,
      CountDraws draws,
      double mean,
      SplittableRandom random,
      double[] sums) {
    int most = plan.mostUnits().orElse(MOST_UNITS);
    long total = 0;
    for (int n = 1; n <= most; n++) {
      total += draws.draw(random);
      boolean low = total <= table.lastLow(n);
      boolean high = total >= table.firstHigh(n);
      if (n == MOST_UNITS) {
        throw InputProblem.of("a walk that still goes on after " + MOST_UNITS + " units")
            .expected("a plan that comes to an end")
            .because("it would never be done")
            .mend("set the means further apart, or end the plan with truncated");
      }
      if (low || high || n == most) {
        var called = low ? FieldClass.LOW : high ? FieldClass.HIGH : plan.decide(n, total);
        add(sums, called, n, (double) total / n - mean);
        return;
      }
    }
  }

  private static void add(double[] sums, FieldClass called, int units, double off) {
    switch (called) {
      case LOW -> sums[0]++;
      case HIGH -> sums[1]++;
      default -> sums[2]++;
    }
    sums[3] += units;
    sums[4] += (double) units * units;
    sums[5] += off * off;
  }

  private static WalkedPoint point(BootstrapSample blocks, double mean, int walks) {
    double[] sums = new double[WIDTH];
    for (int block = 0; block < blocks.size(); block++) {
      for (int i = 0; i < WIDTH; i++) {
        sums[i] += blocks.value(block, i);
      }
    }
    double low = sums[0] / walks;
    double units = sums[3] / walks;
    double variance = Math.max(0, sums[4] / walks - units * units);
    return new WalkedPoint(
        mean,
        low,
        sums[1] / walks,
        sums[2] / walks,
        units,
        Math.sqrt(low * (1 - low) / walks),
        Math.sqrt(variance / walks),
        Math.sqrt(sums[5] / walks) / mean);
  }

  @Override
  public Presentation presentation() {
    var rows = new ArrayList<List<Cell>>();
    for (var point : points) {
      rows.add(
          List.of(
              Cell.number(point.mean(), 3),
              Cell.number(point.chanceLow(), 3),
              Cell.number(point.chanceHigh(), 3),
              Cell.number(point.chanceUndecided(), 3),
              Cell.number(point.meanUnits(), 1),
              Cell.number(point.achievedError(), 3)));
    }
    return Presentation.titled("The plan walked " + walks + " times")
        .fact("Plan", plan.bounds().words())
        .fact("Walked through", walked)
        .fact("Seed", Long.toString(seed))
        .table(
            ResultTable.of(
                "What happened",
                List.of(
                    Column.of("Mean"),
                    Column.of("Called low"),
                    Column.of("Called high"),
                    Column.of("Undecided"),
                    Column.of("Mean units"),
                    Column.of("Error of the walks' means over the mean")),
                rows))
        .paragraph(
            "Walks made from one field repeat its counts: they tell how the plan works there, not how"
                + " it works in other fields.")
        .sources(List.of(plan.bounds().source()))
        .build();
  }
}
