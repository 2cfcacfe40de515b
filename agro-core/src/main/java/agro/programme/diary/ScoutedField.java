package agro.programme.diary;

import agro.report.InputProblem;
import java.time.LocalDate;
import java.util.Objects;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * What was seen in a field or a trap.
 *
 * @param day the day
 * @param field the field; may be empty for a trap
 * @param pest what was looked for
 * @param count how many were found; nothing if it could not be counted
 * @param units sampling units that were looked at; nothing for a trap
 * @param unit what a sampling unit is, such as {@code "plant"}
 * @param trap the trap, as the season folder names it; empty if none was visited
 * @param visit state of the trap; {@link TrapVisitState#NO_TRAP} if none was visited
 * @param nightsOpen nights on which the trap could catch; nothing for all since the last visit
 * @param lureRenewed whether the lure was renewed
 * @param scout role or initials of who looked
 */
public record ScoutedField(
    LocalDate day,
    String field,
    String pest,
    OptionalInt count,
    OptionalInt units,
    String unit,
    String trap,
    TrapVisitState visit,
    OptionalDouble nightsOpen,
    boolean lureRenewed,
    String scout)
    implements DiaryRecord {

  /** State of a trap at a visit, in the words of the season folder. */
  public enum TrapVisitState {
    /** No trap was visited. */
    NO_TRAP(""),
    /** The trap was set up. */
    SET("set"),
    /** It worked. */
    WORKING("working"),
    /** It did not work, and nothing is known of the catch. */
    FAILED("failed"),
    /** It was full. */
    FULL("full");

    private final String word;

    TrapVisitState(String word) {
      this.word = word;
    }

    /**
     * The word of the season folder.
     *
     * @return one word; empty where no trap was visited
     */
    public String word() {
      return word;
    }
  }

  /** Refuses a trap without its state and a state without a trap. */
  public ScoutedField {
    Objects.requireNonNull(day, "day");
    Objects.requireNonNull(field, "field");
    Objects.requireNonNull(pest, "pest");
    Objects.requireNonNull(count, "count");
    Objects.requireNonNull(units, "units");
    Objects.requireNonNull(unit, "unit");
    Objects.requireNonNull(visit, "visit");
    Objects.requireNonNull(nightsOpen, "nightsOpen");
    Objects.requireNonNull(scout, "scout");
    if (trap.isBlank() != (visit == TrapVisitState.NO_TRAP)) {
      throw InputProblem.of("a visit to trap \"" + trap + "\" with the state " + visit)
          .expected("a trap with its state, or neither")
          .because("a forecast takes the catch by the state of the trap")
          .mend("state both, or leave both out");
    }
    if (count.orElse(0) < 0 || units.orElse(1) < 1) {
      throw InputProblem.of("a count of " + count.orElse(0) + " on " + units.orElse(1) + " units")
          .expected("a count of 0 or more on at least one unit")
          .because("nothing can be counted fewer than no times")
          .mend("remove the sign, or leave the count out where nothing was counted");
    }
  }

  /**
   * A count on sampling units in a field.
   *
   * @param day the day
   * @param field the field
   * @param pest what was counted
   * @param count how many
   * @param units on how many units
   * @param unit what a unit is
   * @param scout role or initials
   * @return the record
   */
  public static ScoutedField counted(
      LocalDate day, String field, String pest, int count, int units, String unit, String scout) {
    return new ScoutedField(
        day,
        field,
        pest,
        OptionalInt.of(count),
        OptionalInt.of(units),
        unit,
        "",
        TrapVisitState.NO_TRAP,
        OptionalDouble.empty(),
        false,
        scout);
  }

  /**
   * A visit to a trap.
   *
   * @param day the day
   * @param trap the trap
   * @param pest what it catches
   * @param visit its state
   * @param count the catch; nothing where the state says that it is not known
   * @param scout role or initials
   * @return the record
   */
  public static ScoutedField trap(
      LocalDate day,
      String trap,
      String pest,
      TrapVisitState visit,
      OptionalInt count,
      String scout) {
    return new ScoutedField(
        day,
        "",
        pest,
        count,
        OptionalInt.empty(),
        "",
        trap,
        visit,
        OptionalDouble.empty(),
        false,
        scout);
  }
}
