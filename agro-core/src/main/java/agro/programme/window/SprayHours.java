package agro.programme.window;

import agro.programme.FarmField;
import agro.working.Presentable;
import agro.working.Presentation;
import agro.working.ResultTable;
import agro.working.Sheet;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;

/**
 * Hours that meet the user's own limits, and which limit refuses each of the others.
 *
 * @param field the field, whose clock divides the days
 * @param weather the weather
 * @param limits the limits
 * @param days the days of the weather, in order
 * @param notJudged limits that could not be judged at all, with the reason
 */
public record SprayHours(
    FarmField field,
    HourlyWeather weather,
    SprayLimits limits,
    List<SprayDay> days,
    List<String> notJudged)
    implements Presentable {

  private static final Duration HOUR = Duration.ofHours(1);

  /** Copies the lists. */
  public SprayHours {
    Objects.requireNonNull(field, "field");
    Objects.requireNonNull(weather, "weather");
    Objects.requireNonNull(limits, "limits");
    days = List.copyOf(days);
    notJudged = List.copyOf(notJudged);
  }

  /**
   * Judges every hour.
   *
   * @param weather weather by the hour
   * @param field the field
   * @param limits the user's own limits
   * @return the hours by day
   */
  public static SprayHours of(HourlyWeather weather, FarmField field, SprayLimits limits) {
    var context = new HourContext(field, SunTimes.of(field), weather.byStart());
    var judged = new ArrayList<HourLimit>();
    var left = new ArrayList<String>();
    for (var limit : limits.limits()) {
      var reason = limit.notJudged(context, weather.kinds());
      reason.ifPresentOrElse(
          words -> left.add(limit.words() + ": " + words), () -> judged.add(limit));
    }
    var verdicts = new TreeMap<Instant, HourVerdict>();
    for (var hour : weather.hours()) {
      verdicts.put(hour.start(), verdict(hour, judged, context));
    }
    return new SprayHours(field, weather, limits, days(verdicts, context), left);
  }

  private static HourVerdict verdict(
      WeatherHour hour, List<HourLimit> limits, HourContext context) {
    var refusing = new ArrayList<HourLimit>();
    var unknown = new ArrayList<HourLimit>();
    for (var limit : limits) {
      switch (limit.judge(hour, context)) {
        case REFUSES -> refusing.add(limit);
        case UNKNOWN -> unknown.add(limit);
        case MEETS -> {}
      }
    }
    return new HourVerdict(hour, refusing, unknown);
  }

  private static List<SprayDay> days(TreeMap<Instant, HourVerdict> verdicts, HourContext context) {
    var byDay = new TreeMap<LocalDate, List<HourVerdict>>();
    for (var verdict : verdicts.values()) {
      byDay.computeIfAbsent(context.day(verdict.hour()), day -> new ArrayList<>()).add(verdict);
    }
    var days = new ArrayList<SprayDay>();
    byDay.forEach((day, hours) -> days.add(day(day, hours, verdicts, context)));
    return days;
  }

  private static SprayDay day(
      LocalDate day,
      List<HourVerdict> hours,
      TreeMap<Instant, HourVerdict> verdicts,
      HourContext context) {
    var zone = context.field().zone();
    long length =
        Duration.between(day.atStartOfDay(zone), day.plusDays(1).atStartOfDay(zone)).toHours();
    int longest = 0;
    Optional<Instant> start = Optional.empty();
    for (var hour : hours) {
      int run = run(hour.hour().start(), verdicts);
      if (run > longest) {
        longest = run;
        start = Optional.of(hour.hour().start());
      }
    }
    int meeting = (int) hours.stream().filter(HourVerdict::meetsAll).count();
    return new SprayDay(day, hours, (int) length, meeting, longest, start);
  }

  /** Hours from a moment on that meet all limits without a break. */
  private static int run(Instant from, TreeMap<Instant, HourVerdict> verdicts) {
    int run = 0;
    var hour = verdicts.get(from);
    while (hour != null && hour.meetsAll()) {
      run++;
      hour = verdicts.get(hour.hour().start().plus(HOUR));
    }
    return run;
  }

  /**
   * One day.
   *
   * @param day the day
   * @return nothing where the weather does not reach
   */
  public Optional<SprayDay> on(LocalDate day) {
    return days.stream().filter(each -> each.day().equals(day)).findFirst();
  }

  /**
   * The days as a table.
   *
   * @return hours that meet the limits, longest run, and what refuses the others, by day
   */
  public ResultTable table() {
    return SprayHoursPages.table(this, Optional.empty());
  }

  /**
   * The days as a table, with whether a job fits.
   *
   * @param job the job
   * @return the same table with one more column
   */
  public ResultTable table(SprayJob job) {
    return SprayHoursPages.table(this, Optional.of(job));
  }

  /**
   * Every hour as a table.
   *
   * @return one line for each hour, with the limits that refuse it
   */
  public ResultTable hourTable() {
    return SprayHoursPages.hours(this);
  }

  /**
   * The hours as a page to print: a black bar where all limits are met, letters where they are not.
   *
   * @param title heading of the page
   * @param job a job whose fit is written beside the days; nothing for none
   * @return pages of A4, at most three weeks on each
   */
  public List<Sheet> sheets(String title, Optional<SprayJob> job) {
    return SprayHoursSheet.sheets(this, title, job);
  }

  @Override
  public Presentation presentation() {
    return SprayHoursPages.page(this);
  }

  @Override
  public String toString() {
    return table().toText();
  }
}
