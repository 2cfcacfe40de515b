package agro.generation;

import agro.report.InputProblem;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Objects;

/**
 * What one visit to a trap tells of the nights since the visit before. Both days count from their
 * start: a visit on the 5th after one on the 1st covers the four nights of the 1st to the 4th.
 *
 * @param trap name of the trap
 * @param from day of the visit before, or of the setting of the trap
 * @param date day of this visit, after {@code from}
 * @param count adults caught, 0 or more; 0 for a failed trap, whose count means nothing
 * @param state how the trap was found
 * @param nightsOpen nights on which the trap could catch, 0 to the nights between the two days
 * @param lureRenewed whether the lure was renewed at this visit
 */
public record TrapVisit(
    String trap,
    LocalDate from,
    LocalDate date,
    int count,
    TrapState state,
    double nightsOpen,
    boolean lureRenewed) {

  /** Checks order, count and nights. */
  public TrapVisit {
    Objects.requireNonNull(trap, "trap");
    Objects.requireNonNull(state, "state");
    if (!date.isAfter(from)) {
      throw InputProblem.of("trap " + trap + " was visited on " + date + " after " + from)
          .expected("a visit later than the one before")
          .because("a catch belongs to the nights between two visits")
          .mend("put the visits in order and leave each day in once");
    }
    if (count < 0) {
      throw InputProblem.of("trap " + trap + " has the count " + count + " on " + date)
          .expected("a whole number, 0 or more")
          .because("a catch is a number of animals")
          .mend("write the number caught, or the state failed if nothing is known");
    }
    var nights = ChronoUnit.DAYS.between(from, date);
    if (!(nightsOpen >= 0 && nightsOpen <= nights)) {
      throw InputProblem.of(
              "trap " + trap + " was open for " + nightsOpen + " nights before " + date)
          .expected("0 to " + nights + " nights, the nights since " + from)
          .because("the catch is judged per night that the trap was open")
          .mend("write the nights on which the trap could catch");
    }
  }

  /**
   * A visit to a trap that worked on every night.
   *
   * @param trap name of the trap
   * @param from day of the visit before
   * @param date day of this visit
   * @param count adults caught
   * @return the visit
   */
  public static TrapVisit working(String trap, LocalDate from, LocalDate date, int count) {
    return new TrapVisit(
        trap, from, date, count, TrapState.WORKING, ChronoUnit.DAYS.between(from, date), false);
  }

  /**
   * A visit that found the trap failed.
   *
   * @param trap name of the trap
   * @param from day of the visit before
   * @param date day of this visit
   * @return the visit, without a count
   */
  public static TrapVisit failed(String trap, LocalDate from, LocalDate date) {
    return new TrapVisit(trap, from, date, 0, TrapState.FAILED, 0, false);
  }

  /**
   * Nights between the two visits.
   *
   * @return at least 1
   */
  public long nights() {
    return ChronoUnit.DAYS.between(from, date);
  }
}
