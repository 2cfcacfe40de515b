package agro.notebook.figure;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.util.Locale;
import org.knowm.xchart.XYChart;
import org.knowm.xchart.style.Styler.LegendPosition;

/**
 * The one look of all figures. Two hues beside greys: blue and vermilion of the palette of Okabe
 * and Ito (2008, Color Universal Design; values from memory), which the colour-blind tell apart. No
 * meaning hangs on hue alone: marks and line styles differ too.
 */
final class FigureLook {

  /** Width of a figure in points of a page. */
  static final int WIDTH = 900;

  /** Width of a chart; the rest keeps the last number of an axis on the page. */
  static final int CHART_WIDTH = WIDTH - 14;

  /** A vertical axis begins a little below zero, so that its zero is written. */
  static final double BELOW_ZERO = -0.02;

  static final Color PAPER = Color.WHITE;
  static final Color INK = new Color(0x22, 0x22, 0x22);
  static final Color QUIET_INK = new Color(0x5E, 0x5E, 0x5E);
  static final Color GRID = new Color(0xE4, 0xE4, 0xE4);
  static final Color PALE = new Color(0xF2, 0xF2, 0xF2);
  static final Color LIGHT_GREY = new Color(0xCB, 0xCB, 0xCB);
  static final Color MIDDLE_GREY = new Color(0x9A, 0x9A, 0x9A);
  static final Color DARK_GREY = new Color(0x5A, 0x5A, 0x5A);
  static final Color BLUE = new Color(0x00, 0x72, 0xB2);
  static final Color PALE_BLUE = new Color(0xC9, 0xDF, 0xEE);
  static final Color VERMILION = new Color(0xD5, 0x5E, 0x00);
  static final Color PALE_VERMILION = new Color(0xF6, 0xDD, 0xC9);

  static final Font TEXT = new Font(Font.SANS_SERIF, Font.PLAIN, 14);
  static final Font BOLD = TEXT.deriveFont(Font.BOLD);
  static final Font SMALL = TEXT.deriveFont(12f);
  static final Font HEADING = TEXT.deriveFont(Font.BOLD, 16f);

  private FigureLook() {}

  static BasicStroke solid(double width) {
    return new BasicStroke((float) width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND);
  }

  static BasicStroke dashed(double width) {
    return broken(width, 7, 4);
  }

  static BasicStroke dotted(double width) {
    return broken(width, 2, 3);
  }

  private static BasicStroke broken(double width, float on, float off) {
    return new BasicStroke(
        (float) width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 10, new float[] {on, off}, 0);
  }

  /** A chart of this look without series, titles or legend. */
  static XYChart chart(int width, int height) {
    var chart = new XYChart(width, height);
    var style = chart.getStyler();
    style.setChartBackgroundColor(PAPER);
    style.setPlotBackgroundColor(PAPER);
    style.setChartFontColor(INK);
    style.setChartPadding(4);
    style.setChartTitleVisible(false);
    style.setLegendVisible(false);
    style.setLegendPosition(LegendPosition.InsideNE);
    style.setPlotBorderVisible(false);
    style.setPlotContentSize(1);
    style.setPlotGridLinesColor(GRID);
    style.setPlotGridLinesStroke(solid(1));
    style.setPlotMargin(0);
    style.setAxisTickLabelsFont(SMALL);
    style.setAxisTickLabelsColor(INK);
    style.setAxisTickMarksColor(QUIET_INK);
    style.setAxisTickMarksStroke(solid(1));
    style.setAxisTitleFont(TEXT);
    style.setAntiAlias(true);
    style.setTextAntiAlias(true);
    style.setPlotTicksMarksVisible(false);
    style.setXAxisTicksVisible(false);
    style.setXAxisTitleVisible(false);
    style.setPlotGridVerticalLinesVisible(false);
    style.setYAxisTickMarkSpacingHint(42);
    style.setYAxisDecimalPattern("0.##");
    style.setLocale(Locale.ROOT);
    return chart;
  }
}
