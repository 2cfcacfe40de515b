package agro.generation;

import java.util.List;

/**
 * The likelihood of counts given their means, and the size per open trap-night that fits them best,
 * by Newton's method on its logarithm. Parts of the likelihood that depend on the size alone are
 * kept, for the means change often.
 */
final class CatchSize {

  private static final double SMALLEST = Math.log(0.01);
  private static final double LARGEST = Math.log(2 * CatchFit.POISSON_SIZE);
  private static final int STEPS = 40;
  private static final double LONGEST_STEP = 1.5;
  private static final double ENOUGH = 1e-5;
  private static final double DIFFERENCE = 1e-3;

  private final List<CatchData> seasons;
  private final double[][] logWays;
  private double size;

  CatchSize(List<CatchData> seasons) {
    this.seasons = seasons;
    logWays = new double[seasons.size()][];
    for (var s = 0; s < logWays.length; s++) {
      logWays[s] = new double[seasons.get(s).visits()];
    }
  }

  void set(double sizePerNight) {
    size = sizePerNight;
    for (var s = 0; s < logWays.length; s++) {
      var data = seasons.get(s);
      for (var v = 0; v < data.visits(); v++) {
        logWays[s][v] = data.logWays(v, sizePerNight * data.nightsOpen[v]);
      }
    }
  }

  double logLikelihood(double[][] mean) {
    var sum = 0.0;
    for (var s = 0; s < logWays.length; s++) {
      var data = seasons.get(s);
      for (var v = 0; v < data.visits(); v++) {
        var visitSize = size * data.nightsOpen[v];
        sum +=
            data.full[v]
                ? logTail(data.count[v], mean[s][v], visitSize)
                : logWays[s][v] + NegativeBinomial.logOdds(data.count[v], mean[s][v], visitSize);
      }
    }
    return sum;
  }

  private static double logTail(int least, double mean, double size) {
    return Math.log(Math.max(1e-300, NegativeBinomial.chanceOfAtLeast(least, mean, size)));
  }

  /** First and second derivative of the log likelihood by the logarithm of the size. */
  double[] slopes(double[][] mean, double logSize) {
    var slopes = new double[2];
    var at = Math.exp(logSize);
    for (var s = 0; s < logWays.length; s++) {
      var data = seasons.get(s);
      for (var v = 0; v < data.visits(); v++) {
        var visitSize = at * data.nightsOpen[v];
        if (data.full[v]) {
          addTailSlopes(data.count[v], mean[s][v], visitSize, slopes);
        } else {
          NegativeBinomial.addSizeSlopes(data.count[v], mean[s][v], visitSize, slopes);
        }
      }
    }
    return slopes;
  }

  /** The tail has no closed derivative by the size; differences do for the few full traps. */
  private static void addTailSlopes(int least, double mean, double size, double[] slopes) {
    var middle = logTail(least, mean, size);
    var up = logTail(least, mean, size * Math.exp(DIFFERENCE));
    var down = logTail(least, mean, size * Math.exp(-DIFFERENCE));
    slopes[0] += (up - down) / (2 * DIFFERENCE);
    slopes[1] += (up - 2 * middle + down) / (DIFFERENCE * DIFFERENCE);
  }

  /** The best size for given means, which is set; the search starts from a size. */
  double best(double[][] mean, double start) {
    var logSize = Math.min(LARGEST, Math.max(SMALLEST, Math.log(start)));
    set(Math.exp(logSize));
    var value = logLikelihood(mean);
    for (var step = 0; step < STEPS; step++) {
      var slopes = slopes(mean, logSize);
      var move = slopes[1] < 0 ? -slopes[0] / slopes[1] : Math.signum(slopes[0]) * LONGEST_STEP;
      move = Math.max(-LONGEST_STEP, Math.min(LONGEST_STEP, move));
      var next = logSize;
      var better = Double.NEGATIVE_INFINITY;
      while (Math.abs(move) > ENOUGH) {
        next = Math.min(LARGEST, Math.max(SMALLEST, logSize + move));
        set(Math.exp(next));
        better = logLikelihood(mean);
        if (better >= value) {
          break;
        }
        move /= 2;
      }
      var moved = Math.abs(next - logSize);
      if (!(better >= value)) {
        set(Math.exp(logSize));
        break;
      }
      logSize = next;
      value = better;
      if (moved < ENOUGH) {
        break;
      }
    }
    return Math.exp(logSize);
  }
}
