package agro.stats.assumption;

import agro.source.Reference;
import agro.stats.TestSentence;
import java.util.List;

/**
 * What a test of equal variances found.
 *
 * @param test the test
 * @param symbol symbol of its statistic in print
 * @param statistic its value
 * @param degreesOfFreedom one for chi-squared, two for F
 * @param pValue chance of such a value or a larger one when all groups have one variance
 * @param groups size, centre and scatter of each group
 * @param remarks what a reader has to know about the groups, possibly nothing
 */
public record VarianceTestResult(
    VarianceTest test,
    String symbol,
    double statistic,
    List<Double> degreesOfFreedom,
    double pValue,
    List<GroupSpread> groups,
    List<String> remarks) {

  /** Keeps the lists as they are now. */
  public VarianceTestResult {
    degreesOfFreedom = List.copyOf(degreesOfFreedom);
    groups = List.copyOf(groups);
    remarks = List.copyOf(remarks);
  }

  /**
   * The work that the test rests on.
   *
   * @return the reference
   */
  public Reference source() {
    return test.source();
  }

  /**
   * The result as papers print it.
   *
   * @return for example "F = 3.82; df = 5, 66; P = 0.004"
   */
  public String sentence() {
    return TestSentence.of(
        symbol,
        statistic,
        pValue,
        degreesOfFreedom.stream().mapToDouble(Double::doubleValue).toArray());
  }

  @Override
  public String toString() {
    return test.title() + ": " + sentence();
  }
}
