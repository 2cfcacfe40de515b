package agro.trial.series;

import agro.report.InputProblem;
import agro.stats.multiple.PairwiseComparison;
import agro.trial.FieldTrial;
import agro.trial.TrialPlot;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * How trials of several sites and years are analysed together.
 *
 * @param weights how much the plots of a site count where sites are fixed
 * @param comparison how means are compared
 */
public record SeveralTrials(SiteWeights weights, PairwiseComparison comparison) {

  /** Refuses nulls. */
  public SeveralTrials {
    Objects.requireNonNull(weights, "weights");
    Objects.requireNonNull(comparison, "comparison");
  }

  /**
   * Plots that count the same, means compared by Tukey's method at 5 %.
   *
   * @return the settings
   */
  public static SeveralTrials withDefaults() {
    return new SeveralTrials(SiteWeights.EQUAL, PairwiseComparison.withDefaults());
  }

  /**
   * These settings with other weights.
   *
   * @param other the weights
   * @return new settings
   */
  public SeveralTrials with(SiteWeights other) {
    return new SeveralTrials(other, comparison);
  }

  /**
   * These settings with another comparison of means.
   *
   * @param other method and level
   * @return new settings
   */
  public SeveralTrials with(PairwiseComparison other) {
    return new SeveralTrials(weights, other);
  }

  /**
   * Analyses a variable that was assessed once at each site.
   *
   * @param variable name of the variable
   * @param trials one trial with several sites or years, or several trials; a trial without sites
   *     and years is known by its name
   * @return the analysis
   * @throws InputProblem for the reasons of {@link #evaluate(PlotFigures)}, or when a site was
   *     assessed on several dates
   */
  public CombinedTrials evaluate(String variable, FieldTrial... trials) {
    return evaluate(variable, DateSummary.onlyDate(), trials);
  }

  /**
   * Analyses a summary of the dates of each site.
   *
   * @param variable name of the variable
   * @param summary one number for the dates of a plot
   * @param trials one trial with several sites or years, or several trials
   * @return the analysis
   * @throws InputProblem for the reasons of {@link #evaluate(PlotFigures)}
   */
  public CombinedTrials evaluate(String variable, DateSummary summary, FieldTrial... trials) {
    var parts = new ArrayList<PlotFigures>();
    var known = new HashSet<String>();
    for (var trial : trials) {
      var part = named(summary.of(trial, variable), trial.name());
      for (var environment : part.environments()) {
        if (!known.add(environment)) {
          throw InputProblem.of("two trials of \"" + environment + "\"")
              .expected("a site or year of its own for each trial")
              .because("blocks and errors of two trials would be mixed up")
              .mend(
                  "give the trials different names of sites, such as North field and South field");
        }
      }
      parts.add(part);
    }
    return evaluate(PlotFigures.together(parts));
  }

  private static PlotFigures named(PlotFigures figures, String site) {
    return new PlotFigures(
        figures.name(),
        figures.unit(),
        figures.figures().stream()
            .map(
                each ->
                    each.plot().environment().isEmpty()
                        ? new PlotFigure(at(each.plot(), site), each.value())
                        : each)
            .toList(),
        figures.notes());
  }

  private static TrialPlot at(TrialPlot plot, String site) {
    return new TrialPlot(
        site,
        plot.year(),
        plot.block(),
        plot.mainPlot(),
        plot.name(),
        plot.place(),
        plot.levels(),
        plot.area());
  }

  /**
   * Analyses one number for each plot.
   *
   * @param figures plots of at least two sites or years
   * @return the analysis
   * @throws InputProblem when there is one site or one treatment, sites do not tie the treatments
   *     together, plots lie in main plots, all values are equal, or weights are asked for and a
   *     site has no error variance
   */
  public CombinedTrials evaluate(PlotFigures figures) {
    var notes = SiteChecks.check(figures);
    var trials =
        figures.environments().stream()
            .map(each -> SingleTrial.of(each, figures.of(each)))
            .toList();
    var variances = SiteVariances.of(trials);
    if (weights == SiteWeights.BY_ERROR_VARIANCE) {
      requireErrors(trials, variances);
    }
    boolean error = trials.stream().anyMatch(SingleTrial::hasScatter);
    Optional<SitesAsFixed> fixed =
        error
            ? Optional.of(SitesAsFixed.of(figures, trials, weights, comparison))
            : Optional.empty();
    return new CombinedTrials(
        this,
        figures,
        trials,
        variances,
        fixed,
        SitesAsRandom.of(figures, comparison),
        PlotFigures.joined(figures.notes(), notes));
  }

  private static void requireErrors(List<SingleTrial> trials, SiteVariances variances) {
    if (variances.trials().size() < trials.size()) {
      throw InputProblem.of(
              "weights by error variance, but " + String.join("; ", variances.notes()))
          .expected("an error variance above zero at every site")
          .because("the weight of a plot is one over it")
          .mend("leave the site out, or take SiteWeights.EQUAL");
    }
  }
}
