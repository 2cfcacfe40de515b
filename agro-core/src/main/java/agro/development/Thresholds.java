package agro.development;

import agro.report.InputProblem;
import agro.units.Temperature;
import java.util.Objects;
import java.util.Optional;

/**
 * The temperatures between which development runs.
 *
 * @param lower temperature below which there is no development
 * @param upper temperature above which development no longer speeds up, if one is known
 */
public record Thresholds(Temperature lower, Optional<Temperature> upper) {

  /**
   * Checks the order of the thresholds.
   *
   * @throws InputProblem when the upper threshold is not above the lower one
   */
  public Thresholds {
    Objects.requireNonNull(lower, "lower");
    Objects.requireNonNull(upper, "upper");
    if (upper.isPresent() && upper.get().compareTo(lower) <= 0) {
      throw InputProblem.of("thresholds of " + lower + " and " + upper.get())
          .expected("an upper threshold above the lower one")
          .because("there would be no temperature at which development runs")
          .mend("look whether the two are swapped, or one is in another unit");
    }
  }

  /**
   * A lower threshold alone.
   *
   * @param lower temperature below which there is no development
   * @return thresholds without an upper one
   */
  public static Thresholds above(Temperature lower) {
    return new Thresholds(lower, Optional.empty());
  }

  /**
   * Both thresholds.
   *
   * @param lower temperature below which there is no development
   * @param upper temperature above which development no longer speeds up
   * @return the thresholds
   * @throws InputProblem when the upper threshold is not above the lower one
   */
  public static Thresholds between(Temperature lower, Temperature upper) {
    return new Thresholds(lower, Optional.of(upper));
  }

  @Override
  public String toString() {
    return upper.map(limit -> lower + " to " + limit).orElse("above " + lower);
  }
}
