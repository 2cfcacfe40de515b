package agro.notebook.figure;

import agro.development.cycle.LifeCycleRun;
import agro.notebook.figure.ChartPanel.Side;
import java.awt.BasicStroke;
import java.awt.Color;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Lays a life cycle out over the days: curves of generations, or bands of shares. */
final class LifeCyclePlot {

  private static final int STAGE_HEIGHT = 128;
  private static final int SHARES_HEIGHT = 400;
  private static final int GAP = 6;
  private static final int AXIS_HEIGHT = 34;
  private static final int LEFT_ROOM = 46;

  /** A generation whose peak is below this share of the highest one is not named. */
  private static final double NAMED = 0.03;

  /** A band that is nowhere thicker than this is not named. */
  private static final double NAMED_SHARE = 0.08;

  /** Days on either side of the middle of a name that it needs. */
  private static final int NAME_DAYS = 7;

  private static final Color GREY = FigureLook.GRID;

  private static final Color[] BANDS = {
    FigureLook.PALE, FigureLook.LIGHT_GREY, FigureLook.MIDDLE_GREY, FigureLook.DARK_GREY
  };

  private final LifeCycleRun run;
  private final CalendarAxis.Span span;
  private final double[] x;
  private final double right;

  LifeCyclePlot(LifeCycleRun run) {
    this.run = run;
    span = new CalendarAxis.Span(run.temperatures().firstDay(), run.temperatures().lastDay());
    x = new double[run.temperatures().size()];
    for (int i = 0; i < x.length; i++) {
      x[i] = CalendarAxis.at(run.temperatures().day(i)) + 1;
    }
    right = CalendarAxis.at(span.to()) + 1;
  }

  List<ChartPanel> numbers() {
    var panels = new ArrayList<ChartPanel>();
    var stages = run.cycle().stageNames();
    for (int s = 0; s < stages.size(); s++) {
      panels.add(stage(stages.get(s), s == stages.size() - 1));
    }
    return panels;
  }

  private ChartPanel stage(String stage, boolean last) {
    var curves = new ArrayList<double[]>();
    double top = 0;
    for (int g = 1; g <= run.generations(); g++) {
      var curve = new double[x.length];
      for (int i = 0; i < x.length; i++) {
        curve[i] = run.present(g, stage, run.temperatures().day(i));
        top = Math.max(top, curve[i]);
      }
      curves.add(curve);
    }
    top = top == 0 ? 1 : top;
    var panel = new ChartPanel(STAGE_HEIGHT, last ? AXIS_HEIGHT : GAP, "");
    panel.ranges(x[0] - 1, right, FigureLook.BELOW_ZERO * top, 1.32 * top).leftRoom(LEFT_ROOM);
    CalendarAxis.rule(panel, span, FigureLook.BELOW_ZERO * top, 1.32 * top);
    panel.level(0, FigureLook.QUIET_INK, FigureLook.solid(1));
    for (int g = 0; g < curves.size(); g++) {
      panel.band(x, new double[x.length], curves.get(g), g % 2 == 0 ? FigureLook.PALE_BLUE : GREY);
    }
    for (int g = 0; g < curves.size(); g++) {
      panel.curve(x, curves.get(g), FigureLook.INK, stroke(g));
      name(panel, curves.get(g), g + 1, NAMED * top);
    }
    panel.words(
        FigureWords.sentence(stage),
        x[0] - 1,
        1.18 * top,
        Side.RIGHT,
        FigureLook.BOLD,
        FigureLook.INK);
    if (last) {
      CalendarAxis.label(panel, span, FigureLook.BELOW_ZERO * top);
    }
    return panel;
  }

  private static BasicStroke stroke(int generation) {
    return generation % 2 == 0 ? FigureLook.solid(1.5) : FigureLook.dashed(1.5);
  }

  private void name(ChartPanel panel, double[] curve, int generation, double least) {
    int peak = 0;
    for (int i = 1; i < curve.length; i++) {
      peak = curve[i] > curve[peak] ? i : peak;
    }
    if (curve[peak] > least) {
      panel.words(
          Integer.toString(generation),
          x[peak],
          curve[peak],
          x[peak] > right - 8 ? Side.LEFT : Side.ABOVE,
          FigureLook.BOLD,
          FigureLook.INK);
    }
  }

  ChartPanel shares() {
    var panel = new ChartPanel(SHARES_HEIGHT, AXIS_HEIGHT, "Share of the population (%)");
    panel.ranges(x[0] - 1, right, 0, 100);
    CalendarAxis.rule(panel, span, 0, 100);
    var below = new double[x.length];
    int from = firstDayWithAnyone();
    var stages = run.cycle().stageNames();
    for (int s = 0; s < stages.size(); s++) {
      var above = below.clone();
      for (int i = from; i < x.length; i++) {
        double share = run.share(stages.get(s), run.temperatures().day(i));
        above[i] += Double.isNaN(share) ? 0 : 100 * share;
      }
      band(panel, from, below, above, s);
      nameBand(panel, stages.get(s), below, above, s);
      below = above;
    }
    CalendarAxis.label(panel, span, 0);
    return panel;
  }

  private int firstDayWithAnyone() {
    for (int i = 0; i < x.length; i++) {
      if (!Double.isNaN(run.share(run.cycle().stageNames().get(0), run.temperatures().day(i)))) {
        return i;
      }
    }
    return 0;
  }

  private void band(ChartPanel panel, int from, double[] below, double[] above, int place) {
    var days = Arrays.copyOfRange(x, from, x.length);
    var low = Arrays.copyOfRange(below, from, x.length);
    var high = Arrays.copyOfRange(above, from, x.length);
    panel.band(days, low, high, BANDS[place % BANDS.length]);
    panel.curve(days, high, FigureLook.INK, FigureLook.solid(1));
  }

  /** A name stands in its band where that is thick for the length of the name. */
  private void nameBand(ChartPanel panel, String stage, double[] below, double[] above, int place) {
    int margin = Math.min(NAME_DAYS, x.length / 4);
    int widest = margin;
    double thickest = 0;
    for (int i = margin; i < x.length - margin; i++) {
      double thickness = Double.POSITIVE_INFINITY;
      for (int j = i - margin; j <= i + margin; j++) {
        thickness = Math.min(thickness, above[j] - below[j]);
      }
      if (thickness > thickest) {
        thickest = thickness;
        widest = i;
      }
    }
    if (thickest > 100 * NAMED_SHARE) {
      boolean dark = BANDS[place % BANDS.length].equals(FigureLook.DARK_GREY);
      panel.words(
          stage,
          x[widest],
          (below[widest] + above[widest]) / 2,
          Side.CENTRE,
          FigureLook.BOLD,
          dark ? FigureLook.PAPER : FigureLook.INK);
    }
  }
}
