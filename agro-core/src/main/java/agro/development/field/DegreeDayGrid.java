package agro.development.field;

import agro.development.DegreeDayMethod;
import agro.development.DegreeDayModel;
import agro.development.Thresholds;
import agro.development.UpperCutoff;
import agro.report.Progress;
import agro.units.Temperature;
import java.util.Arrays;
import java.util.List;

/**
 * Degree-days of each season above each base temperature of a grid, days below the base counting as
 * nothing.
 */
final class DegreeDayGrid {

  private final double lowest;
  private final double step;
  private final double[][] degreeDaysC;
  private final double[] days;
  private final double[] meanCelsius;

  private DegreeDayGrid(
      double lowest, double step, double[][] degreeDaysC, List<FieldDuration> durations) {
    this.lowest = lowest;
    this.step = step;
    this.degreeDaysC = degreeDaysC;
    days = durations.stream().mapToDouble(FieldDuration::days).toArray();
    meanCelsius = durations.stream().mapToDouble(FieldDuration::meanCelsius).toArray();
  }

  static DegreeDayGrid of(
      List<FieldSeasonLog> seasons,
      DegreeDayMethod method,
      double lowest,
      double highest,
      double step,
      Progress progress) {
    int size = (int) Math.round((highest - lowest) / step) + 1;
    var sums = new double[size][seasons.size()];
    for (int s = 0; s < seasons.size(); s++) {
      progress.step("degree-days above each base", s, seasons.size());
      var minima = seasons.get(s).minimaCelsius();
      var maxima = seasons.get(s).maximaCelsius();
      for (int g = 0; g < size; g++) {
        var model =
            new DegreeDayModel(
                method,
                Thresholds.above(Temperature.ofCelsius(lowest + g * step)),
                UpperCutoff.NONE);
        sums[g][s] = Arrays.stream(model.degreeDaysC(minima, maxima)).sum();
      }
    }
    progress.step("degree-days above each base", seasons.size(), seasons.size());
    return new DegreeDayGrid(
        lowest, step, sums, seasons.stream().map(FieldSeasonLog::duration).toList());
  }

  double celsius(int index) {
    return lowest + index * step;
  }

  /** Grid point at which a criterion is best for chosen seasons, or -1 when there is none. */
  int best(BaseCriterion criterion, int[] chosen) {
    return criterion == BaseCriterion.NO_SLOPE_ON_TEMPERATURE
        ? signChange(chosen)
        : least(criterion, chosen);
  }

  boolean isAtEdge(int index) {
    return index == 0 || index == degreeDaysC.length - 1;
  }

  private int least(BaseCriterion criterion, int[] chosen) {
    int best = -1;
    double least = Double.POSITIVE_INFINITY;
    for (int g = 0; g < degreeDaysC.length; g++) {
      var at = spread(g, chosen);
      double value =
          switch (criterion) {
            case LEAST_SD_DEGREE_DAYS -> at.sdDegreeDaysC();
            case LEAST_SD_DAYS -> at.sdDays();
            default -> at.variation();
          };
      if (value < least) {
        least = value;
        best = g;
      }
    }
    return best;
  }

  /** First grid point from below at which the slope of degree-days on temperature turns. */
  private int signChange(int[] chosen) {
    double before = slope(0, chosen);
    for (int g = 1; g < degreeDaysC.length; g++) {
      double here = slope(g, chosen);
      if (before < 0 != here < 0) {
        return Math.abs(before) < Math.abs(here) ? g - 1 : g;
      }
      before = here;
    }
    return -1;
  }

  private double slope(int index, int[] chosen) {
    return Moments.covariance(pick(meanCelsius, chosen), pick(degreeDaysC[index], chosen));
  }

  Spread spread(int index, int[] chosen) {
    return Spread.of(pick(degreeDaysC[index], chosen), pick(days, chosen));
  }

  private static double[] pick(double[] values, int[] chosen) {
    var picked = new double[chosen.length];
    for (int i = 0; i < chosen.length; i++) {
      picked[i] = values[chosen[i]];
    }
    return picked;
  }
}
