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
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Predicate;

/**
 * Thermal parameters as papers give them, each pair of threshold and requirement from one source.
 * Papers disagree: one species may have several lines, and host and population matter. None of them
 * is a recommendation. A pair that misses the durations printed beside it is not among the
 * requirements; {@link #refused()} names it.
 */
public final class PublishedRequirements {

  private static final String PARAMETERS = "published-requirements.csv";
  private static final String DURATIONS = "published-durations.csv";
  private static final List<String> PARAMETER_COLUMNS =
      List.of(
          "species",
          "host",
          "population",
          "span",
          "measured",
          "medium",
          "lower_c",
          "upper_c",
          "requirement_c_d",
          "standard_error_c_d",
          "note",
          "authors",
          "year",
          "title",
          "place",
          "standing");
  private static final List<String> DURATION_COLUMNS =
      List.of("species", "host", "population", "span", "celsius", "days");

  private final List<PublishedParameter> parameters;
  private final List<ThermalRequirement> requirements;
  private final List<RequirementCheck> refused;
  private final List<RequirementCheck> checks;

  /** What a line of durations belongs to. */
  private record Key(String species, String host, String population, Span span) {}

  private PublishedRequirements(
      List<PublishedParameter> parameters, Map<Key, List<ObservedDuration>> durations) {
    this.parameters = List.copyOf(parameters);
    var usable = new ArrayList<ThermalRequirement>();
    var contradicting = new ArrayList<RequirementCheck>();
    var made = new ArrayList<RequirementCheck>();
    for (var each : parameters) {
      var pair = each.pair();
      if (pair.isEmpty()) {
        continue;
      }
      var own = durations.get(key(each));
      if (own != null) {
        var check = RequirementCheck.of(pair.get(), own);
        made.add(check);
        if (!check.agrees()) {
          contradicting.add(check);
          continue;
        }
      }
      usable.add(pair.get());
    }
    requirements = List.copyOf(usable);
    refused = List.copyOf(contradicting);
    checks = List.copyOf(made);
  }

  private static Key key(PublishedParameter each) {
    return new Key(each.species(), each.host(), each.population(), each.span());
  }

  /**
   * The parameters that come with the library.
   *
   * @return all lines of the table
   */
  public static PublishedRequirements load() {
    var parameters =
        lines(PARAMETERS, PARAMETER_COLUMNS).stream()
            .map(PublishedRequirements::parameter)
            .toList();
    var durations = new HashMap<Key, List<ObservedDuration>>();
    for (var line : lines(DURATIONS, DURATION_COLUMNS)) {
      var key =
          new Key(
              line.text("species"),
              line.optionalText("host").orElse(""),
              line.optionalText("population").orElse(""),
              line.choice("span", Span.class));
      durations
          .computeIfAbsent(key, none -> new ArrayList<>())
          .add(new ObservedDuration(line.number("celsius"), line.number("days")));
    }
    return new PublishedRequirements(parameters, durations);
  }

  private static List<DelimitedLine> lines(String resource, List<String> columns) {
    try (var stream =
        Objects.requireNonNull(PublishedRequirements.class.getResourceAsStream(resource))) {
      var text = new String(stream.readAllBytes(), StandardCharsets.UTF_8);
      return DelimitedText.parse(resource, text, DelimitedFormat.COMMA, columns).lines();
    } catch (IOException e) {
      throw new UncheckedIOException(resource + " could not be read", e);
    }
  }

  private static PublishedParameter parameter(DelimitedLine line) {
    return new PublishedParameter(
        line.text("species"),
        line.optionalText("host").orElse(""),
        line.optionalText("population").orElse(""),
        line.choice("span", Span.class),
        line.text("measured"),
        line.choice("medium", MediumKind.class),
        temperature(line.optionalNumber("lower_c")),
        temperature(line.optionalNumber("upper_c")),
        thermalTime(line.optionalNumber("requirement_c_d")),
        thermalTime(line.optionalNumber("standard_error_c_d")),
        line.optionalText("note").orElse(""),
        new Reference(
            line.optionalText("authors").orElse(""),
            line.optionalWholeNumber("year").orElse(0),
            line.text("title"),
            line.text("place"),
            line.choice("standing", Standing.class)));
  }

  private static Optional<Temperature> temperature(OptionalDouble celsius) {
    return celsius.isPresent()
        ? Optional.of(Temperature.ofCelsius(celsius.getAsDouble()))
        : Optional.empty();
  }

  private static Optional<ThermalTime> thermalTime(OptionalDouble degreeDaysC) {
    return degreeDaysC.isPresent()
        ? Optional.of(ThermalTime.ofDegreeDaysC(degreeDaysC.getAsDouble()))
        : Optional.empty();
  }

  /**
   * The state of the table.
   *
   * @return name, version and day
   */
  public Edition edition() {
    return new Edition("published thermal requirements", "2", LocalDate.of(2026, 11, 25));
  }

  /**
   * All lines, those too that give a threshold or a requirement alone and those that contradict
   * their own data.
   *
   * @return the lines in the order of the table
   */
  public List<PublishedParameter> parameters() {
    return parameters;
  }

  /**
   * The lines of one species and span.
   *
   * @param species scientific name, without regard to case
   * @param span part of the life
   * @return one line for each paper, host and population, possibly none
   */
  public List<PublishedParameter> parameters(String species, Span span) {
    return parameters.stream()
        .filter(row -> row.span() == span && isOf(species).test(row.species()))
        .toList();
  }

  /**
   * The names in the table.
   *
   * @return scientific names, sorted, each once
   */
  public List<String> species() {
    return parameters.stream().map(PublishedParameter::species).distinct().sorted().toList();
  }

  /**
   * The parts of life that are covered for a species.
   *
   * @param species scientific name, without regard to case
   * @return the spans in the order of life, each once, possibly none
   */
  public List<Span> spans(String species) {
    return parameters.stream()
        .filter(row -> isOf(species).test(row.species()))
        .map(PublishedParameter::span)
        .distinct()
        .sorted()
        .toList();
  }

  /**
   * All usable pairs of threshold and requirement.
   *
   * @return the requirements in the order of the table
   */
  public List<ThermalRequirement> all() {
    return requirements;
  }

  /**
   * The usable pairs of one species and span.
   *
   * @param species scientific name, without regard to case
   * @param span part of the life
   * @return one requirement for each paper and host, possibly none
   */
  public List<ThermalRequirement> find(String species, Span span) {
    return requirements.stream()
        .filter(row -> row.span() == span && isOf(species).test(row.species()))
        .toList();
  }

  private static Predicate<String> isOf(String species) {
    return name -> name.equalsIgnoreCase(species.strip());
  }

  /**
   * The pairs that were held against durations of their own source.
   *
   * @return one check for each, in the order of the table
   */
  public List<RequirementCheck> checks() {
    return checks;
  }

  /**
   * The pairs that contradict the durations of their own source.
   *
   * @return the failed checks, in the order of the table
   */
  public List<RequirementCheck> refused() {
    return refused;
  }
}
