package agro.notebook.figure;

import agro.notebook.figure.ChartPanel.Side;
import agro.sampling.CountSample;
import agro.sampling.size.PrecisionStopLine;
import agro.units.Numbers;
import agro.working.Cell;
import agro.working.ResultTable;
import agro.working.ResultTable.Column;
import java.util.ArrayList;
import java.util.List;

/** The line of a fixed precision and the running total of counts. */
final class PrecisionLinePlot {

  private static final int HEIGHT = 400;
  private static final int AXIS_HEIGHT = 46;

  private final PrecisionStopLine line;
  private final CountSample counts;
  private final long[] totals;
  private final int stop;

  PrecisionLinePlot(PrecisionStopLine line, CountSample counts) {
    this.line = line;
    this.counts = counts;
    totals = new long[counts.size()];
    long total = 0;
    int reached = 0;
    for (int i = 0; i < totals.length; i++) {
      total += counts.counts().get(i);
      totals[i] = total;
      if (reached == 0 && line.isReached(i + 1, total)) {
        reached = i + 1;
      }
    }
    stop = reached;
  }

  ChartPanel panel() {
    int n = counts.size();
    double top = 1.15 * Math.max((double) totals[n - 1], line.stopAt(n));
    var panel = new ChartPanel(HEIGHT, AXIS_HEIGHT, "Animals counted in all");
    panel.ranges(0, 1.02 * n + 1, FigureLook.BELOW_ZERO * top, top);
    int first = (int) Math.floor(line.limit()) + 1;
    int points = n - first + 2;
    double[] x = new double[points];
    double[] y = new double[points];
    double[] seen = new double[points];
    double[] ceiling = new double[points];
    for (int i = 0; i < points; i++) {
      x[i] = first + i;
      double exact = line.stopAt(first + i);
      y[i] = Math.min(top, exact);
      seen[i] = exact > 2 * top ? Double.NaN : exact;
      ceiling[i] = top;
    }
    panel.band(x, y, ceiling, FigureLook.PALE);
    NumberAxis.label(
        panel,
        Math.max(1, NumberAxis.step(0, n)),
        "Units looked at (one unit: " + counts.unit().words() + ")");
    panel.curve(x, seen, FigureLook.INK, FigureLook.solid(2));
    panel.words("enough", x[points - 1], 0.93 * top, Side.LEFT, FigureLook.BOLD, FigureLook.INK);
    return walk(panel);
  }

  private ChartPanel walk(ChartPanel panel) {
    double[] x = new double[totals.length + 1];
    double[] y = new double[totals.length + 1];
    for (int i = 1; i < x.length; i++) {
      x[i] = i;
      y[i] = (double) totals[i - 1];
    }
    panel.curve(x, y, FigureLook.BLUE, FigureLook.solid(2));
    for (int i = 1; i < x.length; i++) {
      panel.mark(
          x[i],
          y[i],
          FigureLook.BLUE,
          stop > 0 && i > stop ? FigureMark.BOUND : FigureMark.OBSERVATION);
    }
    if (stop > 0) {
      panel.upright(stop, FigureLook.QUIET_INK, FigureLook.dotted(1.5));
      panel.words(
          "enough after " + stop,
          stop,
          0.03 * y[totals.length],
          Side.LEFT,
          FigureLook.BOLD,
          FigureLook.BLUE);
    }
    return panel;
  }

  private String standing() {
    return stop > 0
        ? "The line is reached after " + stop + " units with " + totals[stop - 1] + " animals."
        : "The line is not reached with " + counts.size() + " units.";
  }

  String alternative() {
    return "Animals counted by units looked at, with the line at which counting may stop. "
        + standing();
  }

  String caption() {
    return counts.label()
        + ". Spread: "
        + line.model().words()
        + ". "
        + standing()
        + (stop > 0 && stop < counts.size() ? " Hollow: counts behind it." : "");
  }

  ResultTable data() {
    var rows = new ArrayList<List<Cell>>();
    for (int n = 1; n <= totals.length; n++) {
      rows.add(
          List.of(
              Cell.number(n, 0),
              Cell.number((double) totals[n - 1], 0),
              n > line.limit()
                  ? Cell.text(Numbers.fixed(line.stopAt(n), 1))
                  : Cell.text("out of reach")));
    }
    return ResultTable.of(
        "Total and stop line",
        List.of(Column.of("Units"), Column.of("Animals counted"), Column.of("Stop at", "animals")),
        rows);
  }
}
