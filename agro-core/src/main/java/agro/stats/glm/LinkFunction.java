package agro.stats.glm;

import agro.stats.NormalQuantile;
import agro.stats.NormalTail;

/**
 * The function that ties a mean to its linear predictor eta = g(mean), with the derivatives of its
 * inverse. McCullagh and Nelder 1989, Generalized Linear Models, chapter 2 and section 4.3 (from
 * memory).
 *
 * <p>The three links for proportions keep full relative precision in both tails: where the mean
 * rounds to one, {@link #complement} still tells how much is missing.
 */
public enum LinkFunction {
  /** eta = mean. */
  IDENTITY(false) {
    @Override
    public double mean(double eta) {
      return eta;
    }

    @Override
    public double complement(double eta) {
      return 1 - eta;
    }

    @Override
    public double eta(double mean) {
      return mean;
    }

    @Override
    public double slope(double eta) {
      return 1;
    }

    @Override
    public double curvature(double eta) {
      return 0;
    }
  },

  /** eta = ln(mean). */
  LOG(false) {
    @Override
    public double mean(double eta) {
      return Math.exp(eta);
    }

    @Override
    public double complement(double eta) {
      return -Math.expm1(eta);
    }

    @Override
    public double eta(double mean) {
      return Math.log(mean);
    }

    @Override
    public double slope(double eta) {
      return Math.exp(eta);
    }

    @Override
    public double curvature(double eta) {
      return Math.exp(eta);
    }
  },

  /** eta = ln(mean / (1 - mean)). */
  LOGIT(true) {
    @Override
    public double mean(double eta) {
      return 1 / (1 + Math.exp(-eta));
    }

    @Override
    public double complement(double eta) {
      return 1 / (1 + Math.exp(eta));
    }

    @Override
    public double eta(double mean) {
      return Math.log(mean) - Math.log1p(-mean);
    }

    @Override
    public double slope(double eta) {
      return mean(eta) * complement(eta);
    }

    @Override
    public double curvature(double eta) {
      return slope(eta) * (complement(eta) - mean(eta));
    }
  },

  /** eta is the standard normal quantile of the mean. */
  PROBIT(true) {
    @Override
    public double mean(double eta) {
      return NormalTail.below(eta);
    }

    @Override
    public double complement(double eta) {
      return NormalTail.above(eta);
    }

    @Override
    public double eta(double mean) {
      return NormalQuantile.of(mean);
    }

    @Override
    public double slope(double eta) {
      return Math.exp(-0.5 * eta * eta) / ROOT_TWO_PI;
    }

    @Override
    public double curvature(double eta) {
      return -eta * slope(eta);
    }
  },

  /** eta = ln(-ln(1 - mean)). */
  COMPLEMENTARY_LOG_LOG(true) {
    @Override
    public double mean(double eta) {
      return -Math.expm1(-Math.exp(eta));
    }

    @Override
    public double complement(double eta) {
      return Math.exp(-Math.exp(eta));
    }

    @Override
    public double eta(double mean) {
      return Math.log(-Math.log1p(-mean));
    }

    @Override
    public double slope(double eta) {
      return Math.exp(eta - Math.exp(eta));
    }

    @Override
    public double curvature(double eta) {
      return slope(eta) * -Math.expm1(eta);
    }
  };

  private static final double ROOT_TWO_PI = Math.sqrt(2 * Math.PI);

  private final boolean isForProportions;

  LinkFunction(boolean isForProportions) {
    this.isForProportions = isForProportions;
  }

  /**
   * Whether every eta gives a mean between 0 and 1.
   *
   * @return true if every eta gives a mean between 0 and 1
   */
  public boolean isForProportions() {
    return isForProportions;
  }

  /**
   * The mean of a linear predictor.
   *
   * @param eta the linear predictor
   * @return the mean
   */
  public abstract double mean(double eta);

  /**
   * One minus the mean, without loss of digits where the mean is near one.
   *
   * @param eta the linear predictor
   * @return the complement of the mean
   */
  public abstract double complement(double eta);

  /**
   * The linear predictor of a mean.
   *
   * @param mean the mean, inside the range of the link
   * @return the linear predictor; infinite at the ends of the range
   */
  public abstract double eta(double mean);

  /**
   * First derivative of the mean by the linear predictor.
   *
   * @param eta the linear predictor
   * @return d mean / d eta
   */
  public abstract double slope(double eta);

  /**
   * Second derivative of the mean by the linear predictor.
   *
   * @param eta the linear predictor
   * @return d2 mean / d eta2
   */
  public abstract double curvature(double eta);
}
