package agro.notebook.figure;

import agro.notebook.figure.ChartPanel.Side;
import agro.units.Numbers;
import agro.weather.quality.QualityFlag;
import java.awt.Color;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;

/** Lays a log and its flags out over one axis of time. */
final class QualityPlot {

  private static final int LOG_HEIGHT = 400;

  /** A chart lower than this misplaces its axis. */
  private static final int LEAST_ROWS = 3;

  private static final int ROW_HEIGHT = 26;
  private static final int AXIS_HEIGHT = 34;
  private static final int LEFT_ROOM = 190;
  private static final int MOST_NUMBERS = 12;
  private static final double STEP_BREAK = 6;
  private static final double NARROWEST_SPAN = 0.003;
  private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMM", Locale.ENGLISH);
  private static final DateTimeFormatter MONTH = DateTimeFormatter.ofPattern("MMM", Locale.ENGLISH);

  private final FlaggedLog log;
  private final double start;
  private final double end;

  QualityPlot(FlaggedLog log) {
    this.log = log;
    start = log.firstDay().toEpochDay();
    end = log.lastDay().toEpochDay() + 1.0;
  }

  ChartPanel logPanel() {
    var panel = new ChartPanel(LOG_HEIGHT, 0, "").leftRoom(LEFT_ROOM);
    double low = log.extreme(false);
    double high = log.extreme(true);
    double room = Math.max(1, 0.08 * (high - low));
    panel.ranges(start, end, low - room, high + room).withoutYTicks();
    ticks(panel, false);
    degrees(panel, low - room, high + room);
    for (var flag : log.flags().all()) {
      if (!FlaggedLog.isPoint(flag)) {
        span(panel, flag, low - room, high + room, FigureLook.PALE_BLUE);
      }
    }
    if (log.isDaily()) {
      line(panel, log.low(), FigureLook.MIDDLE_GREY);
    }
    line(panel, log.high(), FigureLook.INK);
    rings(panel, low - 0.6 * room, high + 0.6 * room);
    return panel;
  }

  ChartPanel rulePanel() {
    var rules = log.rules();
    int rows = Math.max(LEAST_ROWS, rules.size());
    var panel = new ChartPanel(ROW_HEIGHT * rows + 10, AXIS_HEIGHT, "").leftRoom(LEFT_ROOM);
    panel.ranges(start, end, 0, rows).withoutYTicks();
    ticks(panel, true);
    panel.level(0, FigureLook.QUIET_INK, FigureLook.solid(1));
    if (rules.isEmpty()) {
      return panel.words(
          "No value was flagged",
          start,
          0.5 * LEAST_ROWS,
          Side.RIGHT,
          FigureLook.TEXT,
          FigureLook.INK);
    }
    for (int row = 0; row < rules.size(); row++) {
      double middle = rows - row - 0.5;
      var flags = log.flags().of(rules.get(row));
      panel.words(
          rules.get(row).words() + ": " + flags.size(),
          start,
          middle,
          Side.LEFT,
          FigureLook.SMALL,
          FigureLook.INK);
      for (var flag : flags) {
        span(panel, flag, middle - 0.32, middle + 0.32, FigureLook.VERMILION);
      }
    }
    return panel;
  }

  /** Numbers beside the plot, since the room on the left is that of the names below. */
  private void degrees(ChartPanel panel, double low, double high) {
    panel.words(
        "Temperature (°C)",
        start,
        high - 0.02 * (high - low),
        Side.LEFT,
        FigureLook.SMALL,
        FigureLook.QUIET_INK);
    double step = NumberAxis.step(low, high) * 2;
    for (double tick = Math.ceil(low / step) * step;
        tick <= high - 0.05 * (high - low);
        tick += step) {
      panel.level(tick, FigureLook.GRID, FigureLook.solid(1));
      panel.words(
          Numbers.plain(Math.rint(10 * tick) / 10),
          start,
          tick,
          Side.LEFT,
          FigureLook.SMALL,
          FigureLook.INK);
    }
  }

  private void span(ChartPanel panel, QualityFlag flag, double low, double high, Color colour) {
    double from = log.from(flag);
    double to = Math.max(log.to(flag), from + NARROWEST_SPAN * (end - start));
    panel.box(Math.min(from, end), Math.min(to, end), low, high, colour);
  }

  /** A ring for each flag of one value; at the edge where the value is far outside. */
  private void rings(ChartPanel panel, double lowest, double highest) {
    var drawn = new HashSet<Integer>();
    for (var flag : log.flags().all()) {
      if (FlaggedLog.isPoint(flag) && drawn.add(flag.first())) {
        for (double celsius : log.heights(flag)) {
          double at = log.x().get(flag.first());
          double height = Math.min(highest, Math.max(lowest, celsius));
          panel.mark(at, height, FigureLook.VERMILION, FigureMark.BOUND);
          if (height != celsius && drawn.size() <= MOST_NUMBERS) {
            panel.words(
                Numbers.plain(celsius) + " °C",
                at,
                height,
                at > 0.9 * end + 0.1 * start ? Side.LEFT : Side.RIGHT,
                FigureLook.SMALL,
                FigureLook.VERMILION);
          }
        }
      }
    }
  }

  /** The log as a line, broken where readings are missing. */
  private void line(ChartPanel panel, List<Double> celsius, Color colour) {
    var x = new ArrayList<Double>();
    var y = new ArrayList<Double>();
    double gap = STEP_BREAK * step();
    for (int i = 0; i < celsius.size(); i++) {
      if (i > 0 && log.x().get(i) - log.x().get(i - 1) > gap) {
        x.add(log.x().get(i));
        y.add(Double.NaN);
      }
      x.add(log.x().get(i));
      y.add(celsius.get(i));
    }
    var allX = x.stream().mapToDouble(Double::doubleValue).toArray();
    var allY = y.stream().mapToDouble(Double::doubleValue).toArray();
    int[] kept = ThinnedLines.kept(allX, allY, 2 * FigureLook.CHART_WIDTH);
    var thinX = new double[kept.length];
    var thinY = new double[kept.length];
    for (int i = 0; i < kept.length; i++) {
      thinX[i] = allX[kept[i]];
      thinY[i] = allY[kept[i]];
    }
    panel.curve(thinX, thinY, colour, FigureLook.solid(1.2));
  }

  private double step() {
    int size = log.x().size();
    var steps = new double[Math.max(1, size - 1)];
    for (int i = 1; i < size; i++) {
      steps[i - 1] = log.x().get(i) - log.x().get(i - 1);
    }
    java.util.Arrays.sort(steps);
    return steps[steps.length / 2];
  }

  private void ticks(ChartPanel panel, boolean named) {
    long days = log.lastDay().toEpochDay() - log.firstDay().toEpochDay() + 1;
    int every = days <= 16 ? 1 : days <= 50 ? 5 : 0;
    var tick = every > 0 ? log.firstDay() : log.firstDay().withDayOfMonth(1);
    int months = days <= 500 ? 1 : days <= 1500 ? 3 : days <= 7000 ? 12 : 60;
    while (!tick.isAfter(log.lastDay())) {
      boolean atStart = months < 12 || tick.getMonthValue() == 1;
      if (!tick.isBefore(log.firstDay()) && atStart) {
        double at = tick.toEpochDay();
        panel.upright(at, FigureLook.GRID, FigureLook.solid(1));
        if (named) {
          panel.words(
              name(tick, every, months, days), at, 0, Side.BELOW, FigureLook.SMALL, FigureLook.INK);
        }
      }
      tick = every > 0 ? tick.plusDays(every) : tick.plusMonths(months < 12 ? months : 1);
      while (months > 12 && tick.getYear() % 5 != 0) {
        tick = tick.plusMonths(1);
      }
    }
  }

  private static String name(LocalDate tick, int every, int months, long days) {
    if (every > 0 || days <= 330) {
      return DAY.format(tick);
    }
    return months >= 12 || tick.getMonthValue() == 1
        ? Integer.toString(tick.getYear())
        : MONTH.format(tick);
  }
}
