package agro.notebook.figure;

import agro.course.practical.CalibrationBenchmark;
import agro.course.practical.ClassCalibration;
import agro.course.practical.GroupFinding;
import agro.course.practical.GroupVerdict;
import agro.notebook.figure.ChartPanel.Side;
import agro.units.Numbers;
import agro.units.Unit;
import agro.units.VolumePerArea;
import agro.working.Wording;
import java.awt.BasicStroke;
import java.awt.Color;
import java.util.List;

/** The marks of the groups beside mean, target and tolerance. */
final class ClassCalibrationPlot {

  private static final int HEIGHT = 380;
  private static final int AXIS_HEIGHT = 46;

  /** Names of groups that find room below the axis. */
  private static final int MOST_NAMES = 32;

  /** A group beyond so many times the compared volume is drawn at the edge. */
  private static final double FAR = 2.5;

  /** Room for labels above and below the marks, and for the key on top, as shares of the axis. */
  private static final double ROOM = 0.12;

  private static final double KEY_ROOM = 0.17;

  /** Room for the numbers of the axis, as a share of it. */
  private static final double LEFT_ROOM = 0.05;

  /** Room between a mark and its words, as a share of the axis. */
  private static final double LABEL_GAP = 0.004;

  /** Letters of a group's name that find room. */
  private static final int MOST_LETTERS = 12;

  private final ClassCalibration result;
  private final Wording words;
  private final Unit<VolumePerArea> unit;
  private final List<GroupFinding> groups;
  private double low;
  private double high;

  ClassCalibrationPlot(ClassCalibration result, Wording words, Unit<VolumePerArea> unit) {
    this.result = result;
    this.words = words;
    this.unit = unit;
    this.groups = result.findings();
  }

  static String volume(Wording words, Unit<VolumePerArea> unit, VolumePerArea volume) {
    return words.quantity(Numbers.significant(volume.in(unit), 4)) + " " + unit.symbol();
  }

  static String departure(Wording words, double share) {
    return (share < 0 ? "\u2212" : "+") + words.number(100 * Math.abs(share), 1) + "\u00a0%";
  }

  ChartPanel panel() {
    range();
    var panel =
        new ChartPanel(HEIGHT, AXIS_HEIGHT, words.say("figure.class.axis", "unit", unit.symbol()));
    double end = groups.size() + 0.5;
    double room = (high - low) * ROOM;
    double top = high + room + KEY_ROOM * (high - low);
    panel
        .ranges(0.5 - LEFT_ROOM * groups.size(), end, Math.max(0, low - room), top)
        .withoutYTicks();
    levels(panel, end, high + room);
    for (int i = 0; i < groups.size(); i++) {
      ground(panel, groups.get(i), i + 1.0);
    }
    mean(panel, end);
    for (int i = 0; i < groups.size(); i++) {
      group(panel, i);
    }
    key(panel, end);
    panel.stroke(0.5, panel.yLow(), end, panel.yLow(), FigureLook.QUIET_INK, FigureLook.solid(1));
    return panel.words(
        FigureWords.sentence(words.say("column.group")),
        0.5 * (end + 0.5),
        panel.yLow(),
        Side.FAR_BELOW,
        FigureLook.TEXT,
        FigureLook.INK);
  }

  /** Level lines with the decimal sign of the language; none behind the key. */
  private void levels(ChartPanel panel, double end, double top) {
    double step = NumberAxis.step(panel.yLow(), top);
    int decimals = (int) Math.max(0, Math.ceil(-Math.log10(step) - 1e-9));
    for (double y = step * Math.ceil(panel.yLow() / step); y <= top; y += step) {
      panel.stroke(0.5, y, end, y, FigureLook.GRID, FigureLook.solid(1));
      panel.words(words.number(y, decimals), 0.5, y, Side.LEFT, FigureLook.SMALL, FigureLook.INK);
    }
  }

  private double share() {
    return result.rules().tolerance().share();
  }

  private double place(GroupFinding one) {
    double compared = one.compared().in(unit);
    return Math.min(FAR * compared, Math.max(compared / FAR, one.volume().in(unit)));
  }

  private void range() {
    low = Double.POSITIVE_INFINITY;
    high = 0;
    for (var one : groups) {
      double compared = one.compared().in(unit);
      low = Math.min(low, Math.min(place(one), compared * (1 - share())));
      high = Math.max(high, Math.max(place(one), compared * (1 + share())));
    }
  }

  private void ground(ChartPanel panel, GroupFinding one, double x) {
    double compared = one.compared().in(unit);
    panel.box(
        x - 0.5, x + 0.5, compared * (1 - share()), compared * (1 + share()), FigureLook.PALE);
    for (double edge : new double[] {1 - share(), 1 + share()}) {
      panel.curve(
          new double[] {x - 0.5, x + 0.5},
          new double[] {edge * compared, edge * compared},
          FigureLook.MIDDLE_GREY,
          FigureLook.solid(1));
    }
    if (result.benchmark() == CalibrationBenchmark.TARGET) {
      panel.curve(
          new double[] {x - 0.5, x + 0.5},
          new double[] {compared, compared},
          FigureLook.INK,
          FigureLook.solid(1));
    }
  }

  private void mean(ChartPanel panel, double end) {
    double mean = result.all().mean().in(unit);
    result
        .all()
        .interval()
        .ifPresent(
            range ->
                panel.box(
                    0.5,
                    end,
                    Math.max(panel.yLow(), range.low().in(unit)),
                    Math.min(panel.yHigh(), range.high().in(unit)),
                    FigureLook.PALE_BLUE));
    panel.curve(
        new double[] {0.5, end}, new double[] {mean, mean}, FigureLook.BLUE, FigureLook.dashed(2));
  }

  private void group(ChartPanel panel, int index) {
    var one = groups.get(index);
    double x = index + 1.0;
    double y = place(one);
    boolean off = one.isOff();
    var colour = off ? FigureLook.VERMILION : FigureLook.INK;
    boolean beyond = y != one.volume().in(unit);
    var half = one.relativeHalfWidth(result.rules().confidence());
    if (half.isPresent() && !beyond) {
      double spread = half.getAsDouble() * y;
      panel.curve(
          new double[] {x, x},
          new double[] {y - spread, y + spread},
          colour,
          FigureLook.solid(1.5));
    }
    panel.mark(x, y, colour, mark(one));
    if (index % (1 + (groups.size() - 1) / MOST_NAMES) == 0) {
      panel.words(
          shortened(one.group()), x, panel.yLow(), Side.BELOW, FigureLook.SMALL, FigureLook.INK);
    }
    if (off) {
      label(panel, one, x, y, beyond);
    }
  }

  private static FigureMark mark(GroupFinding one) {
    if (one.outlier()) {
      return FigureMark.SQUARE;
    }
    return one.verdict() == GroupVerdict.WITHIN ? FigureMark.DISC : FigureMark.TRIANGLE;
  }

  private void label(ChartPanel panel, GroupFinding one, double x, double y, boolean beyond) {
    var text = shortened(one.group()) + ": " + departure(words, one.departure());
    boolean last = x > 0.85 * groups.size();
    panel.words(
        beyond ? text + " (" + words.say("figure.class.other") + ")" : text,
        x + (last ? -LABEL_GAP : LABEL_GAP) * groups.size(),
        y,
        last ? Side.LEFT : Side.RIGHT,
        FigureLook.BOLD,
        FigureLook.VERMILION);
  }

  private static String shortened(String name) {
    return name.length() <= MOST_LETTERS
        ? name
        : name.substring(0, MOST_LETTERS - 1).stripTrailing() + "\u2026";
  }

  /** The lines and bands with their names, above the marks. */
  private void key(ChartPanel panel, double end) {
    double y = panel.yHigh() - 0.4 * KEY_ROOM * (high - low);
    double width = end - 0.5;
    var all = result.all();
    var mean = volume(words, unit, all.mean());
    entry(
        panel,
        0.5 + 0.01 * width,
        y,
        words.say("figure.class.mean", "mean", mean)
            + all.interval()
                .map(
                    range ->
                        " ("
                            + words.quantity(Numbers.significant(100 * all.confidence(), 3))
                            + "\u00a0%: "
                            + words.quantity(Numbers.significant(range.low().in(unit), 4))
                            + " \u2013 "
                            + volume(words, unit, range.high())
                            + ")")
                .orElse(""),
        FigureLook.BLUE,
        FigureLook.dashed(2));
    if (result.benchmark() == CalibrationBenchmark.TARGET) {
      var target = result.commonTarget().map(one -> volume(words, unit, one)).orElse("");
      entry(
          panel,
          0.5 + 0.66 * width,
          y,
          words.say("figure.class.target", "target", target).strip(),
          FigureLook.INK,
          FigureLook.solid(1));
    }
  }

  private void entry(
      ChartPanel panel, double x, double y, String text, Color colour, BasicStroke stroke) {
    double length = 0.04 * groups.size();
    panel.curve(new double[] {x, x + length}, new double[] {y, y}, colour, stroke);
    panel.words(text, x + length, y, Side.RIGHT, FigureLook.BOLD, colour);
  }
}
