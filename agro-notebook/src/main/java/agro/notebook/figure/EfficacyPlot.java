package agro.notebook.figure;

import agro.notebook.figure.ChartPanel.Side;
import agro.stats.ConfidenceLimits;
import agro.trial.efficacy.EfficacyCourse;
import agro.trial.efficacy.EfficacyCourse.CoursePoint;
import agro.trial.efficacy.EfficacyLimits;
import agro.units.Numbers;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A small panel for each treatment: its efficacy by days, the others behind it as thin lines. */
final class EfficacyPlot {

  private static final int COLUMNS = 2;
  private static final int HEIGHT = 190;
  private static final int AXIS_HEIGHT = 24;
  private static final int LAST_AXIS_HEIGHT = 46;
  private static final int LEFT_ROOM = 62;
  private static final double TOP = 149;
  private static final double TITLE = 134;

  /** So far below the lowest efficacy limits are drawn; what lies lower is written. */
  private static final double ROOM_BELOW = 75;

  private final EfficacyCourse course;
  private final double bottom;
  private final double lastDay;

  EfficacyPlot(EfficacyCourse course) {
    this.course = course;
    var points =
        course.treatments().stream().flatMap(name -> course.points(name).stream()).toList();
    double lowest = 0;
    double lowestLimit = 0;
    double last = 1;
    for (var point : points) {
      lowest = Math.min(lowest, point.percent().orElse(0));
      lowestLimit = Math.min(lowestLimit, limits(point).map(ConfidenceLimits::low).orElse(0.0));
      last = Math.max(last, day(point));
    }
    bottom = 25 * Math.floor(Math.max(lowestLimit, lowest - ROOM_BELOW) / 25 - 0.3);
    lastDay = last;
  }

  static Optional<ConfidenceLimits> limits(CoursePoint point) {
    return point.limits().flatMap(EfficacyLimits::limits);
  }

  List<ChartPanel> panels() {
    var panels = new ArrayList<ChartPanel>();
    var names = course.treatments();
    for (int i = 0; i < names.size(); i++) {
      int endOfRow = (i / COLUMNS + 1) * COLUMNS - 1;
      boolean last = i >= names.size() - COLUMNS;
      panels.add(panel(names.get(i), last, endOfRow >= names.size() - COLUMNS));
    }
    return ChartPanel.inColumns(COLUMNS, panels);
  }

  private ChartPanel panel(String treatment, boolean last, boolean roomForName) {
    var panel =
        new ChartPanel(HEIGHT, roomForName ? LAST_AXIS_HEIGHT : AXIS_HEIGHT, "Efficacy (%)")
            .leftRoom(LEFT_ROOM)
            .decimals("0");
    panel.ranges(0, 1.1 * lastDay, bottom, TOP);
    days(panel, last);
    band(panel, treatment);
    panel.level(0, FigureLook.INK, FigureLook.solid(1.2));
    panel.level(100, FigureLook.MIDDLE_GREY, FigureLook.solid(1));
    for (var other : course.treatments()) {
      if (!other.equals(treatment)) {
        line(panel, other, false);
      }
    }
    line(panel, treatment, true);
    course.points(treatment).forEach(point -> point(panel, point));
    panel.words(treatment, 0, TITLE, Side.RIGHT, FigureLook.BOLD, FigureLook.INK);
    return panel;
  }

  private void days(ChartPanel panel, boolean named) {
    for (var date : course.dates().keySet()) {
      double day = (double) ChronoUnit.DAYS.between(course.treated(), date);
      panel.upright(day, FigureLook.GRID, FigureLook.solid(1));
      panel.words(Numbers.plain(day), day, bottom, Side.BELOW, FigureLook.SMALL, FigureLook.INK);
    }
    if (named) {
      panel.words(
          "Days after treatment",
          0.55 * lastDay,
          bottom,
          Side.FAR_BELOW,
          FigureLook.TEXT,
          FigureLook.INK);
    }
  }

  /** The area between the limits of running dates; a date without limits breaks it. */
  private void band(ChartPanel panel, String treatment) {
    var x = new ArrayList<Double>();
    var low = new ArrayList<Double>();
    var high = new ArrayList<Double>();
    for (var point : course.points(treatment)) {
      var limits = limits(point);
      if (limits.isPresent()) {
        x.add((double) point.daysAfter());
        low.add(Math.max(bottom, limits.get().low()));
        high.add(Math.min(TOP, limits.get().high()));
      } else {
        band(panel, x, low, high);
        x.clear();
        low.clear();
        high.clear();
      }
    }
    band(panel, x, low, high);
  }

  private static void band(ChartPanel panel, List<Double> x, List<Double> low, List<Double> high) {
    if (x.size() > 1) {
      panel.band(numbers(x), numbers(low), numbers(high), FigureLook.GRID);
    }
  }

  private void line(ChartPanel panel, String treatment, boolean chosen) {
    var points = course.points(treatment);
    panel.curve(
        points.stream().mapToDouble(EfficacyPlot::day).toArray(),
        points.stream().mapToDouble(point -> point.percent().orElse(Double.NaN)).toArray(),
        chosen ? FigureLook.INK : FigureLook.MIDDLE_GREY,
        FigureLook.solid(chosen ? 2.5 : 0.7));
  }

  private void point(ChartPanel panel, CoursePoint point) {
    double day = day(point);
    limits(point).ifPresent(limits -> interval(panel, day, limits));
    if (point.percent().isPresent()) {
      double percent = point.percent().getAsDouble();
      panel.mark(day, percent, FigureLook.INK, FigureMark.OBSERVATION);
      panel.words(
          Numbers.fixed(percent, 0),
          day,
          percent,
          Side.ABOVE_RIGHT,
          FigureLook.SMALL,
          FigureLook.INK);
    } else {
      panel.words("no value", day, 0, Side.ABOVE, FigureLook.SMALL, FigureLook.QUIET_INK);
    }
  }

  private static double day(CoursePoint point) {
    return (double) point.daysAfter();
  }

  private void interval(ChartPanel panel, double day, ConfidenceLimits limits) {
    panel.curve(
        new double[] {day, day},
        new double[] {Math.max(bottom, limits.low()), Math.min(TOP, limits.high())},
        FigureLook.DARK_GREY,
        FigureLook.solid(1.2));
    if (limits.low() < bottom) {
      panel.words(
          Double.isInfinite(limits.low())
              ? "unbounded below"
              : "to " + Numbers.fixed(limits.low(), 0),
          day,
          bottom + 12,
          day > 0.8 * lastDay ? Side.LEFT : Side.RIGHT,
          FigureLook.SMALL,
          FigureLook.DARK_GREY);
    }
  }

  private static double[] numbers(List<Double> values) {
    return values.stream().mapToDouble(Double::doubleValue).toArray();
  }
}
