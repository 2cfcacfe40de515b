package agro.weather.siting;

import agro.report.InputProblem;
import agro.units.Numbers;
import agro.weather.TemperatureReadings;
import agro.working.Cell;
import agro.working.Presentable;
import agro.working.Presentation;
import agro.working.ResultTable;
import agro.working.ResultTable.Column;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;

/**
 * How far the extremes of single readings fall short of the true ones. On a sine day of half range
 * W with readings every Δ hours at a random phase, the nearest reading to the peak is up to Δ/2
 * away, so that an extreme falls short by W (1 - sin a / a) on average and by W (1 - cos a) at
 * worst, with a = π Δ / 24.
 *
 * @param interval time between readings, above zero to 12 hours
 */
public record SamplingDeficit(Duration interval) implements Presentable {

  private static final double DAY_SECONDS = 86_400;

  /**
   * Checks the interval.
   *
   * @throws InputProblem when it is not above zero or longer than 12 hours
   */
  public SamplingDeficit {
    if (interval.isNegative()
        || interval.isZero()
        || interval.compareTo(Duration.ofHours(12)) > 0) {
      throw InputProblem.of("readings every " + interval)
          .expected("an interval above zero and up to 12 hours")
          .because("with fewer than two readings a day there are no extremes")
          .mend("give for example three hours");
    }
  }

  private double angle() {
    return Math.PI * interval.toSeconds() / DAY_SECONDS;
  }

  /**
   * Mean shortfall of each extreme as a share of half the daily range.
   *
   * @return 0 to 1
   */
  public double meanShare() {
    return 1 - Math.sin(angle()) / angle();
  }

  /**
   * Largest shortfall of each extreme as a share of half the daily range.
   *
   * @return 0 to 1
   */
  public double worstShare() {
    return 1 - Math.cos(angle());
  }

  /**
   * Mean shortfall of each extreme on a day.
   *
   * @param rangeCelsius true range of the day in °C, maximum less minimum
   * @return °C
   */
  public double meanCelsius(double rangeCelsius) {
    return 0.5 * rangeCelsius * meanShare();
  }

  /**
   * What thinning a log to this interval does to its extremes, over all phases.
   *
   * @param readings a log with more readings than that
   * @return mean shortfall of the minima and of the maxima in °C, with the days used
   * @throws InputProblem when the log is not at least twice as dense, or has no complete day
   */
  public Measured measure(TemperatureReadings readings) {
    long step = readings.medianStepSeconds();
    if (step == 0 || interval.toSeconds() < 2 * step) {
      throw InputProblem.of(
              "readings every "
                  + step
                  + " s, to be thinned to every "
                  + interval.toSeconds()
                  + " s")
          .expected("a log at least twice as dense")
          .because("thinning needs readings to leave out")
          .mend("take a denser log or a longer interval");
    }
    return SamplingTrial.measure(readings, interval.toSeconds());
  }

  /**
   * Shortfall found by thinning a log.
   *
   * @param minimumCelsius how much too warm the minima become, in °C
   * @param maximumCelsius how much too cold the maxima become, in °C
   * @param meanRangeCelsius mean daily range of the dense log, in °C
   * @param days days used
   */
  public record Measured(
      double minimumCelsius, double maximumCelsius, double meanRangeCelsius, int days) {}

  @Override
  public Presentation presentation() {
    var rows = new ArrayList<List<Cell>>();
    for (double range : new double[] {5, 10, 15, 20}) {
      rows.add(
          List.of(
              Cell.number(range, 0),
              Cell.number(meanCelsius(range), 2),
              Cell.number(0.5 * range * worstShare(), 2)));
    }
    return Presentation.titled(
            "Extremes of readings every "
                + Numbers.significant(interval.toSeconds() / 3600.0, 3)
                + " h")
        .paragraph(
            "Single readings miss the peaks: maxima come out too cold and minima too warm, by so"
                + " much on a sine day. Near a threshold the loss of degree-days is larger than the"
                + " loss of temperature.")
        .table(
            ResultTable.of(
                "Shortfall of each extreme",
                List.of(
                    Column.of("Range of the day", "°C"),
                    Column.of("On average", "°C"),
                    Column.of("At worst", "°C")),
                rows))
        .sources(List.of(SitingSources.SAMPLED_SINE))
        .build();
  }
}
