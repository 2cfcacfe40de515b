package agro.stats.glm;

import java.util.Locale;
import java.util.Set;
import org.hipparchus.special.Gamma;

/**
 * How observations scatter about their means: the variance function, the log-likelihood and the
 * deviance. McCullagh and Nelder 1989, Generalized Linear Models, sections 2.2 and 9.2; the
 * negative binomial as in Venables and Ripley 2002, Modern Applied Statistics with S, section 7.4
 * (both from memory).
 */
public enum ErrorFamily {
  /** So many of n. */
  BINOMIAL(LinkFunction.LOGIT, false, BinomialScatter.INSTANCE),

  /** So many of n with a variance that is a multiple of the binomial one. */
  QUASI_BINOMIAL(LinkFunction.LOGIT, true, BinomialScatter.INSTANCE),

  /** Counts with the variance of their mean. */
  POISSON(LinkFunction.LOG, false, PoissonScatter.INSTANCE),

  /** Counts with a variance that is a multiple of the mean. */
  QUASI_POISSON(LinkFunction.LOG, true, PoissonScatter.INSTANCE),

  /** Counts with variance mean + mean squared / shape. */
  NEGATIVE_BINOMIAL(LinkFunction.LOG, false, NegativeBinomialScatter.INSTANCE),

  /** Positive measurements with a constant coefficient of variation. */
  GAMMA(LinkFunction.LOG, true, GammaScatter.INSTANCE);

  private final LinkFunction usualLink;
  private final boolean dispersionIsEstimated;
  private final Scatter scatter;

  ErrorFamily(LinkFunction usualLink, boolean dispersionIsEstimated, Scatter scatter) {
    this.usualLink = usualLink;
    this.dispersionIsEstimated = dispersionIsEstimated;
    this.scatter = scatter;
  }

  Scatter scatter() {
    return scatter;
  }

  /**
   * The link that is taken when none is named.
   *
   * @return the link that is taken when none is named
   */
  public LinkFunction usualLink() {
    return usualLink;
  }

  /**
   * Whether the variance has a factor of its own that is estimated from Pearson's X2.
   *
   * @return true if the variance has a factor of its own that is estimated from Pearson's X2
   */
  public boolean dispersionIsEstimated() {
    return dispersionIsEstimated;
  }

  /**
   * Whether only a relation of mean and variance is taken, so that there is no likelihood.
   *
   * @return true if only a relation of mean and variance is taken, so that there is no likelihood
   */
  public boolean isQuasi() {
    return this == QUASI_BINOMIAL || this == QUASI_POISSON;
  }

  /**
   * Whether observations are so many of n.
   *
   * @return true if observations are so many of n
   */
  public boolean countsOutOfTotal() {
    return this == BINOMIAL || this == QUASI_BINOMIAL;
  }

  /** The links that this family may have. */
  Set<LinkFunction> links() {
    return countsOutOfTotal()
        ? Set.of(
            LinkFunction.LOGIT,
            LinkFunction.PROBIT,
            LinkFunction.COMPLEMENTARY_LOG_LOG,
            LinkFunction.LOG,
            LinkFunction.IDENTITY)
        : Set.of(LinkFunction.LOG, LinkFunction.IDENTITY);
  }

  /**
   * The name in words, as in a sentence.
   *
   * @return the name in words, as in a sentence
   */
  public String words() {
    return this == QUASI_BINOMIAL || this == QUASI_POISSON
        ? name().toLowerCase(Locale.ROOT).replace('_', '-')
        : name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }

  /** Sum of logarithms for whole numbers, so that large shapes lose no digits. */
  static double logOfRising(double base, double count) {
    if (count <= 256 && count == Math.rint(count)) {
      double sum = 0;
      for (int j = 0; j < count; j++) {
        sum += Math.log(base + j);
      }
      return sum;
    }
    return Gamma.logGamma(base + count) - Gamma.logGamma(base);
  }

  /** a log(a / b), zero where a is zero. */
  static double timesLogRatio(double a, double b) {
    return a == 0 ? 0 : a * Math.log(a / b);
  }
}
