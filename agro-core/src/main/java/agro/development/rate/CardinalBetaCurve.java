package agro.development.rate;

import java.util.Arrays;
import java.util.List;

/** r = Rmax [ (Tc − T)/(Tc − To) · ((T − Tb)/(To − Tb))^((To − Tb)/(Tc − To)) ]^c. */
final class CardinalBetaCurve implements RateEquation {

  private static final List<RateParameter> PARAMETERS =
      List.of(
          RateParameter.of("Rmax", "greatest rate", "1/d"),
          RateParameter.of("Tb", "lower threshold", "°C"),
          RateParameter.of("To", "optimum", "°C"),
          RateParameter.of("Tc", "upper threshold", "°C"),
          RateParameter.of("c", "narrowness of the curve", ""));

  @Override
  public List<RateParameter> parameters() {
    return PARAMETERS;
  }

  @Override
  public double rate(double celsius, double[] p, ArrheniusConstants constants) {
    if (celsius <= p[1] || celsius >= p[3] || p[2] <= p[1] || p[3] <= p[2]) {
      return 0;
    }
    return p[0] * Math.exp(p[4] * exponent(celsius, p));
  }

  private static double exponent(double celsius, double[] p) {
    return Math.log((p[3] - celsius) / (p[3] - p[2]))
        + (p[2] - p[1]) / (p[3] - p[2]) * Math.log((celsius - p[1]) / (p[2] - p[1]));
  }

  @Override
  public void gradient(double celsius, double[] p, ArrheniusConstants constants, double[] g) {
    double rate = rate(celsius, p, constants);
    if (rate == 0) {
      Arrays.fill(g, 0);
      return;
    }
    double rise = p[2] - p[1];
    double fall = p[3] - p[2];
    double log = Math.log((celsius - p[1]) / rise);
    double steep = rate * p[4];
    g[0] = rate / p[0];
    g[1] = steep * ((1 - rise / (celsius - p[1])) / fall - log / fall);
    g[2] = steep * log * (p[3] - p[1]) / (fall * fall);
    g[3] = steep * (1 / (p[3] - celsius) - 1 / fall - log * rise / (fall * fall));
    g[4] = rate * exponent(celsius, p);
  }

  @Override
  public SearchBox box(DataSpan span) {
    double fastest = span.fastestRate();
    return new SearchBox(5)
        .add(1e-9, 100 * fastest, 0.8 * fastest, 1.3 * fastest)
        .add(
            span.lowest() - 60,
            span.fastest() - 0.01,
            span.lowestAlive() - 15,
            span.lowestAlive() - 0.1)
        .add(span.lowest(), span.highest() + 30, span.fastest() - 3, span.highestAlive() + 1)
        .add(
            span.fastest() + 1e-6,
            span.highest() + 60,
            span.highestAlive() + 0.05,
            span.highest() + 8)
        .add(0.01, 60, 0.3, 3);
  }

  @Override
  public double optimum(double[] p, ArrheniusConstants constants) {
    return p[2];
  }

  @Override
  public double lower(double[] p) {
    return p[1];
  }

  @Override
  public double upper(double[] p) {
    return p[3];
  }
}
