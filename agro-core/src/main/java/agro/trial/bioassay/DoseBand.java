package agro.trial.bioassay;

import agro.stats.glm.LinkFunction;
import java.util.ArrayList;
import java.util.List;

/**
 * A curve with its pointwise band: the line plus and minus its error, turned into shares; where
 * natural mortality or immunity is estimated, the logit of the share by the delta method, so that
 * their errors are in the band.
 */
final class DoseBand {

  private static final double MARGIN = 0.15;

  private DoseBand() {}

  static List<CurvePoint> of(DoseResponseFit fit, int number) {
    if (number < 2) {
      throw new IllegalArgumentException("a curve needs 2 points or more, but got " + number);
    }
    var x = fit.groups().x;
    double margin = MARGIN * (x[x.length - 1] - x[0]);
    double from = x[0] - (fit.choices().scale().isLogarithm() ? margin : 0);
    double to = x[x.length - 1] + margin;
    var points = new ArrayList<CurvePoint>();
    double t = fit.deviate() * Math.sqrt(fit.heterogeneityFactor());
    for (int i = 0; i < number; i++) {
      points.add(point(fit, from + (to - from) * i / (number - 1), t));
    }
    return List.copyOf(points);
  }

  static CurvePoint at(DoseResponseFit fit, double dose) {
    double t = fit.deviate() * Math.sqrt(fit.heterogeneityFactor());
    return point(fit, fit.choices().scale().of(dose), t);
  }

  private static CurvePoint point(DoseResponseFit fit, double x, double t) {
    var estimate = fit.estimate();
    var link = fit.choices().link();
    var v = fit.covariance();
    double eta = fit.intercept() + fit.slope() * x;
    double rest = 1 - estimate.natural - estimate.immune;
    double share = estimate.natural + rest * link.mean(eta);
    double dose = fit.choices().scale().dose(x);
    if (v.length == 2) {
      double half = t * Math.sqrt(Math.max(0, v[0][0] + 2 * x * v[0][1] + x * x * v[1][1]));
      return new CurvePoint(
          dose,
          share,
          estimate.natural + rest * link.mean(eta - half),
          estimate.natural + rest * link.mean(eta + half));
    }
    var gradient = new double[v.length];
    gradient[0] = rest * link.slope(eta);
    gradient[1] = gradient[0] * x;
    if (estimate.naturalPlace != CurveModel.NONE) {
      gradient[estimate.naturalPlace] = link.complement(eta);
    }
    if (estimate.immunePlace != CurveModel.NONE) {
      gradient[estimate.immunePlace] = -link.mean(eta);
    }
    double variance = 0;
    for (int i = 0; i < v.length; i++) {
      for (int k = 0; k < v.length; k++) {
        variance += gradient[i] * v[i][k] * gradient[k];
      }
    }
    double odds = share * (1 - share);
    if (!(odds > 0)) {
      return new CurvePoint(dose, share, share, share);
    }
    double half = t * Math.sqrt(Math.max(0, variance)) / odds;
    double logit = LinkFunction.LOGIT.eta(share);
    return new CurvePoint(
        dose, share, LinkFunction.LOGIT.mean(logit - half), LinkFunction.LOGIT.mean(logit + half));
  }
}
