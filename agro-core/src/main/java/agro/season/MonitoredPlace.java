package agro.season;

import agro.weather.Medium;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A field or a station, as the table of places describes it.
 *
 * @param name name of the place, as the other tables write it
 * @param latitudeDegrees latitude in degrees, south negative, -90 to 90; empty when not stated
 * @param altitudeMetres altitude in m; empty when not stated
 * @param medium what the thermometer stands in
 * @param neighbour the place whose log bridges gaps and gives past years; empty when there is none
 * @param note a remark, may be empty
 * @param trend stated trend of the climate, along which past years are moved; empty for none
 */
public record MonitoredPlace(
    String name,
    OptionalDouble latitudeDegrees,
    OptionalDouble altitudeMetres,
    Medium medium,
    Optional<String> neighbour,
    String note,
    Optional<ClimateTrend> trend) {

  /** Refuses nulls. */
  public MonitoredPlace {
    Objects.requireNonNull(name, "name");
    Objects.requireNonNull(latitudeDegrees, "latitudeDegrees");
    Objects.requireNonNull(altitudeMetres, "altitudeMetres");
    Objects.requireNonNull(medium, "medium");
    Objects.requireNonNull(neighbour, "neighbour");
    Objects.requireNonNull(note, "note");
    Objects.requireNonNull(trend, "trend");
  }

  /**
   * A place whose past years stand as they were.
   *
   * @param name name of the place, as the other tables write it
   * @param latitudeDegrees latitude in degrees, south negative, -90 to 90; empty when not stated
   * @param altitudeMetres altitude in m; empty when not stated
   * @param medium what the thermometer stands in
   * @param neighbour the place whose log bridges gaps and gives past years; empty when none
   * @param note a remark, may be empty
   */
  public MonitoredPlace(
      String name,
      OptionalDouble latitudeDegrees,
      OptionalDouble altitudeMetres,
      Medium medium,
      Optional<String> neighbour,
      String note) {
    this(name, latitudeDegrees, altitudeMetres, medium, neighbour, note, Optional.empty());
  }
}
