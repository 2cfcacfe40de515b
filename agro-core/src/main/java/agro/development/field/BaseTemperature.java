package agro.development.field;

import agro.development.DegreeDayMethod;
import agro.report.InputProblem;
import agro.report.Progress;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;

/**
 * Search for the temperature below which nothing develops, from durations in several seasons or
 * sites, by all six published criteria side by side. From durations and mean temperatures alone the
 * closed forms are used; they hold while no day is colder than the base. From daily temperatures
 * the four criteria that use degree-days are searched on a grid of {@value #STEP_CELSIUS} °C, with
 * days below the base counting as nothing.
 *
 * @param method curve of a day for daily temperatures
 * @param level level of the intervals, between 0 and 1
 * @param resamples resamples of seasons for the intervals; 0 for none
 * @param seed seed of the resamples
 */
public record BaseTemperature(DegreeDayMethod method, double level, int resamples, long seed) {

  /** Step of the grid of base temperatures in °C. */
  public static final double STEP_CELSIUS = 0.01;

  /** Fewest seasons: with two, every criterion but one fits without scatter. */
  public static final int FEWEST_SEASONS = 3;

  /** The grid begins this far below the coldest mean temperature, in °C. */
  private static final double GRID_BELOW = 20;

  /**
   * Checks the options.
   *
   * @throws InputProblem when the level is not between 0 and 1 or the resamples are negative
   */
  public BaseTemperature {
    Objects.requireNonNull(method, "method");
    if (!(level > 0 && level < 1) || resamples < 0) {
      throw InputProblem.of("a level of " + level + " and " + resamples + " resamples")
          .expected("a level between 0 and 1, and 0 or more resamples")
          .because("no interval follows from them")
          .mend("take for example 0.9 and 1000");
    }
  }

  /**
   * Single sine, intervals at 0.9 from 1,000 resamples, seed 1.
   *
   * @return the usual search
   */
  public static BaseTemperature withDefaults() {
    return new BaseTemperature(DegreeDayMethod.SINGLE_SINE, 0.9, 1_000, 1);
  }

  /**
   * Chooses the curve of a day.
   *
   * @param newMethod a method that needs the day's own extremes alone
   * @return a new search
   */
  public BaseTemperature withMethod(DegreeDayMethod newMethod) {
    return new BaseTemperature(newMethod, level, resamples, seed);
  }

  /**
   * Chooses the intervals.
   *
   * @param newLevel level between 0 and 1
   * @param newResamples resamples of seasons; 0 for no intervals
   * @param newSeed seed of the resamples
   * @return a new search
   */
  public BaseTemperature withIntervals(double newLevel, int newResamples, long newSeed) {
    return new BaseTemperature(method, newLevel, newResamples, newSeed);
  }

  /**
   * Searches with closed forms.
   *
   * @param durations at least {@value #FEWEST_SEASONS} seasons or sites
   * @return base temperatures by all criteria
   * @throws InputProblem when there are too few seasons, or they do not differ in duration or
   *     temperature
   */
  public BaseTemperatureFit fit(List<FieldDuration> durations) {
    requireSpread(durations);
    var estimates = new ArrayList<BaseEstimate>();
    for (var criterion : BaseCriterion.values()) {
      estimates.add(closed(criterion, durations));
    }
    return new BaseTemperatureFit(durations, estimates, Optional.empty());
  }

  private BaseEstimate closed(BaseCriterion criterion, List<FieldDuration> durations) {
    double base = criterion.closedForm(Moments.of(durations));
    if (!Double.isFinite(base)) {
      return notDetermined(criterion);
    }
    var degreeDays =
        durations.stream().mapToDouble(each -> each.warmthSum() - base * each.days()).toArray();
    var spread = Spread.of(degreeDays, days(durations));
    boolean cold = durations.stream().anyMatch(each -> each.meanCelsius() <= base);
    return estimate(
        criterion,
        base,
        spread,
        cold ? "above the mean temperature of a season: the closed form does not hold" : "",
        chosen -> criterion.closedForm(Moments.of(pick(durations, chosen))),
        durations.size());
  }

  private BaseEstimate estimate(
      BaseCriterion criterion,
      double base,
      Spread spread,
      String remark,
      ToDoubleFunction<int[]> again,
      int seasons) {
    Optional<BaseInterval> interval =
        resamples == 0
            ? Optional.empty()
            : SeasonBootstrap.interval(again, seasons, level, resamples, seed, Progress.ofThread());
    return new BaseEstimate(
        criterion,
        OptionalDouble.of(base),
        spread.meanDegreeDaysC(),
        spread.sdDegreeDaysC(),
        spread.sdDays(),
        spread.variation(),
        interval,
        remark);
  }

  private static BaseEstimate notDetermined(BaseCriterion criterion) {
    return new BaseEstimate(
        criterion,
        OptionalDouble.empty(),
        Double.NaN,
        Double.NaN,
        Double.NaN,
        Double.NaN,
        Optional.empty(),
        "not determined by these seasons");
  }

  /**
   * Searches on daily temperatures.
   *
   * @param seasons at least {@value #FEWEST_SEASONS} seasons or sites with their days
   * @return base temperatures by all criteria
   * @throws InputProblem as for {@link #fit}
   */
  public BaseTemperatureFit fitDaily(List<FieldSeasonLog> seasons) {
    var durations = seasons.stream().map(FieldSeasonLog::duration).toList();
    requireSpread(durations);
    var coldest = durations.stream().mapToDouble(FieldDuration::meanCelsius).min().orElseThrow();
    var warmest = durations.stream().mapToDouble(FieldDuration::meanCelsius).max().orElseThrow();
    double lowest = Math.rint((coldest - GRID_BELOW) / STEP_CELSIUS) * STEP_CELSIUS;
    double highest = Math.rint(warmest / STEP_CELSIUS) * STEP_CELSIUS;
    var grid =
        DegreeDayGrid.of(seasons, method, lowest, highest, STEP_CELSIUS, Progress.ofThread());
    Map<BaseCriterion, BaseEstimate> found = new EnumMap<>(BaseCriterion.class);
    for (var criterion : BaseCriterion.values()) {
      found.put(
          criterion,
          criterion.needsDegreeDays()
              ? searched(criterion, grid, seasons.size())
              : closed(criterion, durations));
    }
    return new BaseTemperatureFit(durations, List.copyOf(found.values()), Optional.of(method));
  }

  private BaseEstimate searched(BaseCriterion criterion, DegreeDayGrid grid, int seasons) {
    var all = new int[seasons];
    Arrays.setAll(all, i -> i);
    int best = grid.best(criterion, all);
    if (best < 0) {
      return notDetermined(criterion);
    }
    return estimate(
        criterion,
        grid.celsius(best),
        grid.spread(best, all),
        grid.isAtEdge(best) ? "at the edge of the grid: not determined by these seasons" : "",
        chosen -> {
          int other = grid.best(criterion, chosen);
          return other < 0 || grid.isAtEdge(other) ? Double.NaN : grid.celsius(other);
        },
        seasons);
  }

  private static void requireSpread(List<FieldDuration> durations) {
    if (durations.size() < FEWEST_SEASONS) {
      throw InputProblem.of(durations.size() + " seasons or sites")
          .expected("at least " + FEWEST_SEASONS)
          .because("two durations are fitted without any scatter, so that nothing can be judged")
          .mend("add seasons or sites, or take the base temperature from a rearing experiment");
    }
    boolean sameDays = durations.stream().mapToDouble(FieldDuration::days).distinct().count() == 1;
    boolean sameWarmth =
        durations.stream().mapToDouble(FieldDuration::meanCelsius).distinct().count() == 1;
    if (sameDays || sameWarmth) {
      throw InputProblem.of(
              durations.size() + " seasons with equal " + (sameDays ? "durations" : "temperatures"))
          .expected("seasons that differ in temperature and in duration")
          .because("the base is told from how the duration changes with temperature")
          .mend("add seasons or sites that were colder or warmer");
    }
  }

  private static double[] days(List<FieldDuration> durations) {
    return durations.stream().mapToDouble(FieldDuration::days).toArray();
  }

  private static List<FieldDuration> pick(List<FieldDuration> durations, int[] chosen) {
    return Arrays.stream(chosen).mapToObj(durations::get).toList();
  }
}
