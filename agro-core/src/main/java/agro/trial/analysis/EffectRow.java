package agro.trial.analysis;

import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * One line of an analysis of variance or of deviance.
 *
 * @param stratum units whose error the line belongs to; empty where there is one error
 * @param source the term, or "residual"
 * @param role what the term stands for
 * @param degreesOfFreedom degrees of freedom
 * @param sumOfSquares sum of squares, or fall of the deviance; empty for tests without one
 * @param test the test, where there is one
 * @param note why there is none, or what else belongs to the line; often empty
 */
public record EffectRow(
    String stratum,
    String source,
    Role role,
    double degreesOfFreedom,
    OptionalDouble sumOfSquares,
    Optional<EffectTest> test,
    String note) {

  /** What a line stands for. */
  public enum Role {
    /** Blocks, rows or columns. */
    GROUND,
    /** A treatment factor or an interaction of them. */
    TREATMENT,
    /** What is left. */
    ERROR
  }

  /** Refuses null. */
  public EffectRow {
    Objects.requireNonNull(stratum, "stratum");
    Objects.requireNonNull(source, "source");
    Objects.requireNonNull(role, "role");
    Objects.requireNonNull(sumOfSquares, "sumOfSquares");
    Objects.requireNonNull(test, "test");
    Objects.requireNonNull(note, "note");
  }

  /**
   * Sum of squares by degree of freedom.
   *
   * @return empty without one of the two
   */
  public OptionalDouble meanSquare() {
    return sumOfSquares.isPresent() && degreesOfFreedom > 0
        ? OptionalDouble.of(sumOfSquares.getAsDouble() / degreesOfFreedom)
        : OptionalDouble.empty();
  }

  /**
   * The line in one sentence.
   *
   * @return for example "spray: F = 34.70; df = 5, 66; P &lt; 0.001"
   */
  public String sentence() {
    if (test.isEmpty() && note.startsWith(source)) {
      return note;
    }
    return source + ": " + test.map(EffectTest::sentence).orElse(note.isEmpty() ? "no test" : note);
  }

  @Override
  public String toString() {
    return sentence();
  }
}
