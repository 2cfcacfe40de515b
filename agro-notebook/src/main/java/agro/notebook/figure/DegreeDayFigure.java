package agro.notebook.figure;

import agro.generation.ObservedSeason;
import agro.generation.SeasonUnderWay;
import agro.working.Cell;
import agro.working.ResultTable;
import agro.working.ResultTable.Column;
import java.util.ArrayList;
import java.util.List;

/**
 * Degree-days of a season as they add up: past seasons, the part that is known, and what may come.
 */
public final class DegreeDayFigure {

  private DegreeDayFigure() {}

  /**
   * Draws the season under way without past seasons.
   *
   * @param season the season under way
   * @return the figure
   */
  public static DrawnFigure accumulation(SeasonUnderWay season) {
    return accumulation(season, List.of());
  }

  /**
   * Draws the season under way among past seasons.
   *
   * @param season the season under way
   * @param past past seasons of the place, counted in the same way; each is laid over the calendar
   *     of this season, start day on start day
   * @return the figure
   */
  public static DrawnFigure accumulation(SeasonUnderWay season, List<ObservedSeason> past) {
    var sums = new SeasonSums(season, past);
    var heading =
        FigureWords.sentence(season.known().place())
            + ": degree-days since "
            + FigureWords.longDay(season.firstDay());
    var sheet =
        new FigureSheet(
            heading,
            "As of " + FigureWords.longDay(season.asOf()),
            List.of(new AccumulationPlot(sums).panel()));
    return new DrawnFigure(sheet, alternative(sums), caption(sums), data(sums));
  }

  private static String alternative(SeasonSums sums) {
    var season = sums.season();
    var text =
        new StringBuilder("Degree-days at ")
            .append(season.known().place())
            .append(" as of ")
            .append(FigureWords.longDay(season.asOf()))
            .append(": ")
            .append(FigureWords.degreeDays(sums.knownTotal()))
            .append(" from ")
            .append(FigureWords.longDay(season.firstDay()))
            .append(" to ")
            .append(FigureWords.longDay(season.known().lastDay()))
            .append(". With the weather of past years, 8 in 10 lie between ")
            .append(FigureWords.degreeDays(sums.aheadAtEnd(0.1)))
            .append(" and ")
            .append(FigureWords.degreeDays(sums.aheadAtEnd(0.9)))
            .append(" on ")
            .append(FigureWords.longDay(season.lastDay()))
            .append(", median ")
            .append(FigureWords.degreeDays(sums.aheadAtEnd(0.5)))
            .append('.');
    for (var each : sums.past()) {
      var then = sums.pastSum(each, sums.knownDays());
      if (Double.isFinite(then)) {
        text.append(" Season ")
            .append(each.year())
            .append(" after as many days: ")
            .append(FigureWords.degreeDays(then))
            .append('.');
      }
    }
    return text.toString();
  }

  private static String caption(SeasonSums sums) {
    var season = sums.season();
    return "As of "
        + FigureWords.longDay(season.asOf())
        + ". Degree-days by "
        + season.model()
        + " ("
        + season.model().method().source().citation()
        + "), added up from the start of "
        + FigureWords.longDay(season.firstDay())
        + ". Thick line: known days, solid where observed at the place, dashed where taken from a"
        + " neighbour station, dotted where forecast. Band: 10 to 90 % of the sums that "
        + season.members().size()
        + " past years add to it, line in it their median"
        + (sums.past().isEmpty() ? "." : ". Thin lines: past seasons, start day on start day.");
  }

  private static ResultTable data(SeasonSums sums) {
    var columns = new ArrayList<Column>();
    columns.add(Column.of("Start of day"));
    columns.add(Column.of("Known", FigureWords.DEGREE_DAYS));
    columns.add(Column.of("Day before from"));
    columns.add(Column.of("10 % of years", FigureWords.DEGREE_DAYS));
    columns.add(Column.of("Median of years", FigureWords.DEGREE_DAYS));
    columns.add(Column.of("90 % of years", FigureWords.DEGREE_DAYS));
    for (var each : sums.past()) {
      columns.add(Column.of("Season " + each.year(), FigureWords.DEGREE_DAYS));
    }
    var rows = new ArrayList<List<Cell>>();
    for (var i = 0; i <= sums.seasonDays(); i++) {
      rows.add(dataRow(sums, i));
    }
    return ResultTable.of("Degree-days since the start day", columns, rows);
  }

  private static List<Cell> dataRow(SeasonSums sums, int day) {
    var cells = new ArrayList<Cell>();
    cells.add(Cell.day(sums.season().firstDay().plusDays(day)));
    cells.add(number(sums.known(day)));
    cells.add(
        day >= 1 && day <= sums.knownDays()
            ? Cell.text(sums.origin(day - 1).words())
            : Cell.text(""));
    cells.add(number(sums.ahead(day, 0.1)));
    cells.add(number(sums.ahead(day, 0.5)));
    cells.add(number(sums.ahead(day, 0.9)));
    for (var each : sums.past()) {
      cells.add(number(sums.pastSum(each, day)));
    }
    return cells;
  }

  private static Cell number(double value) {
    return Double.isNaN(value) ? Cell.text("") : Cell.number(value, 1);
  }
}
