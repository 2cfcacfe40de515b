package agro.trial;

import agro.reading.DelimitedText;
import agro.report.InputProblem;
import agro.report.SourceLocation;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * A column of values, with its day when the day stands in the heading.
 *
 * @param column heading
 * @param response the variable
 * @param date the day, if the heading holds it
 */
record DatedColumn(String column, TrialResponse response, Optional<LocalDate> date) {

  private static final PlotColumns.DatePattern ISO =
      new PlotColumns.DatePattern("year-month-day", DateTimeFormatter.ISO_LOCAL_DATE);

  static List<DatedColumn> all(DelimitedText text, PlotColumns columns) {
    var found = new ArrayList<DatedColumn>();
    if (!columns.wide()) {
      columns
          .responses()
          .forEach(
              response -> found.add(new DatedColumn(response.name(), response, Optional.empty())));
      return List.copyOf(found);
    }
    var pattern = columns.datePattern().orElse(ISO);
    for (var column : text.columns()) {
      for (var response : columns.responses()) {
        day(column, response, columns.responses().size() == 1, pattern)
            .ifPresent(day -> found.add(new DatedColumn(column, response, Optional.of(day))));
      }
    }
    requireSome(found, text, columns, pattern);
    return List.copyOf(found);
  }

  private static Optional<LocalDate> day(
      String heading, TrialResponse response, boolean alone, PlotColumns.DatePattern pattern) {
    var name = response.name();
    boolean named = heading.toLowerCase(Locale.ROOT).startsWith(name.toLowerCase(Locale.ROOT));
    if (!named && !alone) {
      return Optional.empty();
    }
    var rest = named ? heading.substring(name.length()) : heading;
    try {
      return Optional.of(
          LocalDate.parse(rest.replaceFirst("^[\\s_:]+", "").trim(), pattern.formatter()));
    } catch (DateTimeException notADay) {
      return Optional.empty();
    }
  }

  private static void requireSome(
      List<DatedColumn> found,
      DelimitedText text,
      PlotColumns columns,
      PlotColumns.DatePattern pattern) {
    for (var response : columns.responses()) {
      if (response.outOfColumn().isPresent()) {
        throw InputProblem.at(text.location(), response.name() + " with dates as headings")
            .expected("a count out of one number that is the same each time")
            .because("a wide table has no column for the number looked at on each day")
            .mend("write one line for each plot and day, or declare the fixed number");
      }
      if (found.stream().noneMatch(column -> column.response().equals(response))) {
        throw InputProblem.at(
                text.location(),
                "no heading with a day of " + response.name() + ": " + text.columns())
            .expected(
                "headings that are days (" + pattern.pattern() + "), after the variable's name")
            .because("in a wide table the headings hold the days of assessment")
            .mend("write the days as declared, or declare their form with withDatePattern");
      }
    }
  }

  static LocalDate date(String text, PlotColumns.DatePattern pattern, SourceLocation place) {
    try {
      return LocalDate.parse(text, pattern.formatter());
    } catch (DateTimeException notADay) {
      throw InputProblem.at(place, "\"" + text + "\"")
          .expected("a day of the calendar in the form " + pattern.pattern())
          .because("the day of the assessment decides what it is compared with")
          .mend("write the day in the declared form, or declare another one");
    }
  }
}
