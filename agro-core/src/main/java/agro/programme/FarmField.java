package agro.programme;

import agro.report.InputProblem;
import agro.units.Area;
import agro.units.Length;
import java.time.ZoneId;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A field.
 *
 * @param name what it is called
 * @param district the district to which it belongs; empty if none is stated
 * @param zone its clock
 * @param area its size; nothing if not recorded
 * @param latitudeDegrees degrees, south negative
 * @param longitudeDegrees degrees, west negative
 * @param distances distance from the edge of the crop to what buffers are kept to, by its name
 */
public record FarmField(
    String name,
    String district,
    ZoneId zone,
    Optional<Area> area,
    OptionalDouble latitudeDegrees,
    OptionalDouble longitudeDegrees,
    Map<String, Length> distances) {

  /** Refuses a field without a name. */
  public FarmField {
    name = name.strip();
    district = district.strip();
    Objects.requireNonNull(zone, "zone");
    Objects.requireNonNull(area, "area");
    Objects.requireNonNull(latitudeDegrees, "latitudeDegrees");
    Objects.requireNonNull(longitudeDegrees, "longitudeDegrees");
    distances = Map.copyOf(distances);
    if (name.isEmpty()) {
      throw InputProblem.of("a field without a name")
          .expected("the name that the other tables use")
          .because("applications belong to a field")
          .mend("name the field");
    }
  }

  /**
   * A field of which only name and clock are known.
   *
   * @param name what it is called
   * @param zone its clock
   * @return the field
   */
  public static FarmField of(String name, ZoneId zone) {
    var unknown = OptionalDouble.empty();
    return new FarmField(name, "", zone, Optional.empty(), unknown, unknown, Map.of());
  }

  /**
   * The same field at a place on the globe.
   *
   * @param latitude degrees, south negative
   * @param longitude degrees, west negative
   * @return a new field
   */
  public FarmField at(double latitude, double longitude) {
    return new FarmField(
        name,
        district,
        zone,
        area,
        OptionalDouble.of(latitude),
        OptionalDouble.of(longitude),
        distances);
  }

  /**
   * The same field with distances to what buffers are kept to.
   *
   * @param other distance by the name that the label records use, for example {@code "water"}
   * @return a new field
   */
  public FarmField withDistances(Map<String, Length> other) {
    return new FarmField(name, district, zone, area, latitudeDegrees, longitudeDegrees, other);
  }

  /**
   * The same field in a district.
   *
   * @param other the district
   * @return a new field
   */
  public FarmField in(String other) {
    return new FarmField(name, other, zone, area, latitudeDegrees, longitudeDegrees, distances);
  }
}
