package agro.sampling.injury;

import agro.report.InputProblem;
import agro.sampling.CountSample;
import agro.sampling.SamplingUnit;
import agro.source.SamplingBibliography;
import agro.units.Numbers;
import agro.working.Cell;
import agro.working.Presentable;
import agro.working.Presentation;
import agro.working.ResultTable;
import agro.working.ResultTable.Column;
import agro.working.Working;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * Insect-days: the mean counts of a season summed over the days that the insects feed, Σ (d(i+1) −
 * d(i)) · (y(i) + y(i+1)) / 2.
 *
 * @param unit what a mean count belongs to
 * @param firstDay first day of counting, day 0 of the curve
 * @param curve mean counts by day
 */
public record InsectDays(SamplingUnit unit, LocalDate firstDay, ProgressCurve curve)
    implements Presentable {

  /** Refuses null. */
  public InsectDays {
    Objects.requireNonNull(unit, "unit");
    Objects.requireNonNull(firstDay, "firstDay");
    Objects.requireNonNull(curve, "curve");
  }

  /**
   * Insect-days from mean counts.
   *
   * @param unit what a mean count belongs to
   * @param dates days of counting, in order
   * @param means mean count on each, as many
   * @return the insect-days
   * @throws InputProblem when days are not in order or the numbers do not fit
   */
  public static InsectDays of(SamplingUnit unit, List<LocalDate> dates, List<Double> means) {
    if (dates.isEmpty()) {
      throw InputProblem.of("no day of counting")
          .expected("at least one")
          .because("there is nothing to add up")
          .mend("give the days and the mean count on each");
    }
    var first = dates.get(0);
    return new InsectDays(
        unit,
        first,
        ProgressCurve.of(
            dates.stream().mapToDouble(d -> d.toEpochDay() - first.toEpochDay()).toArray(),
            means.stream().mapToDouble(Double::doubleValue).toArray()));
  }

  /**
   * Insect-days from the counts themselves.
   *
   * @param samples counts by day, all in one unit
   * @return the insect-days
   * @throws InputProblem when there is no sample or units differ
   */
  public static InsectDays ofSamples(Map<LocalDate, CountSample> samples) {
    SortedMap<LocalDate, CountSample> inOrder = new TreeMap<>(samples);
    CountSample.requireOneUnit(List.copyOf(inOrder.values()), "insect-days");
    if (inOrder.isEmpty()) {
      return of(SamplingUnit.of(SamplingUnit.Kind.PLANT), List.of(), List.of());
    }
    return of(
        inOrder.get(inOrder.firstKey()).unit(),
        List.copyOf(inOrder.keySet()),
        inOrder.values().stream().map(CountSample::mean).toList());
  }

  /**
   * These insect-days with another course of the numbers between two counts.
   *
   * @param rule the course
   * @return new insect-days
   */
  public InsectDays with(ProgressCurve.Between rule) {
    return new InsectDays(unit, firstDay, curve.with(rule));
  }

  /**
   * All insect-days.
   *
   * @return insects times days, for each unit
   */
  public double total() {
    return curve.area();
  }

  /**
   * Insect-days up to each count.
   *
   * @return as many as there are counts
   */
  public List<Double> cumulative() {
    return curve.cumulative();
  }

  /**
   * What the insect-days are stated in.
   *
   * @return pest-days for each unit
   */
  public PestMeasure measure() {
    return PestMeasure.pestDaysPer(unit);
  }

  private LocalDate date(int index) {
    return firstDay.plusDays(Math.round(curve.points().get(index).day()));
  }

  /**
   * The steps, as on a blackboard.
   *
   * @return one step for each interval and the sum
   */
  public Working working() {
    var working = Working.of("Insect-days");
    var points = curve.points();
    for (int i = 1; i < points.size(); i++) {
      var from = points.get(i - 1);
      var to = points.get(i);
      boolean straight = curve.between() == ProgressCurve.Between.STRAIGHT;
      working =
          working.step(
              date(i - 1) + " to " + date(i),
              straight ? "Δt · (y1 + y2) / 2" : "Δt · (y2 − y1) / ln(y2 / y1)",
              Numbers.plain(to.day() - from.day())
                  + " d, from "
                  + Numbers.plain(from.value())
                  + " to "
                  + Numbers.plain(to.value()),
              Numbers.significant(curve.between().area(from, to), 6));
    }
    return working.step(
        "sum of the intervals",
        "",
        "",
        Numbers.significant(total(), 8) + " " + measure().words(),
        SamplingBibliography.RUPPEL_1983);
  }

  @Override
  public Presentation presentation() {
    var sums = cumulative();
    var rows = new ArrayList<List<Cell>>();
    for (int i = 0; i < sums.size(); i++) {
      rows.add(
          List.of(
              Cell.day(date(i)),
              Cell.number(curve.points().get(i).value(), 2),
              Cell.number(sums.get(i), 1)));
    }
    return Presentation.titled("Insect-days")
        .fact("Total", Numbers.significant(total(), 5) + " " + measure().words())
        .fact("Between counts", curve.between().words())
        .table(
            ResultTable.of(
                "Counts and their sum over days",
                List.of(
                    Column.of("Date"),
                    Column.of("Mean count", "per " + unit.words()),
                    Column.of("Insect-days", "per " + unit.words())),
                rows))
        .sources(List.of(SamplingBibliography.RUPPEL_1983))
        .build();
  }
}
