package agro.trial.bioassay;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/** Expected numbers and residuals of the groups of a fit. */
final class FittedGroups {

  private static final double DECIDED = 1e-9;

  private final DoseResponseFit fit;
  private final CurveEstimate estimate;
  private final double[][] covariance;

  private FittedGroups(DoseResponseFit fit) {
    this.fit = fit;
    this.estimate = fit.estimate();
    this.covariance = estimate.covariance(FisherInformation.EXPECTED);
  }

  static List<FittedGroup> of(DoseResponseFit fit) {
    var all = new FittedGroups(fit);
    var fitted = new ArrayList<FittedGroup>();
    for (var group : fit.data().groups()) {
      fitted.add(all.one(group));
    }
    return List.copyOf(fitted);
  }

  private FittedGroup one(DoseGroup group) {
    boolean control = fit.groups().controls.contains(group);
    boolean used = !control || fit.groups().way == NaturalMortality.Way.IN_MODEL;
    double n = group.exposed();
    double x = control ? 0 : fit.choices().scale().of(group.dose());
    double eta = control ? Double.NEGATIVE_INFINITY : fit.intercept() + fit.slope() * x;
    double rest = 1 - estimate.natural - estimate.immune;
    double f = fit.choices().link().mean(eta);
    double g = fit.choices().link().complement(eta);
    double p = estimate.natural + rest * f;
    double q = estimate.immune + rest * g;
    double seen = fit.groups().corrected(group);
    double variance = n * p * q;
    double residual = seen == n * p || variance == 0 ? 0 : (seen - n * p) / Math.sqrt(variance);
    double slope = control ? 0 : rest * fit.choices().link().slope(eta);
    var gradient = gradient(slope, x, f, g);
    double leverage = variance == 0 ? 0 : n * quadratic(gradient) / (p * q);
    boolean own = used && leverage < 1 - DECIDED;
    return new FittedGroup(
        group,
        used,
        expected(n, p, control),
        used ? residual : 0,
        own ? OptionalDouble.of(residual / Math.sqrt(1 - leverage)) : OptionalDouble.empty(),
        new ShareCount(group.responded(), group.exposed()).limits(fit.choices().confidence()));
  }

  /** Abbott's way fits corrected numbers; the expected ones are brought back to the count. */
  private double expected(double n, double p, boolean control) {
    if (fit.groups().way != NaturalMortality.Way.ABBOTT) {
      return n * p;
    }
    double c = fit.groups().known;
    return control ? n * c : n * (c + (1 - c) * p);
  }

  private double[] gradient(double slope, double x, double f, double g) {
    var gradient = new double[covariance.length];
    gradient[0] = slope;
    gradient[1] = slope * x;
    if (estimate.naturalPlace != CurveModel.NONE) {
      gradient[estimate.naturalPlace] = g;
    }
    if (estimate.immunePlace != CurveModel.NONE) {
      gradient[estimate.immunePlace] = -f;
    }
    return gradient;
  }

  private double quadratic(double[] gradient) {
    double sum = 0;
    for (int i = 0; i < gradient.length; i++) {
      for (int k = 0; k < gradient.length; k++) {
        sum += gradient[i] * covariance[i][k] * gradient[k];
      }
    }
    return sum;
  }
}
