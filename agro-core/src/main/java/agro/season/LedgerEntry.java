package agro.season;

import agro.generation.FlightShare;
import agro.report.SourceLocation;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * One date of a forecast as it was issued.
 *
 * @param issued day of issue
 * @param place the place
 * @param pest the pest
 * @param seasonStart first day of the season that was forecast
 * @param seasonEnd its last day
 * @param event {@code "flight"}, or the stage that follows it
 * @param generation number of the flight
 * @param share how much of the flight, or of the stage, is over
 * @param quantiles the days by which it comes with the chances {@link #CHANCES}, never falling;
 *     empty for "not this season"
 * @param chanceNotReached chance that it does not come this season, 0 to 1
 * @param method what the forecast rests on
 * @param note anything
 * @param location where the line stands; {@link SourceLocation#NONE} before it was written
 */
public record LedgerEntry(
    LocalDate issued,
    String place,
    String pest,
    LocalDate seasonStart,
    LocalDate seasonEnd,
    String event,
    int generation,
    FlightShare share,
    List<Optional<LocalDate>> quantiles,
    double chanceNotReached,
    String method,
    String note,
    SourceLocation location) {

  /**
   * Chances of the quantiles, in per cent: the medians and the ends of 50, 80 and 90 % intervals.
   */
  public static final List<Integer> CHANCES = List.of(5, 10, 25, 50, 75, 90, 95);

  /** Copies the list and refuses quantiles out of number. */
  public LedgerEntry {
    Objects.requireNonNull(issued, "issued");
    Objects.requireNonNull(share, "share");
    Objects.requireNonNull(location, "location");
    quantiles = List.copyOf(quantiles);
    if (quantiles.size() != CHANCES.size() || generation < 1) {
      throw new IllegalArgumentException(
          quantiles.size() + " quantiles of flight " + generation + " for " + CHANCES.size());
    }
  }

  /**
   * The day that is as likely passed as not.
   *
   * @return the median; nothing when it is more likely that the event does not come this season
   */
  public Optional<LocalDate> median() {
    return quantiles.get(CHANCES.indexOf(50));
  }

  /** What the line is about: two lines about the same would be two answers to one question. */
  String subject() {
    return pest
        + " at "
        + place
        + ", "
        + event
        + " "
        + generation
        + ", "
        + share.words()
        + ", issued as of "
        + issued;
  }

  /** Whether another line says the same of the same; where it stands and its note do not count. */
  boolean saysTheSame(LedgerEntry other) {
    return subject().equals(other.subject())
        && seasonEnd.equals(other.seasonEnd)
        && quantiles.equals(other.quantiles)
        && Math.abs(chanceNotReached - other.chanceNotReached) < 1e-4
        && method.equals(other.method);
  }
}
