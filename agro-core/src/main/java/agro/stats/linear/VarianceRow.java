package agro.stats.linear;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * One line of an analysis of variance.
 *
 * @param source name of the term, or "residual"
 * @param degreesOfFreedom degrees of freedom
 * @param sumOfSquares sum of squares
 * @param test test against the error; nothing for the error itself and where there is no test
 * @param note why there is no test, or what else belongs to the line; often empty
 */
public record VarianceRow(
    String source,
    int degreesOfFreedom,
    double sumOfSquares,
    Optional<VarianceRatio> test,
    String note) {

  /**
   * Sum of squares by degree of freedom.
   *
   * @return nothing without degrees of freedom
   */
  public OptionalDouble meanSquare() {
    return degreesOfFreedom > 0
        ? OptionalDouble.of(sumOfSquares / degreesOfFreedom)
        : OptionalDouble.empty();
  }

  @Override
  public String toString() {
    return source
        + ": df "
        + degreesOfFreedom
        + ", sum of squares "
        + sumOfSquares
        + test.map(ratio -> ", " + ratio.sentence()).orElse("")
        + (note.isEmpty() ? "" : " (" + note + ")");
  }
}
