package agro.development.rate;

import java.util.List;

/** r = Rm exp(−½ ((T − Tm)/Ts)²). */
final class TaylorCurve implements RateEquation {

  private static final List<RateParameter> PARAMETERS =
      List.of(
          RateParameter.of("Rm", "greatest rate", "1/d"),
          RateParameter.of("Tm", "optimum", "°C"),
          RateParameter.of("Ts", "distance from the optimum at which the rate is 0.607 Rm", "°C"));

  @Override
  public List<RateParameter> parameters() {
    return PARAMETERS;
  }

  @Override
  public double rate(double celsius, double[] p, ArrheniusConstants constants) {
    double z = (celsius - p[1]) / p[2];
    return p[0] * Math.exp(-0.5 * z * z);
  }

  @Override
  public void gradient(double celsius, double[] p, ArrheniusConstants constants, double[] g) {
    double z = (celsius - p[1]) / p[2];
    double shape = Math.exp(-0.5 * z * z);
    g[0] = shape;
    g[1] = p[0] * shape * z / p[2];
    g[2] = p[0] * shape * z * z / p[2];
  }

  @Override
  public SearchBox box(DataSpan span) {
    double fastest = span.fastestRate();
    return new SearchBox(3)
        .add(1e-9, 1000 * fastest, 0.8 * fastest, 1.3 * fastest)
        .add(
            span.lowest() - 20,
            span.highest() + 100,
            span.fastest() - 4,
            Math.max(span.fastest(), span.highest()) + 4)
        .add(0.1, 200, 2, 20);
  }

  @Override
  public double optimum(double[] p, ArrheniusConstants constants) {
    return p[1];
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
