package agro.notebook.figure;

import agro.generation.FlightDay;
import agro.generation.IntervalEstimate;
import agro.generation.ThresholdOutcome;
import agro.generation.ThresholdPoint;
import agro.notebook.figure.ChartPanel.Side;
import java.awt.Color;
import java.util.List;
import java.util.function.Consumer;
import java.util.stream.DoubleStream;

/** Two panels over the lower threshold: intervals above, shifts of the flights below. */
final class FlightThresholdPlot {

  private static final int TOP_HEIGHT = 250;
  private static final int BOTTOM_HEIGHT = 230;
  private static final int AXIS_HEIGHT = 46;
  private static final int GAP = 10;
  private static final int LEFT_ROOM = 46;
  private static final double LEAST_DAYS = 1.5;
  private static final Color[] COLOURS = {
    FigureLook.INK, FigureLook.BLUE, FigureLook.VERMILION, FigureLook.DARK_GREY
  };

  private final List<ThresholdOutcome> outcomes;
  private final ThresholdOutcome base;
  private final double left;
  private final double right;

  FlightThresholdPlot(List<ThresholdOutcome> outcomes, ThresholdOutcome base) {
    this.outcomes = List.copyOf(outcomes);
    this.base = base;
    var span = lowerC(outcomes.get(outcomes.size() - 1)) - lowerC(outcomes.get(0));
    var room = Math.max(0.3, 0.12 * span);
    left = lowerC(outcomes.get(0)) - room;
    right = lowerC(outcomes.get(outcomes.size() - 1)) + 1.6 * room;
  }

  private static double lowerC(ThresholdOutcome outcome) {
    return outcome.lower().celsius();
  }

  /** The 90 % interval over the seasons at each threshold. */
  Consumer<ChartPanel> bars() {
    return panel -> {
      for (var outcome : outcomes) {
        var half = halfWidth(outcome);
        var k = outcome.workingInterval().degreeDaysC();
        panel.stroke(
            lowerC(outcome),
            k - half,
            lowerC(outcome),
            k + half,
            FigureLook.MIDDLE_GREY,
            FigureLook.solid(6));
      }
      line(panel);
    };
  }

  private static double halfWidth(ThresholdOutcome outcome) {
    return outcome
        .interval()
        .filter(k -> k.seasons() > 1)
        .map((IntervalEstimate k) -> k.halfWidthOfMeanC(0.9))
        .orElse(0.0);
  }

  /** The region of threshold and interval. */
  Consumer<ChartPanel> region(List<ThresholdPoint> points) {
    return panel -> {
      var inside = points.stream().filter(ThresholdPoint::inRegion).toList();
      var x = inside.stream().mapToDouble(ThresholdPoint::lowerC).toArray();
      var low = inside.stream().mapToDouble(p -> p.intervalC() - p.halfWidthC()).toArray();
      var high = inside.stream().mapToDouble(p -> p.intervalC() + p.halfWidthC()).toArray();
      if (x.length > 1) {
        panel.band(x, low, high, FigureLook.PALE_BLUE);
      }
      var all = points.stream().mapToDouble(ThresholdPoint::lowerC).toArray();
      var k = points.stream().mapToDouble(ThresholdPoint::intervalC).toArray();
      panel.curve(all, k, FigureLook.BLUE, FigureLook.solid(2));
      for (var point : inside) {
        panel.mark(point.lowerC(), point.intervalC(), FigureLook.INK, FigureMark.OBSERVATION);
      }
    };
  }

  private void line(ChartPanel panel) {
    var x = outcomes.stream().mapToDouble(FlightThresholdPlot::lowerC).toArray();
    var k = outcomes.stream().mapToDouble(each -> each.workingInterval().degreeDaysC()).toArray();
    panel.curve(x, k, FigureLook.BLUE, FigureLook.solid(2));
    for (var i = 0; i < x.length; i++) {
      panel.mark(x[i], k[i], FigureLook.INK, FigureMark.OBSERVATION);
      panel.words(
          FigureWords.degreeDays(k[i]),
          x[i],
          k[i],
          Side.ABOVE_RIGHT,
          FigureLook.TEXT,
          FigureLook.INK);
    }
  }

  ChartPanel intervals(Consumer<ChartPanel> content) {
    var ends =
        outcomes.stream()
            .flatMapToDouble(
                each ->
                    DoubleStream.of(
                        each.workingInterval().degreeDaysC() - halfWidth(each),
                        each.workingInterval().degreeDaysC() + halfWidth(each),
                        each.pooled().degreeDaysC()))
            .summaryStatistics();
    var room = 0.1 * Math.max(10, ends.getMax() - ends.getMin());
    var panel =
        framed(TOP_HEIGHT, GAP, "interval (°C·d)", ends.getMin() - room, ends.getMax() + room);
    content.accept(panel);
    return panel;
  }

  private ChartPanel framed(int height, int below, String title, double low, double high) {
    var panel = new ChartPanel(height, below, title);
    panel.ranges(left, right, low, high).leftRoom(LEFT_ROOM);
    NumberAxis.rule(panel, NumberAxis.step(left, right));
    panel.upright(lowerC(base), FigureLook.MIDDLE_GREY, FigureLook.dashed(1));
    return panel;
  }

  ChartPanel shifts() {
    var flights = base.days().stream().mapToInt(FlightDay::flight).max().orElse(1);
    var most = LEAST_DAYS;
    for (var g = 1; g <= flights; g++) {
      for (var outcome : outcomes) {
        most = Math.max(most, Math.abs(outcome.meanShiftDays(base, g).orElse(0)));
      }
    }
    var panel = framed(BOTTOM_HEIGHT, AXIS_HEIGHT, "shift (days)", -1.3 * most, 1.3 * most);
    NumberAxis.label(panel, NumberAxis.step(left, right), "Lower threshold (°C)");
    var last = lowerC(outcomes.get(outcomes.size() - 1)); // the names behind it stay clear
    panel.stroke(left, 0, last, 0, FigureLook.QUIET_INK, FigureLook.solid(1));
    for (var g = 1; g <= flights; g++) {
      shift(panel, g, 2.6 * most);
    }
    return panel;
  }

  /** Names stand at the ends of the lines, moved apart where lines end together. */
  private void shift(ChartPanel panel, int flight, double height) {
    var colour = COLOURS[(flight - 1) % COLOURS.length];
    var x = outcomes.stream().mapToDouble(FlightThresholdPlot::lowerC).toArray();
    var y =
        outcomes.stream()
            .mapToDouble(each -> each.meanShiftDays(base, flight).orElse(Double.NaN))
            .toArray();
    panel.curve(x, y, colour, flight % 2 == 0 ? FigureLook.dashed(2) : FigureLook.solid(flight));
    for (var i = 0; i < x.length; i++) {
      if (Double.isFinite(y[i])) {
        panel.mark(x[i], y[i], colour, FigureMark.OBSERVATION);
      }
    }
    var end = y[y.length - 1];
    if (Double.isFinite(end)) {
      var place = end;
      for (var other = 1; other < flight; other++) {
        var there = outcomes.get(outcomes.size() - 1).meanShiftDays(base, other).orElse(Double.NaN);
        if (Math.abs(there - place) < 0.08 * height) {
          place = there + (end >= there ? 0.08 : -0.08) * height;
        }
      }
      panel.words("flight " + flight, x[x.length - 1], place, Side.RIGHT, FigureLook.TEXT, colour);
    }
  }
}
