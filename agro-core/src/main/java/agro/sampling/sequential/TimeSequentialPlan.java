package agro.sampling.sequential;

import agro.report.InputProblem;
import agro.source.SamplingBibliography;
import agro.units.Numbers;
import agro.working.Cell;
import agro.working.Presentable;
import agro.working.Presentation;
import agro.working.ResultTable;
import agro.working.ResultTable.Column;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * Wald's test carried over several days of counting: the course of a harmless population against
 * that of an outbreak. Each day adds d T − d s n to the logarithm of the likelihood ratio, with d
 * and s from the two means of that day, T animals on n units; the test ends at ln((1 − β) / α) or
 * ln(β / (1 − α)).
 *
 * @param family distribution of the counts
 * @param days the two means expected on each day of counting, in order
 * @param alpha chance of calling a harmless course an outbreak
 * @param beta chance of calling an outbreak harmless
 */
public record TimeSequentialPlan(
    CountFamily family, List<ExpectedDay> days, double alpha, double beta) {

  /**
   * What is expected on one day of counting.
   *
   * @param label date or stage of the crop
   * @param lowMean mean of a harmless course
   * @param highMean mean of an outbreak, above the low one
   */
  public record ExpectedDay(String label, double lowMean, double highMean) {}

  /**
   * Counts of one day.
   *
   * @param units units looked at, 1 or more
   * @param animals animals on them, 0 or more
   */
  public record DayCount(int units, long animals) {
    /** Checks the numbers. */
    public DayCount {
      if (units < 1 || animals < 0) {
        throw InputProblem.of(animals + " animals on " + units + " units")
            .expected("0 or more animals on 1 or more units")
            .because("a day without a count adds nothing")
            .mend("leave the day out at the end, or count it");
      }
    }
  }

  /**
   * Where the test stands after a day.
   *
   * @param day what was expected
   * @param weight d, weight of one animal
   * @param allowance d s, what each unit takes off
   * @param logRatio logarithm of the likelihood ratio so far
   * @param decision low, high or go on
   */
  public record DayStanding(
      ExpectedDay day, double weight, double allowance, double logRatio, FieldClass decision) {}

  /**
   * The way of a population through the days.
   *
   * @param plan the plan
   * @param days standing after each day that was counted
   */
  public record Course(TimeSequentialPlan plan, List<DayStanding> days) implements Presentable {
    /** Makes the list immutable. */
    public Course {
      Objects.requireNonNull(plan, "plan");
      days = List.copyOf(days);
    }

    /**
     * The first decision, which stands.
     *
     * @return low or high, or go on
     */
    public FieldClass decision() {
      return days.stream()
          .map(DayStanding::decision)
          .filter(decision -> decision != FieldClass.GO_ON)
          .findFirst()
          .orElse(FieldClass.GO_ON);
    }

    @Override
    public Presentation presentation() {
      var rows = new ArrayList<List<Cell>>();
      for (var day : days) {
        rows.add(
            List.of(
                Cell.text(day.day().label()),
                Cell.number(day.weight(), 4),
                Cell.number(day.allowance(), 4),
                Cell.number(day.logRatio(), 3),
                Cell.text(day.decision().words())));
      }
      return Presentation.titled("Counts over several days")
          .fact("Decision", decision().words())
          .fact(
              "Ends at",
              Numbers.fixed(plan.lowBound(), 3) + " and " + Numbers.fixed(plan.highBound(), 3))
          .table(
              ResultTable.of(
                  "Logarithm of the likelihood ratio",
                  List.of(
                      Column.of("Day"),
                      Column.of("Weight of an animal"),
                      Column.of("Taken off for a unit"),
                      Column.of("Sum"),
                      Column.of("Says")),
                  rows))
          .sources(
              List.of(SamplingBibliography.PEDIGO_VAN_SCHAIK_1984, SamplingBibliography.WALD_1947))
          .build();
    }
  }

  /**
   * Checks days and chances.
   *
   * @throws InputProblem when there is no day, means are not in order or not possible, or the
   *     chances are out of range
   */
  public TimeSequentialPlan {
    Objects.requireNonNull(family, "family");
    days = List.copyOf(days);
    if (days.isEmpty()) {
      throw InputProblem.of("a plan without a day of counting")
          .expected("at least one day with its two means")
          .because("there is nothing to hold counts against")
          .mend("state the means of a harmless course and of an outbreak for each day");
    }
    for (var day : days) {
      WaldLines.of(family, day.lowMean(), day.highMean(), alpha, beta);
    }
  }

  private WaldLines lines(int day) {
    return WaldLines.of(family, days.get(day).lowMean(), days.get(day).highMean(), alpha, beta);
  }

  /**
   * Logarithm of the likelihood ratio at which the population is called an outbreak.
   *
   * @return ln((1 − β) / α)
   */
  public double highBound() {
    return Math.log((1 - beta) / alpha);
  }

  /**
   * Logarithm of the likelihood ratio at which the population is called harmless.
   *
   * @return ln(β / (1 − α))
   */
  public double lowBound() {
    return Math.log(beta / (1 - alpha));
  }

  /**
   * Follows a population through the days.
   *
   * @param counts counts of the first days, in order
   * @return where the test stands after each of them
   * @throws InputProblem when there are more counts than days
   */
  public Course follow(List<DayCount> counts) {
    if (counts.size() > days.size()) {
      throw InputProblem.of(counts.size() + " counts for " + days.size() + " days")
          .expected("no more counts than days of the plan")
          .because("nothing is expected of the days beyond")
          .mend("add the two means of the further days");
    }
    var standings = new ArrayList<DayStanding>();
    double sum = 0;
    for (int i = 0; i < counts.size(); i++) {
      var lines = lines(i);
      double weight = lines.weight();
      double allowance = weight * lines.slope();
      sum += weight * counts.get(i).animals() - allowance * counts.get(i).units();
      standings.add(new DayStanding(days.get(i), weight, allowance, sum, decide(sum)));
    }
    return new Course(this, standings);
  }

  private FieldClass decide(double logRatio) {
    if (logRatio >= highBound()) {
      return FieldClass.HIGH;
    }
    return logRatio <= lowBound() ? FieldClass.LOW : FieldClass.GO_ON;
  }
}
