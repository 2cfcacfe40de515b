package agro.stats.glm;

import agro.report.InputProblem;
import agro.stats.linear.Covariate;
import agro.stats.linear.Factor;
import agro.stats.linear.MeanWeights;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * Which marginal means are wanted. They are averaged on the scale of the link and then transformed,
 * so that with a log link they are geometric means over the levels of the other factors.
 *
 * @param factors the factor, or several for their combinations
 * @param level confidence of the limits
 * @param weights how levels of the other factors are weighted
 * @param covariates values of covariates; those not named are taken at their mean
 * @param exposure exposure that the means are for, when there is a log link
 */
public record ResponseMeansRequest(
    List<Factor> factors,
    double level,
    MeanWeights weights,
    Map<Covariate, Double> covariates,
    double exposure) {

  /**
   * Checks and copies.
   *
   * @throws InputProblem if the level or the exposure is not possible
   */
  public ResponseMeansRequest {
    factors = List.copyOf(factors);
    covariates = Map.copyOf(covariates);
    Levels.check(level);
    if (!(exposure > 0) || Double.isInfinite(exposure)) {
      throw InputProblem.of("means for an exposure of " + exposure)
          .expected("a positive number")
          .because("a mean belongs to something looked at")
          .mend("give 1 for means per unit");
    }
  }

  /**
   * Means at equal weights, with limits of 95 %, per unit of exposure.
   *
   * @param factor a factor of the model
   * @param others further factors, for their combinations
   * @return the request
   */
  public static ResponseMeansRequest of(Factor factor, Factor... others) {
    return new ResponseMeansRequest(
        ReferenceGrid.factors(factor, others), 0.95, MeanWeights.EQUAL, Map.of(), 1);
  }

  /**
   * With limits of another confidence.
   *
   * @param other between 0 and 1
   * @return a new request
   */
  public ResponseMeansRequest withLevel(double other) {
    return new ResponseMeansRequest(factors, other, weights, covariates, exposure);
  }

  /**
   * With other weights.
   *
   * @param other how levels of the other factors are weighted
   * @return a new request
   */
  public ResponseMeansRequest with(MeanWeights other) {
    return new ResponseMeansRequest(factors, level, other, covariates, exposure);
  }

  /**
   * At a value of a covariate.
   *
   * @param covariate a covariate of the model
   * @param value its value
   * @return a new request
   */
  public ResponseMeansRequest at(Covariate covariate, double value) {
    var more = new HashMap<>(covariates);
    more.put(covariate, value);
    return new ResponseMeansRequest(factors, level, weights, more, exposure);
  }

  /**
   * For an exposure other than one unit, such as 100 leaves.
   *
   * @param other positive
   * @return a new request
   */
  public ResponseMeansRequest perExposure(double other) {
    return new ResponseMeansRequest(factors, level, weights, covariates, other);
  }

  /**
   * Takes the means from a fit.
   *
   * @param fit a fit of a model with the factors
   * @return the means
   * @throws InputProblem if a factor is not in the model, or an exposure is given without log link
   */
  public ResponseMeans from(GeneralisedLinearFit fit) {
    if (exposure != 1 && fit.model().link() != LinkFunction.LOG) {
      throw InputProblem.of(
              "means for an exposure of " + exposure + " with link " + fit.model().link())
          .expected("the log link")
          .because("only there an exposure multiplies the mean")
          .mend("leave the exposure out");
    }
    var grid = new ReferenceGrid(fit.design(), factors, weights, covariates);
    return new ResponseMeans(fit, this, grid.functions());
  }

  @Override
  public String toString() {
    return "means of "
        + factors.stream().map(Factor::name).collect(Collectors.joining(" by "))
        + ", "
        + weights.words()
        + ", limits of "
        + Figures.of(100 * level)
        + " %"
        + (exposure == 1 ? "" : ", for an exposure of " + Figures.of(exposure));
  }
}
