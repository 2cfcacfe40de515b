package agro.notebook.figure;

import agro.notebook.figure.ChartPanel.Side;
import agro.stats.NormalQuantile;
import java.util.Comparator;
import java.util.List;
import org.hipparchus.distribution.continuous.BetaDistribution;

/** Residuals over fitted values, and in order over normal quantiles, side by side. */
final class ResidualPlot {

  private static final int HEIGHT = 360;
  private static final int AXIS_HEIGHT = 46;
  private static final int LEFT_ROOM = 56;

  /** Steps of an axis that fit into half the width. */
  private static final int MOST_STEPS = 6;

  /** Residuals beyond this are named. */
  static final double FAR = 2;

  private final List<ResidualPoint> points;
  private final String fittedName;
  private final double reach;

  ResidualPlot(List<ResidualPoint> points, String fittedName) {
    this.points =
        points.stream()
            .sorted(
                Comparator.comparingDouble(ResidualPoint::standardised)
                    .thenComparing(ResidualPoint::label))
            .toList();
    this.fittedName = fittedName;
    double most = points.stream().mapToDouble(one -> Math.abs(one.standardised())).max().orElse(0);
    reach = Math.max(3.2, 1.15 * most);
  }

  List<ChartPanel> panels() {
    return ChartPanel.inColumns(2, List.of(overFitted(), overQuantiles()));
  }

  private ChartPanel panel(String title, double left, double right) {
    var panel = new ChartPanel(HEIGHT, AXIS_HEIGHT, title).leftRoom(LEFT_ROOM).decimals("0");
    return panel.ranges(left, right, -reach, reach);
  }

  private ChartPanel overFitted() {
    var fitted = points.stream().mapToDouble(ResidualPoint::fitted).summaryStatistics();
    double width = fitted.getMax() - fitted.getMin();
    double room = width > 0 ? 0.08 * width : 1;
    var panel =
        panel("Residual (standard errors)", fitted.getMin() - room, fitted.getMax() + 1.6 * room);
    panel.box(panel.xLow(), panel.xHigh(), -FAR, FAR, FigureLook.PALE);
    axis(panel, fittedName);
    panel.level(0, FigureLook.QUIET_INK, FigureLook.solid(1));
    for (var point : points) {
      panel.mark(point.fitted(), point.standardised(), FigureLook.INK, FigureMark.BOUND);
      name(panel, point, point.fitted());
    }
    return panel;
  }

  private ChartPanel overQuantiles() {
    int n = points.size();
    double end = Math.max(2, NormalQuantile.of(position(n, n)) * 1.25);
    var panel = panel("Residual in order", -end, end);
    double[] x = new double[n];
    double[] low = new double[n];
    double[] high = new double[n];
    for (int i = 0; i < n; i++) {
      x[i] = NormalQuantile.of(position(i + 1, n));
      var share = new BetaDistribution(i + 1, n - i);
      low[i] = Math.max(-reach, NormalQuantile.of(share.inverseCumulativeProbability(0.025)));
      high[i] = Math.min(reach, NormalQuantile.of(share.inverseCumulativeProbability(0.975)));
    }
    if (n > 1) {
      panel.band(x, low, high, FigureLook.PALE);
    }
    axis(panel, "Normal quantile");
    panel.curve(
        new double[] {-end, end},
        new double[] {-end, end},
        FigureLook.QUIET_INK,
        FigureLook.dashed(1.2));
    for (int i = 0; i < n; i++) {
      panel.mark(x[i], points.get(i).standardised(), FigureLook.INK, FigureMark.BOUND);
      name(panel, points.get(i), x[i]);
    }
    return panel;
  }

  private static void axis(ChartPanel panel, String name) {
    double round = roundStep((panel.xHigh() - panel.xLow()) / MOST_STEPS);
    NumberAxis.rule(panel, round);
    NumberAxis.label(panel, round, name);
  }

  /** The next of 1, 2 and 5 times a power of ten. */
  private static double roundStep(double step) {
    double power = Math.pow(10, Math.floor(Math.log10(step) + 1e-9));
    for (int factor : new int[] {1, 2, 5}) {
      if (step <= factor * power * (1 + 1e-9)) {
        return factor * power;
      }
    }
    return 10 * power;
  }

  private static void name(ChartPanel panel, ResidualPoint point, double x) {
    if (Math.abs(point.standardised()) > FAR && !point.label().isEmpty()) {
      boolean right = x > panel.xLow() + 0.75 * (panel.xHigh() - panel.xLow());
      panel.words(
          point.label(),
          x,
          point.standardised(),
          right ? Side.LEFT : Side.RIGHT,
          FigureLook.SMALL,
          FigureLook.INK);
    }
  }

  /** The share that lies below the k-th of n in order (Blom 1958). */
  private static double position(int k, int n) {
    return (k - 0.375) / (n + 0.25);
  }
}
