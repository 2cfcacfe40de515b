package agro.trial.efficacy;

import agro.report.InputProblem;
import java.util.Objects;
import java.util.Optional;

/**
 * How the efficacy of a trial is evaluated.
 *
 * @param formula the formula; when empty, the one that the advice names
 * @param level level of the limits, such as 0.95
 * @param refits draws of blocks
 * @param seed start of all chance
 */
public record EfficacyEvaluation(
    Optional<EfficacyFormula> formula, double level, int refits, long seed) {

  private static final int LEAST_REFITS = 100;

  /**
   * Checks the numbers.
   *
   * @throws InputProblem when the level is not between 0 and 1 or draws are too few
   */
  public EfficacyEvaluation {
    Objects.requireNonNull(formula, "formula");
    if (!(level > 0 && level < 1)) {
      throw InputProblem.of("a level of " + level)
          .expected("a number between 0 and 1")
          .because("it is the share of such limits that hold the truth")
          .mend("give for example 0.95");
    }
    if (refits < LEAST_REFITS) {
      throw InputProblem.of(refits + " draws of blocks")
          .expected("at least " + LEAST_REFITS)
          .because("limits lie in the tails, where few draws fall")
          .mend("take 2000");
    }
  }

  /**
   * The formula that the advice names, limits of 95 %, 2,000 draws.
   *
   * @return the settings
   */
  public static EfficacyEvaluation withDefaults() {
    return new EfficacyEvaluation(Optional.empty(), 0.95, 2000, 1);
  }

  /**
   * These settings with a chosen formula.
   *
   * @param chosen the formula
   * @return new settings
   */
  public EfficacyEvaluation with(EfficacyFormula chosen) {
    return new EfficacyEvaluation(Optional.of(chosen), level, refits, seed);
  }

  /**
   * These settings with another level.
   *
   * @param newLevel level of the limits
   * @return new settings
   */
  public EfficacyEvaluation withLevel(double newLevel) {
    return new EfficacyEvaluation(formula, newLevel, refits, seed);
  }

  /**
   * These settings with other draws.
   *
   * @param number how many draws of blocks
   * @param newSeed start of all chance
   * @return new settings
   */
  public EfficacyEvaluation withRefits(int number, long newSeed) {
    return new EfficacyEvaluation(formula, level, number, newSeed);
  }

  /**
   * Evaluates one date of a trial.
   *
   * @param data plots with their counts
   * @return efficacy of every treatment
   * @throws InputProblem when the formula does not fit the data
   */
  public TrialEfficacy evaluate(EfficacyData data) {
    var advice = EfficacyAdvice.of(data);
    var chosen = formula.orElse(advice.formula());
    if (data.isMortality()) {
      chosen.requireMortality();
    } else {
      chosen.requireCounts(data.hasBefore());
    }
    var maker = new EstimateMaker(data, chosen, this);
    return new TrialEfficacy(
        data.control(),
        chosen,
        advice,
        level,
        data.treated().stream().map(maker::treatment).toList());
  }
}
