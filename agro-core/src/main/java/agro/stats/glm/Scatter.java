package agro.stats.glm;

/**
 * The formulas of one family for a single observation y out of a total (1 for counts) with a mean
 * per unit of the total and its complement to one.
 */
interface Scatter {

  /** Variance of one unit, up to the dispersion. */
  double variance(double mean, double complement, double shape);

  /** Derivative of the variance by the mean. */
  double varianceSlope(double mean, double complement, double shape);

  /** The part of the log-likelihood that depends on the mean. */
  double kernel(double y, double total, double mean, double complement, double shape);

  /** The part of the log-likelihood that does not depend on the mean. */
  double constant(double y, double total, double shape);

  /** Twice the distance of the log-likelihood from that of a perfect fit, times the dispersion. */
  double deviance(double y, double total, double mean, double complement, double shape);

  /** A mean near the observation, inside the range of the means. */
  double startingMean(double y, double total);

  /** Whether a mean can be one of this family. */
  boolean allows(double mean, double complement);
}
