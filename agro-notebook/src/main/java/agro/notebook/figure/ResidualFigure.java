package agro.notebook.figure;

import agro.generation.FlightTimingFit;
import agro.generation.VisitFit;
import agro.notebook.figure.ChartPanel.Side;
import agro.stats.linear.LinearModelFit;
import agro.trial.analysis.AnalysedTrial;
import agro.units.Numbers;
import agro.working.Cell;
import agro.working.ResultTable;
import agro.working.ResultTable.Column;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/**
 * Residuals, the first thing to look at after a fit: those of flight timing by degree-days, those
 * of linear models and trials over fitted values and normal quantiles.
 */
public final class ResidualFigure {

  private static final int HEIGHT = 400;
  private static final int AXIS_HEIGHT = 46;
  private static final int CLASSES = 15;

  private ResidualFigure() {}

  /**
   * Draws the residuals of all visits with their mean in classes of degree-days.
   *
   * @param fit the fit
   * @return the figure
   */
  public static DrawnFigure of(FlightTimingFit fit) {
    var visits = fit.visits().stream().filter(visit -> Double.isFinite(visit.residual())).toList();
    var sheet =
        new FigureSheet(
            "Where the counts stray from the fitted flights",
            "Dot: one visit. Blue: mean by classes of degree-days. Grey: within 2 standard deviations.",
            List.of(panel(visits)));
    return new DrawnFigure(sheet, alternative(visits), caption(fit), data(fit.visits()));
  }

  /**
   * Draws standardised residuals over fitted values, and in order over normal quantiles.
   *
   * @param fit the fit; observations are named by their number, counted from 1
   * @return the figure
   * @throws agro.report.InputProblem when the fit leaves no residual variance
   */
  public static DrawnFigure of(LinearModelFit fit) {
    return ModelResiduals.of(fit);
  }

  /**
   * Draws the standardised residuals of the plots over fitted values, and in order over normal
   * quantiles.
   *
   * @param analysed the analysis of a trial
   * @return the figure; it says so where the analysis has no residuals, as that of ranks
   */
  public static DrawnFigure of(AnalysedTrial analysed) {
    return ModelResiduals.of(analysed);
  }

  private static double middle(VisitFit visit) {
    return (visit.fromDegreeDaysC() + visit.toDegreeDaysC()) / 2;
  }

  private static ChartPanel panel(List<VisitFit> visits) {
    var right = 1.02 * visits.stream().mapToDouble(VisitFit::toDegreeDaysC).max().orElse(1000);
    var low = Math.min(-2.5, 1.1 * extreme(visits, false));
    var high = Math.max(2.5, 1.1 * extreme(visits, true));
    var panel = new ChartPanel(HEIGHT, AXIS_HEIGHT, "Pearson residual (standard deviations)");
    panel.ranges(0, right, low, high);
    panel.box(0, right, -2, 2, FigureLook.PALE);
    var step = NumberAxis.step(0, right);
    NumberAxis.rule(panel, step);
    NumberAxis.label(panel, step, FigureWords.SEASON_DEGREE_DAYS);
    panel.level(0, FigureLook.QUIET_INK, FigureLook.solid(1));
    if (visits.isEmpty()) {
      return panel.words(
          "No visit was used", right / 2, 0.5, Side.CENTRE, FigureLook.TEXT, FigureLook.INK);
    }
    for (var visit : visits) {
      panel.mark(
          middle(visit),
          visit.residual(),
          FigureLook.QUIET_INK,
          visit.full() ? FigureMark.BOUND : FigureMark.OBSERVATION);
    }
    classMeans(panel, visits, right);
    return panel;
  }

  private static void classMeans(ChartPanel panel, List<VisitFit> visits, double right) {
    var x = new ArrayList<Double>();
    var y = new ArrayList<Double>();
    for (var c = 0; c < CLASSES; c++) {
      var from = c * right / CLASSES;
      var to = (c + 1) * right / CLASSES;
      var mean =
          visits.stream()
              .filter(visit -> middle(visit) >= from && middle(visit) < to)
              .mapToDouble(VisitFit::residual)
              .average()
              .orElse(Double.NaN);
      x.addAll(List.of(from, to));
      y.addAll(List.of(mean, mean));
    }
    panel.curve(
        x.stream().mapToDouble(Double::doubleValue).toArray(),
        y.stream().mapToDouble(Double::doubleValue).toArray(),
        FigureLook.BLUE,
        FigureLook.solid(3));
  }

  private static String alternative(List<VisitFit> visits) {
    if (visits.isEmpty()) {
      return "No visit was used in the fit, so there are no residuals.";
    }
    var beyond = visits.stream().filter(visit -> Math.abs(visit.residual()) > 2).count();
    var mean = visits.stream().mapToDouble(VisitFit::residual).average().orElse(Double.NaN);
    return "Pearson residuals of "
        + visits.size()
        + " visits by degree-days: mean "
        + Numbers.fixed(mean, 2)
        + ", from "
        + Numbers.fixed(extreme(visits, false), 1)
        + " to "
        + Numbers.fixed(extreme(visits, true), 1)
        + "; "
        + beyond
        + " lie beyond 2 standard deviations.";
  }

  private static double extreme(List<VisitFit> visits, boolean highest) {
    var statistics = visits.stream().mapToDouble(VisitFit::residual).summaryStatistics();
    if (visits.isEmpty()) {
      return 0;
    }
    return highest ? statistics.getMax() : statistics.getMin();
  }

  private static String caption(FlightTimingFit fit) {
    var correlations =
        fit.seasons().stream()
            .map(season -> season.label() + ": " + Numbers.fixed(season.residualCorrelation(), 2))
            .collect(Collectors.joining(", "));
    return "Pearson residual: count less fitted mean, over the standard deviation of the "
        + (fit.poisson() ? "Poisson" : "negative binomial")
        + " count. Counts of animals are skewed: many residuals a little below zero and few far"
        + " above are usual; a wave in the steps is not. Correlation of running visits: "
        + (correlations.isEmpty() ? "none" : correlations)
        + ".";
  }

  private static ResultTable data(List<VisitFit> visits) {
    return ResultTable.of(
        "Pearson residuals",
        List.of(
            Column.of("Season"),
            Column.of("Middle of the visit", FigureWords.DEGREE_DAYS),
            Column.of("Count", "adults"),
            Column.of("Fitted mean", "adults"),
            Column.of("Residual", "standard deviations")),
        visits.stream().map(ResidualFigure::dataRow).toList());
  }

  private static List<Cell> dataRow(VisitFit visit) {
    return List.of(
        Cell.text(visit.label()),
        Cell.number(middle(visit), 1),
        Cell.number(visit.count(), 0),
        Cell.number(visit.mean(), 2),
        Cell.number(visit.residual(), 2));
  }
}
