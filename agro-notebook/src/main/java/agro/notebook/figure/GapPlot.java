package agro.notebook.figure;

import agro.notebook.figure.ChartPanel.Side;
import agro.weather.DailyTemperatures;
import agro.weather.DayOrigin;
import agro.weather.DayRuns;
import agro.weather.Extreme;
import java.awt.BasicStroke;
import java.awt.Color;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Lays filled days out over the calendar. */
final class GapPlot {

  private static final int HEIGHT = 430;
  private static final int AXIS_HEIGHT = 32;
  private static final double SCORE = 1.645;
  private static final double KEY_ROOM = 0.17;
  private static final BasicStroke LINE = FigureLook.solid(1.5);
  private static final BasicStroke BAR = FigureLook.solid(1.2);

  /** Marks are left out where they would lie on each other. */
  private static final int MOST_MARKED_DAYS = 370;

  private final DailyTemperatures days;
  private final double start;
  private final double end;
  private final double low;
  private final double high;
  private final ChartPanel panel = new ChartPanel(HEIGHT, AXIS_HEIGHT, "Temperature (°C)");

  GapPlot(DailyTemperatures days) {
    this.days = days;
    start = CalendarAxis.at(days.firstDay());
    end = CalendarAxis.at(days.lastDay()) + 1;
    double lowest = Double.POSITIVE_INFINITY;
    double highest = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < days.size(); i++) {
      var day = days.day(i);
      if (days.originAt(i) != DayOrigin.MISSING) {
        lowest = Math.min(lowest, days.minCelsius(day) - SCORE * error(Extreme.MINIMUM, i));
        highest = Math.max(highest, days.maxCelsius(day) + SCORE * error(Extreme.MAXIMUM, i));
      }
    }
    low = Double.isInfinite(lowest) ? 0 : Math.floor(lowest - 1);
    high = Double.isInfinite(highest) ? 10 : highest + 1;
    panel.ranges(start, end, low, high + KEY_ROOM * (high - low));
  }

  private double error(Extreme extreme, int index) {
    return extreme.standardError(days, days.day(index));
  }

  ChartPanel panel() {
    var span = new CalendarAxis.Span(days.firstDay(), days.lastDay().plusDays(1));
    for (var gap : DayRuns.of(days.missingDays())) {
      double from = CalendarAxis.at(gap.first());
      panel.box(from, from + gap.days(), low, high, FigureLook.LIGHT_GREY);
    }
    CalendarAxis.rule(panel, span, low, high);
    CalendarAxis.label(panel, span, low);
    panel.level(low, FigureLook.QUIET_INK, FigureLook.solid(1));
    for (var extreme : Extreme.values()) {
      observed(extreme);
      filled(extreme);
    }
    key();
    return panel;
  }

  /** Lines through the observed days, broken where others lie between. */
  private void observed(Extreme extreme) {
    var x = new double[days.size()];
    var y = new double[days.size()];
    for (int i = 0; i < x.length; i++) {
      x[i] = start + i + 0.5;
      y[i] = source(i).isEmpty() ? extreme.of(days, days.day(i)) : Double.NaN;
    }
    panel.curve(x, y, extreme == Extreme.MAXIMUM ? FigureLook.INK : FigureLook.DARK_GREY, LINE);
  }

  private void filled(Extreme extreme) {
    for (int i = 0; i < days.size(); i++) {
      var source = source(i);
      if (source.isPresent()) {
        double x = start + i + 0.5;
        double y = extreme.of(days, days.day(i));
        double reach = SCORE * error(extreme, i);
        bar(x, y - reach, y + reach, source.get().colour);
        if (days.size() <= MOST_MARKED_DAYS) {
          panel.mark(x, y, source.get().colour, source.get().mark);
        }
      }
    }
  }

  private void bar(double x, double from, double to, Color colour) {
    panel.curve(new double[] {x, x}, new double[] {from, to}, colour, BAR);
  }

  /** How a filled day is marked; nothing for an observed or a missing one. */
  private Optional<Source> source(int index) {
    return switch (days.originAt(index)) {
      case OBSERVED, MISSING -> Optional.empty();
      case PARTLY_FILLED -> Optional.of(Source.PARTLY);
      case INTERPOLATED -> Optional.of(Source.LINE);
      case NEIGHBOUR, MODELLED -> Optional.of(Source.NEIGHBOUR);
      case CLIMATE_NORMAL, PAST_YEAR -> Optional.of(Source.CLIMATE);
      case FORECAST -> Optional.of(Source.FORECAST);
    };
  }

  private enum Source {
    PARTLY("partly filled", FigureLook.MIDDLE_GREY, FigureMark.OBSERVATION),
    LINE("straight line", FigureLook.BLUE, FigureMark.BOUND),
    NEIGHBOUR("neighbour", FigureLook.BLUE, FigureMark.OBSERVATION),
    CLIMATE("climate", FigureLook.VERMILION, FigureMark.BOUND),
    FORECAST("forecast", FigureLook.VERMILION, FigureMark.OBSERVATION);

    private final String words;
    private final Color colour;
    private final FigureMark mark;

    Source(String words, Color colour, FigureMark mark) {
      this.words = words;
      this.colour = colour;
      this.mark = mark;
    }
  }

  /** The names of the marks that are drawn, in a row above the highest value. */
  private void key() {
    List<Source> drawn = new ArrayList<>();
    for (var source : Source.values()) {
      for (int i = 0; i < days.size(); i++) {
        if (source(i).filter(source::equals).isPresent()) {
          drawn.add(source);
          break;
        }
      }
    }
    double width = end - start;
    double y = high + 0.11 * (high - low);
    double x = start + 0.01 * width;
    panel.curve(new double[] {x, x + 0.03 * width}, new double[] {y, y}, FigureLook.INK, LINE);
    panel.words("observed", x + 0.03 * width, y, Side.RIGHT, FigureLook.SMALL, FigureLook.INK);
    x += 0.13 * width;
    for (var source : drawn) {
      bar(x + 0.01 * width, y - 0.035 * (high - low), y + 0.035 * (high - low), source.colour);
      panel.mark(x + 0.01 * width, y, source.colour, source.mark);
      panel.words(source.words, x + 0.015 * width, y, Side.RIGHT, FigureLook.SMALL, FigureLook.INK);
      x += 0.14 * width;
    }
    if (!days.missingDays().isEmpty()) {
      panel.box(
          x,
          x + 0.02 * width,
          y - 0.03 * (high - low),
          y + 0.03 * (high - low),
          FigureLook.LIGHT_GREY);
      panel.words("left open", x + 0.02 * width, y, Side.RIGHT, FigureLook.SMALL, FigureLook.INK);
    }
  }
}
