package agro.weather.quality;

import agro.report.InputProblem;
import agro.weather.DailyTemperatures;
import agro.weather.TemperatureReadings;
import agro.working.Presentable;
import agro.working.Presentation;
import agro.working.ResultTable;
import java.util.BitSet;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/**
 * What quality control found: flags on values of one series, which itself is not changed. A flag is
 * a question to whoever knows the place, and no verdict.
 */
public final class QualityFlags implements Presentable {

  private final String series;
  private final int values;
  private final List<QualityFlag> flags;
  private final List<QualityCheck> applied;
  private final List<String> notChecked;
  private final Optional<TemperatureReadings> readings;
  private final Optional<DailyTemperatures> days;

  private QualityFlags(
      String series,
      int values,
      List<QualityFlag> flags,
      List<QualityCheck> applied,
      List<String> notChecked,
      Optional<TemperatureReadings> readings,
      Optional<DailyTemperatures> days) {
    this.series = series;
    this.values = values;
    this.flags = List.copyOf(flags);
    this.applied = List.copyOf(applied);
    this.notChecked = List.copyOf(notChecked);
    this.readings = readings;
    this.days = days;
  }

  static QualityFlags of(
      TemperatureReadings readings, ReadingsInTest test, List<QualityCheck> applied) {
    return new QualityFlags(
        readings.toString(),
        readings.size(),
        test.flags(),
        applied,
        test.notChecked(),
        Optional.of(readings),
        Optional.empty());
  }

  static QualityFlags of(DailyTemperatures days, DaysInTest test, List<QualityCheck> applied) {
    return new QualityFlags(
        days.toString(),
        2 * (days.size() - days.missingDays().size()),
        test.flags(),
        applied,
        test.notChecked(),
        Optional.empty(),
        Optional.of(days));
  }

  static QualityFlags of(String place, DaysInTest test, List<QualityCheck> applied) {
    return new QualityFlags(
        place + ", " + test.day(0) + " to " + test.day(test.size() - 1),
        2 * test.size(),
        test.flags(),
        applied,
        test.notChecked(),
        Optional.empty(),
        Optional.empty());
  }

  /**
   * The series in words.
   *
   * @return place, medium and days
   */
  public String series() {
    return series;
  }

  /**
   * All flags, rule by rule in the order in which the rules were applied.
   *
   * @return an immutable list
   */
  public List<QualityFlag> all() {
    return flags;
  }

  /**
   * The flags of one rule.
   *
   * @param rule the rule
   * @return an immutable list, possibly empty
   */
  public List<QualityFlag> of(QualityRule rule) {
    return flags.stream().filter(flag -> flag.rule() == rule).toList();
  }

  /**
   * The rules that raised a flag.
   *
   * @return a new set
   */
  public Set<QualityRule> rulesBroken() {
    var rules = EnumSet.noneOf(QualityRule.class);
    flags.forEach(flag -> rules.add(flag.rule()));
    return rules;
  }

  /**
   * The checks that were applied to this series, with their limits.
   *
   * @return an immutable list
   */
  public List<QualityCheck> applied() {
    return applied;
  }

  /**
   * What could not be checked, and why.
   *
   * @return sentences without a full stop
   */
  public List<String> notChecked() {
    return notChecked;
  }

  /**
   * Number of values that were checked.
   *
   * @return readings, or two for each known day
   */
  public int valuesChecked() {
    return values;
  }

  /**
   * Number of values with at least one flag of some rules.
   *
   * @param rules the rules
   * @return 0 or more
   */
  public int valuesFlagged(Set<QualityRule> rules) {
    return flagged(rules, true).cardinality() + flagged(rules, false).cardinality();
  }

  /** Places flagged: the minima, or the readings and maxima. */
  private BitSet flagged(Set<QualityRule> rules, boolean minima) {
    var places = new BitSet();
    for (var flag : flags) {
      boolean isMinimum = flag.element() == FlaggedValue.MINIMUM;
      boolean counts = minima == isMinimum || flag.element() == FlaggedValue.BOTH_EXTREMES;
      if (rules.contains(flag.rule()) && counts) {
        places.set(flag.first(), flag.last() + 1);
      }
    }
    return places;
  }

  /**
   * The readings that were checked.
   *
   * @return nothing when daily extremes were checked
   */
  public Optional<TemperatureReadings> readings() {
    return readings;
  }

  /**
   * The daily extremes that were checked.
   *
   * @return nothing when readings, or extremes as they stand in a file, were checked
   */
  public Optional<DailyTemperatures> days() {
    return days;
  }

  /**
   * The readings without those that some rules flagged: only here does a flagged value go, and only
   * because the rules are named.
   *
   * @param readings the readings that were checked
   * @param rules the rules whose flagged readings shall go
   * @return the rest, with a report of every reading left out
   * @throws InputProblem when other readings were checked, or a rule was not applied to them
   */
  public CleanedReadings withoutFlagged(TemperatureReadings readings, Set<QualityRule> rules) {
    requireSame(this.readings.map(readings::equals).orElse(false), readings.toString());
    requireApplied(rules);
    return CleanedReadings.of(readings, flags, rules, flagged(rules, false));
  }

  /**
   * The days without those of which some rules flagged an extreme; such a day becomes missing
   * altogether, because a day with one extreme has no degree-days.
   *
   * @param days the days that were checked
   * @param rules the rules whose flagged days shall go
   * @return the rest, with a report of every day left out
   * @throws InputProblem when other days were checked, or a rule was not applied to them
   */
  public CleanedDays withoutFlagged(DailyTemperatures days, Set<QualityRule> rules) {
    requireSame(this.days.map(days::equals).orElse(false), days.toString());
    requireApplied(rules);
    var places = flagged(rules, false);
    places.or(flagged(rules, true));
    return CleanedDays.of(days, flags, rules, places);
  }

  private void requireSame(boolean same, String given) {
    if (!same) {
      throw InputProblem.of("flags of " + series + " for " + given)
          .expected("the very series that was checked")
          .because("a flag points at a place in its series")
          .mend("check this series, and take its own flags");
    }
  }

  private void requireApplied(Set<QualityRule> rules) {
    var unknown = new TreeSet<>(rules);
    applied.forEach(check -> unknown.remove(check.rule()));
    if (!unknown.isEmpty() || rules.isEmpty()) {
      throw InputProblem.of("values to leave out by the rules " + rules)
          .expected("rules that were applied: " + applied.stream().map(QualityCheck::rule).toList())
          .because("a rule that was not applied flagged nothing, and that may be taken for clean")
          .mend("name rules that were applied, or add the check with QualityControl.with(...)");
    }
  }

  /**
   * The flags as a table, at most ten of each rule.
   *
   * @return time, value flagged, rule, what was found, limit, unit and reason
   */
  public ResultTable table() {
    return QualityPages.list(this);
  }

  /**
   * The rules that were applied as a table.
   *
   * @return limits, numbers of flags and of values flagged, source of each rule
   */
  public ResultTable ruleTable() {
    return QualityPages.summary(this);
  }

  @Override
  public Presentation presentation() {
    return QualityPages.page(this);
  }

  @Override
  public String toString() {
    return series + ": " + flags.size() + " flags by " + rulesBroken();
  }
}
