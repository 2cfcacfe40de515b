package agro.trial.series;

import agro.stats.linear.ModelTerm;
import agro.stats.mixed.FixedEffectTest;
import agro.stats.mixed.MixedModel;
import agro.stats.mixed.VarianceComponent;
import agro.stats.multiple.PairwiseComparison;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.OptionalDouble;

/**
 * The analysis in which sites and years are a sample of those where the treatments will be used:
 * differences are judged against their own scatter from site to site.
 *
 * @param variances variances of sites, blocks and treatment by site, the plots last
 * @param treatments test of treatments after Satterthwaite
 * @param means treatment means for a site like these
 * @param notes what a reader has to know
 */
public record SitesAsRandom(
    List<VarianceComponent> variances,
    FixedEffectTest treatments,
    JoinedMeans means,
    List<String> notes) {

  private static final int FEW = 5;

  /** Copies the lists. */
  public SitesAsRandom {
    variances = List.copyOf(variances);
    Objects.requireNonNull(treatments, "treatments");
    Objects.requireNonNull(means, "means");
    notes = List.copyOf(notes);
  }

  static SitesAsRandom of(PlotFigures figures, PairwiseComparison comparison) {
    var factors = new SiteFactors(figures);
    var treatment = factors.treatment();
    var leftOut = new ArrayList<String>();
    var random = factors.random(leftOut);
    var fit =
        MixedModel.of(List.of(ModelTerm.of(treatment)), random.stream().map(ModelTerm::of).toList())
            .fit(figures.values());
    var means = fit.means(treatment);
    Map<String, OptionalDouble> errors = new LinkedHashMap<>();
    Map<String, Integer> plots = new LinkedHashMap<>();
    for (int i = 0; i < means.labels().size(); i++) {
      errors.put(means.labels().get(i), OptionalDouble.of(means.mean(i).standardError()));
      plots.put(
          means.labels().get(i), treatment.counts()[treatment.placeOf(means.labels().get(i))]);
    }
    return new SitesAsRandom(
        fit.variances(),
        fit.test(ModelTerm.of(treatment)),
        JoinedMeans.of(means.compared(), errors, plots, comparison),
        notes(factors, leftOut, fit.variances()));
  }

  private static List<String> notes(
      SiteFactors factors, List<String> leftOut, List<VarianceComponent> variances) {
    var notes = new ArrayList<String>();
    var name = factors.environmentName();
    int sites = factors.environment().levelCount();
    if (leftOut.contains("treatment by " + name)) {
      notes.add(
          "Each treatment has one value in each "
              + name
              + ": the scatter of treatments from site to site is the residual itself, which is"
              + " the right measure for other sites.");
    }
    if (sites < FEW) {
      notes.add(
          sites
              + " sites or years tell little about how treatments vary between them; the degrees of"
              + " freedom say how little.");
    }
    for (var variance : variances) {
      if (variance.isAtZero() && variance.name().startsWith("treatment by ")) {
        notes.add(
            "The data show no variance of "
                + variance.name()
                + " (estimate 0), which does not prove that there is none: the error then is that"
                + " of the plots, and means may look surer than they are.");
      }
    }
    return notes;
  }

  @Override
  public String toString() {
    return "treatments " + treatments.sentence() + "; " + variances;
  }
}
