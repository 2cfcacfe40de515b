package agro.sampling.injury;

import agro.report.InputProblem;
import agro.sampling.CountSample;
import agro.stats.LinearFit;
import agro.units.Numbers;
import org.hipparchus.distribution.RealDistribution;
import org.hipparchus.distribution.continuous.GammaDistribution;
import org.hipparchus.distribution.continuous.NormalDistribution;
import org.hipparchus.distribution.continuous.TDistribution;

/** A number that is known as a range or a distribution, such as a price at harvest. */
public sealed interface UncertainNumber {

  /**
   * Chance of a value up to a number.
   *
   * @param x any number
   * @return 0 to 1
   */
  double chanceUpTo(double x);

  /**
   * The value below which a share of the distribution lies.
   *
   * @param share above 0 and below 1
   * @return the quantile
   */
  double quantile(double share);

  /**
   * The distribution in words.
   *
   * @return one line
   */
  String words();

  /**
   * A number that is known.
   *
   * @param value finite
   * @return the number
   */
  static UncertainNumber exactly(double value) {
    return new Exact(value);
  }

  /**
   * Anything from a lowest to a highest value alike.
   *
   * @param low lowest value
   * @param high highest value, above the lowest
   * @return the distribution
   * @throws InputProblem when the values are not in order
   */
  static UncertainNumber between(double low, double high) {
    return new Uniform(low, high);
  }

  /**
   * A most likely value with a lowest and a highest one.
   *
   * @param low lowest value
   * @param likely most likely value
   * @param high highest value
   * @return the distribution
   * @throws InputProblem when the values are not in order
   */
  static UncertainNumber triangular(double low, double likely, double high) {
    return new Triangular(low, likely, high);
  }

  /**
   * The slope of a line with its standard error, by Student's t, with its sign turned so that a
   * falling yield gives a loss above zero.
   *
   * @param loss line of yield on pests
   * @return loss in t/ha for each pest
   */
  static UncertainNumber lossOf(YieldLoss loss) {
    LinearFit line = loss.line();
    return new StudentT(-line.slope(), line.slopeStandardError(), line.degreesOfFreedom());
  }

  /**
   * The density behind a sample of counts: a gamma distribution with the mean of the sample and the
   * standard error of the mean. Where all counts are zero, the exponential distribution with mean 1
   * / n: what counts at random leave possible when no density is preferred beforehand.
   *
   * @param counts the counts
   * @return the density for each unit
   */
  static UncertainNumber densityOf(CountSample counts) {
    double mean = counts.mean();
    int n = counts.size();
    if (mean == 0) {
      return new Gamma(1.0 / n, 1.0 / n);
    }
    double variance = counts.variance() > 0 ? counts.variance() : mean;
    return new Gamma(mean, Math.sqrt(variance / n));
  }

  /**
   * A number that is known.
   *
   * @param value finite
   */
  record Exact(double value) implements UncertainNumber {
    /** Checks the number. */
    public Exact {
      requireOrder(Double.isFinite(value), "an exact number of " + value);
    }

    @Override
    public double chanceUpTo(double x) {
      return x >= value ? 1 : 0;
    }

    @Override
    public double quantile(double share) {
      return value;
    }

    @Override
    public String words() {
      return Numbers.significant(value, 6);
    }
  }

  /**
   * All values of a range alike.
   *
   * @param low lowest value
   * @param high highest value
   */
  record Uniform(double low, double high) implements UncertainNumber {
    /** Checks the order. */
    public Uniform {
      requireOrder(
          low < high && Double.isFinite(high - low), "a range from " + low + " to " + high);
    }

    @Override
    public double chanceUpTo(double x) {
      return Math.min(1, Math.max(0, (x - low) / (high - low)));
    }

    @Override
    public double quantile(double share) {
      return low + share * (high - low);
    }

    @Override
    public String words() {
      return Numbers.plain(low) + " to " + Numbers.plain(high) + ", all alike";
    }
  }

  /**
   * A triangle over a range.
   *
   * @param low lowest value
   * @param likely most likely value
   * @param high highest value
   */
  record Triangular(double low, double likely, double high) implements UncertainNumber {
    /** Checks the order. */
    public Triangular {
      requireOrder(
          low <= likely && likely <= high && low < high && Double.isFinite(high - low),
          "a triangle over " + low + ", " + likely + ", " + high);
    }

    @Override
    public double chanceUpTo(double x) {
      if (x <= low) {
        return 0;
      }
      if (x >= high) {
        return 1;
      }
      return x <= likely
          ? (x - low) * (x - low) / ((high - low) * (likely - low))
          : 1 - (high - x) * (high - x) / ((high - low) * (high - likely));
    }

    @Override
    public double quantile(double share) {
      double turn = (likely - low) / (high - low);
      return share <= turn
          ? low + Math.sqrt(share * (high - low) * (likely - low))
          : high - Math.sqrt((1 - share) * (high - low) * (high - likely));
    }

    @Override
    public String words() {
      return Numbers.plain(low)
          + " to "
          + Numbers.plain(high)
          + ", most likely "
          + Numbers.plain(likely);
    }
  }

  /**
   * The normal distribution.
   *
   * @param mean mean
   * @param standardDeviation above 0
   */
  record Normal(double mean, double standardDeviation) implements UncertainNumber {
    /** Checks the numbers. */
    public Normal {
      requireOrder(
          Double.isFinite(mean) && standardDeviation > 0 && Double.isFinite(standardDeviation),
          "a normal distribution with mean " + mean + " and deviation " + standardDeviation);
    }

    @Override
    public double chanceUpTo(double x) {
      return standardNormal().cumulativeProbability((x - mean) / standardDeviation);
    }

    @Override
    public double quantile(double share) {
      return mean + standardDeviation * standardNormal().inverseCumulativeProbability(share);
    }

    @Override
    public String words() {
      return Numbers.plain(mean) + " ± " + Numbers.plain(standardDeviation) + " (normal)";
    }
  }

  /**
   * The log-normal distribution: the logarithm is normal.
   *
   * @param median above 0
   * @param factor geometric standard deviation, above 1: two values in three lie within the median
   *     divided and multiplied by it
   */
  record LogNormal(double median, double factor) implements UncertainNumber {
    /** Checks the numbers. */
    public LogNormal {
      requireOrder(
          median > 0 && Double.isFinite(median) && factor > 1 && Double.isFinite(factor),
          "a log-normal distribution with median " + median + " and factor " + factor);
    }

    @Override
    public double chanceUpTo(double x) {
      return x <= 0
          ? 0
          : standardNormal().cumulativeProbability(Math.log(x / median) / Math.log(factor));
    }

    @Override
    public double quantile(double share) {
      return median
          * Math.exp(Math.log(factor) * standardNormal().inverseCumulativeProbability(share));
    }

    @Override
    public String words() {
      return Numbers.plain(median) + " within a factor of " + Numbers.plain(factor);
    }
  }

  /**
   * Student's t about an estimate with its standard error.
   *
   * @param estimate the estimate
   * @param standardError above 0
   * @param degreesOfFreedom above 0
   */
  record StudentT(double estimate, double standardError, double degreesOfFreedom)
      implements UncertainNumber {
    /** Checks the numbers. */
    public StudentT {
      requireOrder(
          Double.isFinite(estimate)
              && standardError > 0
              && Double.isFinite(standardError)
              && degreesOfFreedom > 0,
          "an estimate of " + estimate + " with a standard error of " + standardError);
    }

    private RealDistribution standard() {
      return new TDistribution(degreesOfFreedom);
    }

    @Override
    public double chanceUpTo(double x) {
      return standard().cumulativeProbability((x - estimate) / standardError);
    }

    @Override
    public double quantile(double share) {
      return estimate + standardError * standard().inverseCumulativeProbability(share);
    }

    @Override
    public String words() {
      return Numbers.significant(estimate, 4)
          + " with a standard error of "
          + Numbers.significant(standardError, 3);
    }
  }

  /**
   * The gamma distribution, which is never below zero.
   *
   * @param mean above 0
   * @param standardDeviation above 0
   */
  record Gamma(double mean, double standardDeviation) implements UncertainNumber {
    /** Checks the numbers. */
    public Gamma {
      requireOrder(
          mean > 0
              && Double.isFinite(mean)
              && standardDeviation > 0
              && Double.isFinite(standardDeviation),
          "a gamma distribution with mean " + mean + " and deviation " + standardDeviation);
    }

    private RealDistribution distribution() {
      double ratio = standardDeviation / mean;
      return new GammaDistribution(1 / (ratio * ratio), mean * ratio * ratio);
    }

    @Override
    public double chanceUpTo(double x) {
      return x <= 0 ? 0 : distribution().cumulativeProbability(x);
    }

    @Override
    public double quantile(double share) {
      return distribution().inverseCumulativeProbability(share);
    }

    @Override
    public String words() {
      return Numbers.significant(mean, 4) + " ± " + Numbers.significant(standardDeviation, 3);
    }
  }

  private static NormalDistribution standardNormal() {
    return new NormalDistribution();
  }

  private static void requireOrder(boolean fits, String what) {
    if (!fits) {
      throw InputProblem.of(what)
          .expected("finite numbers in the order that the distribution needs, spreads above 0")
          .because("nothing can be drawn from it")
          .mend("give lowest before highest, and exactly(x) for a number without spread");
    }
  }
}
