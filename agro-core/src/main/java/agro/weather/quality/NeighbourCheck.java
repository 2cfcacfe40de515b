package agro.weather.quality;

import agro.report.InputProblem;
import agro.units.Numbers;
import agro.weather.DailyTemperatures;
import agro.weather.DayOrigin;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/**
 * A daily extreme against what the neighbours say: the spatial regression test of Hubbard and
 * others (2005). Each neighbour predicts the day by a regression over the days around it, the day
 * itself left out; the predictions are averaged with the inverse squares of their standard errors
 * as weights, and the day is flagged when it lies farther from the average than so many standard
 * errors.
 *
 * @param neighbours daily extremes of neighbours in the same kind of medium
 * @param standardErrors distance that is too far, in standard errors, above 0
 * @param leastCelsius least distance that is flagged, in °C, 0 or more
 * @param windowDays days around each day that the regression is fitted to, odd
 * @param leastDays fewest common days of a window
 */
public record NeighbourCheck(
    List<DailyTemperatures> neighbours,
    double standardErrors,
    double leastCelsius,
    int windowDays,
    int leastDays)
    implements QualityCheck, DailyTest {

  /**
   * Checks the limits.
   *
   * @throws InputProblem when there is no neighbour or a limit is out of range
   */
  public NeighbourCheck {
    neighbours = List.copyOf(neighbours);
    if (neighbours.isEmpty()
        || !(standardErrors > 0)
        || !(leastCelsius >= 0)
        || windowDays % 2 == 0
        || leastDays < 10
        || windowDays <= leastDays) {
      throw InputProblem.of(neighbours.size() + " neighbours, windows of " + windowDays + " days")
          .expected("at least one neighbour, an odd window, at least 10 common days in it")
          .because("a regression needs days with both temperatures")
          .mend("take NeighbourCheck.of(neighbour)");
    }
  }

  /**
   * Three standard errors (Hubbard and others 2005, from memory), but at least 3 °C, in windows of
   * 61 days with 20 common ones (ours).
   *
   * @param neighbours at least one series
   * @return the check
   */
  public static NeighbourCheck of(DailyTemperatures... neighbours) {
    return new NeighbourCheck(List.of(neighbours), 3, 3, 61, 20);
  }

  @Override
  public QualityRule rule() {
    return QualityRule.NEIGHBOUR;
  }

  @Override
  public String limits() {
    return Numbers.plain(standardErrors)
        + " standard errors, and "
        + Numbers.plain(leastCelsius)
        + " °C, from the regression on "
        + neighbours.stream().map(DailyTemperatures::place).collect(Collectors.joining(", "))
        + " over "
        + windowDays
        + " days";
  }

  /** A value with its standard error. */
  private record Estimate(double value, double error) {}

  @Override
  public void flag(DaysInTest series) {
    neighbours.forEach(
        neighbour -> neighbour.medium().require(series.medium().kind(), "the neighbour check"));
    for (var element : DaysInTest.EXTREMES) {
      double[] own = series.all(element);
      var others = new ArrayList<double[]>();
      neighbours.forEach(neighbour -> others.add(aligned(neighbour, series, element)));
      int unchecked = 0;
      for (int day = 0; day < own.length; day++) {
        if (Double.isNaN(own[day])) {
          continue;
        }
        var estimate = estimate(own, others, day);
        if (Double.isNaN(estimate.value())) {
          unchecked++;
        } else {
          compare(series, element, day, own[day], estimate);
        }
      }
      if (unchecked > 0) {
        series.notChecked(
            rule(), unchecked + " days, for fewer than " + leastDays + " common days around them");
      }
    }
  }

  private void compare(
      DaysInTest series, FlaggedValue element, int day, double own, Estimate estimate) {
    double distance = own - estimate.value();
    double limit = Math.max(standardErrors * estimate.error(), leastCelsius);
    if (Math.abs(distance) > limit) {
      series.note(
          rule(),
          element,
          day,
          day,
          distance,
          Math.signum(distance) * limit,
          "°C",
          Numbers.fixed(own, 1)
              + " °C where the neighbours say "
              + Numbers.fixed(estimate.value(), 1)
              + " ± "
              + Numbers.fixed(estimate.error(), 1)
              + " °C");
    }
  }

  static double[] aligned(DailyTemperatures days, DaysInTest series, FlaggedValue element) {
    var values = new double[series.size()];
    for (int i = 0; i < values.length; i++) {
      var day = series.day(i);
      boolean observed = days.origin(day) == DayOrigin.OBSERVED;
      double celsius =
          element == FlaggedValue.MINIMUM ? days.minCelsius(day) : days.maxCelsius(day);
      values[i] = observed ? celsius : Double.NaN;
    }
    return values;
  }

  private Estimate estimate(double[] own, List<double[]> others, int day) {
    double weighted = 0;
    double weights = 0;
    int count = 0;
    for (double[] other : others) {
      var one = regression(own, other, day);
      if (!Double.isNaN(one.value())) {
        double weight = 1 / (one.error() * one.error());
        weighted += weight * one.value();
        weights += weight;
        count++;
      }
    }
    return new Estimate(weighted / weights, Math.sqrt(count / weights));
  }

  /** What one neighbour says about a day, from the days around it. */
  private Estimate regression(double[] own, double[] other, int day) {
    double n = 0;
    double sumX = 0;
    double sumY = 0;
    double sumXx = 0;
    double sumXy = 0;
    double sumYy = 0;
    int half = windowDays / 2;
    for (int i = Math.max(0, day - half); i <= Math.min(own.length - 1, day + half); i++) {
      if (i != day && !Double.isNaN(own[i]) && !Double.isNaN(other[i])) {
        double x = other[i] - other[day];
        double y = own[i] - other[day];
        n++;
        sumX += x;
        sumY += y;
        sumXx += x * x;
        sumXy += x * y;
        sumYy += y * y;
      }
    }
    if (n < leastDays || Double.isNaN(other[day])) {
      return new Estimate(Double.NaN, Double.NaN);
    }
    double xx = sumXx - sumX * sumX / n;
    double xy = sumXy - sumX * sumY / n;
    double yy = sumYy - sumY * sumY / n;
    double slope = xx > 0 ? xy / xx : 0;
    double value = other[day] + sumY / n - slope * sumX / n;
    double rest = Math.max(0, yy - slope * xy) / (n - 2);
    double smallest = 0.05;
    return new Estimate(value, Math.max(smallest, Math.sqrt(rest)));
  }
}
