package agro.demo;

import java.nio.charset.StandardCharsets;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.simple.RandomSource;

/**
 * Random draws from one stated algorithm and seed. Only StrictMath is used, so that every machine
 * and every release of Java draws the same numbers.
 */
final class Draws {
  private static final long FNV_PRIME = 0x100000001b3L;

  private final UniformRandomProvider source;
  private double spareGaussian = Double.NaN;

  private Draws(long seed) {
    source = RandomSource.XO_RO_SHI_RO_128_PP.create(seed);
  }

  /** A stream of its own for one purpose, so that a change elsewhere leaves it as it is. */
  static Draws of(long seed, String purpose) {
    long mixed = seed * 0x9E3779B97F4A7C15L;
    for (byte b : purpose.getBytes(StandardCharsets.UTF_8)) {
      mixed = (mixed ^ b) * FNV_PRIME;
    }
    return new Draws(mixed);
  }

  double uniform() {
    return source.nextDouble();
  }

  double uniform(double low, double high) {
    return low + (high - low) * source.nextDouble();
  }

  int whole(int low, int high) {
    return low + source.nextInt(high - low + 1);
  }

  /** Standard normal draw by the polar method of Marsaglia and Bray (1964). */
  double gaussian() {
    if (!Double.isNaN(spareGaussian)) {
      double spare = spareGaussian;
      spareGaussian = Double.NaN;
      return spare;
    }
    double x;
    double y;
    double square;
    do {
      x = uniform(-1, 1);
      y = uniform(-1, 1);
      square = x * x + y * y;
    } while (square >= 1 || square == 0);
    double factor = StrictMath.sqrt(-2 * StrictMath.log(square) / square);
    spareGaussian = y * factor;
    return x * factor;
  }

  /** Poisson draw by counting exponential waiting times; meant for means below some hundreds. */
  int poisson(double mean) {
    int events = 0;
    double waited = -StrictMath.log1p(-uniform());
    while (waited < mean) {
      events++;
      waited -= StrictMath.log1p(-uniform());
    }
    return events;
  }
}
