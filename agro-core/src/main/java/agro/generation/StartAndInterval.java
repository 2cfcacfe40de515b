package agro.generation;

import org.hipparchus.distribution.continuous.NormalDistribution;
import org.hipparchus.distribution.continuous.TDistribution;
import org.hipparchus.util.FastMath;

/**
 * How start and interval of a new season hang together: a normal copula over their t distributions.
 * Each alone keeps its distribution, and without a correlation the two are independent.
 */
final class StartAndInterval {

  private static final double FARTHEST = 1e-12;

  private final double correlation;
  private final double[] startScores;
  private final double[] intervalScores;

  StartAndInterval(NewSeasonPrior prior, double[] starts, double[] intervals) {
    var joined = prior.start != null && prior.startKnown.isEmpty();
    correlation = joined ? prior.correlation : 0;
    startScores = correlation == 0 ? new double[0] : scores(prior.start, starts);
    intervalScores = correlation == 0 ? new double[0] : scores(prior.interval, intervals);
  }

  private static double[] scores(NewSeasonPrior.Location location, double[] values) {
    var t = new TDistribution(location.degreesOfFreedom());
    var normal = new NormalDistribution();
    var scores = new double[values.length];
    for (var i = 0; i < scores.length; i++) {
      var below = t.cumulativeProbability((values[i] - location.mean()) / location.scale());
      scores[i] =
          normal.inverseCumulativeProbability(
              FastMath.max(FARTHEST, FastMath.min(1 - FARTHEST, below)));
    }
    return scores;
  }

  /** Logarithm of the density of a pair over that of independent ones. */
  double logDensity(int start, int interval) {
    if (correlation == 0) {
      return 0;
    }
    var a = startScores[start];
    var b = intervalScores[interval];
    var r = correlation;
    var rest = 1 - r * r;
    return -0.5 * FastMath.log(rest) - (r * r * (a * a + b * b) - 2 * r * a * b) / (2 * rest);
  }
}
