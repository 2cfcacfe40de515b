package agro.generation;

import java.util.Arrays;
import java.util.List;
import java.util.stream.DoubleStream;

/**
 * How the visits of one season see the flight curve: nodes on the degree-day scale, the weights of
 * the curve at the nodes of each visit, and the trap-nights that count.
 */
final class CatchWeights {

  /** Survival below this no longer counts. */
  private static final double DEAD = 1e-4;

  final double[] nodeDegreeDaysC;
  final int[][] node;
  final double[][] weight;
  final double[] nightsOpen;

  private CatchWeights(double[] nodeDegreeDaysC, int visits) {
    this.nodeDegreeDaysC = nodeDegreeDaysC;
    node = new int[visits][];
    weight = new double[visits][];
    nightsOpen = new double[visits];
  }

  /** Every night of a visit counts alike: the two ends of its interval are its nodes. */
  static CatchWeights ofEnds(List<TrapVisit> visits, double[] from, double[] to) {
    var nodes =
        DoubleStream.concat(DoubleStream.of(from), DoubleStream.of(to))
            .sorted()
            .distinct()
            .toArray();
    var weights = new CatchWeights(nodes, from.length);
    for (var v = 0; v < from.length; v++) {
      var visit = visits.get(v);
      var open = visit.nightsOpen() / visit.nights();
      weights.node[v] =
          new int[] {Arrays.binarySearch(nodes, from[v]), Arrays.binarySearch(nodes, to[v])};
      weights.weight[v] = new double[] {-open, open};
      weights.nightsOpen[v] = visit.nightsOpen();
    }
    return weights;
  }

  /**
   * Every night has a weight of its own.
   *
   * @param visits the visits
   * @param sums degree-days at the start of each day of the season and at the end of the last one
   * @param firstNight index of the first night of each visit
   * @param catchability how well a trap catches in each night of each visit, 0 or more
   * @param counts whether a night of a visit counts as trapping
   * @param survival share of the adults' catch that falls into the 1st, 2nd, ... night of their
   *     life, adding up to 1
   */
  static CatchWeights ofNights(
      List<TrapVisit> visits,
      double[] sums,
      int[] firstNight,
      double[][] catchability,
      boolean[][] counts,
      double[] survival) {
    var weights = new CatchWeights(sums.clone(), visits.size());
    for (var v = 0; v < visits.size(); v++) {
      var visit = visits.get(v);
      var open = visit.nightsOpen() / visit.nights();
      var atNode = new double[sums.length];
      var fit = 0;
      for (var night = 0; night < visit.nights(); night++) {
        if (counts[v][night]) {
          fit++;
          addNight(atNode, firstNight[v] + night, open * catchability[v][night], survival);
        }
      }
      weights.nightsOpen[v] = open * fit;
      weights.node[v] = nonZero(atNode);
      weights.weight[v] = Arrays.stream(weights.node[v]).mapToDouble(k -> atNode[k]).toArray();
    }
    return weights;
  }

  /**
   * Adults of an earlier day fly with the share of their life that falls into this night. What
   * emerged before the first day is taken to have emerged on it.
   */
  private static void addNight(double[] atNode, int night, double open, double[] survival) {
    for (var age = 0; age < survival.length; age++) {
      var day = night - age;
      if (day < 0) {
        break;
      }
      atNode[day + 1] += open * survival[age];
      atNode[day] -= day == 0 ? 0 : open * survival[age];
    }
  }

  private static int[] nonZero(double[] atNode) {
    var count = 0;
    var found = new int[atNode.length];
    for (var k = 0; k < atNode.length; k++) {
      if (atNode[k] != 0) {
        found[count++] = k;
      }
    }
    return Arrays.copyOf(found, count);
  }

  /** Shares of the catch by night of life until next to nothing is left, adding up to 1. */
  static double[] byNightOfLife(AdultLife life) {
    var share = new double[2000];
    var nights = 0;
    var sum = 0.0;
    while (nights < share.length && life.survival(nights) > DEAD) {
      share[nights] = life.survivalOverNight(nights);
      sum += share[nights++];
    }
    var total = sum;
    return Arrays.stream(share, 0, nights).map(each -> each / total).toArray();
  }
}
