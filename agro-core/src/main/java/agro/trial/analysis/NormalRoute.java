package agro.trial.analysis;

import agro.report.InputProblem;
import agro.source.Reference;
import agro.stats.linear.AnalysisOfVariance;
import agro.stats.linear.BlockingEfficiency;
import agro.stats.linear.ContrastEstimate;
import agro.stats.linear.Factor;
import agro.stats.linear.LinearModel;
import agro.stats.linear.LinearModelFit;
import agro.stats.linear.ModelTerm;
import agro.stats.linear.SumsOfSquares;
import agro.trial.TrialDesign;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.function.Function;

/**
 * Analysis of variance: with one error, with strata, or with random main plots where plots lack.
 */
final class NormalRoute {

  private final AnalysisSubject subject;
  private final TrialLines lines;
  private final AnalysisChoices choices;
  private final double[] values;
  private final double[] analysed;
  private final LinearModelFit fit;
  private final List<String> reasons = new ArrayList<>();
  private final List<Reference> sources = new ArrayList<>();

  NormalRoute(AnalysisSubject subject, TrialLines lines, AnalysisChoices choices) {
    this.subject = subject;
    this.lines = lines;
    this.choices = choices;
    this.values = AnalysisScale.values(subject);
    this.analysed = AnalysisScale.analysed(subject);
    this.fit = LinearModel.of(lines.allTerms()).fit(analysed);
  }

  RouteOutcome analyse() {
    if (!subject.transformation().isNone()) {
      sources.add(AnalysisSources.BARTLETT_1947);
    }
    var checks = new ModelChecks(lines, fit);
    var found = checks.all();
    if (lines.isDivided()) {
      var divided = new DividedPlots(lines, analysed);
      reasons.addAll(divided.reasons());
      sources.addAll(divided.sources());
      return outcome(checks, found, divided.effects(), divided::means, divided.precision(values()));
    }
    var analysis = fit.analysis(subject.squares());
    sources.add(subject.squares().source());
    if (lines.ground().size() + lines.factors().size() > 1) {
      reasons.add(
          "Sums of squares of treatments: "
              + subject.squares().words()
              + (lines.ground().isEmpty() ? "." : "; blocks come before them."));
    }
    if (subject.design() instanceof TrialDesign.IncompleteBlocks) {
      reasons.add(
          "Treatments are compared within blocks; what totals of blocks say about them is not"
              + " used.");
    }
    return outcome(
        checks,
        found,
        effects(analysis),
        factors -> new MeanSource.Marginal(fit.means(factors.toArray(Factor[]::new))),
        precision(analysis));
  }

  private OptionalDouble values() {
    return subject.transformation().isNone()
        ? OptionalDouble.of(fit.mean())
        : OptionalDouble.empty();
  }

  private RouteOutcome outcome(
      ModelChecks checks,
      List<CheckedAssumption> found,
      List<EffectRow> effects,
      Function<List<Factor>, MeanSource> source,
      TrialPrecision precision) {
    var maker = new MeanMaker(subject, choices, lines, values);
    var advice = new ArrayList<>(ScaleAdvice.of(subject, values, found));
    MethodAdvice.of(subject, choices, effects).ifPresent(advice::add);
    var means = new ArrayList<TreatmentMeans>();
    for (var factors : combinations(lines.factors())) {
      means.add(maker.make(factors, source.apply(factors)));
    }
    var contrasts = contrasts(source.apply(lines.factors()));
    means.forEach(each -> each.comparisons().ifPresent(all -> sources.add(all.method().source())));
    sources.addAll(checks.sources());
    if (precision.hasFewDegreesOfFreedom()) {
      sources.add(AnalysisSources.EPPO_152);
    }
    return new RouteOutcome(
        reasons, found, plots(), effects, means, contrasts, precision, advice, sources);
  }

  /** All factors together first, then single ones, then pairs and so on. */
  static List<List<Factor>> combinations(List<Factor> factors) {
    var list = new ArrayList<List<Factor>>();
    list.add(factors);
    for (ModelTerm term : ModelTerm.crossing(factors.toArray(Factor[]::new))) {
      if (term.factors().size() < factors.size()) {
        list.add(term.factors());
      }
    }
    return list;
  }

  private List<ContrastEstimate> contrasts(MeanSource source) {
    return choices.contrasts().stream().map(source::contrast).toList();
  }

  private List<EffectRow> effects(AnalysisOfVariance analysis) {
    var rows = new ArrayList<EffectRow>();
    int ground = lines.ground().size();
    var error = analysis.residual();
    var blocksFirst = fit.analysis(SumsOfSquares.SEQUENTIAL).rows();
    for (int i = 0; i < ground; i++) {
      rows.add(EffectRows.of("", blocksFirst.get(i), EffectRow.Role.GROUND, error));
    }
    for (int i = ground; i < analysis.rows().size(); i++) {
      rows.add(EffectRows.of("", analysis.rows().get(i), EffectRow.Role.TREATMENT, error));
    }
    rows.add(EffectRows.of("", error, EffectRow.Role.ERROR, error));
    return rows;
  }

  private TrialPrecision precision(AnalysisOfVariance analysis) {
    OptionalDouble variation = OptionalDouble.empty();
    if (subject.transformation().isNone()) {
      try {
        variation = OptionalDouble.of(analysis.coefficientOfVariationPercent());
      } catch (InputProblem none) {
        variation = OptionalDouble.empty();
      }
    }
    return new TrialPrecision(fit.residualDegreesOfFreedom(), variation, blocking(analysis));
  }

  private Map<String, BlockingEfficiency> blocking(AnalysisOfVariance analysis) {
    var gains = new LinkedHashMap<String, BlockingEfficiency>();
    boolean orthogonal =
        subject.design() instanceof TrialDesign.CompleteBlocks
            || subject.design() instanceof TrialDesign.LatinSquare;
    if (orthogonal && isFull() && analysis.residual().note().isEmpty()) {
      for (ModelTerm each : lines.ground()) {
        var others = lines.ground().stream().filter(term -> !term.equals(each));
        gains.put(each.name(), analysis.relativeEfficiency(each, others.toArray(ModelTerm[]::new)));
      }
      sources.add(BlockingEfficiency.source());
    }
    return gains;
  }

  private boolean isFull() {
    var cells = new LinkedHashMap<String, Integer>();
    var block = lines.ground().get(0).factors().get(0);
    for (int i = 0; i < values.length; i++) {
      cells.merge(block.label(i) + "\n" + lines.values().treatments().get(i), 1, Integer::sum);
    }
    long all = (long) block.levelCount() * lines.values().treatments().stream().distinct().count();
    return cells.size() == all && cells.values().stream().distinct().count() == 1;
  }

  private List<PlotResidual> plots() {
    double[] residuals = fit.residuals();
    double[] fitted = fit.fittedValues();
    boolean error = fit.residualDegreesOfFreedom() > 0 && fit.residualSumOfSquares() > 0;
    double[] standardised = error ? fit.standardisedResiduals() : new double[0];
    var plots = new ArrayList<PlotResidual>();
    for (int i = 0; i < values.length; i++) {
      plots.add(
          new PlotResidual(
              lines.values().plots().get(i),
              values[i],
              analysed[i],
              OptionalDouble.of(fitted[i]),
              OptionalDouble.of(residuals[i]),
              error ? OptionalDouble.of(standardised[i]) : OptionalDouble.empty()));
    }
    return plots;
  }
}
