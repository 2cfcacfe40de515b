package agro.development.cycle;

import agro.report.InputProblem;
import java.util.Objects;

/**
 * A stage before the adult.
 *
 * @param name name of the stage, such as egg
 * @param clock physiological age
 * @param distribution ages at completion
 * @param survival share that completes the stage, above 0 to 1; losses are taken at its end
 */
public record LifeStage(
    String name, DevelopmentClock clock, AgeDistribution distribution, double survival) {

  /**
   * Checks the survival.
   *
   * @throws InputProblem when it is not a share above 0
   */
  public LifeStage {
    Objects.requireNonNull(name, "name");
    Objects.requireNonNull(clock, "clock");
    Objects.requireNonNull(distribution, "distribution");
    if (!(survival > 0 && survival <= 1)) {
      throw InputProblem.of("a survival of " + survival + " in the stage " + name)
          .expected("a share above 0 up to 1")
          .because("nothing would come after a stage that none survives")
          .mend("give the share that completes the stage, or 1 to leave losses out");
    }
  }

  /**
   * A stage that all survive.
   *
   * @param name name of the stage
   * @param clock physiological age
   * @param distribution ages at completion
   * @return the stage
   */
  public static LifeStage of(String name, DevelopmentClock clock, AgeDistribution distribution) {
    return new LifeStage(name, clock, distribution, 1);
  }
}
