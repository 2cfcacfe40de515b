package agro.generation;

import agro.development.ThermalRequirement;
import agro.report.InputProblem;
import agro.source.Reference;
import agro.units.ThermalTime;
import java.util.List;

/**
 * The range in which the interval from one flight to the next is sought, and where it comes from.
 *
 * <p>A range is needed because half an interval with twice the generations never fits worse.
 *
 * @param low smallest interval, above 0
 * @param high largest interval, above {@code low}
 * @param expected the interval expected before any count was seen, inside the range
 * @param sources where the expectation comes from, at least one
 */
public record IntervalRange(
    ThermalTime low, ThermalTime high, ThermalTime expected, List<Reference> sources) {

  /** Lowest and highest interval searched, as a share of the published one. */
  private static final double LOW_SHARE = 0.7;

  private static final double HIGH_SHARE = 1.4;

  /**
   * Coefficient of variation given to a published requirement when it must stand in for one's own
   * data. Published requirements of one species differ by 10 to 40 % between papers.
   */
  public static final double PUBLISHED_VARIATION = 0.12;

  /** Checks order and sources. */
  public IntervalRange {
    sources = List.copyOf(sources);
    if (!(low.degreeDaysC() > 0
        && low.compareTo(expected) <= 0
        && expected.compareTo(high) <= 0
        && low.compareTo(high) < 0)) {
      throw InputProblem.of(
              "the interval between flights is sought from "
                  + low
                  + " to "
                  + high
                  + ", expected "
                  + expected)
          .expected("positive thermal times in rising order: low, expected, high")
          .because("the search needs a range that holds the true interval and little else")
          .mend("state the range, or the published requirement from which it follows");
    }
    if (sources.isEmpty()) {
      throw InputProblem.of("the search range of the interval has no source")
          .expected("at least one source")
          .because("a reader must be able to judge where the range comes from")
          .mend("name the paper, or say that it is common practice or your own choice");
    }
  }

  /**
   * The range about a published requirement from flight to flight: 0.7 to 1.4 times the figure.
   *
   * @param flightToFlight published requirement that spans a whole generation
   * @param sources where it comes from
   * @return the range
   */
  public static IntervalRange about(ThermalTime flightToFlight, List<Reference> sources) {
    return new IntervalRange(
        flightToFlight.times(LOW_SHARE), flightToFlight.times(HIGH_SHARE), flightToFlight, sources);
  }

  /**
   * The range about a published requirement that spans a whole generation.
   *
   * @param published requirement from egg to egg or from flight to flight
   * @return the range
   * @throws InputProblem when the requirement spans only a part of a generation
   */
  public static IntervalRange about(ThermalRequirement published) {
    if (!LiteratureComparison.spansAGeneration(published)) {
      throw LiteratureComparison.notAGeneration(published);
    }
    return about(published.requirement(), List.of(published.source()));
  }

  /**
   * A range of the user's own, whose middle is expected.
   *
   * @param low smallest interval
   * @param high largest interval
   * @param source where it comes from
   * @return the range
   */
  public static IntervalRange between(ThermalTime low, ThermalTime high, Reference source) {
    return new IntervalRange(low, high, low.plus(high).times(0.5), List.of(source));
  }
}
