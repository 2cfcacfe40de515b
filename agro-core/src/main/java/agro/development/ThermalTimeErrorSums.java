package agro.development;

import agro.weather.DailyTemperatures;
import agro.weather.DayRuns;
import agro.weather.gap.ErrorCorrelation;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/**
 * Adds up variances day by day. Inside a run the standardised errors u of the minima and v of the
 * maxima go on as autoregressive processes of order one with one correlation from day to day, and u
 * and v of one day are correlated. It is enough to carry the covariances of the run's sum with u
 * and v along: from day to day they shrink by the correlation, and each day adds p u + q v.
 */
final class ThermalTimeErrorSums {

  private final ThermalTimeScale scale;
  private final DailyTemperatures days;
  private final double[] variances;
  private final double[] expectedExcess;
  private final List<ThermalTimeErrorPart> parts = new ArrayList<>();

  ThermalTimeErrorSums(ThermalTimeScale scale, DailyTemperatures days, ThermalTimeErrorRuns runs) {
    this.scale = scale;
    this.days = days;
    variances = new double[days.size() + 1];
    expectedExcess = new double[days.size() + 1];
    int i = 0;
    while (i < days.size()) {
      if (isExact(days.day(i))) {
        variances[i + 1] = variances[i];
        expectedExcess[i + 1] = expectedExcess[i];
        i++;
      } else {
        i = addRun(i, runs);
      }
    }
  }

  double[] variances() {
    return variances;
  }

  double[] expectedExcess() {
    return expectedExcess;
  }

  List<ThermalTimeErrorPart> parts() {
    return List.copyOf(parts);
  }

  private boolean isExact(LocalDate day) {
    return days.minStandardErrorCelsius(day) == 0 && days.maxStandardErrorCelsius(day) == 0;
  }

  /** Adds the days of one run from an index on; the index after it is returned. */
  private int addRun(int from, ThermalTimeErrorRuns runs) {
    var first = days.day(from);
    var correlation = runs.correlation(first);
    var run = new RunVariance(correlation);
    int i = from;
    while (i < days.size()
        && !isExact(days.day(i))
        && runs.run(days.day(i)) == runs.run(first)
        && days.originAt(i) == days.originAt(from)) {
      var answer =
          ThermalTimeErrorAnswer.of(scale.model(), days, days.day(i), correlation.minToMax());
      run.add(answer);
      variances[i + 1] = variances[from] + run.variance;
      expectedExcess[i + 1] = expectedExcess[i] + answer.expectedExcessC();
      i++;
    }
    parts.add(
        new ThermalTimeErrorPart(
            new DayRuns.Run(first, days.day(i - 1)),
            days.originAt(from),
            scale.degreeDaysCAfter(i) - scale.degreeDaysCAfter(from),
            Math.sqrt(run.variance)));
    return i;
  }

  private static final class RunVariance {
    private final ErrorCorrelation correlation;
    private double variance;
    private double withMinimum;
    private double withMaximum;

    RunVariance(ErrorCorrelation correlation) {
      this.correlation = correlation;
    }

    void add(ThermalTimeErrorAnswer answer) {
      double p = answer.toMinimum();
      double q = answer.toMaximum();
      double u = correlation.dayToDay() * withMinimum;
      double v = correlation.dayToDay() * withMaximum;
      double r = correlation.minToMax();
      double ofDay = p * p + q * q + 2 * r * p * q + answer.bentVariance();
      variance = Math.max(0, variance + 2 * (p * u + q * v) + ofDay);
      withMinimum = u + p + r * q;
      withMaximum = v + q + r * p;
    }
  }
}
