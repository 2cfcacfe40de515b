package agro.stats.glm;

import agro.report.InputProblem;
import agro.stats.linear.ModelTerm;

/**
 * A model for scores on an ordinal scale: the chance of a class or a lower one is F(cut point -
 * linear predictor), with one predictor for all cut points. With the logit link these are
 * proportional odds. A positive coefficient means higher scores. McCullagh 1980, Journal of the
 * Royal Statistical Society B 42:109-142 (from memory).
 *
 * @param link logit, probit or complementary log-log
 */
public record OrdinalModel(LinkFunction link) {

  /**
   * Checks the link.
   *
   * @throws InputProblem if the link is not one for proportions
   */
  public OrdinalModel {
    if (!link.isForProportions()) {
      throw InputProblem.of("link " + link + " for scores")
          .expected("LOGIT, PROBIT or COMPLEMENTARY_LOG_LOG")
          .because("cumulative chances lie between 0 and 1")
          .mend("choose one of these");
    }
  }

  /**
   * Proportional odds.
   *
   * @return proportional odds
   */
  public static OrdinalModel withDefaults() {
    return new OrdinalModel(LinkFunction.LOGIT);
  }

  /**
   * The model with another link.
   *
   * @param other a link for proportions
   * @return a new model
   */
  public OrdinalModel with(LinkFunction other) {
    return new OrdinalModel(other);
  }

  /**
   * Fits the model.
   *
   * @param scores score of each observation
   * @param terms treatments, blocks and the like; none for cut points alone
   * @return the fit
   * @throws InputProblem if scores and terms are of different numbers
   */
  public OrdinalFit fit(OrdinalScores scores, ModelTerm... terms) {
    var design =
        terms.length == 0 ? PredictorDesign.commonMean(scores.size()) : PredictorDesign.of(terms);
    return fit(scores, design);
  }

  /**
   * Fits the model.
   *
   * @param scores score of each observation
   * @param design matrix of the linear predictor; its intercept goes into the cut points
   * @return the fit
   * @throws InputProblem if scores and design are of different numbers, or there is no intercept
   */
  public OrdinalFit fit(OrdinalScores scores, PredictorDesign design) {
    if (scores.size() != design.observations()) {
      throw InputProblem.of(
              scores.size() + " scores and a design of " + design.observations() + " observations")
          .expected("the same observations in the same order")
          .because("rows are matched by their place")
          .mend("make scores and factors from the same table");
    }
    if (!design.hasIntercept()) {
      throw InputProblem.of("a design without an intercept for scores")
          .expected("a design with an intercept")
          .because("the cut points take its place")
          .mend("make the design by PredictorDesign.of");
    }
    return OrdinalFit.of(this, scores, design);
  }
}
