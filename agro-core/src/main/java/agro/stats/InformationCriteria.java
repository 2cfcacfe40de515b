package agro.stats;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * What a fit costs in information: the criteria of Akaike, with the correction for few
 * observations, and of Schwarz. Only differences between models of the same observations mean
 * anything.
 *
 * <p>Akaike 1974, IEEE Transactions on Automatic Control 19:716-723; Hurvich and Tsai 1989,
 * Biometrika 76:297-307; Schwarz 1978, Annals of Statistics 6:461-464; counting of parameters and
 * weights after Burnham and Anderson 2002, Model Selection and Multimodel Inference (all from
 * memory).
 *
 * @param minusTwoLogLikelihood minus twice the greatest log likelihood, up to a constant that is
 *     the same for all models of the same observations
 * @param observations number of observations, n
 * @param parameters number of estimated parameters, k, a variance that was estimated included
 */
public record InformationCriteria(double minusTwoLogLikelihood, int observations, int parameters) {

  /**
   * The criteria of a least-squares fit with normal errors, n ln(SSE/n) + 2k, where k counts the
   * error variance as one more parameter.
   *
   * @param sumOfSquares weighted sum of squared residuals
   * @param observations number of observations
   * @param curveParameters estimated parameters of the curve
   * @return the criteria
   */
  public static InformationCriteria ofLeastSquares(
      double sumOfSquares, int observations, int curveParameters) {
    return new InformationCriteria(
        observations * Math.log(sumOfSquares / observations), observations, curveParameters + 1);
  }

  /**
   * Akaike's criterion.
   *
   * @return minus twice the log likelihood plus 2k
   */
  public double aic() {
    return minusTwoLogLikelihood + 2 * parameters;
  }

  /**
   * Akaike's criterion corrected for few observations.
   *
   * @return AIC + 2k(k+1)/(n-k-1), or empty where n-k-1 is not positive and nothing is defined
   */
  public OptionalDouble aicCorrected() {
    int left = observations - parameters - 1;
    return left <= 0
        ? OptionalDouble.empty()
        : OptionalDouble.of(aic() + 2.0 * parameters * (parameters + 1) / left);
  }

  /**
   * Schwarz's criterion.
   *
   * @return minus twice the log likelihood plus k ln n
   */
  public double bic() {
    return minusTwoLogLikelihood + parameters * Math.log(observations);
  }

  /**
   * Akaike weights by the corrected criterion: how the evidence is shared among these models and no
   * others.
   *
   * @param models criteria of models of the same observations
   * @return a weight for each model, in order; empty for a model whose corrected criterion is not
   *     defined, and the others share 1
   */
  public static List<OptionalDouble> weights(List<InformationCriteria> models) {
    double least = Double.POSITIVE_INFINITY;
    for (var model : models) {
      least = Math.min(least, model.aicCorrected().orElse(Double.POSITIVE_INFINITY));
    }
    double sum = 0;
    for (var model : models) {
      sum += relative(model, least);
    }
    var weights = new ArrayList<OptionalDouble>();
    for (var model : models) {
      weights.add(
          model.aicCorrected().isEmpty()
              ? OptionalDouble.empty()
              : OptionalDouble.of(relative(model, least) / sum));
    }
    return List.copyOf(weights);
  }

  private static double relative(InformationCriteria model, double least) {
    var corrected = model.aicCorrected();
    return corrected.isEmpty() ? 0 : Math.exp(-0.5 * (corrected.getAsDouble() - least));
  }
}
