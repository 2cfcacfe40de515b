package agro.dose.sprayer;

import agro.units.FlowRate;
import java.util.OptionalDouble;

/**
 * One nozzle of a catch test.
 *
 * @param nozzle name or number
 * @param flow mean flow of its catches; zero if blocked
 * @param fromMean flow ÷ mean of all nozzles that flow − 1
 * @param fromMedian flow ÷ median of all nozzles that flow − 1, which a single odd nozzle does not
 *     move
 * @param aboveNew flow ÷ flow of a new nozzle − 1; empty if the new flow was not given
 * @param verdict compared with the mean
 */
public record NozzleFinding(
    String nozzle,
    FlowRate flow,
    double fromMean,
    double fromMedian,
    OptionalDouble aboveNew,
    NozzleVerdict verdict) {

  /** From this share above the flow of a new nozzle on, a nozzle is worn. */
  public static final double WORN = 0.10;

  /** Rounding of the readings must not turn a nozzle at the limit into one beyond it. */
  static final double ROUNDING = 1e-9;

  /**
   * Whether the nozzle passes so much more than a new one that it has to be replaced.
   *
   * @return true from 10 % above new; false as well if the new flow is not known
   */
  public boolean worn() {
    return aboveNew.isPresent() && aboveNew.getAsDouble() >= WORN - ROUNDING;
  }

  /**
   * Whether nothing came out of the nozzle.
   *
   * @return true if it is blocked
   */
  public boolean isBlocked() {
    return verdict == NozzleVerdict.BLOCKED;
  }

  /**
   * Whether anything has to be done about the nozzle.
   *
   * @return true if it is out of tolerance, blocked or worn
   */
  public boolean needsAttention() {
    return verdict != NozzleVerdict.WITHIN || worn();
  }
}
