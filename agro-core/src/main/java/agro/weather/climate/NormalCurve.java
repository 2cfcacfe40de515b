package agro.weather.climate;

import java.util.Arrays;
import java.util.List;
import org.hipparchus.linear.RealMatrix;

/**
 * The usual course of one daily extreme through the year, with the spread of single days about it.
 * Mean and logarithm of the variance are sums of harmonics of the year. Immutable.
 */
public final class NormalCurve {

  private final double[] coefficients;
  private final double[] logVariance;
  private final RealMatrix covariance;
  private final double lag1;
  private final List<Double> criteria;

  NormalCurve(
      double[] coefficients,
      double[] logVariance,
      RealMatrix covariance,
      double lag1,
      List<Double> criteria) {
    this.coefficients = coefficients;
    this.logVariance = logVariance;
    this.covariance = covariance;
    this.lag1 = lag1;
    this.criteria = List.copyOf(criteria);
  }

  /**
   * Number of harmonics of the mean.
   *
   * @return 0 or more; 1 is a plain yearly wave
   */
  public int harmonics() {
    return (coefficients.length - 1) / 2;
  }

  /**
   * Coefficients of the mean.
   *
   * @return constant, then cosine and sine of each harmonic, in °C
   */
  public List<Double> coefficients() {
    return boxed(coefficients);
  }

  /**
   * Coefficients of the natural logarithm of the variance of a day.
   *
   * @return constant, then cosine and sine of each harmonic
   */
  public List<Double> logVarianceCoefficients() {
    return boxed(logVariance);
  }

  /**
   * Correlation of the departures of a day and the day after.
   *
   * @return -1 to 1
   */
  public double lag1() {
    return lag1;
  }

  /**
   * The criterion by number of harmonics, from 0 on: Schwarz's criterion of the days counted as
   * independent. The smallest is the best.
   *
   * @return as many values as there were candidates
   */
  public List<Double> criteria() {
    return criteria;
  }

  double mean(double phase) {
    return dot(coefficients, phase);
  }

  double spread(double phase) {
    return Math.exp(0.5 * dot(logVariance, phase));
  }

  /** Standard error of the mean curve itself. */
  double meanError(double phase) {
    var basis = YearPhase.basis(phase, harmonics());
    double variance = 0;
    for (int i = 0; i < basis.length; i++) {
      for (int k = 0; k < basis.length; k++) {
        variance += basis[i] * covariance.getEntry(i, k) * basis[k];
      }
    }
    return Math.sqrt(Math.max(0, variance));
  }

  private static double dot(double[] coefficients, double phase) {
    var basis = YearPhase.basis(phase, (coefficients.length - 1) / 2);
    double sum = 0;
    for (int i = 0; i < basis.length; i++) {
      sum += basis[i] * coefficients[i];
    }
    return sum;
  }

  private static List<Double> boxed(double[] values) {
    return Arrays.stream(values).boxed().toList();
  }
}
