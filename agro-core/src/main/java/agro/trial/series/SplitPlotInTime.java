package agro.trial.series;

import agro.report.InputProblem;
import agro.stats.TestSentence;
import agro.stats.linear.Factor;
import agro.stats.linear.LinearModel;
import agro.stats.linear.ModelTerm;
import agro.stats.linear.StratifiedModel;
import agro.stats.linear.VarianceRatio;
import agro.stats.linear.VarianceRow;
import agro.trial.TrialPlot;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/**
 * The split plot in time: treatments against the scatter of plots, dates and treatment by date
 * against the scatter within plots, with degrees of freedom reduced by epsilon. Blocks are free to
 * change over the dates. It takes no notice of the order of the dates nor of the days between them.
 *
 * @param betweenPlots rows of the plots, their error last
 * @param withinPlots rows within plots, their error last
 * @param treatment test of treatments, if there is one
 * @param date test of dates, if there is one
 * @param product test of treatment by date, if there is one
 * @param sphericity epsilons
 * @param leftOut plots left out since they lack a date
 */
public record SplitPlotInTime(
    List<VarianceRow> betweenPlots,
    List<VarianceRow> withinPlots,
    Optional<VarianceRatio> treatment,
    Optional<VarianceRatio> date,
    Optional<VarianceRatio> product,
    Sphericity sphericity,
    List<String> leftOut) {

  /** Copies the lists. */
  public SplitPlotInTime {
    betweenPlots = List.copyOf(betweenPlots);
    withinPlots = List.copyOf(withinPlots);
    Objects.requireNonNull(treatment, "treatment");
    Objects.requireNonNull(date, "date");
    Objects.requireNonNull(product, "product");
    Objects.requireNonNull(sphericity, "sphericity");
    leftOut = List.copyOf(leftOut);
  }

  /**
   * The analysis of the plots that were seen on every date.
   *
   * @throws InputProblem when too few plots were, or the layout has no error of its own
   */
  static SplitPlotInTime of(DatedFigures all) {
    var plots = all.byPlot();
    int days = all.dates().size();
    var lacking =
        plots.keySet().stream()
            .filter(plot -> plots.get(plot).size() < days)
            .map(TrialPlot::label)
            .toList();
    var figures = lacking.isEmpty() ? all : all.complete();
    var model = new DateModel(figures);
    var fit =
        StratifiedModel.of(model.terms(), List.of(ModelTerm.of(model.plot()))).fit(model.values());
    var between = fit.strata().get(0);
    var within = fit.strata().get(fit.strata().size() - 1);
    return new SplitPlotInTime(
        withError(between.rows(), between.residual()),
        withError(within.rows(), within.residual()),
        test(between.rows(), model.treatmentTerm()),
        test(within.rows(), model.dateTerm()),
        test(within.rows(), model.productTerm()),
        sphericity(figures),
        lacking);
  }

  private static List<VarianceRow> withError(List<VarianceRow> rows, VarianceRow error) {
    var all = new ArrayList<>(rows);
    all.add(error);
    return all;
  }

  private static Optional<VarianceRatio> test(List<VarianceRow> rows, ModelTerm term) {
    return rows.stream()
        .filter(row -> row.source().equals(term.name()))
        .findFirst()
        .flatMap(VarianceRow::test);
  }

  private static Sphericity sphericity(DatedFigures figures) {
    var plots = figures.byPlot();
    var keys = List.copyOf(plots.keySet());
    var terms = new ArrayList<ModelTerm>();
    var blocks = keys.stream().map(plot -> "block " + plot.block()).toList();
    if (blocks.stream().distinct().count() > 1) {
      terms.add(ModelTerm.of(Factor.of("block", blocks)));
    }
    terms.add(
        ModelTerm.of(Factor.of("treatment", keys.stream().map(TrialPlot::treatment).toList())));
    var model = LinearModel.of(terms);
    var days = figures.dates();
    double[][] residuals = new double[days.size()][];
    for (int d = 0; d < residuals.length; d++) {
      residuals[d] = model.fit(onDay(plots, keys, days.get(d))).residuals();
    }
    return Sphericity.of(residuals, model.residualDegreesOfFreedom());
  }

  private static double[] onDay(
      Map<TrialPlot, Map<LocalDate, Double>> plots, List<TrialPlot> keys, LocalDate day) {
    return keys.stream().mapToDouble(plot -> plots.get(plot).get(day)).toArray();
  }

  /**
   * Chance of treatment by date with the cautious epsilon.
   *
   * @return nothing without a test
   */
  public Optional<Double> cautiousChanceOfProduct() {
    return product.map(each -> sphericity.cautiousChance(each.f(), each.df1(), each.df2()));
  }

  /**
   * Chance of treatment by date with the epsilon of Huynh and Feldt.
   *
   * @return nothing without a test
   */
  public Optional<Double> huynhFeldtChanceOfProduct() {
    return product.map(each -> sphericity.huynhFeldtChance(each.f(), each.df1(), each.df2()));
  }

  /**
   * The test of treatment by date with its corrections.
   *
   * @return one sentence
   */
  public String sentence() {
    return product
        .map(
            each ->
                "Treatment by date: "
                    + each.sentence()
                    + "; "
                    + TestSentence.chance(cautiousChanceOfProduct().orElseThrow())
                    + " after Greenhouse and Geisser (epsilon "
                    + PlainFigure.of(sphericity.greenhouseGeisser())
                    + "), "
                    + TestSentence.chance(huynhFeldtChanceOfProduct().orElseThrow())
                    + " after Huynh and Feldt"
                    + (sphericity.huynhFeldt().isPresent()
                        ? " (epsilon " + PlainFigure.of(sphericity.huynhFeldt().getAsDouble()) + ")"
                        : " (no epsilon from so few plots; the cautious one is used)")
                    + ".")
        .orElse("Treatment by date cannot be tested in this layout.");
  }

  @Override
  public String toString() {
    return sentence();
  }
}
