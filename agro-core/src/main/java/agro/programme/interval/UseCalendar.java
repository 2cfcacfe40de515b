package agro.programme.interval;

import agro.report.InputProblem;
import agro.working.Caution;
import agro.working.Cell;
import agro.working.Presentable;
import agro.working.Presentation;
import agro.working.ResultTable;
import agro.working.Sheet;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;

/**
 * What is allowed in a field on each day: each product, and picking.
 *
 * @param field the field
 * @param first first day
 * @param last last day
 * @param rows one for each product, and one for picking at the end
 * @param pickingDays picking days that are planned in the span
 */
public record UseCalendar(
    String field, LocalDate first, LocalDate last, List<Row> rows, List<LocalDate> pickingDays)
    implements Presentable {

  /** Name of the row of picking. */
  public static final String PICKING = "picking";

  private static final int MOST_DAYS = 800;

  /**
   * The days of one product, or of picking.
   *
   * @param name the product, or {@link UseCalendar#PICKING}
   * @param days the days in order
   */
  public record Row(String name, List<CalendarDay> days) {
    /** Copies the days. */
    public Row {
      Objects.requireNonNull(name, "name");
      days = List.copyOf(days);
    }

    /**
     * The days of one permission.
     *
     * @param permission the permission
     * @return the days in order
     */
    public List<LocalDate> days(Permission permission) {
      return days.stream()
          .filter(each -> each.permission() == permission)
          .map(CalendarDay::day)
          .toList();
    }
  }

  /** Copies the lists. */
  public UseCalendar {
    rows = List.copyOf(rows);
    pickingDays = List.copyOf(pickingDays);
  }

  /**
   * The calendar of a field.
   *
   * @param rules the programme with its rules
   * @param field the field
   * @param products the products that are asked for, each at the dose of its label record
   * @param first first day
   * @param last last day, at most 800 days later
   * @return the calendar
   * @throws InputProblem for days out of order or an unknown field
   */
  public static UseCalendar of(
      SeasonRules rules, String field, List<String> products, LocalDate first, LocalDate last) {
    rules.programme().field(field);
    if (last.isBefore(first) || last.isAfter(first.plusDays(MOST_DAYS))) {
      throw InputProblem.of("a calendar from " + first + " to " + last)
          .expected("a last day on or after the first one, at most " + MOST_DAYS + " days later")
          .because("each day is held against every rule")
          .mend("look at year and month of both days");
    }
    var rows = new ArrayList<Row>();
    for (var product : products) {
      rows.add(
          new Row(
              product,
              first
                  .datesUntil(last.plusDays(1))
                  .map(
                      day ->
                          CalendarDay.of(
                              day, rules.check(rules.planned(field, product, day)).findings()))
                  .toList()));
    }
    var questions = SeasonQuestions.of(rules);
    rows.add(
        new Row(
            PICKING,
            first
                .datesUntil(last.plusDays(1))
                .map(day -> CalendarDay.of(day, questions.mayPick(field, day).findings()))
                .toList()));
    var picking =
        rules.programme().plantings().stream()
            .filter(each -> each.field().equals(field))
            .flatMap(each -> each.picking().days().stream())
            .filter(day -> !day.isBefore(first) && !day.isAfter(last))
            .toList();
    return new UseCalendar(field, first, last, rows, picking);
  }

  /**
   * The row of a product.
   *
   * @param name the product, or {@link #PICKING}
   * @return its row
   * @throws InputProblem if the calendar was not asked for it
   */
  public Row row(String name) {
    return rows.stream()
        .filter(each -> each.name().equals(name))
        .findFirst()
        .orElseThrow(
            () ->
                InputProblem.of("the row of \"" + name + "\" was asked for")
                    .expected(
                        "one of " + rows.stream().map(Row::name).collect(Collectors.joining(", ")))
                    .because("the calendar was made for these")
                    .mend("make a calendar with that product"));
  }

  /**
   * The planned picking days that an interval refuses or does not know.
   *
   * @return the days that are not simply allowed, in order
   */
  public List<CalendarDay> pickingInDoubt() {
    return row(PICKING).days().stream()
        .filter(each -> pickingDays.contains(each.day()))
        .filter(each -> each.permission() != Permission.ALLOWED)
        .toList();
  }

  /**
   * The calendar on paper: a road is drawn under the days that are allowed, letters name the rules
   * that refuse a day, and a question mark stands where a limit is not recorded.
   *
   * @return pages of A4 in order
   */
  public List<Sheet> sheets() {
    return CalendarSheet.of(this);
  }

  @Override
  public Presentation presentation() {
    var rowsOfTable = new ArrayList<List<Cell>>();
    for (var row : rows) {
      CalendarSpan.of(row).forEach(span -> rowsOfTable.add(span.cells(row.name())));
    }
    var table =
        ResultTable.of(
            "What is allowed when",
            List.of(
                ResultTable.Column.of("Product or deed"),
                ResultTable.Column.of("From"),
                ResultTable.Column.of("To"),
                ResultTable.Column.of("Answer"),
                ResultTable.Column.of("Why")),
            rowsOfTable);
    return Presentation.titled(field + " from " + first + " to " + last)
        .table(table)
        .cautions(Caution.all())
        .build();
  }
}
