package agro.development.cycle;

import agro.development.rate.RateCurve;
import agro.report.InputProblem;
import agro.weather.DailyTemperatures;
import java.util.Objects;
import java.util.function.DoubleUnaryOperator;

/**
 * The integral of a development rate over a sine day, for rates that bend: the rate at the mean
 * temperature of the day would be wrong by tens of per cent on days with a wide swing.
 *
 * @param ratePerDay share of the stage per day at a temperature in °C, 0 or more
 * @param words what the rate is
 */
public record RateClock(DoubleUnaryOperator ratePerDay, String words) implements DevelopmentClock {

  /** Moments of the day at which the rate is taken, by the midpoint rule. */
  private static final int MOMENTS = 96;

  /** Refuses nulls. */
  public RateClock {
    Objects.requireNonNull(ratePerDay, "ratePerDay");
    Objects.requireNonNull(words, "words");
  }

  /**
   * The clock of a rate model with its parameters, fitted or published.
   *
   * @param curve the model
   * @return a clock that runs at its rate, and stands where the rate would be negative
   */
  public static RateClock of(RateCurve curve) {
    return new RateClock(celsius -> Math.max(0, curve.rate(celsius)), curve.toString());
  }

  @Override
  public double[] dailyAges(DailyTemperatures temperatures) {
    DevelopmentClock.requireWhole(temperatures);
    var minima = temperatures.minimaCelsius();
    var maxima = temperatures.maximaCelsius();
    var ages = new double[minima.length];
    for (int day = 0; day < ages.length; day++) {
      ages[day] = dayAge(minima[day], maxima[day]);
    }
    return ages;
  }

  private double dayAge(double min, double max) {
    double mean = 0.5 * (min + max);
    double amplitude = 0.5 * (max - min);
    double sum = 0;
    for (int i = 0; i < MOMENTS; i++) {
      double celsius = mean - amplitude * Math.cos(Math.PI * (i + 0.5) / MOMENTS);
      double rate = ratePerDay.applyAsDouble(celsius);
      if (!(rate >= 0 && Double.isFinite(rate))) {
        throw InputProblem.of("a development rate of " + rate + " per day at " + celsius + " °C")
            .expected("a finite rate of 0 or more")
            .because("development neither runs backwards nor ends at once")
            .mend("let the rate be 0 outside the thresholds of its model");
      }
      sum += rate;
    }
    return sum / MOMENTS;
  }
}
