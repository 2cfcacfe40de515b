package agro.trial.analysis;

import java.util.Objects;
import java.util.OptionalDouble;

/**
 * Two treatments compared, whatever the route.
 *
 * @param first one treatment
 * @param second the treatment that is taken away
 * @param difference first minus second on the scale of the analysis: of means, of link values or of
 *     mean ranks; empty where one of them runs to its limit
 * @param ratio ratio of the means where the scale of the analysis is a logarithm (of odds with a
 *     logit link)
 * @param pValue chance, adjusted as the method says
 * @param isDifferent whether the chance is at most the level
 */
public record ComparedDifference(
    String first,
    String second,
    OptionalDouble difference,
    OptionalDouble ratio,
    double pValue,
    boolean isDifferent) {

  /** Refuses null. */
  public ComparedDifference {
    Objects.requireNonNull(first, "first");
    Objects.requireNonNull(second, "second");
    Objects.requireNonNull(difference, "difference");
    Objects.requireNonNull(ratio, "ratio");
  }

  boolean isOf(String one, String other) {
    return (first.equals(one) && second.equals(other))
        || (first.equals(other) && second.equals(one));
  }
}
