package agro.sampling.presence;

import agro.report.InputProblem;
import agro.sampling.NegativeBinomialCounts;
import agro.source.Reference;
import agro.source.SamplingBibliography;
import agro.units.Numbers;

/** How the share of units with animals follows from their mean number. */
public sealed interface PresenceRelation {

  /**
   * Share of units with at least one animal.
   *
   * @param mean mean count for each unit, above 0
   * @return 0 to 1
   * @throws InputProblem when the mean is not above zero
   */
  double share(double mean);

  /**
   * Mean count at which a share of the units has animals.
   *
   * @param share above 0 and below 1
   * @return the mean
   * @throws InputProblem when the share is not between 0 and 1
   */
  double mean(double share);

  /**
   * Variance of the mean that is estimated from a share, from sampling alone.
   *
   * @param share share of units with animals, above 0 and below 1
   * @param units units looked at, 1 or more
   * @return the variance by the delta method
   * @throws InputProblem when the share is not between 0 and 1
   */
  double variance(double share, int units);

  /**
   * Where the relation is published.
   *
   * @return the source
   */
  Reference source();

  /**
   * The relation in words.
   *
   * @return one line
   */
  String words();

  /**
   * Units for a standard error of D times the mean.
   *
   * @param share expected share of units with animals
   * @param relativeError D, above 0
   * @return n, before rounding
   * @throws InputProblem when the share is not between 0 and 1 or the error is not above zero
   */
  default double unitsFor(double share, double relativeError) {
    requirePositive(relativeError, "standard error over the mean");
    double mean = mean(share);
    return variance(share, 1) / (relativeError * relativeError * mean * mean);
  }

  /** Animals at random: P = 1 − e^(−m). */
  record AtRandom() implements PresenceRelation {
    @Override
    public double share(double mean) {
      requirePositive(mean, "mean");
      return -Math.expm1(-mean);
    }

    @Override
    public double mean(double share) {
      requireShare(share);
      return -Math.log1p(-share);
    }

    @Override
    public double variance(double share, int units) {
      requireShare(share);
      return share / (units * (1 - share));
    }

    @Override
    public Reference source() {
      return SamplingBibliography.PRESENCE_AT_RANDOM;
    }

    @Override
    public String words() {
      return "animals at random, P = 1 − e^(−m)";
    }
  }

  /**
   * Zero term of the negative binomial: P = 1 − (1 + m / k)^(−k).
   *
   * @param k exponent, above 0
   */
  record ZeroTerm(double k) implements PresenceRelation {
    /** Checks the exponent. */
    public ZeroTerm {
      requirePositive(k, "exponent k");
    }

    @Override
    public double share(double mean) {
      requirePositive(mean, "mean");
      return -Math.expm1(-k * Math.log1p(mean / k));
    }

    @Override
    public double mean(double share) {
      requireShare(share);
      return k * Math.expm1(-Math.log1p(-share) / k);
    }

    @Override
    public double variance(double share, int units) {
      requireShare(share);
      return share * Math.exp((-2 / k - 1) * Math.log1p(-share)) / units;
    }

    @Override
    public Reference source() {
      return SamplingBibliography.KUNO_1986;
    }

    @Override
    public String words() {
      return "negative binomial with k = " + Numbers.plain(k) + ", P = 1 − (1 + m/k)^(−k)";
    }
  }

  /**
   * Zero term with the k that the power law of the variance gives at each mean: k = m / (a m^(b −
   * 1) − 1).
   *
   * @param a factor of the power law, above 0
   * @param b exponent of the power law
   */
  record FromPowerLaw(double a, double b) implements PresenceRelation {
    private static final double LARGEST_MEAN = 1e6;
    private static final int MOST_HALVINGS = 200;

    /** Checks the parameters. */
    public FromPowerLaw {
      requirePositive(a, "factor a");
      requirePositive(b, "exponent b");
    }

    @Override
    public double share(double mean) {
      requirePositive(mean, "mean");
      double excess = a * Math.pow(mean, b - 1) - 1;
      // At an excess of zero the counts are at random; log1p(e) / e tends to 1.
      double factor = excess == 0 ? 1 : Math.log1p(excess) / excess;
      return -Math.expm1(-mean * factor);
    }

    @Override
    public double mean(double share) {
      requireShare(share);
      double low = 0;
      double high = 1;
      while (share(high) < share) {
        high *= 2;
        if (high > LARGEST_MEAN) {
          throw InputProblem.of("the mean at a share of " + share)
              .expected("a share that the power law reaches")
              .because("with so many clumps the share stays below it at every density")
              .mend("use counts, or a tally of more than one animal");
        }
      }
      for (int i = 0; i < MOST_HALVINGS && high - low > 1e-15 * high; i++) {
        double middle = 0.5 * (low + high);
        if (share(middle) < share) {
          low = middle;
        } else {
          high = middle;
        }
      }
      return 0.5 * (low + high);
    }

    @Override
    public double variance(double share, int units) {
      double mean = mean(share);
      double step = 1e-5 * mean;
      double slope = (share(mean + step) - share(mean - step)) / (2 * step);
      return share * (1 - share) / (units * slope * slope);
    }

    @Override
    public Reference source() {
      return SamplingBibliography.WILSON_ROOM_1983;
    }

    @Override
    public String words() {
      return "power law s² = "
          + Numbers.plain(a)
          + " m^"
          + Numbers.plain(b)
          + ", P = 1 − exp(−m ln(a m^(b−1)) / (a m^(b−1) − 1))";
    }
  }

  /**
   * Share of units with more than a tally of animals.
   *
   * @param counts distribution of the counts
   * @param tally T, 0 or more
   * @return P(X &gt; T)
   */
  static double shareAboveTally(NegativeBinomialCounts counts, int tally) {
    return counts.chanceOfMoreThan(tally);
  }

  private static void requirePositive(double value, String what) {
    if (!(value > 0 && Double.isFinite(value))) {
      throw InputProblem.of("a " + what + " of " + value)
          .expected("a finite number above 0")
          .because("no share of units follows")
          .mend("give the value from the fit or the density you expect");
    }
  }

  private static void requireShare(double share) {
    if (!(share > 0 && share < 1)) {
      throw InputProblem.of("a share of " + share + " of units with animals")
          .expected("a share above 0 and below 1")
          .because("when no unit or every unit has animals their mean cannot be told")
          .mend("look at more units, or raise the tally above which a unit counts");
    }
  }
}
