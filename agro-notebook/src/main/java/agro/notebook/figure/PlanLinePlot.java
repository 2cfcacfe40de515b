package agro.notebook.figure;

import agro.notebook.figure.ChartPanel.Side;
import agro.sampling.sequential.SequentialPlan;
import java.util.List;

/** Two stop lines with the sides on which sampling ends, and the totals of a walk. */
final class PlanLinePlot {

  private static final int HEIGHT = 420;
  private static final int AXIS_HEIGHT = 46;

  private final SequentialPlan plan;
  private final List<Long> totals;
  private final String things;
  private final int most;
  private final int least;
  private final double top;

  PlanLinePlot(SequentialPlan plan, List<Long> totals, String things) {
    this.plan = plan;
    this.totals = totals;
    this.things = things;
    most = plan.mostUnits().orElseThrow();
    least = plan.leastUnits();
    long largest = totals.stream().mapToLong(Long::longValue).max().orElse(0);
    top = Math.max(1.08 * plan.bounds().high(most), 1.04 * (double) largest);
  }

  ChartPanel panel(String xTitle) {
    var panel =
        new ChartPanel(HEIGHT, AXIS_HEIGHT, FigureWords.sentence(things) + " counted in all");
    double right = 1.02 * most + 1;
    panel.ranges(0, right, FigureLook.BELOW_ZERO * top, top);
    sides(panel);
    NumberAxis.label(panel, Math.max(1, NumberAxis.step(0, right)), xTitle);
    panel.upright(most, FigureLook.QUIET_INK, FigureLook.dotted(1.5));
    panel.words(
        "ends at " + most, most, 0.03 * top, Side.LEFT, FigureLook.SMALL, FigureLook.QUIET_INK);
    walk(panel);
    return panel;
  }

  private void sides(ChartPanel panel) {
    int points = most - least + 1;
    double[] x = new double[points];
    double[] low = new double[points];
    double[] high = new double[points];
    double[] bottom = new double[points];
    double[] ceiling = new double[points];
    for (int i = 0; i < points; i++) {
      x[i] = least + i;
      low[i] = Math.max(0, Math.min(top, plan.bounds().low(least + i)));
      high[i] = Math.max(0, Math.min(top, plan.bounds().high(least + i)));
      ceiling[i] = top;
    }
    if (points > 1) {
      panel.band(x, bottom, low, FigureLook.PALE);
      panel.band(x, high, ceiling, FigureLook.LIGHT_GREY);
    }
    double[] seenLow = low.clone();
    for (int i = 0; i < points; i++) {
      seenLow[i] = plan.bounds().low(least + i) < 0 ? Double.NaN : low[i];
    }
    panel.curve(x, seenLow, FigureLook.INK, FigureLook.solid(2));
    panel.curve(x, high, FigureLook.INK, FigureLook.solid(2));
    double middle = plan.bounds().middle();
    panel.words(
        "high: stop",
        0.28 * most,
        Math.min(0.94 * top, plan.bounds().high((int) (0.28 * most) + 1) + 0.2 * top),
        Side.CENTRE,
        FigureLook.BOLD,
        FigureLook.INK);
    panel.words(
        "low: stop",
        0.8 * most,
        0.5 * plan.bounds().low((int) (0.8 * most) + 1),
        Side.CENTRE,
        FigureLook.BOLD,
        FigureLook.INK);
    panel.words(
        "go on", 0.72 * most, 0.72 * most * middle, Side.CENTRE, FigureLook.BOLD, FigureLook.INK);
  }

  private void walk(ChartPanel panel) {
    if (totals.isEmpty()) {
      return;
    }
    double[] x = new double[totals.size() + 1];
    double[] y = new double[totals.size() + 1];
    for (int i = 1; i <= totals.size(); i++) {
      x[i] = i;
      y[i] = (double) totals.get(i - 1);
    }
    panel.curve(x, y, FigureLook.BLUE, FigureLook.solid(2.5));
    for (int i = 1; i < x.length; i++) {
      panel.mark(x[i], y[i], FigureLook.BLUE, FigureMark.OBSERVATION);
    }
    int last = totals.size();
    var says = plan.decide(last, totals.get(last - 1));
    panel.words(
        StopLineFigure.stopWords(says, last),
        x[last],
        y[last],
        last > 0.75 * most ? Side.LEFT : Side.RIGHT,
        FigureLook.BOLD,
        FigureLook.BLUE);
  }
}
