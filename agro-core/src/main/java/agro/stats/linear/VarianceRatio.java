package agro.stats.linear;

import agro.stats.TestSentence;
import agro.stats.UpperTail;

/**
 * A ratio of two mean squares with its chance when nothing differs.
 *
 * @param f the ratio, F
 * @param df1 degrees of freedom of the upper mean square
 * @param df2 degrees of freedom of the lower mean square
 * @param pValue chance of such a ratio or a larger one
 */
public record VarianceRatio(double f, double df1, double df2, double pValue) {

  /**
   * Tests one mean square against another.
   *
   * @param meanSquare mean square of the effects
   * @param df its degrees of freedom
   * @param errorMeanSquare mean square of the error, positive
   * @param errorDf its degrees of freedom
   * @return the test
   */
  public static VarianceRatio of(
      double meanSquare, double df, double errorMeanSquare, double errorDf) {
    double f = meanSquare / errorMeanSquare;
    return new VarianceRatio(f, df, errorDf, UpperTail.f(f, df, errorDf));
  }

  /**
   * The test as papers print it.
   *
   * @return for example "F = 34.70; df = 5, 66; P &lt; 0.001"
   */
  public String sentence() {
    return TestSentence.of("F", f, pValue, df1, df2);
  }

  @Override
  public String toString() {
    return sentence();
  }
}
