package agro.trial.efficacy;

import agro.stats.ConfidenceLimits;
import agro.units.Numbers;
import java.util.Objects;
import java.util.Optional;

/**
 * Limits of an efficacy by one method.
 *
 * @param method how they are made
 * @param limits the limits in per cent, the lower one possibly minus infinity; nothing where the
 *     method has none
 * @param reason why there are none, or what to know about them; possibly empty
 */
public record EfficacyLimits(
    EfficacyInterval method, Optional<ConfidenceLimits> limits, String reason) {

  /** Refuses null. */
  public EfficacyLimits {
    Objects.requireNonNull(method, "method");
    Objects.requireNonNull(limits, "limits");
    Objects.requireNonNull(reason, "reason");
  }

  static EfficacyLimits none(EfficacyInterval method, String reason) {
    return new EfficacyLimits(method, Optional.empty(), reason);
  }

  static EfficacyLimits of(EfficacyInterval method, double low, double high, String remark) {
    return new EfficacyLimits(method, Optional.of(new ConfidenceLimits(low, high)), remark);
  }

  /** Limits of the efficacy from those of the share that is left. */
  static EfficacyLimits ofRatio(EfficacyInterval method, ConfidenceLimits ratio, String remark) {
    return of(method, 100 * (1 - ratio.high()), 100 * (1 - ratio.low()), remark);
  }

  /**
   * The limits in print.
   *
   * @return for example {@code "81.2 to 95.0 %"}
   */
  public String printed() {
    return limits.map(EfficacyLimits::range).orElse("none: " + reason);
  }

  private static String range(ConfidenceLimits limits) {
    return (Double.isInfinite(limits.low()) ? "unbounded" : Numbers.fixed(limits.low(), 1))
        + " to "
        + Numbers.fixed(limits.high(), 1)
        + " %";
  }

  @Override
  public String toString() {
    return method.words() + ": " + printed();
  }
}
