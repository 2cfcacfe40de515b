package agro.notebook.figure;

import agro.notebook.figure.ChartPanel.Side;
import agro.sampling.injury.ProgressCurve;
import agro.sampling.injury.ProgressCurve.Between;
import agro.trial.load.LoadMeasure;
import agro.trial.load.PlotLoad;
import agro.trial.load.TrialLoad;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/** A small panel for each treatment: the curves of its plots, and the area under their mean. */
final class LoadPlot {

  private static final int COLUMNS = 3;
  private static final int HEIGHT = 190;
  private static final int AXIS_HEIGHT = 28;
  private static final int LEFT_ROOM = 52;

  /** Pieces of a curve of growth between two counts. */
  private static final int GROWTH_STEPS = 12;

  /** Share of the panel's width that the words of a day need. */
  private static final double DAY_WORDS = 0.2;

  private final TrialLoad load;
  private final double from;
  private final double to;
  private final double top;

  LoadPlot(TrialLoad load) {
    this.load = load;
    from = CalendarAxis.at(load.days().get(0));
    to = CalendarAxis.at(load.days().get(load.days().size() - 1));
    top =
        1.32
            * load.plots().stream()
                .flatMap(plot -> plot.insectDays().curve().points().stream())
                .mapToDouble(ProgressCurve.Observed::value)
                .max()
                .orElse(1);
  }

  List<ChartPanel> panels() {
    var panels = new ArrayList<ChartPanel>();
    load.meansByTreatment().keySet().forEach(treatment -> panels.add(panel(treatment)));
    return ChartPanel.inColumns(COLUMNS, panels);
  }

  private ChartPanel panel(String treatment) {
    var panel =
        new ChartPanel(HEIGHT, AXIS_HEIGHT, LoadFigure.heightWords(load)).leftRoom(LEFT_ROOM);
    double room = 0.04 * (to - from);
    panel.ranges(from - room, to + room, FigureLook.BELOW_ZERO * top, top > 0 ? top : 1);
    days(panel);
    var plots = load.plots().stream().filter(plot -> plot.treatment().equals(treatment)).toList();
    double[] x = grid();
    double[] mean = new double[x.length];
    for (var plot : plots) {
      double[] y = heights(plot, x);
      panel.curve(x, y, FigureLook.MIDDLE_GREY, FigureLook.solid(0.9));
      for (int i = 0; i < x.length; i++) {
        mean[i] += y[i] / plots.size();
      }
    }
    if (load.settings().measure() != LoadMeasure.STAIRS) {
      panel.band(x, new double[x.length], mean, FigureLook.GRID);
    }
    panel.level(0, FigureLook.QUIET_INK, FigureLook.solid(1));
    panel.curve(x, mean, FigureLook.INK, FigureLook.solid(2.5));
    for (var day : load.days()) {
      panel.mark(
          CalendarAxis.at(day),
          mean[at(x, CalendarAxis.at(day))],
          FigureLook.INK,
          FigureMark.OBSERVATION);
    }
    words(panel, treatment, plots.size());
    return panel;
  }

  private void words(ChartPanel panel, String treatment, int plots) {
    panel.words(treatment, panel.xLow(), 0.93 * top, Side.RIGHT, FigureLook.BOLD, FigureLook.INK);
    panel.words(
        LoadFigure.printed(load, load.meansByTreatment().get(treatment))
            + " "
            + LoadFigure.shortUnit(load)
            + (plots == 1 ? " (one plot)" : ""),
        panel.xLow(),
        0.82 * top,
        Side.RIGHT,
        FigureLook.SMALL,
        FigureLook.INK);
  }

  private void days(ChartPanel panel) {
    double free = Double.NEGATIVE_INFINITY;
    for (LocalDate day : load.days()) {
      double x = CalendarAxis.at(day);
      panel.upright(x, FigureLook.GRID, FigureLook.solid(1));
      if (x >= free) {
        panel.words(
            FigureWords.day(day), x, panel.yLow(), Side.BELOW, FigureLook.SMALL, FigureLook.INK);
        free = x + DAY_WORDS * (to - from);
      }
    }
  }

  /** Every day of counting with even steps between. */
  private double[] grid() {
    int steps = load.settings().between() == Between.EXPONENTIAL ? GROWTH_STEPS : 1;
    var x = new ArrayList<Double>();
    for (int i = 0; i + 1 < load.days().size(); i++) {
      double start = CalendarAxis.at(load.days().get(i));
      double end = CalendarAxis.at(load.days().get(i + 1));
      for (int step = 0; step < steps; step++) {
        x.add(start + (end - start) * step / steps);
      }
    }
    x.add(to);
    return x.stream().mapToDouble(Double::doubleValue).toArray();
  }

  private static int at(double[] x, double day) {
    for (int i = 0; i < x.length; i++) {
      if (x[i] == day) {
        return i;
      }
    }
    throw new IllegalArgumentException("no such day of counting");
  }

  private static double[] heights(PlotLoad plot, double[] x) {
    var points = plot.insectDays().curve().points();
    double first = CalendarAxis.at(plot.insectDays().firstDay()) - points.get(0).day();
    double[] y = new double[x.length];
    int next = 1;
    for (int i = 0; i < x.length; i++) {
      while (next + 1 < points.size() && first + points.get(next).day() < x[i]) {
        next++;
      }
      var before = points.get(next - 1);
      var after = points.get(next);
      double share = (x[i] - first - before.day()) / (after.day() - before.day());
      y[i] = between(plot.insectDays().curve().between(), before.value(), after.value(), share);
    }
    return y;
  }

  /** From or to nothing there is no rate of growth, and the line is straight. */
  private static double between(Between rule, double from, double to, double share) {
    return rule == Between.EXPONENTIAL && from > 0 && to > 0
        ? from * Math.pow(to / from, share)
        : from + share * (to - from);
  }
}
