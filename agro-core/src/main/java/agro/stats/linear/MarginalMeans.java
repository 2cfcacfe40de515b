package agro.stats.linear;

import agro.report.InputProblem;
import agro.stats.UpperTail;
import agro.stats.multiple.ComparedMeans;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.stream.IntStream;

/**
 * Marginal (least-squares) means of the levels of a factor or of combinations of levels: means of
 * the fitted cells, with the other factors averaged by stated weights and covariates at their
 * means. A mean that the observations cannot tell has no estimate.
 */
public final class MarginalMeans {

  private final List<Factor> factors;
  private final MeanWeights weights;
  private final ErrorMeasure error;
  private final DesignMatrix design;
  private final double[] effects;
  private final List<Cell> cells;

  /** One mean: its label and its function of the coefficients and, if estimable, of the effects. */
  private static final class Cell {
    final String label;
    final Map<Factor, Integer> held;
    final double[] function;
    final double[] loading;

    Cell(String label, Map<Factor, Integer> held, double[] function, double[] loading) {
      this.label = label;
      this.held = held;
      this.function = function;
      this.loading = loading;
    }
  }

  private MarginalMeans(
      DesignMatrix design,
      double[] effects,
      ErrorMeasure error,
      MeanWeights weights,
      List<Factor> factors) {
    this.design = design;
    this.effects = effects;
    this.error = error;
    this.weights = weights;
    this.factors = factors;
    this.cells = cells(design, weights, factors);
  }

  static MarginalMeans of(
      DesignMatrix design,
      double[] effects,
      ErrorMeasure error,
      MeanWeights weights,
      List<Factor> factors) {
    check(design, factors);
    return new MarginalMeans(design, effects, error, weights, List.copyOf(factors));
  }

  private static List<Cell> cells(DesignMatrix design, MeanWeights weights, List<Factor> factors) {
    var cells = new ArrayList<Cell>();
    int combinations = 1;
    for (Factor factor : factors) {
      combinations *= factor.levelCount();
    }
    for (int c = 0; c < combinations; c++) {
      var held = new HashMap<Factor, Integer>();
      String label = hold(factors, c, held);
      double[] function = design.meanFunction(held, weights);
      boolean exists = Arrays.stream(function).noneMatch(Double::isNaN);
      if (exists) {
        cells.add(new Cell(label, Map.copyOf(held), function, loading(design, function)));
      }
    }
    return List.copyOf(cells);
  }

  private static double[] loading(DesignMatrix design, double[] function) {
    return design.isEstimable(function) ? design.factors().functionInEffects(function) : null;
  }

  private static String hold(List<Factor> factors, int combination, Map<Factor, Integer> held) {
    var label = new StringBuilder();
    int rest = combination;
    for (int f = factors.size() - 1; f >= 0; f--) {
      Factor factor = factors.get(f);
      int level = rest % factor.levelCount();
      rest /= factor.levelCount();
      held.put(factor, level);
      label.insert(0, (f == 0 ? "" : ":") + factor.levels().get(level));
    }
    return label.toString();
  }

  private static void check(DesignMatrix design, List<Factor> factors) {
    var known = new HashSet<Factor>();
    design.terms().forEach(term -> known.addAll(term.allFactors()));
    if (factors.isEmpty() || !known.containsAll(factors)) {
      throw InputProblem.of("means of " + factors.stream().map(Factor::name).toList())
          .expected("factors of the model " + design.terms())
          .because("a model knows means of its own factors only")
          .mend("name factors of the model");
    }
  }

  /**
   * Number of means.
   *
   * @return at least 1
   */
  public int size() {
    return cells.size();
  }

  /**
   * Labels of the means, combinations joined by colons.
   *
   * @return as many as means
   */
  public List<String> labels() {
    return cells.stream().map(cell -> cell.label).toList();
  }

  /**
   * How other factors are averaged.
   *
   * @return the weights
   */
  public MeanWeights weights() {
    return weights;
  }

  /**
   * Place of a mean.
   *
   * @param label its label
   * @return place from 0
   * @throws InputProblem if there is no such mean
   */
  public int placeOf(String label) {
    int place = labels().indexOf(label);
    if (place < 0) {
      throw InputProblem.of("mean \"" + label + "\"")
          .expected("one of " + labels())
          .because("a comparison needs means that exist")
          .mend("name one of the means");
    }
    return place;
  }

  /**
   * Whether the observations can tell a mean.
   *
   * @param place place of the mean
   * @return false for example for a mean over a cell without observations
   */
  public boolean isEstimable(int place) {
    return cells.get(place).loading != null;
  }

  /**
   * A mean.
   *
   * @param place place of the mean
   * @return its estimate
   * @throws InputProblem if the observations cannot tell it
   */
  public double estimate(int place) {
    return LinearModelFit.product(loading(place), effects);
  }

  private double[] loading(int place) {
    double[] loading = cells.get(place).loading;
    if (loading == null) {
      throw notEstimable("the mean of " + cells.get(place).label);
    }
    return loading;
  }

  private static InputProblem notEstimable(String what) {
    return InputProblem.of(what + " is not estimable")
        .expected("observations in every cell that the mean averages over")
        .because("a cell without observations would have to be guessed")
        .mend("leave an interaction out of the model, or compare cells that were observed");
  }

  /**
   * The means in their order.
   *
   * @return nothing for a mean that is not estimable
   */
  public List<OptionalDouble> estimates() {
    var list = new ArrayList<OptionalDouble>();
    for (int i = 0; i < size(); i++) {
      list.add(isEstimable(i) ? OptionalDouble.of(estimate(i)) : OptionalDouble.empty());
    }
    return List.copyOf(list);
  }

  /**
   * Number of observations with the levels of a mean.
   *
   * @param place place of the mean
   * @return a count, 0 for a cell without observations
   */
  public int observations(int place) {
    var held = cells.get(place).held;
    int count = 0;
    for (int i = 0; i < factors.get(0).size(); i++) {
      boolean matches = true;
      for (Factor factor : factors) {
        matches &= factor.code(i) == held.get(factor);
      }
      count += matches ? 1 : 0;
    }
    return count;
  }

  /**
   * Standard error of a mean.
   *
   * @param place place of the mean
   * @return nothing where errors come from strata: a mean then varies with the blocks too, whose
   *     own mean has no estimate of error; differences have one
   * @throws InputProblem if the mean is not estimable
   */
  public OptionalDouble standardError(int place) {
    double[] z = loading(place);
    return error.coversMeans()
        ? OptionalDouble.of(Math.sqrt(error.variance(z)))
        : OptionalDouble.empty();
  }

  /**
   * Variance of the difference of two means. A difference can be estimable where neither mean is.
   *
   * @param one place of a mean
   * @param other place of another mean
   * @return the variance of the estimated difference
   * @throws InputProblem if the difference is not estimable or there is no error variance
   */
  public double differenceVariance(int one, int other) {
    return error.variance(minus(one, other));
  }

  /**
   * Degrees of freedom of the variance of a difference.
   *
   * @param one place of a mean
   * @param other place of another mean
   * @return a whole number, or Satterthwaite's where the error comes from several strata
   * @throws InputProblem if the difference is not estimable or there is no error variance
   */
  public double degreesOfFreedom(int one, int other) {
    return error.degreesOfFreedom(minus(one, other));
  }

  private double[] minus(int one, int other) {
    double[] coefficients = new double[size()];
    coefficients[one]++;
    coefficients[other]--;
    return combination(nameOfDifference(one, other), coefficients);
  }

  private String nameOfDifference(int one, int other) {
    return cells.get(one).label + " - " + cells.get(other).label;
  }

  /** The combination of means in coordinates of the effects. */
  private double[] combination(String name, double[] coefficients) {
    double[] z = new double[design.rank()];
    double[] function = new double[design.columns()];
    boolean simple = true;
    for (int i = 0; i < coefficients.length; i++) {
      Cell cell = cells.get(i);
      if (coefficients[i] != 0) {
        add(function, coefficients[i], cell.function);
        simple &= cell.loading != null;
        if (simple) {
          add(z, coefficients[i], cell.loading);
        }
      }
    }
    if (simple) {
      return z;
    }
    double[] loading = loading(design, function);
    if (loading == null) {
      throw notEstimable(name);
    }
    return loading;
  }

  private static void add(double[] sum, double factor, double[] each) {
    for (int k = 0; k < sum.length; k++) {
      sum[k] += factor * each[k];
    }
  }

  /**
   * The difference of two means with its error.
   *
   * @param one place of a mean
   * @param other place of the mean that is subtracted
   * @return the estimate
   * @throws InputProblem if the difference is not estimable or there is no error variance
   */
  public ContrastEstimate difference(int one, int other) {
    return result(nameOfDifference(one, other), minus(one, other));
  }

  private ContrastEstimate result(String name, double[] z) {
    double estimate = LinearModelFit.product(z, effects);
    double length = LinearModelFit.product(z, z);
    return new ContrastEstimate(
        name,
        estimate,
        Math.sqrt(error.variance(z)),
        error.degreesOfFreedom(z),
        length > 0 ? estimate * estimate / length : 0);
  }

  /**
   * A linear combination of the means with its error.
   *
   * @param contrast one factor for each mean
   * @return the estimate
   * @throws InputProblem if the number of factors is another one, the combination is not estimable,
   *     or there is no error variance
   */
  public ContrastEstimate contrast(Contrast contrast) {
    var factorsOfMeans = contrast.coefficients();
    if (factorsOfMeans.size() != size()) {
      throw InputProblem.of(
              factorsOfMeans.size() + " factors of contrast " + contrast.name() + " for " + size())
          .expected("one factor for each of the means " + labels())
          .because("each mean enters with a factor of its own")
          .mend("give a zero for means that do not matter");
    }
    double[] factorOfMean = factorsOfMeans.stream().mapToDouble(Double::doubleValue).toArray();
    return result(contrast.name(), combination(contrast.name(), factorOfMean));
  }

  /**
   * Least significant difference of two means, Fisher's LSD.
   *
   * @param one place of a mean
   * @param other place of another mean
   * @param alpha level of significance, such as 0.05
   * @return t times the standard error of the difference
   * @throws InputProblem if the difference is not estimable or there is no error variance
   */
  public double leastSignificantDifference(int one, int other, double alpha) {
    return UpperTail.tExceededWith(alpha / 2, degreesOfFreedom(one, other))
        * Math.sqrt(differenceVariance(one, other));
  }

  /**
   * The estimable means with the variances of their differences, ready to be compared in pairs or
   * with a control. Where differences have errors of several strata, the smallest degrees of
   * freedom among them serve for all, which is on the safe side.
   *
   * @return at least two means
   * @throws InputProblem if a difference is not estimable, there is no error variance, or fewer
   *     than two means are estimable
   */
  public ComparedMeans compared() {
    int[] places = IntStream.range(0, size()).filter(this::isEstimable).toArray();
    if (places.length < 2) {
      throw InputProblem.of(places.length + " estimable means of " + labels())
          .expected("at least two")
          .because("a mean is compared with another one")
          .mend("leave an interaction out of the model, or compare cells that were observed");
    }
    double[][] variances = new double[places.length][places.length];
    double df = Double.POSITIVE_INFINITY;
    for (int i = 0; i < places.length; i++) {
      for (int j = 0; j < i; j++) {
        double[] z = minus(places[i], places[j]);
        variances[i][j] = error.variance(z);
        variances[j][i] = variances[i][j];
        df = Math.min(df, error.degreesOfFreedom(z));
      }
    }
    return ComparedMeans.ofDifferences(
        Arrays.stream(places).mapToObj(labels()::get).toList(),
        Arrays.stream(places).mapToDouble(this::estimate).toArray(),
        variances,
        df);
  }

  @Override
  public String toString() {
    var text = new StringBuilder("Means with " + weights.words());
    for (int i = 0; i < size(); i++) {
      text.append("\n  ").append(cells.get(i).label).append(": ");
      text.append(isEstimable(i) ? Double.toString(estimate(i)) : "not estimable");
    }
    return text.toString();
  }
}
