package agro.trial.series;

import agro.report.InputProblem;
import agro.stats.mixed.MixedModelFit;
import agro.stats.multiple.PairwiseComparison;
import agro.trial.FieldTrial;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * How repeated dates on the same plots are analysed: first by one number for each plot, then with
 * the date as a repeated factor. Dates are never replicates.
 *
 * @param correlation how dates of a plot belong together
 * @param summaries numbers for each plot that are analysed first
 * @param errors by which scatter the means of a date are judged
 * @param comparison how means are compared
 */
public record RepeatedDates(
    DateCorrelation correlation,
    List<DateSummary> summaries,
    DateErrors errors,
    PairwiseComparison comparison) {

  /** Likelihoods that differ by less are equal but for rounding. */
  private static final double SAME = 1e-6;

  private static final int MOST_ROWS = 1500;

  /** Copies the summaries. */
  public RepeatedDates {
    Objects.requireNonNull(correlation, "correlation");
    summaries = List.copyOf(summaries);
    Objects.requireNonNull(errors, "errors");
    Objects.requireNonNull(comparison, "comparison");
  }

  /**
   * Mean of the dates and last date first, then the likelier correlation; Tukey's method at 5 %.
   *
   * @return the settings
   */
  public static RepeatedDates withDefaults() {
    return new RepeatedDates(
        DateCorrelation.LIKELIER,
        List.of(DateSummary.mean(), DateSummary.lastDate()),
        DateErrors.OWN,
        PairwiseComparison.withDefaults());
  }

  /**
   * These settings with another correlation.
   *
   * @param other the correlation
   * @return new settings
   */
  public RepeatedDates with(DateCorrelation other) {
    return new RepeatedDates(other, summaries, errors, comparison);
  }

  /**
   * These settings with other summaries.
   *
   * @param others the summaries in the order in which they are shown
   * @return new settings
   */
  public RepeatedDates with(DateSummary... others) {
    return new RepeatedDates(correlation, List.of(others), errors, comparison);
  }

  /**
   * These settings with another scatter for the means of a date.
   *
   * @param other which scatter
   * @return new settings
   */
  public RepeatedDates with(DateErrors other) {
    return new RepeatedDates(correlation, summaries, other, comparison);
  }

  /**
   * These settings with another comparison of means.
   *
   * @param other method and level
   * @return new settings
   */
  public RepeatedDates with(PairwiseComparison other) {
    return new RepeatedDates(correlation, summaries, errors, other);
  }

  /**
   * Analyses a variable of a trial.
   *
   * @param trial a trial of one site and year
   * @param variable name of the variable
   * @return the analysis
   * @throws InputProblem for the reasons of {@link #evaluate(DatedFigures)}, or when the variable
   *     is a score
   */
  public DateCourse evaluate(FieldTrial trial, String variable) {
    var figures = DatedFigures.of(trial, variable);
    check(figures);
    var analyses = new ArrayList<SummaryAnalysis>();
    var notes = new ArrayList<>(figures.notes());
    for (var summary : summaries) {
      try {
        analyses.add(SummaryAnalysis.of(summary.of(trial, variable), comparison));
      } catch (InputProblem none) {
        notes.add("No analysis of the " + summary.words() + ": " + none.read());
      }
    }
    return course(figures, analyses, notes);
  }

  /**
   * Analyses numbers of plots and days, such as transformed ones, with the date as a repeated
   * factor alone.
   *
   * @param figures the numbers
   * @return the analysis, without summaries
   * @throws InputProblem when treatments have no replicates, plots lie in main plots, all values
   *     are equal, or there are more than about a thousand values
   */
  public DateCourse evaluate(DatedFigures figures) {
    check(figures);
    return course(figures, List.of(), new ArrayList<>(figures.notes()));
  }

  private DateCourse course(
      DatedFigures figures, List<SummaryAnalysis> analyses, List<String> notes) {
    var model = new DateModel(figures);
    var equal = model.fit(DateCorrelation.EQUAL);
    var falling = model.fit(DateCorrelation.FALLING);
    var chosen = correlation;
    if (chosen == DateCorrelation.LIKELIER) {
      chosen =
          falling.logLikelihood() > equal.logLikelihood() + SAME
              ? DateCorrelation.FALLING
              : DateCorrelation.EQUAL;
    }
    MixedModelFit fit = chosen == DateCorrelation.FALLING ? falling : equal;
    Optional<SplitPlotInTime> split = Optional.empty();
    try {
      split = Optional.of(SplitPlotInTime.of(figures));
    } catch (InputProblem unequal) {
      notes.add(
          "No split plot in time: " + unequal.read() + ", but it needs " + unequal.expected());
    }
    return new DateCourse(
        this,
        figures,
        analyses,
        chosen,
        falling.logLikelihood() - equal.logLikelihood(),
        fit.correlation(),
        fit.variances(),
        model.tests(fit),
        errors == DateErrors.OWN
            ? DailyMeans.of(figures, comparison, notes)
            : model.meansByDate(fit, comparison),
        DailyMeans.spread(figures),
        split,
        notes);
  }

  private static void check(DatedFigures figures) {
    var plots = figures.byPlot().keySet();
    for (var plot : plots) {
      if (!plot.mainPlot().isEmpty()) {
        throw InputProblem.of(plot.label() + " in main plot " + plot.mainPlot())
            .expected("treatments laid out plot by plot")
            .because("main plots have an error of their own, which is not modelled here")
            .mend("take one number for the dates of a plot and analyse the split plot as such");
      }
    }
    var model = new DateModel(figures);
    if (model.treatments() < 2) {
      throw InputProblem.of("one treatment")
          .expected("at least two treatments")
          .because("a treatment is compared with another one")
          .mend("check whether the treatments were read from the right column");
    }
    if (model.errorDegreesOfFreedom() < 1) {
      throw SummaryAnalysis.noReplicates(model.plots(), model.treatments());
    }
    double[] values = model.values();
    if (Arrays.stream(values).allMatch(each -> each == values[0])) {
      throw InputProblem.of("all " + values.length + " values equal to " + values[0])
          .expected("values that differ")
          .because("equal values have no scatter, and no difference can be judged")
          .mend("say in words that no difference was seen");
    }
    if (values.length > MOST_ROWS) {
      throw InputProblem.of(values.length + " values of plots and days")
          .expected("at most " + MOST_ROWS)
          .because("the model with repeated dates works with matrices of that size")
          .mend("take one number for the dates of a plot, or fewer dates");
    }
  }
}
