package agro.notebook.figure;

import agro.notebook.figure.ChartPanel.Side;
import agro.report.InputProblem;
import agro.weather.gap.FilledReadings;
import agro.working.Cell;
import agro.working.ResultTable;
import agro.working.ResultTable.Column;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;

/** Lays filled readings out over a few days. */
final class ReadingGapPlot {

  private static final int HEIGHT = 360;
  private static final int AXIS_HEIGHT = 32;
  private static final double SCORE = 1.645;
  private static final double DAY_SECONDS = 86_400;
  private static final int MOST_DAY_WORDS = 14;

  private final FilledReadings filled;
  private final LocalDate from;
  private final LocalDate to;
  private final int first;
  private final int end;
  private final ChartPanel panel = new ChartPanel(HEIGHT, AXIS_HEIGHT, "Temperature (°C)");

  ReadingGapPlot(FilledReadings filled, LocalDate from, LocalDate to) {
    this.filled = filled;
    this.from = from;
    this.to = to;
    var readings = filled.readings();
    int start = 0;
    while (start < readings.size() && readings.day(start).isBefore(from)) {
      start++;
    }
    int after = start;
    while (after < readings.size() && !readings.day(after).isAfter(to)) {
      after++;
    }
    if (after == start) {
      throw InputProblem.of("readings of " + readings.place() + " from " + from + " to " + to)
          .expected("at least one reading in these days")
          .because("there is nothing to draw")
          .mend("choose days of the log, in order");
    }
    first = start;
    end = after;
  }

  int observed() {
    return end - first - filled();
  }

  int filled() {
    int count = 0;
    for (int i = first; i < end; i++) {
      count += filled.isFilled(i) ? 1 : 0;
    }
    return count;
  }

  double meanError() {
    double sum = 0;
    for (int i = first; i < end; i++) {
      sum += filled.standardErrorCelsius(i);
    }
    return filled() == 0 ? 0 : sum / filled();
  }

  /** Local time of a reading on the axis of days. */
  private double at(int index) {
    var readings = filled.readings();
    return (readings.epochSecond(index) + readings.dayOffset().getTotalSeconds()) / DAY_SECONDS;
  }

  ChartPanel panel() {
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    for (int i = first; i < end; i++) {
      double reach = SCORE * filled.standardErrorCelsius(i);
      low = Math.min(low, filled.readings().celsius(i) - reach);
      high = Math.max(high, filled.readings().celsius(i) + reach);
    }
    panel.ranges(
        CalendarAxis.at(from),
        CalendarAxis.at(to) + 1,
        Math.floor(low - 1),
        high + 0.15 * (high - low + 1));
    calendar();
    bands();
    lines();
    key(high);
    return panel;
  }

  private void calendar() {
    long days = to.toEpochDay() - from.toEpochDay() + 1;
    long step = Math.max(1, (days + MOST_DAY_WORDS - 1) / MOST_DAY_WORDS);
    for (long i = 0; i <= days; i += step) {
      var day = from.plusDays(i);
      panel.upright(CalendarAxis.at(day), FigureLook.GRID, FigureLook.solid(1));
      if (i < days) {
        panel.words(
            FigureWords.day(day),
            CalendarAxis.at(day),
            panel.yLow(),
            Side.BELOW,
            FigureLook.SMALL,
            FigureLook.INK);
      }
    }
    panel.level(panel.yLow(), FigureLook.QUIET_INK, FigureLook.solid(1));
  }

  /** One band for each run of filled readings, from the reading before to the one after. */
  private void bands() {
    int i = first;
    while (i < end) {
      int run = i;
      while (run < end && filled.isFilled(run)) {
        run++;
      }
      if (run > i) {
        band(Math.max(first, i - 1), Math.min(end - 1, run));
      }
      i = Math.max(run, i + 1);
    }
  }

  private void band(int from, int last) {
    int size = last - from + 1;
    var x = new double[size];
    var lower = new double[size];
    var upper = new double[size];
    for (int k = 0; k < size; k++) {
      double reach = SCORE * filled.standardErrorCelsius(from + k);
      x[k] = at(from + k);
      lower[k] = filled.readings().celsius(from + k) - reach;
      upper[k] = filled.readings().celsius(from + k) + reach;
    }
    panel.band(x, lower, upper, FigureLook.PALE_BLUE);
  }

  private void lines() {
    var x = new ArrayList<Double>();
    var seen = new ArrayList<Double>();
    var guessed = new ArrayList<Double>();
    double step = filled.observed().medianStepSeconds() / DAY_SECONDS;
    for (int i = first; i < end; i++) {
      if (i > first && at(i) - at(i - 1) > 1.5 * step) {
        x.add(at(i - 1));
        seen.add(Double.NaN);
        guessed.add(Double.NaN);
      }
      boolean beside =
          (i > first && filled.isFilled(i - 1)) || (i + 1 < end && filled.isFilled(i + 1));
      double value = filled.readings().celsius(i);
      x.add(at(i));
      seen.add(filled.isFilled(i) ? Double.NaN : value);
      guessed.add(filled.isFilled(i) || beside ? value : Double.NaN);
    }
    panel.curve(array(x), array(guessed), FigureLook.BLUE, FigureLook.dashed(2));
    panel.curve(array(x), array(seen), FigureLook.INK, FigureLook.solid(1.5));
  }

  private void key(double high) {
    double width = panel.xHigh() - panel.xLow();
    double y = high + 0.09 * (high - panel.yLow());
    double x = panel.xLow() + 0.01 * width;
    line(x, x + 0.04 * width, y, true);
    panel.words("observed", x + 0.04 * width, y, Side.RIGHT, FigureLook.SMALL, FigureLook.INK);
    double half = 0.025 * (high - panel.yLow());
    panel.box(x + 0.16 * width, x + 0.2 * width, y - half, y + half, FigureLook.PALE_BLUE);
    line(x + 0.16 * width, x + 0.2 * width, y, false);
    panel.words(
        "filled in, 90 % interval",
        x + 0.2 * width, y, Side.RIGHT, FigureLook.SMALL, FigureLook.INK);
  }

  private void line(double fromX, double toX, double y, boolean observed) {
    panel.curve(
        new double[] {fromX, toX},
        new double[] {y, y},
        observed ? FigureLook.INK : FigureLook.BLUE,
        observed ? FigureLook.solid(1.5) : FigureLook.dashed(2));
  }

  private static double[] array(List<Double> values) {
    return values.stream().mapToDouble(Double::doubleValue).toArray();
  }

  ResultTable data() {
    var rows = new ArrayList<List<Cell>>();
    var readings = filled.readings();
    for (int i = first; i < end; i++) {
      var local = LocalDateTime.ofEpochSecond(readings.epochSecond(i), 0, readings.dayOffset());
      rows.add(
          List.of(
              Cell.text(local.toString().replace('T', ' ')),
              Cell.number(readings.celsius(i), 1),
              Cell.text(filled.isFilled(i) ? "filled in" : "observed"),
              Cell.number(filled.standardErrorCelsius(i), 1)));
    }
    return ResultTable.of(
        "Readings, observed and filled in",
        List.of(
            Column.of("Time at " + readings.dayOffset()),
            Column.of("Temperature", "°C"),
            Column.of("From"),
            Column.of("Standard error", "°C")),
        rows);
  }
}
