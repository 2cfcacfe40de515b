package agro.stats.glm;

import org.hipparchus.special.Gamma;

/** So many of a total. */
enum BinomialScatter implements Scatter {
  INSTANCE;

  @Override
  public double variance(double mean, double complement, double shape) {
    return mean * complement;
  }

  @Override
  public double varianceSlope(double mean, double complement, double shape) {
    return complement - mean;
  }

  @Override
  public double kernel(double y, double total, double mean, double complement, double shape) {
    double sum = y == 0 ? 0 : y * Math.log(mean);
    return y == total ? sum : sum + (total - y) * Math.log(complement);
  }

  @Override
  public double constant(double y, double total, double shape) {
    return Gamma.logGamma(total + 1) - Gamma.logGamma(y + 1) - Gamma.logGamma(total - y + 1);
  }

  @Override
  public double deviance(double y, double total, double mean, double complement, double shape) {
    return 2
        * (ErrorFamily.timesLogRatio(y, total * mean)
            + ErrorFamily.timesLogRatio(total - y, total * complement));
  }

  @Override
  public double startingMean(double y, double total) {
    return (y + 0.5) / (total + 1);
  }

  @Override
  public boolean allows(double mean, double complement) {
    return mean >= 0 && complement >= 0;
  }
}
