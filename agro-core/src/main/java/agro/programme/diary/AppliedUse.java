package agro.programme.diary;

import agro.programme.Spraying;
import java.util.Objects;
import java.util.OptionalDouble;

/**
 * An application that was made.
 *
 * @param spraying when, where, with what and why; its name is that of the entry once it is written
 * @param conditions how it was made
 */
public record AppliedUse(Spraying spraying, Conditions conditions) implements DiaryRecord {

  /**
   * How an application was made.
   *
   * @param volume spray volume in the words of the user, for example {@code "300 L/ha"}
   * @param nozzle the nozzle
   * @param operator role or initials of the operator
   * @param windMetresPerSecond wind; nothing if not measured
   * @param celsius temperature; nothing if not measured
   * @param count the count that it rests on
   */
  public record Conditions(
      String volume,
      String nozzle,
      String operator,
      OptionalDouble windMetresPerSecond,
      OptionalDouble celsius,
      String count) {

    /** Refuses nulls. */
    public Conditions {
      Objects.requireNonNull(volume, "volume");
      Objects.requireNonNull(nozzle, "nozzle");
      Objects.requireNonNull(operator, "operator");
      Objects.requireNonNull(windMetresPerSecond, "windMetresPerSecond");
      Objects.requireNonNull(celsius, "celsius");
      Objects.requireNonNull(count, "count");
    }

    /**
     * Nothing recorded.
     *
     * @return empty conditions
     */
    public static Conditions notRecorded() {
      return new Conditions("", "", "", OptionalDouble.empty(), OptionalDouble.empty(), "");
    }
  }

  /** Refuses nulls. */
  public AppliedUse {
    Objects.requireNonNull(spraying, "spraying");
    Objects.requireNonNull(conditions, "conditions");
  }

  /**
   * An application of which nothing else was recorded.
   *
   * @param spraying the application
   * @return the record
   */
  public static AppliedUse of(Spraying spraying) {
    return new AppliedUse(spraying, Conditions.notRecorded());
  }
}
