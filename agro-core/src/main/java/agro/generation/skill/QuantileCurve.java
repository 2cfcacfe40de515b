package agro.generation.skill;

import org.hipparchus.util.FastMath;

/** A distribution function through a few quantiles, straight between them. */
final class QuantileCurve {

  /** Corners of the function from left to right; equal places make a step. */
  private final double[] x;

  private final double[] share;
  private final double horizon;

  QuantileCurve(double[] probabilities, double[] quantiles, double chanceNot, double horizon) {
    if (probabilities.length != quantiles.length || quantiles.length == 0) {
      throw new IllegalArgumentException(
          probabilities.length + " probabilities for " + quantiles.length + " quantiles");
    }
    this.horizon = horizon;
    var finite = 0;
    for (var i = 0; i < quantiles.length; i++) {
      var rises =
          i == 0 || (probabilities[i] > probabilities[i - 1] && quantiles[i] >= quantiles[i - 1]);
      if (!rises || !(probabilities[i] > 0 && probabilities[i] < 1)) {
        throw new IllegalArgumentException("quantiles rise with their probabilities");
      }
      finite += Double.isFinite(quantiles[i]) ? 1 : 0;
    }
    x = new double[finite + 2];
    share = new double[finite + 2];
    x[0] = finite == 0 ? horizon : FastMath.min(quantiles[0], horizon);
    for (var i = 0; i < finite; i++) {
      x[i + 1] = FastMath.min(quantiles[i], horizon);
      share[i + 1] = probabilities[i];
    }
    x[finite + 1] = finite < quantiles.length ? horizon : x[finite];
    share[finite + 1] = FastMath.max(share[finite], 1 - chanceNot);
  }

  double score(double observed) {
    var y = FastMath.min(observed, horizon);
    var sum = FastMath.max(0, x[0] - y);
    for (var i = 1; i < x.length; i++) {
      var cut = FastMath.min(x[i], FastMath.max(x[i - 1], y));
      var atCut = at(i, cut);
      sum += squares(cut - x[i - 1], share[i - 1], atCut);
      sum += squares(x[i] - cut, atCut - 1, share[i] - 1);
    }
    var last = x[x.length - 1];
    var reached = share[x.length - 1];
    var cut = FastMath.max(last, y);
    return sum + (cut - last) * reached * reached + (horizon - cut) * (1 - reached) * (1 - reached);
  }

  private double at(int i, double place) {
    return x[i] == x[i - 1]
        ? share[i]
        : share[i - 1] + (share[i] - share[i - 1]) * (place - x[i - 1]) / (x[i] - x[i - 1]);
  }

  /** Integral of the square of a straight line from one value to another. */
  private static double squares(double length, double from, double to) {
    return length * (from * from + from * to + to * to) / 3;
  }
}
