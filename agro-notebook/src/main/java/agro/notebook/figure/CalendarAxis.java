package agro.notebook.figure;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** A horizontal axis of days, ruled and labelled at the starts of the months. */
final class CalendarAxis {

  private static final DateTimeFormatter MONTH =
      DateTimeFormatter.ofPattern("d MMM", Locale.ENGLISH);
  private static final DateTimeFormatter MIDDLE = DateTimeFormatter.ofPattern("d", Locale.ENGLISH);
  private static final int DAYS_WITH_HALF_MONTHS = 200;

  private CalendarAxis() {}

  /** Place of the start of a day on the axis. */
  static double at(LocalDate day) {
    return day.toEpochDay();
  }

  /** Rules the months into a panel, from below everything that is drawn later. */
  static void rule(ChartPanel panel, Span span, double bottom, double top) {
    for (var tick : ticks(span)) {
      var x = at(tick);
      panel.stroke(x, bottom, x, top, FigureLook.GRID, FigureLook.solid(1));
    }
  }

  /** Writes the days below a height of the vertical axis. */
  static void label(ChartPanel panel, Span span, double height) {
    for (var tick : ticks(span)) {
      panel.words(
          (tick.getDayOfMonth() == 1 ? MONTH : MIDDLE).format(tick),
          at(tick),
          height,
          ChartPanel.Side.BELOW,
          FigureLook.SMALL,
          tick.getDayOfMonth() == 1 ? FigureLook.INK : FigureLook.QUIET_INK);
    }
  }

  private static List<LocalDate> ticks(Span span) {
    var ticks = new ArrayList<LocalDate>();
    var halves = span.days() <= DAYS_WITH_HALF_MONTHS;
    for (var month = span.from().withDayOfMonth(1);
        !month.isAfter(span.to());
        month = month.plusMonths(1)) {
      for (var tick : halves ? List.of(month, month.withDayOfMonth(15)) : List.of(month)) {
        if (!tick.isBefore(span.from()) && !tick.isAfter(span.to())) {
          ticks.add(tick);
        }
      }
    }
    return ticks;
  }

  /**
   * The days that are shown.
   *
   * @param from first day
   * @param to last day
   */
  record Span(LocalDate from, LocalDate to) {
    long days() {
      return to.toEpochDay() - from.toEpochDay();
    }
  }
}
