package agro.stats.multiple;

import agro.report.InputProblem;
import agro.source.Reference;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ConcurrentMap;

/**
 * Distribution of the studentised range: the range of independent normal means divided by an
 * estimated standard error of one mean. Tukey's test of all pairs rests on it.
 *
 * <p>Chance above = integral over the estimated deviation s of f(s; df) P(range of r normal numbers
 * &gt; q s). Both tails are computed as such; neither is a difference from one. Tails agree with
 * slow quadrature to 1e-10 relative down to the smallest double; common programs keep four decimals
 * of quantiles, and fewer at 2 degrees of freedom. For two means q is the square root of 2 times
 * Student's t.
 *
 * <p>The range for infinitely many degrees of freedom is computed once for each number of means and
 * shared between threads. Tukey 1953 and Harter 1960, Annals of Mathematical Statistics
 * 31:1122-1147 (from memory).
 */
public final class StudentisedRange {

  private static final int MOST_MEANS = 10_000;
  private static final ConcurrentMap<Integer, TailTable> TABLES = new ConcurrentHashMap<>();

  private final int means;
  private final double degreesOfFreedom;
  private final Studentised distribution;

  private StudentisedRange(int means, double degreesOfFreedom) {
    this.means = means;
    this.degreesOfFreedom = degreesOfFreedom;
    var table = TABLES.computeIfAbsent(means, r -> new TailTable(new RangeOfNormals(r)));
    this.distribution = new Studentised(table, degreesOfFreedom);
  }

  /**
   * The distribution for a number of means.
   *
   * @param means how many means are compared, 2 to 10,000
   * @param degreesOfFreedom those of the estimated variance, at least 0.1, possibly infinite, not
   *     necessarily whole
   * @return the distribution
   * @throws InputProblem if a number lies outside its range
   */
  public static StudentisedRange of(int means, double degreesOfFreedom) {
    if (means < 2 || means > MOST_MEANS) {
      throw InputProblem.of("A studentised range of " + means + " means")
          .expected("2 to " + MOST_MEANS + " means")
          .because("a range needs two means, and no trial has more than the upper limit")
          .mend("give the number of means that are compared");
    }
    Checks.degreesOfFreedom(degreesOfFreedom);
    return new StudentisedRange(means, degreesOfFreedom);
  }

  /**
   * The work that the distribution is published in.
   *
   * @return the reference
   */
  public static Reference source() {
    return MultipleSources.HARTER_1960;
  }

  /**
   * Number of means.
   *
   * @return at least 2
   */
  public int means() {
    return means;
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
   * Chance of a studentised range of at most q.
   *
   * @param q any number but NaN
   * @return 0 to 1, with full relative precision where it is small
   * @throws InputProblem if q is NaN
   */
  public double below(double q) {
    return q <= 0 ? 0 : distribution.below(Checks.number(q, "studentised range"));
  }

  /**
   * Chance of a studentised range above q.
   *
   * @param q any number but NaN
   * @return 0 to 1, with full relative precision where it is small
   * @throws InputProblem if q is NaN
   */
  public double above(double q) {
    return q <= 0 ? 1 : distribution.above(Checks.number(q, "studentised range"));
  }

  /**
   * The studentised range that is not exceeded with a given chance.
   *
   * @param chanceBelow 0 to 1
   * @return the quantile; 0 for 0 and infinity for 1
   * @throws InputProblem if the chance is not between 0 and 1
   */
  public double quantile(double chanceBelow) {
    double p = Checks.chance(chanceBelow);
    return distribution.quantile(1 - p, p);
  }

  /**
   * The studentised range that is exceeded with a given chance, such as 0.05: the critical value.
   *
   * @param chanceAbove 0 to 1; may be as small as 1e-300
   * @return the quantile; infinity for 0 and 0 for 1
   * @throws InputProblem if the chance is not between 0 and 1
   */
  public double upperQuantile(double chanceAbove) {
    double p = Checks.chance(chanceAbove);
    return distribution.quantile(p, 1 - p);
  }

  @Override
  public String toString() {
    return "studentised range of " + means + " means, df = " + Checks.plain(degreesOfFreedom);
  }
}
