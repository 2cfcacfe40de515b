package agro.trial.layout;

import agro.report.InputProblem;
import agro.stats.power.TestSides;
import agro.units.Numbers;
import java.util.Objects;

/**
 * The difference between two treatments that a trial shall be able to show. Difference and
 * coefficient of variation are per cent of the same mean.
 *
 * @param percent true difference in per cent of the mean, above 0
 * @param variationPercent coefficient of variation between plots that are treated alike, above 0
 * @param power chance of finding it, above the level and below 1
 * @param level level of the test, between 0 and 1
 * @param sides whether a difference counts in one direction or in both
 */
public record WantedDifference(
    double percent, double variationPercent, double power, double level, TestSides sides) {

  private static final double USUAL_POWER = 0.8;
  private static final double USUAL_LEVEL = 0.05;

  /** Refuses numbers that cannot be. */
  public WantedDifference {
    Objects.requireNonNull(sides, "sides");
    if (!(percent > 0 && variationPercent > 0)
        || Double.isInfinite(percent)
        || Double.isInfinite(variationPercent)) {
      throw InputProblem.of(
              "a difference of "
                  + percent
                  + " % with a coefficient of variation of "
                  + variationPercent
                  + " %")
          .expected("two numbers above 0")
          .because("the number of replicates follows from their ratio")
          .mend("take the variation from earlier trials, never 0");
    }
    if (!(level > 0 && level < 1 && power > level && power < 1)) {
      throw InputProblem.of("a power of " + power + " at the level " + level)
          .expected("a level between 0 and 1, and a power above it and below 1")
          .because("both are chances")
          .mend("write 80 % as 0.8");
    }
  }

  /**
   * A difference to be found with a chance of 0.8 by a two-sided test at the level 0.05.
   *
   * @param percent true difference in per cent of the mean
   * @param variationPercent coefficient of variation between plots in per cent
   * @return the wish
   */
  public static WantedDifference of(double percent, double variationPercent) {
    return new WantedDifference(percent, variationPercent, USUAL_POWER, USUAL_LEVEL, TestSides.TWO);
  }

  /**
   * This difference with another chance of finding it.
   *
   * @param chance the power
   * @return a new wish
   */
  public WantedDifference withPower(double chance) {
    return new WantedDifference(percent, variationPercent, chance, level, sides);
  }

  /**
   * This difference at another level.
   *
   * @param newLevel level of the test; divide it by the number of comparisons where all of them
   *     have to hold together
   * @return a new wish
   */
  public WantedDifference withLevel(double newLevel) {
    return new WantedDifference(percent, variationPercent, power, newLevel, sides);
  }

  /**
   * This difference in one direction or in both.
   *
   * @param newSides the directions
   * @return a new wish
   */
  public WantedDifference withSides(TestSides newSides) {
    return new WantedDifference(percent, variationPercent, power, level, newSides);
  }

  @Override
  public String toString() {
    return "a difference of "
        + Numbers.plain(percent)
        + " % of the mean, coefficient of variation "
        + Numbers.plain(variationPercent)
        + " %, power "
        + Numbers.plain(power)
        + ", level "
        + Numbers.plain(level)
        + (sides == TestSides.TWO ? ", two-sided" : ", one-sided");
  }
}
