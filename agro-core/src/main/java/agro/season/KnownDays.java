package agro.season;

import java.time.LocalDate;
import java.util.Objects;
import java.util.Optional;

/**
 * The days of which something was known.
 *
 * @param last last known day
 * @param heldBack days before it that are left out all the same, to see how well they would have
 *     been foretold
 */
record KnownDays(LocalDate last, Optional<HeldBack> heldBack) {

  /**
   * The rest of a season.
   *
   * @param season year that names the season
   * @param after last known day before the days held back
   * @param before first known day after them
   */
  record HeldBack(int season, LocalDate after, LocalDate before) {
    HeldBack {
      Objects.requireNonNull(after, "after");
      Objects.requireNonNull(before, "before");
    }

    boolean holds(LocalDate day) {
      return day.isAfter(after) && day.isBefore(before);
    }
  }

  KnownDays {
    Objects.requireNonNull(last, "last");
    Objects.requireNonNull(heldBack, "heldBack");
  }

  /** All days up to one. */
  static KnownDays upTo(LocalDate day) {
    return new KnownDays(day, Optional.empty());
  }

  boolean knows(LocalDate day) {
    return !day.isAfter(last) && heldBack.filter(rest -> rest.holds(day)).isEmpty();
  }

  /** Whether nothing between two days is left out. */
  boolean knowsAll(LocalDate from, LocalDate to) {
    return !to.isAfter(last)
        && heldBack
            .filter(rest -> to.isAfter(rest.after()) && from.isBefore(rest.before()))
            .isEmpty();
  }

  /** Whether a visit of a season was known. */
  boolean knowsVisit(int season, LocalDate date) {
    return !date.isAfter(last)
        && heldBack.filter(rest -> rest.season() == season && date.isAfter(rest.after())).isEmpty();
  }
}
