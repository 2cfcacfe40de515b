package agro.programme.window;

import agro.generation.FlightShare;
import agro.generation.GenerationForecast;
import agro.programme.GenerationDays;
import agro.working.Presentable;
import agro.working.Presentation;
import agro.working.ResultTable;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * Days of treatment in order: those that expose most first. Where the weather reaches, a day counts
 * only when the job fits into hours that meet the user's limits; beyond it the share alone decides,
 * and that is said.
 *
 * @param exposure what each day would expose
 * @param hours hours that meet the limits; nothing when no weather was given
 * @param job the job; nothing when one hour that meets the limits is enough
 * @param days all days that were weighed, in order of rank, then those on which the job does not
 *     fit
 * @param pair the best pair of days among those that are not refused; nothing when no pair was
 *     asked for
 */
public record TreatmentWindows(
    ExposureForecast exposure,
    Optional<SprayHours> hours,
    Optional<SprayJob> job,
    List<RankedDay> days,
    Optional<ExposedPair> pair)
    implements Presentable {

  /** Copies the list. */
  public TreatmentWindows {
    Objects.requireNonNull(exposure, "exposure");
    Objects.requireNonNull(hours, "hours");
    Objects.requireNonNull(job, "job");
    Objects.requireNonNull(pair, "pair");
    days = List.copyOf(days);
  }

  /**
   * Ranks days by what they expose alone.
   *
   * @param exposure what each day would expose
   * @return the days in order
   */
  public static TreatmentWindows byShare(ExposureForecast exposure) {
    return rank(exposure, Optional.empty(), Optional.empty());
  }

  /**
   * Ranks days by what they expose, where the weather reaches among those on which the job fits.
   *
   * @param exposure what each day would expose
   * @param hours hours that meet the limits
   * @param job the job
   * @return the days in order
   */
  public static TreatmentWindows of(ExposureForecast exposure, SprayHours hours, SprayJob job) {
    return rank(exposure, Optional.of(hours), Optional.of(job));
  }

  private static TreatmentWindows rank(
      ExposureForecast exposure, Optional<SprayHours> hours, Optional<SprayJob> job) {
    var open = new ArrayList<RankedDay>();
    var refused = new ArrayList<RankedDay>();
    for (var day : exposure.days()) {
      var weather = hours.flatMap(each -> each.on(day.day()));
      var use = use(weather, job);
      (use == DayUse.NOT_USABLE ? refused : open).add(new RankedDay(0, day, use, weather));
    }
    open.sort(
        Comparator.comparingDouble((RankedDay each) -> -each.exposed().mean())
            .thenComparing(each -> each.exposed().day()));
    var days = new ArrayList<RankedDay>();
    for (var each : open) {
      days.add(new RankedDay(days.size() + 1, each.exposed(), each.use(), each.weather()));
    }
    days.addAll(refused);
    var allowed = open.stream().map(each -> each.exposed().day()).sorted().toList();
    var pair = refused.isEmpty() ? exposure.bestPair() : exposure.bestPairAmong(allowed);
    return new TreatmentWindows(exposure, hours, job, days, pair);
  }

  private static DayUse use(Optional<SprayDay> weather, Optional<SprayJob> job) {
    if (weather.isEmpty()) {
      return DayUse.NOT_KNOWN;
    }
    var day = weather.get();
    boolean fits = job.map(day::fits).orElse(day.longestRun() > 0);
    if (fits) {
      return DayUse.USABLE;
    }
    return day.complete() ? DayUse.NOT_USABLE : DayUse.PARTLY_KNOWN;
  }

  /**
   * The first of the ranked days.
   *
   * @return nothing when every day is refused, or none exposes anything
   */
  public Optional<RankedDay> best() {
    return days.stream().filter(each -> each.rank() == 1 && each.exposed().mean() > 0).findFirst();
  }

  /**
   * Days for the plan of a season: the best pair where one was asked for, otherwise the best day.
   *
   * @return in order of the calendar; none when no day is left
   */
  public List<LocalDate> planDays() {
    return pair.map(each -> List.of(each.first(), each.second()))
        .orElseGet(() -> best().map(each -> List.of(each.exposed().day())).orElse(List.of()));
  }

  /**
   * The days of each generation by a forecast, as windows of one mode of action: from the median
   * date of the first twentieth of a flight to the day before that of the next, or to the end of
   * the season.
   *
   * @param forecast the forecast
   * @param district the district; empty for all
   * @return the generations that are more likely to come than not
   */
  public static List<GenerationDays> generations(GenerationForecast forecast, String district) {
    var numbers =
        forecast.rows().stream().map(row -> row.generation()).distinct().sorted().toList();
    var generations = new ArrayList<GenerationDays>();
    for (int number : numbers) {
      var first = begins(forecast, number);
      if (first.isEmpty()) {
        break;
      }
      var next = begins(forecast, number + 1).map(day -> day.minusDays(1));
      var last = next.orElse(forecast.season().lastDay());
      if (!last.isBefore(first.get())) {
        generations.add(
            new GenerationDays(district, forecast.season().pest(), number, first.get(), last));
      }
    }
    return generations;
  }

  private static Optional<LocalDate> begins(GenerationForecast forecast, int generation) {
    return forecast.flight(generation, FlightShare.FIRST).flatMap(row -> row.dates().median());
  }

  /**
   * The days as a table.
   *
   * @return one line for each day, ranked ones first
   */
  public ResultTable table() {
    return WindowPages.table(this);
  }

  @Override
  public Presentation presentation() {
    return WindowPages.page(this);
  }

  @Override
  public String toString() {
    return table().toText();
  }
}
