package agro.stats.multiple;

import agro.report.InputProblem;
import agro.source.Reference;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ConcurrentMap;

/**
 * Distribution behind Dunnett's comparisons of several treatments with one control: the largest of
 * several Student's t with a common estimated variance and correlations that are products of two
 * loadings (of their absolute values when two-sided).
 *
 * <p>A treatment with n plots beside a control with n0 has the loading sqrt(n / (n + n0)), so
 * unequal replication is exact; with equal replication all correlations are one half. The chance is
 * a double integral, computed to 1e-10 absolute and 1e-6 relative or better in both tails. Programs
 * that integrate by random points are good to about 1e-4 and give another last digit each time;
 * printed tables have two decimals and mostly equal replication.
 *
 * <p>Dunnett 1955, Journal of the American Statistical Association 50:1096-1121, and 1964,
 * Biometrics 20:482-491 (from memory).
 */
public final class DunnettDistribution {

  private static final int MOST_TREATMENTS = 1000;
  private static final double CLOSEST_LOADING = 1 - 1e-6;
  private static final int TABLES_KEPT = 256;
  private static final ConcurrentMap<MaximumOfNormals, TailTable> TABLES =
      new ConcurrentHashMap<>();

  private final int treatments;
  private final double degreesOfFreedom;
  private final boolean twoSided;
  private final Studentised distribution;

  private DunnettDistribution(List<Double> loadings, double degreesOfFreedom, boolean twoSided) {
    this.treatments = loadings.size();
    this.degreesOfFreedom = degreesOfFreedom;
    this.twoSided = twoSided;
    this.distribution = new Studentised(table(loadings, twoSided), degreesOfFreedom);
  }

  private static TailTable table(List<Double> loadings, boolean twoSided) {
    var counts = new TreeMap<Double, Integer>();
    for (double loading : loadings) {
      // Two-sided chances do not change with the sign of a loading.
      counts.merge(twoSided ? Math.abs(loading) : loading + 0.0, 1, Integer::sum);
    }
    var groups = new ArrayList<MaximumOfNormals.Loading>();
    counts.forEach((loading, count) -> groups.add(MaximumOfNormals.Loading.of(loading, count)));
    var extreme = new MaximumOfNormals(twoSided, groups);
    if (TABLES.size() >= TABLES_KEPT) {
      TABLES.clear();
    }
    return TABLES.computeIfAbsent(extreme, TailTable::new);
  }

  /**
   * The distribution for control and treatments with the same number of plots.
   *
   * @param treatments number of treatments without the control, 1 to 1000
   * @param degreesOfFreedom those of the estimated variance, at least 0.1, possibly infinite
   * @param alternative whether both directions count
   * @return the distribution
   * @throws InputProblem if a number lies outside its range
   */
  public static DunnettDistribution ofEqualReplication(
      int treatments, double degreesOfFreedom, Alternative alternative) {
    checkTreatments(treatments);
    double[] loadings = new double[treatments];
    Arrays.fill(loadings, Math.sqrt(0.5));
    return ofLoadings(loadings, degreesOfFreedom, alternative);
  }

  /**
   * The distribution for treatments with their own numbers of plots.
   *
   * @param control number of plots of the control
   * @param treatments number of plots of each treatment
   * @param degreesOfFreedom those of the estimated variance, at least 0.1, possibly infinite
   * @param alternative whether both directions count
   * @return the distribution
   * @throws InputProblem if there is no treatment or a number is not positive
   */
  public static DunnettDistribution ofReplication(
      int control, int[] treatments, double degreesOfFreedom, Alternative alternative) {
    double[] loadings = new double[treatments.length];
    for (int each = 0; each < loadings.length; each++) {
      if (control < 1 || treatments[each] < 1) {
        throw InputProblem.of(
                "Replication of " + control + " (control) and " + treatments[each] + " (treatment)")
            .expected("at least one plot each")
            .because("a mean of no plots does not exist")
            .mend("leave out the treatment that has no plots");
      }
      loadings[each] = Math.sqrt(treatments[each] / ((double) control + treatments[each]));
    }
    return ofLoadings(loadings, degreesOfFreedom, alternative);
  }

  /**
   * The distribution for given loadings: the correlation of t number i and j is the product of
   * their loadings.
   *
   * @param loadings one for each treatment, between -1 and 1
   * @param degreesOfFreedom those of the estimated variance, at least 0.1, possibly infinite
   * @param alternative whether both directions count; the two one-sided ones are the same here
   * @return the distribution
   * @throws InputProblem if there is no treatment or a number lies outside its range
   */
  public static DunnettDistribution ofLoadings(
      double[] loadings, double degreesOfFreedom, Alternative alternative) {
    checkTreatments(loadings.length);
    Checks.degreesOfFreedom(degreesOfFreedom);
    var list = new ArrayList<Double>();
    for (double loading : loadings) {
      if (!(Math.abs(loading) <= CLOSEST_LOADING)) {
        throw InputProblem.of("A loading of " + Checks.plain(loading))
            .expected("a number between -1 and 1, square root of a correlation")
            .because("treatments with a correlation of one are the same treatment")
            .mend("give the square root of n / (n + n0) for n plots beside n0 of the control");
      }
      list.add(loading);
    }
    return new DunnettDistribution(list, degreesOfFreedom, alternative == Alternative.TWO_SIDED);
  }

  private static void checkTreatments(int treatments) {
    if (treatments < 1 || treatments > MOST_TREATMENTS) {
      throw InputProblem.of("Dunnett's distribution of " + treatments + " treatments")
          .expected("1 to " + MOST_TREATMENTS + " treatments besides the control")
          .because("there is nothing to compare with the control")
          .mend("count the treatments without the control");
    }
  }

  /**
   * The work that the distribution is published in.
   *
   * @return the reference
   */
  public static Reference source() {
    return MultipleSources.DUNNETT_1955;
  }

  /**
   * Number of treatments without the control.
   *
   * @return at least 1
   */
  public int treatments() {
    return treatments;
  }

  /**
   * Degrees of freedom of the estimated variance.
   *
   * @return a positive number, possibly infinite
   */
  public double degreesOfFreedom() {
    return degreesOfFreedom;
  }

  /**
   * Whether differences in both directions count.
   *
   * @return false when only one direction does
   */
  public boolean isTwoSided() {
    return twoSided;
  }

  /**
   * Chance that the largest t (absolute t when two-sided) is at most d.
   *
   * @param d any number but NaN
   * @return 0 to 1, with full relative precision where it is small
   * @throws InputProblem if d is NaN
   */
  public double below(double d) {
    return twoSided && d <= 0 ? 0 : distribution.below(Checks.number(d, "largest t"));
  }

  /**
   * Chance that the largest t (absolute t when two-sided) is above d: the adjusted p-value of a
   * comparison with t = d.
   *
   * @param d any number but NaN
   * @return 0 to 1, with full relative precision where it is small
   * @throws InputProblem if d is NaN
   */
  public double above(double d) {
    return twoSided && d <= 0 ? 1 : distribution.above(Checks.number(d, "largest t"));
  }

  /**
   * The value that is not exceeded with a given chance.
   *
   * @param chanceBelow 0 to 1
   * @return the quantile; infinite at the ends of the range of t
   * @throws InputProblem if the chance is not between 0 and 1
   */
  public double quantile(double chanceBelow) {
    double p = Checks.chance(chanceBelow);
    return distribution.quantile(1 - p, p);
  }

  /**
   * The value that is exceeded with a given chance, such as 0.05: Dunnett's critical value.
   *
   * @param chanceAbove 0 to 1; may be as small as 1e-300
   * @return the quantile; infinite at the ends of the range of t
   * @throws InputProblem if the chance is not between 0 and 1
   */
  public double upperQuantile(double chanceAbove) {
    double p = Checks.chance(chanceAbove);
    return distribution.quantile(p, 1 - p);
  }

  @Override
  public String toString() {
    return (twoSided ? "two-sided" : "one-sided")
        + " Dunnett distribution of "
        + treatments
        + " treatments, df = "
        + Checks.plain(degreesOfFreedom);
  }
}
