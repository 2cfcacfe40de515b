package agro.development;

import agro.report.InputProblem;
import agro.source.Bibliography;
import agro.units.Numbers;
import agro.units.ThermalTime;
import agro.weather.DailyTemperatures;
import agro.weather.gap.ErrorCorrelation;
import agro.weather.gap.FilledDays;
import agro.working.Cell;
import agro.working.Presentable;
import agro.working.Presentation;
import agro.working.ResultTable;
import agro.working.ResultTable.Column;
import agro.working.Working;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.hipparchus.distribution.continuous.NormalDistribution;

/**
 * What the errors of filled days do to a sum of degree-days and to the date on which a sum is
 * reached. Each day's degree-days answer to the errors of its minimum and its maximum by the best
 * straight line over the range of those errors, so that a day near a threshold is neither lost nor
 * counted twice. The variance of the sum follows from the errors of the days with their
 * correlations: inside a gap from day to day and between minimum and maximum, none between gaps.
 * Days taken as exact add nothing. Immutable.
 */
public final class ThermalTimeError implements Presentable {

  private static final NormalDistribution NORMAL = new NormalDistribution();

  private final ThermalTimeScale scale;
  private final DailyTemperatures days;
  private final double[] variances;
  private final double[] expectedExcess;
  private final List<ThermalTimeErrorPart> parts;

  private ThermalTimeError(
      ThermalTimeScale scale, DailyTemperatures days, ThermalTimeErrorSums sums) {
    this.scale = scale;
    this.days = days;
    variances = sums.variances();
    expectedExcess = sums.expectedExcess();
    parts = sums.parts();
  }

  /**
   * Errors of a filled series, with the correlations that were estimated for each gap.
   *
   * @param model rule for the degree-days of a day
   * @param filled a series after filling
   * @param start first day that counts
   * @return sums and their errors to the last day before one that was left open
   * @throws InputProblem when the start is outside the series or itself missing
   */
  public static ThermalTimeError of(DegreeDayModel model, FilledDays filled, LocalDate start) {
    return of(model, filled.daily(), start, new ThermalTimeErrorRuns(filled));
  }

  /**
   * Errors of any series, with one stated correlation inside each unbroken run of days of one
   * origin that have errors.
   *
   * @param model rule for the degree-days of a day
   * @param days daily extremes with standard errors
   * @param start first day that counts
   * @param correlation correlations inside such a run; {@link ErrorCorrelation#FULL} is the widest
   * @return sums and their errors to the last day before a missing one
   * @throws InputProblem when the start is outside the series or itself missing
   */
  public static ThermalTimeError of(
      DegreeDayModel model, DailyTemperatures days, LocalDate start, ErrorCorrelation correlation) {
    return of(model, days, start, new ThermalTimeErrorRuns(days, correlation));
  }

  private static ThermalTimeError of(
      DegreeDayModel model, DailyTemperatures days, LocalDate start, ThermalTimeErrorRuns runs) {
    var scale = ThermalTimeScale.upToFirstMissing(model, days, start);
    var sums = new ThermalTimeErrorSums(scale, days.between(start, scale.lastDay()), runs);
    return new ThermalTimeError(scale, days, sums);
  }

  /**
   * The sums that the errors belong to.
   *
   * @return the scale
   */
  public ThermalTimeScale scale() {
    return scale;
  }

  /**
   * What each run of days with errors adds.
   *
   * @return the runs in the order of the days
   */
  public List<ThermalTimeErrorPart> parts() {
    return parts;
  }

  /**
   * Standard error of the sum at the end of the last day.
   *
   * @return °C·d
   */
  public double totalStandardErrorC() {
    return Math.sqrt(variances[scale.days()]);
  }

  /**
   * Standard error of the sum at the beginning of a day.
   *
   * @param day from the start to the day after the last one
   * @return °C·d, 0 at the start
   * @throws InputProblem outside these days
   */
  public double standardErrorCAtStartOf(LocalDate day) {
    return Math.sqrt(variances[index(day)]);
  }

  /**
   * How much the sum is to be expected above the one that was added up, because degree-days answer
   * to an error upwards more than to one downwards where a day is near the threshold.
   *
   * @param day from the start to the day after the last one
   * @return °C·d, usually 0 or a little more
   * @throws InputProblem outside these days
   */
  public double expectedExcessCAtStartOf(LocalDate day) {
    return expectedExcess[index(day)];
  }

  private int index(LocalDate day) {
    scale.degreeDaysCAtStartOf(day);
    return (int) (day.toEpochDay() - scale.firstDay().toEpochDay());
  }

  /**
   * The date of reaching a sum, with what the errors of the filled days make of it.
   *
   * @param sum thermal time since the beginning of the start day, not negative
   * @param level chance that the interval covers the date, above 0 and below 1, for example 0.9
   * @return date, standard error and interval; nothing when the sum is not reached
   * @throws InputProblem for a negative sum or a level outside 0 to 1
   */
  public Optional<ThermalTimeErrorDate> reached(ThermalTime sum, double level) {
    if (!(level > 0 && level < 1)) {
      throw InputProblem.of("an interval at the level " + Numbers.plain(level))
          .expected("a level above 0 and below 1")
          .because("an interval that covers always or never says nothing")
          .mend("give for example 0.9");
    }
    var reached = scale.reached(sum);
    if (reached.isEmpty()) {
      return Optional.empty();
    }
    double target = sum.degreeDaysC();
    double score = NORMAL.inverseCumulativeProbability(0.5 + 0.5 * level);
    double spread = 0.5 * (crossing(target, -1) - crossing(target, 1));
    return Optional.of(
        new ThermalTimeErrorDate(
            reached.get(),
            spread,
            level,
            day(crossing(target, score)),
            day(crossing(target, -score))));
  }

  /**
   * Days since the start until the sum plus so many standard errors reaches a target; infinite when
   * it does not.
   */
  private double crossing(double target, double score) {
    double before = 0;
    for (int i = 1; i <= scale.days(); i++) {
      double after = scale.degreeDaysCAfter(i) + score * Math.sqrt(variances[i]);
      if (after >= target) {
        return after > before ? i - 1 + Math.max(0, (target - before) / (after - before)) : i;
      }
      before = after;
    }
    return Double.POSITIVE_INFINITY;
  }

  private Optional<LocalDate> day(double daysSinceStart) {
    if (Double.isInfinite(daysSinceStart)) {
      return Optional.empty();
    }
    int day = Math.max(0, (int) Math.ceil(daysSinceStart) - 1);
    return Optional.of(scale.firstDay().plusDays(day));
  }

  @Override
  public Presentation presentation() {
    var rows = new ArrayList<List<Cell>>();
    for (var part : parts) {
      rows.add(
          List.of(
              Cell.text(part.days().words()),
              Cell.text(part.origin().words()),
              Cell.number(part.degreeDaysC(), 1),
              Cell.number(part.standardErrorC(), 1)));
    }
    var columns =
        List.of(
            Column.of("Days with errors"),
            Column.of("From"),
            Column.of("Degree-days", "°C·d"),
            Column.of("Standard error", "°C·d"));
    return Presentation.titled("Degree-days and the error of filled days at " + days.place())
        .fact("Sum", Numbers.fixed(scale.totalC(), 1) + " °C·d")
        .fact("Standard error", Numbers.fixed(totalStandardErrorC(), 1) + " °C·d")
        .fact(
            "To be expected above the sum",
            Numbers.fixed(expectedExcess[scale.days()], 1) + " °C·d")
        .fact("Days", scale.firstDay() + " to " + scale.lastDay())
        .table(
            new ResultTable(
                "What each gap adds",
                columns,
                rows,
                List.of(
                    "Errors of different gaps are taken as independent, so their squares add up."
                        + " The error of the rule for degree-days and of the thermometer is not in"
                        + " it.")))
        .sources(List.of(Bibliography.ERROR_PROPAGATION))
        .build();
  }

  /**
   * How the error of the sum comes together.
   *
   * @return the standard error of each run of days with errors, and the root of the sum of squares
   */
  public Working working() {
    var working = Working.of("Error of a degree-day sum from filled days");
    var squares = new ArrayList<String>();
    for (var part : parts) {
      var error = Numbers.fixed(part.standardErrorC(), 2) + " °C·d";
      squares.add("(" + error + ")²");
      working =
          working.step(
              "Error of " + part.days().words() + ", " + part.origin().words(),
              "s² = Σ g_i g_k s_i s_k r_ik over its days and both extremes, slopes g",
              "",
              error,
              Bibliography.ERROR_PROPAGATION);
    }
    return working.step(
        "Error of the sum; gaps are independent",
        parts.isEmpty() ? "" : "s = √(s₁² + s₂² + ...)",
        parts.isEmpty() ? "" : "√(" + String.join(" + ", squares) + ")",
        Numbers.fixed(totalStandardErrorC(), 2) + " °C·d",
        Bibliography.ERROR_PROPAGATION);
  }

  /**
   * Standard errors of the sum at the beginning of each day and at the end of the last one.
   *
   * @return a new array of one more value than there are days, in °C·d
   */
  public double[] standardErrorsC() {
    return Arrays.stream(variances).map(Math::sqrt).toArray();
  }

  @Override
  public String toString() {
    return scale + ", standard error " + Numbers.fixed(totalStandardErrorC(), 1) + " °C·d";
  }
}
