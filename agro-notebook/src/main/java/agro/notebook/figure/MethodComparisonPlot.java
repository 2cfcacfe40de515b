package agro.notebook.figure;

import agro.development.DegreeDayMethod;
import agro.development.MethodComparison;
import agro.development.UpperCutoff;
import agro.notebook.figure.ChartPanel.Side;
import agro.units.Numbers;
import java.awt.Color;
import java.util.List;

/** One line for each method, one mark on it for each cutoff, by the sum. */
final class MethodComparisonPlot {

  private static final int ROW_HEIGHT = 34;
  private static final int AXIS_HEIGHT = 46;

  /** Points of a page that a letter of a name takes. */
  private static final double LETTER = 7.7;

  /** Rows above the first line, for the key. */
  private static final double TOP_ROWS = 1.2;

  private static final List<UpperCutoff> DRAWN =
      List.of(
          UpperCutoff.VERTICAL, UpperCutoff.HORIZONTAL, UpperCutoff.INTERMEDIATE, UpperCutoff.NONE);

  private final List<MethodComparison.Line> lines;
  private final List<DegreeDayMethod> methods;
  private final double low;
  private final double high;
  private final ChartPanel panel;

  MethodComparisonPlot(List<MethodComparison.Line> lines) {
    this.lines = lines;
    methods = lines.stream().map(line -> line.model().method()).distinct().toList();
    var least = lines.stream().mapToDouble(MethodComparison.Line::totalC).min().orElse(0);
    var most = lines.stream().mapToDouble(MethodComparison.Line::totalC).max().orElse(1);
    var room = Math.max(0.5, 0.1 * (most - least));
    low = Math.max(0, least - room);
    high = most + room;
    panel =
        new ChartPanel(
            (int) Math.round((methods.size() + TOP_ROWS + 0.3) * ROW_HEIGHT), AXIS_HEIGHT, "");
  }

  ChartPanel panel() {
    var letters = methods.stream().mapToInt(method -> method.words().length()).max().orElse(0);
    var names = (letters + 2) * LETTER / FigureLook.CHART_WIDTH;
    var left = low - names / (1 - names) * (high - low);
    panel.ranges(left, high, 0, methods.size() + TOP_ROWS).withoutYTicks();
    ground();
    for (var i = 0; i < methods.size(); i++) {
      row(methods.get(i), methods.size() - i - 0.5);
    }
    key();
    return panel;
  }

  private void ground() {
    var top = methods.size();
    for (var row = 0; row < top; row += 2) {
      panel.box(panel.xLow(), high, top - row - 1.0, top - row, FigureLook.PALE);
    }
    var step = NumberAxis.step(low, high) * 2;
    for (var i = Math.ceil(low / step); i * step <= high; i++) {
      panel.stroke(i * step, 0, i * step, top, FigureLook.GRID, FigureLook.solid(1));
      panel.words(
          Numbers.plain(i * step), i * step, 0, Side.BELOW, FigureLook.SMALL, FigureLook.INK);
    }
    panel.stroke(low, 0, high, 0, FigureLook.QUIET_INK, FigureLook.solid(1));
    panel.words(
        "Sum of degree-days (°C·d)",
        (low + high) / 2,
        0,
        Side.FAR_BELOW,
        FigureLook.TEXT,
        FigureLook.INK);
  }

  private void row(DegreeDayMethod method, double y) {
    panel.words(
        FigureWords.sentence(method.words()), low, y, Side.LEFT, FigureLook.TEXT, FigureLook.INK);
    var own = lines.stream().filter(line -> line.model().method() == method).toList();
    var least = own.stream().mapToDouble(MethodComparison.Line::totalC).min().orElse(low);
    var most = own.stream().mapToDouble(MethodComparison.Line::totalC).max().orElse(low);
    panel.stroke(least, y, most, y, FigureLook.LIGHT_GREY, FigureLook.solid(2));
    // From the largest mark to the smallest, so that none hides another.
    for (var cutoff : DRAWN) {
      own.stream()
          .filter(line -> line.model().cutoff() == cutoff)
          .forEach(line -> mark(line.totalC(), y, cutoff));
    }
  }

  private void mark(double x, double y, UpperCutoff cutoff) {
    panel.mark(x, y, colour(cutoff), shape(cutoff));
  }

  /** A mark and its name for each cutoff, above the lines. */
  private void key() {
    var cutoffs = lines.stream().map(line -> line.model().cutoff()).distinct().sorted().toList();
    var wide = (high - low) / 4;
    for (var i = 0; i < cutoffs.size(); i++) {
      var x = low + (i + 0.04) * wide;
      var y = methods.size() + 0.6;
      mark(x, y, cutoffs.get(i));
      panel.words(
          name(cutoffs.get(i)), x + 0.04 * wide, y, Side.RIGHT, FigureLook.TEXT, FigureLook.INK);
    }
  }

  static String name(UpperCutoff cutoff) {
    return switch (cutoff) {
      case NONE -> "no cutoff";
      case HORIZONTAL -> "horizontal";
      case INTERMEDIATE -> "intermediate";
      case VERTICAL -> "vertical";
    };
  }

  private static Color colour(UpperCutoff cutoff) {
    return switch (cutoff) {
      case NONE -> FigureLook.INK;
      case HORIZONTAL -> FigureLook.BLUE;
      case INTERMEDIATE, VERTICAL -> FigureLook.VERMILION;
    };
  }

  private static FigureMark shape(UpperCutoff cutoff) {
    return switch (cutoff) {
      case NONE -> FigureMark.OBSERVATION;
      case HORIZONTAL -> FigureMark.MEDIAN;
      case INTERMEDIATE -> FigureMark.BOUND;
      case VERTICAL -> FigureMark.BAR;
    };
  }
}
