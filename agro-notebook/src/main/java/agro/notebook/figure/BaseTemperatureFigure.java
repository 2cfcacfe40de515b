package agro.notebook.figure;

import agro.development.field.BaseEstimate;
import agro.development.field.BaseInterval;
import agro.development.field.BaseTemperatureFit;
import agro.notebook.figure.ChartPanel.Side;
import agro.units.Numbers;
import agro.working.Cell;
import agro.working.ResultTable;
import agro.working.ResultTable.Column;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;

/** Base temperatures from the field by several criteria: estimate and interval. */
public final class BaseTemperatureFigure {

  private static final int ROW_HEIGHT = 44;
  private static final int AXIS_HEIGHT = 46;
  private static final double LETTER_POINTS = 7.4;

  /** Limits further from the estimates than this are drawn as an arrow. */
  private static final double REACH_CELSIUS = 8;

  private BaseTemperatureFigure() {}

  /**
   * Draws the estimate and the interval by each criterion.
   *
   * @param fit base temperatures by all criteria
   * @return the figure
   */
  public static DrawnFigure of(BaseTemperatureFit fit) {
    var sheet =
        new FigureSheet(
            "Base temperature from " + fit.durations().size() + " durations in the field",
            "Diamond: estimate."
                + level(fit)
                    .map(level -> " Bar: " + level + " % interval; an arrow where it goes on.")
                    .orElse(""),
            List.of(panel(fit)));
    return new DrawnFigure(sheet, alternative(fit), caption(fit), data(fit));
  }

  private static Optional<String> level(BaseTemperatureFit fit) {
    return fit.estimates().stream()
        .flatMap(each -> each.interval().stream())
        .findFirst()
        .map(interval -> Numbers.plain(100 * interval.level()));
  }

  private static ChartPanel panel(BaseTemperatureFit fit) {
    var rows = fit.estimates();
    var range = range(fit);
    double letters =
        rows.stream().mapToInt(each -> each.criterion().words().length()).max().orElse(0) + 2.0;
    double share = letters * LETTER_POINTS / FigureLook.CHART_WIDTH;
    double left = range.low() - (range.high() - range.low()) * share / (1 - share);
    var panel = new ChartPanel(rows.size() * ROW_HEIGHT, AXIS_HEIGHT, "");
    panel.ranges(left, range.high(), 0, rows.size()).withoutYTicks();
    double step = NumberAxis.step(range.low(), range.high());
    NumberAxis.rule(panel, step);
    panel.box(left, range.low(), 0.02, rows.size(), FigureLook.PAPER);
    for (double tick = Math.ceil(range.low() / step) * step; tick <= range.high(); tick += step) {
      panel.words(
          Numbers.plain(Math.rint(tick / step) * step),
          tick,
          0,
          Side.BELOW,
          FigureLook.SMALL,
          FigureLook.INK);
    }
    panel.words(
        "Base temperature (°C)",
        (range.low() + range.high()) / 2,
        0,
        Side.FAR_BELOW,
        FigureLook.TEXT,
        FigureLook.INK);
    for (int i = 0; i < rows.size(); i++) {
      row(panel, rows.get(i), rows.size() - i - 0.5, range);
    }
    return panel;
  }

  private static void row(ChartPanel panel, BaseEstimate each, double y, Range range) {
    panel.words(
        each.criterion().words(), range.low(), y, Side.LEFT, FigureLook.TEXT, FigureLook.INK);
    if (each.celsius().isEmpty()) {
      panel.words(
          each.remark(), range.low(), y, Side.RIGHT, FigureLook.SMALL, FigureLook.QUIET_INK);
      return;
    }
    double base = each.celsius().getAsDouble();
    if (each.interval().isPresent()) {
      bar(panel, each.interval().get(), y, range);
    } else {
      withoutBar(panel, base, y, range);
    }
    panel.mark(range.inside(base), y, FigureLook.INK, FigureMark.MEDIAN);
    panel.words(
        Numbers.fixed(base, 1), base, y + 0.36, Side.CENTRE, FigureLook.BOLD, FigureLook.INK);
  }

  private static void withoutBar(ChartPanel panel, double base, double y, Range range) {
    boolean right = base > (range.low() + range.high()) / 2;
    panel.words(
        "no interval",
        base + (right ? -1 : 1) * 0.02 * range.width(),
        y,
        right ? Side.LEFT : Side.RIGHT,
        FigureLook.SMALL,
        FigureLook.QUIET_INK);
  }

  private static void bar(ChartPanel panel, BaseInterval interval, double y, Range range) {
    double from = range.inside(interval.low());
    double to = range.inside(interval.high());
    if (!(from <= to)) {
      return;
    }
    panel.stroke(from, y, to, y, FigureLook.MIDDLE_GREY, FigureLook.solid(9));
    if (interval.high() > range.high()) {
      panel.mark(to - 0.012 * range.width(), y, FigureLook.MIDDLE_GREY, FigureMark.GOES_ON);
    }
    if (interval.low() < range.low()) {
      panel.words("‹", from, y, Side.RIGHT, FigureLook.HEADING, FigureLook.PAPER);
    }
  }

  /** What is drawn of the axis. */
  private record Range(double low, double high) {
    double inside(double celsius) {
      return Math.min(high, Math.max(low, celsius));
    }

    double width() {
      return high - low;
    }
  }

  private static Range range(BaseTemperatureFit fit) {
    var bases =
        fit.estimates().stream()
            .flatMapToDouble(each -> each.celsius().stream())
            .summaryStatistics();
    if (bases.getCount() == 0) {
      return new Range(0, 1);
    }
    var limits =
        DoubleStream.concat(
                DoubleStream.of(bases.getMin() - 0.5, bases.getMax() + 0.5),
                fit.estimates().stream()
                    .flatMap(each -> each.interval().stream())
                    .flatMapToDouble(each -> DoubleStream.of(each.low(), each.high()))
                    .filter(Double::isFinite))
            .summaryStatistics();
    return new Range(
        Math.floor(Math.max(limits.getMin(), bases.getMin() - REACH_CELSIUS)),
        Math.ceil(Math.min(limits.getMax(), bases.getMax() + REACH_CELSIUS)));
  }

  private static String alternative(BaseTemperatureFit fit) {
    return fit.estimates().stream()
        .map(
            each ->
                each.criterion().words()
                    + ": "
                    + (each.celsius().isEmpty()
                        ? each.remark()
                        : Numbers.fixed(each.celsius().getAsDouble(), 2) + " °C")
                    + each.interval()
                        .map(
                            interval ->
                                ", interval from "
                                    + Numbers.fixed(interval.low(), 1)
                                    + " to "
                                    + Numbers.fixed(interval.high(), 1)
                                    + " °C")
                        .orElse(""))
        .collect(
            Collectors.joining(
                "; ",
                "Base temperature from " + fit.durations().size() + " durations, by criterion: ",
                "."));
  }

  private static String caption(BaseTemperatureFit fit) {
    return "Each criterion makes something else least, so that their agreement says little of the"
        + " truth; the bars, from whole seasons drawn anew, say how much these "
        + fit.durations().size()
        + " durations can tell."
        + fit.daily()
            .map(method -> " Days below the base count as nothing, by the " + method.words() + ".")
            .orElse(" Closed forms on mean temperatures.");
  }

  private static ResultTable data(BaseTemperatureFit fit) {
    return ResultTable.of(
        "Base temperatures",
        List.of(
            Column.of("Criterion"),
            Column.of("Base", "°C"),
            Column.of("From", "°C"),
            Column.of("To", "°C")),
        fit.estimates().stream()
            .map(
                each ->
                    List.of(
                        Cell.text(each.criterion().words()),
                        each.celsius().isPresent()
                            ? Cell.number(each.celsius().getAsDouble(), 2)
                            : Cell.notKnown(),
                        each.interval()
                            .map(interval -> Cell.number(interval.low(), 2))
                            .orElse(Cell.notKnown()),
                        each.interval()
                            .map(interval -> Cell.number(interval.high(), 2))
                            .orElse(Cell.notKnown())))
            .toList());
  }
}
