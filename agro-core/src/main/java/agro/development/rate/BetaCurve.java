package agro.development.rate;

import java.util.Arrays;
import java.util.List;

/** r = exp(μ) (T − Tb)^α (Tc − T)^β. */
final class BetaCurve implements RateEquation {

  private static final List<RateParameter> PARAMETERS =
      List.of(
          RateParameter.of("mu", "natural logarithm of the scale", ""),
          RateParameter.of("Tb", "lower threshold", "°C"),
          RateParameter.of("Tc", "upper threshold", "°C"),
          RateParameter.of("alpha", "shape of the rise", ""),
          RateParameter.of("beta", "shape of the fall", ""));

  @Override
  public List<RateParameter> parameters() {
    return PARAMETERS;
  }

  @Override
  public double rate(double celsius, double[] p, ArrheniusConstants constants) {
    if (celsius <= p[1] || celsius >= p[2]) {
      return 0;
    }
    return Math.exp(p[0] + p[3] * Math.log(celsius - p[1]) + p[4] * Math.log(p[2] - celsius));
  }

  @Override
  public void gradient(double celsius, double[] p, ArrheniusConstants constants, double[] g) {
    double rate = rate(celsius, p, constants);
    if (rate == 0) {
      Arrays.fill(g, 0);
      return;
    }
    double above = celsius - p[1];
    double below = p[2] - celsius;
    g[0] = rate;
    g[1] = -rate * p[3] / above;
    g[2] = rate * p[4] / below;
    g[3] = rate * Math.log(above);
    g[4] = rate * Math.log(below);
  }

  @Override
  public SearchBox box(DataSpan span) {
    return new SearchBox(5)
        .add(-200, 50, -12, -4)
        .add(
            span.lowest() - 60,
            span.fastest() - 0.01,
            span.lowestAlive() - 15,
            span.lowestAlive() - 0.1)
        .add(
            span.fastest() + 1e-6,
            span.highest() + 60,
            span.highestAlive() + 0.05,
            span.highest() + 8)
        .add(0.01, 60, 0.5, 4)
        .add(0.01, 60, 0.05, 2);
  }

  @Override
  public void rescale(double[] q, double factor) {
    q[0] += Math.log(factor);
  }

  @Override
  public double optimum(double[] p, ArrheniusConstants constants) {
    return (p[3] * p[2] + p[4] * p[1]) / (p[3] + p[4]);
  }

  @Override
  public double lower(double[] p) {
    return p[1];
  }

  @Override
  public double upper(double[] p) {
    return p[2];
  }
}
