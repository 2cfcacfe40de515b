package agro.trial.series;

import agro.report.InputProblem;
import agro.stats.linear.Factor;
import agro.stats.linear.LinearModel;
import agro.stats.linear.ModelTerm;
import agro.stats.linear.SumsOfSquares;
import agro.stats.linear.VarianceRatio;
import agro.stats.linear.VarianceRow;
import agro.stats.multiple.PairwiseComparison;
import agro.working.Presentable;
import agro.working.Presentation;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.OptionalDouble;

/**
 * The analysis of one number for each plot, such as its mean over the dates: treatments in blocks
 * against the scatter of plots.
 *
 * @param figures one number for each plot
 * @param rows analysis of variance of type II, the error last
 * @param treatments test of treatments
 * @param means means with letters
 */
public record SummaryAnalysis(
    PlotFigures figures, List<VarianceRow> rows, VarianceRatio treatments, JoinedMeans means)
    implements Presentable {

  /** Copies the rows. */
  public SummaryAnalysis {
    Objects.requireNonNull(figures, "figures");
    rows = List.copyOf(rows);
    Objects.requireNonNull(treatments, "treatments");
    Objects.requireNonNull(means, "means");
  }

  /**
   * Analyses one number for each plot of one site and year.
   *
   * @param figures the numbers
   * @param comparison how means are compared
   * @return the analysis
   * @throws InputProblem when there are several sites, one treatment, no replicates or no scatter
   */
  public static SummaryAnalysis of(PlotFigures figures, PairwiseComparison comparison) {
    if (figures.environments().size() > 1) {
      throw InputProblem.of("plots of " + figures.environments())
          .expected("plots of one site and year")
          .because("sites have blocks and errors of their own")
          .mend("analyse them with SeveralTrials");
    }
    double[] values = figures.values();
    var treatment = Factor.of("treatment", figures.treatments());
    if (treatment.levelCount() < 2) {
      throw InputProblem.of("one treatment, " + treatment.levels())
          .expected("at least two treatments")
          .because("a treatment is compared with another one")
          .mend("check whether the treatments were read from the right column");
    }
    var blocks = figures.figures().stream().map(each -> "block " + each.plot().block()).toList();
    var terms = new ArrayList<ModelTerm>();
    if (blocks.stream().distinct().count() > 1) {
      terms.add(ModelTerm.of(Factor.of("block", blocks)));
    }
    terms.add(ModelTerm.of(treatment));
    var model = LinearModel.of(terms);
    if (model.residualDegreesOfFreedom() < 1) {
      throw noReplicates(values.length, treatment.levelCount());
    }
    var fit = model.fit(values);
    double size = Arrays.stream(values).map(each -> each * each).sum();
    if (fit.residualSumOfSquares() <= 1e-20 * size) {
      throw InputProblem.of(figures.heading() + " does not scatter among plots of a treatment")
          .expected("plots that differ")
          .because("without scatter no difference can be judged")
          .mend("take another summary, or say in words what was seen");
    }
    var analysis = fit.analysis(SumsOfSquares.HIERARCHICAL);
    var rows = new ArrayList<>(analysis.rows());
    rows.add(analysis.residual());
    var means = fit.means(treatment);
    Map<String, OptionalDouble> errors = new LinkedHashMap<>();
    Map<String, Integer> plots = new LinkedHashMap<>();
    for (int i = 0; i < means.size(); i++) {
      errors.put(means.labels().get(i), means.standardError(i));
      plots.put(means.labels().get(i), means.observations(i));
    }
    return new SummaryAnalysis(
        figures,
        rows,
        analysis.row(ModelTerm.of(treatment)).test().orElseThrow(),
        JoinedMeans.of(means.compared(), errors, plots, comparison));
  }

  static InputProblem noReplicates(int plots, int treatments) {
    return InputProblem.of(plots + " plots for " + treatments + " treatments")
        .expected("treatments that stand in several plots")
        .because("dates and plants of one plot are no replicates, and nothing tells the error")
        .mend("show the values as they are, without a test");
  }

  @Override
  public Presentation presentation() {
    var page =
        Presentation.titled(figures.heading())
            .fact("Treatments", treatments.sentence())
            .table(CombinedPrint.analysisTable("Analysis of variance", rows))
            .table(means.table("Treatment means", figures.unit()));
    figures.notes().forEach(note -> page.paragraph(note + "."));
    return page.build();
  }

  @Override
  public String toString() {
    return figures.heading() + ": " + treatments.sentence();
  }
}
