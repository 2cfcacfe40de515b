package agro.stats.multiple;

import java.util.function.DoubleUnaryOperator;
import org.hipparchus.analysis.integration.gauss.GaussIntegrator;
import org.hipparchus.analysis.integration.gauss.GaussIntegratorFactory;
import org.hipparchus.special.Erf;
import org.hipparchus.special.Gamma;

/**
 * The two distributions once more, slowly and by other means: Gauss and Legendre's rule on many
 * short stretches of both integrals, with the library's error function.
 */
final class SlowQuadrature {

  private static final GaussIntegrator RULE = new GaussIntegratorFactory().legendre(20);
  private static final double REACH = 10;

  private SlowQuadrature() {}

  static double normalAbove(double z) {
    return 0.5 * Erf.erfc(z / Math.sqrt(2));
  }

  static double integral(DoubleUnaryOperator f, double from, double to, int stretches) {
    double half = 0.5 * (to - from) / stretches;
    double sum = 0;
    for (int each = 0; each < stretches; each++) {
      double middle = from + (2 * each + 1) * half;
      sum += half * RULE.integrate(u -> f.applyAsDouble(middle + half * u));
    }
    return sum;
  }

  private static double density(double z) {
    return Math.exp(-0.5 * z * z) / Math.sqrt(2 * Math.PI);
  }

  static double rangeAbove(int means, double w) {
    return integral(
        z -> {
          double below = normalAbove(-z);
          double share = Math.min(1, normalAbove(w - z) / below);
          double lost = -Math.expm1((means - 1) * Math.log1p(-share));
          return means * density(z) * Math.pow(below, means - 1) * lost;
        },
        0.5 * w - REACH,
        0.5 * w + REACH,
        16);
  }

  static double maximumAbove(double[] loadings, boolean twoSided, double w) {
    double reach = Math.abs(w) + REACH;
    return integral(
        z -> {
          double log = 0;
          for (double loading : loadings) {
            double rest = Math.sqrt(1 - loading * loading);
            double above = normalAbove((w - loading * z) / rest);
            above += twoSided ? normalAbove((w + loading * z) / rest) : 0;
            log += Math.log1p(-Math.min(1, above));
          }
          return -density(z) * Math.expm1(log);
        },
        -reach,
        reach,
        24);
  }

  /** Mixes tails for a known deviation over the estimated one. */
  static double studentised(DoubleUnaryOperator above, double q, double df) {
    double constant = Math.log(2) + 0.5 * df * Math.log(0.5 * df) - Gamma.logGamma(0.5 * df);
    double peak = -0.5 * Math.log1p(q * q / (2 * df));
    double width = 1 / Math.sqrt(2 * df);
    return integral(
        t -> {
          double s = Math.exp(t);
          return Math.exp(constant + df * t - 0.5 * df * s * s) * above.applyAsDouble(q * s);
        },
        peak - 8 * width - 32 / df,
        Math.max(0, peak) + 9 * width,
        30);
  }
}
