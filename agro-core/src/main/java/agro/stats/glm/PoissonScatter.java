package agro.stats.glm;

import org.hipparchus.special.Gamma;

/** Counts with the variance of their mean. */
enum PoissonScatter implements Scatter {
  INSTANCE;

  @Override
  public double variance(double mean, double complement, double shape) {
    return mean;
  }

  @Override
  public double varianceSlope(double mean, double complement, double shape) {
    return 1;
  }

  @Override
  public double kernel(double y, double total, double mean, double complement, double shape) {
    return y == 0 ? -mean : y * Math.log(mean) - mean;
  }

  @Override
  public double constant(double y, double total, double shape) {
    return -Gamma.logGamma(y + 1);
  }

  @Override
  public double deviance(double y, double total, double mean, double complement, double shape) {
    return 2 * (ErrorFamily.timesLogRatio(y, mean) - (y - mean));
  }

  @Override
  public double startingMean(double y, double total) {
    return y + 0.1;
  }

  @Override
  public boolean allows(double mean, double complement) {
    return mean >= 0 && mean < Double.POSITIVE_INFINITY;
  }
}
