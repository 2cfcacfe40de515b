package agro.programme.window;

import java.time.Instant;
import java.util.Map;
import java.util.Optional;

/**
 * The weather of one hour.
 *
 * @param start when it begins
 * @param values span of the readings of each kind; a kind without a reading is left out, and so is
 *     rain when the readings do not fill the hour
 */
public record WeatherHour(Instant start, Map<WeatherKind, Span> values) {

  /**
   * Lowest and highest reading of an hour; for rain both are its sum.
   *
   * @param low the lowest, in m/s, mm, °C or %
   * @param high the highest
   */
  public record Span(double low, double high) {}

  /** Copies the map. */
  public WeatherHour {
    values = Map.copyOf(values);
  }

  /**
   * Readings of one kind.
   *
   * @param kind what was read
   * @return nothing when the hour has none
   */
  public Optional<Span> of(WeatherKind kind) {
    return Optional.ofNullable(values.get(kind));
  }
}
