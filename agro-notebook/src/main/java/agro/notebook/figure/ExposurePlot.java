package agro.notebook.figure;

import agro.notebook.figure.ChartPanel.Side;
import agro.programme.window.ExposedDay;
import agro.programme.window.ExposedPair;
import agro.programme.window.ExposureForecast;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.function.ToDoubleFunction;

/** Shares of a generation over the day of treatment. */
final class ExposurePlot {

  private static final int HEIGHT = 360;
  private static final int AXIS_HEIGHT = 28;
  private static final int LEFT_ROOM = 58;
  private static final long MOST_WEEKLY = 84;
  private static final double TOP = 108;

  private final ExposureForecast exposure;
  private final ExposedDay best;
  private final List<ExposedDay> days;

  ExposurePlot(ExposureForecast exposure, ExposedDay best) {
    this.exposure = exposure;
    this.best = best;
    days = exposure.days();
  }

  ChartPanel panel() {
    var panel =
        new ChartPanel(HEIGHT, AXIS_HEIGHT, "Share of the generation (%)")
            .leftRoom(LEFT_ROOM)
            .decimals("0");
    var first = days.get(0).day();
    var last = days.get(days.size() - 1).day().plusDays(1);
    panel.ranges(CalendarAxis.at(first), CalendarAxis.at(last), FigureLook.BELOW_ZERO * TOP, TOP);
    double[] x = days.stream().mapToDouble(day -> CalendarAxis.at(day.day())).toArray();
    panel.band(x, percent(ExposedDay::low), percent(ExposedDay::high), FigureLook.PALE_BLUE);
    weeks(panel, first, last);
    exposure.bestPair().ifPresent(pair -> pair(panel, pair));
    panel.curve(x, percent(ExposedDay::gone), FigureLook.DARK_GREY, FigureLook.dashed(1.5));
    panel.curve(x, percent(ExposedDay::toCome), FigureLook.DARK_GREY, FigureLook.dotted(1.5));
    panel.curve(x, percent(ExposedDay::mean), FigureLook.BLUE, FigureLook.solid(2.5));
    best(panel);
    return panel;
  }

  /** A rule each week from the first day on; a season of days gets fewer. */
  private static void weeks(ChartPanel panel, LocalDate first, LocalDate last) {
    long step = 7 * (1 + ChronoUnit.DAYS.between(first, last) / MOST_WEEKLY);
    for (var day = first; day.isBefore(last); day = day.plusDays(step)) {
      double x = CalendarAxis.at(day);
      panel.stroke(x, panel.yLow(), x, TOP, FigureLook.GRID, FigureLook.solid(1));
      panel.words(
          FigureWords.day(day), x, panel.yLow(), Side.BELOW, FigureLook.SMALL, FigureLook.INK);
    }
  }

  private void best(ChartPanel panel) {
    double x = CalendarAxis.at(best.day());
    panel.mark(x, 100 * best.mean(), FigureLook.INK, FigureMark.MEDIAN);
    panel.words(
        FigureWords.day(best.day()) + ": " + ExposureFigure.percent(best.mean()),
        x,
        100 * best.high(),
        Side.ABOVE,
        FigureLook.BOLD,
        FigureLook.INK);
  }

  /** The two days are joined above all curves. */
  private static void pair(ChartPanel panel, ExposedPair pair) {
    double from = CalendarAxis.at(pair.first());
    double to = CalendarAxis.at(pair.second());
    double height = 100 * pair.mean();
    panel.stroke(from, panel.yLow(), from, height, FigureLook.VERMILION, FigureLook.solid(1.2));
    panel.stroke(to, panel.yLow(), to, height, FigureLook.VERMILION, FigureLook.solid(1.2));
    panel.stroke(from, height, to, height, FigureLook.VERMILION, FigureLook.solid(1.2));
    panel.words(
        FigureWords.day(pair.first())
            + " and "
            + FigureWords.day(pair.second())
            + ": "
            + ExposureFigure.percent(pair.mean()),
        (from + to) / 2,
        height,
        Side.ABOVE,
        FigureLook.SMALL,
        FigureLook.INK);
  }

  private double[] percent(ToDoubleFunction<ExposedDay> share) {
    return days.stream().mapToDouble(day -> 100 * share.applyAsDouble(day)).toArray();
  }
}
