package agro.notebook.figure;

import agro.report.InputProblem;
import agro.units.Numbers;
import agro.weather.DailyTemperatures;
import agro.weather.DayOrigin;
import agro.weather.gap.FilledDays;
import agro.weather.gap.FilledReadings;
import agro.working.Cell;
import agro.working.ResultTable;
import agro.working.ResultTable.Column;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/** Gaps of a log and what was put into them, with the error of every filled value. */
public final class GapFigure {

  private GapFigure() {}

  /**
   * Draws all days of a filled series.
   *
   * @param filled the series after filling
   * @return the figure
   */
  public static DrawnFigure days(FilledDays filled) {
    return days(filled, filled.daily().firstDay(), filled.daily().lastDay());
  }

  /**
   * Draws some days of a filled series: observed extremes as lines, filled ones as marks with bars
   * of 90 % intervals, open days shaded.
   *
   * @param filled the series after filling
   * @param from first day drawn, inside the series
   * @param to last day drawn, inside the series
   * @return the figure
   * @throws InputProblem when the days reach outside the series
   */
  public static DrawnFigure days(FilledDays filled, LocalDate from, LocalDate to) {
    var days = filled.daily().between(from, to);
    var sheet =
        new FigureSheet(
            FigureWords.sentence(days.place()) + ": gaps and what was put into them",
            FigureWords.longDay(from) + " to " + FigureWords.longDay(to),
            List.of(new GapPlot(days).panel()));
    return new DrawnFigure(sheet, alternative(days), caption(), data(days));
  }

  private static String alternative(DailyTemperatures days) {
    var text = new StringBuilder("Daily minima and maxima at ").append(days.place());
    text.append(", ").append(days.size()).append(" days");
    for (var origin : DayOrigin.values()) {
      int count = 0;
      double minErrors = 0;
      double maxErrors = 0;
      for (int i = 0; i < days.size(); i++) {
        if (days.originAt(i) == origin) {
          count++;
          minErrors += days.minStandardErrorCelsius(days.day(i));
          maxErrors += days.maxStandardErrorCelsius(days.day(i));
        }
      }
      if (count > 0) {
        text.append("; ").append(origin.words()).append(": ").append(count);
        if (minErrors + maxErrors > 0) {
          text.append(" (mean standard errors ")
              .append(Numbers.fixed(minErrors / count, 1))
              .append(" °C of the minimum and ")
              .append(Numbers.fixed(maxErrors / count, 1))
              .append(" °C of the maximum)");
        }
      }
    }
    return text.append('.').toString();
  }

  private static String caption() {
    return "Lines: observed daily maxima (upper) and minima (lower). Marks: filled days, with the"
        + " 90 % interval of each (1.645 standard errors on both sides); their shape tells the"
        + " source. Grey stripes: days without temperatures.";
  }

  private static ResultTable data(DailyTemperatures days) {
    var rows = new ArrayList<List<Cell>>();
    for (int i = 0; i < days.size(); i++) {
      var day = days.day(i);
      rows.add(
          List.of(
              Cell.day(day),
              Cell.text(days.originAt(i).words()),
              Cell.number(days.minCelsius(day), 1),
              Cell.number(days.minStandardErrorCelsius(day), 1),
              Cell.number(days.maxCelsius(day), 1),
              Cell.number(days.maxStandardErrorCelsius(day), 1)));
    }
    return ResultTable.of(
        "Days with their origin",
        List.of(
            Column.of("Day"),
            Column.of("From"),
            Column.of("Minimum", "°C"),
            Column.of("Its standard error", "°C"),
            Column.of("Maximum", "°C"),
            Column.of("Its standard error ", "°C")),
        rows);
  }

  /**
   * Draws some days of filled readings: observed ones as a line, filled ones as a dashed line in
   * the band of their 90 % intervals.
   *
   * @param filled the readings after filling
   * @param from first day drawn
   * @param to last day drawn, not before the first
   * @return the figure
   * @throws InputProblem when there is no reading in these days
   */
  public static DrawnFigure readings(FilledReadings filled, LocalDate from, LocalDate to) {
    var plot = new ReadingGapPlot(filled, from, to);
    var place = filled.readings().place();
    var sheet =
        new FigureSheet(
            FigureWords.sentence(place) + ": gaps between readings",
            FigureWords.longDay(from) + " to " + FigureWords.longDay(to),
            List.of(plot.panel()));
    var alternative =
        "Readings at "
            + place
            + " from "
            + FigureWords.longDay(from)
            + " to "
            + FigureWords.longDay(to)
            + ": "
            + plot.observed()
            + " observed and "
            + plot.filled()
            + " filled in, with a mean standard error of "
            + Numbers.fixed(plot.meanError(), 1)
            + " °C.";
    var caption =
        "Line: observed readings. Dashed: filled in, with the band of their 90 % intervals (1.645"
            + " standard errors, from filling the same hours of other days). Breaks: gaps left"
            + " open.";
    return new DrawnFigure(sheet, alternative, caption, plot.data());
  }
}
