package agro.benchmark;

import java.util.SplittableRandom;

/** Daily extremes of invented weather: a yearly wave, noise, and days of 6 to 14 °C. */
final class InventedWeather {

  final double[] min;
  final double[] max;

  InventedWeather(int days, double yearlyMean, long seed) {
    min = new double[days];
    max = new double[days];
    var random = new SplittableRandom(seed);
    for (int i = 0; i < days; i++) {
      double wave = 10 * Math.sin(2 * Math.PI * i / 365.25);
      double mean = yearlyMean + wave + 2 * random.nextGaussian();
      double amplitude = 3 + 4 * random.nextDouble();
      min[i] = mean - amplitude;
      max[i] = mean + amplitude;
    }
  }
}
