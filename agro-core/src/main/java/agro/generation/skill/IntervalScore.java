package agro.generation.skill;

import org.hipparchus.util.FastMath;

/**
 * Scores of central prediction intervals (Gneiting and Raftery 2007).
 *
 * @see agro.source.Bibliography#GNEITING_RAFTERY_2007
 */
public final class IntervalScore {

  private IntervalScore() {}

  /**
   * The interval score: the width, plus {@code 2 / alpha} times the distance by which the
   * observation was missed, where {@code alpha} is one less the probability. A wide interval and a
   * missed date both cost.
   *
   * @param low lower end, finite
   * @param high upper end, finite, not below the lower one
   * @param observed observation
   * @param probability chance that the interval claims, above 0 and below 1
   * @return 0 or more, in the unit of the ends
   * @throws IllegalArgumentException when the ends are out of order or the probability is no chance
   */
  public static double of(double low, double high, double observed, double probability) {
    if (low > high || !(probability > 0 && probability < 1)) {
      throw new IllegalArgumentException(
          "an interval from " + low + " to " + high + " with the chance " + probability);
    }
    var missed = FastMath.max(0, FastMath.max(low - observed, observed - high));
    return high - low + 2 / (1 - probability) * missed;
  }
}
