package agro.sampling;

import agro.report.InputProblem;
import agro.units.Numbers;

/** How the variance of counts follows from their mean. */
public sealed interface VarianceModel {

  /**
   * Variance of the counts at a mean.
   *
   * @param mean mean count for each unit, above 0
   * @return the variance
   */
  double variance(double mean);

  /**
   * The model in words.
   *
   * @return one line with its parameters
   */
  String words();

  /** Counts at random: s² = m. */
  record Random() implements VarianceModel {
    @Override
    public double variance(double mean) {
      return mean;
    }

    @Override
    public String words() {
      return "counts at random (Poisson), s² = m";
    }
  }

  /** Units with or without the animal: s² = p (1 − p), where the mean is the share p. */
  record Presence() implements VarianceModel {
    @Override
    public double variance(double mean) {
      if (!(mean > 0 && mean < 1)) {
        throw InputProblem.of("a share of " + mean + " of units with animals")
            .expected("a share above 0 and below 1")
            .because("at 0 or 1 all units are alike and the share has no spread")
            .mend("give the share that you expect, such as 0.2");
      }
      return mean * (1 - mean);
    }

    @Override
    public String words() {
      return "units with or without animals (binomial), s² = p (1 − p)";
    }
  }

  /**
   * Negative binomial: s² = m + m² / k.
   *
   * @param k exponent, above 0
   */
  record NegativeBinomial(double k) implements VarianceModel {
    /** Checks the exponent. */
    public NegativeBinomial {
      requirePositive(k, "exponent k");
    }

    @Override
    public double variance(double mean) {
      return mean + mean * mean / k;
    }

    @Override
    public String words() {
      return "negative binomial with k = " + Numbers.plain(k) + ", s² = m + m²/k";
    }
  }

  /**
   * Power law of Taylor: s² = a m^b.
   *
   * @param a factor, above 0
   * @param b exponent
   */
  record Power(double a, double b) implements VarianceModel {
    /** Checks the parameters. */
    public Power {
      requirePositive(a, "factor a");
      if (!Double.isFinite(b)) {
        requirePositive(b, "exponent b");
      }
    }

    @Override
    public double variance(double mean) {
      return a * Math.pow(mean, b);
    }

    @Override
    public String words() {
      return "power law, s² = " + Numbers.significant(a, 4) + " m^" + Numbers.significant(b, 4);
    }
  }

  /**
   * Line of mean crowding of Iwao: s² = (α + 1) m + (β − 1) m².
   *
   * @param alpha intercept, above −1
   * @param beta slope, above 0
   */
  record Crowding(double alpha, double beta) implements VarianceModel {
    /** Checks the parameters. */
    public Crowding {
      requirePositive(alpha + 1, "α + 1");
      requirePositive(beta, "slope β");
    }

    @Override
    public double variance(double mean) {
      return (alpha + 1) * mean + (beta - 1) * mean * mean;
    }

    @Override
    public String words() {
      return "mean crowding, m* = "
          + Numbers.significant(alpha, 4)
          + " + "
          + Numbers.significant(beta, 4)
          + " m";
    }
  }

  /**
   * A variance known from a pilot sample, the same at every mean.
   *
   * @param value s², above 0
   */
  record Known(double value) implements VarianceModel {
    /** Checks the variance. */
    public Known {
      requirePositive(value, "variance");
    }

    @Override
    public double variance(double mean) {
      return value;
    }

    @Override
    public String words() {
      return "variance of " + Numbers.plain(value) + " from a pilot sample";
    }
  }

  private static void requirePositive(double value, String what) {
    if (!(value > 0 && Double.isFinite(value))) {
      throw InputProblem.of("a " + what + " of " + value)
          .expected("a finite number above 0")
          .because("the variance of counts would not be above 0")
          .mend("take the value from a fit over several fields");
    }
  }
}
