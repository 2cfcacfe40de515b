package agro.notebook.figure;

import agro.development.DegreeDayModel;
import agro.report.InputProblem;
import agro.units.Numbers;
import agro.units.TemperatureDifference;
import agro.weather.DailyExtremes;
import agro.weather.curve.CurveDay;
import agro.working.Cell;
import agro.working.ResultTable;
import agro.working.ResultTable.Column;
import java.util.ArrayList;
import java.util.List;

/** What a degree-day is: the area between the temperature curve of a day and the threshold. */
public final class DayCurveFigure {

  private DayCurveFigure() {}

  /**
   * Draws the temperature curve of one day with its thresholds and the area that counts, by a
   * method that looks neither at tomorrow nor at the sun.
   *
   * @param model the rule for degree-days
   * @param day the day
   * @return the figure
   * @throws InputProblem when the method needs more
   */
  public static DrawnFigure of(DegreeDayModel model, DailyExtremes day) {
    model.degreeDays(day);
    return of(model, day, CurveDay.of(day));
  }

  /**
   * Draws the temperature curve of one day with its thresholds and the area that counts, by any
   * method for daily extremes.
   *
   * @param model the rule for degree-days
   * @param day the day
   * @param tomorrow the day after it
   * @return the figure
   * @throws InputProblem when the second day does not follow the first
   */
  public static DrawnFigure of(DegreeDayModel model, DailyExtremes day, DailyExtremes tomorrow) {
    return of(model, day, model.curveDay(day, tomorrow));
  }

  private static DrawnFigure of(DegreeDayModel model, DailyExtremes day, CurveDay known) {
    var plot = new DayCurvePlot(model, known);
    var area = FigureWords.degreeDaysFine(model.degreeDaysC(known));
    var extremes =
        Numbers.plain(day.minCelsius()) + " to " + Numbers.plain(day.maxCelsius()) + " °C";
    var then =
        model.method().needsNextMinimum()
            ? ", then down to " + Numbers.plain(known.endCelsius()) + " °C"
            : "";
    var sheet =
        new FigureSheet(
            FigureWords.longDay(day.date()) + ", " + extremes + then + ": " + area,
            FigureWords.sentence(model.toString()),
            List.of(plot.panel()));
    var alternative =
        "A "
            + model.method().words()
            + " through a day of "
            + extremes
            + then
            + ", thresholds "
            + model.thresholds()
            + ". The shaded area is "
            + area
            + "; the plain average of the extremes would give "
            + FigureWords.degreeDaysFine(plainAverage(model, day))
            + ".";
    return new DrawnFigure(sheet, alternative, dayCaption(model), dayData(model, day, known, plot));
  }

  /**
   * Draws the degree-days of a day by its mean temperature, once by the model and once by the plain
   * average {@code max(0, mean - threshold)}, which sees no warm afternoon on a cold day.
   *
   * @param model the rule for degree-days
   * @param dailyRange maximum less minimum of the day, not negative
   * @return the figure
   * @throws InputProblem when the range is negative
   */
  public static DrawnFigure againstPlainAverage(
      DegreeDayModel model, TemperatureDifference dailyRange) {
    if (dailyRange.celsius() < 0) {
      throw InputProblem.of("a daily range of " + Numbers.plain(dailyRange.celsius()) + " °C")
          .expected("a maximum that is not below the minimum")
          .because("a day cannot be colder at its warmest than at its coldest")
          .mend("give maximum less minimum");
    }
    var comparison = new AverageComparison(model, dailyRange.celsius());
    var range = Numbers.plain(dailyRange.celsius()) + " °C";
    var sheet =
        new FigureSheet(
            "Why the method matters: days with a range of " + range,
            FigureWords.sentence(model.method().words())
                + " against the plain average, "
                + model.thresholds(),
            List.of(comparison.panel()));
    var alternative =
        "Degree-days of a day by its mean temperature, daily range "
            + range
            + ", thresholds "
            + model.thresholds()
            + ". Where the mean equals the lower threshold the plain average gives 0 °C·d and the "
            + model.method().words()
            + " "
            + FigureWords.degreeDaysFine(comparison.atThreshold())
            + ".";
    var caption =
        "Degree-days of one day by "
            + model
            + " ("
            + model.method().source().citation()
            + "), and by the plain average of the day's extremes, max(0, mean − lower threshold)."
            + " The two agree only where the whole day is above the threshold"
            + (model.cutoff().needsUpperThreshold() ? " and below the upper one." : ".");
    return new DrawnFigure(sheet, alternative, caption, comparison.data());
  }

  static double plainAverage(DegreeDayModel model, DailyExtremes day) {
    return Math.max(
        0, (day.minCelsius() + day.maxCelsius()) / 2 - model.thresholds().lower().celsius());
  }

  private static String dayCaption(DegreeDayModel model) {
    return (model.method().curve().isPresent()
            ? "Temperature of a day as a " + model.method().words() + " between its extremes ("
            : "Degree-days by the "
                + model.method().words()
                + "; no curve is assumed, and the line drawn has the area that it counts (")
        + model.method().source().citation()
        + "). The shaded area, in °C times days, is what counts"
        + (model.cutoff().needsUpperThreshold()
            ? "; above the upper threshold " + model.cutoff().meaning()
            : "")
        + ". "
        + (model.method().needsDayLength()
            ? "Hours run from sunrise, at which the day has its minimum."
            : "Hours run from the day's minimum.");
  }

  private static ResultTable dayData(
      DegreeDayModel model, DailyExtremes day, CurveDay known, DayCurvePlot plot) {
    var rows = new ArrayList<List<Cell>>();
    for (var hour = 0; hour <= 24; hour++) {
      rows.add(
          List.of(
              Cell.number(hour, 0),
              Cell.number(plot.temperature(hour), 2),
              Cell.number(plot.rate(plot.temperature(hour)), 2)));
    }
    return ResultTable.of(
            "Temperature curve of " + day.date(),
            List.of(
                Column.of("Hours since the minimum", "h"),
                Column.of("Temperature", "°C"),
                Column.of("Counts above the threshold", "°C")),
            rows)
        .withNote(
            "Degree-days of the day: "
                + FigureWords.degreeDaysFine(model.degreeDaysC(known))
                + "; plain average: "
                + FigureWords.degreeDaysFine(plainAverage(model, day))
                + ".");
  }
}
