package agro.trial.load;

import agro.stats.ConfidenceLimits;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Value of one treatment, money for a hectare.
 *
 * @param treatment the treatment
 * @param gross mean value of the yield
 * @param cost cost of the treatment
 * @param grossGain value beyond that of the control, as a mean of differences within blocks
 * @param extraCost cost beyond that of the control
 * @param netGain gain after the extra cost
 * @param netLimits limits of the net gain; nothing where there is no scatter to judge by
 * @param breakEvenPrice share of the stated prices at which the treatment neither gains nor loses;
 *     nothing where it brings no more than the control
 * @param note how the limits were made, or why there are none
 */
public record TreatmentValue(
    String treatment,
    double gross,
    double cost,
    double grossGain,
    double extraCost,
    double netGain,
    Optional<ConfidenceLimits> netLimits,
    OptionalDouble breakEvenPrice,
    String note) {

  /** Refuses null. */
  public TreatmentValue {
    Objects.requireNonNull(treatment, "treatment");
    Objects.requireNonNull(netLimits, "netLimits");
    Objects.requireNonNull(breakEvenPrice, "breakEvenPrice");
    Objects.requireNonNull(note, "note");
  }

  /**
   * The cost on a hectare, beyond the control's, up to which the treatment pays.
   *
   * @return the gross gain; below zero when no cost would be low enough
   */
  public double breakEvenCost() {
    return grossGain;
  }

  /**
   * Value after cost.
   *
   * @return money for a hectare
   */
  public double net() {
    return gross - cost;
  }
}
