package agro.trial.efficacy;

import agro.report.InputProblem;
import agro.trial.FieldTrial;
import agro.units.Numbers;
import agro.working.Cell;
import agro.working.Presentable;
import agro.working.Presentation;
import agro.working.ResultTable;
import agro.working.ResultTable.Column;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;

/**
 * Efficacy over several dates after a treatment, by one formula.
 *
 * @param treated day of the treatment
 * @param dates efficacy by date, in order
 */
public record EfficacyCourse(LocalDate treated, Map<LocalDate, TrialEfficacy> dates)
    implements Presentable {

  /**
   * One point of a figure.
   *
   * @param daysAfter days after the treatment
   * @param percent efficacy; nothing where it has no value
   * @param limits the limits to print; nothing where there are none
   */
  public record CoursePoint(
      long daysAfter, OptionalDouble percent, Optional<EfficacyLimits> limits) {
    /** Refuses null. */
    public CoursePoint {
      Objects.requireNonNull(percent, "percent");
      Objects.requireNonNull(limits, "limits");
    }
  }

  /** Puts the dates in order. */
  public EfficacyCourse {
    Objects.requireNonNull(treated, "treated");
    dates = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(new TreeMap<>(dates)));
  }

  /**
   * Evaluates every date by one formula: the chosen one, or the one that the advice names for the
   * first date.
   *
   * @param treated day of the treatment
   * @param data plots with their counts, by date of the count after
   * @param settings how to evaluate
   * @return the course
   * @throws InputProblem when there is no date, one lies before the treatment, or the formula does
   *     not fit a date
   */
  public static EfficacyCourse of(
      LocalDate treated, Map<LocalDate, EfficacyData> data, EfficacyEvaluation settings) {
    var inOrder = new TreeMap<>(data);
    if (inOrder.isEmpty() || inOrder.firstKey().isBefore(treated)) {
      throw InputProblem.of(
              inOrder.isEmpty()
                  ? "no date of a count"
                  : "a count of " + inOrder.firstKey() + " and a treatment on " + treated)
          .expected("counts on or after the day of the treatment")
          .because("efficacy is what happens after it")
          .mend("give the count before the treatment as \"before\" of each plot");
    }
    var formula =
        settings
            .formula()
            .orElseGet(() -> EfficacyAdvice.of(inOrder.firstEntry().getValue()).formula());
    var dates = new TreeMap<LocalDate, TrialEfficacy>();
    inOrder.forEach((date, counts) -> dates.put(date, settings.with(formula).evaluate(counts)));
    return new EfficacyCourse(treated, dates);
  }

  /**
   * Evaluates every day of counting after a treatment; the last count up to the day of treatment is
   * the one before.
   *
   * @param trial the trial, with one declared control
   * @param variable what was counted
   * @param treated day of the treatment
   * @param settings how to evaluate
   * @return the course
   * @throws InputProblem when there is no count after the treatment or no single control
   */
  public static EfficacyCourse of(
      FieldTrial trial, String variable, LocalDate treated, EfficacyEvaluation settings) {
    return of(treated, TrialCounts.byDate(trial, variable, treated), settings);
  }

  /**
   * Treatments that appear on any date.
   *
   * @return their names
   */
  public List<String> treatments() {
    return dates.values().stream()
        .flatMap(date -> date.treatments().stream())
        .map(TreatmentEfficacy::treatment)
        .distinct()
        .toList();
  }

  /**
   * The points of one treatment for a figure, pooled on every date so that dates compare.
   *
   * @param treatment the treatment
   * @return points in the order of days
   */
  public List<CoursePoint> points(String treatment) {
    var points = new ArrayList<CoursePoint>();
    dates.forEach(
        (date, efficacy) ->
            efficacy.treatments().stream()
                .filter(one -> one.treatment().equals(treatment))
                .map(TreatmentEfficacy::pooled)
                .forEach(
                    pooled ->
                        points.add(
                            new CoursePoint(
                                ChronoUnit.DAYS.between(treated, date),
                                pooled.percent(),
                                pooled.limitsToPrint()))));
    return List.copyOf(points);
  }

  /**
   * The last day on which a treatment is still at or above a level, on the straight line between
   * two dates.
   *
   * @param treatment the treatment
   * @param percent the level of efficacy
   * @return the day and how sure it is
   */
  public LastDayAbove lastDayAbove(String treatment, double percent) {
    return LastDayAbove.of(treatment, percent, points(treatment));
  }

  /**
   * Efficacy by days after treatment.
   *
   * @return one line for each treatment and date
   */
  public ResultTable table() {
    var rows = new ArrayList<List<Cell>>();
    for (var treatment : treatments()) {
      for (var point : points(treatment)) {
        var limits = point.limits().flatMap(EfficacyLimits::limits);
        rows.add(
            List.of(
                Cell.text(treatment),
                Cell.day(treated.plusDays(point.daysAfter())),
                Cell.number((double) point.daysAfter(), 0),
                point.percent().isPresent()
                    ? Cell.number(point.percent().getAsDouble(), 1)
                    : Cell.notKnown(),
                limits.<Cell>map(l -> Cell.number(l.low(), 1)).orElse(Cell.notKnown()),
                limits.<Cell>map(l -> Cell.number(l.high(), 1)).orElse(Cell.notKnown()),
                Cell.text(point.limits().map(l -> l.method().words()).orElse("none"))));
      }
    }
    var table =
        ResultTable.of(
            "Efficacy by days after treatment, pooled over blocks",
            List.of(
                Column.of("Treatment"),
                Column.of("Date"),
                Column.of("After", "d"),
                Column.of("Efficacy", "%"),
                Column.of("Lower limit", "%"),
                Column.of("Upper limit", "%"),
                Column.of("Limits by")),
            rows);
    for (var date : dates.entrySet()) {
      for (var one : date.getValue().treatments()) {
        if (one.pooled().percent().isEmpty()) {
          table =
              table.withNote(
                  one.treatment() + " on " + date.getKey() + ": " + one.pooled().undefined());
        }
      }
    }
    return table;
  }

  @Override
  public Presentation presentation() {
    var first = dates.values().iterator().next();
    return Presentation.titled("Efficacy over time")
        .fact("Treated on", treated.toString())
        .fact("Control", first.control())
        .fact("Formula", first.formula().title() + ": " + first.formula().form())
        .fact("Limits", Numbers.plain(100 * first.level()) + " %, date by date")
        .paragraph(first.advice().reason())
        .table(table())
        .sources(List.of(first.formula().source()))
        .build();
  }
}
