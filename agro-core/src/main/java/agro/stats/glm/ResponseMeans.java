package agro.stats.glm;

import agro.report.InputProblem;
import agro.stats.ConfidenceLimits;
import agro.stats.multiple.ComparedMeans;
import agro.stats.multiple.PairwiseComparison;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** Marginal means of a fit on the scale of the link and of the response. */
public final class ResponseMeans {

  private final GeneralisedLinearFit fit;
  private final ResponseMeansRequest request;
  private final Map<String, double[]> functions;
  private final List<ResponseMean> means;

  ResponseMeans(
      GeneralisedLinearFit fit, ResponseMeansRequest request, Map<String, double[]> functions) {
    this.fit = fit;
    this.request = request;
    this.functions = functions;
    var list = new ArrayList<ResponseMean>();
    functions.forEach((label, function) -> list.add(mean(label, function)));
    this.means = List.copyOf(list);
  }

  private ResponseMean mean(String label, double[] function) {
    var link = fit.model().link();
    double offset = request.exposure() == 1 ? 0 : Math.log(request.exposure());
    var bare = fit.function(label, function);
    if (bare.state() == EstimateState.NOT_ESTIMABLE || bare.state() == EstimateState.AT_EDGE) {
      var none = new ConfidenceLimits(Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY);
      return new ResponseMean(label, bare, Double.NaN, Double.NaN, none);
    }
    if (!bare.isFinite()) {
      var limits = fit.profileLimits(request.level(), function);
      double end =
          switch (bare.state()) {
            case PLUS_INFINITY -> link.mean(Double.POSITIVE_INFINITY);
            case MINUS_INFINITY -> link.mean(Double.NEGATIVE_INFINITY);
            default -> Double.NaN;
          };
      return new ResponseMean(label, bare, end, Double.NaN, transformed(limits, offset));
    }
    double eta = bare.estimate() + offset;
    double df = bare.degreesOfFreedom();
    var predictor = CoefficientEstimate.of(label, eta, bare.standardError(), df);
    double half = Tails.quantile(request.level(), df) * bare.standardError();
    return new ResponseMean(
        label,
        predictor,
        link.mean(eta),
        link.slope(eta) * bare.standardError(),
        transformed(new ConfidenceLimits(eta - half, eta + half), 0));
  }

  private ConfidenceLimits transformed(ConfidenceLimits limits, double offset) {
    var link = fit.model().link();
    return new ConfidenceLimits(
        link.mean(limits.low() + offset), link.mean(limits.high() + offset));
  }

  /**
   * The fit.
   *
   * @return the fit
   */
  public GeneralisedLinearFit fit() {
    return fit;
  }

  /**
   * What was asked for.
   *
   * @return what was asked for
   */
  public ResponseMeansRequest request() {
    return request;
  }

  /**
   * Means in the order of the levels.
   *
   * @return means in the order of the levels
   */
  public List<ResponseMean> means() {
    return means;
  }

  /**
   * The mean of a level.
   *
   * @param label level, or levels joined by a colon
   * @return its mean
   * @throws InputProblem if there is no such mean
   */
  public ResponseMean mean(String label) {
    return means.stream()
        .filter(each -> each.label().equals(label))
        .findFirst()
        .orElseThrow(() -> unknown(label));
  }

  private InputProblem unknown(String label) {
    return InputProblem.of("a mean of \"" + label + "\"")
        .expected("one of " + functions.keySet())
        .because("there is no other level")
        .mend("name one of the levels");
  }

  /**
   * Labels of means without a finite predictor, which take no part in comparisons.
   *
   * @return labels of means without a finite predictor, which take no part in comparisons
   */
  public List<String> leftOut() {
    return means.stream()
        .filter(each -> !each.predictor().isFinite())
        .map(ResponseMean::label)
        .toList();
  }

  /**
   * Estimates on the scale of the link with the variances of their differences, for comparisons.
   * Means without a finite predictor are left out.
   *
   * @return the finite means
   * @throws InputProblem if fewer than two are finite
   */
  public ComparedMeans compared() {
    var finite = means.stream().filter(each -> each.predictor().isFinite()).toList();
    int size = finite.size();
    double[] values = new double[size];
    double[][] variances = new double[size][size];
    for (int i = 0; i < size; i++) {
      values[i] = finite.get(i).predictor().estimate();
      for (int j = 0; j < i; j++) {
        double[] difference = difference(finite.get(i).label(), finite.get(j).label());
        variances[i][j] = fit.covariance(difference, difference);
        variances[j][i] = variances[i][j];
      }
    }
    return ComparedMeans.ofDifferences(
        finite.stream().map(ResponseMean::label).toList(),
        values,
        variances,
        fit.degreesOfFreedomOfTests());
  }

  private double[] difference(String first, String second) {
    double[] one = functions.get(first);
    double[] other = functions.get(second);
    if (one == null || other == null) {
      throw unknown(one == null ? first : second);
    }
    double[] difference = new double[one.length];
    for (int j = 0; j < difference.length; j++) {
      difference[j] = one[j] - other[j];
    }
    return difference;
  }

  /**
   * Compares the means with each other on the scale of the link.
   *
   * @param comparison method and level
   * @return pairs as differences and ratios, and letters
   * @throws InputProblem if fewer than two means are finite
   */
  public ResponseComparisons compare(PairwiseComparison comparison) {
    return new ResponseComparisons(this, comparison.compare(compared()));
  }

  /**
   * Compares the means with each other by Tukey's method at 5 %.
   *
   * @return pairs as differences and ratios, and letters
   * @throws InputProblem if fewer than two means are finite
   */
  public ResponseComparisons compare() {
    return compare(PairwiseComparison.withDefaults());
  }

  /**
   * Test that two means are equal by likelihood ratio, which stands for means without a finite
   * predictor too. The p value is that of this one test.
   *
   * @param first label of a mean
   * @param second label of another mean
   * @return the test; for families with an estimated dispersion chi-squared is divided by it
   * @throws InputProblem if a label is unknown or a mean is not estimable
   */
  public LikelihoodRatio likelihoodRatio(String first, String second) {
    double[] difference = difference(first, second);
    if (!fit.design().space().determines(difference)) {
      throw InputProblem.of("a test of " + first + " against " + second)
          .expected("two means that observations determine")
          .because("the difference is not estimable from this design")
          .mend("leave out the level without observations");
    }
    var state = fit.state();
    double fall = ProfileLimits.fall(state, state.ofProblem(difference), 0);
    return LikelihoodRatio.of(fall / fit.dispersion(), 1);
  }

  @Override
  public String toString() {
    String left =
        leftOut().isEmpty() ? "" : "\nNot compared: " + String.join(", ", leftOut()) + ".";
    return request
        + "\n"
        + means.stream().map(each -> "  " + each).collect(Collectors.joining("\n"))
        + left;
  }
}
