package agro.notebook.figure;

import agro.generation.ForecastRow;
import agro.generation.GenerationForecast;
import agro.notebook.figure.ChartPanel.Side;
import java.awt.Color;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/** Lays the lines of many stations out under headings of their pests. */
final class StationPlot {

  private static final int ROW_HEIGHT = 38;
  private static final int TOP_HEIGHT = 34;
  private static final int AXIS_HEIGHT = 40;
  private static final double LEAST_LABEL_SHARE = 0.15;
  private static final double MOST_LABEL_SHARE = 0.45;
  private static final double LETTER_POINTS = 7.6;
  private static final double MARGIN_POINTS = 14;
  private static final double NEVER_SHARE = 0.14;
  private static final int DAYS_BEFORE = 6;
  private static final int DAYS_AFTER = 12;
  private static final double[] THICKNESS = {4, 9, 15};
  private static final Color[] GREY = {
    FigureLook.LIGHT_GREY, FigureLook.MIDDLE_GREY, FigureLook.DARK_GREY
  };

  private final List<StationLine> lines;
  private final List<Integer> heights = new ArrayList<>();
  private final ChartPanel panel;
  private final CalendarAxis.Span span;
  private final double left;
  private final double start;
  private final double end;
  private final double right;
  private final double top;

  StationPlot(List<StationLine> lines) {
    this.lines = lines;
    top = layOut();
    span = span();
    start = CalendarAxis.at(span.from());
    end = CalendarAxis.at(span.to().plusDays(1));
    var labelShare = labelShare();
    var whole = (end - start) / (1 - labelShare - NEVER_SHARE);
    left = start - labelShare * whole;
    right = end + NEVER_SHARE * whole;
    panel = new ChartPanel((int) (top * ROW_HEIGHT) + TOP_HEIGHT, AXIS_HEIGHT, "");
    panel.ranges(left, right, 0, top + (double) TOP_HEIGHT / ROW_HEIGHT).withoutYTicks();
  }

  /** Rows from the top; a new pest takes one for its name. */
  private int layOut() {
    var next = 0;
    for (var i = 0; i < lines.size(); i++) {
      next += newPest(i) ? 1 : 0;
      heights.add(next++);
    }
    return Math.max(1, next);
  }

  private boolean newPest(int i) {
    return i == 0 || !lines.get(i).entry().pest().equals(lines.get(i - 1).entry().pest());
  }

  private List<GenerationForecast> forecasts() {
    return lines.stream().flatMap(line -> line.entry().forecast().stream()).distinct().toList();
  }

  /** From before the first day that is drawn to after the last one, at most to a season's end. */
  private CalendarAxis.Span span() {
    var days = new ArrayList<LocalDate>();
    forecasts().forEach(forecast -> days.add(forecast.season().asOf()));
    for (var line : lines) {
      line.row()
          .ifPresent(
              row -> {
                var wide = row.dates().interval(0.9);
                wide.from().ifPresent(days::add);
                days.add(wide.to().orElse(lastDay(line)));
              });
    }
    var first = days.stream().min(LocalDate::compareTo).orElse(LocalDate.of(2000, 1, 1));
    var last = days.stream().max(LocalDate::compareTo).orElse(first.plusMonths(1));
    return new CalendarAxis.Span(first.minusDays(DAYS_BEFORE), last.plusDays(DAYS_AFTER));
  }

  private static LocalDate lastDay(StationLine line) {
    return line.entry().forecast().orElseThrow().season().lastDay();
  }

  private double labelShare() {
    var letters = lines.stream().mapToInt(line -> line.name().length()).max().orElse(0);
    var needed = (MARGIN_POINTS + LETTER_POINTS * letters) / FigureLook.CHART_WIDTH;
    return Math.min(MOST_LABEL_SHARE, Math.max(LEAST_LABEL_SHARE, needed));
  }

  ChartPanel panel() {
    ground();
    for (var level = 0; level < ForecastFigure.LEVELS.length; level++) {
      for (var i = 0; i < lines.size(); i++) {
        var height = height(i);
        var line = lines.get(i);
        var at = level;
        line.row().ifPresent(row -> bar(line, row, height, at));
      }
    }
    for (var i = 0; i < lines.size(); i++) {
      label(i);
    }
    return panel;
  }

  /** Each row is one high and its bar stands below its middle. */
  private double height(int line) {
    return top - heights.get(line) - 0.68;
  }

  private void ground() {
    panel.box(end, right, 0, top, FigureLook.PALE);
    CalendarAxis.rule(panel, span, 0, top);
    CalendarAxis.label(panel, span, 0);
    panel.stroke(left, 0, right, 0, FigureLook.MIDDLE_GREY, FigureLook.solid(1));
    panel.words(
        FigureWords.NOT_THIS_SEASON,
        (end + right) / 2,
        top + 0.32,
        Side.CENTRE,
        FigureLook.BOLD,
        FigureLook.INK);
    for (var i = 0; i < lines.size(); i++) {
      if (newPest(i)) {
        heading(i);
      }
      issue(i);
    }
    var issued = forecasts().stream().map(each -> each.season().asOf()).distinct().toList();
    if (issued.size() == 1) {
      var x = CalendarAxis.at(issued.get(0));
      panel.words(
          "issued " + FigureWords.day(issued.get(0)),
          x,
          top + 0.32,
          x > end - 0.2 * (end - start) ? Side.LEFT : Side.CENTRE,
          FigureLook.BOLD,
          FigureLook.BLUE);
    }
  }

  private void heading(int i) {
    var y = top - heights.get(i) + 1;
    panel.stroke(left, y, right, y, FigureLook.MIDDLE_GREY, FigureLook.solid(1));
    var pest = lines.get(i).entry().pest();
    panel.words(
        pest.isEmpty() ? "Folders that could not be read" : FigureWords.sentence(pest),
        left,
        y - 0.6,
        Side.RIGHT,
        FigureLook.BOLD,
        FigureLook.INK);
  }

  private void issue(int i) {
    var forecast = lines.get(i).entry().forecast();
    if (forecast.isPresent()) {
      var x = CalendarAxis.at(forecast.get().season().asOf());
      var y = top - heights.get(i);
      panel.stroke(x, y - 1, x, y, FigureLook.BLUE, FigureLook.dashed(2));
    }
  }

  private void bar(StationLine line, ForecastRow row, double y, int level) {
    var interval = row.dates().interval(ForecastFigure.LEVELS[level]);
    if (interval.from().isEmpty()) {
      return;
    }
    var close = CalendarAxis.at(lastDay(line).plusDays(1));
    var from = CalendarAxis.at(interval.from().get());
    var to = interval.to().map(day -> CalendarAxis.at(day) + 1).orElse(close);
    panel.stroke(from, y, to, y, GREY[level], FigureLook.solid(THICKNESS[level]));
    if (interval.to().isEmpty()) {
      panel.mark(close, y, GREY[level], FigureMark.GOES_ON);
    }
  }

  private void label(int i) {
    var line = lines.get(i);
    var y = height(i);
    panel.words(line.name(), start, y, Side.LEFT, FigureLook.TEXT, FigureLook.INK);
    if (line.row().isEmpty()) {
      panel.words(
          line.without(), (start + end) / 2, y, Side.CENTRE, FigureLook.TEXT, FigureLook.QUIET_INK);
      return;
    }
    var dates = line.row().get().dates();
    panel.words(
        FigureWords.chance(dates.chanceNotThisSeason()),
        (end + right) / 2,
        y,
        Side.CENTRE,
        FigureLook.TEXT,
        FigureLook.INK);
    var median = dates.median();
    if (median.isPresent()) {
      var x = CalendarAxis.at(median.get()) + 0.5;
      panel.mark(x, y, FigureLook.INK, FigureMark.MEDIAN);
      panel.words(
          FigureWords.day(median.get()),
          x,
          y + 0.44,
          x > end - 0.06 * (end - start) ? Side.LEFT : Side.CENTRE,
          FigureLook.BOLD,
          FigureLook.INK);
    } else {
      panel.words(
          "more likely not this season",
          end,
          y + 0.44,
          Side.LEFT,
          FigureLook.SMALL,
          FigureLook.QUIET_INK);
    }
  }
}
