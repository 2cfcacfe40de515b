package agro.generation;

import agro.units.ThermalTime;
import java.util.List;
import org.hipparchus.distribution.continuous.TDistribution;
import org.hipparchus.util.FastMath;

/**
 * The interval from flight to flight over several seasons. The season is the unit of replication:
 * each gives one estimate, and the scatter between them, not the number of moths, says how well a
 * new season is foretold.
 *
 * @param bySeason the estimates of the seasons, in °C·d, at least one
 */
public record IntervalEstimate(List<Double> bySeason) {

  /** Copies and checks the estimates. */
  public IntervalEstimate {
    bySeason = List.copyOf(bySeason);
    if (bySeason.isEmpty() || bySeason.stream().anyMatch(k -> !(k > 0 && k < 1e6))) {
      throw new IllegalArgumentException(
          "intervals are positive numbers of °C·d, at least one, but got " + bySeason);
    }
  }

  /**
   * Number of seasons.
   *
   * @return 1 or more
   */
  public int seasons() {
    return bySeason.size();
  }

  /**
   * The mean of the seasons.
   *
   * @return the estimate
   */
  public ThermalTime mean() {
    return new ThermalTime(
        bySeason.stream().mapToDouble(Double::doubleValue).average().orElseThrow());
  }

  /**
   * Standard deviation between the seasons' estimates.
   *
   * @return °C·d; NaN for one season
   */
  public double standardDeviationC() {
    if (seasons() == 1) {
      return Double.NaN;
    }
    var mean = mean().degreeDaysC();
    var sum = bySeason.stream().mapToDouble(k -> (k - mean) * (k - mean)).sum();
    return FastMath.sqrt(sum / (seasons() - 1));
  }

  /**
   * Half the width of the confidence interval of the mean, with Student's t on one degree of
   * freedom less than there are seasons.
   *
   * @param level confidence, for example 0.9, above 0 and below 1
   * @return °C·d; NaN for one season
   */
  public double halfWidthOfMeanC(double level) {
    return quantile(level) * standardDeviationC() / FastMath.sqrt(seasons());
  }

  /**
   * Half the width of the interval in which the value of one new season falls.
   *
   * @param level probability, for example 0.9, above 0 and below 1
   * @return °C·d; NaN for one season
   */
  public double halfWidthOfNewSeasonC(double level) {
    return quantile(level) * standardDeviationC() * FastMath.sqrt(1 + 1.0 / seasons());
  }

  private double quantile(double level) {
    if (!(level > 0 && level < 1)) {
      throw new IllegalArgumentException("a level lies between 0 and 1, but got " + level);
    }
    return seasons() == 1
        ? Double.NaN
        : new TDistribution(seasons() - 1.0).inverseCumulativeProbability(0.5 + level / 2);
  }
}
