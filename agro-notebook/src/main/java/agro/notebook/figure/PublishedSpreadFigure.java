package agro.notebook.figure;

import agro.development.PublishedSpread;
import agro.development.PublishedSpread.Estimate;
import agro.notebook.figure.ChartPanel.Side;
import agro.source.Standing;
import agro.units.Numbers;
import agro.working.Cell;
import agro.working.ResultTable;
import agro.working.ResultTable.Column;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;

/** The days that papers give for one event at one place, a line for each paper. */
public final class PublishedSpreadFigure {

  private static final int ROW_HEIGHT = 54;
  private static final int AXIS_HEIGHT = 34;
  private static final double LETTER_POINTS = 7.4;
  private static final double MOST_LABEL_SHARE = 0.5;
  private static final int DAYS_AROUND = 12;

  private PublishedSpreadFigure() {}

  /**
   * Draws what each paper says.
   *
   * @param spread the dates
   * @return the figure
   */
  public static DrawnFigure of(PublishedSpread spread) {
    var estimates =
        spread.estimates().stream()
            .sorted(Comparator.comparing(each -> dayOrLater(spread, each)))
            .toList();
    var first = estimates.get(0).requirement();
    var sheet =
        new FigureSheet(
            first.species() + ", " + first.span().words() + ": one place, several papers",
            spread.place()
                + ", counted from "
                + FigureWords.longDay(spread.start())
                + ". Mark: the day on which the paper's requirement is reached.",
            List.of(panel(spread, estimates)));
    return new DrawnFigure(sheet, alternative(spread, estimates), caption(spread), data(estimates));
  }

  private static LocalDate dayOrLater(PublishedSpread spread, Estimate each) {
    return each.reached().map(when -> when.day()).orElse(spread.lastDay().plusDays(1));
  }

  private static ChartPanel panel(PublishedSpread spread, List<Estimate> estimates) {
    var from = dayOrLater(spread, estimates.get(0)).minusDays(DAYS_AROUND);
    var to = dayOrLater(spread, estimates.get(estimates.size() - 1)).plusDays(DAYS_AROUND);
    var span = new CalendarAxis.Span(from, to);
    double start = CalendarAxis.at(from);
    double end = CalendarAxis.at(to) + 1;
    double letters =
        estimates.stream().mapToInt(each -> source(each).length()).max().orElse(0) + 2.0;
    double share = Math.min(MOST_LABEL_SHARE, letters * LETTER_POINTS / FigureLook.CHART_WIDTH);
    double left = start - (end - start) * share / (1 - share);
    var panel = new ChartPanel(estimates.size() * ROW_HEIGHT, AXIS_HEIGHT, "");
    panel.ranges(left, end, 0, estimates.size()).withoutYTicks();
    for (var tick = from; !tick.isAfter(to); tick = tick.plusDays(1)) {
      if (isTick(tick, span.days())) {
        double x = CalendarAxis.at(tick);
        panel.stroke(x, 0, x, estimates.size(), FigureLook.GRID, FigureLook.solid(1));
        panel.words(FigureWords.day(tick), x, 0, Side.BELOW, FigureLook.SMALL, FigureLook.INK);
      }
    }
    panel.stroke(start, 0, start, estimates.size(), FigureLook.QUIET_INK, FigureLook.solid(1));
    panel.stroke(left, 0, end, 0, FigureLook.QUIET_INK, FigureLook.solid(1));
    for (int i = 0; i < estimates.size(); i++) {
      row(panel, spread, estimates.get(i), estimates.size() - i - 0.5, left, end);
    }
    return panel;
  }

  /** Some five to ten days of the axis, on round days of the month. */
  private static boolean isTick(LocalDate day, long days) {
    int step = days < 60 ? 5 : days < 120 ? 10 : 30;
    return day.getDayOfMonth() == 1
        || (day.getDayOfMonth() % step == 0 && day.getDayOfMonth() + step / 2 < 31);
  }

  private static void row(
      ChartPanel panel, PublishedSpread spread, Estimate each, double y, double left, double end) {
    panel.words(source(each), left, y + 0.16, Side.RIGHT, FigureLook.TEXT, FigureLook.INK);
    panel.words(pair(each), left, y - 0.2, Side.RIGHT, FigureLook.SMALL, FigureLook.QUIET_INK);
    if (each.reached().isEmpty()) {
      panel.words(
          "not by " + FigureWords.day(spread.lastDay()),
          end,
          y,
          Side.LEFT,
          FigureLook.TEXT,
          FigureLook.INK);
      return;
    }
    var day = each.reached().get().day();
    double x = CalendarAxis.at(day) + 0.5;
    panel.mark(x, y, FigureLook.INK, FigureMark.MEDIAN);
    panel.words(FigureWords.day(day), x, y + 0.36, Side.CENTRE, FigureLook.BOLD, FigureLook.INK);
  }

  private static String source(Estimate each) {
    var requirement = each.requirement();
    var citation =
        (requirement.source().authors().isBlank() ? "authors not shown" : "")
            + requirement.source().shortCitation();
    var read = " (" + Standing.READ.words() + ")";
    return (citation.endsWith(read)
            ? citation.substring(0, citation.length() - read.length())
            : citation)
        + (requirement.host().isEmpty() ? "" : ", " + requirement.host());
  }

  private static String pair(Estimate each) {
    return Numbers.fixed(each.requirement().requirement().degreeDaysC(), 1)
        + " °C·d above "
        + each.requirement().thresholds().lower();
  }

  private static String alternative(PublishedSpread spread, List<Estimate> estimates) {
    return estimates.stream()
        .map(
            each ->
                source(each)
                    + ": "
                    + each.reached()
                        .map(when -> FigureWords.day(when.day()))
                        .orElse("not by " + FigureWords.day(spread.lastDay())))
        .collect(
            Collectors.joining(
                "; ",
                "Days on which "
                    + estimates.get(0).requirement().species()
                    + " completes "
                    + estimates.get(0).requirement().span().words()
                    + " at "
                    + spread.place()
                    + ". ",
                "."));
  }

  private static String caption(PublishedSpread spread) {
    return "The same temperatures, each paper's threshold with its own requirement."
        + spread
            .daysApart()
            .map(days -> " From the earliest to the latest: " + Numbers.fixed(days, 1) + " d.")
            .orElse("");
  }

  private static ResultTable data(List<Estimate> estimates) {
    return ResultTable.of(
        "The day each paper gives",
        List.of(
            Column.of("Paper"),
            Column.of("Lower threshold", "°C"),
            Column.of("Requirement", "°C·d"),
            Column.of("Reached on")),
        estimates.stream()
            .map(
                each ->
                    List.of(
                        Cell.text(source(each)),
                        Cell.number(each.requirement().thresholds().lower().celsius(), 2),
                        Cell.number(each.requirement().requirement().degreeDaysC(), 1),
                        each.reached()
                            .map(when -> Cell.day(when.day()))
                            .orElse(Cell.text("not by the end"))))
            .toList());
  }
}
