package agro.trial.load;

import agro.report.InputProblem;
import agro.sampling.SamplingUnit;
import agro.sampling.injury.InsectDays;
import agro.sampling.injury.ProgressCurve;
import agro.trial.FieldTrial;
import agro.trial.NaturalOrder;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.OptionalDouble;
import java.util.SortedSet;
import java.util.TreeSet;

/**
 * How the load of plots is summed over days.
 *
 * @param unit what a mean count belongs to
 * @param between course of the curve between two counts
 * @param measure the number that is taken from the curve
 * @param missing what is done with missing counts
 * @param greatest greatest possible value, for the relative area
 */
public record PestLoad(
    SamplingUnit unit,
    ProgressCurve.Between between,
    LoadMeasure measure,
    MissingDates missing,
    OptionalDouble greatest) {

  /**
   * Checks that the relative area has a greatest value.
   *
   * @throws InputProblem when it has none, or one that is not above zero
   */
  public PestLoad {
    Objects.requireNonNull(unit, "unit");
    Objects.requireNonNull(between, "between");
    Objects.requireNonNull(measure, "measure");
    Objects.requireNonNull(missing, "missing");
    if (measure == LoadMeasure.RELATIVE_AREA && !(greatest.orElse(0) > 0)) {
      throw InputProblem.of("a relative area without a greatest possible value")
          .expected("a number above 0, such as 100 for per cent")
          .because("the area is taken as a share of it")
          .mend("call withRelativeTo(100)");
    }
  }

  /**
   * Area under straight lines, missing counts bridged.
   *
   * @param unit what a mean count belongs to
   * @return the settings
   */
  public static PestLoad withDefaults(SamplingUnit unit) {
    return new PestLoad(
        unit,
        ProgressCurve.Between.STRAIGHT,
        LoadMeasure.AREA,
        MissingDates.BRIDGE,
        OptionalDouble.empty());
  }

  /**
   * These settings with another course between counts.
   *
   * @param course the course
   * @return new settings
   */
  public PestLoad with(ProgressCurve.Between course) {
    return new PestLoad(unit, course, measure, missing, greatest);
  }

  /**
   * These settings with another measure.
   *
   * @param other the measure
   * @return new settings
   */
  public PestLoad with(LoadMeasure other) {
    return new PestLoad(unit, between, other, missing, greatest);
  }

  /**
   * These settings with another rule for missing counts.
   *
   * @param rule the rule
   * @return new settings
   */
  public PestLoad with(MissingDates rule) {
    return new PestLoad(unit, between, measure, rule, greatest);
  }

  /**
   * The relative area.
   *
   * @param greatestValue greatest possible value, such as 100 for per cent
   * @return new settings
   */
  public PestLoad withRelativeTo(double greatestValue) {
    return new PestLoad(
        unit, between, LoadMeasure.RELATIVE_AREA, missing, OptionalDouble.of(greatestValue));
  }

  /**
   * The load of each plot of a trial.
   *
   * @param trial the trial
   * @param variable what was counted
   * @return the loads
   * @throws InputProblem when the variable has no area, or a missing count is refused
   */
  public TrialLoad evaluate(FieldTrial trial, String variable) {
    return evaluate(PlotVisits.of(trial, variable));
  }

  /**
   * The load of each plot.
   *
   * @param plots the plots, each once
   * @return the loads
   * @throws InputProblem when there is no plot, one appears twice, there is one day only, or a
   *     missing count is refused
   */
  public TrialLoad evaluate(List<PlotVisits> plots) {
    SortedSet<LocalDate> days = new TreeSet<>();
    var names = new HashSet<String>();
    for (var plot : plots) {
      days.addAll(plot.means().keySet());
      if (!names.add(plot.plot())) {
        throw InputProblem.of("plot " + plot.plot() + " twice")
            .expected("each plot once, with all its days")
            .because("a plot has one load")
            .mend("put the days of a plot together, and its plants into means");
      }
    }
    if (days.size() < 2) {
      throw InputProblem.of(days.size() + " days of counting")
          .expected("at least two")
          .because("one day has no duration, and every load would be 0")
          .mend("take the counts of the day themselves");
    }
    var loads = new ArrayList<PlotLoad>();
    var notes = new ArrayList<String>();
    plots.stream()
        .sorted(
            Comparator.<PlotVisits, String>comparing(PlotVisits::block, NaturalOrder.ofNames())
                .thenComparing(PlotVisits::plot, NaturalOrder.ofNames()))
        .forEach(plot -> add(plot, days, loads, notes));
    if (loads.isEmpty()) {
      throw InputProblem.of("no plot that was counted on " + days.first() + " and " + days.last())
          .expected("plots with all counts, or at least with the first and the last")
          .because("loads over different times cannot be compared")
          .mend("leave out days on which only some plots were counted");
    }
    return new TrialLoad(this, List.copyOf(days), loads, notes);
  }

  private void add(
      PlotVisits plot, SortedSet<LocalDate> days, List<PlotLoad> loads, List<String> notes) {
    var lacking = days.stream().filter(day -> !plot.means().containsKey(day)).toList();
    boolean ends = lacking.contains(days.first()) || lacking.contains(days.last());
    if (!lacking.isEmpty() && missing == MissingDates.REFUSE) {
      throw InputProblem.of("plot " + plot.plot() + " without a count on " + lacking)
          .expected("a count of every plot on every day")
          .because("missing counts are refused by the chosen rule")
          .mend("choose MissingDates.BRIDGE or LEAVE_OUT, or leave the plot out");
    }
    if (ends || (!lacking.isEmpty() && missing == MissingDates.LEAVE_OUT)) {
      notes.add(
          "plot "
              + plot.plot()
              + " is left out: no count on "
              + words(lacking)
              + (ends ? ", the first or the last day" : ""));
      return;
    }
    if (!lacking.isEmpty()) {
      notes.add("plot " + plot.plot() + ": no count on " + words(lacking) + ", bridged");
    }
    var insectDays =
        InsectDays.of(unit, List.copyOf(plot.means().keySet()), List.copyOf(plot.means().values()))
            .with(between);
    loads.add(
        new PlotLoad(
            plot.plot(),
            plot.block(),
            plot.treatment(),
            insectDays,
            measure.of(insectDays.curve(), greatest.orElse(1)),
            lacking));
  }

  private static String words(List<LocalDate> days) {
    return String.join(", ", days.stream().map(LocalDate::toString).toList());
  }
}
