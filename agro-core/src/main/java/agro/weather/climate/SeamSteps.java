package agro.weather.climate;

import agro.report.InputProblem;
import agro.units.Numbers;
import agro.weather.DailyTemperatures;
import agro.weather.DayOrigin;
import agro.working.Cell;
import agro.working.Presentable;
import agro.working.Presentation;
import agro.working.ResultTable;
import agro.working.ResultTable.Column;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * How far past years jump away from the known days at the seam.
 *
 * @param lastKnown last known day
 * @param usualMinCelsius root mean square change of the minimum from day to day in the known days,
 *     in °C; NaN with fewer than two days in a row
 * @param usualMaxCelsius the same of the maximum
 * @param steps one for each past year, ascending
 */
public record SeamSteps(
    LocalDate lastKnown, double usualMinCelsius, double usualMaxCelsius, List<Step> steps)
    implements Presentable {

  /** A step of so many usual changes is told as wide. */
  public static final double WIDE = 3;

  /**
   * The step of one past year.
   *
   * @param year calendar year of the member
   * @param minCelsius its first minimum less the last known one, in °C
   * @param maxCelsius its first maximum less the last known one, in °C
   */
  public record Step(int year, double minCelsius, double maxCelsius) {}

  /** Copies the steps. */
  public SeamSteps {
    Objects.requireNonNull(lastKnown, "lastKnown");
    steps = List.copyOf(steps);
  }

  static SeamSteps of(DailyTemperatures known, PastYearRuns runs) {
    var last = known.lastDay();
    var steps = new ArrayList<Step>();
    for (int i = 0; i < runs.members().size(); i++) {
      var member = runs.members().get(i);
      var first = member.firstDay();
      if (!first.minusDays(1).equals(last) || known.origin(last) == DayOrigin.MISSING) {
        throw InputProblem.of("known days to " + last + " and past years from " + first)
            .expected("temperatures for the day before the past years begin")
            .because("the step at the seam is the change from that day to the next")
            .mend("ask for past years from " + last.plusDays(1) + " on, or cut the known days");
      }
      steps.add(
          new Step(
              runs.years().get(i),
              member.minCelsius(first) - known.minCelsius(last),
              member.maxCelsius(first) - known.maxCelsius(last)));
    }
    return new SeamSteps(
        last, usualChange(known.minimaCelsius()), usualChange(known.maximaCelsius()), steps);
  }

  private static double usualChange(double[] values) {
    double squares = 0;
    int count = 0;
    for (int i = 1; i < values.length; i++) {
      double change = values[i] - values[i - 1];
      if (!Double.isNaN(change)) {
        squares += change * change;
        count++;
      }
    }
    return count == 0 ? Double.NaN : Math.sqrt(squares / count);
  }

  /**
   * The steps that are more than {@value #WIDE} usual changes from day to day.
   *
   * @return wide steps, ascending by year
   */
  public List<Step> wide() {
    return steps.stream()
        .filter(
            step ->
                Math.abs(step.minCelsius()) > WIDE * usualMinCelsius
                    || Math.abs(step.maxCelsius()) > WIDE * usualMaxCelsius)
        .toList();
  }

  @Override
  public Presentation presentation() {
    var rows = new ArrayList<List<Cell>>();
    for (var step : steps) {
      rows.add(
          List.of(
              Cell.text(Integer.toString(step.year())),
              Cell.number(step.minCelsius(), 1),
              Cell.number(step.maxCelsius(), 1),
              Cell.text(wide().contains(step) ? "wide" : "")));
    }
    var columns =
        List.of(
            Column.of("Past year"),
            Column.of("Step of minimum", "°C"),
            Column.of("Step of maximum", "°C"),
            Column.of("Verdict"));
    var note =
        "Usual change from one day to the next: "
            + Numbers.fixed(usualMinCelsius, 1)
            + " °C of the minimum, "
            + Numbers.fixed(usualMaxCelsius, 1)
            + " °C of the maximum. Wide: more than "
            + Numbers.fixed(WIDE, 0)
            + " times that.";
    return Presentation.titled("Steps from " + lastKnown + " to the past years")
        .table(
            new ResultTable(
                "First day of each past year less the last known day",
                columns,
                rows,
                List.of(note)))
        .build();
  }
}
