package agro.trial.load;

import agro.report.InputProblem;
import agro.trial.FieldTrial;
import agro.trial.PlotValue;
import agro.trial.PlotValues;
import agro.trial.ResponseKind;
import agro.trial.TrialPlot;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * What was seen on one plot day by day.
 *
 * @param plot name of the plot
 * @param block its block; empty in a trial without blocks
 * @param treatment its treatment
 * @param means mean for each unit by day; days without a count are left out
 */
public record PlotVisits(
    String plot, String block, String treatment, SortedMap<LocalDate, Double> means) {

  /**
   * Copies the days.
   *
   * @throws InputProblem when a mean is below zero or not finite, or there is none
   */
  public PlotVisits {
    Objects.requireNonNull(plot, "plot");
    Objects.requireNonNull(block, "block");
    Objects.requireNonNull(treatment, "treatment");
    means = Collections.unmodifiableSortedMap(new TreeMap<>(means));
    if (means.isEmpty()) {
      throw InputProblem.of("plot " + plot + " without a count")
          .expected("at least one day with a count")
          .because("nothing can be summed over days")
          .mend("leave the plot out");
    }
    for (var visit : means.entrySet()) {
      if (!(visit.getValue() >= 0 && Double.isFinite(visit.getValue()))) {
        throw InputProblem.of(
                "plot " + plot + " with " + visit.getValue() + " on " + visit.getKey())
            .expected("a finite number of 0 or more")
            .because("the area under the curve would have no meaning")
            .mend("leave the day out for this plot");
      }
    }
  }

  /**
   * The means of a variable, plot by plot and day by day.
   *
   * @param trial the trial
   * @param variable counts, percentages or measured amounts; counts out of n are taken in per cent
   * @return the plots
   * @throws InputProblem when the variable is a score or may be negative
   */
  public static List<PlotVisits> of(FieldTrial trial, String variable) {
    var kind = trial.variable(variable).response().kind();
    if (kind == ResponseKind.SCORE || kind == ResponseKind.SIGNED) {
      throw InputProblem.of("the variable " + variable + ", a " + kind.words())
          .expected("counts, counts out of n, percentages or measured amounts")
          .because("an area needs a measure that begins at nothing")
          .mend("turn grades into the shares that they stand for, or compare them by ranks");
    }
    Map<TrialPlot, SortedMap<LocalDate, Double>> byPlot = new LinkedHashMap<>();
    for (PlotValues day : trial.variable(variable).onEachDay()) {
      var date =
          day.date()
              .orElseThrow(
                  () ->
                      InputProblem.of("a trial without dates")
                          .expected("a date for each count")
                          .because("the area is summed over days")
                          .mend("name the column of dates"));
      for (PlotValue value : day.values()) {
        byPlot
            .computeIfAbsent(value.plot(), plot -> new TreeMap<>())
            .put(date, value.outOf().isPresent() ? 100 * value.share() : value.mean());
      }
    }
    var visits = new ArrayList<PlotVisits>();
    byPlot.forEach(
        (plot, means) ->
            visits.add(new PlotVisits(name(plot), block(plot), plot.treatment(), means)));
    return List.copyOf(visits);
  }

  static String name(TrialPlot plot) {
    return plot.environment().isEmpty() ? plot.name() : plot.environment() + ", " + plot.name();
  }

  static String block(TrialPlot plot) {
    return plot.environment().isEmpty() ? plot.block() : plot.environment() + ", " + plot.block();
  }
}
