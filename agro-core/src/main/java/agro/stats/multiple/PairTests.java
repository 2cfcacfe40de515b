package agro.stats.multiple;

import agro.stats.ConfidenceLimits;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;

/** Tests of chosen pairs of means, common to comparisons of all pairs and with a control. */
final class PairTests {

  private final ComparedMeans means;
  private final Alternative alternative;
  private final StudentT student;
  private final List<int[]> pairs = new ArrayList<>();
  private final List<Double> ts = new ArrayList<>();

  PairTests(ComparedMeans means, Alternative alternative) {
    this.means = means;
    this.alternative = alternative;
    this.student = new StudentT(means.degreesOfFreedom());
  }

  /** Adds the difference first minus second. */
  void add(int first, int second) {
    pairs.add(new int[] {first, second});
    ts.add((means.mean(first) - means.mean(second)) / error(first, second));
  }

  private double error(int first, int second) {
    return Math.sqrt(means.differenceVariance(first, second));
  }

  /** Plain p-values in the order of the pairs. */
  double[] rawP() {
    return ts.stream().mapToDouble(t -> student.tail(t, alternative)).toArray();
  }

  /** P-values from a distribution of the largest t of all. */
  double[] adjustedBy(DoubleUnaryOperator above) {
    return ts.stream().mapToDouble(t -> above.applyAsDouble(directed(t))).toArray();
  }

  private double directed(double t) {
    return switch (alternative) {
      case TWO_SIDED -> Math.abs(t);
      case LARGER -> t;
      case SMALLER -> -t;
    };
  }

  /** The t that the largest of all has to reach, for methods that adjust each test by itself. */
  double critical(ComparisonMethod method, double level) {
    int tests = pairs.size();
    double each =
        switch (method) {
          case BONFERRONI -> level / tests;
          case SIDAK -> -Math.expm1(Math.log1p(-level) / tests);
          default -> level;
        };
    return student.critical(each, alternative);
  }

  /** Puts the tests together; the critical t is NaN for methods without limits. */
  List<ComparedPair> result(double[] rawP, double[] adjustedP, double critical, double level) {
    var result = new ArrayList<ComparedPair>();
    for (int each = 0; each < adjustedP.length; each++) {
      int first = pairs.get(each)[0];
      int second = pairs.get(each)[1];
      double difference = means.mean(first) - means.mean(second);
      double error = error(first, second);
      result.add(
          new ComparedPair(
              means.labels().get(first),
              means.labels().get(second),
              difference,
              error,
              ts.get(each),
              rawP[each],
              adjustedP[each],
              limits(difference, critical * error),
              adjustedP[each] <= level));
    }
    return result;
  }

  private Optional<ConfidenceLimits> limits(double difference, double half) {
    if (Double.isNaN(half)) {
      return Optional.empty();
    }
    double low = alternative == Alternative.SMALLER ? Double.NEGATIVE_INFINITY : difference - half;
    double high = alternative == Alternative.LARGER ? Double.POSITIVE_INFINITY : difference + half;
    return Optional.of(new ConfidenceLimits(low, high));
  }
}
