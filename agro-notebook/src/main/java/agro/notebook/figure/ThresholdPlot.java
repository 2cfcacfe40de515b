package agro.notebook.figure;

import agro.development.Reached;
import agro.development.ThresholdSensitivity;
import agro.notebook.figure.ChartPanel.Side;
import agro.units.Numbers;
import java.awt.Color;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;

/** Dates by lower threshold: with the requirement kept, and moved with the threshold. */
final class ThresholdPlot {

  private static final int HEIGHT = 360;
  private static final int AXIS_HEIGHT = 46;
  private static final int MOST_DAY_TICKS = 12;
  private static final int[] DAY_STEPS = {1, 2, 5, 10, 20, 30, 60};

  private final ThresholdSensitivity table;
  private final double first;
  private final double last;

  ThresholdPlot(ThresholdSensitivity table) {
    this.table = table;
    var dates =
        table.rows().stream()
            .flatMap(line -> Stream.of(line.alone(), line.withRequirement()))
            .flatMap(Optional::stream)
            .mapToDouble(ThresholdPlot::at)
            .sorted()
            .toArray();
    var from = dates.length == 0 ? 0 : dates[0];
    var to = dates.length == 0 ? 1 : dates[dates.length - 1];
    var room = Math.max(1, 0.14 * (to - from));
    first = from - room;
    last = to + room;
  }

  boolean isEmpty() {
    return table.rows().stream()
        .allMatch(line -> line.alone().isEmpty() && line.withRequirement().isEmpty());
  }

  private static double at(Reached reached) {
    return CalendarAxis.at(reached.day()) + reached.fractionOfDay();
  }

  ChartPanel panel() {
    var rows = table.rows();
    var lowest = rows.get(0).lower().celsius();
    var highest = rows.get(rows.size() - 1).lower().celsius();
    var room = Math.max(0.25, 0.12 * (highest - lowest));
    var panel = new ChartPanel(HEIGHT, AXIS_HEIGHT, "Lower threshold (°C)");
    panel.ranges(first, last, lowest - room, highest + room);
    days(panel);
    panel.level(
        table.model().thresholds().lower().celsius(),
        FigureLook.MIDDLE_GREY,
        FigureLook.dashed(1.5));
    panel.words(
        "chosen, " + table.model().thresholds().lower(),
        first,
        table.model().thresholds().lower().celsius(),
        Side.ABOVE_RIGHT,
        FigureLook.SMALL,
        FigureLook.QUIET_INK);
    draw(panel, ThresholdSensitivity.Line::alone, FigureLook.VERMILION, false);
    draw(panel, ThresholdSensitivity.Line::withRequirement, FigureLook.BLUE, true);
    return panel;
  }

  private void days(ChartPanel panel) {
    var span = last - first;
    var step = DAY_STEPS[DAY_STEPS.length - 1];
    for (var candidate : DAY_STEPS) {
      if (span / candidate <= MOST_DAY_TICKS) {
        step = candidate;
        break;
      }
    }
    panel.level(panel.yLow(), FigureLook.QUIET_INK, FigureLook.solid(1));
    for (var day = LocalDate.ofEpochDay((long) Math.ceil(first));
        CalendarAxis.at(day) <= last;
        day = day.plusDays(1)) {
      if (Math.floorMod(day.toEpochDay(), step) == 0) {
        panel.upright(CalendarAxis.at(day), FigureLook.GRID, FigureLook.solid(1));
        panel.words(
            FigureWords.day(day),
            CalendarAxis.at(day),
            panel.yLow(),
            Side.BELOW,
            FigureLook.SMALL,
            FigureLook.INK);
      }
    }
    panel.words(
        "Day on which the requirement is reached",
        (first + last) / 2,
        panel.yLow(),
        Side.FAR_BELOW,
        FigureLook.TEXT,
        FigureLook.INK);
  }

  private void draw(
      ChartPanel panel,
      Function<ThresholdSensitivity.Line, Optional<Reached>> date,
      Color colour,
      boolean together) {
    var rows = table.rows();
    var x = new double[rows.size()];
    var y = new double[rows.size()];
    for (var i = 0; i < rows.size(); i++) {
      var reached = date.apply(rows.get(i));
      x[i] = reached.map(ThresholdPlot::at).orElse(Double.NaN);
      y[i] = reached.isPresent() ? rows.get(i).lower().celsius() : Double.NaN;
    }
    panel.curve(x, y, colour, together ? FigureLook.dashed(2.5) : FigureLook.solid(2.5));
    for (var i = 0; i < x.length; i++) {
      if (!Double.isNaN(y[i])) {
        panel.mark(x[i], y[i], colour, together ? FigureMark.BOUND : FigureMark.OBSERVATION);
      }
    }
    name(panel, x, y, colour, together);
  }

  /** The name stands beside one end of its line, each line at its own end. */
  private void name(ChartPanel panel, double[] x, double[] y, Color colour, boolean together) {
    var words =
        together
            ? "K moved with the threshold"
            : "K kept at " + Numbers.plain(table.requirement().degreeDaysC()) + " °C·d";
    for (var place : together ? new int[] {0, 1} : new int[] {x.length - 1, x.length - 2}) {
      if (place >= 0 && place < x.length && !Double.isNaN(y[place])) {
        panel.words(
            words, x[place], y[place], together ? Side.BELOW : Side.ABOVE, FigureLook.BOLD, colour);
        return;
      }
    }
  }

  static List<ThresholdSensitivity.Line> ends(ThresholdSensitivity table) {
    return List.of(table.rows().get(0), table.rows().get(table.rows().size() - 1));
  }
}
