package agro.trial.bioassay;

import agro.report.InputProblem;
import agro.units.Numbers;

/**
 * When scatter beyond the binomial widens the limits: the covariance is then multiplied by X² / df
 * and Student's t takes the place of the normal deviate.
 *
 * @param when the rule
 * @param level goodness-of-fit P below which the factor is used, for {@link When#BELOW_LEVEL}
 */
public record HeterogeneityRule(When when, double level) {

  /** The kinds of rule. */
  public enum When {
    /** Never. */
    NEVER,
    /** Always, also where the factor is below 1 and narrows the limits. */
    ALWAYS,
    /** When the goodness-of-fit P is below a level. */
    BELOW_LEVEL
  }

  /** Refuses levels that are no probability. */
  public HeterogeneityRule {
    if (!(level >= 0 && level <= 1)) {
      throw InputProblem.of("a level of " + level)
          .expected("a probability from 0 to 1")
          .because("the P of the fit is compared with it")
          .mend("write 0.15 or 0.05");
    }
  }

  /**
   * Never a factor.
   *
   * @return the rule
   */
  public static HeterogeneityRule never() {
    return new HeterogeneityRule(When.NEVER, 0);
  }

  /**
   * Always the factor.
   *
   * @return the rule
   */
  public static HeterogeneityRule always() {
    return new HeterogeneityRule(When.ALWAYS, 1);
  }

  /**
   * The factor when the fit is poor.
   *
   * @param level goodness-of-fit P below which it is used; 0.15 in published programs, 0.05 in
   *     other work
   * @return the rule
   */
  public static HeterogeneityRule below(double level) {
    return new HeterogeneityRule(When.BELOW_LEVEL, level);
  }

  /**
   * The rule in words.
   *
   * @return a phrase for print
   */
  public String words() {
    return switch (when) {
      case NEVER -> "no factor, normal deviate";
      case ALWAYS -> "factor X² / df and Student's t always";
      case BELOW_LEVEL ->
          "factor X² / df and Student's t when the fit's P is below " + Numbers.plain(level);
    };
  }
}
