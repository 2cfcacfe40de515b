package agro.stats;

import java.util.OptionalDouble;
import org.hipparchus.distribution.continuous.TDistribution;

/**
 * A straight line through points by ordinary or weighted least squares, with all that standard
 * errors need. A value object: the points themselves are not kept.
 *
 * @param points number of points, n
 * @param intercept value of the line at zero
 * @param slope rise of the line for each unit of x
 * @param meanX weighted mean of x
 * @param meanY weighted mean of y
 * @param squaresX weighted sum of squares of x about its mean
 * @param squaresY weighted sum of squares of y about its mean
 * @param residualSquares weighted sum of squared residuals
 * @param totalWeight sum of the weights; n when they are equal
 */
public record LinearFit(
    int points,
    double intercept,
    double slope,
    double meanX,
    double meanY,
    double squaresX,
    double squaresY,
    double residualSquares,
    double totalWeight) {

  /**
   * Fits a line by ordinary least squares.
   *
   * @param x places, at least two different ones
   * @param y values, as many
   * @return the line
   * @throws IllegalArgumentException if the places do not define a line or a number is not finite
   */
  public static LinearFit of(double[] x, double[] y) {
    double[] equal = new double[x.length];
    java.util.Arrays.fill(equal, 1);
    return weighted(x, y, equal);
  }

  /**
   * Fits a line by weighted least squares.
   *
   * @param x places, at least two different ones
   * @param y values, as many
   * @param weights positive weights, as many; only their ratios matter to the line
   * @return the line
   * @throws IllegalArgumentException if the places do not define a line, or a number is not finite,
   *     or a weight is not positive
   */
  public static LinearFit weighted(double[] x, double[] y, double[] weights) {
    int n = x.length;
    if (n < 2 || y.length != n || weights.length != n) {
      throw new IllegalArgumentException(
          "a line needs at least two points with x and y, but got " + n + " and " + y.length);
    }
    double w = 0;
    double sumX = 0;
    double sumY = 0;
    for (int i = 0; i < n; i++) {
      if (!(Double.isFinite(x[i]) && Double.isFinite(y[i]) && weights[i] > 0)) {
        throw new IllegalArgumentException(
            "point " + (i + 1) + " is " + x[i] + ", " + y[i] + " with weight " + weights[i]);
      }
      w += weights[i];
      sumX += weights[i] * x[i];
      sumY += weights[i] * y[i];
    }
    double meanX = sumX / w;
    double meanY = sumY / w;
    double xx = 0;
    double xy = 0;
    double yy = 0;
    for (int i = 0; i < n; i++) {
      xx += weights[i] * (x[i] - meanX) * (x[i] - meanX);
      xy += weights[i] * (x[i] - meanX) * (y[i] - meanY);
      yy += weights[i] * (y[i] - meanY) * (y[i] - meanY);
    }
    if (!(xx > 0)) {
      throw new IllegalArgumentException("all " + n + " points lie at x = " + meanX);
    }
    double slope = xy / xx;
    double intercept = meanY - slope * meanX;
    double left = 0;
    for (int i = 0; i < n; i++) {
      double residual = y[i] - intercept - slope * x[i];
      left += weights[i] * residual * residual;
    }
    return new LinearFit(n, intercept, slope, meanX, meanY, xx, yy, left, w);
  }

  /**
   * Degrees of freedom of the residuals.
   *
   * @return n - 2
   */
  public int degreesOfFreedom() {
    return points - 2;
  }

  /**
   * Standard deviation of the residuals, with n - 2 in the denominator.
   *
   * @return NaN for two points, whose line has no residuals
   */
  public double residualDeviation() {
    return points > 2 ? Math.sqrt(residualSquares / (points - 2)) : Double.NaN;
  }

  /**
   * Share of the squares of y that the line explains.
   *
   * @return 0 to 1
   */
  public double rSquared() {
    return squaresY > 0 ? 1 - residualSquares / squaresY : Double.NaN;
  }

  /**
   * Standard error of the slope.
   *
   * @return NaN for two points
   */
  public double slopeStandardError() {
    return residualDeviation() / Math.sqrt(squaresX);
  }

  /**
   * Standard error of the intercept.
   *
   * @return NaN for two points
   */
  public double interceptStandardError() {
    return meanStandardErrorAt(0);
  }

  /**
   * Value of the line.
   *
   * @param x any place
   * @return the value
   */
  public double at(double x) {
    return intercept + slope * x;
  }

  /**
   * Standard error of the line itself at a place, not of a new point.
   *
   * @param x any place
   * @return NaN for two points
   */
  public double meanStandardErrorAt(double x) {
    double apart = x - meanX;
    return residualDeviation() * Math.sqrt(1 / totalWeight + apart * apart / squaresX);
  }

  /**
   * Where the line crosses zero.
   *
   * @return the place, or empty for a level line
   */
  public OptionalDouble zero() {
    return slope == 0 ? OptionalDouble.empty() : OptionalDouble.of(-intercept / slope);
  }

  /**
   * Half width of the t interval of the slope.
   *
   * @param level chance that the interval holds the slope, between 0 and 1
   * @return NaN for two points
   */
  public double slopeHalfWidth(double level) {
    return studentT(level) * slopeStandardError();
  }

  /**
   * Fieller's limits of the place where the line crosses zero: all places at which a value of zero
   * is not refused.
   *
   * <p>Fieller 1954, Journal of the Royal Statistical Society B 16:175-185 (from memory).
   *
   * @param level chance that the interval holds the place, between 0 and 1
   * @return the limits; unbounded ones when the slope itself is not told from zero
   */
  public ConfidenceLimits zeroLimits(double level) {
    double t = studentT(level);
    double s = residualDeviation();
    double g = t * t * s * s / (slope * slope * squaresX);
    if (!(g < 1)) {
      return new ConfidenceLimits(Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY);
    }
    double distance = -meanY / slope;
    double middle = meanX + distance / (1 - g);
    double half =
        t
            * s
            / (Math.abs(slope) * (1 - g))
            * Math.sqrt((1 - g) / totalWeight + distance * distance / squaresX);
    return new ConfidenceLimits(middle - half, middle + half);
  }

  private double studentT(double level) {
    if (!(level > 0 && level < 1)) {
      throw new IllegalArgumentException("a level lies between 0 and 1, but got " + level);
    }
    return points > 2
        ? new TDistribution(points - 2).inverseCumulativeProbability(0.5 + 0.5 * level)
        : Double.NaN;
  }
}
