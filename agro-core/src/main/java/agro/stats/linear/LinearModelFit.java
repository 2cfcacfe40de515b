package agro.stats.linear;

import agro.report.InputProblem;
import agro.stats.ConfidenceLimits;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;

/** A linear model fitted to a response by least squares. */
public final class LinearModelFit {

  /** Share of the size of the response below which residuals are rounding. */
  private static final double ROUNDING = 1e-13;

  private final LinearModel model;
  private final double[] response;
  private final double[] rotated;
  private final double residualSquares;
  private final double mean;
  private final double totalSquares;

  LinearModelFit(LinearModel model, double[] response) {
    this.model = model;
    this.response = response;
    this.rotated = model.design().factors().rotate(model.scaled(response));
    double size = 0;
    double sum = 0;
    double weights = 0;
    for (int i = 0; i < response.length; i++) {
      double weight = model.root(i) * model.root(i);
      sum += weight * response[i];
      weights += weight;
      size += weight * response[i] * response[i];
    }
    this.mean = sum / weights;
    double squares = 0;
    for (int i = rank(); i < rotated.length; i++) {
      squares += rotated[i] * rotated[i];
    }
    double total = 0;
    for (int i = 0; i < response.length; i++) {
      double deviation = model.root(i) * (response[i] - mean);
      total += deviation * deviation;
    }
    double smallest = ROUNDING * ROUNDING * size;
    this.residualSquares = squares <= smallest ? 0 : squares;
    this.totalSquares = total <= smallest ? 0 : total;
  }

  private int rank() {
    return model.design().rank();
  }

  /**
   * The model.
   *
   * @return the model that was fitted
   */
  public LinearModel model() {
    return model;
  }

  /**
   * The response.
   *
   * @return a copy
   */
  public double[] response() {
    return response.clone();
  }

  /**
   * Mean of the response, weighted if the model is.
   *
   * @return the general mean
   */
  public double mean() {
    return mean;
  }

  /**
   * What is left of each observation.
   *
   * @return observed less fitted values
   */
  public double[] residuals() {
    double[] effects = rotated.clone();
    Arrays.fill(effects, 0, rank(), 0);
    double[] residuals = model.design().factors().rotateBack(effects);
    for (int i = 0; i < residuals.length; i++) {
      residuals[i] /= model.root(i);
    }
    return residuals;
  }

  /**
   * Values of the model for each observation.
   *
   * @return a new array
   */
  public double[] fittedValues() {
    double[] fitted = residuals();
    for (int i = 0; i < fitted.length; i++) {
      fitted[i] = response[i] - fitted[i];
    }
    return fitted;
  }

  /**
   * Pull of each observation on its own fitted value, 0 to 1.
   *
   * @return a new array
   */
  public double[] leverages() {
    return model.leverages().clone();
  }

  /**
   * Residuals over their own standard errors, those of observations that the model cannot miss left
   * at zero.
   *
   * @return internally studentised residuals
   * @throws InputProblem if there is no residual variance
   */
  public double[] standardisedResiduals() {
    double deviation = Math.sqrt(requireVariance());
    double[] residuals = residuals();
    double[] leverages = model.leverages();
    for (int i = 0; i < residuals.length; i++) {
      double free = 1 - leverages[i];
      double scaled = residuals[i] * model.root(i);
      residuals[i] = free > 1e-10 ? scaled / (deviation * Math.sqrt(free)) : 0;
    }
    return residuals;
  }

  /**
   * Sum of squared residuals.
   *
   * @return at least 0
   */
  public double residualSumOfSquares() {
    return residualSquares;
  }

  /**
   * Sum of squares about the mean.
   *
   * @return at least 0
   */
  public double totalSumOfSquares() {
    return totalSquares;
  }

  /**
   * Degrees of freedom of the residuals.
   *
   * @return at least 0
   */
  public int residualDegreesOfFreedom() {
    return model.residualDegreesOfFreedom();
  }

  /**
   * Mean square of the residuals.
   *
   * @return nothing where the model leaves no degrees of freedom
   */
  public OptionalDouble residualVariance() {
    int df = residualDegreesOfFreedom();
    return df > 0 ? OptionalDouble.of(residualSquares / df) : OptionalDouble.empty();
  }

  double requireVariance() {
    var reason = reasonForNoTest();
    if (!reason.isEmpty()) {
      throw InputProblem.of(reason)
          .expected("residuals that vary, with at least one degree of freedom")
          .because("without an error nothing can be tested and no interval be given")
          .mend("use replicated observations, or leave an interaction out of the model");
    }
    return residualSquares / residualDegreesOfFreedom();
  }

  /** Why nothing can be tested; empty where tests can be made. */
  String reasonForNoTest() {
    if (residualDegreesOfFreedom() == 0) {
      return "the model leaves no degrees of freedom to the residuals: there are as many effects as"
          + " observations (one replicate)";
    }
    if (totalSquares == 0) {
      return "all observations are equal to " + mean + ": there is no variance";
    }
    return residualSquares == 0 ? "all residuals are zero: there is no error variance" : "";
  }

  /**
   * The coefficients in the coding of the model.
   *
   * @return one for each column of the design
   */
  public List<FittedCoefficient> coefficients() {
    var design = model.design();
    double[] estimates = design.factors().solve(rotated);
    var variance = residualVariance();
    var list = new ArrayList<FittedCoefficient>();
    for (int j = 0; j < estimates.length; j++) {
      double[] function = unit(j);
      var error = OptionalDouble.empty();
      boolean estimable = design.isEstimable(function);
      if (estimable && variance.isPresent()) {
        double[] z = design.factors().functionInEffects(function);
        error = OptionalDouble.of(Math.sqrt(variance.getAsDouble() * product(z, z)));
      }
      list.add(new FittedCoefficient(design.columnNames().get(j), estimates[j], error, estimable));
    }
    return List.copyOf(list);
  }

  /**
   * Covariance of two coefficients.
   *
   * @param one column from 0
   * @param other column from 0
   * @return covariance of the estimates
   * @throws InputProblem if there is no residual variance or a coefficient is not estimable
   */
  public double covariance(int one, int other) {
    double[] a = unit(one);
    double[] b = unit(other);
    requireEstimable(a, model.design().columnNames().get(one));
    requireEstimable(b, model.design().columnNames().get(other));
    var factors = model.design().factors();
    return requireVariance() * product(factors.functionInEffects(a), factors.functionInEffects(b));
  }

  private double[] unit(int column) {
    double[] unit = new double[model.design().columns()];
    unit[column] = 1;
    return unit;
  }

  private void requireEstimable(double[] function, String name) {
    if (!model.design().isEstimable(function)) {
      throw InputProblem.of("the linear function \"" + name + "\" of the coefficients")
          .expected("one that the observations can tell")
          .because("other coefficients fit as well and give it another value")
          .mend("look at the lost effects of the design: " + model.design().lostEffects());
    }
  }

  /**
   * A linear function of the coefficients with its error.
   *
   * @param name what the function means
   * @param function factor of each coefficient, one for each column of the design
   * @return its estimate
   * @throws InputProblem if the function is not estimable or there is no residual variance
   */
  public ContrastEstimate estimate(String name, double... function) {
    if (function.length != model.design().columns()) {
      throw InputProblem.of(
              function.length + " factors for " + model.design().columns() + " coefficients")
          .expected("one factor for each column of the design")
          .because("each coefficient enters the function with a factor of its own")
          .mend("give a zero for columns that do not matter");
    }
    requireEstimable(function, name);
    double[] z = model.design().factors().functionInEffects(function);
    double length = product(z, z);
    double estimate = product(z, rotated);
    return new ContrastEstimate(
        name,
        estimate,
        Math.sqrt(requireVariance() * length),
        residualDegreesOfFreedom(),
        length > 0 ? estimate * estimate / length : 0);
  }

  /**
   * Limits of the residual variance.
   *
   * @param level level of confidence, such as 0.95
   * @return limits from the chi-squared distribution
   * @throws InputProblem if there is no residual variance
   */
  public ConfidenceLimits varianceLimits(double level) {
    requireVariance();
    double df = residualDegreesOfFreedom();
    double outside = (1 - level) / 2;
    return new ConfidenceLimits(
        residualSquares / agro.stats.UpperTail.chiSquaredExceededWith(outside, df),
        residualSquares / agro.stats.UpperTail.chiSquaredExceededWith(1 - outside, df));
  }

  /**
   * The analysis of variance.
   *
   * @param kind which terms each term is adjusted for
   * @return one row for each term, and the residual
   */
  public AnalysisOfVariance analysis(SumsOfSquares kind) {
    return AnalysisOfVariance.of(this, kind);
  }

  /**
   * Marginal means of all levels of a factor or combinations of levels, with equal weights.
   *
   * @param factors factors of the model
   * @return the means
   */
  public MarginalMeans means(Factor... factors) {
    return means(MeanWeights.EQUAL, factors);
  }

  /**
   * Marginal means of all levels of a factor or combinations of levels.
   *
   * @param weights how levels of the other factors are averaged
   * @param factors factors of the model
   * @return the means
   */
  public MarginalMeans means(MeanWeights weights, Factor... factors) {
    var reason = reasonForNoTest();
    ErrorMeasure error =
        reason.isEmpty()
            ? new ErrorMeasure.Single(requireVariance(), residualDegreesOfFreedom())
            : new ErrorMeasure.Missing(reason);
    return MarginalMeans.of(model.design(), rotated, error, weights, List.of(factors));
  }

  double[] effects() {
    return model.design() == model.sumToZero()
        ? rotated
        : model.sumToZero().factors().rotate(model.scaled(response));
  }

  static double product(double[] z, double[] other) {
    double sum = 0;
    for (int k = 0; k < z.length; k++) {
      sum += z[k] * other[k];
    }
    return sum;
  }

  @Override
  public String toString() {
    return analysis(SumsOfSquares.SEQUENTIAL).toString();
  }
}
