package agro.trial.analysis;

import agro.report.InputProblem;
import agro.report.Progress;
import agro.stats.Bootstrap;
import agro.stats.BootstrapSample;
import agro.stats.ConfidenceLimits;
import agro.stats.Refit;
import agro.stats.RefitOutcome;
import agro.stats.linear.Factor;
import agro.stats.linear.LinearModel;
import agro.stats.linear.LinearModelFit;
import agro.units.Numbers;
import agro.working.Cell;
import agro.working.Presentable;
import agro.working.Presentation;
import agro.working.ResultTable;
import agro.working.ResultTable.Column;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.SplittableRandom;

/**
 * Means of the treatments with limits from resampled residuals: what stays of the limits when
 * residuals need not be normal, though of one variance on the scale of the analysis.
 *
 * @param subject what was analysed
 * @param means one for each treatment
 * @param refits number of refits
 * @param seed start of all chance
 */
public record BootstrappedMeans(
    AnalysisSubject subject, List<Resampled> means, int refits, long seed) implements Presentable {

  private static final int FEWEST = 200;

  /**
   * A resampled mean.
   *
   * @param label the treatment in words
   * @param mean mean on the scale of the values
   * @param limits limits of the mean, with the confidence 1 - level
   * @param shareLargest share of refits in which it was the largest mean
   * @param shareSmallest share of refits in which it was the smallest mean
   */
  public record Resampled(
      String label,
      double mean,
      ConfidenceLimits limits,
      double shareLargest,
      double shareSmallest) {}

  /** Copies the list. */
  public BootstrappedMeans {
    means = List.copyOf(means);
  }

  static BootstrappedMeans of(AnalysisSubject subject, TrialLines lines, int refits, long seed) {
    if (subject.route() != AnalysisRoute.NORMAL || lines.isDivided()) {
      throw InputProblem.of("resampled residuals of " + subject.route().words())
          .expected("an analysis of variance with one error")
          .because("residuals are exchanged between plots, which needs one error for all")
          .mend("take the limits of the route itself");
    }
    if (refits < FEWEST) {
      throw InputProblem.of(refits + " refits")
          .expected("at least " + FEWEST)
          .because("limits are read from the tails of the refits")
          .mend("take 2000");
    }
    var model = LinearModel.of(lines.allTerms());
    var fit = model.fit(AnalysisScale.analysed(subject));
    if (fit.residualDegreesOfFreedom() == 0 || fit.residualSumOfSquares() == 0) {
      throw InputProblem.of("a trial without residuals that vary")
          .expected("replicated plots that differ")
          .because("residuals are what is resampled")
          .mend("use replicated plots");
    }
    double[][] weights = weights(model, lines.factorArray());
    double[] residuals = spread(fit);
    var sample =
        Bootstrap.run(
            refits,
            weights.length,
            seed,
            Progress.ofThread(),
            () -> new Draw(weights, fit.fittedValues(), residuals));
    return new BootstrappedMeans(subject, means(subject, lines, fit, sample), refits, seed);
  }

  /** Means are sums of values with fixed weights: those of a fit to each plot alone. */
  private static double[][] weights(LinearModel model, Factor[] factors) {
    int plots = model.design().rows();
    double[][] weights = null;
    for (int i = 0; i < plots; i++) {
      double[] one = new double[plots];
      one[i] = 1;
      var means = model.fit(one).means(factors);
      if (weights == null) {
        weights = new double[means.size()][plots];
      }
      for (int m = 0; m < weights.length; m++) {
        weights[m][i] = means.estimate(m);
      }
    }
    return weights;
  }

  /** Residuals of equal variance with a mean of zero. */
  private static double[] spread(LinearModelFit fit) {
    double[] residuals = fit.residuals();
    double[] leverages = fit.leverages();
    double sum = 0;
    for (int i = 0; i < residuals.length; i++) {
      double free = 1 - leverages[i];
      residuals[i] = free > 1e-10 ? residuals[i] / Math.sqrt(free) : 0;
      sum += residuals[i];
    }
    for (int i = 0; i < residuals.length; i++) {
      residuals[i] -= sum / residuals.length;
    }
    return residuals;
  }

  /** One refit: means of fitted values with residuals drawn from all plots. */
  private static final class Draw implements Refit {
    private final double[][] weights;
    private final double[] fitted;
    private final double[] residuals;

    Draw(double[][] weights, double[] fitted, double[] residuals) {
      this.weights = weights;
      this.fitted = fitted;
      this.residuals = residuals;
    }

    @Override
    public RefitOutcome refit(SplittableRandom random, double[] values) {
      for (int i = 0; i < fitted.length; i++) {
        double drawn = fitted[i] + residuals[random.nextInt(residuals.length)];
        for (int m = 0; m < values.length; m++) {
          values[m] += weights[m][i] * drawn;
        }
      }
      return RefitOutcome.GOOD;
    }
  }

  private static List<Resampled> means(
      AnalysisSubject subject, TrialLines lines, LinearModelFit fit, BootstrapSample sample) {
    var means = fit.means(lines.factorArray());
    var words = lines.wordsOf(lines.factors());
    int size = means.size();
    double[] largest = new double[size];
    double[] smallest = new double[size];
    for (int refit = 0; refit < sample.size(); refit++) {
      int top = 0;
      int bottom = 0;
      for (int m = 1; m < size; m++) {
        top = sample.value(refit, m) > sample.value(refit, top) ? m : top;
        bottom = sample.value(refit, m) < sample.value(refit, bottom) ? m : bottom;
      }
      largest[top] += 1.0 / sample.size();
      smallest[bottom] += 1.0 / sample.size();
    }
    var list = new ArrayList<Resampled>();
    for (int m = 0; m < size; m++) {
      var label = means.labels().get(m);
      list.add(
          new Resampled(
              words.getOrDefault(label, label),
              subject.transformation().back(means.estimate(m)),
              subject
                  .transformation()
                  .back(sample.studentT(m, 1 - subject.level(), fit.residualDegreesOfFreedom())),
              largest[m],
              smallest[m]));
    }
    return list;
  }

  /**
   * The means as a table.
   *
   * @return a line for each treatment
   */
  public ResultTable table() {
    int decimals = TableNumbers.decimals(means.stream().mapToDouble(Resampled::mean));
    var rows = new ArrayList<List<Cell>>();
    for (var mean : means) {
      rows.add(
          List.of(
              Cell.text(mean.label()),
              TableNumbers.cell(OptionalDouble.of(mean.mean()), decimals),
              TableNumbers.cell(mean.limits().low(), decimals),
              TableNumbers.cell(mean.limits().high(), decimals),
              Cell.number(100 * mean.shareLargest(), 1),
              Cell.number(100 * mean.shareSmallest(), 1)));
    }
    var columns =
        List.of(
            Column.of("Treatment"),
            Column.of("Mean", subject.unit()),
            Column.of("Lower limit", subject.unit()),
            Column.of("Upper limit", subject.unit()),
            Column.of("Largest", "% of refits"),
            Column.of("Smallest", "% of refits"));
    return ResultTable.of("Resampled means, " + subject.title(), columns, rows);
  }

  @Override
  public Presentation presentation() {
    return Presentation.titled("Resampled means, " + subject.title())
        .fact("Refits", Integer.toString(refits))
        .fact("Seed", Long.toString(seed))
        .fact(
            "Confidence",
            Numbers.plain(Math.rint(1e8 * (1 - subject.level())) / 1e6)
                + " %, widened for "
                + "the degrees of freedom of the error")
        .table(table())
        .build();
  }

  /**
   * The resampled mean of a treatment.
   *
   * @param label the treatment in words
   * @return its mean
   * @throws InputProblem when there is none
   */
  public Resampled mean(String label) {
    return means.stream()
        .filter(each -> each.label().equals(label))
        .findFirst()
        .orElseThrow(
            () ->
                InputProblem.of("the mean of \"" + label + "\"")
                    .expected("one of " + means.stream().map(Resampled::label).toList())
                    .because("no other means were taken")
                    .mend("write the treatment as it stands in the table"));
  }
}
