package agro.trial.series;

import agro.report.InputProblem;
import agro.trial.FieldTrial;
import agro.trial.TrialPlot;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeSet;
import java.util.function.DoubleUnaryOperator;

/**
 * One number for each plot and day of one trial; sub-samples are averaged. Dates are repeated looks
 * at the same plots.
 *
 * @param name what the numbers are
 * @param unit their unit in print, or empty
 * @param figures by plot, then by day
 * @param notes what a reader has to know
 */
public record DatedFigures(
    String name, String unit, List<DatedFigure> figures, List<String> notes) {

  private static final Comparator<DatedFigure> IN_ORDER =
      Comparator.comparing(DatedFigure::plot, TrialPlot.IN_ORDER).thenComparing(DatedFigure::date);

  /**
   * Sorts and checks the numbers.
   *
   * @throws InputProblem when there are fewer than two dates, several sites or years, a plot twice
   *     on a day, or a number that is not finite
   */
  public DatedFigures {
    Objects.requireNonNull(name, "name");
    Objects.requireNonNull(unit, "unit");
    figures = figures.stream().sorted(IN_ORDER).toList();
    notes = List.copyOf(notes);
    var seen = new HashSet<List<Object>>();
    for (var each : figures) {
      new PlotFigure(each.plot(), each.value());
      if (!seen.add(List.of(each.plot().environment(), each.plot().name(), each.date()))) {
        throw InputProblem.of(each.plot().label() + " twice on " + each.date())
            .expected("one number for a plot on a day")
            .because("a second number of a plot is no replicate")
            .mend("take the mean of the sub-samples");
      }
    }
    requireDates(figures);
    requireOneSite(figures);
  }

  /**
   * The values of all days of a variable; counts out of n in per cent.
   *
   * @param trial the trial
   * @param variable name of the variable
   * @return the numbers
   * @throws InputProblem when the variable is a score, was seen on fewer than two dates, or comes
   *     from several sites
   */
  public static DatedFigures of(FieldTrial trial, String variable) {
    var response = trial.variable(variable).response();
    PlotFigures.requireMeasured(response);
    var figures = new ArrayList<DatedFigure>();
    var notes = new ArrayList<String>();
    for (var day : trial.variable(variable).onEachDay()) {
      day.date()
          .ifPresent(
              date -> {
                day.values()
                    .forEach(
                        value ->
                            figures.add(
                                new DatedFigure(value.plot(), date, PlotFigures.figure(value))));
                day.missing().forEach(plot -> notes.add(plot.label() + " has no value on " + date));
              });
    }
    return new DatedFigures(variable, PlotFigures.unit(response), figures, notes);
  }

  private static void requireDates(List<DatedFigure> figures) {
    long dates = figures.stream().map(DatedFigure::date).distinct().count();
    if (dates < 2) {
      throw InputProblem.of(dates + (dates == 1 ? " date" : " dates"))
          .expected("at least two dates")
          .because("a course needs several looks at the plots")
          .mend("analyse the values of the one date, or name the column of dates");
    }
  }

  private static void requireOneSite(List<DatedFigure> figures) {
    var environments = new LinkedHashSet<String>();
    figures.forEach(each -> environments.add(each.plot().environment()));
    if (environments.size() > 1) {
      throw InputProblem.of("dates of " + environments.size() + " sites or years, " + environments)
          .expected("the plots of one site and year")
          .because("sites have dates and errors of their own")
          .mend(
              "take one number for the dates of a plot (DateSummary) and analyse it with"
                  + " SeveralTrials, or analyse the sites one by one");
    }
  }

  /**
   * These numbers on another scale, such as the square root.
   *
   * @param scale the scale in words, with its constant
   * @param function what is done with each number
   * @return new numbers
   * @throws InputProblem when a number has no value on the scale
   */
  public DatedFigures transformed(String scale, DoubleUnaryOperator function) {
    return new DatedFigures(
        scale + " of " + name,
        "",
        figures.stream()
            .map(
                each ->
                    new DatedFigure(each.plot(), each.date(), function.applyAsDouble(each.value())))
            .toList(),
        PlotFigures.joined(
            notes,
            List.of("tests and means belong to the scale \"" + scale + "\", not to " + name)));
  }

  /**
   * The days.
   *
   * @return in order, each once
   */
  public List<LocalDate> dates() {
    var days = new TreeSet<LocalDate>();
    figures.forEach(each -> days.add(each.date()));
    return List.copyOf(days);
  }

  /**
   * Plots with the numbers of their days.
   *
   * @return plots in order
   */
  Map<TrialPlot, Map<LocalDate, Double>> byPlot() {
    Map<TrialPlot, Map<LocalDate, Double>> plots = new LinkedHashMap<>();
    figures.forEach(
        each ->
            plots
                .computeIfAbsent(each.plot(), plot -> new LinkedHashMap<>())
                .put(each.date(), each.value()));
    return plots;
  }

  /** The plots that were seen on every day. */
  DatedFigures complete() {
    int days = dates().size();
    var plots = byPlot();
    return new DatedFigures(
        name,
        unit,
        figures.stream().filter(each -> plots.get(each.plot()).size() == days).toList(),
        notes);
  }

  /**
   * Name and unit.
   *
   * @return the unit in brackets if there is one
   */
  public String heading() {
    return unit.isBlank() ? name : name + " (" + unit + ")";
  }

  @Override
  public String toString() {
    return heading() + ": " + byPlot().size() + " plots on " + dates().size() + " dates";
  }
}
