package agro.stats.glm;

import agro.stats.ConfidenceLimits;

/**
 * A marginal mean of a generalised linear model.
 *
 * @param label level, or levels joined by a colon
 * @param predictor mean on the scale of the link, at the exposure of the table
 * @param mean the same on the scale of the response; NaN where it is not determined. Where the
 *     predictor runs away it is the end of the range, 0 or 1
 * @param standardError of the mean by the delta method; NaN unless the predictor is finite
 * @param limits limits of the mean, those of the predictor transformed, or from the profile of the
 *     likelihood where the predictor runs away
 */
public record ResponseMean(
    String label,
    CoefficientEstimate predictor,
    double mean,
    double standardError,
    ConfidenceLimits limits) {

  @Override
  public String toString() {
    if (Double.isNaN(mean)) {
      return label + ": " + predictor.state().words();
    }
    return label
        + ": "
        + Figures.of(mean)
        + (predictor.isFinite() ? " (standard error " + Figures.of(standardError) + ")" : "")
        + ", limits "
        + Figures.of(limits.low())
        + " to "
        + Figures.of(limits.high())
        + (predictor.isFinite() ? "" : "; " + predictor.state().words());
  }
}
