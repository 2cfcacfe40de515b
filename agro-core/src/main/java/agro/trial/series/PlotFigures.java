package agro.trial.series;

import agro.report.InputProblem;
import agro.trial.PlotValue;
import agro.trial.PlotValues;
import agro.trial.ResponseKind;
import agro.trial.TrialPlot;
import agro.trial.TrialResponse;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.Stream;

/**
 * One number for each plot of one or more trials: the mean of its sub-samples, or a summary of its
 * dates. The plot is the replicate.
 *
 * @param name what the numbers are
 * @param unit their unit in print, or empty
 * @param figures one for each plot, by site, year, block and name
 * @param notes what was left out or bridged
 */
public record PlotFigures(String name, String unit, List<PlotFigure> figures, List<String> notes) {

  /**
   * Sorts the plots and checks that each stands once.
   *
   * @throws InputProblem when there is none, or a plot stands twice
   */
  public PlotFigures {
    Objects.requireNonNull(name, "name");
    Objects.requireNonNull(unit, "unit");
    notes = List.copyOf(notes);
    figures =
        figures.stream().sorted((a, b) -> TrialPlot.IN_ORDER.compare(a.plot(), b.plot())).toList();
    if (figures.isEmpty()) {
      throw InputProblem.of("no plot with a value of " + name)
          .expected("at least one plot")
          .because("there is nothing to analyse")
          .mend("check the name of the variable and its days: " + notes);
    }
    var seen = new HashSet<List<Object>>();
    for (var figure : figures) {
      var plot = figure.plot();
      if (!seen.add(List.of(plot.site(), plot.year(), plot.name()))) {
        throw InputProblem.of(plot.label() + " twice")
            .expected("each plot once")
            .because("a second value of a plot is no replicate, and the error would be too small")
            .mend(
                "give trials of one farm different sites or years, and several dates of a plot"
                    + " one summary");
      }
    }
  }

  /**
   * Means of the sub-samples of one day; counts out of n in per cent.
   *
   * @param day values of one day
   * @return one number for each plot
   * @throws InputProblem when the variable is a score
   */
  public static PlotFigures of(PlotValues day) {
    requireMeasured(day.response());
    var figures =
        day.values().stream().map(value -> new PlotFigure(value.plot(), figure(value))).toList();
    var notes =
        day.missing().stream().map(plot -> plot.label() + " has no value and is left out").toList();
    return new PlotFigures(day.response().name(), unit(day.response()), figures, notes);
  }

  /**
   * Several trials as one set of plots.
   *
   * @param parts numbers of one meaning from different sites or years
   * @return all plots
   * @throws InputProblem when names or units differ, or a plot stands twice
   */
  public static PlotFigures together(List<PlotFigures> parts) {
    if (parts.isEmpty()) {
      throw InputProblem.of("no trials")
          .expected("at least one")
          .because("there is nothing to analyse")
          .mend("give the trials");
    }
    var first = parts.get(0);
    for (var part : parts) {
      if (!part.name().equals(first.name()) || !part.unit().equals(first.unit())) {
        throw InputProblem.of(
                "trials with " + first.heading() + " and with " + part.heading() + " together")
            .expected("one variable in one unit")
            .because("means over different things have no meaning")
            .mend("give the variable the same name and unit in all trials");
      }
    }
    return new PlotFigures(
        first.name(),
        first.unit(),
        parts.stream().flatMap(part -> part.figures().stream()).toList(),
        parts.stream().flatMap(part -> part.notes().stream()).toList());
  }

  /**
   * These numbers on another scale, such as the square root. Tests and means then belong to that
   * scale.
   *
   * @param scale the scale in words, with its constant, for example "root of x + 0.5"
   * @param function what is done with each number
   * @return new numbers
   * @throws InputProblem when a number has no value on the scale
   */
  public PlotFigures transformed(String scale, DoubleUnaryOperator function) {
    return new PlotFigures(
        scale + " of " + name,
        "",
        figures.stream()
            .map(each -> new PlotFigure(each.plot(), function.applyAsDouble(each.value())))
            .toList(),
        Stream.concat(
                notes.stream(),
                Stream.of("tests and means belong to the scale \"" + scale + "\", not to " + name))
            .toList());
  }

  /**
   * The plots of some sites and years.
   *
   * @param environment site and year in words
   * @return fewer plots
   * @throws InputProblem when there is none
   */
  public PlotFigures of(String environment) {
    return new PlotFigures(
        name,
        unit,
        figures.stream().filter(each -> each.plot().environment().equals(environment)).toList(),
        notes);
  }

  /**
   * Sites with their years.
   *
   * @return in order, each once
   */
  public List<String> environments() {
    return figures.stream().map(each -> each.plot().environment()).distinct().toList();
  }

  /**
   * Name and unit.
   *
   * @return the unit in brackets if there is one
   */
  public String heading() {
    return unit.isBlank() ? name : name + " (" + unit + ")";
  }

  double[] values() {
    return figures.stream().mapToDouble(PlotFigure::value).toArray();
  }

  List<String> treatments() {
    return figures.stream().map(each -> each.plot().treatment()).toList();
  }

  static double figure(PlotValue value) {
    return value.outOf().isPresent() ? 100 * value.share() : value.mean();
  }

  static String unit(TrialResponse response) {
    return response.kind() == ResponseKind.COUNT_OUT_OF ? "%" : response.unit();
  }

  static void requireMeasured(TrialResponse response) {
    if (response.kind() == ResponseKind.SCORE) {
      throw InputProblem.of("a mean of the scores \"" + response.name() + "\"")
          .expected("counts, percentages or measured amounts")
          .because(
              "grades have an order and no distances: from 1 to 2 may be another step than from 4"
                  + " to 5, and a mean takes them for equal")
          .mend(
              "analyse scores with ScoreAnalysis, which shows the mean beside ranks and class"
                  + " shares, or score shares in per cent");
    }
  }

  /** One line for each plot left out, joined from both lists. */
  static List<String> joined(List<String> one, List<String> other) {
    var all = new ArrayList<>(one);
    all.addAll(other);
    return List.copyOf(all);
  }

  @Override
  public String toString() {
    return heading() + ": " + figures.size() + (figures.size() == 1 ? " plot" : " plots");
  }
}
