package agro.stats.rank;

import agro.report.InputProblem;
import agro.source.Reference;
import agro.stats.BlockedValues;
import agro.stats.MidRanks;
import agro.stats.TestSentence;
import agro.stats.UpperTail;
import agro.stats.multiple.PValueAdjustment;
import java.util.ArrayList;
import java.util.List;

/**
 * Friedman's test of 1937: do treatments differ within blocks? Values are ranked within each block;
 * tied values share their mean rank and the statistic is corrected for them. For small tables the
 * chance is counted over all orders of the ranks within the blocks; {@link #method()} says so.
 *
 * @param chiSquared statistic, corrected for ties
 * @param df degrees of freedom of the chi-squared approximation
 * @param pValue chance of such a statistic or a larger one when treatments do not differ
 * @param method where this chance comes from
 * @param chiSquaredPValue the chance by the chi-squared approximation, always given
 * @param treatments ranks of each treatment
 * @param blocks number of blocks
 * @param rankSquares sum of all squared ranks
 * @param tiedValues number of values that share their rank within their block
 */
public record Friedman(
    double chiSquared,
    int df,
    double pValue,
    PValueMethod method,
    double chiSquaredPValue,
    List<RankedGroup> treatments,
    int blocks,
    double rankSquares,
    int tiedValues) {

  /** Keeps the list as it is now. */
  public Friedman {
    treatments = List.copyOf(treatments);
  }

  /**
   * Tests whether treatments differ within blocks.
   *
   * @param table one value for each treatment in each block
   * @return the result
   * @throws InputProblem if a plot is missing, or all values of every block are equal
   */
  public static Friedman test(BlockedValues table) {
    table.requireComplete("use the test of Skillings and Mack, which takes missing plots");
    int k = table.treatments().size();
    int b = table.blocks().size();
    double[] sums = new double[k];
    double squares = 0;
    int tied = 0;
    var ranks = new ArrayList<double[]>();
    for (int block = 0; block < b; block++) {
      var own = MidRanks.of(table.block(block));
      tied += own.tiedValues();
      ranks.add(own.toArray());
      for (int i = 0; i < k; i++) {
        sums[i] += own.rank(i);
        squares += own.rank(i) * own.rank(i);
      }
    }
    double spread = squares - b * k * (k + 1.0) * (k + 1.0) / 4;
    if (!(spread > 0)) {
      throw InputProblem.of("All values are equal within every block")
          .expected("values that differ within at least one block")
          .because("equal values have one rank, and nothing is left to compare")
          .mend("say in words that no difference was seen");
    }
    double deviations = 0;
    double sumSquares = 0;
    var treatments = new ArrayList<RankedGroup>();
    for (int i = 0; i < k; i++) {
      double deviation = sums[i] - b * (k + 1) / 2.0;
      deviations += deviation * deviation;
      sumSquares += sums[i] * sums[i];
      treatments.add(new RankedGroup(table.treatments().get(i), b, sums[i], sums[i] / b));
    }
    double statistic = (k - 1) * deviations / spread;
    double approximate = UpperTail.chiSquared(statistic, k - 1);
    var exact = ExactFriedman.chance(ranks, sumSquares);
    return new Friedman(
        statistic,
        k - 1,
        exact.orElse(approximate),
        exact.isPresent() ? PValueMethod.EXACT : PValueMethod.CHI_SQUARED,
        approximate,
        treatments,
        b,
        squares,
        tied);
  }

  /**
   * Kendall's coefficient of concordance: how far the blocks agree on the order of treatments.
   *
   * @return 0 to 1
   */
  public double concordance() {
    return chiSquared / ((double) blocks * df);
  }

  /**
   * The F form of Iman and Davenport 1980, closer to its distribution than chi-squared is.
   *
   * @return the ratio on k - 1 and (k - 1)(b - 1) degrees of freedom; infinite when all blocks
   *     agree
   */
  public double f() {
    double left = blocks * (double) df - chiSquared;
    return left <= 1e-12 * chiSquared ? Double.POSITIVE_INFINITY : (blocks - 1) * chiSquared / left;
  }

  /**
   * Chance of the F form.
   *
   * @return 0 to 1
   */
  public double fPValue() {
    return UpperTail.f(f(), df, errorDf());
  }

  /**
   * Degrees of freedom below the line of the F form.
   *
   * @return (k - 1)(b - 1)
   */
  public int errorDf() {
    return df * (blocks - 1);
  }

  /**
   * Compares all pairs of treatments.
   *
   * @param method the comparison of two treatments
   * @param adjustment how the chances are adjusted for the number of pairs; Nemenyi's need none
   * @return the comparisons
   */
  public RankPairs pairs(FriedmanPairs method, PValueAdjustment adjustment) {
    return method.compare(this, adjustment);
  }

  /**
   * The works that the test rests on.
   *
   * @return Friedman 1937; Iman and Davenport 1980 for the F form
   */
  public List<Reference> sources() {
    return List.of(RankSources.FRIEDMAN_1937, RankSources.IMAN_DAVENPORT_1980);
  }

  /**
   * The result as papers print it.
   *
   * @return for example "χ² = 11.14; df = 2; P = 0.003 (exact)"
   */
  public String sentence() {
    return TestSentence.of("χ²", chiSquared, pValue, df) + " (" + method.words() + ")";
  }

  @Override
  public String toString() {
    return "Friedman: " + sentence();
  }
}
