package agro.notebook.figure;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import org.knowm.xchart.XYChart;
import org.knowm.xchart.XYSeries;
import org.knowm.xchart.XYSeries.XYSeriesRenderStyle;
import org.knowm.xchart.style.lines.SeriesLines;
import org.knowm.xchart.style.markers.SeriesMarkers;

/**
 * One pair of axes. Axes, bands and straight strokes are the chart's. Curves are drawn onto it,
 * because the chart strokes each piece of a line on its own, which fills the gaps of dashes and
 * roughens joints; marks follow them, to stay on top; and words, because annotations of the chart
 * have one font, one colour and no alignment. All are placed in the units of the axes.
 */
final class ChartPanel {

  /** Where words stand beside their place. */
  enum Side {
    LEFT,
    CENTRE,
    RIGHT,
    ABOVE,
    ABOVE_RIGHT,
    BELOW,
    FAR_BELOW
  }

  /** Something drawn onto the finished chart. */
  private interface Overlay {
    void draw(Graphics2D graphics);
  }

  private static final int TEXT_GAP = 5;
  private static final int ABOVE_GAP = 11;
  private static final int BELOW_GAP = 16;
  private static final int FAR_GAP = 37;

  private final XYChart chart;
  private final int height;
  private final int chartHeight;
  private final List<Overlay> overlays = new ArrayList<>();
  private final List<Overlay> words = new ArrayList<>();
  private final List<ChartPanel> neighbours = new ArrayList<>();
  private int columns = 1;
  private double xLow;
  private double xHigh;
  private double yLow;
  private double yHigh;

  /** A panel with room below the chart for the words of the horizontal axis. */
  ChartPanel(int chartHeight, int roomBelow, String yTitle) {
    this.chartHeight = chartHeight;
    height = chartHeight + roomBelow;
    chart = FigureLook.chart(FigureLook.CHART_WIDTH, chartHeight);
    chart.setYAxisTitle(yTitle);
    chart.getStyler().setYAxisTitleVisible(!yTitle.isEmpty());
  }

  /**
   * Panels in rows of so many columns; each row is drawn as one panel. A row that is not full keeps
   * the width of its columns.
   */
  static List<ChartPanel> inColumns(int columns, List<ChartPanel> panels) {
    var rows = new ArrayList<ChartPanel>();
    for (int i = 0; i < panels.size(); i += columns) {
      var first = panels.get(i);
      first.columns = columns;
      first.neighbours.addAll(panels.subList(i + 1, Math.min(i + columns, panels.size())));
      rows.add(first);
    }
    return rows;
  }

  int height() {
    return height;
  }

  double xLow() {
    return xLow;
  }

  double xHigh() {
    return xHigh;
  }

  double yLow() {
    return yLow;
  }

  double yHigh() {
    return yHigh;
  }

  /** Sets both ranges, which nothing that is drawn changes. */
  ChartPanel ranges(double fromX, double toX, double fromY, double toY) {
    xLow = fromX;
    xHigh = toX;
    yLow = fromY;
    yHigh = toY;
    chart.getStyler().setXAxisMin(fromX).setXAxisMax(toX).setYAxisMin(fromY).setYAxisMax(toY);
    return this;
  }

  /** Room left of the plot, so that panels above each other keep one scale. */
  ChartPanel leftRoom(int points) {
    chart.getStyler().setYAxisLeftWidthHint(points);
    return this;
  }

  /** How the numbers of the vertical axis are written. */
  ChartPanel decimals(String pattern) {
    chart.getStyler().setYAxisDecimalPattern(pattern);
    return this;
  }

  ChartPanel withoutYTicks() {
    chart.getStyler().setYAxisTicksVisible(false).setPlotGridHorizontalLinesVisible(false);
    return this;
  }

  /** A curve; NaN in y breaks it. */
  ChartPanel curve(double[] x, double[] y, Color colour, BasicStroke stroke) {
    overlays.add(graphics -> drawCurve(graphics, x, y, colour, stroke));
    return this;
  }

  /** A straight stroke, below all curves and marks. */
  ChartPanel stroke(double x1, double y1, double x2, double y2, Color colour, BasicStroke stroke) {
    var series = add(new double[] {x1, x2}, new double[] {y1, y2});
    series.setLineColor(colour).setLineStyle(stroke);
    return this;
  }

  /** An upright stroke across the panel. */
  ChartPanel upright(double x, Color colour, BasicStroke stroke) {
    return stroke(x, yLow, x, yHigh, colour, stroke);
  }

  /** A level stroke across the panel. */
  ChartPanel level(double y, Color colour, BasicStroke stroke) {
    return stroke(xLow, y, xHigh, y, colour, stroke);
  }

  /** The area between two lines without gaps. */
  ChartPanel band(double[] x, double[] low, double[] high, Color colour) {
    var n = x.length;
    var aroundX = new double[2 * n];
    var aroundY = new double[2 * n];
    for (var i = 0; i < n; i++) {
      aroundX[i] = x[i];
      aroundY[i] = low[i];
      aroundX[2 * n - 1 - i] = x[i];
      aroundY[2 * n - 1 - i] = high[i];
    }
    var series = add(aroundX, aroundY);
    series.setXYSeriesRenderStyle(XYSeriesRenderStyle.PolygonArea);
    series.setFillColor(colour);
    series.setLineColor(colour).setLineStyle(SeriesLines.NONE);
    return this;
  }

  /** A filled box. */
  ChartPanel box(double fromX, double toX, double fromY, double toY, Color colour) {
    return band(
        new double[] {fromX, toX}, new double[] {fromY, fromY}, new double[] {toY, toY}, colour);
  }

  /** A mark, above what was drawn before it. */
  ChartPanel mark(double x, double y, Color colour, FigureMark mark) {
    overlays.add(graphics -> mark.paint(graphics, screenX(x), screenY(y), colour));
    return this;
  }

  /** Words at a place, above everything. */
  ChartPanel words(String text, double x, double y, Side side, Font font, Color colour) {
    words.add(
        graphics -> {
          graphics.setFont(font);
          graphics.setColor(colour);
          write(graphics, text, screenX(x), screenY(y), side);
        });
    return this;
  }

  private XYSeries add(double[] x, double[] y) {
    var series = chart.addSeries("series " + (chart.getSeriesCollection().size() + 1), x, y);
    series.setMarker(SeriesMarkers.NONE);
    return series;
  }

  void draw(Graphics2D graphics) {
    int width = FigureLook.CHART_WIDTH / columns;
    draw(graphics, width);
    for (int i = 0; i < neighbours.size(); i++) {
      var part = (Graphics2D) graphics.create();
      try {
        part.translate((i + 1) * width, 0);
        neighbours.get(i).draw(part, width);
      } finally {
        part.dispose();
      }
    }
  }

  private void draw(Graphics2D graphics, int width) {
    if (chart.getSeriesCollection().isEmpty()) {
      add(new double[] {xLow}, new double[] {yLow});
    }
    chart.paint(graphics, width, chartHeight);
    overlays.forEach(overlay -> overlay.draw(graphics));
    words.forEach(word -> word.draw(graphics));
  }

  /** Between the ends of the axis, for the chart rounds every place to whole points. */
  private double screenX(double x) {
    var left = chart.getScreenXFromChart(xLow);
    return left + (x - xLow) / (xHigh - xLow) * (chart.getScreenXFromChart(xHigh) - left);
  }

  private double screenY(double y) {
    var bottom = chart.getScreenYFromChart(yLow);
    return bottom + (y - yLow) / (yHigh - yLow) * (chart.getScreenYFromChart(yHigh) - bottom);
  }

  private void drawCurve(
      Graphics2D graphics, double[] x, double[] y, Color colour, BasicStroke stroke) {
    var path = new Path2D.Double();
    var begun = false;
    for (var i = 0; i < x.length; i++) {
      if (!Double.isFinite(y[i])) {
        begun = false;
      } else if (begun) {
        path.lineTo(screenX(x[i]), screenY(y[i]));
      } else {
        path.moveTo(screenX(x[i]), screenY(y[i]));
        begun = true;
      }
    }
    var before = graphics.getClip();
    graphics.clip(
        new Rectangle2D.Double(
            screenX(xLow),
            screenY(yHigh),
            screenX(xHigh) - screenX(xLow),
            screenY(yLow) - screenY(yHigh)));
    graphics.setColor(colour);
    graphics.setStroke(stroke);
    graphics.draw(path);
    graphics.setClip(before);
  }

  private static void write(Graphics2D graphics, String text, double x, double y, Side side) {
    var metrics = graphics.getFontMetrics();
    var width = metrics.stringWidth(text);
    var left =
        switch (side) {
          case LEFT -> x - width - TEXT_GAP;
          case CENTRE, ABOVE, BELOW, FAR_BELOW -> x - 0.5 * width;
          case RIGHT, ABOVE_RIGHT -> x + TEXT_GAP;
        };
    var shift =
        switch (side) {
          case LEFT, CENTRE, RIGHT -> 0;
          case ABOVE, ABOVE_RIGHT -> -ABOVE_GAP;
          case BELOW -> BELOW_GAP;
          case FAR_BELOW -> FAR_GAP;
        };
    var base = y + 0.5 * (metrics.getAscent() - metrics.getDescent()) + shift;
    graphics.drawString(text, (float) left, (float) base);
  }
}
