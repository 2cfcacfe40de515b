package agro.notebook.figure;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.IntStream;
import org.knowm.xchart.XYChart;
import org.knowm.xchart.XYSeries;
import org.knowm.xchart.XYSeries.XYSeriesRenderStyle;
import org.knowm.xchart.internal.chartpart.IChart;

/**
 * Draws charts of very many points in reasonable time. Of the points that fall into one column of
 * pixels only the first, the last, the lowest and the highest are drawn, and of marks on top of
 * each other one, which gives the same picture. The chart is as before when it is drawn.
 */
final class ThinnedLines {

  private static final int MOST = 5_000;

  /** Pixels between marks that cover each other. */
  private static final int MARKER = 4;

  /** A series with its own points. */
  private record Whole(XYSeries series, List<double[]> points) {
    void restore() {
      series.replaceData(points.get(0), points.get(1), points.get(2));
    }
  }

  private ThinnedLines() {}

  /**
   * Draws a chart.
   *
   * @param chart any chart
   * @param drawing what draws it
   */
  static void draw(IChart chart, Runnable drawing) {
    var thinned = new ArrayList<Whole>();
    try {
      if (chart instanceof XYChart lines) {
        for (var series : lines.getSeriesCollection()) {
          if (series.getXData().length > MOST && series.isAllXData()) {
            thin(series, lines).ifPresent(thinned::add);
          }
        }
      }
      drawing.run();
    } finally {
      thinned.forEach(Whole::restore);
    }
  }

  private static boolean ascends(double[] x) {
    for (var at = 1; at < x.length; at++) {
      if (!(x[at] >= x[at - 1])) {
        return false;
      }
    }
    return true;
  }

  private static Optional<Whole> thin(XYSeries series, XYChart chart) {
    var x = series.getXData();
    var y = series.getYData();
    var extra = series.getExtraValues();
    var style =
        series
            .getXYSeriesRenderStyle()
            .orElseGet(() -> chart.getStyler().getDefaultSeriesRenderStyle());
    int[] kept;
    if (style == XYSeriesRenderStyle.Scatter) {
      kept = apart(x, y, chart.getWidth() / MARKER, chart.getHeight() / MARKER);
    } else if (ascends(x)) {
      kept = kept(x, y, 2 * chart.getWidth());
    } else {
      return Optional.empty();
    }
    var whole = new Whole(series, Arrays.asList(x, y, extra));
    series.replaceData(
        chosen(x, kept), chosen(y, kept), extra == null ? null : chosen(extra, kept));
    return Optional.of(whole);
  }

  /** Of points whose marks would cover each other one is drawn. */
  static int[] apart(double[] x, double[] y, int columns, int rows) {
    var wide = Arrays.stream(x).filter(Double::isFinite).summaryStatistics();
    var high = Arrays.stream(y).filter(Double::isFinite).summaryStatistics();
    var taken = new HashSet<Long>();
    return IntStream.range(0, x.length)
        .filter(
            at -> {
              var column = (x[at] - wide.getMin()) / (wide.getMax() - wide.getMin()) * columns;
              var row = (y[at] - high.getMin()) / (high.getMax() - high.getMin()) * rows;
              return taken.add(((long) column << 32) + (long) row)
                  || x[at] == wide.getMax()
                  || y[at] == high.getMax();
            })
        .toArray();
  }

  private static double[] chosen(double[] values, int[] kept) {
    return Arrays.stream(kept).mapToDouble(at -> values[at]).toArray();
  }

  /**
   * The places of the points to draw, in order.
   *
   * @param x ascending
   * @param y may hold NaN, which is a gap and is kept
   * @param columns columns of pixels
   */
  static int[] kept(double[] x, double[] y, int columns) {
    var kept = new ArrayList<Integer>();
    var width = (x[x.length - 1] - x[0]) / columns;
    for (var from = 0; from < x.length; ) {
      var column = Math.floor((x[from] - x[0]) / width);
      var to = from;
      while (to < x.length && !(Math.floor((x[to] - x[0]) / width) > column)) {
        to++;
      }
      ends(y, from, to, kept);
      from = to;
    }
    return kept.stream().mapToInt(Integer::intValue).toArray();
  }

  private static void ends(double[] y, int from, int to, List<Integer> kept) {
    var lowest = from;
    var highest = from;
    var gap = -1;
    for (var at = from; at < to; at++) {
      lowest = y[at] < y[lowest] || Double.isNaN(y[lowest]) ? at : lowest;
      highest = y[at] > y[highest] || Double.isNaN(y[highest]) ? at : highest;
      gap = Double.isNaN(y[at]) ? at : gap;
    }
    var places = new TreeSet<>(List.of(from, lowest, highest, to - 1));
    if (gap >= 0) {
      places.add(gap);
    }
    kept.addAll(places);
  }
}
