package agro.generation;

import agro.development.Span;
import agro.development.ThermalRequirement;
import agro.report.InputProblem;
import agro.units.Numbers;

/** Published requirements beside a fitted interval: only the same quantity is compared. */
final class LiteratureComparison {

  private LiteratureComparison() {}

  static boolean spansAGeneration(ThermalRequirement published) {
    return published.span() == Span.GENERATION || published.span() == Span.FLIGHT_TO_FLIGHT;
  }

  static InputProblem notAGeneration(ThermalRequirement published) {
    return InputProblem.of("a requirement that spans " + published.span().words())
        .expected("one from egg to egg or from flight to flight")
        .because("the interval from flight to flight is not the same quantity as a part of it")
        .mend("add the missing part with plus, such as the time before egg-laying");
  }

  static String sentence(FlightTimingFit fit, ThermalRequirement published) {
    if (!spansAGeneration(published)) {
      return "not the same quantity: the published "
          + words(published)
          + " span "
          + published.span().words()
          + ", and an interval between flights spans a whole generation"
          + (published.span() == Span.EGG_TO_ADULT
              ? "; the time before egg-laying is missing"
              : "");
    }
    var model = fit.model();
    if (model.isPresent() && differs(published, fit)) {
      return "not the same quantity: the published "
          + words(published)
          + " count "
          + published.thresholds()
          + ", the flights "
          + model.get().thresholds();
    }
    return fit.interval()
        .map(estimate -> beside(estimate, published))
        .orElse("nothing to compare: the interval is " + fit.verdict().words());
  }

  private static boolean differs(ThermalRequirement published, FlightTimingFit fit) {
    var lower = fit.model().orElseThrow().thresholds().lower();
    return Math.abs(lower.minus(published.thresholds().lower()).celsius()) > 1e-6;
  }

  private static String words(ThermalRequirement published) {
    return Numbers.fixed(published.requirement().degreeDaysC(), 0) + " °C·d";
  }

  private static String beside(IntervalEstimate estimate, ThermalRequirement published) {
    var requirement = published.requirement().degreeDaysC();
    var difference = estimate.mean().degreeDaysC() - requirement;
    var half = estimate.halfWidthOfMeanC(0.9);
    return "the flights lie "
        + Numbers.fixed(estimate.mean().degreeDaysC(), 0)
        + " °C·d apart, "
        + Numbers.fixed(Math.abs(difference), 0)
        + " °C·d ("
        + Numbers.fixed(100 * Math.abs(difference) / requirement, 0)
        + " %) "
        + (difference < 0 ? "less" : "more")
        + " than the published "
        + words(published)
        + chance(difference, half)
        + ". Catches summed on a daily curve and rearings at constant temperatures differ by some"
        + " per cent for that reason alone";
  }

  private static String chance(double difference, double half) {
    if (Double.isNaN(half)) {
      return "; one season does not tell whether that is chance";
    }
    return Math.abs(difference) <= half
        ? ", within the 90 % interval of the seasons"
        : ", outside the 90 % interval of the seasons";
  }
}
