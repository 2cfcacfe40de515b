package agro.trial;

import agro.report.InputProblem;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.TreeSet;

/** One variable of a {@link FieldTrial}, to be asked for its values on a day. */
public final class TrialVariable {

  private final FieldTrial trial;
  private final TrialResponse response;

  TrialVariable(FieldTrial trial, TrialResponse response) {
    this.trial = trial;
    this.response = response;
  }

  /**
   * The trial that the variable belongs to.
   *
   * @return the trial
   */
  public FieldTrial trial() {
    return trial;
  }

  /**
   * The variable as declared.
   *
   * @return name, kind, unit and range
   */
  public TrialResponse response() {
    return response;
  }

  /**
   * The days on which the variable has at least one value.
   *
   * @return days in order, none when the trial has no dates
   */
  public List<LocalDate> dates() {
    var days = new TreeSet<LocalDate>();
    for (var assessment : assessments()) {
      if (assessment.value().isPresent()) {
        assessment.date().ifPresent(days::add);
      }
    }
    return List.copyOf(days);
  }

  /**
   * All lines of this variable, missing values included.
   *
   * @return assessments in the order of the table
   */
  public List<Assessment> assessments() {
    return trial.assessments().stream()
        .filter(assessment -> assessment.variable().equals(response.name()))
        .toList();
  }

  /**
   * The values of each plot on one day.
   *
   * @param date the day
   * @return the plots with a value, and those without
   * @throws InputProblem when nothing was assessed on that day, when one sub-sample has two
   *     different values, or when a plot is written with two different treatments or blocks
   */
  public PlotValues on(LocalDate date) {
    if (!dates().contains(date)) {
      throw InputProblem.of("no value of " + response.name() + " on " + date)
          .expected(dates().isEmpty() ? "a trial with dates" : "one of " + dates())
          .because("there is nothing to analyse")
          .mend("ask for a day on which the variable was assessed");
    }
    return values(Optional.of(date));
  }

  /**
   * The values of each plot when there is only one day, or no dates at all.
   *
   * @return the plots with a value, and those without
   * @throws InputProblem when there are several days, or for the reasons of {@link #on}
   */
  public PlotValues onTheOnlyDay() {
    var days = dates();
    boolean undated =
        assessments().stream()
            .anyMatch(assessment -> assessment.date().isEmpty() && assessment.value().isPresent());
    if (days.size() + (undated ? 1 : 0) != 1) {
      throw InputProblem.of(
              response.name()
                  + " was assessed on "
                  + (days.isEmpty() ? "no day" : days + (undated ? " and without a date" : "")))
          .expected("one day")
          .because("days are repeated looks at the same plots and no replicates")
          .mend("name the day that you want");
    }
    return values(undated ? Optional.empty() : Optional.of(days.get(0)));
  }

  /**
   * The values of each plot on each day.
   *
   * @return one set of values for each day, in order
   * @throws InputProblem for the reasons of {@link #on}
   */
  public List<PlotValues> onEachDay() {
    var days = dates();
    return days.isEmpty() ? List.of(onTheOnlyDay()) : days.stream().map(this::on).toList();
  }

  private PlotValues values(Optional<LocalDate> date) {
    Map<TrialPlot, List<Assessment>> byPlot = new LinkedHashMap<>();
    trial.plots().forEach(plot -> byPlot.put(plot, new ArrayList<>()));
    for (var assessment : assessments()) {
      if (assessment.date().equals(date) && assessment.value().isPresent()) {
        byPlot.get(trial.plotOf(assessment)).add(assessment);
      }
    }
    var values = new ArrayList<PlotValue>();
    var missing = new ArrayList<TrialPlot>();
    byPlot.forEach(
        (plot, lines) -> {
          trial.requireOneDescription(plot);
          if (lines.isEmpty()) {
            missing.add(plot);
          } else {
            values.add(value(plot, lines));
          }
        });
    return new PlotValues(response, date, values, missing);
  }

  private PlotValue value(TrialPlot plot, List<Assessment> lines) {
    Map<String, Assessment> bySubSample = new LinkedHashMap<>();
    for (var line : lines) {
      var other = bySubSample.putIfAbsent(line.subSample(), line);
      if (other != null && !sameValue(other, line)) {
        throw InputProblem.of(
                line.where()
                    + ": "
                    + response.name()
                    + " is both "
                    + SubSamples.written(other)
                    + (other.line() == 0 ? "" : " (line " + other.line() + ")")
                    + " and "
                    + SubSamples.written(line))
            .expected("one value for one sub-sample on one day")
            .because("only one of them can be right, and their mean is neither")
            .mend("correct one of them, or set it to missing, with the reason");
      }
    }
    var values =
        bySubSample.values().stream().map(line -> line.value().getAsDouble()).sorted().toList();
    return new PlotValue(plot, values, outOf(plot, bySubSample.values()));
  }

  private OptionalInt outOf(TrialPlot plot, Iterable<Assessment> lines) {
    if (response.kind() != ResponseKind.COUNT_OUT_OF) {
      return OptionalInt.empty();
    }
    int sum = 0;
    for (var line : lines) {
      if (line.outOf().isEmpty()) {
        throw InputProblem.of(
                line.where() + ": " + response.name() + " is given without the number looked at")
            .expected("the number out of which " + response.name() + " were counted")
            .because("the share of " + plot.label() + " cannot be known without it")
            .mend("fill in the number, or set the value to missing");
      }
      sum += line.outOf().getAsInt();
    }
    return OptionalInt.of(sum);
  }

  static boolean sameValue(Assessment first, Assessment second) {
    return first.value().equals(second.value()) && first.outOf().equals(second.outOf());
  }

  @Override
  public String toString() {
    return response.heading() + " in " + trial.name() + ", " + response.kind().words();
  }
}
