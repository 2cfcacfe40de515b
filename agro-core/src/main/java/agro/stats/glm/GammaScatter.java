package agro.stats.glm;

import org.hipparchus.special.Gamma;

/** Positive measurements; the shape is one over the dispersion. */
enum GammaScatter implements Scatter {
  INSTANCE;

  @Override
  public double variance(double mean, double complement, double shape) {
    return mean * mean;
  }

  @Override
  public double varianceSlope(double mean, double complement, double shape) {
    return 2 * mean;
  }

  @Override
  public double kernel(double y, double total, double mean, double complement, double shape) {
    return -y / mean - Math.log(mean);
  }

  @Override
  public double constant(double y, double total, double shape) {
    return shape * Math.log(shape * y) - Math.log(y) - Gamma.logGamma(shape);
  }

  @Override
  public double deviance(double y, double total, double mean, double complement, double shape) {
    return 2 * ((y - mean) / mean - Math.log(y / mean));
  }

  @Override
  public double startingMean(double y, double total) {
    return y;
  }

  @Override
  public boolean allows(double mean, double complement) {
    return mean > 0 && mean < Double.POSITIVE_INFINITY;
  }
}
