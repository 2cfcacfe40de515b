package agro.development;

import java.util.Arrays;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.DoubleStream;
import org.hipparchus.analysis.integration.gauss.GaussIntegratorFactory;

/** Numerical integration of a development rate over a sine day, independent of the closed forms. */
final class RateIntegral {

  private static final int POINTS = 24;

  private RateIntegral() {}

  /** Development rate above the lower threshold at one moment, by the definition of the cutoff. */
  static double rate(double celsius, double lower, double upper, UpperCutoff cutoff) {
    if (celsius <= lower) {
      return 0;
    }
    if (celsius <= upper) {
      return celsius - lower;
    }
    return switch (cutoff) {
      case NONE -> celsius - lower;
      case HORIZONTAL -> upper - lower;
      case INTERMEDIATE -> 2 * upper - lower - celsius;
      case VERTICAL -> 0;
    };
  }

  /** Mean over the day of a rate that is smooth between the given levels. */
  static double overDay(double min, double max, DoubleUnaryOperator rate, double... levels) {
    double mean = 0.5 * (min + max);
    double amplitude = 0.5 * (max - min);
    double half = 0.5 * Math.PI;
    double[] crossings =
        Arrays.stream(levels)
            .filter(level -> level > min && level < max)
            .map(level -> Math.asin((level - mean) / amplitude))
            .toArray();
    double[] cuts =
        DoubleStream.concat(DoubleStream.of(-half, half), Arrays.stream(crossings))
            .sorted()
            .toArray();
    var factory = new GaussIntegratorFactory();
    double sum = 0;
    for (int i = 1; i < cuts.length; i++) {
      sum +=
          factory
              .legendre(POINTS, cuts[i - 1], cuts[i])
              .integrate(x -> rate.applyAsDouble(mean + amplitude * Math.sin(x)));
    }
    return sum / Math.PI;
  }
}
