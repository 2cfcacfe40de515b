package agro.notebook.figure;

import agro.notebook.display.PlainCells;
import agro.working.Cell;
import agro.working.ResultTable;
import agro.working.ResultTable.Column;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.function.IntFunction;
import org.knowm.xchart.HorizontalBarSeries;
import org.knowm.xchart.PieSeries;
import org.knowm.xchart.internal.chartpart.Chart;
import org.knowm.xchart.internal.chartpart.IChart;
import org.knowm.xchart.internal.series.AxesChartSeriesCategory;
import org.knowm.xchart.internal.series.AxesChartSeriesNumerical;
import org.knowm.xchart.internal.series.Series;
import org.knowm.xchart.internal.series.Series.DataType;
import org.knowm.xchart.style.AxesChartStyler;

/** The numbers in a chart that a reader made. */
final class ChartPoints {

  /** Points of one series that are listed; a chart of more is read from its picture. */
  private static final int MOST = 200;

  private static final int DECIMALS = 4;

  private final List<List<Cell>> rows = new ArrayList<>();
  private final List<String> notes = new ArrayList<>();

  private ZoneId zone = ZoneId.systemDefault();

  private ChartPoints() {}

  /**
   * The points of a chart.
   *
   * @param chart any chart
   * @param title what the chart shows
   * @return the first points of each series; of a kind of chart that is not known only the names
   */
  static ResultTable of(IChart chart, String title) {
    var points = new ChartPoints();
    if (chart instanceof Chart<?, ?> known) {
      if (known.getStyler() instanceof AxesChartStyler styler) {
        points.zone = styler.getTimezone().toZoneId();
      }
      for (Series series : known.getSeriesCollection()) {
        points.add(series);
      }
    }
    return new ResultTable(
        title.isBlank() ? "Points" : title,
        List.of(Column.of("Series"), Column.of("x"), Column.of("y")),
        PlainCells.evenDecimals(points.rows),
        points.notes);
  }

  private void add(Series series) {
    if (series instanceof AxesChartSeriesNumerical points) {
      var isDate = points.getxAxisDataType() == DataType.Date;
      addAll(
          series,
          points.getXData().length,
          at -> isDate ? day(points.getXData()[at]) : number(points.getXData()[at]),
          at -> number(points.getYData()[at]));
    } else if (series instanceof HorizontalBarSeries bars) {
      addAll(
          series,
          bars.getXData().size(),
          at -> PlainCells.of(bars.getYData().get(at)),
          at -> PlainCells.of(bars.getXData().get(at)));
    } else if (series instanceof AxesChartSeriesCategory bars && bars.getXData() != null) {
      var names = new ArrayList<Object>(bars.getXData());
      addAll(
          series,
          Math.min(names.size(), bars.getYData().length),
          at -> PlainCells.of(names.get(at)),
          at -> number(bars.getYData()[at]));
    } else if (series instanceof PieSeries slice) {
      rows.add(row(series, Cell.text("share"), PlainCells.of(slice.getValue())));
    } else {
      rows.add(row(series, Cell.text("see the picture"), Cell.notKnown()));
    }
  }

  private void addAll(Series series, int points, IntFunction<Cell> x, IntFunction<Cell> y) {
    for (var at = 0; at < Math.min(MOST, points); at++) {
      rows.add(row(series, x.apply(at), y.apply(at)));
    }
    note(series, points);
  }

  /** Charts keep dates as moments; in the chart's own time zone they are the days given. */
  private Cell day(double milliseconds) {
    var time = LocalDateTime.ofInstant(Instant.ofEpochMilli((long) milliseconds), zone);
    return time.toLocalTime().equals(LocalTime.MIDNIGHT)
        ? Cell.day(time.toLocalDate())
        : Cell.text(time.toString());
  }

  /** At least four decimals, more for small numbers. */
  private static Cell number(double value) {
    return PlainCells.of(value) instanceof Cell.Figure figure
        ? Cell.number(value, Math.max(DECIMALS, figure.decimals()))
        : Cell.notKnown();
  }

  private void note(Series series, int points) {
    if (points > MOST) {
      notes.add("The first " + MOST + " of " + points + " points of " + series.getName());
    }
  }

  private static List<Cell> row(Series series, Cell x, Cell y) {
    return List.of(Cell.text(series.getName()), x, y);
  }
}
