package agro.stats.glm;

import agro.report.InputProblem;
import agro.stats.ConfidenceLimits;
import agro.stats.linear.Factor;
import agro.stats.linear.MeanWeights;
import agro.stats.multiple.ComparedMeans;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** Expected shares of classes for the levels of factors, and what is needed to compare levels. */
public final class OrdinalMeans {

  private static final double LEVEL = 0.95;

  private final OrdinalFit fit;
  private final Map<String, double[]> functions;
  private final List<ClassShares> levels;

  private OrdinalMeans(OrdinalFit fit, Map<String, double[]> functions) {
    this.fit = fit;
    this.functions = functions;
    var list = new ArrayList<ClassShares>();
    functions.forEach((label, function) -> list.add(shares(label, function)));
    this.levels = List.copyOf(list);
  }

  static OrdinalMeans of(OrdinalFit fit, List<Factor> factors) {
    var grid = new ReferenceGrid(fit.design(), factors, MeanWeights.EQUAL, Map.of());
    return new OrdinalMeans(fit, grid.functions());
  }

  private ClassShares shares(String label, double[] designFunction) {
    if (!fit.design().space().determines(designFunction)) {
      var none = CoefficientEstimate.without(label, EstimateState.NOT_ESTIMABLE);
      return new ClassShares(label, none, List.of(), List.of(), List.of());
    }
    double[] function = fit.ofParameters(designFunction);
    var predictor = fit.estimate(label, function);
    var cumulative = cumulative(function);
    if (cumulative.stream().anyMatch(each -> Double.isNaN(each.share()))) {
      return new ClassShares(label, predictor, List.of(), List.of(), List.of());
    }
    var shares = new ArrayList<Double>();
    double before = 0;
    for (var each : cumulative) {
      shares.add(each.share() - before);
      before = each.share();
    }
    shares.add(1 - before);
    var errors = predictor.isFinite() && !fit.isSeparated() ? errors(function) : List.<Double>of();
    return new ClassShares(label, predictor, shares, errors, cumulative);
  }

  private List<CumulativeShare> cumulative(double[] function) {
    var link = fit.model().link();
    var list = new ArrayList<CumulativeShare>();
    for (int j = 0; j < fit.search().cuts; j++) {
      double[] bound = bound(function, j);
      var estimate = fit.estimate("", bound);
      double share =
          switch (estimate.state()) {
            case FINITE -> link.mean(estimate.estimate());
            case PLUS_INFINITY -> 1;
            case MINUS_INFINITY -> 0;
            default -> Double.NaN;
          };
      double half = Tails.quantile(LEVEL, Double.POSITIVE_INFINITY) * estimate.standardError();
      var limits =
          estimate.isFinite()
              ? new ConfidenceLimits(
                  link.mean(estimate.estimate() - half), link.mean(estimate.estimate() + half))
              : new ConfidenceLimits(0, 1);
      list.add(new CumulativeShare(fit.scores().classes().get(j), share, limits));
    }
    return list;
  }

  private static double[] bound(double[] function, int cut) {
    double[] bound = new double[function.length];
    for (int p = 0; p < bound.length; p++) {
      bound[p] = -function[p];
    }
    bound[cut] += 1;
    return bound;
  }

  private List<Double> errors(double[] function) {
    var link = fit.model().link();
    var errors = new ArrayList<Double>();
    double[] before = new double[function.length];
    for (int j = 0; j <= fit.search().cuts; j++) {
      double[] next = new double[function.length];
      if (j < fit.search().cuts) {
        double[] bound = bound(function, j);
        double slope = link.slope(fit.estimate("", bound).estimate());
        for (int p = 0; p < next.length; p++) {
          next[p] = slope * bound[p];
        }
      }
      double[] gradient = next.clone();
      for (int p = 0; p < gradient.length; p++) {
        gradient[p] -= before[p];
      }
      errors.add(Math.sqrt(Math.max(0, fit.covariance(gradient, gradient))));
      before = next;
    }
    return errors;
  }

  /**
   * Shares of each level.
   *
   * @return shares of each level
   */
  public List<ClassShares> levels() {
    return levels;
  }

  /**
   * Shares of one level.
   *
   * @param label level, or levels joined by a colon
   * @return its shares
   * @throws InputProblem if there is no such level
   */
  public ClassShares level(String label) {
    return levels.stream()
        .filter(each -> each.label().equals(label))
        .findFirst()
        .orElseThrow(
            () ->
                InputProblem.of("shares of \"" + label + "\"")
                    .expected("one of " + functions.keySet())
                    .because("there is no other level")
                    .mend("name one of the levels"));
  }

  /**
   * Labels of levels without a finite predictor, which take no part in comparisons.
   *
   * @return labels of levels without a finite predictor, which take no part in comparisons
   */
  public List<String> leftOut() {
    return levels.stream()
        .filter(each -> !each.predictor().isFinite())
        .map(ClassShares::label)
        .toList();
  }

  /**
   * Predictors with the variances of their differences, for comparisons on the scale of the link.
   *
   * @return the levels with a finite predictor
   * @throws InputProblem if fewer than two are finite
   */
  public ComparedMeans compared() {
    var finite = levels.stream().filter(each -> each.predictor().isFinite()).toList();
    int size = finite.size();
    double[] values = new double[size];
    double[][] variances = new double[size][size];
    for (int i = 0; i < size; i++) {
      values[i] = finite.get(i).predictor().estimate();
      for (int j = 0; j < i; j++) {
        double[] one = fit.ofParameters(functions.get(finite.get(i).label()));
        double[] other = fit.ofParameters(functions.get(finite.get(j).label()));
        for (int p = 0; p < one.length; p++) {
          one[p] -= other[p];
        }
        variances[i][j] = fit.covariance(one, one);
        variances[j][i] = variances[i][j];
      }
    }
    var labels = finite.stream().map(ClassShares::label).toList();
    return ComparedMeans.ofDifferences(labels, values, variances, Double.POSITIVE_INFINITY);
  }

  @Override
  public String toString() {
    return "classes "
        + String.join(", ", fit.scores().classes())
        + "\n"
        + levels.stream().map(each -> "  " + each).collect(Collectors.joining("\n"));
  }
}
