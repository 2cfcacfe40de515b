package agro.stats.rank;

import agro.report.InputProblem;
import agro.source.Reference;
import agro.stats.GroupedValues;
import agro.stats.TestSentence;
import agro.stats.UpperTail;
import agro.stats.multiple.PValueAdjustment;
import agro.stats.multiple.StudentisedRange;

/**
 * Welch's one-way test of 1951: do the means of groups differ, each group with a variance of its
 * own?
 *
 * @param f statistic
 * @param df1 degrees of freedom above the line
 * @param df2 degrees of freedom below the line, not a whole number
 * @param pValue chance of such a ratio or a larger one when the means do not differ
 * @param groups the groups that were compared
 */
public record WelchTest(double f, int df1, double df2, double pValue, GroupedValues groups) {

  /**
   * Tests whether the means of groups differ.
   *
   * @param groups at least two groups of two values that differ
   * @return the result
   * @throws InputProblem if a group has one value, or all its values are equal
   */
  public static WelchTest test(GroupedValues groups) {
    groups.requireSize(2, "each group needs a variance of its own");
    var constant = groups.groupsWithoutVariance();
    if (!constant.isEmpty()) {
      throw InputProblem.of("All values are equal in " + String.join(", ", constant))
          .expected("values that differ within each group")
          .because(
              "each mean is weighed by its own variance, and a variance of zero weighs infinitely")
          .mend("leave such groups out and say so, or take a rank test");
    }
    int k = groups.groups();
    double total = 0;
    double sum = 0;
    for (int i = 0; i < k; i++) {
      double weight = groups.size(i) / groups.variance(i);
      total += weight;
      sum += weight * groups.mean(i);
    }
    double between = 0;
    double loss = 0;
    for (int i = 0; i < k; i++) {
      double weight = groups.size(i) / groups.variance(i);
      double deviation = groups.mean(i) - sum / total;
      between += weight * deviation * deviation / (k - 1);
      double rest = 1 - weight / total;
      loss += rest * rest / (groups.size(i) - 1);
    }
    double scale = (double) k * k - 1;
    double f = between / (1 + 2 * (k - 2) * loss / scale);
    double df2 = scale / (3 * loss);
    return new WelchTest(f, k - 1, df2, UpperTail.f(f, k - 1, df2), groups);
  }

  /**
   * Compares all pairs of groups after Games and Howell 1976: each difference with its own standard
   * error and degrees of freedom, against the studentised range. Holds the level of the whole
   * family by itself, closely but not exactly.
   *
   * @return the comparisons; differences are those of means
   */
  public RankPairs gamesHowell() {
    int k = groups.groups();
    return RankPairs.of(
        "Games-Howell",
        RankSources.GAMES_HOWELL_1976,
        groups.labels(),
        PValueAdjustment.NONE,
        (i, j) -> {
          double one = groups.variance(i) / groups.size(i);
          double other = groups.variance(j) / groups.size(j);
          double error = Math.sqrt(one + other);
          double df =
              (one + other)
                  * (one + other)
                  / (one * one / (groups.size(i) - 1) + other * other / (groups.size(j) - 1));
          double difference = groups.mean(j) - groups.mean(i);
          double t = difference / error;
          double p = StudentisedRange.of(k, df).above(Math.sqrt(2) * Math.abs(t));
          return new RankPair(
              groups.labels().get(i), groups.labels().get(j), difference, error, t, df, p, p);
        });
  }

  /**
   * The work that the test rests on.
   *
   * @return Welch 1951
   */
  public Reference source() {
    return RankSources.WELCH_1951;
  }

  /**
   * The result as papers print it.
   *
   * @return for example "F = 36.07; df = 5, 30.0; P &lt; 0.001"
   */
  public String sentence() {
    return TestSentence.of("F", f, pValue, df1, df2);
  }

  @Override
  public String toString() {
    return "Welch: " + sentence();
  }
}
