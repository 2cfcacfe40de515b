package agro.development.cycle;

import agro.report.InputProblem;
import java.util.Objects;

/**
 * The adult: when it lays its eggs, and how long it lives. Both ages count from the emergence of
 * the adult, on one clock, so that the time before the first egg is part of the ages at laying.
 *
 * @param name name of the stage, such as moth
 * @param clock physiological age
 * @param laying share of an adult's eggs that are laid by an age
 * @param death share of adults that are dead by an age
 * @param eggsPerAdult eggs that an adult lays on the mean, males counted too, above 0
 */
public record AdultStage(
    String name,
    DevelopmentClock clock,
    AgeDistribution laying,
    AgeDistribution death,
    double eggsPerAdult) {

  /**
   * Checks the number of eggs.
   *
   * @throws InputProblem when it is not above zero
   */
  public AdultStage {
    Objects.requireNonNull(name, "name");
    Objects.requireNonNull(clock, "clock");
    Objects.requireNonNull(laying, "laying");
    Objects.requireNonNull(death, "death");
    if (!(eggsPerAdult > 0 && Double.isFinite(eggsPerAdult))) {
      throw InputProblem.of(eggsPerAdult + " eggs from an adult")
          .expected("a finite number above 0")
          .because("there would be no next generation")
          .mend("give the mean number of eggs, or 1 to follow the timing alone");
    }
  }
}
