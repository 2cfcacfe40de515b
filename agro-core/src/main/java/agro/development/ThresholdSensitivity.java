package agro.development;

import agro.report.InputProblem;
import agro.units.Numbers;
import agro.units.Temperature;
import agro.units.ThermalTime;
import agro.weather.DailyTemperatures;
import agro.working.Cell;
import agro.working.Presentable;
import agro.working.Presentation;
import agro.working.ResultTable;
import agro.working.ResultTable.Column;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;

/**
 * What another lower threshold would change: sums and dates for thresholds around the chosen one.
 *
 * <p>Lower threshold and requirement come from one experiment and lean on each other: a study that
 * finds a lower threshold finds a higher requirement. So each threshold is looked at twice. Moved
 * <em>alone</em>, it keeps the requirement K, as when one number is mistaken. Moved <em>together
 * with K</em>, it keeps the development time at the temperature T at which K was measured: K' = K
 * (T − LT') / (T − LT), as when another study of the same animals had been taken.
 *
 * @param model rule for degree-days with the chosen thresholds
 * @param requirement the requirement K above the chosen lower threshold
 * @param measuredAt temperature T at which K was measured, above all lower thresholds
 * @param rows one line for each lower threshold, in ascending order
 */
public record ThresholdSensitivity(
    DegreeDayModel model, ThermalTime requirement, Temperature measuredAt, List<Line> rows)
    implements Presentable {

  private static final double[] USUAL_SHIFTS = {-2, -1.5, -1, -0.5, 0, 0.5, 1, 1.5, 2};

  /**
   * Sums and dates of one lower threshold.
   *
   * @param lower the lower threshold
   * @param totalC sum from the start to the end of the temperatures in °C·d
   * @param alone when the requirement of the chosen threshold is reached; nothing if it is not
   * @param together the requirement that keeps the development time
   * @param withRequirement when that requirement is reached; nothing if it is not
   */
  public record Line(
      Temperature lower,
      double totalC,
      Optional<Reached> alone,
      ThermalTime together,
      Optional<Reached> withRequirement) {}

  /** Copies the lines. */
  public ThresholdSensitivity {
    rows = List.copyOf(rows);
  }

  /**
   * Thresholds up to 2 °C below and above the chosen one, in steps of half a degree.
   *
   * @param model rule for degree-days with the chosen thresholds
   * @param temperatures daily extremes without a missing day from the start on
   * @param start first day that counts
   * @param requirement thermal time above the chosen lower threshold, above 0
   * @param measuredAt temperature at which the requirement was measured
   * @return the table
   * @throws InputProblem when the thresholds meet each other or that temperature, or days are
   *     missing
   */
  public static ThresholdSensitivity of(
      DegreeDayModel model,
      DailyTemperatures temperatures,
      LocalDate start,
      ThermalTime requirement,
      Temperature measuredAt) {
    return of(model, temperatures, start, requirement, measuredAt, USUAL_SHIFTS);
  }

  /**
   * Thresholds by stated distances from the chosen one.
   *
   * @param model rule for degree-days with the chosen thresholds
   * @param temperatures daily extremes without a missing day from the start on
   * @param start first day that counts
   * @param requirement thermal time above the chosen lower threshold, above 0
   * @param measuredAt temperature at which the requirement was measured
   * @param shiftsCelsius distances in °C, 0 for the chosen threshold, which is added when it is not
   *     among them
   * @return the table
   * @throws InputProblem when the thresholds meet each other or that temperature, or days are
   *     missing
   */
  public static ThresholdSensitivity of(
      DegreeDayModel model,
      DailyTemperatures temperatures,
      LocalDate start,
      ThermalTime requirement,
      Temperature measuredAt,
      double... shiftsCelsius) {
    double chosen = model.thresholds().lower().celsius();
    if (requirement.degreeDaysC() <= 0) {
      throw InputProblem.of("a requirement of " + requirement)
          .expected("a thermal time above 0")
          .because("the table looks for the day on which it is reached")
          .mend("give the requirement of the stage in °C·d");
    }
    var lines = new ArrayList<Line>();
    var shifts = DoubleStream.concat(DoubleStream.of(shiftsCelsius), DoubleStream.of(0));
    for (double shift : shifts.sorted().distinct().toArray()) {
      var lower = new Temperature(chosen + shift);
      requireBelow(lower, measuredAt, model);
      var shifted = model.with(new Thresholds(lower, model.thresholds().upper()));
      var scale = ThermalTimeScale.of(shifted, temperatures, start);
      double factor = (measuredAt.celsius() - lower.celsius()) / (measuredAt.celsius() - chosen);
      var together = requirement.times(factor);
      lines.add(
          new Line(
              lower,
              scale.totalC(),
              scale.reached(requirement),
              together,
              scale.reached(together)));
    }
    return new ThresholdSensitivity(model, requirement, measuredAt, lines);
  }

  private static void requireBelow(
      Temperature lower, Temperature measuredAt, DegreeDayModel model) {
    if (lower.compareTo(measuredAt) >= 0 || model.thresholds().lower().compareTo(measuredAt) >= 0) {
      throw InputProblem.of("a requirement measured at " + measuredAt + " above " + lower)
          .expected("a temperature above all lower thresholds of the table")
          .because("at or below its threshold nothing develops, so no time can have been measured")
          .mend("give the temperature of the rearing, for example 20 °C, or smaller distances");
    }
  }

  /**
   * The line of the chosen threshold.
   *
   * @return sums and dates without a shift
   */
  public Line chosen() {
    return rows.stream()
        .filter(line -> line.lower().equals(model.thresholds().lower()))
        .findFirst()
        .orElseThrow();
  }

  /**
   * The lines as a table.
   *
   * @return for each lower threshold the sum, and the day on which the requirement is reached when
   *     the threshold moves alone and when the requirement moves with it
   */
  public ResultTable table() {
    var cells = new ArrayList<List<Cell>>();
    for (var line : rows) {
      cells.add(
          List.of(
              Cell.number(line.lower().celsius(), 1),
              Cell.number(line.totalC(), 0),
              day(line.alone()),
              later(line.alone()),
              Cell.number(line.together().degreeDaysC(), 0),
              day(line.withRequirement()),
              later(line.withRequirement())));
    }
    return ResultTable.of(
            "Dates and sums by lower threshold",
            List.of(
                Column.of("Lower threshold", "°C"),
                Column.of("Sum to the end", "°C·d"),
                Column.of("Reached, K kept"),
                Column.of("Later by", "d"),
                Column.of("K with the threshold", "°C·d"),
                Column.of("Reached, K moved"),
                Column.of("Later by, K moved", "d")),
            cells)
        .withNote(
            "K kept: "
                + Numbers.plain(requirement.degreeDaysC())
                + " °C·d above each threshold. K moved: the requirement that gives the same"
                + " development time at "
                + measuredAt
                + ".");
  }

  private static Cell day(Optional<Reached> reached) {
    return reached.map(when -> Cell.day(when.day())).orElse(Cell.text("not reached"));
  }

  private Cell later(Optional<Reached> reached) {
    var here = chosen().alone();
    return reached.isPresent() && here.isPresent()
        ? Cell.number(daysBetween(here.get(), reached.get()), 1)
        : Cell.number(Double.NaN, 1);
  }

  private static double daysBetween(Reached from, Reached to) {
    return ChronoUnit.DAYS.between(from.day(), to.day())
        + to.fractionOfDay()
        - from.fractionOfDay();
  }

  @Override
  public Presentation presentation() {
    return Presentation.titled("How much the lower threshold matters")
        .fact("Method", model.toString())
        .fact("Requirement", requirement + " above " + model.thresholds().lower())
        .fact("Measured at", measuredAt.toString())
        .table(table())
        .sources(List.of(model.method().source(), model.cutoff().source()))
        .build();
  }
}
