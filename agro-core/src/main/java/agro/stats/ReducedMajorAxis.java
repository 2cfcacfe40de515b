package agro.stats;

/**
 * A straight line through points of which both coordinates scatter: its slope is the ratio of their
 * standard deviations with the sign of their correlation. It is steeper than the least-squares line
 * by the factor 1/|r|.
 *
 * @param points number of points
 * @param intercept value of the line at zero
 * @param slope rise of the line for each unit of x
 * @param correlation Pearson's correlation of x and y
 */
public record ReducedMajorAxis(int points, double intercept, double slope, double correlation) {

  /**
   * Fits the line.
   *
   * @param x places, at least two different ones
   * @param y values, as many
   * @return the line
   * @throws IllegalArgumentException if the places do not define a line or a number is not finite
   */
  public static ReducedMajorAxis of(double[] x, double[] y) {
    var line = LinearFit.of(x, y);
    double ratio = Math.sqrt(line.squaresY() / line.squaresX());
    double slope = Math.copySign(ratio, line.slope());
    double correlation = ratio == 0 ? 0 : line.slope() / ratio;
    return new ReducedMajorAxis(
        line.points(), line.meanY() - slope * line.meanX(), slope, correlation);
  }

  /**
   * Approximate standard error of the slope, |slope| sqrt((1 - r²)/(n - 2)), the same as that of
   * the least-squares line.
   *
   * <p>Sokal and Rohlf 1995, Biometry, section 15.7 (from memory).
   *
   * @return NaN for two points
   */
  public double slopeStandardError() {
    return points > 2
        ? Math.abs(slope) * Math.sqrt((1 - correlation * correlation) / (points - 2))
        : Double.NaN;
  }
}
