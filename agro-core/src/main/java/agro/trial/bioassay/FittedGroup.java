package agro.trial.bioassay;

import agro.stats.ConfidenceLimits;
import java.util.Objects;
import java.util.OptionalDouble;

/**
 * One group beside the curve.
 *
 * @param group the group as counted
 * @param isInFit whether the curve was fitted to it
 * @param expected animals to be expected to respond, on the scale of the count
 * @param residual Pearson residual; 0 where group and curve agree exactly
 * @param standardisedResidual residual over its own standard error; nothing when the group decides
 *     the curve alone or was left out
 * @param limits exact binomial limits of the share as counted
 */
public record FittedGroup(
    DoseGroup group,
    boolean isInFit,
    double expected,
    double residual,
    OptionalDouble standardisedResidual,
    ConfidenceLimits limits) {

  /** Refuses nulls. */
  public FittedGroup {
    Objects.requireNonNull(group, "group");
    Objects.requireNonNull(standardisedResidual, "standardisedResidual");
    Objects.requireNonNull(limits, "limits");
  }
}
