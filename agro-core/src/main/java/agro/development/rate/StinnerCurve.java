package agro.development.rate;

import java.util.List;

/** r = C/(1 + exp(k1 + k2 T')), T' = T up to the optimum and 2 Topt − T above it. */
final class StinnerCurve implements RateEquation {

  private static final List<RateParameter> PARAMETERS =
      List.of(
          RateParameter.of("C", "height that the rise would reach", "1/d"),
          RateParameter.of("k1", "place of the rise", ""),
          RateParameter.of("k2", "steepness of the rise, below zero", "1/°C"),
          RateParameter.of("Topt", "optimum", "°C"));

  @Override
  public List<RateParameter> parameters() {
    return PARAMETERS;
  }

  private static double folded(double celsius, double[] p) {
    return celsius <= p[3] ? celsius : 2 * p[3] - celsius;
  }

  @Override
  public double rate(double celsius, double[] p, ArrheniusConstants constants) {
    return p[0] / (1 + Math.exp(p[1] + p[2] * folded(celsius, p)));
  }

  @Override
  public void gradient(double celsius, double[] p, ArrheniusConstants constants, double[] g) {
    double share = 1 / (1 + Math.exp(p[1] + p[2] * folded(celsius, p)));
    double steep = -p[0] * share * (1 - share);
    g[0] = share;
    g[1] = steep;
    g[2] = steep * folded(celsius, p);
    g[3] = celsius <= p[3] ? 0 : 2 * steep * p[2];
  }

  @Override
  public SearchBox box(DataSpan span) {
    double fastest = span.fastestRate();
    return new SearchBox(4)
        .add(1e-9, 1000 * fastest, fastest, 3 * fastest)
        .add(-20, 100, 1, 9)
        .add(-5, -1e-3, -0.5, -0.08)
        .add(span.lowest(), span.highest() + 30, span.fastest() - 4, span.highest() + 2);
  }

  @Override
  public double optimum(double[] p, ArrheniusConstants constants) {
    return p[3];
  }

  @Override
  public double lower(double[] p) {
    return Double.NEGATIVE_INFINITY;
  }

  @Override
  public double upper(double[] p) {
    return Double.POSITIVE_INFINITY;
  }
}
