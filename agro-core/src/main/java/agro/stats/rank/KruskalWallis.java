package agro.stats.rank;

import agro.report.InputProblem;
import agro.source.Reference;
import agro.stats.GroupedValues;
import agro.stats.MidRanks;
import agro.stats.TestSentence;
import agro.stats.UpperTail;
import agro.stats.multiple.PValueAdjustment;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Test of Kruskal and Wallis 1952: do groups differ in the level of their values? Tied values share
 * their mean rank and H is corrected for them. For small samples the chance is counted over all
 * deals of the ranks, ties included; {@link #method()} says so.
 *
 * @param h statistic, corrected for ties
 * @param df degrees of freedom of the chi-squared approximation
 * @param pValue chance of such a statistic or a larger one when groups do not differ
 * @param method where this chance comes from
 * @param chiSquaredPValue the chance by the approximation, always given
 * @param groups ranks of each group
 * @param rankVariance variance of one rank, corrected for ties
 * @param tiedValues number of values that share their rank with another
 * @param remarks what a reader has to know, possibly nothing
 */
public record KruskalWallis(
    double h,
    int df,
    double pValue,
    PValueMethod method,
    double chiSquaredPValue,
    List<RankedGroup> groups,
    double rankVariance,
    int tiedValues,
    List<String> remarks) {

  private static final int FEW = 5;

  /** Keeps the lists as they are now. */
  public KruskalWallis {
    groups = List.copyOf(groups);
    remarks = List.copyOf(remarks);
  }

  /**
   * Tests whether groups differ in the level of their values.
   *
   * @param data at least two groups
   * @return the result
   * @throws InputProblem if all values are equal or each group has one value only
   */
  public static KruskalWallis test(GroupedValues data) {
    double[] values = data.all();
    int n = values.length;
    var ranks = MidRanks.of(values);
    refuse(data, values);
    var groups = new ArrayList<RankedGroup>();
    double squares = 0;
    double deviations = 0;
    int at = 0;
    int smallest = n;
    for (int i = 0; i < data.groups(); i++) {
      double sum = 0;
      int size = data.size(i);
      for (int j = 0; j < size; j++) {
        sum += ranks.rank(at++);
      }
      squares += sum * sum / size;
      double deviation = sum / size - (n + 1) / 2.0;
      deviations += size * deviation * deviation;
      smallest = Math.min(smallest, size);
      groups.add(new RankedGroup(data.labels().get(i), size, sum, sum / size));
    }
    double variance = n * (n + 1.0) / 12 - ranks.tieSum() / (12.0 * (n - 1));
    double h = deviations / variance;
    int df = data.groups() - 1;
    double approximate = UpperTail.chiSquared(h, df);
    int[] sizes = groups.stream().mapToInt(RankedGroup::n).toArray();
    var exact = ExactKruskalWallis.chance(sizes, ranks.toArray(), squares);
    var method = exact.isPresent() ? PValueMethod.EXACT : PValueMethod.CHI_SQUARED;
    var remarks = new ArrayList<String>();
    if (exact.isEmpty() && smallest < FEW) {
      remarks.add("a group has fewer than five values: the chi-squared approximation is rough");
    }
    return new KruskalWallis(
        h,
        df,
        exact.orElse(approximate),
        method,
        approximate,
        groups,
        variance,
        ranks.tiedValues(),
        remarks);
  }

  private static void refuse(GroupedValues data, double[] values) {
    if (Arrays.stream(values).distinct().count() == 1) {
      throw InputProblem.of("All " + values.length + " values equal " + values[0])
          .expected("values that differ")
          .because("equal values have one rank, and nothing is left to compare")
          .mend("say in words that no difference was seen");
    }
    if (values.length == data.groups()) {
      throw InputProblem.of("Each group has one value only")
          .expected("at least one group with replicates")
          .because("without replicates every deal of the ranks is as extreme as any other")
          .mend("use replicated plots");
    }
  }

  /**
   * Number of all values.
   *
   * @return at least three
   */
  public int n() {
    return groups.stream().mapToInt(RankedGroup::n).sum();
  }

  /**
   * Share of the variance of the ranks that lies between groups: H / (n - 1).
   *
   * @return 0 to 1
   */
  public double epsilonSquared() {
    return h / (n() - 1);
  }

  /**
   * Compares all pairs of groups.
   *
   * @param method the comparison of two groups
   * @param adjustment how the chances are adjusted for the number of pairs
   * @return the comparisons; differences are those of mean ranks
   */
  public RankPairs pairs(KruskalWallisPairs method, PValueAdjustment adjustment) {
    return method.compare(this, adjustment);
  }

  /**
   * The work that the test rests on.
   *
   * @return Kruskal and Wallis 1952
   */
  public Reference source() {
    return RankSources.KRUSKAL_WALLIS_1952;
  }

  /**
   * The result as papers print it.
   *
   * @return for example "H = 54.69; df = 5; P &lt; 0.001 (chi-squared approximation)"
   */
  public String sentence() {
    return TestSentence.of("H", h, pValue, df) + " (" + method.words() + ")";
  }

  @Override
  public String toString() {
    return "Kruskal-Wallis: " + sentence();
  }
}
