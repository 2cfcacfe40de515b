package agro.course.sheet;

import agro.stats.NormalTail;

/**
 * What belongs to an expected probit Y: P = share below, Q = share above, Z = ordinate of the
 * normal curve.
 *
 * @param expected Y
 * @param below P
 * @param above Q
 * @param ordinate Z
 */
public record WorkingProbit(double expected, double below, double above, double ordinate) {

  private static final double ROOT_TWO_PI = 2.5066282746310002;

  /**
   * The values for an expected probit.
   *
   * @param expected Y
   * @return the values
   */
  public static WorkingProbit at(double expected) {
    double deviate = expected - ProbitLine.HALF;
    return new WorkingProbit(
        expected,
        NormalTail.below(deviate),
        NormalTail.above(deviate),
        Math.exp(-0.5 * deviate * deviate) / ROOT_TWO_PI);
  }

  /**
   * Weighting coefficient of one animal.
   *
   * @return Z² / (P Q)
   */
  public double weight() {
    return ordinate / above * (ordinate / below);
  }

  /**
   * Working probit where no animal died.
   *
   * @return Y − P / Z
   */
  public double least() {
    return expected - below / ordinate;
  }

  /**
   * Working probit where all animals died.
   *
   * @return Y + Q / Z
   */
  public double most() {
    return expected + above / ordinate;
  }

  /**
   * From the least to the most working probit.
   *
   * @return 1 / Z
   */
  public double range() {
    return 1 / ordinate;
  }
}
