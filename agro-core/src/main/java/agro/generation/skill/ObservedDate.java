package agro.generation.skill;

import java.time.LocalDate;
import java.util.Objects;

/**
 * When an event came, as the counts of its whole season tell.
 *
 * @param kind whether it came, did not come, or cannot be told
 * @param days days since the start of the season's first day, with a fraction; positive infinity
 *     when it did not come, NaN when that cannot be told
 * @param errorDays standard error of {@code days}; NaN unless it came
 * @param why in words, why the date is not known; empty when it came
 */
public record ObservedDate(Kind kind, double days, double errorDays, String why) {

  /** Whether an event came. */
  public enum Kind {
    /** It came on a date that the counts tell. */
    CAME,
    /** Traps stood to the season's end, and it had not come. */
    DID_NOT_COME,
    /** The counts do not tell. */
    NOT_IDENTIFIED
  }

  /** Refuses nulls. */
  public ObservedDate {
    Objects.requireNonNull(kind, "kind");
    Objects.requireNonNull(why, "why");
  }

  static ObservedDate came(double days, double errorDays) {
    return new ObservedDate(Kind.CAME, days, errorDays, "");
  }

  static ObservedDate didNotCome() {
    return new ObservedDate(
        Kind.DID_NOT_COME, Double.POSITIVE_INFINITY, Double.NaN, "not this season");
  }

  static ObservedDate notIdentified(String why) {
    return new ObservedDate(Kind.NOT_IDENTIFIED, Double.NaN, Double.NaN, why);
  }

  /**
   * Whether the event came on a known date.
   *
   * @return true when it came
   */
  public boolean came() {
    return kind == Kind.CAME;
  }

  /**
   * Whether a forecast can be scored against it.
   *
   * @return false when it is not known whether the event came
   */
  public boolean known() {
    return kind != Kind.NOT_IDENTIFIED;
  }

  /**
   * The day on which it came.
   *
   * @param firstDay first day of the season
   * @return the day
   * @throws IllegalStateException when it did not come or is not known
   */
  public LocalDate day(LocalDate firstDay) {
    if (!came()) {
      throw new IllegalStateException("there is no date: " + why);
    }
    return firstDay.plusDays((long) Math.floor(days));
  }
}
