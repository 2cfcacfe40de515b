package agro.stats.linear;

import agro.report.InputProblem;
import java.util.Arrays;

/**
 * Means of the units that treatments were applied to, from the observations within them: plants of
 * a plot tell of one plot and are never replicates. With unequal numbers of observations the means
 * count the same in an analysis of their own; their variances then differ unless the variance
 * within units is small beside that between units.
 */
public final class UnitMeans {

  private final Factor units;
  private final double[] means;
  private final int[] first;

  private UnitMeans(Factor units, double[] means, int[] first) {
    this.units = units;
    this.means = means;
    this.first = first;
  }

  /**
   * Averages observations.
   *
   * @param units unit of each observation
   * @param response value of each observation, all finite
   * @return the means
   * @throws InputProblem if numbers of observations differ or a value is not finite
   */
  public static UnitMeans of(Factor units, double... response) {
    if (response.length != units.size()) {
      throw InputProblem.of(response.length + " values for " + units.size() + " observations")
          .expected("one value for each observation")
          .because("values and units belong together")
          .mend("give as many values as labels");
    }
    double[] sums = new double[units.levelCount()];
    int[] first = new int[units.levelCount()];
    Arrays.fill(first, -1);
    for (int i = 0; i < response.length; i++) {
      if (!Double.isFinite(response[i])) {
        throw InputProblem.of("observation " + (i + 1) + " of the response is " + response[i])
            .expected("a finite number")
            .because("a mean has no place for it")
            .mend("leave the observation out");
      }
      int unit = units.code(i);
      sums[unit] += response[i];
      first[unit] = first[unit] < 0 ? i : first[unit];
    }
    int[] counts = units.counts();
    for (int u = 0; u < sums.length; u++) {
      sums[u] /= counts[u];
    }
    return new UnitMeans(units, sums, first);
  }

  /**
   * Mean of each unit, in the order of the units.
   *
   * @return a copy
   */
  public double[] means() {
    return means.clone();
  }

  /**
   * Number of observations of each unit.
   *
   * @return a copy
   */
  public int[] counts() {
    return units.counts();
  }

  /**
   * Whether all units have as many observations.
   *
   * @return false where means are of unequal precision
   */
  public boolean isEqual() {
    return Arrays.stream(counts()).distinct().count() == 1;
  }

  /**
   * A factor of the units.
   *
   * @param factor a factor of the observations that does not change within units
   * @return the factor with one label for each unit
   * @throws InputProblem if observations of one unit have different levels
   */
  public Factor factor(Factor factor) {
    for (int i = 0; i < factor.size(); i++) {
      int start = first[units.code(i)];
      if (factor.code(i) != factor.code(start)) {
        throw InputProblem.of(
                units.name()
                    + " "
                    + units.label(i)
                    + " has both "
                    + factor.label(start)
                    + " and "
                    + factor.label(i)
                    + " of "
                    + factor.name())
            .expected("one level of " + factor.name() + " in each unit")
            .because("a factor that changes within a unit was not applied to units")
            .mend("name the smaller units that it was applied to");
      }
    }
    return factor.select(first);
  }
}
