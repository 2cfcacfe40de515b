package agro.development;

import agro.report.InputProblem;
import agro.units.Numbers;
import agro.units.ThermalTime;
import agro.weather.DailyTemperatures;
import agro.weather.TemperatureReadings;
import agro.weather.sun.DayLength;
import agro.working.Cell;
import agro.working.Presentable;
import agro.working.Presentation;
import agro.working.ResultTable;
import agro.working.ResultTable.Column;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;

/**
 * All methods and cutoffs on one log, over the same days. A requirement belongs to the method that
 * it was found with: the spread of the sums shows what a mix-up costs.
 *
 * @param thresholds lower and, for the cutoffs, upper threshold
 * @param temperatures daily extremes, known from the start to the end
 * @param start first day that counts
 * @param dayLength rule for sunrise and sunset, for the method that needs it
 * @param readings readings behind the extremes, for the sum over readings
 * @param requirement a sum whose date is compared too
 */
public record MethodComparison(
    Thresholds thresholds,
    DailyTemperatures temperatures,
    LocalDate start,
    Optional<DayLength> dayLength,
    Optional<TemperatureReadings> readings,
    Optional<ThermalTime> requirement)
    implements Presentable {

  /**
   * One method with one cutoff.
   *
   * @param model the rule
   * @param totalC sum over all days in °C·d
   * @param reached when the requirement is reached, if there is one and it is
   * @param remark what the sum rests on, or empty
   */
  public record Line(
      DegreeDayModel model, double totalC, Optional<Reached> reached, String remark) {}

  /** Refuses nulls. */
  public MethodComparison {
    Objects.requireNonNull(thresholds, "thresholds");
    Objects.requireNonNull(temperatures, "temperatures");
    Objects.requireNonNull(start, "start");
    Objects.requireNonNull(dayLength, "dayLength");
    Objects.requireNonNull(readings, "readings");
    Objects.requireNonNull(requirement, "requirement");
  }

  /**
   * A comparison of the methods that need daily extremes alone.
   *
   * @param thresholds lower and, for the cutoffs, upper threshold
   * @param temperatures daily extremes, known from the start to the end
   * @param start first day that counts
   * @return the comparison
   */
  public static MethodComparison of(
      Thresholds thresholds, DailyTemperatures temperatures, LocalDate start) {
    return new MethodComparison(
        thresholds, temperatures, start, Optional.empty(), Optional.empty(), Optional.empty());
  }

  /**
   * The same comparison with the sine by day and decay by night.
   *
   * @param rule day length at the place
   * @return a new comparison
   */
  public MethodComparison with(DayLength rule) {
    return new MethodComparison(
        thresholds, temperatures, start, Optional.of(rule), readings, requirement);
  }

  /**
   * The same comparison with the sum over readings.
   *
   * @param behind the readings behind the extremes, on the same days
   * @return a new comparison
   */
  public MethodComparison with(TemperatureReadings behind) {
    return new MethodComparison(
        thresholds, temperatures, start, dayLength, Optional.of(behind), requirement);
  }

  /**
   * The same comparison with the date of a sum.
   *
   * @param sum a requirement
   * @return a new comparison
   */
  public MethodComparison with(ThermalTime sum) {
    return new MethodComparison(
        thresholds, temperatures, start, dayLength, readings, Optional.of(sum));
  }

  /**
   * Sums and dates of every method with every cutoff that it allows.
   *
   * @return the lines by method, within it by cutoff
   * @throws InputProblem when the start is outside the days or a day is missing
   */
  public List<Line> lines() {
    var lines = new ArrayList<Line>();
    for (var method : DegreeDayMethod.values()) {
      for (var cutoff : UpperCutoff.values()) {
        if (isPossible(method, cutoff)) {
          lines.add(line(new DegreeDayModel(method, thresholds, cutoff, dayLength)));
        }
      }
    }
    return lines;
  }

  private boolean isPossible(DegreeDayMethod method, UpperCutoff cutoff) {
    return method.allows(cutoff)
        && (thresholds.upper().isPresent() || !cutoff.needsUpperThreshold())
        && (dayLength.isPresent() || !method.needsDayLength())
        && (readings.isPresent() || !method.needsReadings());
  }

  private Line line(DegreeDayModel model) {
    var daily =
        model.method().needsReadings()
            ? ReadingSum.of(thresholds, model.cutoff()).daily(readings.orElseThrow())
            : model.daily(temperatures);
    var last = temperatures.lastDay();
    if (start.isBefore(daily.firstDay()) || last.isAfter(daily.lastDay())) {
      throw InputProblem.of("readings from " + daily.firstDay() + " to " + daily.lastDay())
          .expected("readings on all days from " + start + " to " + last)
          .because("sums over different days cannot be compared")
          .mend("cut the daily extremes to the days of the readings with between");
    }
    var scale = ThermalTimeScale.of(daily.between(start, last), start, MissingDayPolicy.REFUSE);
    int alone = scale.daily().daysWith(DayBasis.WITHOUT_TOMORROW).size();
    return new Line(
        model,
        scale.totalC(),
        requirement.flatMap(scale::reached),
        alone == 0 ? "" : alone + (alone == 1 ? " day" : " days") + " without tomorrow's minimum");
  }

  /**
   * The line that the others are measured against.
   *
   * @return the single sine with the horizontal cutoff, or with none when there is no upper
   *     threshold
   */
  public Line reference() {
    return line(
        DegreeDayModel.singleSine(
            thresholds,
            thresholds.upper().isPresent() ? UpperCutoff.HORIZONTAL : UpperCutoff.NONE));
  }

  /**
   * The lines as a table.
   *
   * @return for each method and cutoff the sum, its difference to the reference, and the day on
   *     which the requirement is reached, if there is one
   */
  public ResultTable table() {
    var reference = reference();
    var columns = new ArrayList<Column>();
    columns.add(Column.of("Method"));
    columns.add(Column.of("Cutoff"));
    columns.add(Column.of("Sum", "°C·d"));
    columns.add(Column.of("Difference", "%"));
    requirement.ifPresent(sum -> columns.add(Column.of("Reached " + sum)));
    columns.add(Column.of("Remark"));
    var rows = new ArrayList<List<Cell>>();
    for (var line : lines()) {
      var cells = new ArrayList<Cell>();
      cells.add(Cell.text(line.model().method().words()));
      cells.add(Cell.text(line.model().cutoff().name().toLowerCase(Locale.ROOT)));
      cells.add(Cell.number(line.totalC(), 1));
      cells.add(
          Cell.number(
              reference.totalC() == 0 ? Double.NaN : 100 * (line.totalC() / reference.totalC() - 1),
              1));
      requirement.ifPresent(
          sum ->
              cells.add(
                  line.reached()
                      .map(when -> Cell.day(when.day()))
                      .orElse(Cell.text("not reached"))));
      cells.add(Cell.text(line.remark()));
      rows.add(cells);
    }
    return ResultTable.of("Degree-days by every method", columns, rows)
        .withNote("Difference to: " + reference.model() + ".");
  }

  @Override
  public Presentation presentation() {
    var lines = lines();
    var least = lines.stream().mapToDouble(Line::totalC).min().orElseThrow();
    var most = lines.stream().mapToDouble(Line::totalC).max().orElseThrow();
    return Presentation.titled("Degree-days at " + temperatures.place() + " by every method")
        .fact("Thresholds", thresholds.toString())
        .fact("Days", start + " to " + temperatures.lastDay())
        .fact(
            "Sums",
            Numbers.fixed(least, 1)
                + " to "
                + Numbers.fixed(most, 1)
                + " °C·d: a requirement must be run with the method that it was found with")
        .table(table())
        .sources(lines.stream().map(line -> line.model().method().source()).distinct().toList())
        .build();
  }
}
