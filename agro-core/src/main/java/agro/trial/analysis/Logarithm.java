package agro.trial.analysis;

import agro.units.Numbers;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * Logarithm of the value and a constant.
 *
 * @param added the constant
 * @param base base of the logarithm
 */
public record Logarithm(double added, Base base) implements Transformation {

  /** Base of a logarithm; it changes the scale of the means, but no test. */
  public enum Base {
    /** Common logarithm. */
    TEN("log10", Math.log(10)),
    /** Natural logarithm. */
    NATURAL("natural log", 1);

    private final String words;
    private final double natural;

    Base(String words, double natural) {
      this.words = words;
      this.natural = natural;
    }
  }

  /**
   * Checks the constant.
   *
   * @throws agro.report.InputProblem when it is negative or not finite
   */
  public Logarithm {
    Objects.requireNonNull(base, "base");
    TransformationChecks.constant(added);
  }

  @Override
  public String words() {
    return added == 0
        ? base.words + " of the value"
        : base.words + " of (value + " + Numbers.plain(added) + ")";
  }

  @Override
  public Optional<String> refusal(double value, OptionalInt outOf) {
    return value + added > 0
        ? Optional.empty()
        : Optional.of("zero and negative numbers have no logarithm");
  }

  @Override
  public String cure() {
    return "state a constant that is added to every value, for example Transformation.logarithm(1)"
        + " for counts, or take a generalised linear route, which needs none";
  }

  @Override
  public double apply(double value, OptionalInt outOf) {
    TransformationChecks.refuse(this, value, outOf);
    return base == Base.TEN ? Math.log10(value + added) : Math.log(value + added);
  }

  @Override
  public double back(double transformed) {
    return Math.exp(transformed * base.natural) - added;
  }
}
