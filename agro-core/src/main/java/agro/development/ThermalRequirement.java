package agro.development;

import agro.report.InputProblem;
import agro.source.Reference;
import agro.source.Standing;
import agro.units.ThermalTime;
import agro.weather.DailyTemperatures;
import agro.weather.MediumKind;
import java.time.LocalDate;
import java.util.Objects;
import java.util.Optional;

/**
 * The thermal time that an insect needs for a part of its life, together with the thresholds that
 * it was found with. The two belong together: a lower threshold that is higher goes with a smaller
 * requirement, so the threshold of one paper must never meet the requirement of another. For that
 * reason no method changes one of them alone.
 *
 * @param species scientific name
 * @param host host or food in the source, or empty when it names none
 * @param span part of the life that is covered
 * @param medium whether temperatures were of air or of soil
 * @param thresholds thresholds in the source
 * @param requirement thermal time above the lower threshold, positive
 * @param standardError standard error of the requirement where the source gives one
 * @param source where threshold and requirement stand
 */
public record ThermalRequirement(
    String species,
    String host,
    Span span,
    MediumKind medium,
    Thresholds thresholds,
    ThermalTime requirement,
    Optional<ThermalTime> standardError,
    Reference source) {

  /** Lower thresholds that differ by less are the same one printed in another unit, in °C. */
  private static final double SAME_THRESHOLD_CELSIUS = 1e-6;

  /**
   * Checks the requirement.
   *
   * @throws InputProblem when the species is not named or the requirement is not positive
   */
  public ThermalRequirement {
    Objects.requireNonNull(host, "host");
    Objects.requireNonNull(span, "span");
    Objects.requireNonNull(medium, "medium");
    Objects.requireNonNull(thresholds, "thresholds");
    Objects.requireNonNull(standardError, "standardError");
    Objects.requireNonNull(source, "source");
    if (species.isBlank() || requirement.degreeDaysC() <= 0) {
      throw InputProblem.of("a requirement of " + requirement + " of \"" + species + "\"")
          .expected("a named species and a thermal time above zero")
          .because("development takes time")
          .mend("give the scientific name and the requirement in °C·d");
    }
  }

  /**
   * This requirement completed by a part of the life that follows it or goes before it: an egg to
   * adult by the time before egg-laying to a {@link Span#GENERATION}, an egg and larva by the pupa
   * to an {@link Span#EGG_TO_ADULT}, and so on.
   *
   * @param other the missing part
   * @return the requirement of both parts; its standard error is known when both are, and then
   *     taken as that of independent figures
   * @throws InputProblem when species, medium or lower threshold differ, or the two do not follow
   *     one another
   */
  public ThermalRequirement plus(ThermalRequirement other) {
    var whole = span.followedBy(other.span).or(() -> other.span.followedBy(span));
    if (whole.isEmpty()) {
      throw refused(
          other,
          "spans that make one together, such as egg to adult and adult to first egg, which make a"
              + " generation together",
          "the sum would cover no named span");
    }
    if (!species.equals(other.species) || medium != other.medium) {
      throw refused(
          other, "one species in one medium", "animals and media have requirements of their own");
    }
    if (!sameLowerThreshold(other)) {
      throw refused(
          other,
          "equal lower thresholds",
          "degree-days above different thresholds are different quantities and do not add up");
    }
    var error =
        standardError.flatMap(
            mine ->
                other.standardError.map(
                    theirs ->
                        new ThermalTime(Math.hypot(mine.degreeDaysC(), theirs.degreeDaysC()))));
    return new ThermalRequirement(
        species,
        host,
        whole.get(),
        medium,
        thresholds,
        requirement.plus(other.requirement),
        error,
        sumOf(other));
  }

  private InputProblem refused(ThermalRequirement other, String expected, String why) {
    return InputProblem.of("the sum of " + this + " and " + other)
        .expected(expected)
        .because(why)
        .mend("take both parts from one source, or accumulate each above its own threshold");
  }

  private Reference sumOf(ThermalRequirement other) {
    return new Reference(
        "",
        0,
        "Sum of: " + source.citation() + "; and: " + other.source.citation(),
        "",
        Standing.COMPUTED);
  }

  private boolean sameLowerThreshold(ThermalRequirement other) {
    double difference = thresholds.lower().minus(other.thresholds.lower()).celsius();
    return Math.abs(difference) < SAME_THRESHOLD_CELSIUS;
  }

  /**
   * Why two requirements are not the same quantity.
   *
   * @param other the requirement to compare with
   * @return a sentence without a full stop, or nothing when the two can be compared
   */
  public Optional<String> whyNotComparableWith(ThermalRequirement other) {
    if (!species.equals(other.species)) {
      return Optional.of("one is of " + species + ", the other of " + other.species);
    }
    if (span != other.span) {
      return Optional.of("one spans " + span.words() + ", the other " + other.span.words());
    }
    if (medium != other.medium) {
      return Optional.of("one is of " + medium.words() + ", the other of " + other.medium.words());
    }
    return sameLowerThreshold(other)
        ? Optional.empty()
        : Optional.of(
            "one counts above "
                + thresholds.lower()
                + ", the other above "
                + other.thresholds.lower());
  }

  /**
   * Duration at a constant temperature, K / (T − LT). A temperature above the upper threshold
   * counts as the upper threshold.
   *
   * @param celsius constant temperature in °C
   * @return days; infinite at and below the lower threshold
   */
  public double daysAt(double celsius) {
    double warmth = thresholds.upper().map(u -> Math.min(celsius, u.celsius())).orElse(celsius);
    double above = warmth - thresholds.lower().celsius();
    return above > 0 ? requirement.degreeDaysC() / above : Double.POSITIVE_INFINITY;
  }

  /**
   * Degree-days above the thresholds of this requirement.
   *
   * @param method temperature curve of a day
   * @param cutoff rule above the upper threshold
   * @return the model
   * @throws InputProblem when the cutoff needs an upper threshold that the source does not give
   */
  public DegreeDayModel model(DegreeDayMethod method, UpperCutoff cutoff) {
    return new DegreeDayModel(method, thresholds, cutoff);
  }

  /**
   * Degree-days of a place above the thresholds of this requirement, by the single sine.
   *
   * @param cutoff rule above the upper threshold
   * @param temperatures daily extremes in the medium of this requirement
   * @param start first day that counts
   * @return the scale, on which this requirement can be looked up
   * @throws InputProblem when the temperatures are of another medium, the start is outside them, or
   *     a day is missing
   */
  public ThermalTimeScale scale(
      UpperCutoff cutoff, DailyTemperatures temperatures, LocalDate start) {
    temperatures.medium().require(medium, "the requirement of " + species);
    return ThermalTimeScale.of(model(DegreeDayMethod.SINGLE_SINE, cutoff), temperatures, start);
  }

  @Override
  public String toString() {
    return species
        + ", "
        + span.words()
        + (host.isEmpty() ? "" : ", on " + host)
        + ": "
        + requirement
        + " "
        + thresholds
        + " in "
        + medium.words();
  }
}
