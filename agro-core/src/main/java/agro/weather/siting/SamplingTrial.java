package agro.weather.siting;

import agro.report.InputProblem;
import agro.weather.TemperatureReadings;

/** Thins the days of a dense log at every phase. */
final class SamplingTrial {

  private static final long DAY = 86_400;

  /** Share of the readings that the step promises, below which a day is left out. */
  private static final double LEAST_SHARE = 0.95;

  private double minimum;
  private double maximum;
  private double range;
  private int days;

  private SamplingTrial() {}

  static SamplingDeficit.Measured measure(TemperatureReadings readings, long interval) {
    var trial = new SamplingTrial();
    long step = readings.medianStepSeconds();
    long offset = readings.dayOffset().getTotalSeconds();
    for (int from = 0; from < readings.size(); ) {
      long day = Math.floorDiv(readings.epochSecond(from) + offset, DAY);
      int to = from;
      while (to < readings.size() && Math.floorDiv(readings.epochSecond(to) + offset, DAY) == day) {
        to++;
      }
      if ((to - from) * step >= LEAST_SHARE * DAY) {
        trial.add(readings, from, to, (int) Math.round((double) interval / step));
      }
      from = to;
    }
    if (trial.days == 0) {
      throw InputProblem.of(readings + ": no complete day")
          .expected("at least one day with 95 % of its readings")
          .because("the true extremes of a day are not known otherwise")
          .mend("take a log without gaps");
    }
    return new SamplingDeficit.Measured(
        trial.minimum / trial.days,
        trial.maximum / trial.days,
        trial.range / trial.days,
        trial.days);
  }

  private void add(TemperatureReadings readings, int from, int to, int stride) {
    double[] all = extremes(readings, from, to, 1);
    double low = 0;
    double high = 0;
    for (int phase = 0; phase < stride; phase++) {
      double[] thinned = extremes(readings, from + phase, to, stride);
      low += (thinned[0] - all[0]) / stride;
      high += (all[1] - thinned[1]) / stride;
    }
    minimum += low;
    maximum += high;
    range += all[1] - all[0];
    days++;
  }

  private static double[] extremes(TemperatureReadings readings, int from, int to, int stride) {
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    for (int i = from; i < to; i += stride) {
      low = Math.min(low, readings.celsius(i));
      high = Math.max(high, readings.celsius(i));
    }
    return new double[] {low, high};
  }
}
