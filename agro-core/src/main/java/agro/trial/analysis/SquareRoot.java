package agro.trial.analysis;

import agro.units.Numbers;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * Square root of the value and a constant.
 *
 * @param added the constant
 */
public record SquareRoot(double added) implements Transformation {

  /**
   * Checks the constant.
   *
   * @throws agro.report.InputProblem when it is negative or not finite
   */
  public SquareRoot {
    TransformationChecks.constant(added);
  }

  @Override
  public String words() {
    return added == 0
        ? "square root of the value"
        : "square root of (value + " + Numbers.plain(added) + ")";
  }

  @Override
  public Optional<String> refusal(double value, OptionalInt outOf) {
    return value + added < 0
        ? Optional.of("a negative number has no square root")
        : Optional.empty();
  }

  @Override
  public String cure() {
    return "analyse the values as they are, or state a larger constant";
  }

  @Override
  public double apply(double value, OptionalInt outOf) {
    TransformationChecks.refuse(this, value, outOf);
    return Math.sqrt(value + added);
  }

  @Override
  public double back(double transformed) {
    double root = Math.max(0, transformed);
    return root * root - added;
  }
}
