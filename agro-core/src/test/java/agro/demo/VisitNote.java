package agro.demo;

import java.time.LocalDate;
import java.util.OptionalInt;

/**
 * A line of the visit book.
 *
 * @param trap name of the trap
 * @param date day of the visit
 * @param state set, working, failed or full
 * @param count adults caught, where the state gives one
 * @param lureRenewed whether the lure was renewed
 * @param note a remark, may be empty
 */
record VisitNote(
    String trap,
    LocalDate date,
    String state,
    OptionalInt count,
    boolean lureRenewed,
    String note) {

  VisitNote withFull(int liner) {
    return new VisitNote(
        trap, date, "full", OptionalInt.of(liner), lureRenewed, "liner full, more flew");
  }

  VisitNote withFailure(String reason) {
    return new VisitNote(trap, date, "failed", OptionalInt.empty(), lureRenewed, reason);
  }
}
