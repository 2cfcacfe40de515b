package agro.stats.glm;

import agro.report.InputProblem;
import agro.stats.linear.ModelTerm;

/**
 * What is fitted: family, link, information behind the standard errors, method of estimation and,
 * for a negative binomial, its shape if it is given. The default is the usual link, expected
 * information, maximum likelihood and an estimated shape.
 *
 * @param family how observations scatter
 * @param link tie between means and linear predictor
 * @param information source of the standard errors
 * @param method function that is made greatest
 * @param givenShape shape of a negative binomial; NaN where it is estimated or has no meaning
 */
public record GeneralisedLinearModel(
    ErrorFamily family,
    LinkFunction link,
    InformationKind information,
    EstimationMethod method,
    double givenShape) {

  /**
   * Checks that the parts fit together.
   *
   * @throws InputProblem if family and link, method or shape do not
   */
  public GeneralisedLinearModel {
    if (!family.links().contains(link)) {
      throw InputProblem.of("link " + link + " for the family " + family)
          .expected("one of " + family.links().stream().sorted().toList())
          .because("the link has to give means that the family can have")
          .mend("choose another link");
    }
    boolean shaped = !Double.isNaN(givenShape);
    if (shaped && (family != ErrorFamily.NEGATIVE_BINOMIAL || !(givenShape > 0))) {
      throw InputProblem.of("shape " + givenShape + " for the family " + family)
          .expected("a positive shape, of a negative binomial")
          .because("no other family has one")
          .mend("leave the shape out or choose the negative binomial");
    }
    boolean canBePenalised =
        (family == ErrorFamily.BINOMIAL && link.isForProportions())
            || (family == ErrorFamily.POISSON && link == LinkFunction.LOG);
    if (method == EstimationMethod.PENALISED_LIKELIHOOD && !canBePenalised) {
      throw InputProblem.of("penalised likelihood for " + family + " with link " + link)
          .expected("the binomial family with a link for proportions, or Poisson with log link")
          .because("the penalty is known to keep estimates finite there")
          .mend("choose one of these, or maximum likelihood");
    }
  }

  /**
   * A family with its usual link.
   *
   * @param family how observations scatter
   * @return the model
   */
  public static GeneralisedLinearModel of(ErrorFamily family) {
    return new GeneralisedLinearModel(
        family,
        family.usualLink(),
        InformationKind.EXPECTED,
        EstimationMethod.MAXIMUM_LIKELIHOOD,
        Double.NaN);
  }

  /**
   * The model with another link.
   *
   * @param other a link that the family may have
   * @return a new model
   */
  public GeneralisedLinearModel with(LinkFunction other) {
    return new GeneralisedLinearModel(family, other, information, method, givenShape);
  }

  /**
   * The model with another source of standard errors.
   *
   * @param other expected or observed information
   * @return a new model
   */
  public GeneralisedLinearModel with(InformationKind other) {
    return new GeneralisedLinearModel(family, link, other, method, givenShape);
  }

  /**
   * The model with another method.
   *
   * @param other maximum or penalised likelihood
   * @return a new model
   */
  public GeneralisedLinearModel with(EstimationMethod other) {
    return new GeneralisedLinearModel(family, link, information, other, givenShape);
  }

  /**
   * The negative binomial with a known shape.
   *
   * @param shape positive
   * @return a new model
   */
  public GeneralisedLinearModel withShape(double shape) {
    return new GeneralisedLinearModel(family, link, information, method, shape);
  }

  /**
   * Fits the model.
   *
   * @param response observations
   * @param design matrix of the linear predictor, in the same order
   * @return the fit; whether it converged and what has no finite estimate is said there
   * @throws InputProblem if response and design do not belong together
   */
  public GeneralisedLinearFit fit(ModelResponse response, PredictorDesign design) {
    return fit(response, design, new double[0]);
  }

  /**
   * Fits the model with an intercept and terms.
   *
   * @param response observations
   * @param terms terms in the order in which they are to be tested
   * @return the fit
   * @throws InputProblem if response and terms do not belong together
   */
  public GeneralisedLinearFit fit(ModelResponse response, ModelTerm... terms) {
    var design =
        terms.length == 0 ? PredictorDesign.commonMean(response.size()) : PredictorDesign.of(terms);
    return fit(response, design);
  }

  GeneralisedLinearFit fit(ModelResponse response, PredictorDesign design, double[] start) {
    return new GeneralisedLinearFit(this, response, fitState(response, design, start));
  }

  FittedState fitState(ModelResponse response, PredictorDesign design, double[] start) {
    if (response.size() != design.observations()) {
      throw InputProblem.of(
              response.size()
                  + " observations and a design of "
                  + design.observations()
                  + " observations")
          .expected("the same observations in the same order")
          .because("rows are matched by their place")
          .mend("make response and factors from the same table");
    }
    var kind =
        new ScoringKind(family.scatter(), link, method == EstimationMethod.PENALISED_LIKELIHOOD);
    int[] pivots = design.space().pivots();
    var numbers = response.numbersFor(family);
    var all = ScoringProblem.of(design.x(), design.names().size(), numbers, kind, searchShape());
    var problem =
        pivots.length == design.names().size()
            ? all
            : all.withRows(FittedState.range(design.observations()), pivots);
    boolean shapeIsSought = family == ErrorFamily.NEGATIVE_BINOMIAL && Double.isNaN(givenShape);
    return shapeIsSought
        ? ShapeSearch.fit(design, problem, start)
        : FittedState.fit(design, problem, start);
  }

  private double searchShape() {
    return Double.isNaN(givenShape) ? 1 : givenShape;
  }

  @Override
  public String toString() {
    return family.words()
        + " family, link "
        + link
        + ", "
        + method.words()
        + ", standard errors from the "
        + information.words();
  }
}
