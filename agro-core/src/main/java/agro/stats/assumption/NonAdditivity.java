package agro.stats.assumption;

import agro.report.InputProblem;
import agro.source.Reference;
import agro.stats.BlockedValues;
import agro.stats.TestSentence;
import agro.stats.UpperTail;

/**
 * Tukey's test of non-additivity with one degree of freedom: do treatments differ more in blocks
 * with large values? With missing plots the squared fitted values of the additive model are the
 * covariate, which for complete blocks is the same test.
 *
 * @param sumOfSquares sum of squares of non-additivity, one degree of freedom
 * @param remainder residual sum of squares that is left
 * @param remainderDf its degrees of freedom
 * @param f ratio of the two mean squares
 * @param pValue chance of such a ratio or a larger one when effects add up
 * @param slope slope B of the residuals on the products of block and treatment deviations
 * @param suggestedPower 1 - B times the mean: the power of the response for which effects would add
 *     up; near 0 the logarithm is meant
 */
public record NonAdditivity(
    double sumOfSquares,
    double remainder,
    int remainderDf,
    double f,
    double pValue,
    double slope,
    double suggestedPower) {

  private static final double ROUNDING = 1e-12;

  /**
   * Tests whether the effects of blocks and treatments add up.
   *
   * @param table one value for each treatment in each block; plots may be missing
   * @return the result
   * @throws InputProblem if no degree of freedom is left, or blocks or treatments do not differ at
   *     all, or nothing scatters
   */
  public static NonAdditivity test(BlockedValues table) {
    var additive = AdditiveFit.of(table);
    double[] residuals = additive.residuals(additive.values());
    int df = additive.residualDf() - 1;
    if (df < 1) {
      throw InputProblem.of(
              "The table leaves " + additive.residualDf() + " degrees of freedom for the residuals")
          .expected("at least 2")
          .because("non-additivity takes one of them, and the test needs the rest")
          .mend("use more blocks or treatments");
    }
    double[] squaredFit = new double[residuals.length];
    double mean = additive.mean();
    double spread = 0;
    for (int i = 0; i < residuals.length; i++) {
      double centred = additive.values()[i] - residuals[i] - mean;
      squaredFit[i] = centred * centred;
      spread += squaredFit[i] * squaredFit[i];
    }
    double[] product = additive.residuals(squaredFit);
    double ownSquares = dot(product, product);
    if (ownSquares <= ROUNDING * spread) {
      throw InputProblem.of("Blocks or treatments do not differ at all")
          .expected("means of blocks and of treatments that differ")
          .because("only where both differ can their effects fail to add up")
          .mend("leave this check out");
    }
    double covariance = dot(product, residuals);
    double residualSquares = dot(residuals, residuals);
    double sum = covariance * covariance / ownSquares;
    double remainder = residualSquares - sum;
    double total = dot(additive.values(), additive.values());
    if (residualSquares <= ROUNDING * ROUNDING * total) {
      throw InputProblem.of("Blocks and treatments explain every value exactly")
          .expected("residuals that scatter")
          .because("nothing is left that could be tested")
          .mend("check the data");
    }
    boolean exact = remainder <= ROUNDING * residualSquares;
    double f = exact ? Double.POSITIVE_INFINITY : sum / (remainder / df);
    double p = exact ? 0 : UpperTail.f(f, 1, df);
    // The squared fit holds twice the product of the deviations.
    double slope = 2 * covariance / ownSquares;
    return new NonAdditivity(
        sum, Math.max(0, remainder), df, f, p, slope, 1 - slope * additive.mean());
  }

  private static double dot(double[] a, double[] b) {
    double sum = 0;
    for (int i = 0; i < a.length; i++) {
      sum += a[i] * b[i];
    }
    return sum;
  }

  /**
   * The work that the test rests on.
   *
   * @return Tukey 1949
   */
  public Reference source() {
    return AssumptionSources.TUKEY_1949;
  }

  /**
   * The result as papers print it.
   *
   * @return for example "F = 1.59; df = 1, 15; P = 0.227"
   */
  public String sentence() {
    return TestSentence.of("F", f, pValue, 1, remainderDf);
  }

  @Override
  public String toString() {
    return "Tukey's non-additivity: " + sentence();
  }
}
