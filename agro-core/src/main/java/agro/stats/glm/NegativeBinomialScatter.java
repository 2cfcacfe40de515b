package agro.stats.glm;

import org.hipparchus.special.Gamma;

/** Counts with variance mean + mean squared / shape; an infinite shape is the Poisson. */
enum NegativeBinomialScatter implements Scatter {
  INSTANCE;

  @Override
  public double variance(double mean, double complement, double shape) {
    return mean + mean * mean / shape;
  }

  @Override
  public double varianceSlope(double mean, double complement, double shape) {
    return 1 + 2 * mean / shape;
  }

  @Override
  public double kernel(double y, double total, double mean, double complement, double shape) {
    if (Double.isInfinite(shape)) {
      return PoissonScatter.INSTANCE.kernel(y, total, mean, complement, shape);
    }
    double none = -shape * Math.log1p(mean / shape);
    return y == 0 ? none : none + y * Math.log(mean / (1 + mean / shape));
  }

  @Override
  public double constant(double y, double total, double shape) {
    double factorial = Gamma.logGamma(y + 1);
    return Double.isInfinite(shape)
        ? -factorial
        : ErrorFamily.logOfRising(shape, y) - y * Math.log(shape) - factorial;
  }

  @Override
  public double deviance(double y, double total, double mean, double complement, double shape) {
    return Double.isInfinite(shape)
        ? PoissonScatter.INSTANCE.deviance(y, total, mean, complement, shape)
        : 2
            * (ErrorFamily.timesLogRatio(y, mean)
                - (y + shape) * Math.log1p((y - mean) / (mean + shape)));
  }

  @Override
  public double startingMean(double y, double total) {
    return y == 0 ? 1.0 / 6 : y;
  }

  @Override
  public boolean allows(double mean, double complement) {
    return PoissonScatter.INSTANCE.allows(mean, complement);
  }
}
