package agro.notebook.figure;

import agro.generation.ForecastRow;
import agro.generation.GenerationForecast;
import agro.notebook.figure.ChartPanel.Side;
import java.awt.Color;

/** Lays the lines of a forecast out between their labels and the chances of no date. */
final class ForecastPlot {

  private static final int ROW_HEIGHT = 44;
  private static final int TOP_HEIGHT = 40;
  private static final int AXIS_HEIGHT = 46;
  private static final double LEAST_LABEL_SHARE = 0.21;
  private static final double MOST_LABEL_SHARE = 0.45;
  private static final double FLIGHT_POINTS = 75;
  private static final double LETTER_POINTS = 7.6;
  private static final double NEVER_SHARE = 0.14;
  private static final int DAYS_BEFORE = 6;
  private static final double[] THICKNESS = {5, 11, 18};
  private static final Color[] GREY = {
    FigureLook.LIGHT_GREY, FigureLook.MIDDLE_GREY, FigureLook.DARK_GREY
  };

  private final GenerationForecast forecast;
  private final ChartPanel panel;
  private final CalendarAxis.Span span;
  private final double left;
  private final double start;
  private final double end;
  private final double right;
  private final double top;

  ForecastPlot(GenerationForecast forecast) {
    this.forecast = forecast;
    var rows = Math.max(1, forecast.rows().size());
    top = rows;
    span =
        new CalendarAxis.Span(
            ForecastFigure.firstDay(forecast).minusDays(DAYS_BEFORE), forecast.season().lastDay());
    start = CalendarAxis.at(span.from());
    end = CalendarAxis.at(span.to().plusDays(1));
    var labelShare = labelShare(forecast);
    var whole = (end - start) / (1 - labelShare - NEVER_SHARE);
    left = start - labelShare * whole;
    right = end + NEVER_SHARE * whole;
    panel = new ChartPanel(rows * ROW_HEIGHT + TOP_HEIGHT, AXIS_HEIGHT, "");
    panel.ranges(left, right, 0, top + (double) TOP_HEIGHT / ROW_HEIGHT).withoutYTicks();
  }

  /** Share of the width that the names of the rows need. */
  private static double labelShare(GenerationForecast forecast) {
    var letters =
        forecast.rows().stream()
            .mapToInt(row -> ForecastFigure.rowWords(row).length())
            .max()
            .orElse(0);
    var needed = (FLIGHT_POINTS + LETTER_POINTS * letters) / FigureLook.CHART_WIDTH;
    return Math.min(MOST_LABEL_SHARE, Math.max(LEAST_LABEL_SHARE, needed));
  }

  ChartPanel panel() {
    ground();
    var rows = forecast.rows();
    for (var level = 0; level < ForecastFigure.LEVELS.length; level++) {
      for (var i = 0; i < rows.size(); i++) {
        bar(rows.get(i), height(i), level);
      }
    }
    for (var i = 0; i < rows.size(); i++) {
      label(i);
    }
    if (rows.isEmpty()) {
      panel.words(
          "No flight is left this season",
          (start + end) / 2,
          top / 2,
          Side.CENTRE,
          FigureLook.TEXT,
          FigureLook.INK);
    }
    return panel;
  }

  /** Rows run downwards; each is one high and its bar stands below its middle. */
  private double height(int row) {
    return top - row - 0.66;
  }

  private void ground() {
    panel.box(end, right, 0, top, FigureLook.PALE);
    CalendarAxis.rule(panel, span, 0, top);
    CalendarAxis.label(panel, span, 0);
    var rows = forecast.rows();
    for (var i = 0; i <= rows.size(); i++) {
      var newFlight =
          i == 0 || i == rows.size() || rows.get(i).generation() != rows.get(i - 1).generation();
      if (newFlight) {
        panel.stroke(left, top - i, right, top - i, FigureLook.MIDDLE_GREY, FigureLook.solid(1));
      }
    }
    panel.stroke(end, 0, end, top, FigureLook.INK, FigureLook.solid(1.5));
    var issue = CalendarAxis.at(forecast.season().asOf());
    panel.stroke(issue, 0, issue, top, FigureLook.BLUE, FigureLook.dashed(2));
    panel.words(
        "issued " + FigureWords.day(forecast.season().asOf()),
        issue,
        top + 0.32,
        issue > end - 0.2 * (end - start) ? Side.LEFT : Side.CENTRE,
        FigureLook.BOLD,
        FigureLook.BLUE);
    panel.words(
        "season ends " + FigureWords.day(forecast.season().lastDay()),
        end,
        0,
        Side.FAR_BELOW,
        FigureLook.TEXT,
        FigureLook.INK);
    panel.words(
        FigureWords.NOT_THIS_SEASON,
        (end + right) / 2,
        top + 0.32,
        Side.CENTRE,
        FigureLook.BOLD,
        FigureLook.INK);
  }

  private void bar(ForecastRow row, double y, int level) {
    var interval = row.dates().interval(ForecastFigure.LEVELS[level]);
    if (interval.from().isEmpty()) {
      return;
    }
    var from = CalendarAxis.at(interval.from().get());
    var to = interval.to().map(day -> CalendarAxis.at(day) + 1).orElse(end);
    panel.stroke(from, y, to, y, GREY[level], FigureLook.solid(THICKNESS[level]));
    if (interval.to().isEmpty()) {
      panel.mark(end, y, GREY[level], FigureMark.GOES_ON);
    }
  }

  private void label(int i) {
    var row = forecast.rows().get(i);
    var y = height(i);
    var firstOfFlight = i == 0 || forecast.rows().get(i - 1).generation() != row.generation();
    if (firstOfFlight) {
      panel.words(
          "Flight " + row.generation(), left, y, Side.RIGHT, FigureLook.BOLD, FigureLook.INK);
    }
    panel.words(ForecastFigure.rowWords(row), start, y, Side.LEFT, FigureLook.TEXT, FigureLook.INK);
    var median = row.dates().median();
    median.ifPresent(day -> median(CalendarAxis.at(day) + 0.5, y, FigureWords.day(day)));
    panel.words(
        FigureWords.chance(row.dates().chanceNotThisSeason()),
        (end + right) / 2,
        y,
        Side.CENTRE,
        FigureLook.TEXT,
        FigureLook.INK);
    if (median.isEmpty()) {
      moreLikelyNot(row.dates().interval(0.9).from().isPresent(), y);
    }
  }

  private void median(double x, double y, String day) {
    panel.mark(x, y, FigureLook.INK, FigureMark.MEDIAN);
    var side = x > end - 0.04 * (end - start) ? Side.LEFT : Side.CENTRE;
    panel.words(day, x, y + 0.43, side, FigureLook.BOLD, FigureLook.INK);
  }

  private void moreLikelyNot(boolean barDrawn, double y) {
    panel.words(
        barDrawn ? "more likely not this season" : FigureWords.NOT_THIS_SEASON,
        end,
        barDrawn ? y + 0.43 : y,
        Side.LEFT,
        FigureLook.SMALL,
        FigureLook.QUIET_INK);
  }
}
