package agro.generation.skill;

import agro.generation.FlightShare;
import java.util.Comparator;
import java.util.Objects;

/**
 * A share of one flight of a season, whose date is forecast.
 *
 * @param generation number of the flight, 1 for the first of the season
 * @param share how much of the flight is over
 */
public record FlightEvent(int generation, FlightShare share) implements Comparable<FlightEvent> {

  /** Refuses flights before the first. */
  public FlightEvent {
    Objects.requireNonNull(share, "share");
    if (generation < 1) {
      throw new IllegalArgumentException("flights count from 1, but got " + generation);
    }
  }

  /**
   * The event in words.
   *
   * @return for example {@code "flight 2, half"}
   */
  public String words() {
    return "flight " + generation + ", " + share.words();
  }

  @Override
  public int compareTo(FlightEvent other) {
    return Comparator.comparingInt(FlightEvent::generation)
        .thenComparing(FlightEvent::share)
        .compare(this, other);
  }
}
