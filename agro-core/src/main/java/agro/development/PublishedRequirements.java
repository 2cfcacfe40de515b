package agro.development;

import agro.reading.DelimitedFormat;
import agro.reading.DelimitedLine;
import agro.reading.DelimitedText;
import agro.source.Edition;
import agro.source.Reference;
import agro.source.Standing;
import agro.units.Temperature;
import agro.units.ThermalTime;
import agro.weather.MediumKind;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * Thermal requirements as papers give them, each with its own thresholds. Papers disagree: one
 * species may have several rows, and host and population matter. None of them is a recommendation.
 */
public final class PublishedRequirements {

  private static final String RESOURCE = "published-requirements.csv";
  private static final List<String> COLUMNS =
      List.of(
          "species",
          "host",
          "span",
          "medium",
          "lower_c",
          "upper_c",
          "requirement_c_d",
          "authors",
          "year",
          "title",
          "place",
          "standing");

  private final List<ThermalRequirement> requirements;

  private PublishedRequirements(List<ThermalRequirement> requirements) {
    this.requirements = requirements;
  }

  /**
   * The requirements that come with the library.
   *
   * @return all rows of the table
   */
  public static PublishedRequirements load() {
    try (var stream =
        Objects.requireNonNull(PublishedRequirements.class.getResourceAsStream(RESOURCE))) {
      var text = new String(stream.readAllBytes(), StandardCharsets.UTF_8);
      var lines = DelimitedText.parse(RESOURCE, text, DelimitedFormat.COMMA, COLUMNS).lines();
      return new PublishedRequirements(
          lines.stream().map(PublishedRequirements::requirement).toList());
    } catch (IOException e) {
      throw new UncheckedIOException(RESOURCE + " could not be read", e);
    }
  }

  private static ThermalRequirement requirement(DelimitedLine line) {
    var upper = line.optionalNumber("upper_c");
    var lower = Temperature.ofCelsius(line.number("lower_c"));
    return new ThermalRequirement(
        line.text("species"),
        line.optionalText("host").orElse(""),
        line.choice("span", Span.class),
        line.choice("medium", MediumKind.class),
        upper.isPresent()
            ? Thresholds.between(lower, Temperature.ofCelsius(upper.getAsDouble()))
            : Thresholds.above(lower),
        ThermalTime.ofDegreeDaysC(line.number("requirement_c_d")),
        Optional.empty(),
        new Reference(
            line.optionalText("authors").orElse(""),
            line.optionalWholeNumber("year").orElse(0),
            line.text("title"),
            line.text("place"),
            line.choice("standing", Standing.class)));
  }

  /**
   * The state of the table.
   *
   * @return name, version and day
   */
  public Edition edition() {
    return new Edition("published thermal requirements", "1", LocalDate.of(2026, 11, 24));
  }

  /**
   * All rows.
   *
   * @return the requirements in the order of the table
   */
  public List<ThermalRequirement> all() {
    return requirements;
  }

  /**
   * The rows of one species and span.
   *
   * @param species scientific name, without regard to case
   * @param span part of the life
   * @return one requirement for each paper and host, possibly none
   */
  public List<ThermalRequirement> find(String species, Span span) {
    return requirements.stream()
        .filter(row -> row.species().equalsIgnoreCase(species.strip()) && row.span() == span)
        .toList();
  }
}
