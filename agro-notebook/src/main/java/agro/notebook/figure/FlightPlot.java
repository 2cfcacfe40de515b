package agro.notebook.figure;

import agro.generation.FlightTimingFit;
import agro.generation.SeasonTiming;
import agro.generation.VisitFit;
import agro.notebook.figure.ChartPanel.Side;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Lays the seasons of a fit out below each other, all on one scale. */
final class FlightPlot {

  private static final int PANEL_HEIGHT = 180;
  private static final int ALONE_HEIGHT = 400;
  private static final int AXIS_HEIGHT = 46;
  private static final int GAP = 6;
  private static final int LEFT_ROOM = 46;
  private static final double LOW = 0.1;
  private static final double HIGH = 0.9;

  private final FlightTimingFit fit;
  private final List<SeasonTiming> seasons;
  private final double right;

  FlightPlot(FlightTimingFit fit, List<SeasonTiming> seasons) {
    this.fit = fit;
    this.seasons = seasons;
    var labels = seasons.stream().map(SeasonTiming::label).toList();
    var visits = fit.visits().stream().filter(visit -> labels.contains(visit.label())).toList();
    right = 1.02 * visits.stream().mapToDouble(VisitFit::toDegreeDaysC).max().orElse(1000);
  }

  /** Each season fills its panel, for the timing is looked at and not the size of the catch. */
  private double top(SeasonTiming season) {
    return Math.max(
        0.1,
        1.3
            * fit.visits().stream()
                .filter(visit -> visit.label().equals(season.label()))
                .mapToDouble(visit -> Math.max(visit.catchPerNight(), perNight(visit, HIGH)))
                .filter(Double::isFinite)
                .max()
                .orElse(1));
  }

  List<ChartPanel> panels() {
    if (seasons.isEmpty()) {
      return List.of(empty());
    }
    var panels = new ArrayList<ChartPanel>();
    for (var i = 0; i < seasons.size(); i++) {
      panels.add(panel(seasons.get(i), i == seasons.size() - 1));
    }
    return panels;
  }

  private ChartPanel empty() {
    var panel = framed(ALONE_HEIGHT, true, 1);
    return panel.words(
        "No season with a catch", right / 2, 0.5, Side.CENTRE, FigureLook.TEXT, FigureLook.INK);
  }

  private ChartPanel framed(int height, boolean last, double top) {
    var panel = new ChartPanel(height, last ? AXIS_HEIGHT : GAP, "adults per trap-night");
    panel.ranges(0, right, FigureLook.BELOW_ZERO * top, top).leftRoom(LEFT_ROOM);
    var step = NumberAxis.step(0, right);
    NumberAxis.rule(panel, step);
    if (last) {
      NumberAxis.label(panel, step, FigureWords.SEASON_DEGREE_DAYS);
    }
    return panel;
  }

  private ChartPanel panel(SeasonTiming season, boolean last) {
    var top = top(season);
    var panel = framed(seasons.size() == 1 ? ALONE_HEIGHT : PANEL_HEIGHT, last, top);
    for (var run : runs(season)) {
      draw(panel, run);
    }
    for (var g = 1; g <= fit.generations(); g++) {
      flight(panel, g, FlightFigure.middle(fit, season, g), top);
    }
    dots(panel, season);
    panel.words(season.label(), 0, 0.93 * top, Side.RIGHT, FigureLook.BOLD, FigureLook.INK);
    return panel;
  }

  private void flight(ChartPanel panel, int generation, double middle, double top) {
    if (middle >= 0 && middle <= right) {
      panel.stroke(middle, 0, middle, 0.86 * top, FigureLook.MIDDLE_GREY, FigureLook.dashed(1));
      panel.words(
          "flight " + generation, middle, 0.93 * top, Side.CENTRE, FigureLook.TEXT, FigureLook.INK);
    }
  }

  /** Steps of band and mean over one stretch that some trap covered without a gap. */
  private void draw(ChartPanel panel, List<VisitFit> run) {
    var n = 2 * run.size();
    var x = new double[n];
    var low = new double[n];
    var high = new double[n];
    var mean = new double[n];
    for (var i = 0; i < n; i++) {
      var visit = run.get(i / 2);
      x[i] = i % 2 == 0 ? visit.fromDegreeDaysC() : visit.toDegreeDaysC();
      low[i] = perNight(visit, LOW);
      high[i] = perNight(visit, HIGH);
      mean[i] = visit.meanPerNight();
    }
    panel.band(x, low, high, FigureLook.PALE_BLUE);
    panel.curve(x, mean, FigureLook.BLUE, FigureLook.solid(2));
  }

  private double perNight(VisitFit visit, double probability) {
    var size = fit.poisson() ? Double.POSITIVE_INFINITY : fit.sizePerNight() * visit.nightsOpen();
    return CountBand.quantile(probability, visit.mean(), size) / visit.nightsOpen();
  }

  /**
   * Stretches without a gap; of visits that overlap, because several traps were looked at, the
   * first is taken.
   */
  private List<List<VisitFit>> runs(SeasonTiming season) {
    var runs = new ArrayList<List<VisitFit>>();
    var reached = Double.NEGATIVE_INFINITY;
    for (var visit : sorted(season)) {
      if (visit.fromDegreeDaysC() > reached + 1e-9) {
        runs.add(new ArrayList<>());
      }
      if (visit.fromDegreeDaysC() >= reached - 1e-9) {
        runs.get(runs.size() - 1).add(visit);
        reached = visit.toDegreeDaysC();
      }
    }
    return runs;
  }

  private List<VisitFit> sorted(SeasonTiming season) {
    return fit.visits().stream()
        .filter(visit -> visit.label().equals(season.label()))
        .sorted(
            Comparator.comparingDouble(VisitFit::fromDegreeDaysC)
                .thenComparingDouble(VisitFit::toDegreeDaysC))
        .toList();
  }

  private void dots(ChartPanel panel, SeasonTiming season) {
    for (var visit : sorted(season)) {
      panel.mark(
          (visit.fromDegreeDaysC() + visit.toDegreeDaysC()) / 2,
          visit.catchPerNight(),
          FigureLook.INK,
          visit.full() ? FigureMark.BOUND : FigureMark.OBSERVATION);
    }
  }
}
