package agro.stats.glm;

import java.util.List;

/**
 * Expected shares of the classes of an ordinal scale for one level.
 *
 * @param label level, or levels joined by a colon
 * @param predictor linear predictor without cut points: the greater, the higher the scores
 * @param shares share of each class from lowest to highest; they sum to 1. Empty where the
 *     predictor is not determined
 * @param standardErrors by the delta method; empty unless the predictor is finite
 * @param cumulative chance of the class or a lower one, for each cut point, with limits
 */
public record ClassShares(
    String label,
    CoefficientEstimate predictor,
    List<Double> shares,
    List<Double> standardErrors,
    List<CumulativeShare> cumulative) {

  /** Copies the lists. */
  public ClassShares {
    shares = List.copyOf(shares);
    standardErrors = List.copyOf(standardErrors);
    cumulative = List.copyOf(cumulative);
  }

  @Override
  public String toString() {
    return shares.isEmpty()
        ? label + ": " + predictor.state().words()
        : label + ": shares " + String.join(", ", shares.stream().map(Figures::of).toList());
  }
}
