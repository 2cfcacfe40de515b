package agro.notebook.figure;

import agro.notebook.figure.ChartPanel.Side;
import agro.weather.DailyTemperatures;
import agro.weather.DayOrigin;
import agro.weather.Extreme;
import agro.weather.climate.ClimateNormals;
import java.awt.Color;
import java.util.ArrayList;

/** One extreme of a season over its normals. */
final class ClimatePlot {

  private static final int HEIGHT = 250;
  private static final int AXIS_HEIGHT = 32;
  private static final int LEFT_ROOM = 62;

  private final ClimateNormals normals;
  private final DailyTemperatures season;
  private final Extreme extreme;
  private final double start;
  private double high;
  private final ChartPanel panel;

  ClimatePlot(ClimateNormals normals, DailyTemperatures season, Extreme extreme, boolean withDays) {
    this.normals = normals;
    this.season = season;
    this.extreme = extreme;
    start = CalendarAxis.at(season.firstDay());
    panel =
        new ChartPanel(
            HEIGHT, withDays ? AXIS_HEIGHT : 0, FigureWords.sentence(extreme.words()) + " (°C)");
    panel.leftRoom(LEFT_ROOM);
    ranges();
    var span = new CalendarAxis.Span(season.firstDay(), season.lastDay().plusDays(1));
    bands();
    CalendarAxis.rule(panel, span, panel.yLow(), high);
    if (withDays) {
      CalendarAxis.label(panel, span, panel.yLow());
    }
    panel.level(panel.yLow(), FigureLook.QUIET_INK, FigureLook.solid(1));
    lines();
    if (!withDays) {
      key();
    }
  }

  ChartPanel panel() {
    return panel;
  }

  private void ranges() {
    double low = Double.POSITIVE_INFINITY;
    high = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < season.size(); i++) {
      for (double value : new double[] {edge(i, -1), edge(i, 1), ofSeason(i)}) {
        if (!Double.isNaN(value)) {
          low = Math.min(low, value);
          high = Math.max(high, value);
        }
      }
    }
    if (low > high) {
      low = 0;
      high = 10;
    }
    low = Math.floor(low - 1);
    high = high + 1;
    panel.ranges(start, start + season.size(), low, high + 0.16 * (high - low));
  }

  private double edge(int index, int side) {
    var day = season.day(index);
    return normals.normalCelsius(extreme, day)
        + side * ClimateFigure.EIGHT_IN_TEN * normals.spreadCelsius(extreme, day);
  }

  private double ofSeason(int index) {
    return extreme.of(season, season.day(index));
  }

  /** One band for each run of days that have normals. */
  private void bands() {
    int i = 0;
    while (i < season.size()) {
      int end = i;
      while (end < season.size() && normals.knows(season.day(end))) {
        end++;
      }
      if (end > i) {
        var x = new double[end - i];
        var lower = new double[end - i];
        var upper = new double[end - i];
        for (int k = i; k < end; k++) {
          x[k - i] = start + k + 0.5;
          lower[k - i] = edge(k, -1);
          upper[k - i] = edge(k, 1);
        }
        panel.band(x, lower, upper, FigureLook.PALE_BLUE);
      }
      i = Math.max(end, i + 1);
    }
  }

  private void lines() {
    int size = season.size();
    var x = new double[size];
    var usual = new double[size];
    var observed = new double[size];
    var other = new double[size];
    for (int i = 0; i < size; i++) {
      x[i] = start + i + 0.5;
      usual[i] = normals.normalCelsius(extreme, season.day(i));
      boolean own = isOwn(i);
      observed[i] = own ? ofSeason(i) : Double.NaN;
      boolean beside = (i > 0 && !isOwn(i - 1)) || (i + 1 < size && !isOwn(i + 1));
      other[i] = own && !beside ? Double.NaN : ofSeason(i);
    }
    panel.curve(x, usual, FigureLook.BLUE, FigureLook.solid(2));
    panel.curve(x, other, FigureLook.INK, FigureLook.dotted(1.3));
    panel.curve(x, observed, FigureLook.INK, FigureLook.solid(1.3));
  }

  private boolean isOwn(int index) {
    var origin = season.originAt(index);
    return origin == DayOrigin.OBSERVED || origin == DayOrigin.PARTLY_FILLED;
  }

  private void key() {
    double width = season.size();
    double y = high + 0.08 * (high - panel.yLow());
    double half = 0.035 * (high - panel.yLow());
    double x = start + 0.01 * width;
    panel.box(x, x + 0.04 * width, y - half, y + half, FigureLook.PALE_BLUE);
    line(x, y, width, FigureLook.BLUE, 2);
    panel.words(
        "usual, 8 days in 10", x + 0.04 * width, y, Side.RIGHT, FigureLook.SMALL, FigureLook.INK);
    if (season.missingDays().size() < season.size()) {
      line(x + 0.25 * width, y, width, FigureLook.INK, 1.3);
      panel.words(seasonWords(), x + 0.29 * width, y, Side.RIGHT, FigureLook.SMALL, FigureLook.INK);
    }
  }

  private void line(double x, double y, double width, Color colour, double stroke) {
    panel.curve(
        new double[] {x, x + 0.04 * width}, new double[] {y, y}, colour, FigureLook.solid(stroke));
  }

  private String seasonWords() {
    var words = new ArrayList<String>();
    words.add("this season");
    for (int i = 0; i < season.size(); i++) {
      if (!isOwn(i) && season.originAt(i) != DayOrigin.MISSING) {
        words.add("dotted where filled in or forecast");
        break;
      }
    }
    return String.join(", ", words);
  }
}
