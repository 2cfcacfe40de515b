package agro.trial.efficacy;

import agro.report.Progress;
import agro.stats.Bootstrap;
import agro.stats.BootstrapSample;
import agro.stats.RefitOutcome;
import java.util.ArrayList;
import java.util.List;
import org.hipparchus.distribution.continuous.NormalDistribution;

/** Limits from blocks drawn anew. */
final class BlockBootstrap {

  private static final int ENOUGH_BLOCKS = 8;
  private static final int FEWEST_REFITS = 20;

  private final RatioSample sample;
  private final BootstrapSample drawn;
  private final double level;

  private BlockBootstrap(RatioSample sample, BootstrapSample drawn, double level) {
    this.sample = sample;
    this.drawn = drawn;
    this.level = level;
  }

  static BlockBootstrap of(RatioSample sample, int replicates, long seed, double level) {
    var drawn =
        Bootstrap.run(
            replicates,
            2,
            seed,
            Progress.silent(),
            () ->
                (random, values) -> {
                  int[][] places = sample.draw(random);
                  values[0] = 100 * (1 - sample.drawnRatio(places[0], places[1]));
                  values[1] = sample.isPaired() ? sample.drawnMeanOfBlocks(places[0]) : Double.NaN;
                  return RefitOutcome.GOOD;
                });
    return new BlockBootstrap(sample, drawn, level);
  }

  List<EfficacyLimits> limits(boolean meanOfBlocks, double estimate) {
    int column = meanOfBlocks ? 1 : 0;
    double[] sorted = drawn.sorted(column);
    if (sorted.length < FEWEST_REFITS || !(sorted[sorted.length - 1] > sorted[0])) {
      String why =
          sorted.length < FEWEST_REFITS
              ? "too few draws of blocks have a value"
              : "every draw of blocks gives the same value, so there is no scatter to judge by";
      return List.of(
          EfficacyLimits.none(EfficacyInterval.BOOTSTRAP_PERCENTILE, why),
          EfficacyLimits.none(EfficacyInterval.BOOTSTRAP_BCA, why));
    }
    var plain = drawn.percentile(column, level);
    var limits = new ArrayList<EfficacyLimits>();
    limits.add(
        EfficacyLimits.of(
            EfficacyInterval.BOOTSTRAP_PERCENTILE, plain.low(), plain.high(), remark(column)));
    limits.add(accelerated(sorted, estimate, meanOfBlocks, column));
    return limits;
  }

  private EfficacyLimits accelerated(
      double[] sorted, double estimate, boolean meanOfBlocks, int column) {
    double below = 0;
    for (double value : sorted) {
      below += value < estimate ? 1 : value == estimate ? 0.5 : 0;
    }
    double acceleration = sample.acceleration(meanOfBlocks);
    if (below == 0 || below == sorted.length || !Double.isFinite(acceleration)) {
      return EfficacyLimits.none(
          EfficacyInterval.BOOTSTRAP_BCA,
          "leaving out one block leaves no value, or all draws lie on one side of the estimate");
    }
    var normal = new NormalDistribution();
    double bias = normal.inverseCumulativeProbability(below / sorted.length);
    double low = bias - CountLimits.normal(level);
    double high = bias + CountLimits.normal(level);
    return EfficacyLimits.of(
        EfficacyInterval.BOOTSTRAP_BCA,
        BootstrapSample.quantile(
            sorted, normal.cumulativeProbability(bias + low / (1 - acceleration * low))),
        BootstrapSample.quantile(
            sorted, normal.cumulativeProbability(bias + high / (1 - acceleration * high))),
        remark(column));
  }

  private String remark(int column) {
    var words = new StringBuilder();
    if (sample.size() < ENOUGH_BLOCKS) {
      words
          .append("too narrow with ")
          .append(sample.size())
          .append(sample.isPaired() ? " blocks" : " plots");
    }
    if (drawn.missing(column) > 0) {
      words
          .append(words.isEmpty() ? "" : "; ")
          .append(drawn.missing(column))
          .append(" of ")
          .append(drawn.size())
          .append(" draws without a value are left out");
    }
    return words.toString();
  }
}
