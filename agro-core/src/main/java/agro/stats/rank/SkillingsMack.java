package agro.stats.rank;

import agro.report.InputProblem;
import agro.source.Reference;
import agro.stats.BlockedValues;
import agro.stats.MidRanks;
import agro.stats.TestSentence;
import agro.stats.UpperTail;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.EigenDecompositionSymmetric;

/**
 * Test of Skillings and Mack 1981: Friedman's test for blocks with missing plots. Blocks with one
 * plot tell nothing and are left out. Ties share their mean rank, and the covariance of the
 * weighted rank sums is that of all orders of the ranks within each block, ties included; without
 * missing plots the statistic is Friedman's.
 *
 * @param statistic chi-squared statistic
 * @param df its degrees of freedom: treatments less the number of unconnected parts of the table
 * @param pValue chance of such a statistic or a larger one when treatments do not differ
 * @param treatments number of blocks and weighted sum of each treatment
 * @param usedBlocks number of blocks with two or more plots
 * @param remarks what a reader has to know, possibly nothing
 */
public record SkillingsMack(
    double statistic,
    int df,
    double pValue,
    List<RankedGroup> treatments,
    int usedBlocks,
    List<String> remarks) {

  private static final double SINGULAR = 1e-10;

  /** Keeps the lists as they are now. */
  public SkillingsMack {
    treatments = List.copyOf(treatments);
    remarks = List.copyOf(remarks);
  }

  /**
   * Tests whether treatments differ within blocks.
   *
   * @param table one value for each treatment in each block, or none
   * @return the result
   * @throws InputProblem if no block can tell treatments apart
   */
  public static SkillingsMack test(BlockedValues table) {
    int k = table.treatments().size();
    double[] sums = new double[k];
    int[] counts = new int[k];
    double[][] covariance = new double[k][k];
    int used = 0;
    for (int block = 0; block < table.blocks().size(); block++) {
      used += addBlock(table, block, sums, counts, covariance);
    }
    var parts = new EigenDecompositionSymmetric(new Array2DRowRealMatrix(covariance));
    double[] scales = parts.getEigenvalues();
    double largest = Arrays.stream(scales).max().orElse(0);
    if (!(largest > 0)) {
      throw InputProblem.of("No block has two plots with different values")
          .expected("at least one block in which treatments differ")
          .because("treatments are ranked against each other within blocks")
          .mend("check the columns of blocks and values");
    }
    double statistic = 0;
    int df = 0;
    for (int i = 0; i < k; i++) {
      if (scales[i] > SINGULAR * largest) {
        double along = 0;
        for (int j = 0; j < k; j++) {
          along += parts.getEigenvector(i).getEntry(j) * sums[j];
        }
        statistic += along * along / scales[i];
        df++;
      }
    }
    var treatments =
        IntStream.range(0, k)
            .mapToObj(
                i ->
                    new RankedGroup(
                        table.treatments().get(i),
                        counts[i],
                        sums[i],
                        counts[i] == 0 ? 0 : sums[i] / counts[i]))
            .toList();
    return new SkillingsMack(
        statistic,
        df,
        UpperTail.chiSquared(statistic, df),
        treatments,
        used,
        remarks(table.blocks().size() - used, k - 1 - df));
  }

  private static int addBlock(
      BlockedValues table, int block, double[] sums, int[] counts, double[][] covariance) {
    int[] present = IntStream.range(0, sums.length).filter(i -> table.has(block, i)).toArray();
    int m = present.length;
    if (m < 2) {
      return 0;
    }
    var ranks =
        MidRanks.of(Arrays.stream(present).mapToDouble(i -> table.value(block, i)).toArray());
    double weight = Math.sqrt(12.0 / (m + 1));
    double variance = 0;
    for (int i = 0; i < m; i++) {
      double score = weight * (ranks.rank(i) - (m + 1) / 2.0);
      sums[present[i]] += score;
      counts[present[i]]++;
      variance += score * score / (m - 1);
    }
    for (int i : present) {
      for (int j : present) {
        covariance[i][j] += variance * ((i == j ? 1 : 0) - 1.0 / m);
      }
    }
    return 1;
  }

  private static List<String> remarks(int unused, int lost) {
    var remarks = new ArrayList<String>();
    if (unused > 0) {
      remarks.add(unused + " blocks with a single plot tell nothing and were left out");
    }
    if (lost > 0) {
      remarks.add(
          "some treatments never meet in a block, or tie wherever they meet: they are compared only"
              + " within their own part of the table");
    }
    return remarks;
  }

  /**
   * The work that the test rests on.
   *
   * @return Skillings and Mack 1981
   */
  public Reference source() {
    return RankSources.SKILLINGS_MACK_1981;
  }

  /**
   * The result as papers print it.
   *
   * @return for example "χ² = 15.49; df = 3; P = 0.001"
   */
  public String sentence() {
    return TestSentence.of("χ²", statistic, pValue, df);
  }

  @Override
  public String toString() {
    return "Skillings-Mack: " + sentence();
  }
}
