package agro.development;

import agro.report.InputProblem;
import agro.units.Numbers;
import agro.units.ThermalTime;
import agro.weather.DayRuns;
import agro.working.Presentable;
import agro.working.Presentation;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * Degree-days over days of which some are missing, as a range: a scale on which every missing day
 * counts as little as it may, and one on which it counts as much as it may. Nothing is filled; the
 * range tells what the gap can change.
 */
public final class ThermalTimeBounds implements Presentable {

  private final ThermalTimeScale low;
  private final ThermalTimeScale high;
  private final List<LocalDate> missing;
  private final String rule;

  private ThermalTimeBounds(
      ThermalTimeScale low, ThermalTimeScale high, List<LocalDate> missing, String rule) {
    this.low = low;
    this.high = high;
    this.missing = missing;
    this.rule = rule;
  }

  /**
   * Bounds that hold whatever the weather was: a missing day counts from nothing to the distance of
   * the thresholds, which no day can pass when development does not speed up above the upper one.
   *
   * @param daily degree-days of a run of days by a model with a cutoff
   * @param start first day that counts
   * @return the bounds
   * @throws InputProblem when the model has no cutoff, or the start is outside the run
   */
  public static ThermalTimeBounds certain(DailyDegreeDays daily, LocalDate start) {
    var model = daily.model();
    if (!model.cutoff().needsUpperThreshold()) {
      throw InputProblem.of("certain bounds for " + model)
          .expected("a model with a cutoff at an upper threshold")
          .because("without one there is no most that a day can count")
          .mend("take the cutoff HORIZONTAL, or bounds from nearby days");
    }
    double most =
        model.thresholds().upper().orElseThrow().celsius() - model.thresholds().lower().celsius();
    return of(
        daily, start, i -> 0, i -> most, "a missing day counts from nothing to UT − LT, certainly");
  }

  /**
   * Bounds from the days around each missing day: it counts between the least and the most of the
   * known days so many days before it and after it. Likely in steady weather, not certain.
   *
   * @param daily degree-days of a run of days
   * @param start first day that counts
   * @param days days to look at on either side, 1 or more
   * @return the bounds
   * @throws InputProblem when there is no known day as near, or the start is outside the run
   */
  public static ThermalTimeBounds ofNearbyDays(DailyDegreeDays daily, LocalDate start, int days) {
    if (days < 1) {
      throw InputProblem.of("bounds from " + days + " days on either side")
          .expected("1 day or more")
          .because("the range comes from known days around the gap")
          .mend("give for example 7");
    }
    var values = daily.valuesC();
    return of(
        daily,
        start,
        i -> nearby(daily, values, i, days, true),
        i -> nearby(daily, values, i, days, false),
        "a missing day counts between the least and the most of the known days within "
            + days
            + (days == 1 ? " day" : " days"));
  }

  /** A bound of a missing day. */
  private interface Bound {
    double at(int index);
  }

  private static double nearby(
      DailyDegreeDays daily, double[] values, int index, int days, boolean least) {
    double found = Double.NaN;
    int last = Math.min(values.length - 1, index + days);
    for (int i = Math.max(0, index - days); i <= last; i++) {
      boolean better = Double.isNaN(found) || (least ? values[i] < found : values[i] > found);
      found = !Double.isNaN(values[i]) && better ? values[i] : found;
    }
    if (Double.isNaN(found)) {
      throw InputProblem.of(
              daily.place() + ": no known day near " + daily.firstDay().plusDays(index))
          .expected("a known day within " + days + " days")
          .because("the range of a missing day comes from the days around it")
          .mend("look further, or fill the gap from a neighbouring station");
    }
    return found;
  }

  private static ThermalTimeBounds of(
      DailyDegreeDays daily, LocalDate start, Bound least, Bound most, String rule) {
    var low = daily.valuesC();
    var high = daily.valuesC();
    for (int i = 0; i < low.length; i++) {
      boolean counts = !daily.firstDay().plusDays(i).isBefore(start);
      if (Double.isNaN(low[i]) && counts) {
        low[i] = least.at(i);
        high[i] = most.at(i);
      }
    }
    var missing =
        daily.daysWith(DayBasis.MISSING).stream().filter(day -> !day.isBefore(start)).toList();
    return new ThermalTimeBounds(
        ThermalTimeScale.of(daily.withValues(low), start, MissingDayPolicy.REFUSE),
        ThermalTimeScale.of(daily.withValues(high), start, MissingDayPolicy.REFUSE),
        missing,
        rule);
  }

  /**
   * The scale on which missing days count as little as they may.
   *
   * @return the lower bound of every sum
   */
  public ThermalTimeScale low() {
    return low;
  }

  /**
   * The scale on which missing days count as much as they may.
   *
   * @return the upper bound of every sum
   */
  public ThermalTimeScale high() {
    return high;
  }

  /**
   * The missing days that were bounded.
   *
   * @return the days in ascending order, possibly none
   */
  public List<LocalDate> missingDays() {
    return missing;
  }

  /**
   * The first moment at which a sum can have been reached.
   *
   * @param sum thermal time since the start, not negative
   * @return nothing when it is not reached even by the upper bound
   */
  public Optional<Reached> earliest(ThermalTime sum) {
    return high.reached(sum);
  }

  /**
   * The moment by which a sum must have been reached.
   *
   * @param sum thermal time since the start, not negative
   * @return nothing when it need not be reached by the end of the run
   */
  public Optional<Reached> latest(ThermalTime sum) {
    return low.reached(sum);
  }

  @Override
  public Presentation presentation() {
    var runs = DayRuns.of(missing).stream().map(DayRuns.Run::words).toList();
    return Presentation.titled("Degree-days at " + low.daily().place() + " with days missing")
        .fact("Rule", rule)
        .fact("Method", low.model().toString())
        .fact("From the start of", low.firstDay().toString())
        .fact("To the end of", low.lastDay().toString())
        .fact("Missing days", runs.isEmpty() ? "none" : String.join(", ", runs))
        .fact("Sum", words())
        .sources(List.of(low.model().method().source(), low.model().cutoff().source()))
        .build();
  }

  private String words() {
    return Numbers.fixed(low.totalC(), 1) + " to " + Numbers.fixed(high.totalC(), 1) + " °C·d";
  }

  @Override
  public String toString() {
    return low.daily().place() + ", " + missing.size() + " days missing: " + words();
  }
}
