package agro.weather.quality;

import agro.report.InputProblem;
import agro.report.Progress;
import agro.weather.DailyTemperatures;
import agro.weather.Medium;
import agro.weather.TemperatureReadings;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Quality control of readings and of daily extremes: a set of rules with their limits, one check
 * for each rule. Rules are applied in the order of {@link QualityRule}. Values are flagged and
 * never changed. Immutable.
 */
public final class QualityControl {

  private final Map<QualityRule, QualityCheck> checks;

  private QualityControl(Map<QualityRule, QualityCheck> checks) {
    this.checks = new EnumMap<>(QualityRule.class);
    this.checks.putAll(checks);
  }

  /**
   * All rules that need nothing but the series itself, with their published or usual limits. Rules
   * against neighbours and past years are added with {@link #with}.
   *
   * @return the control
   */
  public static QualityControl withDefaults() {
    return none()
        .with(FahrenheitCheck.usual())
        .with(RangeCheck.sensor(-80, 60))
        .with(RangeCheck.world())
        .with(ExtremesCheck.order())
        .with(ExtremesCheck.naught())
        .with(ExtremesCheck.midnight(1))
        .with(EnclosingCheck.usual())
        .with(SpikeCheck.published())
        .with(StepCheck.published())
        .with(StuckCheck.usual())
        .with(StreakCheck.published())
        .with(RepeatedCheck.usual())
        .with(DailySpikeCheck.published())
        .with(LaggedRangeCheck.published())
        .with(MonthGapCheck.published())
        .with(ClimateCheck.published())
        .with(ClockCheck.usual());
  }

  /**
   * No rule at all, to be filled with {@link #with}.
   *
   * @return the control
   */
  public static QualityControl none() {
    return new QualityControl(Map.of());
  }

  /**
   * This control with a check added, or put in the place of the check of the same rule.
   *
   * @param check the rule with its limits
   * @return a new control
   */
  public QualityControl with(QualityCheck check) {
    var more = copy();
    more.put(check.rule(), check);
    return new QualityControl(more);
  }

  /**
   * This control without a rule.
   *
   * @param rule the rule to leave out
   * @return a new control
   */
  public QualityControl without(QualityRule rule) {
    var fewer = copy();
    fewer.remove(rule);
    return new QualityControl(fewer);
  }

  private Map<QualityRule, QualityCheck> copy() {
    var copy = new EnumMap<QualityRule, QualityCheck>(QualityRule.class);
    copy.putAll(checks);
    return copy;
  }

  /**
   * The checks in the order in which they are applied.
   *
   * @return an immutable list
   */
  public List<QualityCheck> checks() {
    return List.copyOf(checks.values());
  }

  /**
   * Checks readings.
   *
   * @param readings the readings, not changed
   * @return the flags
   */
  public QualityFlags check(TemperatureReadings readings) {
    var series = new ReadingsInTest(readings);
    var applied = new ArrayList<QualityCheck>();
    var progress = Progress.ofThread();
    for (var check : checks.values()) {
      if (check instanceof ReadingsTest test && readings.size() > 0) {
        progress.step("quality control of " + readings.place(), applied.size(), checks.size());
        test.flag(series);
        applied.add(check);
      }
    }
    return QualityFlags.of(readings, series, applied);
  }

  /**
   * Checks daily extremes.
   *
   * @param days the days, not changed
   * @return the flags
   */
  public QualityFlags check(DailyTemperatures days) {
    var series = DaysInTest.of(days, Optional.empty());
    return QualityFlags.of(days, series, apply(series));
  }

  /**
   * Checks daily extremes, also against readings of the same days.
   *
   * @param days the days, not changed
   * @param readings readings of the same place in the same kind of medium
   * @return the flags of the days
   * @throws InputProblem when one is of air and the other of soil
   */
  public QualityFlags check(DailyTemperatures days, TemperatureReadings readings) {
    readings.medium().require(days.medium().kind(), "the check of extremes against readings");
    var series = DaysInTest.of(days, Optional.of(readings));
    return QualityFlags.of(days, series, apply(series));
  }

  /**
   * Checks daily extremes as they stand in a file, where a minimum may be above its maximum.
   *
   * @param place name of the place
   * @param medium what the thermometer stood in
   * @param firstDay the first day
   * @param minimaCelsius a minimum for each day in °C, NaN where missing
   * @param maximaCelsius a maximum for each day in °C, NaN where missing
   * @return the flags
   * @throws InputProblem when the arrays are empty or differ in length
   */
  public QualityFlags checkExtremes(
      String place,
      Medium medium,
      LocalDate firstDay,
      double[] minimaCelsius,
      double[] maximaCelsius) {
    if (minimaCelsius.length != maximaCelsius.length || minimaCelsius.length == 0) {
      throw InputProblem.of(
              place
                  + ": "
                  + minimaCelsius.length
                  + " minima and "
                  + maximaCelsius.length
                  + " maxima")
          .expected("as many minima as maxima, at least one")
          .because("each day has both")
          .mend("put NaN where one is missing");
    }
    var series = new DaysInTest(medium, firstDay, minimaCelsius, maximaCelsius, Optional.empty());
    return QualityFlags.of(place, series, apply(series));
  }

  private List<QualityCheck> apply(DaysInTest series) {
    var applied = new ArrayList<QualityCheck>();
    var progress = Progress.ofThread();
    for (var check : checks.values()) {
      boolean wanted = !(check instanceof EnclosingCheck) || series.readings().isPresent();
      if (check instanceof DailyTest test && wanted) {
        progress.step("quality control of daily extremes", applied.size(), checks.size());
        test.flag(series);
        applied.add(check);
      }
    }
    return applied;
  }

  @Override
  public String toString() {
    return "Quality control by " + checks.keySet();
  }
}
