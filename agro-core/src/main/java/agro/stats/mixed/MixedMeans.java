package agro.stats.mixed;

import agro.report.InputProblem;
import agro.stats.linear.Contrast;
import agro.stats.linear.ContrastEstimate;
import agro.stats.linear.DesignMatrix;
import agro.stats.linear.Factor;
import agro.stats.linear.MeanWeights;
import agro.stats.multiple.ComparedMeans;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;

/**
 * Means of a mixed model with the variance and Satterthwaite's degrees of freedom of each
 * difference. Levels of which the data do not tell a mean are named in {@link #untold()} and left
 * out.
 */
public final class MixedMeans {

  private final MixedModelFit fit;
  private final List<String> labels;
  private final List<double[]> functions;
  private final List<String> untold;

  private MixedMeans(
      MixedModelFit fit, List<String> labels, List<double[]> functions, List<String> untold) {
    this.fit = fit;
    this.labels = List.copyOf(labels);
    this.functions = functions;
    this.untold = List.copyOf(untold);
  }

  static MixedMeans of(
      MixedModelFit fit, DesignMatrix design, List<Factor> factors, MeanWeights weights) {
    var known = new HashSet<Factor>();
    design.terms().forEach(term -> known.addAll(term.allFactors()));
    if (factors.isEmpty() || !known.containsAll(factors)) {
      throw InputProblem.of("means of " + factors.stream().map(Factor::name).toList())
          .expected("factors of the fixed terms " + design.terms())
          .because("a model knows means of its own factors only")
          .mend("name factors of the fixed terms");
    }
    int cells = factors.stream().mapToInt(Factor::levelCount).reduce(1, Math::multiplyExact);
    var labels = new ArrayList<String>();
    var functions = new ArrayList<double[]>();
    var untold = new ArrayList<String>();
    for (int cell = 0; cell < cells; cell++) {
      Map<Factor, Integer> held = new HashMap<>();
      var label = hold(factors, cell, held);
      double[] function = design.meanFunction(held, weights);
      if (design.isEstimable(function)) {
        labels.add(label);
        functions.add(function);
      } else {
        untold.add(label);
      }
    }
    return new MixedMeans(fit, labels, functions, untold);
  }

  private static String hold(List<Factor> factors, int cell, Map<Factor, Integer> held) {
    var parts = new ArrayList<String>();
    int rest = cell;
    for (int f = factors.size() - 1; f >= 0; f--) {
      Factor factor = factors.get(f);
      int level = rest % factor.levelCount();
      rest /= factor.levelCount();
      held.put(factor, level);
      parts.add(0, factor.levels().get(level));
    }
    return String.join(":", parts);
  }

  /**
   * Names of the means: levels joined by colons.
   *
   * @return the last factor running fastest
   */
  public List<String> labels() {
    return labels;
  }

  /**
   * Names of the combinations of which the data do not tell a mean.
   *
   * @return often none
   */
  public List<String> untold() {
    return untold;
  }

  /**
   * One mean with its standard error, which contains the variance of the random terms.
   *
   * @param place place of the mean, from 0
   * @return mean, standard error and degrees of freedom
   */
  public ContrastEstimate mean(int place) {
    return fit.estimate(labels.get(place), functions.get(place));
  }

  /**
   * The difference of two means.
   *
   * @param one place of the first mean, from 0
   * @param other place of the mean that is subtracted
   * @return difference, standard error and degrees of freedom
   */
  public ContrastEstimate difference(int one, int other) {
    double[] function = functions.get(one).clone();
    for (int j = 0; j < function.length; j++) {
      function[j] -= functions.get(other)[j];
    }
    return fit.estimate(labels.get(one) + " - " + labels.get(other), function);
  }

  /**
   * A contrast of the means.
   *
   * @param contrast one coefficient for each mean
   * @return estimate, standard error and degrees of freedom
   * @throws InputProblem if the number of coefficients is not that of means
   */
  public ContrastEstimate contrast(Contrast contrast) {
    if (contrast.coefficients().size() != labels.size()) {
      throw InputProblem.of(
              contrast.coefficients().size() + " coefficients for " + labels.size() + " means")
          .expected("one coefficient for each mean")
          .because("a contrast weighs all means")
          .mend("write 0 for means that take no part");
    }
    double[] function = new double[functions.get(0).length];
    for (int i = 0; i < functions.size(); i++) {
      for (int j = 0; j < function.length; j++) {
        function[j] += contrast.coefficients().get(i) * functions.get(i)[j];
      }
    }
    return fit.estimate(contrast.name(), function);
  }

  /**
   * The means in the form that pairwise comparisons and letters take, with the smallest degrees of
   * freedom of any difference, so that no pair is judged too boldly.
   *
   * @return the means with the variance of each difference
   */
  public ComparedMeans compared() {
    int size = labels.size();
    double[] means = new double[size];
    double[][] variances = new double[size][size];
    double df = Double.POSITIVE_INFINITY;
    for (int i = 0; i < size; i++) {
      means[i] = mean(i).estimate();
      for (int j = 0; j < i; j++) {
        var difference = difference(i, j);
        variances[i][j] = difference.standardError() * difference.standardError();
        variances[j][i] = variances[i][j];
        df = Math.min(df, difference.degreesOfFreedom());
      }
    }
    return ComparedMeans.ofDifferences(labels, means, variances, df);
  }

  @Override
  public String toString() {
    var lines = new ArrayList<ContrastEstimate>();
    for (int i = 0; i < labels.size(); i++) {
      lines.add(mean(i));
    }
    return lines.toString();
  }
}
