package agro.generation;

import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import java.util.stream.IntStream;

/**
 * Correlation of the Pearson residuals of running visits to the same trap.
 *
 * <p>Only visits of which one adult or more is expected enter: between the flights a residual says
 * nothing of activity. A fit makes the residuals of neighbours go against each other, for whatever
 * one lies above the curve the next has to lie below; with residuals {@code (I - H) e} of
 * independent errors the correlation is {@code sum (I - H)[t, t-1] / sum (I - H)[t, t]} with the
 * hat matrix H, and that is taken off.
 */
final class ResidualCorrelation {

  private static final double FLYING = 1;
  private static final int LEAST_VISITS = 5;

  private final CatchFit fit;
  private final double[][] covariance;

  ResidualCorrelation(CatchFit fit) {
    this.fit = fit;
    covariance = fit.covariance();
  }

  /** The correlation of one season; NaN when too few visits belong to a flight. */
  double of(int season) {
    var means = fit.means(season);
    var flying = IntStream.range(0, means.length).filter(v -> means[v] >= FLYING).toArray();
    if (flying.length < LEAST_VISITS) {
      return Double.NaN;
    }
    var all = fit.residuals(season);
    var book = fit.model().seasons.get(season).trap;
    var trap = Arrays.stream(flying).mapToObj(v -> book[v]).toArray(String[]::new);
    var residuals = Arrays.stream(flying).mapToDouble(v -> all[v]).toArray();
    var correlation = lagOne(trap, residuals) - ofIndependent(season, flying, trap);
    return Math.max(-1, Math.min(1, correlation));
  }

  private double ofIndependent(int season, int[] flying, String[] trap) {
    var slopes = fit.standardSlopes(season);
    var columns = fit.model().columnsOf(season);
    var before = new HashMap<String, Integer>();
    var neighbours = 0.0;
    var own = 0.0;
    for (var i = 0; i < flying.length; i++) {
      own += 1 - hat(slopes[flying[i]], slopes[flying[i]], columns);
      var last = before.put(trap[i], flying[i]);
      neighbours -= last == null ? 0 : hat(slopes[flying[i]], slopes[last], columns);
    }
    return own > 0 ? neighbours / own : 0;
  }

  private double hat(double[] a, double[] b, int[] columns) {
    var sum = 0.0;
    for (var i = 0; i < columns.length; i++) {
      for (var j = 0; j < columns.length; j++) {
        sum += a[i] * covariance[columns[i]][columns[j]] * b[j];
      }
    }
    return sum;
  }

  /** Correlation of running residuals as they are, trap by trap. */
  static double lagOne(String[] trap, double[] residuals) {
    var product = 0.0;
    var square = 0.0;
    var mean = Arrays.stream(residuals).average().orElse(0);
    Map<String, Double> before = new HashMap<>();
    for (var i = 0; i < residuals.length; i++) {
      var distance = residuals[i] - mean;
      square += distance * distance;
      var last = before.put(trap[i], distance);
      product += last == null ? 0 : distance * last;
    }
    return square == 0 ? Double.NaN : product / square;
  }
}
