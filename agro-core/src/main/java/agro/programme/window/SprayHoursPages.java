package agro.programme.window;

import agro.units.Numbers;
import agro.working.Caution;
import agro.working.Cell;
import agro.working.Presentation;
import agro.working.ResultTable;
import agro.working.ResultTable.Column;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

/** Hours of treatment as a person reads them. */
final class SprayHoursPages {

  static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm", Locale.ROOT);
  private static final DateTimeFormatter CLOCK_WITH_OFFSET =
      DateTimeFormatter.ofPattern("HH:mm\u00a0xxx", Locale.ROOT);

  private SprayHoursPages() {}

  static ResultTable table(SprayHours hours, Optional<SprayJob> job) {
    var columns = new ArrayList<Column>();
    columns.add(Column.of("Day"));
    columns.add(Column.of("Hours that meet all limits", "h"));
    columns.add(Column.of("Longest without a break", "h"));
    columns.add(Column.of("It begins at"));
    columns.add(Column.of("Hours refused for"));
    columns.add(Column.of("Weather there"));
    job.ifPresent(each -> columns.add(Column.of("The job fits")));
    var rows = new ArrayList<List<Cell>>();
    for (var day : hours.days()) {
      var row = new ArrayList<Cell>();
      row.add(Cell.day(day.day()));
      row.add(Cell.number(day.meeting(), 0));
      row.add(Cell.number(day.longestRun(), 0));
      row.add(
          Cell.text(
              day.runStart()
                  .map(start -> CLOCK.format(start.atZone(hours.field().zone())))
                  .orElse("none")));
      row.add(Cell.text(refusals(day)));
      row.add(Cell.text(there(day)));
      job.ifPresent(each -> row.add(Cell.text(day.fits(each) ? "yes" : "no")));
      rows.add(row);
    }
    var table =
        ResultTable.of("Hours that meet your own limits: " + hours.field().name(), columns, rows);
    for (var limit : hours.notJudged()) {
      table = table.withNote("Not judged: " + limit + ".");
    }
    table =
        job.isPresent()
            ? table.withNote("The job takes " + Numbers.fixed(job.get().hours(), 1) + " h.")
            : table;
    return table.withNote(
        "An hour for which a value is missing does not count. Meeting these limits does not mean"
            + " that the hour is safe or that the label allows it.");
  }

  private static String refusals(SprayDay day) {
    var counts = new LinkedHashMap<String, Integer>();
    for (var hour : day.hours()) {
      hour.refusing().forEach(limit -> counts.merge(limit.name(), 1, Integer::sum));
    }
    return counts.isEmpty()
        ? "none"
        : counts.entrySet().stream()
            .map(each -> each.getKey() + "\u00a0" + each.getValue())
            .collect(Collectors.joining(", "));
  }

  private static String there(SprayDay day) {
    long unknown = day.hours().stream().filter(each -> !each.unknown().isEmpty()).count();
    var all = day.hours().size() + " of " + day.dayHours() + " h";
    return unknown == 0 ? all : all + ", a value missing in " + unknown;
  }

  static ResultTable hours(SprayHours hours) {
    var rows = new ArrayList<List<Cell>>();
    for (var day : hours.days()) {
      for (var verdict : day.hours()) {
        var row = new ArrayList<Cell>();
        row.add(Cell.day(day.day()));
        row.add(Cell.text(clock(verdict.hour().start().atZone(hours.field().zone()))));
        for (var kind : WeatherKind.values()) {
          row.add(
              verdict
                  .hour()
                  .of(kind)
                  .map(span -> Cell.number(span.high(), 1))
                  .orElse(Cell.notKnown()));
        }
        row.add(Cell.text(verdict(verdict)));
        rows.add(row);
      }
    }
    var columns = new ArrayList<Column>();
    columns.add(Column.of("Day"));
    columns.add(Column.of("Hour from"));
    for (var kind : WeatherKind.values()) {
      columns.add(Column.of("Highest " + kind.words(), HourColumns.unit(kind)));
    }
    columns.add(Column.of("Limits not met"));
    return ResultTable.of("Every hour: " + hours.field().name(), columns, rows);
  }

  /** The clock, with its offset where it shows the hour twice. */
  private static String clock(ZonedDateTime time) {
    boolean twice = time.getZone().getRules().getValidOffsets(time.toLocalDateTime()).size() > 1;
    return (twice ? CLOCK_WITH_OFFSET : CLOCK).format(time);
  }

  private static String verdict(HourVerdict verdict) {
    if (verdict.meetsAll()) {
      return "none";
    }
    var words = verdict.refusing().stream().map(HourLimit::words).collect(Collectors.joining("; "));
    var unknown =
        verdict.unknown().stream()
            .map(limit -> "not known: " + limit.words())
            .collect(Collectors.joining("; "));
    return words.isEmpty() || unknown.isEmpty() ? words + unknown : words + "; " + unknown;
  }

  static Presentation page(SprayHours hours) {
    var page = Presentation.titled("Hours of treatment");
    page.paragraph(
        hours.limits().limits().isEmpty()
            ? "No limit was set, so every hour meets them."
            : "The limits are your own: "
                + hours.limits().limits().stream()
                    .map(HourLimit::words)
                    .collect(Collectors.joining("; "))
                + ".");
    return page.table(table(hours, Optional.empty()))
        .part(Presentation.of(hours.weather().report()))
        .cautions(Caution.all())
        .build();
  }
}
