package agro.notebook.figure;

import agro.development.Reached;
import agro.development.ThermalTimeScale;
import agro.notebook.figure.ChartPanel.Side;
import agro.notebook.figure.ThermalTimeFigure.NamedSum;
import agro.units.ThermalTime;
import java.awt.BasicStroke;
import java.awt.Color;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** Lays growing sums of degree-days out over the calendar. */
final class ThermalTimePlot {

  private static final int HEIGHT = 430;
  private static final int AXIS_HEIGHT = 32;
  private static final double RIGHT_ROOM = 0.24;
  private static final double APART = 0.05;
  private static final double LABEL_SHIFT = 0.03;
  private static final List<Color> COLOURS =
      List.of(
          FigureLook.VERMILION,
          FigureLook.INK,
          FigureLook.BLUE,
          FigureLook.DARK_GREY,
          FigureLook.MIDDLE_GREY);
  private static final List<BasicStroke> STROKES =
      List.of(FigureLook.solid(2), FigureLook.solid(3), FigureLook.dashed(2), FigureLook.dotted(2));

  private final List<NamedSum> lines;
  private final double end;
  private final double top;
  private final CalendarAxis.Span span;
  private final ChartPanel panel =
      new ChartPanel(HEIGHT, AXIS_HEIGHT, "Degree-days (" + FigureWords.DEGREE_DAYS + ")");

  ThermalTimePlot(List<NamedSum> lines, Optional<ThermalTime> requirement) {
    this.lines = lines;
    span = new CalendarAxis.Span(ThermalTimeFigure.first(lines), ThermalTimeFigure.last(lines));
    double start = CalendarAxis.at(span.from());
    end = CalendarAxis.at(span.to());
    double level = requirement.map(ThermalTime::degreeDaysC).orElse(0.0);
    top = Math.max(10, 1.08 * Math.max(level, lines.get(0).scale().totalC()));
    panel.ranges(start, end + RIGHT_ROOM * (end - start), FigureLook.BELOW_ZERO * top, top);
    CalendarAxis.rule(panel, span, panel.yLow(), top);
    CalendarAxis.label(panel, span, panel.yLow());
    panel.level(panel.yLow(), FigureLook.QUIET_INK, FigureLook.solid(1));
    if (requirement.isPresent()) {
      panel.stroke(start, level, end, level, FigureLook.QUIET_INK, FigureLook.dashed(1));
    }
    for (int i = 0; i < lines.size(); i++) {
      curve(i);
    }
    requirement.ifPresent(this::marks);
    endLabels();
  }

  ChartPanel panel() {
    return panel;
  }

  private static Color colour(int index) {
    return COLOURS.get(index % COLOURS.size());
  }

  private void curve(int index) {
    var scale = lines.get(index).scale();
    var sums = scale.sumsC();
    var x = new double[sums.length];
    for (int i = 0; i < x.length; i++) {
      x[i] = CalendarAxis.at(scale.firstDay()) + (i == 0 ? scale.startFraction() : i);
    }
    panel.curve(x, sums, colour(index), STROKES.get(index % STROKES.size()));
  }

  /** A mark where each line meets the level; the first and the last of them with their day. */
  private void marks(ThermalTime requirement) {
    double level = requirement.degreeDaysC();
    var days = new TreeMap<Double, Reached>();
    for (int i = 0; i < lines.size(); i++) {
      var reached = lines.get(i).scale().reached(requirement);
      if (reached.isPresent()) {
        double x = place(lines.get(i).scale(), reached.get());
        panel.mark(x, level, colour(i), FigureMark.OBSERVATION);
        days.put(x, reached.get());
      }
    }
    if (days.isEmpty()) {
      return;
    }
    day(days.firstEntry(), level + LABEL_SHIFT * top, Side.LEFT);
    if (days.size() > 1) {
      day(days.lastEntry(), level - LABEL_SHIFT * top, Side.RIGHT);
    }
  }

  private void day(Map.Entry<Double, Reached> mark, double height, Side side) {
    var words = FigureWords.day(mark.getValue().day());
    panel.words(words, mark.getKey(), height, side, FigureLook.BOLD, FigureLook.INK);
  }

  private static double place(ThermalTimeScale scale, Reached reached) {
    return CalendarAxis.at(scale.firstDay()) + reached.daysSinceStartOf(scale.firstDay());
  }

  /** Names at the ends of the lines, from below, moved apart where they would overlap. */
  private void endLabels() {
    double free = Double.NEGATIVE_INFINITY;
    for (int i = lines.size() - 1; i >= 0; i--) {
      double y = Math.max(lines.get(i).scale().totalC(), free);
      panel.words(
          lines.get(i).name() + ", " + FigureWords.degreeDays(lines.get(i).scale().totalC()),
          end,
          y,
          Side.RIGHT,
          FigureLook.SMALL,
          colour(i));
      free = y + APART * top;
    }
  }
}
