package agro.trial.analysis;

import agro.report.InputProblem;
import agro.source.Reference;
import agro.stats.glm.AnalysisOfDeviance;
import agro.stats.glm.DevianceRow;
import agro.stats.glm.ErrorFamily;
import agro.stats.glm.GeneralisedLinearFit;
import agro.stats.glm.GeneralisedLinearModel;
import agro.stats.glm.LinkFunction;
import agro.stats.glm.ModelResponse;
import agro.stats.glm.ResidualKind;
import agro.stats.glm.ResponseMeans;
import agro.stats.glm.ResponseMeansRequest;
import agro.stats.linear.ContrastEstimate;
import agro.stats.linear.Factor;
import agro.stats.linear.ModelTerm;
import agro.trial.PlotValue;
import agro.units.Numbers;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** Generalised linear models of counts and of counts out of n. */
final class CountRoute {

  private final AnalysisSubject subject;
  private final TrialLines lines;
  private final AnalysisChoices choices;
  private final GeneralisedLinearFit fit;
  private final double[] values;

  CountRoute(AnalysisSubject subject, TrialLines lines, AnalysisChoices choices) {
    this.subject = subject;
    this.lines = lines;
    this.choices = choices;
    this.values = AnalysisScale.values(subject);
    this.fit =
        GeneralisedLinearModel.of(family(subject.route()))
            .fit(response(), lines.allTerms().toArray(ModelTerm[]::new));
  }

  private static ErrorFamily family(AnalysisRoute route) {
    return switch (route) {
      case POISSON -> ErrorFamily.POISSON;
      case QUASI_POISSON -> ErrorFamily.QUASI_POISSON;
      case NEGATIVE_BINOMIAL -> ErrorFamily.NEGATIVE_BINOMIAL;
      case BINOMIAL -> ErrorFamily.BINOMIAL;
      case QUASI_BINOMIAL -> ErrorFamily.QUASI_BINOMIAL;
      default -> throw new IllegalArgumentException(route.words() + " has no family");
    };
  }

  private ModelResponse response() {
    var plots = subject.values().values();
    double[] totals = plots.stream().mapToDouble(PlotValue::total).toArray();
    if (family(subject.route()).countsOutOfTotal()) {
      return ModelResponse.outOf(
          totals, plots.stream().mapToDouble(plot -> plot.outOf().getAsInt()).toArray());
    }
    return ModelResponse.counts(totals)
        .withExposure(plots.stream().mapToDouble(PlotValue::subSamples).toArray());
  }

  RouteOutcome analyse() {
    var reasons = new ArrayList<String>();
    if (fit.model().link() == LinkFunction.LOG && !subject.values().equalSubSamples()) {
      reasons.add("Numbers of sub-samples enter as exposure: means are per sub-sample.");
    }
    fit.shape()
        .ifPresent(
            shape ->
                reasons.add(
                    "Shape of the negative binomial distribution, estimated: " + shape + "."));
    if (fit.model().family().dispersionIsEstimated()) {
      reasons.add(
          "Dispersion, estimated: "
              + Numbers.significant(fit.dispersion(), 4)
              + " (1 is expected).");
    }
    reasons.addAll(fit.remarks());
    var means = new ArrayList<TreatmentMeans>();
    for (var factors : NormalRoute.combinations(lines.factors())) {
      means.add(new CountMeans(subject, choices, lines, values).make(factors, means(factors)));
    }
    var sources = new ArrayList<Reference>(fit.sources());
    means.forEach(each -> each.comparisons().ifPresent(all -> sources.add(all.method().source())));
    return new RouteOutcome(
        reasons,
        new CountChecks(fit, subject).all(),
        plots(),
        effects(),
        means,
        contrasts(),
        new TrialPrecision(fit.residualDegreesOfFreedom(), OptionalDouble.empty(), Map.of()),
        List.of(),
        sources);
  }

  private ResponseMeans means(List<Factor> factors) {
    return ResponseMeansRequest.of(
            factors.get(0), factors.subList(1, factors.size()).toArray(Factor[]::new))
        .withLevel(1 - subject.level())
        .from(fit);
  }

  private List<ContrastEstimate> contrasts() {
    if (!choices.contrasts().isEmpty()) {
      throw InputProblem.of("contrasts with " + subject.route().words())
          .expected("the analysis of variance")
          .because("contrasts on the scale of a link are not offered here")
          .mend("leave them out, or compare pairs");
    }
    return List.of();
  }

  private List<EffectRow> effects() {
    var analysis = AnalysisOfDeviance.marginal(fit);
    var rows = new ArrayList<EffectRow>();
    int ground = lines.ground().size();
    for (int i = 0; i < analysis.rows().size(); i++) {
      rows.add(row(analysis.rows().get(i), i < ground));
    }
    rows.add(
        new EffectRow(
            "",
            "residual",
            EffectRow.Role.ERROR,
            analysis.residualDegreesOfFreedom(),
            OptionalDouble.of(analysis.residualDeviance()),
            Optional.empty(),
            ""));
    return rows;
  }

  private static EffectRow row(DevianceRow row, boolean ground) {
    var df =
        row.isF()
            ? List.of((double) row.degreesOfFreedom(), row.errorDegreesOfFreedom())
            : List.of((double) row.degreesOfFreedom());
    boolean tested = row.degreesOfFreedom() > 0;
    return new EffectRow(
        "",
        row.term(),
        ground ? EffectRow.Role.GROUND : EffectRow.Role.TREATMENT,
        row.degreesOfFreedom(),
        OptionalDouble.of(row.deviance()),
        tested
            ? Optional.of(
                new EffectTest(row.isF() ? "F" : "chi-squared", row.statistic(), df, row.p()))
            : Optional.empty(),
        tested ? "" : row.sentence());
  }

  private List<PlotResidual> plots() {
    double[] fitted = fit.fittedMeans();
    double[] residuals = fit.residuals(ResidualKind.DEVIANCE);
    double[] standardised = fit.residuals(ResidualKind.STANDARDISED_DEVIANCE);
    var plots = new ArrayList<PlotResidual>();
    var given = subject.values().values();
    for (int i = 0; i < values.length; i++) {
      double exposure =
          fit.model().family().countsOutOfTotal() ? 1.0 / 100 : given.get(i).subSamples();
      plots.add(
          new PlotResidual(
              given.get(i).plot(),
              values[i],
              values[i],
              known(fitted[i] / exposure),
              known(residuals[i]),
              known(standardised[i])));
    }
    return plots;
  }

  private static OptionalDouble known(double value) {
    return Double.isFinite(value) ? OptionalDouble.of(value) : OptionalDouble.empty();
  }
}
