package agro.stats.glm;

import agro.report.InputProblem;
import agro.stats.TestSentence;
import java.util.Arrays;

/**
 * Test of two models of which one is a part of the other, by twice the difference of their
 * log-likelihoods.
 *
 * @param statistic twice the difference
 * @param degreesOfFreedom difference of the numbers of parameters
 * @param p chance of as large a statistic if the smaller model holds
 */
public record LikelihoodRatio(double statistic, int degreesOfFreedom, double p) {

  /**
   * Compares two fits of the same observations. A shape that is estimated is estimated in each.
   *
   * @param smaller the model with fewer coefficients
   * @param larger the model that contains it
   * @return the test
   * @throws InputProblem if observations, family or link differ, one design does not contain the
   *     other, or there is no likelihood
   */
  public static LikelihoodRatio between(GeneralisedLinearFit smaller, GeneralisedLinearFit larger) {
    if (smaller.response() != larger.response() || !smaller.model().equals(larger.model())) {
      throw InputProblem.of("fits of different observations or models: " + smaller.model())
          .expected("the same response, family, link and method: " + larger.model())
          .because("only then do their likelihoods compare")
          .mend("fit both designs with one model to one response");
    }
    if (smaller.model().method() == EstimationMethod.PENALISED_LIKELIHOOD
        || smaller.logLikelihood().isEmpty()) {
      throw InputProblem.of("a likelihood ratio of " + smaller.model())
          .expected("models with a likelihood of their own")
          .because("a quasi family has none, and penalties differ between designs")
          .mend("take the analysis of deviance, which tests quasi families by F");
    }
    int df = larger.rank() - smaller.rank();
    if (df < 1 || !contains(larger.design(), smaller.design())) {
      throw InputProblem.of("designs of which neither contains the other")
          .expected("a larger design whose columns give all means of the smaller one")
          .because("the ratio has a known distribution only for nested models")
          .mend("compare them by Akaike's criterion, or add the missing terms");
    }
    double statistic =
        2 * (larger.logLikelihood().orElseThrow() - smaller.logLikelihood().orElseThrow());
    return of(Math.max(0, statistic), df);
  }

  static LikelihoodRatio of(double statistic, int df) {
    return new LikelihoodRatio(statistic, df, Tails.chiSquared(statistic, df));
  }

  /**
   * Tests whether counts scatter more than a Poisson. The shape is at the edge of its range if they
   * do not, so that the p value is half that of chi-squared (Self and Liang 1987, Journal of the
   * American Statistical Association 82:605-610; from memory).
   *
   * @param fit a negative binomial fit with estimated shape
   * @return the test
   * @throws InputProblem for any other fit
   */
  public static LikelihoodRatio ofShape(GeneralisedLinearFit fit) {
    if (fit.shape().isEmpty() || !fit.shape().get().estimated()) {
      throw InputProblem.of("a test of the shape of " + fit.model())
          .expected("a negative binomial with estimated shape")
          .because("the shape is what is tested")
          .mend("fit the negative binomial without a given shape");
    }
    var poisson =
        GeneralisedLinearModel.of(ErrorFamily.POISSON)
            .with(fit.model().link())
            .fit(fit.response(), fit.design());
    double statistic =
        Math.max(
            0, 2 * (fit.logLikelihood().orElseThrow() - poisson.logLikelihood().orElseThrow()));
    return new LikelihoodRatio(
        statistic, 1, statistic == 0 ? 1 : Tails.chiSquared(statistic, 1) / 2);
  }

  private static boolean contains(PredictorDesign larger, PredictorDesign smaller) {
    int a = larger.names().size();
    int b = smaller.names().size();
    int rows = larger.observations();
    double[] both = new double[rows * (a + b)];
    for (int i = 0; i < rows; i++) {
      System.arraycopy(larger.x(), i * a, both, i * (a + b), a);
      System.arraycopy(smaller.x(), i * b, both, i * (a + b) + a, b);
    }
    return Arrays.stream(RowSpace.of(both, rows, a + b).pivots()).allMatch(each -> each < a);
  }

  /**
   * The test in one sentence.
   *
   * @return the test in one sentence
   */
  public String sentence() {
    return TestSentence.of("chi-squared", statistic, p, degreesOfFreedom);
  }

  @Override
  public String toString() {
    return "likelihood ratio: " + sentence();
  }
}
