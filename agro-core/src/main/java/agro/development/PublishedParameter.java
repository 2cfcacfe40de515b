package agro.development;

import agro.source.Reference;
import agro.units.Temperature;
import agro.units.ThermalTime;
import agro.weather.MediumKind;
import java.util.Objects;
import java.util.Optional;

/**
 * What one source says of one part of a life. A source may give a threshold alone or a requirement
 * alone; such a line is information and no {@link ThermalRequirement}, and the missing half must
 * not be borrowed from another source.
 *
 * @param species scientific name
 * @param host host or food, empty when the source names none
 * @param population origin, sex or biotype, empty when the source names none
 * @param span part of the life
 * @param measured how it was measured, for example {@code "constant temperatures"}
 * @param medium whether temperatures were of air or of soil
 * @param lower lower threshold, where given
 * @param upper upper threshold, where given
 * @param requirement requirement above the lower threshold, where given
 * @param standardError standard error of the requirement, where given
 * @param note what else the source says
 * @param source where it stands, with its standing
 */
public record PublishedParameter(
    String species,
    String host,
    String population,
    Span span,
    String measured,
    MediumKind medium,
    Optional<Temperature> lower,
    Optional<Temperature> upper,
    Optional<ThermalTime> requirement,
    Optional<ThermalTime> standardError,
    String note,
    Reference source) {

  /** Refuses nulls. */
  public PublishedParameter {
    Objects.requireNonNull(species, "species");
    Objects.requireNonNull(host, "host");
    Objects.requireNonNull(population, "population");
    Objects.requireNonNull(span, "span");
    Objects.requireNonNull(measured, "measured");
    Objects.requireNonNull(medium, "medium");
    Objects.requireNonNull(lower, "lower");
    Objects.requireNonNull(upper, "upper");
    Objects.requireNonNull(requirement, "requirement");
    Objects.requireNonNull(standardError, "standardError");
    Objects.requireNonNull(note, "note");
    Objects.requireNonNull(source, "source");
  }

  /**
   * The pair of threshold and requirement.
   *
   * @return the requirement with its thresholds, or nothing when the source lacks one of the two
   */
  public Optional<ThermalRequirement> pair() {
    if (lower.isEmpty() || requirement.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        new ThermalRequirement(
            species,
            host,
            span,
            medium,
            new Thresholds(lower.get(), upper),
            requirement.get(),
            standardError,
            source));
  }

  /**
   * What tells this line from others of the same species and span.
   *
   * @return host, population and way of measuring, as far as they are given
   */
  public String circumstances() {
    var words = new StringBuilder();
    append(words, host.isEmpty() ? "" : "on " + host);
    append(words, population);
    append(words, measured);
    return words.toString();
  }

  private static void append(StringBuilder words, String part) {
    if (!part.isEmpty()) {
      words.append(words.length() == 0 ? "" : ", ").append(part);
    }
  }
}
