package agro.season;

import agro.generation.DateInterval;
import agro.generation.ForecastRow;
import agro.report.ReadReport;
import agro.source.Reference;
import agro.working.Caution;
import agro.working.Cell;
import agro.working.Presentation;
import agro.working.ResultTable;
import agro.working.ResultTable.Column;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;

/** Batches of forecasts as a person reads them. */
final class BatchPages {

  private static final DateTimeFormatter DAY =
      DateTimeFormatter.ofPattern("d\u00a0MMM", Locale.ENGLISH);
  private static final String NOT_THIS_SEASON = "not\u00a0this\u00a0season";

  private BatchPages() {}

  static ResultTable table(BatchForecast batch) {
    var folders = severalFolders(batch);
    var columns = new ArrayList<Column>();
    if (folders) {
      columns.add(Column.of("Folder"));
    }
    columns.add(Column.of("Pest"));
    columns.add(Column.of("Place"));
    columns.add(Column.of("Issued"));
    columns.add(Column.of("Flight"));
    columns.add(Column.of("Share of the flight"));
    columns.add(Column.of("Median date"));
    columns.add(Column.of("8 in 10"));
    columns.add(Column.of("Not this season"));
    var rows = new ArrayList<List<Cell>>();
    for (var place : batch.places()) {
      place
          .forecast()
          .ifPresent(
              forecast ->
                  forecast
                      .rows()
                      .forEach(row -> rows.add(cells(place, row, forecast.season().asOf()))));
    }
    if (!folders) {
      rows.replaceAll(cells -> cells.subList(1, cells.size()));
    }
    return ResultTable.of("Flights to come", columns, rows)
        .withNote(
            "Shares are of the animals. 8 in 10 is a chance: that the date lies between the two"
                + " days or, where it says so, that it comes from that day on or not at all. A date"
                + " before the day of issue has passed.")
        .withNote("The dates say when to look in the field, not that anything needs treating.");
  }

  private static boolean severalFolders(BatchForecast batch) {
    return batch.places().stream().map(PlaceForecast::folder).distinct().count() > 1;
  }

  private static List<Cell> cells(PlaceForecast place, ForecastRow row, LocalDate issued) {
    return List.of(
        Cell.text(place.folder()),
        Cell.text(place.pest()),
        Cell.text(place.place()),
        Cell.day(issued),
        Cell.number(row.generation(), 0),
        Cell.text(row.isFlight() ? row.share().words() : row.event() + ", " + row.share().words()),
        row.dates().median().map(Cell::day).orElse(Cell.text(NOT_THIS_SEASON)),
        Cell.text(words(row.dates().interval(0.8))),
        Cell.text(row.notThisSeason().words()));
  }

  private static String words(DateInterval interval) {
    if (interval.from().isEmpty()) {
      return NOT_THIS_SEASON;
    }
    var from = DAY.format(interval.from().get());
    return interval
        .to()
        .map(to -> from + "\u00a0to " + DAY.format(to))
        .orElse("from " + from + ", or not at all");
  }

  static ResultTable problems(BatchForecast batch) {
    var rows = new ArrayList<List<Cell>>();
    for (var place : batch.failed()) {
      rows.add(
          List.of(
              Cell.text(place.folder()),
              Cell.text(place.pest()),
              Cell.text(place.place()),
              Cell.text(place.problem())));
    }
    var table =
        ResultTable.of(
            "Places without a forecast",
            List.of(
                Column.of("Folder"), Column.of("Pest"), Column.of("Place"), Column.of("Reason")),
            rows);
    return rows.isEmpty() ? table.withNote("Every pest and place has a forecast.") : table;
  }

  static ReadReport report(BatchForecast batch) {
    var collector = new ReadReport.Collector("forecasts of many places");
    for (var place : batch.places()) {
      place
          .forecast()
          .ifPresent(
              forecast ->
                  forecast
                      .report()
                      .entries()
                      .forEach(
                          entry ->
                              collector.add(
                                  entry.deed(),
                                  entry.location(),
                                  place.pest() + ", " + place.place() + ": " + entry.text())));
    }
    return collector.report();
  }

  static Presentation page(BatchForecast batch) {
    var sources = new LinkedHashSet<Reference>();
    for (var forecast : batch.forecasts()) {
      sources.addAll(forecast.fit().timing().range().sources());
      sources.add(forecast.season().model().method().source());
    }
    var page =
        Presentation.titled("Forecasts")
            .fact("Pests and places", Integer.toString(batch.places().size()))
            .fact("With a forecast", Integer.toString(batch.forecasts().size()))
            .table(table(batch));
    if (!batch.failed().isEmpty()) {
      page.table(problems(batch));
    }
    return page.part(Presentation.of(report(batch)))
        .sources(List.copyOf(sources))
        .cautions(List.of(Caution.LABEL_FIRST, Caution.LICENSED_ADVISER))
        .build();
  }
}
