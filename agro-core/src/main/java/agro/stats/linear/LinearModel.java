package agro.stats.linear;

import agro.report.InputProblem;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * A linear model of a design: terms after an intercept, factorised once and fitted to as many
 * responses as wanted. Immutable and safe to share between threads.
 */
public final class LinearModel {

  private final ContrastCoding coding;
  private final double[] roots;
  private final DesignMatrix design;
  private final DesignMatrix sumToZero;
  private final Map<SumsOfSquares, List<TermSpace>> spaces = new EnumMap<>(SumsOfSquares.class);
  private double[] leverages;

  /** Without roots all observations have the weight 1. */
  private LinearModel(List<ModelTerm> terms, ContrastCoding coding, double[] roots) {
    this.coding = coding;
    this.roots = roots;
    this.sumToZero = design(terms, ContrastCoding.SUM_TO_ZERO, roots);
    this.design = coding == ContrastCoding.SUM_TO_ZERO ? sumToZero : design(terms, coding, roots);
  }

  private static DesignMatrix design(List<ModelTerm> terms, ContrastCoding coding, double[] roots) {
    return roots == null
        ? DesignMatrix.of(terms, coding)
        : DesignMatrix.weighted(terms, coding, roots);
  }

  /**
   * A model with factors coded by effects that sum to zero.
   *
   * @param terms terms in the order in which they are tested
   * @return the model
   * @throws InputProblem if the terms make no model; see {@link DesignMatrix#of}
   */
  public static LinearModel of(List<ModelTerm> terms) {
    return new LinearModel(terms, ContrastCoding.SUM_TO_ZERO, null);
  }

  /**
   * A model with factors coded by effects that sum to zero.
   *
   * @param terms terms in the order in which they are tested
   * @return the model
   * @throws InputProblem if the terms make no model; see {@link DesignMatrix#of}
   */
  public static LinearModel of(ModelTerm... terms) {
    return of(List.of(terms));
  }

  /**
   * The one-way model: one mean for each level.
   *
   * @param factor a factor of at least two levels
   * @return the model
   */
  public static LinearModel oneWay(Factor factor) {
    return of(ModelTerm.of(factor));
  }

  /**
   * This model with further terms after its own.
   *
   * @param more terms
   * @return a new model
   */
  public LinearModel and(List<ModelTerm> more) {
    var terms = new ArrayList<>(design.terms());
    terms.addAll(more);
    return new LinearModel(terms, coding, roots);
  }

  /**
   * This model with further terms after its own.
   *
   * @param more terms
   * @return a new model
   */
  public LinearModel and(ModelTerm... more) {
    return and(List.of(more));
  }

  /**
   * This model with another coding of its factors, which changes coefficients and nothing else.
   *
   * @param other the coding
   * @return a new model
   */
  public LinearModel with(ContrastCoding other) {
    return new LinearModel(design.terms(), other, roots);
  }

  /**
   * This model for observations of unequal precision: the variance of each is the residual variance
   * over its weight, as for means of unequal numbers.
   *
   * @param weights positive weight of each observation
   * @return a new model
   * @throws InputProblem if the number of weights is another one or a weight is not positive
   */
  public LinearModel weighted(double... weights) {
    boolean fits = weights.length == design.rows();
    double[] squareRoots = new double[weights.length];
    for (int i = 0; i < weights.length; i++) {
      fits &= weights[i] > 0 && Double.isFinite(weights[i]);
      squareRoots[i] = Math.sqrt(weights[i]);
    }
    if (!fits) {
      throw InputProblem.of("weights " + Arrays.toString(weights))
          .expected("a positive weight for each of " + design.rows() + " observations")
          .because("an observation without weight says nothing")
          .mend("leave such observations out of all factors");
    }
    return new LinearModel(design.terms(), coding, squareRoots);
  }

  /**
   * The columns of the model.
   *
   * @return the design
   */
  public DesignMatrix design() {
    return design;
  }

  /**
   * Terms in their order.
   *
   * @return at least one
   */
  public List<ModelTerm> terms() {
    return design.terms();
  }

  /**
   * Degrees of freedom that the model leaves to the residuals.
   *
   * @return 0 for a model without an error of its own
   */
  public int residualDegreesOfFreedom() {
    return design.rows() - design.rank();
  }

  /**
   * Fits the model by least squares.
   *
   * @param response value of each observation
   * @return the fit
   * @throws InputProblem if the number of values is another one or a value is not finite
   */
  public LinearModelFit fit(double... response) {
    if (response.length != design.rows()) {
      throw InputProblem.of(
              response.length + " values of the response for " + design.rows() + " observations")
          .expected("one value for each observation")
          .because("values and factors belong together")
          .mend("give as many values as labels");
    }
    for (int i = 0; i < response.length; i++) {
      if (!Double.isFinite(response[i])) {
        throw InputProblem.of("observation " + (i + 1) + " of the response is " + response[i])
            .expected("a finite number")
            .because("least squares has no place for it")
            .mend(
                "leave the observation out of the response and of all factors; a missing plot needs"
                    + " no value");
      }
    }
    return new LinearModelFit(this, response.clone());
  }

  /** The numbers, each multiplied by the square root of its weight. */
  double[] scaled(double[] values) {
    double[] scaled = values.clone();
    for (int i = 0; roots != null && i < scaled.length; i++) {
      scaled[i] *= roots[i];
    }
    return scaled;
  }

  double root(int observation) {
    return roots == null ? 1 : roots[observation];
  }

  DesignMatrix sumToZero() {
    return sumToZero;
  }

  synchronized List<TermSpace> spaces(SumsOfSquares kind) {
    return spaces.computeIfAbsent(kind, k -> TermSpace.of(sumToZero, k));
  }

  synchronized double[] leverages() {
    if (leverages == null) {
      leverages = design.factors().leverages();
    }
    return leverages;
  }

  @Override
  public String toString() {
    return String.join(" + ", design.terms().stream().map(ModelTerm::name).toList())
        + " of "
        + design.rows()
        + " observations, "
        + Arrays.toString(design.lostEffects().toArray());
  }
}
