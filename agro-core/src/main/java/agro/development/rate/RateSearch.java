package agro.development.rate;

import agro.stats.LeastSquaresSolution;
import agro.stats.LevenbergMarquardt;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

/**
 * Least squares from many starts: points spread evenly over a box, brought to the height of the
 * data, of which the best ones are followed downhill.
 */
final class RateSearch {

  private static final int DRAWN_PER_PARAMETER = 60;
  private static final int FOLLOWED_PER_PARAMETER = 8;
  private static final int[] PRIMES = {2, 3, 5, 7, 11, 13, 17};
  private static final double SAME = 1e-6;

  final RateEquation equation;
  final SearchBox box;
  final PointResiduals points;
  final double[] low;
  final double[] high;
  int followed;
  int atBest;
  int iterations;

  RateSearch(RateFitting fitting, List<RatePoint> points) {
    equation = fitting.equation();
    this.points = new PointResiduals(equation, fitting.constants(), points);
    var span = DataSpan.of(this.points.celsius, this.points.rates, fitting.constants());
    box = equation.box(span);
    low = box.low.clone();
    high = box.high.clone();
    fitting
        .fixed()
        .forEach(
            (place, value) -> {
              low[place] = value;
              high[place] = value;
            });
  }

  LevenbergMarquardt downhill() {
    return LevenbergMarquardt.within(points.observations(), low, high);
  }

  LeastSquaresSolution best(long seed, List<double[]> given) {
    int k = low.length;
    var starts = drawn(new SplittableRandom(seed), DRAWN_PER_PARAMETER * k);
    var kept = new ArrayList<>(given);
    kept.addAll(starts.subList(0, Math.min(starts.size(), FOLLOWED_PER_PARAMETER * k)));
    var solutions = new ArrayList<LeastSquaresSolution>();
    LeastSquaresSolution best = null;
    var search = downhill();
    for (double[] start : kept) {
      var found = search.minimise(points, start);
      iterations += found.iterations();
      solutions.add(found);
      if (best == null || found.sumOfSquares() < best.sumOfSquares()) {
        best = found;
      }
    }
    double least = java.util.Objects.requireNonNull(best).sumOfSquares();
    followed = solutions.size();
    for (var found : solutions) {
      atBest += found.sumOfSquares() <= least * (1 + SAME) + 1e-28 ? 1 : 0;
    }
    return best;
  }

  /** Starts in the order of their sums of squares. */
  private List<double[]> drawn(SplittableRandom random, int count) {
    int k = low.length;
    double[] shift = new double[k];
    for (int j = 0; j < k; j++) {
      shift[j] = random.nextDouble();
    }
    double[][] starts = new double[count][];
    double[] sums = new double[count];
    for (int i = 0; i < count; i++) {
      double[] q = new double[k];
      for (int j = 0; j < k; j++) {
        double share = (radicalInverse(i + 1, PRIMES[j]) + shift[j]) % 1;
        q[j] = box.startLow[j] + share * (box.startHigh[j] - box.startLow[j]);
      }
      starts[i] = bounded(scaled(q));
      double sum = points.sumOfSquares(starts[i]);
      sums[i] = Double.isNaN(sum) ? Double.POSITIVE_INFINITY : sum;
      for (int at = i; at > 0 && sums[at] < sums[at - 1]; at--) {
        double[] start = starts[at];
        starts[at] = starts[at - 1];
        starts[at - 1] = start;
        double swapped = sums[at];
        sums[at] = sums[at - 1];
        sums[at - 1] = swapped;
      }
    }
    return List.of(starts);
  }

  /** Halton's sequence: Halton 1960, Numerische Mathematik 2:84-90 (from memory). */
  private static double radicalInverse(int index, int base) {
    double inverse = 0;
    double digit = 1.0 / base;
    for (int left = index; left > 0; left /= base) {
      inverse += (left % base) * digit;
      digit /= base;
    }
    return inverse;
  }

  private double[] bounded(double[] q) {
    for (int j = 0; j < q.length; j++) {
      q[j] = Math.min(high[j], Math.max(low[j], q[j]));
    }
    return q;
  }

  private double[] scaled(double[] q) {
    bounded(q);
    double observed = 0;
    double squares = 0;
    for (int i = 0; i < points.celsius.length; i++) {
      double fitted = points.fitted(i, q);
      double weight = points.root[i] * points.root[i];
      observed += weight * fitted * points.rates[i];
      squares += weight * fitted * fitted;
    }
    double factor = observed / squares;
    if (factor > 0 && Double.isFinite(factor)) {
      equation.rescale(q, factor);
    }
    return q;
  }
}
