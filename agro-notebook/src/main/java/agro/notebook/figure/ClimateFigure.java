package agro.notebook.figure;

import agro.report.InputProblem;
import agro.units.Numbers;
import agro.weather.DailyTemperatures;
import agro.weather.DayOrigin;
import agro.weather.Extreme;
import agro.weather.climate.ClimateNormals;
import agro.working.Cell;
import agro.working.ResultTable;
import agro.working.ResultTable.Column;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/** What is usual on each day of the year, with a season over it. */
public final class ClimateFigure {

  /** Standard deviations on both sides that hold 8 days in 10 of a normal distribution. */
  static final double EIGHT_IN_TEN = 1.2815515655446004;

  private ClimateFigure() {}

  /**
   * Draws the normals of a year.
   *
   * @param normals the normals
   * @param year the calendar year
   * @return the figure
   */
  public static DrawnFigure normals(ClimateNormals normals, int year) {
    return figure(
        normals,
        DailyTemperatures.builder(LocalDate.of(year, 1, 1), LocalDate.of(year, 12, 31))
            .build(normals.place(), normals.medium()));
  }

  /**
   * Draws a season over the normals, also one across New Year.
   *
   * @param normals the normals
   * @param season days of the season, in the same kind of medium
   * @return the figure
   * @throws InputProblem when one is of air and the other of soil
   */
  public static DrawnFigure season(ClimateNormals normals, DailyTemperatures season) {
    season.medium().require(normals.medium().kind(), "what is usual");
    return figure(normals, season);
  }

  private static DrawnFigure figure(ClimateNormals normals, DailyTemperatures season) {
    var any = season.missingDays().size() < season.size();
    var maxima = new ClimatePlot(normals, season, Extreme.MAXIMUM, false).panel();
    var minima = new ClimatePlot(normals, season, Extreme.MINIMUM, true).panel();
    var heading =
        FigureWords.sentence(season.place())
            + (any
                ? ": the days from "
                    + FigureWords.longDay(season.firstDay())
                    + " to "
                    + FigureWords.longDay(season.lastDay())
                    + " against what is usual"
                : ": what is usual on each day of the year");
    var sheet =
        new FigureSheet(heading, FigureWords.sentence(normals.toString()), List.of(maxima, minima));
    return new DrawnFigure(
        sheet, alternative(normals, season, any), caption(normals, any), data(normals, season));
  }

  private static String alternative(ClimateNormals normals, DailyTemperatures season, boolean any) {
    var text = new StringBuilder("Usual daily extremes at ").append(normals.place());
    for (var extreme : Extreme.values()) {
      text.append(", ")
          .append(extreme.plural())
          .append(' ')
          .append(range(normals, season, extreme));
    }
    text.append('.');
    if (any) {
      for (var extreme : Extreme.values()) {
        text.append(" The season's ")
            .append(extreme.plural())
            .append(" were on average ")
            .append(departure(normals, season, extreme))
            .append('.');
      }
    }
    return text.toString();
  }

  private static String range(ClimateNormals normals, DailyTemperatures season, Extreme extreme) {
    double lowest = Double.POSITIVE_INFINITY;
    double highest = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < season.size(); i++) {
      double normal = normals.normalCelsius(extreme, season.day(i));
      if (!Double.isNaN(normal)) {
        lowest = Math.min(lowest, normal);
        highest = Math.max(highest, normal);
      }
    }
    return lowest > highest
        ? "not known"
        : Numbers.fixed(lowest, 1) + " to " + Numbers.fixed(highest, 1) + " °C";
  }

  private static String departure(
      ClimateNormals normals, DailyTemperatures season, Extreme extreme) {
    double sum = 0;
    int count = 0;
    for (int i = 0; i < season.size(); i++) {
      var day = season.day(i);
      double departure = extreme.of(season, day) - normals.normalCelsius(extreme, day);
      if (!Double.isNaN(departure)) {
        sum += departure;
        count++;
      }
    }
    return count == 0
        ? "not to be compared"
        : Numbers.fixed(Math.abs(sum / count), 1)
            + " °C "
            + (sum < 0 ? "below" : "above")
            + " what is usual";
  }

  private static String caption(ClimateNormals normals, boolean any) {
    return "Smooth line: usual daily maximum (above) and minimum (below), harmonic curves. Band: 8"
        + " days in 10 lie in it."
        + (any
            ? " Thin line: the season; dotted where its days were filled in or are forecast."
            : "")
        + " "
        + String.join(" ", normals.notes());
  }

  private static ResultTable data(ClimateNormals normals, DailyTemperatures season) {
    var rows = new ArrayList<List<Cell>>();
    for (int i = 0; i < season.size(); i++) {
      var day = season.day(i);
      var cells = new ArrayList<Cell>();
      cells.add(Cell.day(day));
      for (var extreme : Extreme.values()) {
        cells.add(Cell.number(normals.normalCelsius(extreme, day), 1));
        cells.add(Cell.number(normals.spreadCelsius(extreme, day), 1));
        cells.add(
            season.originAt(i) == DayOrigin.MISSING
                ? Cell.text("")
                : Cell.number(extreme.of(season, day), 1));
      }
      rows.add(cells);
    }
    var columns = new ArrayList<Column>();
    columns.add(Column.of("Day"));
    for (var extreme : Extreme.values()) {
      columns.add(Column.of("Usual " + extreme.words(), "°C"));
      columns.add(Column.of("Spread of the " + extreme.words() + " (sd)", "°C"));
      columns.add(Column.of(FigureWords.sentence(extreme.words()) + " of the season", "°C"));
    }
    return ResultTable.of("What is usual, day by day", columns, rows);
  }
}
