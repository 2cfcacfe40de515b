package agro.stats.mixed;

import agro.stats.TestSentence;

/**
 * F test of a fixed term, adjusted for all other terms.
 *
 * @param name the term
 * @param f Wald's statistic divided by its degrees of freedom
 * @param df1 degrees of freedom above the line
 * @param df2 degrees of freedom below the line, after Satterthwaite
 * @param pValue chance of such a ratio or a larger one when the term has no effect
 */
public record FixedEffectTest(String name, double f, int df1, double df2, double pValue) {

  /**
   * The test as papers print it.
   *
   * @return for example "F = 37.69; df = 3, 45; P &lt; 0.001"
   */
  public String sentence() {
    return TestSentence.of("F", f, pValue, df1, df2);
  }

  @Override
  public String toString() {
    return name + ": " + sentence();
  }
}
