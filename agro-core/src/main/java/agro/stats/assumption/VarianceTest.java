package agro.stats.assumption;

import agro.report.InputProblem;
import agro.source.Reference;
import agro.stats.GroupedValues;
import agro.stats.MidRanks;
import agro.stats.NormalQuantile;
import agro.stats.UpperTail;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleBiFunction;

/** Tests whether groups have one variance. */
public enum VarianceTest {
  /**
   * Bartlett 1937: the logarithms of the variances. The sharpest test for normal values, but it
   * takes long tails for unequal variances.
   */
  BARTLETT("Bartlett", AssumptionSources.BARTLETT_1937) {
    @Override
    VarianceTestResult compute(GroupedValues groups) {
      refuseConstantGroups(groups);
      double df = groups.total() - groups.groups();
      double pooled = 0;
      double logs = 0;
      double inverses = 0;
      for (int i = 0; i < groups.groups(); i++) {
        double own = groups.size(i) - 1;
        pooled += own * groups.variance(i);
        logs += own * Math.log(groups.variance(i));
        inverses += 1 / own;
      }
      double correction = 1 + (inverses - 1 / df) / (3.0 * (groups.groups() - 1));
      double statistic = Math.max(0, (df * Math.log(pooled / df) - logs) / correction);
      return chiSquared(this, "K²", groups, statistic);
    }
  },

  /** Levene 1960: analysis of variance of the distances from the group means. */
  LEVENE("Levene", AssumptionSources.LEVENE_1960) {
    @Override
    VarianceTestResult compute(GroupedValues groups) {
      return distances(this, groups, GroupedValues::mean);
    }
  },

  /**
   * Brown and Forsythe 1974: analysis of variance of the distances from the group medians. Holds
   * its level for skewed values; conservative in groups of few values.
   */
  BROWN_FORSYTHE("Brown-Forsythe", AssumptionSources.BROWN_FORSYTHE_1974) {
    @Override
    VarianceTestResult compute(GroupedValues groups) {
      return distances(this, groups, GroupedValues::median);
    }
  },

  /**
   * Fligner and Killeen with medians, in the form of Conover, Johnson and Johnson 1981: normal
   * scores of the ranks of the distances from the group medians.
   */
  FLIGNER_KILLEEN("Fligner-Killeen", AssumptionSources.CONOVER_JOHNSON_1981) {
    @Override
    VarianceTestResult compute(GroupedValues groups) {
      return normalScores(this, groups);
    }
  };

  private static final double ROUNDING = 1e-12;

  private final String title;
  private final Reference source;

  VarianceTest(String title, Reference source) {
    this.title = title;
    this.source = source;
  }

  /**
   * Tests whether the groups have one variance.
   *
   * @param groups at least two groups of two values each
   * @return the result
   * @throws InputProblem if a group has one value only, or the groups have no scatter that the test
   *     could use
   */
  public VarianceTestResult test(GroupedValues groups) {
    groups.requireSize(2, "a single value shows no scatter");
    return compute(groups);
  }

  abstract VarianceTestResult compute(GroupedValues groups);

  /**
   * Name of the test in print.
   *
   * @return the names of its authors
   */
  public String title() {
    return title;
  }

  /**
   * The work that the test rests on.
   *
   * @return the reference
   */
  public Reference source() {
    return source;
  }

  private static void refuseConstantGroups(GroupedValues groups) {
    var constant = groups.groupsWithoutVariance();
    if (!constant.isEmpty()) {
      throw InputProblem.of("All values are equal in " + String.join(", ", constant))
          .expected("values that differ within each group")
          .because("Bartlett's test takes the logarithm of each variance, and zero has none")
          .mend("take the Brown-Forsythe or Fligner-Killeen test, or leave such groups out");
    }
  }

  private static VarianceTestResult distances(
      VarianceTest test, GroupedValues groups, ToDoubleBiFunction<GroupedValues, Integer> centre) {
    int k = groups.groups();
    int n = groups.total();
    double[] means = new double[k];
    double sum = 0;
    double within = 0;
    for (int i = 0; i < k; i++) {
      double[] distances = distances(groups, i, centre.applyAsDouble(groups, i));
      double own = 0;
      for (double each : distances) {
        own += each;
      }
      means[i] = own / distances.length;
      sum += own;
      for (double each : distances) {
        within += (each - means[i]) * (each - means[i]);
      }
    }
    double between = 0;
    for (int i = 0; i < k; i++) {
      between += groups.size(i) * (means[i] - sum / n) * (means[i] - sum / n);
    }
    double scale = sum / n * (sum / n);
    if (n == k || within <= ROUNDING * scale) {
      throw noScatterOfDistances(test);
    }
    double f = between / (k - 1) / (within / (n - k));
    return new VarianceTestResult(
        test,
        "F",
        f,
        List.of(k - 1.0, n - (double) k),
        UpperTail.f(f, k - 1, n - k),
        GroupSpread.all(groups),
        remarks(groups));
  }

  private static InputProblem noScatterOfDistances(VarianceTest test) {
    return InputProblem.of("Within each group all values lie equally far from the centre")
        .expected("distances from the centre that differ within at least one group")
        .because("the " + test.title + " test compares groups by the scatter of these distances")
        .mend("use more replicates; groups of two always have this property");
  }

  private static VarianceTestResult normalScores(VarianceTest test, GroupedValues groups) {
    int n = groups.total();
    double[] distances = new double[n];
    double largest = 0;
    int at = 0;
    for (int i = 0; i < groups.groups(); i++) {
      for (double each : distances(groups, i, groups.median(i))) {
        distances[at++] = each;
      }
    }
    for (double value : groups.all()) {
      largest = Math.max(largest, Math.abs(value));
    }
    var ranks = MidRanks.within(ROUNDING * largest, distances);
    double[] scores = new double[n];
    double mean = 0;
    for (int i = 0; i < n; i++) {
      scores[i] = NormalQuantile.of((1 + ranks.rank(i) / (n + 1)) / 2);
      mean += scores[i] / n;
    }
    double squares = 0;
    double between = 0;
    at = 0;
    for (int i = 0; i < groups.groups(); i++) {
      double own = 0;
      for (int j = 0; j < groups.size(i); j++) {
        double deviation = scores[at++] - mean;
        own += deviation;
        squares += deviation * deviation;
      }
      between += own * own / groups.size(i);
    }
    if (squares <= ROUNDING) {
      throw noScatterOfDistances(test);
    }
    return chiSquared(test, "χ²", groups, between / (squares / (n - 1)));
  }

  private static double[] distances(GroupedValues groups, int group, double centre) {
    double[] values = groups.values(group);
    for (int j = 0; j < values.length; j++) {
      values[j] = Math.abs(values[j] - centre);
    }
    return values;
  }

  private static VarianceTestResult chiSquared(
      VarianceTest test, String symbol, GroupedValues groups, double statistic) {
    double df = groups.groups() - 1.0;
    return new VarianceTestResult(
        test,
        symbol,
        statistic,
        List.of(df),
        UpperTail.chiSquared(statistic, df),
        GroupSpread.all(groups),
        remarks(groups));
  }

  private static List<String> remarks(GroupedValues groups) {
    var remarks = new ArrayList<String>();
    for (String each : groups.groupsWithoutVariance()) {
      remarks.add("all values of " + each + " are equal: the test sees a variance of zero there");
    }
    var small = new ArrayList<String>();
    for (int i = 0; i < groups.groups(); i++) {
      if (groups.size(i) < 4) {
        small.add(groups.labels().get(i));
      }
    }
    if (!small.isEmpty()) {
      remarks.add(
          "fewer than four values in "
              + String.join(", ", small)
              + ": tests of variances have little power, and a large P says little");
    }
    return remarks;
  }
}
