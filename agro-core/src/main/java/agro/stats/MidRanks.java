package agro.stats;

import java.util.Arrays;
import java.util.Comparator;
import java.util.stream.IntStream;

/**
 * Ranks of values from the smallest to the largest, in which tied values share the mean of their
 * ranks.
 */
public final class MidRanks {

  private final double[] ranks;
  private final double tieSum;
  private final int tiedValues;

  private MidRanks(double[] ranks, double tieSum, int tiedValues) {
    this.ranks = ranks;
    this.tieSum = tieSum;
    this.tiedValues = tiedValues;
  }

  /**
   * Ranks values of which only equal ones are tied.
   *
   * @param values finite values
   * @return their ranks
   */
  public static MidRanks of(double... values) {
    return within(0, values);
  }

  /**
   * Ranks values that come from an arithmetic: neighbours that differ by rounding alone are tied.
   * Without it 1.3 - 1.1 and 1.1 - 0.9 would have two ranks.
   *
   * @param tolerance largest difference of neighbours in order that still counts as a tie
   * @param values finite values
   * @return their ranks
   */
  public static MidRanks within(double tolerance, double... values) {
    int n = values.length;
    int[] order =
        IntStream.range(0, n)
            .boxed()
            .sorted(Comparator.comparingDouble(i -> values[i]))
            .mapToInt(Integer::intValue)
            .toArray();
    double[] ranks = new double[n];
    double tieSum = 0;
    int tied = 0;
    int from = 0;
    while (from < n) {
      int to = from + 1;
      while (to < n && values[order[to]] - values[order[to - 1]] <= tolerance) {
        to++;
      }
      for (int i = from; i < to; i++) {
        ranks[order[i]] = (from + 1 + to) / 2.0;
      }
      double size = to - from;
      tieSum += size * size * size - size;
      tied += size > 1 ? to - from : 0;
      from = to;
    }
    return new MidRanks(ranks, tieSum, tied);
  }

  /**
   * The rank of one value.
   *
   * @param index place of the value as given, from 0
   * @return its rank, from 1
   */
  public double rank(int index) {
    return ranks[index];
  }

  /**
   * All ranks, in the order of the values.
   *
   * @return a copy
   */
  public double[] toArray() {
    return Arrays.copyOf(ranks, ranks.length);
  }

  /**
   * Sum of t³ - t over the runs of t tied values, which the corrections for ties need.
   *
   * @return 0 without ties
   */
  public double tieSum() {
    return tieSum;
  }

  /**
   * Number of values that share their rank with another.
   *
   * @return 0 without ties
   */
  public int tiedValues() {
    return tiedValues;
  }
}
