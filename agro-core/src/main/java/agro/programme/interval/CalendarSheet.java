package agro.programme.interval;

import agro.working.Caution;
import agro.working.Sheet;
import agro.working.Sheet.Align;
import agro.working.Sheet.Pen;
import agro.working.Sheet.Place;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** Pages of a calendar in black and white, a strip for each month. */
final class CalendarSheet {

  private static final double LEFT = 12;
  private static final double NAME_WIDTH = 36;
  private static final double CELL = 4.9;
  private static final double ROW = 6;
  private static final double TOP = 30;
  private static final double LAST_BASE = 238;

  /** As many as fit on a page below one month. */
  private static final int MOST_ROWS = 30;

  private static final Sheet.Type HEADING = new Sheet.Type(5.2, true, Align.START);
  private static final Sheet.Type NAME = new Sheet.Type(2.9, false, Align.START);
  private static final Sheet.Type SMALL_NAME = new Sheet.Type(2.4, false, Align.START);
  private static final Sheet.Type MONTH = new Sheet.Type(3.4, true, Align.START);
  private static final Sheet.Type NUMBER = new Sheet.Type(2.3, false, Align.MIDDLE);
  private static final Sheet.Type LETTER = new Sheet.Type(2.9, true, Align.MIDDLE);
  private static final Sheet.Type SMALL = new Sheet.Type(2.7, false, Align.START);
  private static final Pen ROAD = new Pen(1.1, 0.25, false);
  private static final Pen UNKNOWN = new Pen(0.3, 0.35, true);
  private static final Pen HAIR = new Pen(0.15, 0.6, false);

  private final UseCalendar calendar;
  private final List<Sheet> pages = new ArrayList<>();
  private Sheet.Builder page;
  private double base;

  private CalendarSheet(UseCalendar calendar) {
    this.calendar = calendar;
    this.page = begin();
  }

  static List<Sheet> of(UseCalendar calendar) {
    var pages = new ArrayList<Sheet>();
    var rows = calendar.rows();
    for (int from = 0; from < rows.size(); from += MOST_ROWS) {
      var part = rows.subList(from, Math.min(rows.size(), from + MOST_ROWS));
      var sheet =
          new CalendarSheet(
              new UseCalendar(
                  calendar.field(),
                  calendar.first(),
                  calendar.last(),
                  part,
                  calendar.pickingDays()));
      var month = YearMonth.from(calendar.first());
      for (; !month.isAfter(YearMonth.from(calendar.last())); month = month.plusMonths(1)) {
        sheet.month(month);
      }
      sheet.end();
      pages.addAll(sheet.pages);
    }
    return List.copyOf(pages);
  }

  private Sheet.Builder begin() {
    var builder = Sheet.a4(title());
    builder.words(LEFT, 18, title(), HEADING);
    builder.words(LEFT, 24, "from " + calendar.first() + " to " + calendar.last(), SMALL);
    base = TOP;
    return builder;
  }

  private String title() {
    return "What is allowed when: " + calendar.field();
  }

  private void month(YearMonth month) {
    double height = 9 + ROW * calendar.rows().size() + 5;
    if (base > TOP && base + height > LAST_BASE) {
      end();
      page = begin();
    }
    page.words(LEFT, base + 4, month.toString(), MONTH);
    for (int day = 1; day <= month.lengthOfMonth(); day++) {
      header(month.atDay(day));
    }
    double y = base + 9;
    for (var row : calendar.rows()) {
      page.line(LEFT, y, x(month.lengthOfMonth() + 1), y, HAIR);
      name(row.name(), y);
      for (var day : row.days()) {
        if (YearMonth.from(day.day()).equals(month)) {
          cell(day, y);
        }
      }
      y += ROW;
    }
    page.line(LEFT, y, x(month.lengthOfMonth() + 1), y, HAIR);
    base += height;
  }

  /** Number of the day, and a wedge above it where picking is planned. */
  private void header(LocalDate day) {
    boolean inSpan = !day.isBefore(calendar.first()) && !day.isAfter(calendar.last());
    if (!inSpan) {
      return;
    }
    double middle = x(day.getDayOfMonth()) + CELL / 2;
    page.words(middle, base + 7.4, Integer.toString(day.getDayOfMonth()), NUMBER);
    if (calendar.pickingDays().contains(day)) {
      page.shade(
          List.of(
              new Place(middle - 1.3, base + 2.2),
              new Place(middle + 1.3, base + 2.2),
              new Place(middle, base + 4.6)),
          0.1);
    }
  }

  private void cell(CalendarDay day, double y) {
    double x = x(day.day().getDayOfMonth());
    switch (day.permission()) {
      case ALLOWED -> page.line(x, y + ROW - 1.6, x + CELL, y + ROW - 1.6, ROAD);
      case NOT_RECORDED -> {
        page.line(x, y + ROW - 1.6, x + CELL, y + ROW - 1.6, UNKNOWN);
        page.words(x + CELL / 2, y + 3.6, "?", LETTER);
      }
      case REFUSED -> page.words(x + CELL / 2, y + 4.1, day.mark(), LETTER);
    }
  }

  private static double x(int dayOfMonth) {
    return LEFT + NAME_WIDTH + CELL * (dayOfMonth - 1);
  }

  /** A long name stands on two lines, its end on the second, since names often differ there. */
  private void name(String name, double y) {
    double width = NAME_WIDTH - 2;
    if (Sheet.width(name, NAME) <= width) {
      page.words(LEFT, y + 4.1, name, NAME);
      return;
    }
    int cut = cut(name, width);
    var rest = name.substring(cut).strip();
    page.words(LEFT, y + 2.6, name.substring(0, cut).strip(), SMALL_NAME);
    if (Sheet.width(rest, SMALL_NAME) > width) {
      while (Sheet.width("\u2026" + rest, SMALL_NAME) > width) {
        rest = rest.substring(rest.offsetByCodePoints(0, 1));
      }
      rest = "\u2026" + rest;
    }
    page.words(LEFT, y + 5.2, rest, SMALL_NAME);
  }

  /** Where the first line of a name ends, at a blank if there is one. */
  private static int cut(String name, double width) {
    int end = name.length();
    while (Sheet.width(name.substring(0, end), SMALL_NAME) > width) {
      end = name.offsetByCodePoints(end, -1);
    }
    int blank = end < name.length() ? name.lastIndexOf(' ', end) : -1;
    return blank > 0 ? blank : end;
  }

  private void end() {
    double y = LAST_BASE + 8;
    double width = 186;
    var used =
        calendar.rows().stream()
            .flatMap(row -> row.days().stream())
            .flatMap(day -> day.findings().stream())
            .filter(each -> each.permission() == Permission.REFUSED)
            .map(RuleFinding::rule)
            .distinct()
            .sorted()
            .map(rule -> rule.mark() + " " + rule.words())
            .collect(Collectors.joining("; "));
    var legend =
        "A dark line: every recorded rule allows the day. A letter: a rule refuses it"
            + (used.isEmpty() ? "" : " (" + used + ")")
            + ". A question mark on a broken line: a limit is not recorded; look at the label, it is"
            + " no leave. A wedge: picking is planned.";
    y = page.paragraph(LEFT, y, legend, SMALL, width);
    for (var caution : Caution.all()) {
      y = page.paragraph(LEFT, y, caution.line(), SMALL, width);
    }
    pages.add(page.build());
  }
}
