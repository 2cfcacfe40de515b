package agro.trial;

import java.util.Objects;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * A variable that is assessed in a trial.
 *
 * @param name name, and heading of its column
 * @param kind kind of number
 * @param unit unit in print, or empty
 * @param outOfColumn column that holds how many were looked at, if there is one
 * @param outOf how many were looked at each time, if it was always the same number
 * @param least least possible value
 * @param most greatest possible value
 */
public record TrialResponse(
    String name,
    ResponseKind kind,
    String unit,
    Optional<String> outOfColumn,
    OptionalInt outOf,
    double least,
    double most) {

  /** Refuses a variable without a name, without a range or counted out of nothing. */
  public TrialResponse {
    Objects.requireNonNull(kind, "kind");
    Objects.requireNonNull(unit, "unit");
    if (name.isBlank()) {
      throw new IllegalArgumentException("a variable needs a name");
    }
    if (!(least < most)) {
      throw new IllegalArgumentException(
          "the values of " + name + " need a range, but got " + least + " to " + most);
    }
    if (outOf.isPresent() && outOf.getAsInt() < 1) {
      throw new IllegalArgumentException(
          name + " is counted out of at least 1, but got " + outOf.getAsInt());
    }
  }

  /**
   * A count of animals or things.
   *
   * @param name name of the column
   * @return the variable
   */
  public static TrialResponse count(String name) {
    return plain(name, ResponseKind.COUNT, "", 0, Double.POSITIVE_INFINITY);
  }

  /**
   * A count among a number that stands in another column.
   *
   * @param name name of the column
   * @param outOfColumn column with the number looked at
   * @return the variable
   */
  public static TrialResponse countOutOf(String name, String outOfColumn) {
    return new TrialResponse(
        name,
        ResponseKind.COUNT_OUT_OF,
        "",
        Optional.of(outOfColumn),
        OptionalInt.empty(),
        0,
        Double.POSITIVE_INFINITY);
  }

  /**
   * A count among a number that was the same each time.
   *
   * @param name name of the column
   * @param outOf the number looked at, at least 1
   * @return the variable
   */
  public static TrialResponse countOutOfFixed(String name, int outOf) {
    return new TrialResponse(
        name, ResponseKind.COUNT_OUT_OF, "", Optional.empty(), OptionalInt.of(outOf), 0, outOf);
  }

  /**
   * A percentage.
   *
   * @param name name of the column
   * @return the variable
   */
  public static TrialResponse percentage(String name) {
    return plain(name, ResponseKind.PERCENTAGE, "%", 0, 100);
  }

  /**
   * A measured amount, not negative.
   *
   * @param name name of the column
   * @param unit unit in print
   * @return the variable
   */
  public static TrialResponse measure(String name, String unit) {
    return plain(name, ResponseKind.MEASURE, unit, 0, Double.POSITIVE_INFINITY);
  }

  /**
   * A score on a scale.
   *
   * @param name name of the column
   * @param lowest lowest grade
   * @param highest highest grade
   * @return the variable
   */
  public static TrialResponse score(String name, int lowest, int highest) {
    return plain(name, ResponseKind.SCORE, "", lowest, highest);
  }

  /**
   * A number that may be negative.
   *
   * @param name name of the column
   * @param unit unit in print
   * @return the variable
   */
  public static TrialResponse signed(String name, String unit) {
    return plain(
        name, ResponseKind.SIGNED, unit, Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY);
  }

  private static TrialResponse plain(
      String name, ResponseKind kind, String unit, double least, double most) {
    return new TrialResponse(name, kind, unit, Optional.empty(), OptionalInt.empty(), least, most);
  }

  /**
   * The variable in print.
   *
   * @return the name, with its unit in brackets if there is one
   */
  public String heading() {
    return unit.isBlank() ? name : name + " (" + unit + ")";
  }
}
