package agro.sampling.sequential;

import agro.report.InputProblem;
import agro.report.Progress;
import agro.sampling.CountSample;
import agro.sampling.size.PrecisionStopLine;
import agro.stats.Bootstrap;
import agro.stats.RefitOutcome;
import agro.units.Numbers;
import agro.working.Presentable;
import agro.working.Presentation;
import java.util.List;
import java.util.SplittableRandom;

/**
 * A stop line for a precision, walked many times through the counts of a real field drawn anew:
 * which precision it achieves there.
 *
 * @param line the stop line
 * @param label field and day of the counts
 * @param mean mean of the counts
 * @param walks number of walks
 * @param meanUnits mean number of units until the stop
 * @param achievedError root of the mean square by which the means of the walks miss that of the
 *     counts, over the mean: what the line promises to be D
 * @param bias mean by which the means of the walks miss that of the counts, over the mean
 * @param shareEnded share of the walks that came to the greatest number of units before the line
 */
public record PrecisionValidation(
    PrecisionStopLine line,
    String label,
    double mean,
    int walks,
    double meanUnits,
    double achievedError,
    double bias,
    double shareEnded)
    implements Presentable {

  private static final int BLOCK = 100;
  private static final int WIDTH = 4;

  /**
   * Walks through the counts.
   *
   * @param line the stop line
   * @param counts counts of a field, with at least one animal
   * @param leastUnits units looked at in any case, 1 or more
   * @param mostUnits units after which a walk ends, not below the least
   * @param walks walks, rounded up to whole hundreds
   * @param seed start of all chance
   * @return the achieved precision
   * @throws InputProblem when there is no animal, or a number is out of range
   * @throws java.util.concurrent.CancellationException when the listener of this thread cancels
   */
  public static PrecisionValidation resample(
      PrecisionStopLine line,
      CountSample counts,
      int leastUnits,
      int mostUnits,
      int walks,
      long seed) {
    counts.requireAnimals("a precision");
    if (leastUnits < 1 || mostUnits < leastUnits || walks < 1) {
      throw InputProblem.of(walks + " walks of " + leastUnits + " to " + mostUnits + " units")
          .expected("1 or more walks and units, the least not above the most")
          .because("a walk needs a beginning and an end")
          .mend("take for example 1000 walks of 5 to 200 units");
    }
    var draws = CountDraws.of(counts);
    double mean = counts.mean();
    long[] stops = stops(line, leastUnits, mostUnits);
    int blocks = (walks + BLOCK - 1) / BLOCK;
    var progress = Progress.ofThread();
    var sums =
        Bootstrap.run(
            blocks,
            WIDTH,
            seed,
            (what, done, total) -> progress.tell("walks", done, total),
            () ->
                (random, values) -> {
                  for (int i = 0; i < BLOCK; i++) {
                    oneWalk(stops, draws, mean, random, values);
                  }
                  return RefitOutcome.GOOD;
                });
    double[] all = new double[WIDTH];
    for (int block = 0; block < blocks; block++) {
      for (int i = 0; i < WIDTH; i++) {
        all[i] += sums.value(block, i) / (blocks * BLOCK);
      }
    }
    return new PrecisionValidation(
        line,
        counts.label(),
        mean,
        blocks * BLOCK,
        all[0],
        Math.sqrt(all[1]) / mean,
        all[2] / mean,
        all[3]);
  }

  /** Total at which a walk stops after n units, at n − 1. */
  private static long[] stops(PrecisionStopLine line, int leastUnits, int mostUnits) {
    long[] stops = new long[mostUnits];
    for (int n = 1; n <= mostUnits; n++) {
      stops[n - 1] =
          n < leastUnits || n <= line.limit()
              ? Long.MAX_VALUE
              : Math.max(1, (long) Math.ceil(line.stopAt(n) - 1e-9));
    }
    return stops;
  }

  private static void oneWalk(
      long[] stops, CountDraws draws, double mean, SplittableRandom random, double[] sums) {
    long total = 0;
    for (int n = 1; n <= stops.length; n++) {
      total += draws.draw(random);
      boolean reached = total >= stops[n - 1];
      if (reached || n == stops.length) {
        double off = (double) total / n - mean;
        sums[0] += n;
        sums[1] += off * off;
        sums[2] += off;
        sums[3] += reached ? 0 : 1;
        return;
      }
    }
  }

  @Override
  public Presentation presentation() {
    return Presentation.titled("The precision that the stop line achieves")
        .fact("Counts", label + ", mean " + Numbers.significant(mean, 3))
        .fact("Promised", Numbers.plain(100 * line.relativeError()) + " % of the mean")
        .fact("Achieved", Numbers.fixed(100 * achievedError, 1) + " % of the mean")
        .fact("Bias", Numbers.fixed(100 * bias, 1) + " % of the mean")
        .fact("Mean units", Numbers.fixed(meanUnits, 1))
        .fact("Ended before the line", Numbers.fixed(100 * shareEnded, 1) + " % of the walks")
        .fact("Walks", Integer.toString(walks))
        .sources(List.of())
        .build();
  }
}
