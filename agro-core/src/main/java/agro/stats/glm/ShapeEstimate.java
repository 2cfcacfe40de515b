package agro.stats.glm;

/**
 * Shape of a negative binomial: the greater, the nearer to a Poisson.
 *
 * @param value the shape; infinite when the counts scatter no more than a Poisson
 * @param standardError its standard error from the observed information; NaN when there is none
 * @param estimated false if it was given
 */
public record ShapeEstimate(double value, double standardError, boolean estimated) {

  /**
   * Whether the counts scatter no more than a Poisson, so that the estimate has no end.
   *
   * @return true if the counts scatter no more than a Poisson, so that the estimate has no end
   */
  public boolean isUnbounded() {
    return Double.isInfinite(value);
  }

  @Override
  public String toString() {
    if (!estimated) {
      return "shape " + Figures.of(value) + ", given";
    }
    return isUnbounded()
        ? "shape unbounded: the counts scatter no more than a Poisson"
        : "shape " + Figures.of(value) + " (standard error " + Figures.of(standardError) + ")";
  }
}
