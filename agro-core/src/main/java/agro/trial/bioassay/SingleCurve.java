package agro.trial.bioassay;

import agro.report.InputProblem;

/** Fits one curve: checks, start, search, and what may be wrong with what was found. */
final class SingleCurve {

  /** Predictor between neighbouring doses beyond which the line is a step. */
  private static final double STEP = 25;

  /** Predictor between lowest and highest dose that a real but poor line does not reach. */
  private static final double RUNAWAY = 8;

  private static final double FIRST_IMMUNE = 0.02;

  private final DoseResponse choices;
  private final BioassayData data;
  private final FitGroups groups;

  private SingleCurve(DoseResponse choices, BioassayData data) {
    this.choices = choices;
    this.data = data;
    this.groups = FitGroups.of(choices, data);
  }

  static Attempt attempt(DoseResponse choices, BioassayData data) {
    ControlCheck.require(choices, data);
    return new SingleCurve(choices, data).attempt();
  }

  private Attempt attempt() {
    var existence = new CurveExistence(choices, data);
    var none = existence.check(groups.x, groups.exposed, groups.responded);
    if (none != null) {
      return Attempt.of(none);
    }
    boolean estimated = groups.way == NaturalMortality.Way.IN_MODEL || choices.immunity();
    var line = line(estimated ? firstNatural() : groups.fixedInCurve());
    if (!estimated) {
      return line.converged
          ? finished(existence, CurveEstimate.of(line, groups.fixedInCurve()))
          : Attempt.of(existence.notSettled("the search for the line did not settle"));
    }
    requireGroups();
    var model = model(groups, choices);
    var search = CurveSearch.from(model, start(line, model.parameters), centre(groups));
    if (!search.converged) {
      return Attempt.of(unsettled(existence));
    }
    int naturalPlace = groups.way == NaturalMortality.Way.IN_MODEL ? 2 : CurveModel.NONE;
    int immunePlace = choices.immunity() ? model.parameters - 1 : CurveModel.NONE;
    return finished(
        existence, CurveEstimate.of(search, naturalPlace, immunePlace, groups.fixedInCurve()));
  }

  private WithoutCurve unsettled(CurveExistence existence) {
    return existence.notSettled("the search for line and natural response did not settle");
  }

  private LineSearch line(double natural) {
    return new LineSearch(choices.link(), groups.x, groups.exposed, groups.responded, natural)
        .search();
  }

  private double firstNatural() {
    if (groups.way != NaturalMortality.Way.IN_MODEL) {
      return groups.fixedInCurve();
    }
    double share = groups.controlShare();
    if (Double.isNaN(share)) {
      share = 0.5 * groups.responded[0] / groups.exposed[0];
    }
    return Math.min(Math.max(share, 1e-3), 0.5);
  }

  private double[] start(LineSearch line, int parameters) {
    var start = new double[parameters];
    start[0] = line.a + line.b * centre(groups);
    start[1] = line.b;
    if (!line.converged) {
      start[0] = 0;
      start[1] = 1 / Math.max(1e-9, groups.x[groups.x.length - 1] - groups.x[0]);
    }
    if (groups.way == NaturalMortality.Way.IN_MODEL) {
      start[2] = firstNatural();
    }
    if (choices.immunity()) {
      start[parameters - 1] = FIRST_IMMUNE;
    }
    return start;
  }

  private void requireGroups() {
    int parameters = 2 + (groups.way == NaturalMortality.Way.IN_MODEL ? 1 : 0);
    parameters += choices.immunity() ? 1 : 0;
    int distinct = groups.controls.isEmpty() ? 0 : 1;
    for (int i = 0; i < groups.x.length; i++) {
      distinct += i == 0 || groups.x[i] > groups.x[i - 1] ? 1 : 0;
    }
    if (distinct < parameters) {
      throw InputProblem.of(distinct + " different doses with the control")
          .expected("at least " + parameters + " for " + parameters + " parameters")
          .because("each parameter of the curve needs a dose that tells it from the others")
          .mend("test more doses, add a control, or estimate fewer parameters");
    }
  }

  private Attempt finished(CurveExistence existence, CurveEstimate estimate) {
    if (!(estimate.b > 0)) {
      return Attempt.of(existence.notRising("the fitted slope is not above zero"));
    }
    if (isStep(estimate)) {
      return Attempt.of(
          existence.notSettled("the fitted line is a step between two neighbouring doses"));
    }
    return estimate.isUsable(choices.information())
        ? Attempt.of(new DoseResponseFit(choices, data, groups, estimate))
        : Attempt.of(existence.notSettled("the information about the curve is singular"));
  }

  /** A likelihood that only rises with the slope is left flat, with a slope less than its error. */
  private boolean isStep(CurveEstimate estimate) {
    double range = groups.x[groups.x.length - 1] - groups.x[0];
    var covariance = estimate.covariance(FisherInformation.EXPECTED);
    return estimate.b * groups.leastGap() > STEP
        || (estimate.b * range > RUNAWAY
            && (covariance == null || !(covariance[1][1] < estimate.b * estimate.b)));
  }

  /** Mean dose, about which the search is well conditioned. */
  static double centre(FitGroups groups) {
    double sum = 0;
    double weights = 0;
    for (int i = 0; i < groups.x.length; i++) {
      sum += groups.exposed[i] * groups.x[i];
      weights += groups.exposed[i];
    }
    return sum / weights;
  }

  /** The curve with all its parameters: a, b, then C and D as far as they are estimated. */
  static CurveModel model(FitGroups groups, DoseResponse choices) {
    boolean natural = groups.way == NaturalMortality.Way.IN_MODEL;
    int immune = choices.immunity() ? (natural ? 3 : 2) : CurveModel.NONE;
    int parameters = 2 + (natural ? 1 : 0) + (choices.immunity() ? 1 : 0);
    var model = new CurveModel(choices.link(), parameters);
    addGroups(model, groups, new Places(0, 1, natural ? 2 : CurveModel.NONE, immune), 0, 0);
    return model;
  }

  /** Places of a curve's parameters. */
  record Places(int intercept, int slope, int natural, int immune) {}

  /** Adds the groups of one curve, doses taken from an origin and predictors from an offset. */
  static void addGroups(
      CurveModel model, FitGroups groups, Places places, double origin, double offset) {
    for (int i = 0; i < groups.x.length; i++) {
      model.points.add(
          new CurveModel.Point(
              groups.x[i] - origin,
              groups.exposed[i],
              groups.responded[i],
              offset,
              places.intercept(),
              places.slope(),
              places.natural(),
              groups.fixedInCurve(),
              places.immune()));
    }
    if (places.natural() != CurveModel.NONE) {
      groups.controls.forEach(control -> addControl(model, control, places));
    }
  }

  static void addControl(CurveModel model, DoseGroup control, Places places) {
    model.points.add(
        new CurveModel.Point(
            0,
            control.exposed(),
            control.responded(),
            Double.NEGATIVE_INFINITY,
            CurveModel.NONE,
            CurveModel.NONE,
            places.natural(),
            0,
            places.immune()));
  }
}
