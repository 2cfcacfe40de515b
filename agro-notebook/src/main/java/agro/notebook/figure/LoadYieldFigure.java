package agro.notebook.figure;

import agro.notebook.figure.ChartPanel.Side;
import agro.trial.load.BlockRule;
import agro.trial.load.LoadYieldLine;
import agro.trial.load.LoadYieldLine.YieldPoint;
import agro.units.Numbers;
import agro.working.Cell;
import agro.working.ResultTable;
import agro.working.ResultTable.Column;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;

/** Yield of the plots of a trial over their pest load, with the fitted line. */
public final class LoadYieldFigure {

  private static final int HEIGHT = 400;
  private static final int AXIS_HEIGHT = 46;
  private static final int STEPS = 60;

  private final LoadYieldLine fit;
  private final double low;
  private final double high;

  private LoadYieldFigure(LoadYieldLine fit) {
    this.fit = fit;
    var loads = fit.points().stream().mapToDouble(YieldPoint::load).summaryStatistics();
    low = loads.getMin();
    high = loads.getMax();
  }

  /**
   * Draws the plots and the line. Within blocks, what a block is richer or poorer than the mean of
   * the blocks is taken off its plots first; the digits are the blocks.
   *
   * @param line the line of yield on load
   * @return the figure
   */
  public static DrawnFigure of(LoadYieldLine line) {
    var figure = new LoadYieldFigure(line);
    var sheet =
        new FigureSheet(
            "Yield on pest load",
            (figure.withinBlocks()
                    ? "Number: a plot by its block, the height of its block taken off. "
                    : "Dot: one plot. ")
                + "Line with the 95 % band of its height, as far as the plots go.",
            List.of(figure.panel()));
    return new DrawnFigure(sheet, figure.alternative(), figure.caption(), figure.data());
  }

  private boolean withinBlocks() {
    return fit.rule() == BlockRule.WITHIN_BLOCKS && fit.blocks() > 1;
  }

  /** Yield of a plot as it would be in a block of middle height. */
  private double adjusted(YieldPoint point) {
    if (!withinBlocks()) {
      return point.tonnesPerHectare();
    }
    var block = fit.points().stream().filter(one -> one.block().equals(point.block())).toList();
    double load = block.stream().mapToDouble(YieldPoint::load).average().orElseThrow();
    double yield = block.stream().mapToDouble(YieldPoint::tonnesPerHectare).average().orElseThrow();
    return point.tonnesPerHectare() - (yield - fit.line().at(load));
  }

  private ChartPanel panel() {
    var yields =
        DoubleStream.concat(
                fit.points().stream().mapToDouble(this::adjusted),
                DoubleStream.of(
                    fit.line().at(low) + halfWidth(low), fit.line().at(high) - halfWidth(high)))
            .summaryStatistics();
    double room = 0.08 * (yields.getMax() - yields.getMin()) + 1e-9;
    double left = low < 0.3 * high ? 0 : low - 0.05 * (high - low);
    double right = high + 0.04 * (high - left);
    var panel = new ChartPanel(HEIGHT, AXIS_HEIGHT, "Yield (t/ha)");
    panel.ranges(left, right, yields.getMin() - room, yields.getMax() + 2.5 * room);
    double step = NumberAxis.step(left, right);
    band(panel);
    NumberAxis.rule(panel, step);
    NumberAxis.label(panel, step, "Load (" + fit.loads().unitWords() + ")");
    panel.curve(
        new double[] {low, high},
        new double[] {fit.line().at(low), fit.line().at(high)},
        FigureLook.INK,
        FigureLook.solid(2.5));
    for (var point : fit.points()) {
      if (withinBlocks() && point.block().length() <= 2) {
        panel.words(
            point.block(),
            point.load(),
            adjusted(point),
            Side.CENTRE,
            FigureLook.BOLD,
            FigureLook.INK);
      } else {
        panel.mark(point.load(), adjusted(point), FigureLook.INK, FigureMark.BOUND);
      }
    }
    panel.words(words(), right, panel.yHigh() - room, Side.LEFT, FigureLook.BOLD, FigureLook.INK);
    return panel;
  }

  private void band(ChartPanel panel) {
    double[] x = new double[STEPS + 1];
    double[] below = new double[STEPS + 1];
    double[] above = new double[STEPS + 1];
    for (int i = 0; i <= STEPS; i++) {
      x[i] = low + (high - low) * i / STEPS;
      double half = halfWidth(x[i]);
      below[i] = Math.max(panel.yLow(), fit.line().at(x[i]) - half);
      above[i] = Math.min(panel.yHigh(), fit.line().at(x[i]) + half);
    }
    panel.band(x, below, above, FigureLook.GRID);
  }

  private double halfWidth(double load) {
    double slopeError = fit.line().slopeStandardError();
    return slopeError > 0
        ? fit.line().slopeHalfWidth(0.95) / slopeError * fit.line().meanStandardErrorAt(load)
        : 0;
  }

  /** The change for a hundred pest-days, or for one where the load is a mean. */
  private String words() {
    double slope = fit.line().slope();
    boolean hundred = high >= 100;
    return Numbers.significant(hundred ? 100 * slope : slope, 3)
        + " t/ha for "
        + (hundred ? "each hundred " : "each of the ")
        + fit.loads().unitWords()
        + "; "
        + fit.statement();
  }

  private String alternative() {
    return "Yield of "
        + fit.points().size()
        + " plots over loads from "
        + Numbers.significant(low, 3)
        + " to "
        + Numbers.significant(high, 3)
        + " "
        + fit.loads().unitWords()
        + ". The line goes from "
        + Numbers.significant(fit.line().at(low), 3)
        + " to "
        + Numbers.significant(fit.line().at(high), 3)
        + " t/ha: "
        + words()
        + ".";
  }

  private String caption() {
    return "Line "
        + fit.rule().words()
        + ", not drawn beyond the loads that were seen. "
        + FigureWords.sentence(fit.loads().unitWords())
        + ". Treatments differ in more than the pest, and what a product does to the crop itself is"
        + " in the line too.";
  }

  private ResultTable data() {
    var rows = new ArrayList<List<Cell>>();
    for (var point : fit.points()) {
      rows.add(
          List.of(
              Cell.text(point.block()),
              Cell.text(point.plot()),
              Cell.number(point.load(), 1),
              Cell.number(point.tonnesPerHectare(), 2),
              Cell.number(adjusted(point), 2)));
    }
    return ResultTable.of(
        "Load and yield by plot",
        List.of(
            Column.of("Block"),
            Column.of("Plot"),
            Column.of("Load", fit.loads().unitWords()),
            Column.of("Yield", "t/ha"),
            Column.of("As drawn", "t/ha")),
        rows);
  }
}
