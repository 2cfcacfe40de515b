package agro.generation;

import java.util.Objects;
import java.util.Optional;

/**
 * One line of a forecast: a share of a flight, or a stage that follows it, with its date.
 *
 * @param generation number of the flight, 1 for the first of the season
 * @param event {@code "flight"}, or the stage that follows it
 * @param share how much of the flight, or of the stage, is over
 * @param dates the date with its chances
 * @param spread where the spread comes from; nothing when more than a hundredth of the outcomes is
 *     "not this season", for then the date has no variance
 * @param notThisSeason the chance that the date does not come this season, by cause
 */
public record ForecastRow(
    int generation,
    String event,
    FlightShare share,
    DateDistribution dates,
    Optional<SpreadSplit> spread,
    NotThisSeason notThisSeason) {

  /** Refuses nulls. */
  public ForecastRow {
    Objects.requireNonNull(event, "event");
    Objects.requireNonNull(share, "share");
    Objects.requireNonNull(dates, "dates");
    Objects.requireNonNull(spread, "spread");
    Objects.requireNonNull(notThisSeason, "notThisSeason");
  }

  /**
   * A line that only want of warmth may keep from coming.
   *
   * @param generation number of the flight, 1 for the first of the season
   * @param event {@code "flight"}, or the stage that follows it
   * @param share how much of the flight, or of the stage, is over
   * @param dates the date with its chances
   * @param spread where the spread comes from
   */
  public ForecastRow(
      int generation,
      String event,
      FlightShare share,
      DateDistribution dates,
      Optional<SpreadSplit> spread) {
    this(
        generation, event, share, dates, spread, NotThisSeason.warmth(dates.chanceNotThisSeason()));
  }

  /**
   * Whether the line tells of the flight itself.
   *
   * @return false for a stage that follows it
   */
  public boolean isFlight() {
    return event.equals("flight");
  }
}
