package agro.notebook.figure;

import agro.notebook.figure.ChartPanel.Side;
import agro.stats.multiple.SignificantDifference;
import agro.trial.TrialPlot;
import agro.trial.analysis.AnalysedTrial;
import agro.trial.analysis.AnalysisRoute;
import agro.trial.analysis.PlotResidual;
import agro.trial.analysis.TreatmentMean;
import agro.trial.analysis.TreatmentMeans;
import agro.units.Numbers;
import java.awt.BasicStroke;
import java.awt.Color;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** A row for each treatment: its plots by block, its mean with limits, and its letters. */
final class TrialMeansPlot {

  private static final int ROW_HEIGHT = 66;
  private static final int AXIS_HEIGHT = 46;

  /** Lanes of plots above a mean, in points. */
  private static final int LANES = 4;

  private static final double FIRST_LANE = 16;
  private static final double LANE_HEIGHT = 10.5;
  private static final double MARK_WIDTH = 10;
  private static final double LETTER_POINTS = 7.4;
  private static final double MARK_POINTS = 8.5;

  /** Height of one of the bars of differences above the rows, in rows. */
  private static final double BAR_ROWS = 0.62;

  private final AnalysedTrial analysed;
  private final TreatmentMeans means;
  private final MeansScale scale;
  private final double low;
  private final double high;
  private final double left;
  private final double right;
  private final ChartPanel panel;

  TrialMeansPlot(AnalysedTrial analysed, TreatmentMeans means) {
    this.analysed = analysed;
    this.means = means;
    scale = MeansScale.of(analysed);
    double[] range = range();
    low = range[0];
    high = range[1];
    double names =
        (20
                + LETTER_POINTS
                    * means.means().stream().mapToInt(m -> m.label().length()).max().orElse(1))
            / FigureLook.CHART_WIDTH;
    double marks =
        (24 + MARK_POINTS * means.means().stream().mapToInt(m -> m.mark().length()).max().orElse(1))
            / FigureLook.CHART_WIDTH;
    double whole = (high - low) / (1 - Math.min(0.45, names) - Math.min(0.25, marks));
    left = low - Math.min(0.45, names) * whole;
    right = high + Math.min(0.25, marks) * whole;
    double rows = means.means().size() + BAR_ROWS * bars().size() + 0.1;
    panel = new ChartPanel((int) Math.round(ROW_HEIGHT * rows), AXIS_HEIGHT, "");
    panel.ranges(left, right, 0, rows).withoutYTicks();
  }

  ChartPanel panel() {
    ground();
    for (int i = 0; i < means.means().size(); i++) {
      row(means.means().get(i), means.means().size() - i);
    }
    double height = panel.yHigh() - 0.5;
    for (var bar : bars()) {
      draw(bar, height);
      height -= BAR_ROWS;
    }
    return panel;
  }

  /** Plots of the level or combination whose mean is drawn. */
  static List<PlotResidual> plotsOf(AnalysedTrial analysed, TreatmentMeans means, String label) {
    return analysed.plots().stream()
        .filter(plot -> label(plot.plot(), means).equals(label))
        .toList();
  }

  private static String label(TrialPlot plot, TreatmentMeans means) {
    if (means.factors().size() == plot.levels().size()) {
      return plot.treatment();
    }
    if (means.factors().size() == 1) {
      return plot.level(means.factors().get(0)).orElse("");
    }
    return means.factors().stream()
        .map(factor -> factor + " " + plot.level(factor).orElse(""))
        .collect(Collectors.joining(", "));
  }

  private double[] range() {
    var places = new ArrayList<Double>();
    for (var mean : means.means()) {
      plotsOf(analysed, means, mean.label()).forEach(plot -> places.add(place(plot)));
      meanPlace(mean).ifPresent(places::add);
      mean.limits().ifPresent(limits -> places.add(scale.place(limits.low())));
      mean.limits().ifPresent(limits -> places.add(scale.place(limits.high())));
    }
    var finite = places.stream().filter(Double::isFinite).mapToDouble(place -> place);
    var all = finite.summaryStatistics();
    double width = all.getMax() > all.getMin() ? all.getMax() - all.getMin() : 1;
    double zero = scale.place(0);
    double start = all.getMin() - 0.04 * width;
    boolean fromZero = Double.isFinite(zero) && zero <= all.getMin() && zero > all.getMin() - width;
    return new double[] {fromZero ? zero - 0.02 * width : start, all.getMax() + 0.04 * width};
  }

  private double place(PlotResidual plot) {
    return analysed.subject().route() == AnalysisRoute.NORMAL ? plot.analysed() : plot.value();
  }

  private Optional<Double> meanPlace(TreatmentMean mean) {
    return mean.mean().isPresent()
        ? Optional.of(scale.place(mean.mean().getAsDouble())).filter(Double::isFinite)
        : Optional.empty();
  }

  private void ground() {
    int rows = means.means().size();
    var ticks = scale.ticks(low, high);
    for (double tick : ticks) {
      double x = scale.place(tick);
      panel.stroke(x, 0, x, rows, FigureLook.GRID, FigureLook.solid(1));
      panel.words(Numbers.plain(tick), x, 0, Side.BELOW, FigureLook.SMALL, FigureLook.INK);
    }
    for (int i = 0; i <= rows; i++) {
      boolean edge = i == 0 || i == rows;
      panel.stroke(
          left, i, right, i, edge ? FigureLook.MIDDLE_GREY : FigureLook.GRID, FigureLook.solid(1));
    }
    panel.words(
        TrialMeansFigure.axisWords(analysed)
            + (scale.isPlain() ? "" : ", ruled by the " + scale.words()),
        (low + high) / 2,
        0,
        Side.FAR_BELOW,
        FigureLook.TEXT,
        FigureLook.INK);
  }

  private void row(TreatmentMean mean, double top) {
    double line = top - 0.8;
    panel.words(mean.label(), left, line, Side.RIGHT, FigureLook.TEXT, FigureLook.INK);
    panel.words(mean.mark(), high, line, Side.RIGHT, FigureLook.BOLD, FigureLook.INK);
    mean.limits()
        .ifPresent(
            limits -> {
              double from = inside(scale.place(limits.low()), low);
              double to = inside(scale.place(limits.high()), high);
              panel.curve(
                  new double[] {from, to},
                  new double[] {line, line},
                  FigureLook.DARK_GREY,
                  FigureLook.solid(3));
            });
    meanPlace(mean).ifPresent(x -> panel.mark(x, line, FigureLook.INK, FigureMark.MEDIAN));
    blocks(mean, line);
  }

  private static double inside(double place, double end) {
    return Double.isFinite(place) ? place : end;
  }

  /** The plots of a row as the names of their blocks, stacked where they would cover each other. */
  private void blocks(TreatmentMean mean, double line) {
    var plots =
        plotsOf(analysed, means, mean.label()).stream()
            .sorted(Comparator.comparingDouble(this::place))
            .toList();
    boolean named =
        analysed.plots().stream()
            .map(plot -> plot.plot().block())
            .allMatch(name -> !name.isEmpty() && name.length() <= 2);
    double width = MARK_WIDTH * (right - left) / FigureLook.CHART_WIDTH;
    double[] endOfLane = new double[LANES];
    Arrays.fill(endOfLane, Double.NEGATIVE_INFINITY);
    for (var plot : plots) {
      double x = place(plot);
      int lane = 0;
      while (lane < LANES - 1 && x - width < endOfLane[lane]) {
        lane++;
      }
      endOfLane[lane] = x;
      double height = line + (FIRST_LANE + lane * LANE_HEIGHT) / ROW_HEIGHT;
      if (named) {
        panel.words(plot.plot().block(), x, height, Side.CENTRE, FigureLook.SMALL, FigureLook.INK);
      } else {
        panel.mark(x, height, FigureLook.INK, FigureMark.BOUND);
      }
    }
  }

  /** A length on the scale of the analysis, and what it says. */
  private record Bar(SignificantDifference difference, String words, boolean dark) {}

  private List<Bar> bars() {
    if (analysed.subject().route() != AnalysisRoute.NORMAL) {
      return List.of();
    }
    var bars = new ArrayList<Bar>();
    means
        .significantDifference()
        .ifPresent(
            one ->
                bars.add(
                    new Bar(
                        one,
                        "smallest significant difference, "
                            + means.method()
                            + (one.isOneNumber() ? "" : "; dotted: up to, by the pair"),
                        true)));
    means
        .detectable()
        .ifPresent(
            one ->
                bars.add(
                    new Bar(
                        one, "true difference that one test finds in 8 of 10 such trials", false)));
    return bars;
  }

  /** A bar ends at the largest mean, so that its other end is where a mean would have to lie. */
  private void draw(Bar bar, double height) {
    double from =
        means.means().stream()
            .flatMap(mean -> meanPlace(mean).stream())
            .mapToDouble(place -> place)
            .max()
            .orElse(high);
    double least = Math.max(left, from - bar.difference().smallest());
    double most = Math.max(left, from - bar.difference().largest());
    var colour = bar.dark() ? FigureLook.INK : FigureLook.DARK_GREY;
    line(most, least, height, colour, FigureLook.dotted(2));
    line(least, from, height, colour, FigureLook.solid(bar.dark() ? 4 : 1.5));
    for (double end : new double[] {most, from}) {
      panel.curve(
          new double[] {end, end},
          new double[] {height - 0.1, height + 0.1},
          colour,
          FigureLook.solid(1.5));
    }
    panel.words(bar.words(), from, height + 0.27, Side.LEFT, FigureLook.SMALL, FigureLook.INK);
  }

  private void line(double from, double to, double height, Color colour, BasicStroke stroke) {
    panel.curve(new double[] {from, to}, new double[] {height, height}, colour, stroke);
  }
}
