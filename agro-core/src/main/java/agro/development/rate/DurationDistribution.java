package agro.development.rate;

import agro.stats.NormalTail;
import org.hipparchus.special.Gamma;

/**
 * How single durations at one temperature scatter about one over the rate. The shape is the same at
 * all temperatures; what temperature changes is the scale.
 *
 * <p>Same shape at all temperatures: Wagner, Wu, Sharpe and Coulson 1984, Annals of the
 * Entomological Society of America 77:475-487 (from memory).
 */
public enum DurationDistribution {
  /** Log-normal with the median 1/r; the dispersion is the standard deviation of ln D. */
  LOG_NORMAL("log-normal durations with median 1/r") {
    @Override
    double below(double relative, double dispersion) {
      return relative <= 0 ? 0 : NormalTail.below(Math.log(relative) / dispersion);
    }

    @Override
    double above(double relative, double dispersion) {
      return relative <= 0 ? 1 : NormalTail.above(Math.log(relative) / dispersion);
    }
  },
  /** Gamma with the mean 1/r; the dispersion is the coefficient of variation. */
  GAMMA("gamma durations with mean 1/r") {
    @Override
    double below(double relative, double dispersion) {
      double shape = 1 / (dispersion * dispersion);
      return relative <= 0 ? 0 : Gamma.regularizedGammaP(shape, shape * relative);
    }

    @Override
    double above(double relative, double dispersion) {
      double shape = 1 / (dispersion * dispersion);
      return relative <= 0 ? 1 : Gamma.regularizedGammaQ(shape, shape * relative);
    }
  },
  /** Weibull with the median 1/r; the dispersion is one over the shape. */
  WEIBULL("Weibull durations with median 1/r") {
    @Override
    double below(double relative, double dispersion) {
      return relative <= 0 ? 0 : -Math.expm1(-LN_TWO * Math.pow(relative, 1 / dispersion));
    }

    @Override
    double above(double relative, double dispersion) {
      return relative <= 0 ? 1 : Math.exp(-LN_TWO * Math.pow(relative, 1 / dispersion));
    }
  };

  private static final double LN_TWO = Math.log(2);
  private static final double LEAST = 1e-300;

  private final String words;

  DurationDistribution(String words) {
    this.words = words;
  }

  /**
   * The distribution in words.
   *
   * @return a phrase
   */
  public String words() {
    return words;
  }

  /** Chance of a duration below, by the duration times the rate. */
  abstract double below(double relative, double dispersion);

  abstract double above(double relative, double dispersion);

  /**
   * Logarithm of the chance that development ends between two looks.
   *
   * @param fromDays last look at which it had not ended
   * @param toDays first look at which it had, infinite when that was never seen
   * @param rate rate of development; where it is 0, development never ends
   * @param dispersion scatter, positive
   * @return at most 0; very low, but finite, for what cannot be
   */
  double logProbability(double fromDays, double toDays, double rate, double dispersion) {
    if (!(rate > 0)) {
      return Double.isInfinite(toDays) ? 0 : Math.log(LEAST);
    }
    double from = fromDays * rate;
    double to = toDays * rate;
    double chance;
    if (Double.isInfinite(toDays)) {
      chance = above(from, dispersion);
    } else {
      chance =
          from > 1
              ? above(from, dispersion) - above(to, dispersion)
              : below(to, dispersion) - below(from, dispersion);
    }
    return Math.log(Math.max(chance, LEAST));
  }
}
