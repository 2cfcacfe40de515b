package agro.generation;

import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;

/**
 * The usable visits of one season as plain arrays, one element a visit: degree-days at its start
 * and end, traps open on average, open trap-nights, and the count; the visits themselves are kept
 * for what a reader is told.
 *
 * <p>The share of a flight that a visit sees is a weighted sum of the flight curve at a few nodes
 * on the degree-day scale. For an ordinary visit these are its two ends with the weights minus and
 * plus the traps open; the fading of lures, nights on which nothing flies and the life of adults
 * make more nodes and other weights.
 */
final class CatchData {

  final int year;
  final String site;
  final List<TrapVisit> book;
  final String[] trap;
  final double[] fromDegreeDaysC;
  final double[] toDegreeDaysC;
  final double[] trapsOpen;
  final double[] nightsOpen;
  final int[] count;
  final boolean[] full;

  /** Visits with a catch. */
  final int[] withCatch;

  /** Nodes of all visits in rising order. */
  final double[] nodeDegreeDaysC;

  /** Nodes of each visit. */
  private final int[][] node;

  /** Weights of the curve at these nodes. */
  private final double[][] weight;

  private final double[] logFactorial;

  /**
   * Takes visits whose interval lies on the degree-day scale of the season.
   *
   * @param year names the season
   * @param visits visits that tell something: the trap had not failed and was open
   * @param fromDegreeDaysC degree-days at the start of each visit's interval
   * @param toDegreeDaysC degree-days at its end
   */
  CatchData(int year, List<TrapVisit> visits, double[] fromDegreeDaysC, double[] toDegreeDaysC) {
    this(
        year,
        "",
        visits,
        fromDegreeDaysC,
        toDegreeDaysC,
        CatchWeights.ofEnds(visits, fromDegreeDaysC, toDegreeDaysC));
  }

  CatchData(
      int year,
      String site,
      List<TrapVisit> visits,
      double[] fromDegreeDaysC,
      double[] toDegreeDaysC,
      CatchWeights weights) {
    this.year = year;
    this.site = site;
    book = List.copyOf(visits);
    this.fromDegreeDaysC = fromDegreeDaysC.clone();
    this.toDegreeDaysC = toDegreeDaysC.clone();
    trap = visits.stream().map(TrapVisit::trap).toArray(String[]::new);
    trapsOpen = new double[trap.length];
    nightsOpen = weights.nightsOpen;
    count = visits.stream().mapToInt(TrapVisit::count).toArray();
    full = new boolean[trap.length];
    for (var i = 0; i < trap.length; i++) {
      trapsOpen[i] = nightsOpen[i] / visits.get(i).nights();
      full[i] = visits.get(i).state() == TrapState.FULL;
    }
    nodeDegreeDaysC = weights.nodeDegreeDaysC;
    node = weights.node;
    weight = weights.weight;
    logFactorial = logFactorials(count);
    withCatch = withCatch(count);
  }

  private CatchData(CatchData other, int[] count) {
    year = other.year;
    site = other.site;
    book = other.book;
    trap = other.trap;
    fromDegreeDaysC = other.fromDegreeDaysC;
    toDegreeDaysC = other.toDegreeDaysC;
    trapsOpen = other.trapsOpen;
    nightsOpen = other.nightsOpen;
    this.count = count.clone();
    full = new boolean[count.length];
    nodeDegreeDaysC = other.nodeDegreeDaysC;
    node = other.node;
    weight = other.weight;
    logFactorial = logFactorials(count);
    withCatch = withCatch(count);
  }

  private static int[] withCatch(int[] count) {
    return IntStream.range(0, count.length).filter(v -> count[v] > 0).toArray();
  }

  private static double[] logFactorials(int[] count) {
    var logs = new double[count.length];
    for (var i = 0; i < logs.length; i++) {
      logs[i] = NegativeBinomial.logGamma(count[i] + 1.0);
    }
    return logs;
  }

  /** The same visits with other counts, of which none filled its trap. */
  CatchData withCounts(int[] other) {
    return new CatchData(this, other);
  }

  /** Logarithm of the number of ways to a visit's count, given the size of its trap-nights. */
  double logWays(int visit, double visitSize) {
    var y = count[visit];
    return y == 0
        ? 0
        : NegativeBinomial.logGamma(y + visitSize)
            - NegativeBinomial.logGamma(visitSize)
            - logFactorial[visit];
  }

  /** Weighted sum of values at the nodes of a visit. */
  double at(int visit, double[] valueAtNode) {
    var nodes = node[visit];
    var weights = weight[visit];
    var sum = 0.0;
    for (var k = 0; k < nodes.length; k++) {
      sum += weights[k] * valueAtNode[nodes[k]];
    }
    return sum;
  }

  /** Shares of a flight that the visits saw, times the traps open. */
  double[] shares(FlightCurve curve, double median, double scale) {
    var cumulative = new double[nodeDegreeDaysC.length];
    for (var k = 0; k < cumulative.length; k++) {
      cumulative[k] = curve.cumulative((nodeDegreeDaysC[k] - median) / scale);
    }
    var shares = new double[visits()];
    for (var v = 0; v < shares.length; v++) {
      shares[v] = at(v, cumulative);
    }
    return shares;
  }

  int visits() {
    return count.length;
  }

  long totalCatch() {
    var total = 0L;
    for (var caught : count) {
      total += caught;
    }
    return total;
  }

  /** Degree-days at which the first trap was set. */
  double firstDegreeDaysC() {
    return DoubleStream.of(fromDegreeDaysC).min().orElse(0);
  }

  double lastDegreeDaysC() {
    return DoubleStream.of(toDegreeDaysC).max().orElse(0);
  }

  /** Degree-days at the start of the first visit with a catch, or NaN when nothing was caught. */
  double firstCatchDegreeDaysC() {
    var first = Double.NaN;
    for (var i = 0; i < count.length; i++) {
      if (count[i] > 0 && !(fromDegreeDaysC[i] >= first)) {
        first = fromDegreeDaysC[i];
      }
    }
    return first;
  }
}
