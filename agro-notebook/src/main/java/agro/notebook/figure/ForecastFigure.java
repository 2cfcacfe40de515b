package agro.notebook.figure;

import agro.generation.DateDistribution;
import agro.generation.ForecastRow;
import agro.generation.GenerationForecast;
import agro.working.Cell;
import agro.working.ResultTable;
import agro.working.ResultTable.Column;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/**
 * The main picture of a forecast: one line for each flight and share, the median date as a mark,
 * the 50, 80 and 90 % intervals as bars that grow thinner and paler, and the chance that the date
 * does not come this season at the right edge.
 */
public final class ForecastFigure {

  static final double[] LEVELS = {0.9, 0.8, 0.5};

  private ForecastFigure() {}

  /**
   * Draws a forecast.
   *
   * @param forecast the forecast
   * @return the figure
   */
  public static DrawnFigure of(GenerationForecast forecast) {
    var season = forecast.season();
    var heading =
        FigureWords.sentence(season.pest())
            + ", "
            + season.known().place()
            + ": when the flights come";
    var subheading =
        "As of "
            + FigureWords.longDay(season.asOf())
            + ". Diamond: as likely passed as not. Bars: the date lies within, 5, 8 and 9 in 10.";
    var sheet = new FigureSheet(heading, subheading, List.of(new ForecastPlot(forecast).panel()));
    return new DrawnFigure(sheet, alternative(forecast), caption(forecast), data(forecast));
  }

  static String rowWords(ForecastRow row) {
    return row.isFlight() ? row.share().words() : row.event() + ", " + row.share().words();
  }

  private static String alternative(GenerationForecast forecast) {
    var season = forecast.season();
    var opening =
        "Forecast of "
            + season.pest()
            + " at "
            + season.known().place()
            + " as of "
            + FigureWords.longDay(season.asOf());
    if (forecast.rows().isEmpty()) {
      return opening + ": no flight is left this season.";
    }
    return forecast.rows().stream()
        .map(ForecastFigure::rowSentence)
        .collect(Collectors.joining("; ", opening + ". ", "."));
  }

  private static String rowSentence(ForecastRow row) {
    var dates = row.dates();
    var ninety = dates.interval(0.9);
    var name = "Flight " + row.generation() + ", " + rowWords(row) + ": ";
    var never = "not this season " + FigureWords.chance(dates.chanceNotThisSeason());
    return dates
        .median()
        .map(
            median ->
                name
                    + "median "
                    + FigureWords.day(median)
                    + ", 9 in 10 between "
                    + ninety.from().map(FigureWords::day).orElse(FigureWords.NOT_THIS_SEASON)
                    + " and "
                    + ninety.to().map(FigureWords::day).orElse(FigureWords.NOT_THIS_SEASON)
                    + ", "
                    + never)
        .orElse(name + never);
  }

  private static String caption(GenerationForecast forecast) {
    var season = forecast.season();
    return "Forecast of "
        + FigureWords.longDay(season.asOf())
        + ". Mark: the date that is as likely passed as not. Bars, from dark and thick to pale and"
        + " thin: the date lies within with 5, 8 and 9 chances in 10. A bar with an arrow reaches"
        + " beyond the season's end, "
        + FigureWords.longDay(season.lastDay())
        + ". Shares are of the animals of a flight. Degree-days: "
        + season.model()
        + "; weather ahead from "
        + season.members().size()
        + " past years from "
        + FigureWords.longDay(season.known().lastDay().plusDays(1))
        + " on.";
  }

  private static ResultTable data(GenerationForecast forecast) {
    var columns = new ArrayList<Column>();
    columns.add(Column.of("Flight"));
    columns.add(Column.of("Share over"));
    columns.add(Column.of("Median"));
    for (var words : List.of("5 in 10", "8 in 10", "9 in 10")) {
      columns.add(Column.of(words + " from"));
      columns.add(Column.of(words + " to"));
    }
    columns.add(Column.of("Not this season", "%"));
    var rows = forecast.rows().stream().map(ForecastFigure::dataRow).toList();
    return ResultTable.of("Dates of the flights to come", columns, rows)
        .withNote("Shares are of the animals; 5, 8 and 9 in 10 are chances.");
  }

  private static List<Cell> dataRow(ForecastRow row) {
    var dates = row.dates();
    var cells = new ArrayList<Cell>();
    cells.add(Cell.number(row.generation(), 0));
    cells.add(Cell.text(rowWords(row)));
    cells.add(day(dates, 0.5));
    for (var level = LEVELS.length - 1; level >= 0; level--) {
      cells.add(day(dates, (1 - LEVELS[level]) / 2));
      cells.add(day(dates, 1 - (1 - LEVELS[level]) / 2));
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

  /** The first day that any line needs. */
  static LocalDate firstDay(GenerationForecast forecast) {
    return forecast.rows().stream()
        .flatMap(row -> row.dates().interval(0.9).from().stream())
        .reduce(forecast.season().asOf(), (a, b) -> a.isBefore(b) ? a : b);
  }
}
