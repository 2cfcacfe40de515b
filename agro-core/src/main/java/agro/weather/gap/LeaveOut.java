package agro.weather.gap;

import agro.weather.DailyTemperatures;
import agro.weather.DayOrigin;
import agro.weather.DayRuns;
import java.util.ArrayList;
import java.util.List;

/**
 * How far straight lines miss: artificial gaps of one length are cut into the observed days of the
 * series, and the line is compared with what was observed.
 */
final class LeaveOut {

  /** Artificial gaps within this many days of the time of year are preferred. */
  static final int SAME_SEASON_DAYS = 45;

  /** As many of them are enough. */
  static final int ENOUGH_OF_SEASON = 30;

  /** Fewest artificial gaps of any season for an error of their own. */
  static final int LEAST_GAPS = 10;

  private static final double DAYS_OF_YEAR = 365.25;

  private final double[] minima;
  private final double[] maxima;
  private final long firstDay;

  LeaveOut(DailyTemperatures series) {
    minima = series.minimaCelsius();
    maxima = series.maximaCelsius();
    firstDay = series.firstDay().toEpochDay();
    for (int i = 0; i < minima.length; i++) {
      if (series.originAt(i) != DayOrigin.OBSERVED) {
        minima[i] = Double.NaN;
        maxima[i] = Double.NaN;
      }
    }
  }

  /** Errors of the line over a gap; nothing when there are too few artificial gaps. */
  LineErrors errors(DayRuns.Run gap) {
    int length = Math.toIntExact(gap.days());
    var starts = starts(length);
    double middle = gap.first().toEpochDay() - firstDay;
    var near = starts.stream().filter(start -> sameSeason(start - middle)).toList();
    boolean ofSeason = near.size() >= ENOUGH_OF_SEASON;
    var used = ofSeason ? near : starts;
    if (used.size() < LEAST_GAPS) {
      return LineErrors.ofRandomWalk(length, steps(minima), steps(maxima));
    }
    var errors = new LineErrors.Sums(length);
    for (int start : used) {
      errors.add(residuals(minima, start, length), residuals(maxima, start, length));
    }
    return errors.mean(ofSeason);
  }

  private static boolean sameSeason(double days) {
    double apart = Math.abs(days) % DAYS_OF_YEAR;
    return Math.min(apart, DAYS_OF_YEAR - apart) <= SAME_SEASON_DAYS;
  }

  /** First days of all artificial gaps whose days and neighbours were observed. */
  private List<Integer> starts(int length) {
    var starts = new ArrayList<Integer>();
    int known = 0;
    for (int i = 0; i < minima.length; i++) {
      known = Double.isNaN(minima[i]) ? 0 : known + 1;
      if (known >= length + 2) {
        starts.add(i - length);
      }
    }
    return starts;
  }

  private static double[] residuals(double[] values, int start, int length) {
    var residuals = new double[length];
    double before = values[start - 1];
    double after = values[start + length];
    for (int i = 0; i < length; i++) {
      residuals[i] = values[start + i] - (before + (i + 1.0) / (length + 1) * (after - before));
    }
    return residuals;
  }

  /** Changes from day to day. */
  private static double[] steps(double[] values) {
    var steps = new ArrayList<Double>();
    for (int i = 1; i < values.length; i++) {
      double step = values[i] - values[i - 1];
      if (!Double.isNaN(step)) {
        steps.add(step);
      }
    }
    return steps.stream().mapToDouble(Double::doubleValue).toArray();
  }
}
