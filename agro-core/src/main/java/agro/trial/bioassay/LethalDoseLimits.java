package agro.trial.bioassay;

import agro.stats.ProfileSearch;

/** Lethal doses of one fit with their limits. */
final class LethalDoseLimits {

  private final DoseResponseFit fit;
  private final double factor;
  private final double deviate;

  LethalDoseLimits(DoseResponseFit fit) {
    this.fit = fit;
    this.factor = fit.heterogeneityFactor();
    this.deviate = fit.deviate();
  }

  LethalDose at(double percent) {
    double eta = fit.predictor(percent);
    double a = fit.intercept();
    double b = fit.slope();
    double place = (eta - a) / b;
    var v = fit.covariance();
    double aa = factor * v[0][0];
    double ab = factor * v[0][1];
    double bb = factor * v[1][1];
    double error = Math.sqrt(Math.max(0, aa + 2 * place * ab + place * place * bb)) / b;
    var region =
        switch (fit.choices().limitMethod()) {
          case FIELLER -> fieller(place, aa, ab, bb);
          case DELTA -> DoseLimits.between(place - deviate * error, place + deviate * error);
          case PROFILE -> profile(eta, place, error);
        };
    var scale = fit.choices().scale();
    return new LethalDose(
        percent,
        scale.dose(place),
        place,
        error,
        region.inDoses(scale),
        fit.choices().limitMethod(),
        fit.choices().confidence(),
        deviate * deviate * bb / (b * b));
  }

  /** About the estimate itself, where the numerator is 0, so that few digits are lost. */
  private DoseLimits fieller(double place, double aa, double ab, double bb) {
    double atPlace = Math.max(0, aa + 2 * place * ab + place * place * bb);
    double withSlope = -(ab + place * bb);
    return DoseLimits.fieller(0, fit.slope(), atPlace, withSlope, bb, deviate).movedBy(place);
  }

  private DoseLimits profile(double eta, double place, double error) {
    double best = worst(eta, place, fit.slope());
    double limit = best + 0.5 * factor * deviate * deviate;
    var limits =
        ProfileSearch.limits(
            held -> worst(eta, held, fit.slope()), place, Math.max(error, 1e-9), best, limit);
    return DoseLimits.between(limits.low(), limits.high());
  }

  /** Least negative log-likelihood of all curves that pass the share at a place. */
  private double worst(double eta, double place, double slope) {
    var groups = fit.groups();
    boolean natural = groups.way == NaturalMortality.Way.IN_MODEL;
    boolean immune = fit.choices().immunity();
    int parameters = 1 + (natural ? 1 : 0) + (immune ? 1 : 0);
    var model = new CurveModel(fit.choices().link(), parameters);
    var places =
        new SingleCurve.Places(
            CurveModel.NONE,
            0,
            natural ? 1 : CurveModel.NONE,
            immune ? parameters - 1 : CurveModel.NONE);
    SingleCurve.addGroups(model, groups, places, place, eta);
    var start = new double[parameters];
    start[0] = slope;
    if (natural) {
      start[1] = Math.max(fit.naturalMortality(), 1e-4);
    }
    if (immune) {
      start[parameters - 1] = Math.max(fit.immuneShare(), 1e-4);
    }
    var search = CurveSearch.from(model, start, 0);
    if (!search.converged) {
      start[0] = 0;
      search = CurveSearch.from(model, start, 0);
    }
    return -search.logLikelihood;
  }
}
