package agro.weather.climate;

import agro.report.InputProblem;
import agro.report.ReadReport;
import agro.report.ReadReport.Deed;
import agro.report.SourceLocation;
import agro.units.Numbers;
import agro.weather.DailyTemperatures;
import agro.weather.DayOrigin;
import agro.weather.DayRuns;
import agro.weather.ShortGaps;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;

/**
 * Past years as possible futures. A member is one past year's unbroken run of days, never a mix of
 * days from several years and never an average: drawn day by day, warm and cold spells would cancel
 * out and the spread of dates would be far too narrow.
 *
 * <p>The run of a past year begins on the calendar day of the target's first day (28 February when
 * that is 29 February and the past year has none) and goes on day by day, across New Year where the
 * target does. Where one of the two has a 29 February and the other has not, the days after it are
 * one calendar day apart, which keeps the run unbroken.
 *
 * <p>The year in which the target begins is never a member, and no temperature of a target day is
 * ever used.
 */
public final class PastYears {

  /** Longest gap in a past year that is filled on a straight line, in days. */
  public static final int LONGEST_GAP_DAYS = 3;

  /** Longest run in days, so that no past year's run reaches into the target. */
  public static final int LONGEST_RUN_DAYS = 365;

  /** Steepest trend that is believed, in °C a decade (common practice, no source). */
  public static final double STEEPEST_TREND = 2;

  private static final double YEARS_OF_DECADE = 10;

  private final DailyTemperatures history;
  private final double trendCelsiusPerDecade;

  private PastYears(DailyTemperatures history, double trendCelsiusPerDecade) {
    this.history = history;
    this.trendCelsiusPerDecade = trendCelsiusPerDecade;
  }

  /**
   * Past years of one place.
   *
   * @param history daily extremes of several years. Later years than that of the target serve as
   *     members too; cut the history with {@link DailyTemperatures#upTo} to have earlier ones alone
   * @return the past years
   */
  public static PastYears of(DailyTemperatures history) {
    return new PastYears(Objects.requireNonNull(history, "history"), 0);
  }

  /**
   * Past years moved along a stated trend of the climate: the days of a year so many years before
   * the target become warmer by as much as the trend makes of those years, minima and maxima alike.
   * The trend is not estimated here, for a few years cannot tell it; the report states it.
   *
   * @param celsiusPerDecade warming in °C a decade, 0 for none
   * @return past years with that trend
   * @throws InputProblem when it is not finite or steeper than {@value #STEEPEST_TREND} °C a decade
   */
  public PastYears shiftedByTrend(double celsiusPerDecade) {
    if (!(Math.abs(celsiusPerDecade) <= STEEPEST_TREND)) {
      throw InputProblem.of("a trend of " + celsiusPerDecade + " °C a decade")
          .expected("at most " + STEEPEST_TREND + " °C a decade upwards or downwards")
          .because("a steeper one is a mistake of unit or decade")
          .mend("give the warming in °C for ten years, for example 0.3");
    }
    return new PastYears(history, celsiusPerDecade);
  }

  /**
   * The history that the members are cut from.
   *
   * @return the series as given
   */
  public DailyTemperatures history() {
    return history;
  }

  /**
   * Each usable past year's run, moved to the target days.
   *
   * @param from first target day
   * @param to last target day, less than a year after the first
   * @return the members in ascending order of their year, possibly none
   * @throws InputProblem when the target days are out of order or more than a year
   */
  public List<DailyTemperatures> members(LocalDate from, LocalDate to) {
    return runs(from, to).members();
  }

  /**
   * The years of {@link #members}.
   *
   * @param from first target day
   * @param to last target day, less than a year after the first
   * @return calendar years in which the members begin, ascending
   * @throws InputProblem when the target days are out of order or more than a year
   */
  public List<Integer> memberYears(LocalDate from, LocalDate to) {
    return runs(from, to).years();
  }

  /**
   * Each usable past year's run with its year, and the report of the years that were left out:
   * those that the history does not cover, and those with a gap of more than {@value
   * #LONGEST_GAP_DAYS} days.
   *
   * @param from first target day
   * @param to last target day, less than a year after the first
   * @return members, years and report
   * @throws InputProblem when the target days are out of order or more than a year
   */
  public PastYearRuns runs(LocalDate from, LocalDate to) {
    var target = target(from, to);
    var years = new ArrayList<Integer>();
    var members = new ArrayList<DailyTemperatures>();
    var report = new ReadReport.Collector(history.place() + ", past years");
    tellTrend(report);
    int lastYear = history.lastDay().getYear();
    for (int year = history.firstDay().getYear(); year <= lastYear; year++) {
      if (year == from.getYear()) {
        continue;
      }
      var start = from.plusYears((long) year - from.getYear());
      var run = new DayRuns.Run(start, start.plusDays(target.days() - 1));
      if (!history.covers(run.first()) || !history.covers(run.last())) {
        leaveOut(report, year, "the history does not cover " + run.words());
        continue;
      }
      var past = filled(run, target);
      if (past.missingDays().isEmpty()) {
        years.add(year);
        members.add(moved(past, target, trend(year, from)));
        tellFilled(report, year, run);
      } else {
        leaveOut(report, year, "no temperatures on " + gaps(past));
      }
    }
    return new PastYearRuns(years, members, report.report());
  }

  private static DayRuns.Run target(LocalDate from, LocalDate to) {
    long days = ChronoUnit.DAYS.between(from, to) + 1;
    if (days < 1 || days > LONGEST_RUN_DAYS) {
      throw InputProblem.of("past years for the days " + from + " to " + to)
          .expected("1 to " + LONGEST_RUN_DAYS + " days in order")
          .because("a past year's run of more than a year would reach into the target itself")
          .mend("give the first and the last day of one season");
    }
    return new DayRuns.Run(from, to);
  }

  /** The run with its short gaps filled, where need be from days beside it that are no targets. */
  private DailyTemperatures filled(DayRuns.Run run, DayRuns.Run target) {
    boolean past = run.last().isBefore(target.first());
    var lowest = past ? history.firstDay() : target.last().plusDays(1);
    var highest = past ? target.first().minusDays(1) : history.lastDay();
    var first = later(run.first().minusDays(LONGEST_GAP_DAYS), later(lowest, history.firstDay()));
    var last = earlier(run.last().plusDays(LONGEST_GAP_DAYS), earlier(highest, history.lastDay()));
    return ShortGaps.onStraightLines(history.between(first, last), LONGEST_GAP_DAYS)
        .between(run.first(), run.last());
  }

  /** What the trend adds to a past year. */
  private double trend(int year, LocalDate from) {
    return trendCelsiusPerDecade * (from.getYear() - year) / YEARS_OF_DECADE;
  }

  private void tellTrend(ReadReport.Collector report) {
    if (trendCelsiusPerDecade != 0) {
      report.add(
          Deed.ASSUMED,
          SourceLocation.NONE,
          "past years are moved along a trend of "
              + Numbers.plain(trendCelsiusPerDecade)
              + " °C a decade, as stated");
    }
  }

  private DailyTemperatures moved(DailyTemperatures past, DayRuns.Run target, double warmer) {
    var member = DailyTemperatures.builder(target.first(), target.last());
    var minima = past.minimaCelsius();
    var maxima = past.maximaCelsius();
    for (int i = 0; i < minima.length; i++) {
      member.putAt(i, minima[i] + warmer, maxima[i] + warmer, DayOrigin.PAST_YEAR);
    }
    return member.build(history.place(), history.medium());
  }

  private void tellFilled(ReadReport.Collector report, int year, DayRuns.Run run) {
    var gaps = history.between(run.first(), run.last());
    if (!gaps.missingDays().isEmpty()) {
      report.add(
          Deed.FILLED,
          SourceLocation.NONE,
          year + ": extremes on a straight line on " + gaps(gaps));
    }
  }

  private static void leaveOut(ReadReport.Collector report, int year, String why) {
    report.add(Deed.DROPPED, SourceLocation.NONE, year + " is left out: " + why);
  }

  private static String gaps(DailyTemperatures series) {
    return DayRuns.of(series.missingDays()).stream()
        .map(DayRuns.Run::words)
        .collect(Collectors.joining(", "));
  }

  private static LocalDate later(LocalDate a, LocalDate b) {
    return a.isAfter(b) ? a : b;
  }

  private static LocalDate earlier(LocalDate a, LocalDate b) {
    return a.isBefore(b) ? a : b;
  }
}
