package agro.notebook.figure;

import agro.units.Numbers;
import java.util.ArrayList;
import java.util.List;

/** A horizontal axis of numbers with round steps, named with its unit. */
final class NumberAxis {

  private static final int MOST_STEPS = 16;

  private NumberAxis() {}

  /** Rules base line and steps into a panel, below everything that is drawn later. */
  static void rule(ChartPanel panel, double step) {
    for (var tick : ticks(panel.xLow(), panel.xHigh(), step)) {
      panel.upright(tick, FigureLook.GRID, FigureLook.solid(1));
    }
    panel.level(panel.yLow(), FigureLook.QUIET_INK, FigureLook.solid(1));
  }

  /** Writes the numbers and the name of the axis below the plot. */
  static void label(ChartPanel panel, double step, String name) {
    label(panel, step, panel.xHigh(), name);
  }

  /** The same for an axis that ends before the panel does. */
  static void label(ChartPanel panel, double step, double end, String name) {
    for (var tick : ticks(panel.xLow(), end, step)) {
      panel.words(
          Numbers.plain(tick),
          tick,
          panel.yLow(),
          ChartPanel.Side.BELOW,
          FigureLook.SMALL,
          FigureLook.INK);
    }
    panel.words(
        name,
        (panel.xLow() + end) / 2,
        panel.yLow(),
        ChartPanel.Side.FAR_BELOW,
        FigureLook.TEXT,
        FigureLook.INK);
  }

  /** Rules level lines up to an end of the horizontal axis and writes their numbers at the left. */
  static void levels(ChartPanel panel, double step, double end) {
    var decimals = (int) Math.max(0, Math.ceil(-Math.log10(step) - 1e-9));
    for (var tick : ticks(panel.yLow(), panel.yHigh(), step)) {
      panel.stroke(panel.xLow(), tick, end, tick, FigureLook.GRID, FigureLook.solid(1));
      panel.words(
          Numbers.fixed(tick, decimals),
          panel.xLow(),
          tick,
          ChartPanel.Side.LEFT,
          FigureLook.SMALL,
          FigureLook.INK);
    }
  }

  /** The least of 1, 2 and 5 times a power of ten that needs no more steps than fit. */
  static double step(double from, double to) {
    var power = Math.pow(10, Math.floor(Math.log10((to - from) / MOST_STEPS)));
    for (var factor : new int[] {1, 2, 5}) {
      if ((to - from) / (factor * power) <= MOST_STEPS) {
        return factor * power;
      }
    }
    return 10 * power;
  }

  private static List<Double> ticks(double from, double to, double step) {
    var ticks = new ArrayList<Double>();
    for (var i = Math.ceil(from / step - 1e-9); i * step <= to * (1 + 1e-12); i++) {
      ticks.add(i * step);
    }
    return ticks;
  }
}
