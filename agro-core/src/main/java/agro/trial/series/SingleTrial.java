package agro.trial.series;

import agro.stats.linear.Factor;
import agro.stats.linear.LinearModel;
import agro.stats.linear.LinearModelFit;
import agro.stats.linear.MarginalMeans;
import agro.stats.linear.ModelTerm;
import agro.stats.linear.SumsOfSquares;
import agro.stats.linear.VarianceRatio;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The trial of one site and year by itself.
 *
 * @param site site and year in words
 * @param treatments number of treatments
 * @param blocks number of blocks, 0 for a trial without blocks
 * @param plots number of plots
 * @param mean mean of the plots
 * @param errorVariance mean square of the error, nothing without degrees of freedom
 * @param errorDegreesOfFreedom its degrees of freedom
 * @param test test of treatments at this site, if there is one
 * @param means means of the treatments that were there
 * @param scaledResiduals residuals over the root of one less their leverage, so that sites of
 *     different size can be compared
 */
public record SingleTrial(
    String site,
    int treatments,
    int blocks,
    int plots,
    double mean,
    OptionalDouble errorVariance,
    int errorDegreesOfFreedom,
    Optional<VarianceRatio> test,
    List<SiteMean> means,
    List<Double> scaledResiduals) {

  private static final double NOTHING = 1e-20;
  private static final double FREE = 1e-10;

  /** Copies the lists. */
  public SingleTrial {
    Objects.requireNonNull(errorVariance, "errorVariance");
    Objects.requireNonNull(test, "test");
    means = List.copyOf(means);
    scaledResiduals = List.copyOf(scaledResiduals);
  }

  /**
   * Whether the plots of a treatment scatter at all.
   *
   * @return false where the error variance is unknown or zero
   */
  public boolean hasScatter() {
    return errorVariance.orElse(0) > 0;
  }

  static SingleTrial of(String site, PlotFigures figures) {
    double[] values = figures.values();
    var treatments = figures.treatments();
    var blocks = figures.figures().stream().map(each -> each.plot().block()).toList();
    int blockCount = new LinkedHashSet<>(blocks).size();
    boolean blocked = !blocks.get(0).isEmpty();
    var terms = new ArrayList<ModelTerm>();
    if (blockCount > 1) {
      terms.add(ModelTerm.of(Factor.of("block", blocks)));
    }
    var treatment = Factor.of("treatment", treatments);
    var term = ModelTerm.of(treatment);
    if (treatment.levelCount() > 1) {
      terms.add(term);
    }
    Optional<LinearModelFit> fit =
        terms.isEmpty() || values.length == 1
            ? Optional.empty()
            : Optional.of(LinearModel.of(terms).fit(values));
    var error = fit.map(each -> error(each, values)).orElse(OptionalDouble.empty());
    boolean tested = error.orElse(0) > 0 && treatment.levelCount() > 1;
    return new SingleTrial(
        site,
        treatment.levelCount(),
        blocked ? blockCount : 0,
        values.length,
        Arrays.stream(values).average().orElseThrow(),
        error,
        fit.map(LinearModelFit::residualDegreesOfFreedom).orElse(0),
        tested ? fit.get().analysis(SumsOfSquares.HIERARCHICAL).row(term).test() : Optional.empty(),
        means(site, treatment, values, fit, error.orElse(0) > 0),
        error.orElse(0) > 0 ? scaled(fit.get()) : List.of());
  }

  /** Zero where what is left is rounding. */
  private static OptionalDouble error(LinearModelFit fit, double[] values) {
    var variance = fit.residualVariance();
    double size = Arrays.stream(values).map(each -> each * each).sum();
    return variance.isPresent() && fit.residualSumOfSquares() <= NOTHING * size
        ? OptionalDouble.of(0)
        : variance;
  }

  private static List<SiteMean> means(
      String site,
      Factor treatment,
      double[] values,
      Optional<LinearModelFit> fit,
      boolean scatter) {
    var list = new ArrayList<SiteMean>();
    int[] counts = treatment.counts();
    Optional<MarginalMeans> means =
        treatment.levelCount() > 1 ? fit.map(each -> each.means(treatment)) : Optional.empty();
    for (int level = 0; level < treatment.levelCount(); level++) {
      double mean = plain(treatment, values, level);
      var error = OptionalDouble.empty();
      if (means.isPresent() && means.get().isEstimable(level)) {
        mean = means.get().estimate(level);
        error = scatter ? means.get().standardError(level) : error;
      }
      list.add(new SiteMean(site, treatment.levels().get(level), mean, error, counts[level]));
    }
    return list;
  }

  private static double plain(Factor treatment, double[] values, int level) {
    double sum = 0;
    int count = 0;
    for (int i = 0; i < values.length; i++) {
      if (treatment.code(i) == level) {
        sum += values[i];
        count++;
      }
    }
    return sum / count;
  }

  private static List<Double> scaled(LinearModelFit fit) {
    double[] residuals = fit.residuals();
    double[] leverages = fit.leverages();
    var list = new ArrayList<Double>();
    for (int i = 0; i < residuals.length; i++) {
      double free = 1 - leverages[i];
      // A plot that the model cannot miss tells nothing about the scatter.
      if (free > FREE) {
        list.add(residuals[i] / Math.sqrt(free));
      }
    }
    return list;
  }

  @Override
  public String toString() {
    return site
        + ": "
        + plots
        + " plots, mean "
        + PlainFigure.of(mean)
        + test.map(ratio -> ", treatments " + ratio.sentence()).orElse(", no test");
  }
}
