package agro.trial.analysis;

import agro.report.InputProblem;
import agro.source.Reference;
import agro.stats.linear.ContrastEstimate;
import agro.working.Presentable;
import agro.working.Presentation;
import agro.working.ResultTable;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * The analysis of one variable of a trial on one day: checks of the assumptions first, then tests,
 * means and what the trial could have shown.
 *
 * @param subject what was analysed, and how
 * @param reasons why the analysis was made so, one sentence each
 * @param checks checks of the assumptions
 * @param plots values, fitted values and residuals, in the order of the plots
 * @param effects analysis of variance or deviance, or the test of the route
 * @param means means of the treatments first, then those of single factors
 * @param contrasts contrasts that were asked for
 * @param precision how sharp the trial was
 * @param advice what else a reader should think of, one sentence each
 * @param sources works that the methods were taken from
 */
public record AnalysedTrial(
    AnalysisSubject subject,
    List<String> reasons,
    List<CheckedAssumption> checks,
    List<PlotResidual> plots,
    List<EffectRow> effects,
    List<TreatmentMeans> means,
    List<ContrastEstimate> contrasts,
    TrialPrecision precision,
    List<String> advice,
    List<Reference> sources)
    implements Presentable {

  /** Copies the lists. */
  public AnalysedTrial {
    Objects.requireNonNull(subject, "subject");
    Objects.requireNonNull(precision, "precision");
    reasons = List.copyOf(reasons);
    checks = List.copyOf(checks);
    plots = List.copyOf(plots);
    effects = List.copyOf(effects);
    means = List.copyOf(means);
    contrasts = List.copyOf(contrasts);
    advice = List.copyOf(advice);
    sources = List.copyOf(sources);
  }

  /**
   * Means of the treatments, all factors combined.
   *
   * @return the first of the tables of means
   */
  public TreatmentMeans treatmentMeans() {
    return means.get(0);
  }

  /**
   * Means of one factor or combination.
   *
   * @param factors names of factors, in the order of the trial
   * @return the means
   * @throws InputProblem when there are none
   */
  public TreatmentMeans meansOf(String... factors) {
    var wanted = List.of(factors);
    return means.stream()
        .filter(each -> each.factors().equals(wanted))
        .findFirst()
        .orElseThrow(
            () ->
                InputProblem.of("means of " + wanted)
                    .expected("one of " + means.stream().map(TreatmentMeans::factors).toList())
                    .because("means belong to treatment factors of the design")
                    .mend("name one of these"));
  }

  /**
   * The line of a term.
   *
   * @param source the term
   * @return its line, the first one where it has several
   * @throws InputProblem when there is none
   */
  public EffectRow effect(String source) {
    return effects.stream()
        .filter(row -> row.source().equals(source))
        .findFirst()
        .orElseThrow(
            () ->
                InputProblem.of("the term \"" + source + "\"")
                    .expected("one of " + effects.stream().map(EffectRow::source).toList())
                    .because("the analysis has no other lines")
                    .mend("name one of these"));
  }

  /**
   * The lines of treatments.
   *
   * @return factors and their interactions
   */
  public List<EffectRow> treatmentEffects() {
    return effects.stream().filter(row -> row.role() == EffectRow.Role.TREATMENT).toList();
  }

  /**
   * The tests of the treatments as papers print them.
   *
   * @return for example "F = 34.70; df = 5, 66; P &lt; 0.001"; with several terms each one after
   *     its name
   */
  public String sentence() {
    var rows = treatmentEffects();
    if (rows.size() == 1) {
      var row = rows.get(0);
      return row.test().map(EffectTest::sentence).orElse(row.sentence());
    }
    return String.join(". ", rows.stream().map(EffectRow::sentence).toList());
  }

  /**
   * The checks of the assumptions.
   *
   * @return a table
   */
  public ResultTable checkTable() {
    return AnalysisTables.checks(this);
  }

  /**
   * The analysis of variance or deviance.
   *
   * @return a table; empty for ranks, whose test is one sentence
   */
  public Optional<ResultTable> effectTable() {
    return AnalysisTables.effects(this);
  }

  /**
   * Means with limits and letters.
   *
   * @param of means of this result
   * @return a table
   */
  public ResultTable meansTable(TreatmentMeans of) {
    return MeansTables.means(this, of);
  }

  /**
   * The means of the treatments with limits and letters.
   *
   * @return a table
   */
  public ResultTable meansTable() {
    return meansTable(treatmentMeans());
  }

  /**
   * What stands beside a table of means: standard error, least significant difference and so on.
   *
   * @param of means of this result
   * @return a table of one number each, or a range where no one number holds
   */
  public Optional<ResultTable> differenceTable(TreatmentMeans of) {
    return MeansTables.differences(this, of);
  }

  /**
   * The values of the plots by treatment and block.
   *
   * @return a table with a line for each treatment and a column for each block; with plots in a row
   *     where there are no blocks
   */
  public ResultTable blockTable() {
    return AnalysisTables.blocks(this);
  }

  @Override
  public Presentation presentation() {
    return AnalysisPage.of(this);
  }

  @Override
  public String toString() {
    return subject.title() + " (" + subject.route().words() + "): " + sentence();
  }
}
