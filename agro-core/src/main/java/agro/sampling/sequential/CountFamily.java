package agro.sampling.sequential;

import agro.report.InputProblem;
import agro.sampling.NegativeBinomialCounts;
import agro.units.Numbers;

/**
 * A family of distributions of counts with one free mean, as Wald's test needs it. For the step
 * from a low mean m0 to a high mean m1 the logarithm of the likelihood ratio of a count x is d (x −
 * s).
 */
public sealed interface CountFamily {

  /**
   * d, the weight of one animal in the logarithm of the likelihood ratio.
   *
   * @param low m0
   * @param high m1, above m0
   * @return above 0
   */
  double weight(double low, double high);

  /**
   * s, the slope of the stop lines: the mean at which the likelihood ratio stands still.
   *
   * @param low m0
   * @param high m1, above m0
   * @return between m0 and m1
   */
  double slope(double low, double high);

  /**
   * The mean that belongs to a value of h, the parameter of Wald's operating characteristic: 1
   * gives m0, −1 gives m1, 0 gives s.
   *
   * @param low m0
   * @param high m1, above m0
   * @param h the parameter
   * @return the mean
   */
  double meanAt(double low, double high, double h);

  /**
   * Variance of a count at a mean.
   *
   * @param mean mean count
   * @return the variance
   */
  double variance(double mean);

  /**
   * Whether a mean is possible.
   *
   * @param mean mean count
   * @return false for a mean at which the family is not defined
   */
  boolean allows(double mean);

  /**
   * Probability of a count.
   *
   * @param mean mean count
   * @param count 0 or more
   * @return P(X = count)
   * @throws InputProblem for a family of measurements that are no counts
   */
  double probability(double mean, int count);

  /**
   * Probability of more than so many.
   *
   * @param mean mean count
   * @param count any whole number
   * @return P(X &gt; count)
   * @throws InputProblem for a family of measurements that are no counts
   */
  double chanceOfMoreThan(double mean, int count);

  /**
   * The family in words.
   *
   * @return one line
   */
  String words();

  /** Counts at random (Poisson). */
  record AtRandom() implements CountFamily {
    @Override
    public double weight(double low, double high) {
      return Math.log(high / low);
    }

    @Override
    public double slope(double low, double high) {
      return (high - low) / weight(low, high);
    }

    @Override
    public double meanAt(double low, double high, double h) {
      return isStill(h)
          ? slope(low, high)
          : h * (high - low) / Math.expm1(h * Math.log(high / low));
    }

    @Override
    public double variance(double mean) {
      return mean;
    }

    @Override
    public boolean allows(double mean) {
      return mean > 0 && Double.isFinite(mean);
    }

    @Override
    public double probability(double mean, int count) {
      return NegativeBinomialCounts.poisson(mean).probability(count);
    }

    @Override
    public double chanceOfMoreThan(double mean, int count) {
      return NegativeBinomialCounts.poisson(mean).chanceOfMoreThan(count);
    }

    @Override
    public String words() {
      return "counts at random (Poisson)";
    }
  }

  /**
   * Counts in clumps, with one exponent at every density.
   *
   * @param k exponent, above 0
   */
  record Clumped(double k) implements CountFamily {
    /** Checks the exponent. */
    public Clumped {
      requirePositive(k, "exponent k");
    }

    private static double ratio(double low, double high, double k) {
      return Math.log1p(high / k) - Math.log1p(low / k);
    }

    @Override
    public double weight(double low, double high) {
      return Math.log(high / low) - ratio(low, high, k);
    }

    @Override
    public double slope(double low, double high) {
      return k * ratio(low, high, k) / weight(low, high);
    }

    @Override
    public double meanAt(double low, double high, double h) {
      return isStill(h)
          ? slope(low, high)
          : -k * Math.expm1(-h * ratio(low, high, k)) / Math.expm1(h * weight(low, high));
    }

    @Override
    public double variance(double mean) {
      return mean + mean * mean / k;
    }

    @Override
    public boolean allows(double mean) {
      return mean > 0 && Double.isFinite(mean);
    }

    @Override
    public double probability(double mean, int count) {
      return new NegativeBinomialCounts(mean, k).probability(count);
    }

    @Override
    public double chanceOfMoreThan(double mean, int count) {
      return new NegativeBinomialCounts(mean, k).chanceOfMoreThan(count);
    }

    @Override
    public String words() {
      return "counts in clumps (negative binomial, k = " + Numbers.plain(k) + ")";
    }
  }

  /** Units with or without animals (binomial); the mean is the share of units with animals. */
  record Presence() implements CountFamily {
    @Override
    public double weight(double low, double high) {
      return Math.log(high / low) - Math.log((1 - high) / (1 - low));
    }

    @Override
    public double slope(double low, double high) {
      return -Math.log((1 - high) / (1 - low)) / weight(low, high);
    }

    @Override
    public double meanAt(double low, double high, double h) {
      if (isStill(h)) {
        return slope(low, high);
      }
      double without = Math.expm1(h * Math.log((1 - high) / (1 - low)));
      double with = Math.expm1(h * Math.log(high / low));
      return -without / (with - without);
    }

    @Override
    public double variance(double mean) {
      return mean * (1 - mean);
    }

    @Override
    public boolean allows(double mean) {
      return mean > 0 && mean < 1;
    }

    @Override
    public double probability(double mean, int count) {
      return switch (count) {
        case 0 -> 1 - mean;
        case 1 -> mean;
        default -> 0;
      };
    }

    @Override
    public double chanceOfMoreThan(double mean, int count) {
      if (count < 0) {
        return 1;
      }
      return count == 0 ? mean : 0;
    }

    @Override
    public String words() {
      return "units with or without animals (binomial)";
    }
  }

  /**
   * Measurements with a normal distribution of known spread, such as weights or transformed counts.
   *
   * @param standardDeviation above 0
   */
  record Normal(double standardDeviation) implements CountFamily {
    /** Checks the standard deviation. */
    public Normal {
      requirePositive(standardDeviation, "standard deviation");
    }

    @Override
    public double weight(double low, double high) {
      return (high - low) / (standardDeviation * standardDeviation);
    }

    @Override
    public double slope(double low, double high) {
      return 0.5 * (low + high);
    }

    @Override
    public double meanAt(double low, double high, double h) {
      return slope(low, high) - 0.5 * h * (high - low);
    }

    @Override
    public double variance(double mean) {
      return standardDeviation * standardDeviation;
    }

    @Override
    public boolean allows(double mean) {
      return Double.isFinite(mean);
    }

    @Override
    public double probability(double mean, int count) {
      throw noCounts();
    }

    @Override
    public double chanceOfMoreThan(double mean, int count) {
      throw noCounts();
    }

    private static InputProblem noCounts() {
      return InputProblem.of("exact properties of a plan for normal measurements")
          .expected("a plan for counts or for presence and absence")
          .because("the exact recursion goes over whole numbers of animals")
          .mend("use Wald's approximation, or simulate the plan");
    }

    @Override
    public String words() {
      return "normal measurements with standard deviation " + Numbers.plain(standardDeviation);
    }
  }

  /** At h = 0 the formulas are 0 over 0. */
  private static boolean isStill(double h) {
    return Math.abs(h) < 1e-9;
  }

  private static void requirePositive(double value, String what) {
    if (!(value > 0 && Double.isFinite(value))) {
      throw InputProblem.of("a " + what + " of " + value)
          .expected("a finite number above 0")
          .because("counts have no such distribution")
          .mend("take the value from a fit over several fields");
    }
  }
}
