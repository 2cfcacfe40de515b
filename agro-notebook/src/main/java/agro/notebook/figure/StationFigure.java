package agro.notebook.figure;

import agro.generation.DateDistribution;
import agro.generation.GenerationForecast;
import agro.season.BatchForecast;
import agro.working.Cell;
import agro.working.ResultTable;
import agro.working.ResultTable.Column;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/**
 * Dates by station: one line for each place, grouped by pest and ordered by date, with the median
 * date of half the flight as a mark and the 50, 80 and 90 % intervals as bars.
 */
public final class StationFigure {

  private StationFigure() {}

  /**
   * Draws the next flight of each pest at each place.
   *
   * @param batch the forecasts
   * @return the figure
   */
  public static DrawnFigure of(BatchForecast batch) {
    return draw(batch, StationLine.of(batch, true), "the next flight at each place");
  }

  /**
   * Draws every flight to come of each pest at each place.
   *
   * @param batch the forecasts
   * @return the figure
   */
  public static DrawnFigure ofAllFlights(BatchForecast batch) {
    return draw(batch, StationLine.of(batch, false), "the flights to come at each place");
  }

  private static DrawnFigure draw(BatchForecast batch, List<StationLine> lines, String what) {
    var sheet =
        new FigureSheet(
            FigureWords.sentence(what),
            "Half of the flight. " + issued(batch) + " Bars: the date lies within, 5, 8, 9 in 10.",
            List.of(new StationPlot(lines).panel()));
    return new DrawnFigure(sheet, alternative(lines, what), caption(batch), data(lines));
  }

  private static String issued(BatchForecast batch) {
    var days =
        batch.forecasts().stream().map(each -> each.season().asOf()).distinct().sorted().toList();
    if (days.isEmpty()) {
      return "No forecast.";
    }
    return "As of "
        + FigureWords.longDay(days.get(0))
        + (days.size() == 1 ? "." : " to " + FigureWords.longDay(days.get(days.size() - 1)) + ".");
  }

  private static String alternative(List<StationLine> lines, String what) {
    return lines.stream()
        .map(StationFigure::sentence)
        .collect(Collectors.joining("; ", FigureWords.sentence(what) + ". ", "."));
  }

  private static String sentence(StationLine line) {
    var name = line.entry().pest() + " at " + line.name() + ": ";
    if (line.row().isEmpty()) {
      return name + line.without();
    }
    var dates = line.row().get().dates();
    var eighty = dates.interval(0.8);
    var never = "not this season " + FigureWords.chance(dates.chanceNotThisSeason());
    return dates
        .median()
        .map(
            median ->
                name
                    + "half by "
                    + FigureWords.day(median)
                    + ", 8 in 10 between "
                    + eighty.from().map(FigureWords::day).orElse(FigureWords.NOT_THIS_SEASON)
                    + " and "
                    + eighty.to().map(FigureWords::day).orElse(FigureWords.NOT_THIS_SEASON)
                    + ", "
                    + never)
        .orElse(name + never);
  }

  private static String caption(BatchForecast batch) {
    var models =
        batch.forecasts().stream()
            .map(GenerationForecast::season)
            .map(season -> season.pest() + ": " + season.model())
            .distinct()
            .collect(Collectors.joining("; "));
    return "Mark: the date by which half of the flight is as likely over as not. Bars, from dark"
        + " and thick to pale and thin: the date lies within with 5, 8 and 9 chances in 10. Broken"
        + " line: day of issue. A bar with an arrow reaches beyond the season's end. Degree-days: "
        + (models.isEmpty() ? "none" : models)
        + ".";
  }

  private static ResultTable data(List<StationLine> lines) {
    var columns = new ArrayList<Column>();
    for (var name : List.of("Pest", "Place", "Flight", "Median")) {
      columns.add(Column.of(name));
    }
    for (var words : List.of("5 in 10", "8 in 10", "9 in 10")) {
      columns.add(Column.of(words + " from"));
      columns.add(Column.of(words + " to"));
    }
    columns.add(Column.of("Not this season", "%"));
    return ResultTable.of(
            "Half of the flight by place", columns, lines.stream().map(StationFigure::row).toList())
        .withNote("5, 8 and 9 in 10 are chances.");
  }

  private static List<Cell> row(StationLine line) {
    var cells = new ArrayList<Cell>();
    cells.add(Cell.text(line.entry().pest()));
    cells.add(
        Cell.text(line.entry().place().isEmpty() ? line.entry().folder() : line.entry().place()));
    if (line.row().isEmpty()) {
      cells.add(Cell.text(line.without()));
      for (var i = 0; i < 8; i++) {
        cells.add(Cell.notKnown());
      }
      return cells;
    }
    var dates = line.row().get().dates();
    cells.add(Cell.number(line.row().get().generation(), 0));
    cells.add(day(dates, 0.5));
    for (var level = ForecastFigure.LEVELS.length - 1; level >= 0; level--) {
      cells.add(day(dates, (1 - ForecastFigure.LEVELS[level]) / 2));
      cells.add(day(dates, 1 - (1 - ForecastFigure.LEVELS[level]) / 2));
    }
    cells.add(Cell.number(100 * dates.chanceNotThisSeason(), 1));
    return cells;
  }

  private static Cell day(DateDistribution dates, double probability) {
    return dates
        .quantile(probability)
        .map(Cell::day)
        .orElse(Cell.text(FigureWords.NOT_THIS_SEASON));
  }
}
