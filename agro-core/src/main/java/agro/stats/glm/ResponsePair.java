package agro.stats.glm;

import agro.stats.ConfidenceLimits;
import agro.stats.TestSentence;
import agro.stats.multiple.ComparedPair;
import java.util.Optional;

/**
 * Two marginal means compared.
 *
 * @param pair the comparison on the scale of the link
 * @param ratio ratio of means (log link) or of odds (logit link), first over second; empty for
 *     other links
 * @param ratioLimits limits of the ratio; empty without a ratio or for methods without limits
 * @param difference difference of the means on the scale of the response
 * @param differenceError standard error of that difference by the delta method
 */
public record ResponsePair(
    ComparedPair pair,
    Optional<Double> ratio,
    Optional<ConfidenceLimits> ratioLimits,
    double difference,
    double differenceError) {

  @Override
  public String toString() {
    return pair.first()
        + " - "
        + pair.second()
        + ": difference "
        + Figures.of(difference)
        + " (standard error "
        + Figures.of(differenceError)
        + ")"
        + ratio.map(value -> ", ratio " + Figures.of(value)).orElse("")
        + ratioLimits
            .map(each -> " (" + Figures.of(each.low()) + " to " + Figures.of(each.high()) + ")")
            .orElse("")
        + "; "
        + TestSentence.chance(pair.adjustedP());
  }
}
