package agro.development.rate;

import agro.stats.BootstrapSample;
import agro.stats.ConfidenceLimits;
import java.util.Arrays;
import org.hipparchus.distribution.continuous.NormalDistribution;
import org.hipparchus.distribution.continuous.TDistribution;

/** Limits of the rate itself, temperature by temperature, from the curves of all refits. */
final class CurveBand {

  private CurveBand() {}

  static ConfidenceLimits at(RateFit fit, BootstrapSample refits, double level, double celsius) {
    var model = fit.curve().model();
    int k = model.parameters().size();
    double[] rates = new double[refits.size()];
    double[] p = new double[k];
    int n = 0;
    for (int i = 0; i < refits.size(); i++) {
      for (int j = 0; j < k; j++) {
        p[j] = refits.value(i, j);
      }
      double rate = model.equation().rate(celsius, p, fit.curve().constants());
      if (Double.isFinite(rate) && !Double.isNaN(p[0])) {
        rates[n++] = rate;
      }
    }
    double[] sorted = Arrays.copyOf(rates, n);
    Arrays.sort(sorted);
    double t =
        new TDistribution(fit.degreesOfFreedom()).inverseCumulativeProbability(0.5 + 0.5 * level);
    double tail = new NormalDistribution().cumulativeProbability(-t);
    return new ConfidenceLimits(
        BootstrapSample.quantile(sorted, tail), BootstrapSample.quantile(sorted, 1 - tail));
  }
}
