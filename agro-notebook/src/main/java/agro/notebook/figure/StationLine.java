package agro.notebook.figure;

import agro.generation.FlightShare;
import agro.generation.ForecastRow;
import agro.generation.GenerationForecast;
import agro.season.BatchForecast;
import agro.season.PlaceForecast;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Optional;

/**
 * One line of the figure of many stations: half of a flight at a place, or a place without one.
 *
 * @param entry the pest and place
 * @param row the line of the forecast; empty when no flight is left, or there is no forecast
 */
record StationLine(PlaceForecast entry, Optional<ForecastRow> row) {

  /** The lines by pest in the order of the batch, within a pest by date. */
  static List<StationLine> of(BatchForecast batch, boolean nextOnly) {
    var byPest = new LinkedHashMap<String, List<StationLine>>();
    for (var entry : batch.places()) {
      var lines = byPest.computeIfAbsent(entry.pest(), pest -> new ArrayList<>());
      var rows = entry.forecast().map(StationLine::halves).orElse(List.of());
      if (rows.isEmpty()) {
        lines.add(new StationLine(entry, Optional.empty()));
      }
      rows.stream()
          .limit(nextOnly ? 1 : rows.size())
          .forEach(row -> lines.add(new StationLine(entry, Optional.of(row))));
    }
    var all = new ArrayList<StationLine>();
    for (var lines : byPest.values()) {
      lines.sort(
          Comparator.comparingInt(StationLine::flight)
              .thenComparingDouble(StationLine::median)
              .thenComparing(line -> line.entry.place()));
      all.addAll(lines);
    }
    return all;
  }

  /** Half of each flight that is as likely as not still to come. */
  private static List<ForecastRow> halves(GenerationForecast forecast) {
    var asOf = forecast.season().asOf();
    return forecast.rows().stream()
        .filter(row -> row.isFlight() && row.share() == FlightShare.HALF)
        .filter(row -> row.dates().median().filter(day -> day.isBefore(asOf)).isEmpty())
        .toList();
  }

  private int flight() {
    return row.map(ForecastRow::generation).orElse(Integer.MAX_VALUE);
  }

  /** The median as a day of the calendar, whatever the season's first day. */
  private double median() {
    return row.flatMap(each -> each.dates().median())
        .map(CalendarAxis::at)
        .orElse(Double.POSITIVE_INFINITY);
  }

  String name() {
    var place = entry.place().isEmpty() ? entry.folder() : entry.place();
    return row.map(each -> place + ", flight " + each.generation()).orElse(place);
  }

  String without() {
    return entry.forecast().isPresent() ? "no flight is left this season" : "no forecast";
  }
}
