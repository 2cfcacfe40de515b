package agro.development;

import agro.report.InputProblem;
import agro.units.Numbers;
import agro.units.ThermalTime;
import agro.weather.DailyTemperatures;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.temporal.ChronoUnit;
import java.util.Arrays;
import java.util.Objects;
import java.util.Optional;

/**
 * Degree-days added up day by day. The sum is zero at the beginning of the start day, which
 * therefore counts in full, and runs to the end of the last day; a start at an hour of that day
 * leaves out the share of the day before it. Within a day the sum is taken to grow evenly.
 * Immutable.
 */
public final class ThermalTimeScale {

  private static final double SECONDS_OF_A_DAY = 86_400;

  private final DailyDegreeDays daily;
  private final Optional<LocalDate> firstMissing;

  /** Share of the first day that has gone by when the sum begins, 0 to below 1. */
  private final double startFraction;

  /** Sum at the start of each day, and at the end of the last one: one more than there are days. */
  private final double[] sums;

  private ThermalTimeScale(
      DailyDegreeDays daily,
      Optional<LocalDate> firstMissing,
      double startFraction,
      double[] sums) {
    this.daily = daily;
    this.firstMissing = firstMissing;
    this.startFraction = startFraction;
    this.sums = sums;
  }

  /**
   * Adds up the degree-days of all days from a start to the end of the series.
   *
   * @param model rule for the degree-days of a day
   * @param temperatures daily extremes without a missing day from the start on
   * @param start first day that counts, such as a biofix
   * @return the scale
   * @throws InputProblem when the start is outside the series or a day from the start on is missing
   */
  public static ThermalTimeScale of(
      DegreeDayModel model, DailyTemperatures temperatures, LocalDate start) {
    return of(model.daily(from(temperatures, start)), start, MissingDayPolicy.REFUSE);
  }

  /**
   * Adds up the degree-days from a moment, such as the hour of a biofix, to the end of the series.
   *
   * @param model rule for the degree-days of a day
   * @param temperatures daily extremes without a missing day from the start on
   * @param start moment from which development counts, by the clock at whose midnight days are cut
   * @return the scale
   * @throws InputProblem when the start is outside the series or a day from the start on is missing
   */
  public static ThermalTimeScale of(
      DegreeDayModel model, DailyTemperatures temperatures, LocalDateTime start) {
    return of(model.daily(from(temperatures, start.toLocalDate())), start, MissingDayPolicy.REFUSE);
  }

  /**
   * Adds up the degree-days from a start to the day before the first missing one, or to the end of
   * the series.
   *
   * @param model rule for the degree-days of a day
   * @param temperatures daily extremes
   * @param start first day that counts, itself not missing
   * @return the scale, which tells by {@link #firstMissing()} where it had to stop
   * @throws InputProblem when the start is outside the series or itself missing
   */
  public static ThermalTimeScale upToFirstMissing(
      DegreeDayModel model, DailyTemperatures temperatures, LocalDate start) {
    return of(model.daily(from(temperatures, start)), start, MissingDayPolicy.STOP_BEFORE);
  }

  /**
   * Adds up degree-days from the beginning of a day.
   *
   * @param daily degree-days of a run of days, from extremes or from readings
   * @param start first day that counts
   * @param policy what to do at a missing day
   * @return the scale
   * @throws InputProblem when the start is outside the run or itself missing, and for a missing day
   *     by the policy {@link MissingDayPolicy#REFUSE}
   */
  public static ThermalTimeScale of(
      DailyDegreeDays daily, LocalDate start, MissingDayPolicy policy) {
    return of(daily, start.atStartOfDay(), policy);
  }

  /**
   * Adds up degree-days from a moment.
   *
   * @param daily degree-days of a run of days, from extremes or from readings
   * @param start moment from which development counts, by the clock at whose midnight days are cut
   * @param policy what to do at a missing day
   * @return the scale
   * @throws InputProblem when the start is outside the run or its day is missing, and for a missing
   *     day by the policy {@link MissingDayPolicy#REFUSE}
   */
  public static ThermalTimeScale of(
      DailyDegreeDays daily, LocalDateTime start, MissingDayPolicy policy) {
    Objects.requireNonNull(policy, "policy");
    var firstDay = start.toLocalDate();
    if (firstDay.isBefore(daily.firstDay()) || firstDay.isAfter(daily.lastDay())) {
      throw outside(daily.place(), firstDay, daily.firstDay(), daily.lastDay());
    }
    var run = daily.between(firstDay, daily.lastDay());
    double fraction = start.toLocalTime().toNanoOfDay() / (SECONDS_OF_A_DAY * 1e9);
    var values = run.valuesC();
    values[0] *= 1 - fraction;
    var sums = new double[values.length + 1];
    int known = 0;
    while (known < values.length && !Double.isNaN(values[known])) {
      sums[known + 1] = sums[known] + values[known];
      known++;
    }
    if (known == values.length) {
      return new ThermalTimeScale(run, Optional.empty(), fraction, sums);
    }
    var gap = firstDay.plusDays(known);
    if (known == 0 || policy == MissingDayPolicy.REFUSE) {
      throw missing(daily.place(), gap);
    }
    return new ThermalTimeScale(
        run.between(firstDay, gap.minusDays(1)),
        Optional.of(gap),
        fraction,
        Arrays.copyOf(sums, known + 1));
  }

  /** The days that count; nothing is computed for those before. */
  private static DailyTemperatures from(DailyTemperatures temperatures, LocalDate start) {
    if (!temperatures.covers(start)) {
      throw outside(temperatures.place(), start, temperatures.firstDay(), temperatures.lastDay());
    }
    return temperatures.between(start, temperatures.lastDay());
  }

  private static InputProblem outside(
      String place, LocalDate start, LocalDate firstDay, LocalDate lastDay) {
    return InputProblem.of("a start on " + start + " for " + place)
        .expected("a day of the temperature series, which goes from " + firstDay + " to " + lastDay)
        .because("degree-days cannot be added up over days without temperatures")
        .mend("choose a start inside the series, or read a log that covers it");
  }

  private static InputProblem missing(String place, LocalDate day) {
    return InputProblem.of(place + ": no temperatures for " + day)
        .expected("extremes for every day that is added up")
        .because("a day left out would count as a day without development")
        .mend("fill the gap from a neighbouring station or by interpolation, or start after it");
  }

  /**
   * The rule for the degree-days of a day.
   *
   * @return the model
   */
  public DegreeDayModel model() {
    return daily.model();
  }

  /**
   * The degree-days that are added up, day by day, each with what it rests on.
   *
   * @return the days from the start to the last day; the first one counts in full there
   */
  public DailyDegreeDays daily() {
    return daily;
  }

  /**
   * First day that counts.
   *
   * @return the start
   */
  public LocalDate firstDay() {
    return daily.firstDay();
  }

  /**
   * Share of the first day that has gone by when the sum begins.
   *
   * @return 0 for a day that counts in full, to below 1
   */
  public double startFraction() {
    return startFraction;
  }

  /**
   * Last day that counts.
   *
   * @return not before the start
   */
  public LocalDate lastDay() {
    return firstDay().plusDays(days() - 1L);
  }

  /**
   * Number of days that count.
   *
   * @return at least 1
   */
  public int days() {
    return sums.length - 1;
  }

  /**
   * The missing day at which the scale had to stop.
   *
   * @return the day after {@link #lastDay()} when it is missing; nothing when the series ends there
   */
  public Optional<LocalDate> firstMissing() {
    return firstMissing;
  }

  /**
   * Sum at the beginning of a day.
   *
   * @param day from the start to the day after the last one
   * @return °C·d, 0 at the start
   * @throws InputProblem outside these days
   */
  public double degreeDaysCAtStartOf(LocalDate day) {
    long index = ChronoUnit.DAYS.between(firstDay(), day);
    if (index < 0 || index >= sums.length) {
      throw InputProblem.of("the degree-day sum at the start of " + day)
          .expected("a day from " + firstDay() + " to " + lastDay().plusDays(1))
          .because("the sum is not known outside the days that were added up")
          .mend("ask for a day inside the scale, or build it from a longer series");
    }
    return sums[(int) index];
  }

  /**
   * Sum after a number of days since the beginning of the start day.
   *
   * @param days 0 to {@link #days()}, with a fraction
   * @return °C·d, growing evenly within each day; NaN outside the scale
   */
  public double degreeDaysCAfter(double days) {
    if (!(days >= 0 && days <= days())) {
      return Double.NaN;
    }
    int whole = Math.min((int) days, days() - 1);
    double share = days - whole;
    if (whole == 0 && startFraction > 0) {
      share = Math.max(0, (share - startFraction) / (1 - startFraction));
    }
    return sums[whole] + share * (sums[whole + 1] - sums[whole]);
  }

  /**
   * Sum at the end of the last day.
   *
   * @return °C·d
   */
  public double totalC() {
    return sums[days()];
  }

  /**
   * Sums at the beginning of each day and at the end of the last one.
   *
   * @return a new array of {@code days() + 1} values in °C·d, the first of them 0
   */
  public double[] sumsC() {
    return sums.clone();
  }

  /**
   * Days from the beginning of the start day until a sum is reached: the plain form of {@link
   * #reached} for loops.
   *
   * @param degreeDaysC the sum in °C·d
   * @return days with their fraction; positive infinity when the sum is not reached by the end of
   *     the last day, negative infinity for a negative sum, which lies before the start, and NaN
   *     for NaN
   */
  public double daysUntil(double degreeDaysC) {
    if (degreeDaysC < 0) {
      return Double.NEGATIVE_INFINITY;
    }
    if (degreeDaysC > sums[days()]) {
      return Double.POSITIVE_INFINITY;
    }
    if (Double.isNaN(degreeDaysC)) {
      return Double.NaN;
    }
    int after = firstAtLeast(degreeDaysC);
    if (after == 0) {
      return startFraction;
    }
    double before = sums[after - 1];
    double share = (degreeDaysC - before) / (sums[after] - before);
    return after == 1 ? startFraction + share * (1 - startFraction) : after - 1 + share;
  }

  /**
   * Index of the first sum that is not below the one asked for; days without growth repeat sums.
   */
  private int firstAtLeast(double degreeDaysC) {
    int low = 0;
    int high = days();
    while (low < high) {
      int middle = (low + high) >>> 1;
      if (sums[middle] < degreeDaysC) {
        low = middle + 1;
      } else {
        high = middle;
      }
    }
    return low;
  }

  /**
   * The moment at which a sum is reached.
   *
   * @param sum thermal time since the beginning of the start day, not negative
   * @return the day and the share of it that has gone by, or nothing when the sum is not reached by
   *     the end of the last day
   * @throws InputProblem for a negative sum
   */
  public Optional<Reached> reached(ThermalTime sum) {
    double degreeDaysC = sum.degreeDaysC();
    if (degreeDaysC < 0) {
      throw InputProblem.of("the day on which " + sum + " are reached")
          .expected("a sum that is not negative")
          .because("the scale begins with 0 on " + firstDay())
          .mend("count from an earlier start");
    }
    double days = daysUntil(degreeDaysC);
    if (days == Double.POSITIVE_INFINITY) {
      return Optional.empty();
    }
    if (days <= startFraction) {
      return Optional.of(new Reached(firstDay(), startFraction));
    }
    int day = (int) Math.ceil(days) - 1;
    return Optional.of(new Reached(firstDay().plusDays(day), days - day));
  }

  private LocalDateTime startMoment() {
    return new Reached(firstDay(), startFraction).moment();
  }

  @Override
  public String toString() {
    return model()
        + ", from "
        + (startFraction == 0 ? "the start of " + firstDay() : startMoment())
        + " to the end of "
        + lastDay()
        + ": "
        + Numbers.fixed(totalC(), 1)
        + " °C·d";
  }
}
