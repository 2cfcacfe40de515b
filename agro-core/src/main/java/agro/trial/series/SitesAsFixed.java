package agro.trial.series;

import agro.stats.linear.Factor;
import agro.stats.linear.LinearModel;
import agro.stats.linear.LinearModelFit;
import agro.stats.linear.MarginalMeans;
import agro.stats.linear.ModelTerm;
import agro.stats.linear.SumsOfSquares;
import agro.stats.linear.VarianceRatio;
import agro.stats.linear.VarianceRow;
import agro.stats.multiple.PairwiseComparison;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The analysis in which the sites are the sites of interest: everything is tested against the
 * pooled error of the plots.
 *
 * @param rows terms and residual, by sums of squares of type II
 * @param treatments test of treatments, averaged over these sites
 * @param interaction test of treatment by site
 * @param means treatment means over these sites, each site counting the same; nothing where they
 *     cannot be told
 * @param notes what a reader has to know
 */
public record SitesAsFixed(
    List<VarianceRow> rows,
    Optional<VarianceRatio> treatments,
    Optional<VarianceRatio> interaction,
    Optional<JoinedMeans> means,
    List<String> notes) {

  /** Copies the lists. */
  public SitesAsFixed {
    rows = List.copyOf(rows);
    Objects.requireNonNull(treatments, "treatments");
    Objects.requireNonNull(interaction, "interaction");
    Objects.requireNonNull(means, "means");
    notes = List.copyOf(notes);
  }

  static SitesAsFixed of(
      PlotFigures figures,
      List<SingleTrial> trials,
      SiteWeights weights,
      PairwiseComparison comparison) {
    var factors = new SiteFactors(figures);
    var treatment = factors.treatment();
    var environment = factors.environment();
    var terms = new ArrayList<ModelTerm>();
    terms.add(ModelTerm.of(environment));
    factors.blocks(environment).ifPresent(terms::add);
    terms.add(ModelTerm.of(treatment));
    var interaction = ModelTerm.of(treatment, environment);
    var additive = model(terms, figures, trials, weights);
    terms.add(interaction);
    var fit = model(terms, figures, trials, weights).fit(figures.values());
    var analysis = fit.analysis(SumsOfSquares.HIERARCHICAL);
    var rows = new ArrayList<>(analysis.rows());
    rows.add(analysis.residual());
    var notes = new ArrayList<String>();
    var means = means(fit, additive, treatment, figures, notes);
    return new SitesAsFixed(
        rows,
        analysis.row(ModelTerm.of(treatment)).test(),
        analysis.row(interaction).test(),
        means.map(each -> joined(each, comparison)),
        notes);
  }

  private static LinearModel model(
      List<ModelTerm> terms, PlotFigures figures, List<SingleTrial> trials, SiteWeights weights) {
    var model = LinearModel.of(List.copyOf(terms));
    if (weights == SiteWeights.EQUAL) {
      return model;
    }
    Map<String, Double> errors = new HashMap<>();
    trials.forEach(each -> errors.put(each.site(), each.errorVariance().orElseThrow()));
    return model.weighted(
        figures.figures().stream()
            .mapToDouble(each -> 1 / errors.get(each.plot().environment()))
            .toArray());
  }

  /** From the model with interaction where every treatment stood everywhere, else without it. */
  private static Optional<MarginalMeans> means(
      LinearModelFit fit,
      LinearModel additive,
      Factor treatment,
      PlotFigures figures,
      List<String> notes) {
    var means = fit.means(treatment);
    for (int i = 0; i < means.size(); i++) {
      if (!means.isEstimable(i)) {
        notes.add(
            "Not every treatment stood at every site: means over these sites suppose that"
                + " treatments differ alike everywhere (no treatment by site), which the test"
                + " judges for the common ones only.");
        return Optional.of(additive.fit(figures.values()).means(treatment));
      }
    }
    return Optional.of(means);
  }

  private static JoinedMeans joined(MarginalMeans means, PairwiseComparison comparison) {
    Map<String, OptionalDouble> errors = new LinkedHashMap<>();
    Map<String, Integer> plots = new LinkedHashMap<>();
    for (int i = 0; i < means.size(); i++) {
      errors.put(means.labels().get(i), means.standardError(i));
      plots.put(means.labels().get(i), means.observations(i));
    }
    return JoinedMeans.of(means.compared(), errors, plots, comparison);
  }

  @Override
  public String toString() {
    return "treatments "
        + treatments.map(VarianceRatio::sentence).orElse("not tested")
        + "; treatment by site "
        + interaction.map(VarianceRatio::sentence).orElse("not tested");
  }
}
