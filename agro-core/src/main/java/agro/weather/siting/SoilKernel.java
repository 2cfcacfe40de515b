package agro.weather.siting;

import org.hipparchus.special.Erf;

/**
 * How much of the daily mean temperature of the surface j days ago is in the daily mean at a depth:
 * the exact solution of the conduction of heat into a uniform half-space (Carslaw and Jaeger 1959,
 * section 2.5). With E(t) = erfc(z / 2√(κt)), the answer to a step, and its integral I, the weight
 * of day j is (I(j+1) - 2 I(j) + I(j-1)) / day. Weights fall slowly, as the depth remembers the
 * season.
 */
final class SoilKernel {

  private static final double DAY = 86_400;

  private SoilKernel() {}

  /** Weights of the day itself and the days before it, as many as asked for. */
  static double[] weights(double squareMetresPerSecond, double depthMetres, int days) {
    var weights = new double[days];
    double a = depthMetres / (2 * Math.sqrt(squareMetresPerSecond));
    double before = 0;
    double now = 0;
    for (int j = 0; j < days; j++) {
      double next = integral(a, (j + 1) * DAY);
      weights[j] = (next - 2 * now + before) / DAY;
      before = now;
      now = next;
    }
    return weights;
  }

  /** Integral of erfc(a / √s) for s from 0 to t: (t + 2a²) erfc(a/√t) - 2a √(t/π) exp(-a²/t). */
  private static double integral(double a, double t) {
    return (t + 2 * a * a) * Erf.erfc(a / Math.sqrt(t))
        - 2 * a * Math.sqrt(t / Math.PI) * Math.exp(-a * a / t);
  }
}
