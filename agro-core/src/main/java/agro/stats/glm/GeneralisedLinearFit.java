package agro.stats.glm;

import agro.report.InputProblem;
import agro.source.Reference;
import agro.stats.ConfidenceLimits;
import agro.stats.linear.Factor;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** A fitted generalised linear model. */
public final class GeneralisedLinearFit {

  /** Pearson's X2 per degree of freedom that is rounding alone. */
  private static final double NO_SCATTER = 1e-20;

  private final GeneralisedLinearModel model;
  private final ModelResponse response;
  private final FittedState state;
  private final FitMeasures measures;
  private final CoefficientCovariance covariance;
  private final double dispersion;

  GeneralisedLinearFit(GeneralisedLinearModel model, ModelResponse response, FittedState state) {
    this.model = model;
    this.response = response;
    this.state = state;
    this.measures = new FitMeasures(state);
    this.covariance = CoefficientCovariance.of(state, model.information(), shapeIsEstimated());
    this.dispersion = dispersionOf(model.family(), measures);
  }

  private static double dispersionOf(ErrorFamily family, FitMeasures measures) {
    if (!family.dispersionIsEstimated()) {
      return 1;
    }
    int df = measures.residualDegreesOfFreedom();
    double sum = measures.pearsonSum();
    if (df < 1 || !(sum > NO_SCATTER * df)) {
      throw InputProblem.of(
              "observations that scatter by X2 = "
                  + Figures.of(sum)
                  + " with "
                  + df
                  + " residual degrees of freedom")
          .expected("more observations than coefficients, and some scatter between replicates")
          .because("the family " + family.words() + " takes its errors from this scatter")
          .mend("leave out terms, or take a family whose scatter is known");
    }
    return sum / df;
  }

  private boolean shapeIsEstimated() {
    return model.family() == ErrorFamily.NEGATIVE_BINOMIAL && Double.isNaN(model.givenShape());
  }

  /** {@return what was fitted} */
  public GeneralisedLinearModel model() {
    return model;
  }

  /** {@return the observations} */
  public ModelResponse response() {
    return response;
  }

  /** {@return the matrix of the linear predictor} */
  public PredictorDesign design() {
    return state.design;
  }

  FittedState state() {
    return state;
  }

  /** The model with the shape, if any, held at its estimate. */
  GeneralisedLinearModel shapedModel() {
    return shapeIsEstimated() ? model.withShape(state.problem.shape) : model;
  }

  /** {@return coefficients in the order of the names of the design} */
  public List<CoefficientEstimate> coefficients() {
    var list = new ArrayList<CoefficientEstimate>();
    var names = state.design.names();
    int[] pivots = state.design.space().pivots();
    int at = 0;
    for (int j = 0; j < names.size(); j++) {
      if (at < pivots.length && pivots[at] == j) {
        double[] unit = new double[pivots.length];
        unit[at++] = 1;
        list.add(estimate(names.get(j), unit));
      } else {
        list.add(CoefficientEstimate.without(names.get(j), EstimateState.NOT_ESTIMABLE));
      }
    }
    return List.copyOf(list);
  }

  /**
   * One coefficient.
   *
   * @param name a name of the design
   * @return its estimate
   * @throws InputProblem if there is no such name
   */
  public CoefficientEstimate coefficient(String name) {
    return coefficients().get(place(name));
  }

  private int place(String name) {
    int place = state.design.names().indexOf(name);
    if (place < 0) {
      throw InputProblem.of("a coefficient named \"" + name + "\"")
          .expected("one of " + state.design.names())
          .because("the design has no other")
          .mend("name one of them");
    }
    return place;
  }

  /**
   * A linear function of the coefficients.
   *
   * @param name its name
   * @param weights weight of each coefficient, in the order of the names of the design
   * @return its estimate, or why there is none
   */
  public CoefficientEstimate function(String name, double... weights) {
    if (!state.design.space().determines(checked(weights))) {
      return CoefficientEstimate.without(name, EstimateState.NOT_ESTIMABLE);
    }
    return estimate(name, state.ofProblem(weights));
  }

  private double[] checked(double[] weights) {
    if (weights.length != state.design.names().size()) {
      throw InputProblem.of(weights.length + " weights")
          .expected("one for each of " + state.design.names())
          .because("weights are matched by their place")
          .mend("give a weight for each coefficient, zero where it takes no part");
    }
    return weights;
  }

  private CoefficientEstimate estimate(String name, double[] function) {
    var kind = state.stateOf(function);
    if (kind == EstimateState.FINITE && measures.isAtEdge()) {
      return CoefficientEstimate.without(name, EstimateState.AT_EDGE);
    }
    if (kind != EstimateState.FINITE || !covariance.isKnown()) {
      return CoefficientEstimate.without(
          name, kind == EstimateState.FINITE ? EstimateState.UNDETERMINED : kind);
    }
    double[] part = state.ofReduced(function);
    double value = 0;
    for (int j = 0; j < part.length; j++) {
      value += part[j] * state.search.beta()[j];
    }
    double error = Math.sqrt(dispersion * covariance.between(part, part));
    return CoefficientEstimate.of(name, value, error, degreesOfFreedomOfTests());
  }

  /**
   * Covariance of two linear functions of the coefficients.
   *
   * @param one weight of each coefficient
   * @param other weight of each coefficient
   * @return NaN where one of them has no finite estimate
   */
  public double covariance(double[] one, double[] other) {
    var space = state.design.space();
    if (!space.determines(checked(one)) || !space.determines(checked(other))) {
      return Double.NaN;
    }
    double[] a = state.ofProblem(one);
    double[] b = state.ofProblem(other);
    boolean finite =
        state.stateOf(a) == EstimateState.FINITE && state.stateOf(b) == EstimateState.FINITE;
    return finite && covariance.isKnown()
        ? dispersion * covariance.between(state.ofReduced(a), state.ofReduced(b))
        : Double.NaN;
  }

  /**
   * Covariance of two coefficients.
   *
   * @param one a name of the design
   * @param other a name of the design
   * @return NaN where one of them has no finite estimate
   */
  public double covariance(String one, String other) {
    return covariance(unit(one), unit(other));
  }

  private double[] unit(String name) {
    double[] unit = new double[state.design.names().size()];
    unit[place(name)] = 1;
    return unit;
  }

  /**
   * Limits of a linear function of the coefficients from the profile of the likelihood, penalised
   * if the fit was; with a shape held at its estimate. For quasi families the fall is divided by
   * the dispersion.
   *
   * @param level confidence, such as 0.95
   * @param weights weight of each coefficient
   * @return limits on the scale of the link, infinite where the likelihood sets none
   * @throws InputProblem if the design does not determine the function
   */
  public ConfidenceLimits profileLimits(double level, double... weights) {
    Levels.check(level);
    if (!state.design.space().determines(checked(weights))) {
      throw InputProblem.of("limits of a function that the design does not determine")
          .expected("a function that observations tell from others")
          .because("any value of it fits the data equally well")
          .mend("leave out the cells without observations");
    }
    double t = Tails.quantile(level, degreesOfFreedomOfTests());
    return ProfileLimits.of(state, state.ofProblem(weights), t * t * dispersion);
  }

  /**
   * Limits of a coefficient from the profile of the likelihood.
   *
   * @param level confidence, such as 0.95
   * @param name a name of the design
   * @return limits on the scale of the link, infinite where the likelihood sets none
   */
  public ConfidenceLimits profileLimits(double level, String name) {
    return profileLimits(level, unit(name));
  }

  /** {@return degrees of freedom of Student's t, infinite where the dispersion is known} */
  public double degreesOfFreedomOfTests() {
    return model.family().dispersionIsEstimated()
        ? measures.residualDegreesOfFreedom()
        : Double.POSITIVE_INFINITY;
  }

  /**
   * Observations less coefficients. Observations that run to their limit, and the coefficients that
   * run with them, do not count.
   *
   * @return a number of degrees of freedom
   */
  public int residualDegreesOfFreedom() {
    return measures.residualDegreesOfFreedom();
  }

  /** {@return number of coefficients of the design that observations tell apart} */
  public int rank() {
    return state.problem.columns;
  }

  /** {@return twice the distance of the log-likelihood from that of a perfect fit} */
  public double deviance() {
    return measures.deviance();
  }

  /**
   * Deviance of the model with one common mean and the same offsets, weights and shape.
   *
   * @return deviance of the model with one common mean and the same offsets, weights and shape
   */
  public double nullDeviance() {
    double[] ones = new double[state.problem.rows];
    Arrays.fill(ones, 1);
    var problem = state.problem;
    var common =
        ScoringProblem.of(ones, 1, problem.response(), problem.kind().plain(), problem.shape);
    var design = PredictorDesign.commonMean(problem.rows);
    return new FitMeasures(FittedState.fit(design, common, new double[0])).deviance();
  }

  /** {@return pearson's X2} */
  public double pearsonChiSquared() {
    return measures.pearsonSum();
  }

  /** {@return factor of the variance: 1, or Pearson's X2 over its degrees of freedom} */
  public double dispersion() {
    return dispersion;
  }

  /**
   * Log-likelihood with all its constants; empty for quasi families, which have none.
   *
   * @return log-likelihood with all its constants; empty for quasi families, which have none
   */
  public Optional<Double> logLikelihood() {
    return model.family().isQuasi()
        ? Optional.empty()
        : Optional.of(measures.logLikelihood(model.family()));
  }

  /** {@return number of estimated parameters, a shape and a dispersion among them} */
  public int parameters() {
    return rank() + (shapeIsEstimated() || model.family() == ErrorFamily.GAMMA ? 1 : 0);
  }

  /**
   * Akaike's criterion; empty for quasi families and for a penalised likelihood.
   *
   * @return akaike's criterion; empty for quasi families and for a penalised likelihood
   */
  public Optional<Double> akaike() {
    return model.method() == EstimationMethod.PENALISED_LIKELIHOOD
        ? Optional.empty()
        : logLikelihood().map(value -> 2.0 * parameters() - 2 * value);
  }

  /** The log-likelihood with the penalty of a penalised fit. */
  double objective() {
    return state.search.value() + state.constant();
  }

  /** {@return shape of a negative binomial} */
  public Optional<ShapeEstimate> shape() {
    if (model.family() != ErrorFamily.NEGATIVE_BINOMIAL) {
      return Optional.empty();
    }
    double shape = state.problem.shape;
    boolean hasError = shapeIsEstimated() && !Double.isInfinite(shape);
    double error = hasError ? ShapeSearch.standardError(state) : Double.NaN;
    return Optional.of(new ShapeEstimate(shape, error, shapeIsEstimated()));
  }

  /** {@return fitted mean of each observation: a proportion, or a count for its exposure} */
  public double[] fittedMeans() {
    double[] means = new double[state.problem.rows];
    for (int i = 0; i < means.length; i++) {
      means[i] = measures.mean(i);
    }
    return means;
  }

  /** {@return fitted number of events of each observation} */
  public double[] fittedCounts() {
    double[] counts = fittedMeans();
    for (int i = 0; i < counts.length; i++) {
      counts[i] *= state.problem.total[i];
    }
    return counts;
  }

  /** {@return linear predictor of each observation, infinite where it runs to its limit} */
  public double[] linearPredictors() {
    return measures.eta().clone();
  }

  /**
   * Share of each observation in its own fit; zero for observations that run to their limit.
   *
   * @return share of each observation in its own fit; zero for observations that run to their limit
   */
  public double[] leverages() {
    return measures.leverages();
  }

  /**
   * Residuals.
   *
   * @param kind how the distance is measured
   * @return a residual for each observation
   */
  public double[] residuals(ResidualKind kind) {
    double[] leverages = measures.leverages();
    double[] residuals = new double[leverages.length];
    for (int i = 0; i < residuals.length; i++) {
      residuals[i] = measures.residual(i, kind, leverages[i], dispersion);
    }
    return residuals;
  }

  /**
   * Residuals that are standard normal when the model holds, counts being spread over the steps of
   * their distribution. Dunn and Smyth 1996, Journal of Computational and Graphical Statistics
   * 5:236-244 (from memory).
   *
   * @param seed seed of the spreading
   * @return a residual for each observation
   */
  public double[] quantileResiduals(long seed) {
    return QuantileResiduals.of(state.problem, measures, dispersion, model.family(), seed);
  }

  /**
   * Whether the search ended at a maximum with a slope of zero.
   *
   * @return true if the search ended at a maximum with a slope of zero
   */
  public boolean converged() {
    return state.search.converged() && !isAtEdge();
  }

  boolean isAtEdge() {
    return measures.isAtEdge();
  }

  /** {@return number of iterations of the last search} */
  public int iterations() {
    return state.search.iterations();
  }

  /**
   * Whether some coefficients have no finite estimate because data are separated.
   *
   * @return true if some coefficients have no finite estimate because data are separated
   */
  public boolean isSeparated() {
    return state.isSeparated();
  }

  /**
   * Marginal means at equal weights of the levels of the other factors, with limits of 95 %.
   *
   * @param factor a factor of the model
   * @param others further factors, for their combinations
   * @return the means on both scales
   * @throws InputProblem if a factor is not in the model
   */
  public ResponseMeans marginalMeans(Factor factor, Factor... others) {
    return ResponseMeansRequest.of(factor, others).from(this);
  }

  /** {@return sentences about what is wrong or odd with this fit; empty if nothing is} */
  public List<String> remarks() {
    return FitRemarks.of(this);
  }

  /**
   * Fits the same model with the same design to other observations, beginning at this fit.
   *
   * @param other observations in the same order
   * @return a new fit
   */
  public GeneralisedLinearFit refit(ModelResponse other) {
    double[] start = state.isSeparated() ? new double[0] : state.search.beta();
    return model.fit(other, state.design, start);
  }

  /** {@return works that the methods of this fit were taken from} */
  public List<Reference> sources() {
    return GeneralisedLinearSources.of(this);
  }

  @Override
  public String toString() {
    return FitText.of(this);
  }
}
