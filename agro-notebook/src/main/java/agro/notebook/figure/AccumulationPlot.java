package agro.notebook.figure;

import agro.generation.ObservedSeason;
import agro.notebook.figure.ChartPanel.Side;
import agro.weather.DayOrigin;
import java.awt.BasicStroke;
import java.awt.Color;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/** Lays the sums of a season out over its calendar. */
final class AccumulationPlot {

  private static final int HEIGHT = 470;
  private static final int AXIS_HEIGHT = 32;
  private static final double APART = 0.045;
  private static final double RIGHT_ROOM = 0.1;

  private static final double KEY_FROM = 0.02;
  private static final double KEY_TO = 0.07;
  private static final double KEY_STEP = 0.06;
  private static final BasicStroke SUM_AHEAD = FigureLook.solid(1.5);
  private static final BasicStroke PAST = FigureLook.solid(1);

  private record EndLabel(String text, double sum) {}

  private final SeasonSums sums;
  private final double start;
  private final double end;
  private final double top;
  private final ChartPanel panel =
      new ChartPanel(HEIGHT, AXIS_HEIGHT, "Degree-days (" + FigureWords.DEGREE_DAYS + ")");

  AccumulationPlot(SeasonSums sums) {
    this.sums = sums;
    start = CalendarAxis.at(sums.season().firstDay());
    end = start + sums.seasonDays();
    var highest = Math.max(sums.aheadAtEnd(0.9), sums.knownTotal());
    for (var each : sums.past()) {
      highest = Math.max(highest, each.scale().totalC());
    }
    top = Math.max(10, 1.06 * highest);
    panel.ranges(start, end + RIGHT_ROOM * (end - start), FigureLook.BELOW_ZERO * top, top);
  }

  ChartPanel panel() {
    var span = new CalendarAxis.Span(sums.season().firstDay(), sums.season().lastDay().plusDays(1));
    CalendarAxis.rule(panel, span, panel.yLow(), top);
    CalendarAxis.label(panel, span, panel.yLow());
    panel.level(panel.yLow(), FigureLook.QUIET_INK, FigureLook.solid(1));
    ahead();
    var labels = new ArrayList<EndLabel>();
    for (var each : sums.past()) {
      pastSeason(each, labels);
    }
    knownDays();
    issue();
    key();
    labels.add(new EndLabel(Integer.toString(sums.season().traps().year()), sums.aheadAtEnd(0.5)));
    endLabels(labels);
    return panel;
  }

  private void ahead() {
    var first = sums.knownDays();
    var n = sums.seasonDays() - first + 1;
    var x = new double[n];
    var low = new double[n];
    var middle = new double[n];
    var high = new double[n];
    for (var i = 0; i < n; i++) {
      x[i] = start + first + i;
      low[i] = sums.ahead(first + i, 0.1);
      middle[i] = sums.ahead(first + i, 0.5);
      high[i] = sums.ahead(first + i, 0.9);
    }
    panel.band(x, low, high, FigureLook.PALE_BLUE);
    panel.curve(x, middle, FigureLook.BLUE, SUM_AHEAD);
  }

  private void pastSeason(ObservedSeason each, List<EndLabel> labels) {
    var days = Math.min(each.scale().days(), sums.seasonDays());
    var x = new double[days + 1];
    var y = new double[days + 1];
    for (var i = 0; i <= days; i++) {
      x[i] = start + i;
      y[i] = sums.pastSum(each, i);
    }
    panel.curve(x, y, FigureLook.MIDDLE_GREY, PAST);
    if (days == sums.seasonDays()) {
      labels.add(new EndLabel(Integer.toString(each.year()), y[days]));
    }
  }

  /** One thick line for each run of days of one origin. */
  private void knownDays() {
    var from = 0;
    for (var day = 1; day <= sums.knownDays(); day++) {
      if (day == sums.knownDays() || style(sums.origin(day)) != style(sums.origin(from))) {
        run(from, day);
        from = day;
      }
    }
  }

  private void run(int from, int to) {
    var x = new double[to - from + 1];
    var y = new double[x.length];
    for (var i = 0; i < x.length; i++) {
      x[i] = start + from + i;
      y[i] = sums.known(from + i);
    }
    panel.curve(x, y, FigureLook.INK, style(sums.origin(from)).stroke);
  }

  /** Names of the lines, in the corner that sums never reach. */
  private void key() {
    var height = 0.94 * top;
    for (var style : Style.values()) {
      var drawn =
          IntStream.range(0, sums.knownDays()).anyMatch(day -> style(sums.origin(day)) == style);
      if (drawn) {
        keyLine(height, style.words, FigureLook.INK, style.stroke);
        height -= KEY_STEP * top;
      }
    }
    var from = start + KEY_FROM * (end - start);
    var to = start + KEY_TO * (end - start);
    panel.box(from, to, height - 0.014 * top, height + 0.014 * top, FigureLook.PALE_BLUE);
    keyLine(height, "weather of past years: median, 8 in 10", FigureLook.BLUE, SUM_AHEAD);
    if (!sums.past().isEmpty()) {
      keyLine(height - KEY_STEP * top, "past seasons", FigureLook.MIDDLE_GREY, PAST);
    }
  }

  private void keyLine(double height, String text, Color colour, BasicStroke stroke) {
    var from = start + KEY_FROM * (end - start);
    var to = start + KEY_TO * (end - start);
    panel.curve(new double[] {from, to}, new double[] {height, height}, colour, stroke);
    panel.words(text, to, height, Side.RIGHT, FigureLook.TEXT, FigureLook.INK);
  }

  private enum Style {
    AT_THE_PLACE("observed", FigureLook.solid(3.5)),
    NEIGHBOUR("neighbour station", FigureLook.dashed(3.5)),
    FORECAST("forecast", FigureLook.dotted(3.5));

    private final String words;
    private final BasicStroke stroke;

    Style(String words, BasicStroke stroke) {
      this.words = words;
      this.stroke = stroke;
    }
  }

  private static Style style(DayOrigin origin) {
    return switch (origin) {
      case NEIGHBOUR -> Style.NEIGHBOUR;
      case FORECAST, PAST_YEAR -> Style.FORECAST;
      case OBSERVED, PARTLY_FILLED, INTERPOLATED, CLIMATE_NORMAL, MODELLED, MISSING ->
          Style.AT_THE_PLACE;
    };
  }

  private void issue() {
    var issue = CalendarAxis.at(sums.season().asOf());
    var high = issue < (start + end) / 2 ? 0.56 * top : 0.93 * top;
    panel.stroke(issue, 0, issue, high, FigureLook.BLUE, FigureLook.dashed(2));
    panel.words(
        "issued " + FigureWords.day(sums.season().asOf()),
        issue,
        high + 0.035 * top,
        Side.CENTRE,
        FigureLook.BOLD,
        FigureLook.BLUE);
  }

  /** Names at the ends of the lines, moved apart where they would overlap. */
  private void endLabels(List<EndLabel> labels) {
    labels.sort(Comparator.comparingDouble(EndLabel::sum));
    var free = Double.NEGATIVE_INFINITY;
    for (var label : labels) {
      var y = Math.max(label.sum(), free);
      var thisSeason = label.text().equals(Integer.toString(sums.season().traps().year()));
      panel.words(
          label.text(),
          end,
          y,
          Side.RIGHT,
          thisSeason ? FigureLook.BOLD : FigureLook.SMALL,
          thisSeason ? FigureLook.BLUE : FigureLook.QUIET_INK);
      free = y + APART * top;
    }
  }
}
