package agro.development;

import agro.report.InputProblem;
import agro.units.Numbers;
import agro.weather.DailyTemperatures;
import agro.working.Cell;
import agro.working.Presentable;
import agro.working.Presentation;
import agro.working.ResultTable;
import agro.working.ResultTable.Column;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * What disagreeing papers mean at a place: the day on which each says that a part of life is
 * completed. Thresholds and requirements of two papers cannot be compared one by one, for a higher
 * threshold goes with a smaller requirement; their dates can.
 *
 * @param place name of the place
 * @param start day from whose beginning each requirement is counted
 * @param lastDay last day of the temperatures
 * @param estimates one for each paper, host and population
 */
public record PublishedSpread(
    String place, LocalDate start, LocalDate lastDay, List<Estimate> estimates)
    implements Presentable {

  /**
   * What one pair of threshold and requirement says.
   *
   * @param requirement the pair
   * @param reached day and share of the day, or nothing when it is not completed by the last day
   */
  public record Estimate(ThermalRequirement requirement, Optional<Reached> reached) {
    /** Refuses nulls. */
    public Estimate {
      Objects.requireNonNull(requirement, "requirement");
      Objects.requireNonNull(reached, "reached");
    }
  }

  /** Refuses nulls. */
  public PublishedSpread {
    Objects.requireNonNull(place, "place");
    Objects.requireNonNull(start, "start");
    Objects.requireNonNull(lastDay, "lastDay");
    estimates = List.copyOf(estimates);
  }

  /**
   * Looks each requirement up on the temperatures of a place, by the single sine without upper
   * cutoff.
   *
   * @param requirements pairs of one species and one span, at least one
   * @param temperatures daily extremes without a missing day from the start on
   * @param start first day that counts
   * @return the dates
   * @throws InputProblem when there is no requirement, when they are of different species or span
   *     different parts of life, when the temperatures are of another medium, or when a day is
   *     missing
   */
  public static PublishedSpread of(
      List<ThermalRequirement> requirements, DailyTemperatures temperatures, LocalDate start) {
    requireOneQuantity(requirements);
    var estimates = new ArrayList<Estimate>();
    for (var each : requirements) {
      var scale = each.scale(UpperCutoff.NONE, temperatures, start);
      estimates.add(new Estimate(each, scale.reached(each.requirement())));
    }
    return new PublishedSpread(temperatures.place(), start, temperatures.lastDay(), estimates);
  }

  private static void requireOneQuantity(List<ThermalRequirement> requirements) {
    var spans = new LinkedHashSet<String>();
    var species = new HashSet<String>();
    for (var each : requirements) {
      spans.add(each.span().words());
      species.add(each.species());
    }
    if (spans.size() == 1 && species.size() == 1) {
      return;
    }
    throw InputProblem.of(
            requirements.isEmpty()
                ? "no requirement"
                : requirements.size() + " requirements that span " + String.join(" and ", spans))
        .expected("requirements of one species that span the same part of its life")
        .because("the dates would be those of different events")
        .mend(
            "choose one span; complete egg to adult by the time before the first egg with plus to"
                + " get a generation");
  }

  /**
   * Days between the earliest and the latest date.
   *
   * @return days, or nothing when a paper's requirement is not completed by the last day
   */
  public Optional<Double> daysApart() {
    double earliest = Double.POSITIVE_INFINITY;
    double latest = Double.NEGATIVE_INFINITY;
    for (var each : estimates) {
      if (each.reached().isEmpty()) {
        return Optional.empty();
      }
      double days = each.reached().get().daysSinceStartOf(start);
      earliest = Math.min(earliest, days);
      latest = Math.max(latest, days);
    }
    return Optional.of(latest - earliest);
  }

  @Override
  public Presentation presentation() {
    var first = estimates.get(0).requirement();
    var rows = new ArrayList<List<Cell>>();
    for (var each : estimates) {
      var pair = each.requirement();
      rows.add(
          List.of(
              each.reached().map(when -> Cell.day(when.day())).orElse(Cell.text("not by the end")),
              each.reached()
                  .map(when -> Cell.number(when.daysSinceStartOf(start), 1))
                  .orElse(Cell.notKnown()),
              Cell.text(pair.host().isEmpty() ? "not named" : pair.host()),
              Cell.number(pair.thresholds().lower().celsius(), 2),
              Cell.number(pair.requirement().degreeDaysC(), 1),
              Cell.text(pair.source().citation())));
    }
    return Presentation.titled(first.species() + ", " + first.span().words() + ": papers compared")
        .fact("Place", place)
        .fact("Counted from", "the beginning of " + start)
        .fact("Temperatures to", lastDay.toString())
        .fact(
            "Between the earliest and the latest paper",
            daysApart()
                .map(days -> Numbers.fixed(days, 1) + " d")
                .orElse("not every paper's date comes by the last day"))
        .table(
            ResultTable.of(
                "The day each paper gives",
                List.of(
                    Column.of("Completed on"),
                    Column.of("After", "d"),
                    Column.of("Host"),
                    Column.of("Lower threshold", "°C"),
                    Column.of("Requirement", "°C·d"),
                    Column.of("Source")),
                rows))
        .paragraph(
            "Compare the dates. A threshold and a requirement belong together, and those of two"
                + " papers must not be mixed.")
        .sources(estimates.stream().map(each -> each.requirement().source()).distinct().toList())
        .build();
  }
}
