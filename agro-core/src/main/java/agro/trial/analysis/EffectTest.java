package agro.trial.analysis;

import agro.stats.TestSentence;
import java.util.List;
import java.util.Objects;

/**
 * A test of an effect.
 *
 * @param symbol symbol of the statistic
 * @param statistic its value
 * @param degreesOfFreedom one or two numbers
 * @param pValue chance of such a value or a larger one when nothing differs
 */
public record EffectTest(
    String symbol, double statistic, List<Double> degreesOfFreedom, double pValue) {

  /** Copies the degrees of freedom. */
  public EffectTest {
    Objects.requireNonNull(symbol, "symbol");
    degreesOfFreedom = List.copyOf(degreesOfFreedom);
  }

  /**
   * The test as papers print it.
   *
   * @return for example "F = 34.70; df = 5, 66; P &lt; 0.001"
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
    return sentence();
  }
}
