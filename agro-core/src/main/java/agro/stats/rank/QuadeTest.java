package agro.stats.rank;

import agro.report.InputProblem;
import agro.source.Reference;
import agro.stats.BlockedValues;
import agro.stats.MidRanks;
import agro.stats.TestSentence;
import agro.stats.UpperTail;
import java.util.Arrays;

/**
 * Quade's test of 1979: ranks within blocks, in which blocks with a wide range of values weigh
 * more. Often sees more than Friedman's test with up to four treatments.
 *
 * @param f statistic; infinite when the weighted ranks of all blocks agree
 * @param df1 degrees of freedom above the line
 * @param df2 degrees of freedom below the line
 * @param pValue chance of such a ratio or a larger one when treatments do not differ, by the F
 *     approximation; where all blocks agree, the chance of that: the number of orders to the power
 *     1 - blocks
 */
public record QuadeTest(double f, int df1, int df2, double pValue) {

  private static final double ROUNDING = 1e-12;

  /**
   * Tests whether treatments differ within blocks.
   *
   * @param table one value for each treatment in each block
   * @return the result
   * @throws InputProblem if a plot is missing, or all values of every block are equal
   */
  public static QuadeTest test(BlockedValues table) {
    table.requireComplete("use the test of Skillings and Mack, which takes missing plots");
    int k = table.treatments().size();
    int b = table.blocks().size();
    double[] ranges = new double[b];
    double largest = 0;
    for (int block = 0; block < b; block++) {
      var figures = Arrays.stream(table.block(block)).summaryStatistics();
      ranges[block] = figures.getMax() - figures.getMin();
      largest = Math.max(largest, Math.max(Math.abs(figures.getMax()), Math.abs(figures.getMin())));
    }
    if (Arrays.stream(ranges).allMatch(range -> range == 0)) {
      throw InputProblem.of("All values are equal within every block")
          .expected("values that differ within at least one block")
          .because("equal values have one rank, and nothing is left to compare")
          .mend("say in words that no difference was seen");
    }
    var weights = MidRanks.within(ROUNDING * largest, ranges);
    double[] sums = new double[k];
    double all = 0;
    for (int block = 0; block < b; block++) {
      var ranks = MidRanks.of(table.block(block));
      for (int i = 0; i < k; i++) {
        double score = weights.rank(block) * (ranks.rank(i) - (k + 1) / 2.0);
        sums[i] += score;
        all += score * score;
      }
    }
    double between = Arrays.stream(sums).map(sum -> sum * sum).sum() / b;
    boolean agreed = all - between <= ROUNDING * all;
    double f = agreed ? Double.POSITIVE_INFINITY : (b - 1) * between / (all - between);
    int df2 = (b - 1) * (k - 1);
    double orders = 1;
    for (int i = 2; i <= k; i++) {
      orders *= i;
    }
    double p = agreed ? Math.pow(orders, 1.0 - b) : UpperTail.f(f, k - 1, df2);
    return new QuadeTest(f, k - 1, df2, p);
  }

  /**
   * The work that the test rests on.
   *
   * @return Quade 1979
   */
  public Reference source() {
    return RankSources.QUADE_1979;
  }

  /**
   * The result as papers print it.
   *
   * @return for example "F = 3.83; df = 4, 24; P = 0.015"
   */
  public String sentence() {
    return TestSentence.of("F", f, pValue, df1, df2);
  }

  @Override
  public String toString() {
    return "Quade: " + sentence();
  }
}
