package agro.development.rate;

import java.util.Arrays;
import java.util.List;

/** r = ψ { t²/(t² + d²) − exp(−(TM − T)/D) }, t = T − Tb, for T above Tb. */
final class HilbertLoganCurve implements RateEquation {

  private static final List<RateParameter> PARAMETERS =
      List.of(
          RateParameter.of("psi", "height of the rise", "1/d"),
          RateParameter.of("Tb", "base temperature", "°C"),
          RateParameter.of("d", "degrees above Tb at which half the height is reached", "°C"),
          RateParameter.of("TM", "upper, lethal temperature", "°C"),
          RateParameter.of("D", "width of the fall below TM", "°C"));

  private final boolean asWritten;

  HilbertLoganCurve(boolean asWritten) {
    this.asWritten = asWritten;
  }

  @Override
  public RateEquation asWritten() {
    return new HilbertLoganCurve(true);
  }

  @Override
  public List<RateParameter> parameters() {
    return PARAMETERS;
  }

  @Override
  public double rate(double celsius, double[] p, ArrheniusConstants constants) {
    double rate = formula(celsius, p);
    return rate > 0 ? rate : 0;
  }

  @Override
  public double fitted(double celsius, double[] p, ArrheniusConstants constants) {
    double rate = formula(celsius, p);
    return rate > 0 || asWritten ? rate : 0;
  }

  private static double formula(double celsius, double[] p) {
    double t = celsius - p[1];
    return t <= 0 ? 0 : p[0] * (t * t / (t * t + p[2] * p[2]) - Math.exp(-(p[3] - celsius) / p[4]));
  }

  @Override
  public void gradient(double celsius, double[] p, ArrheniusConstants constants, double[] g) {
    double rate = fitted(celsius, p, constants);
    if (rate == 0) {
      Arrays.fill(g, 0);
      return;
    }
    double t = celsius - p[1];
    double both = t * t + p[2] * p[2];
    double fall = Math.exp(-(p[3] - celsius) / p[4]);
    g[0] = rate / p[0];
    g[1] = -p[0] * 2 * t * p[2] * p[2] / (both * both);
    g[2] = -p[0] * 2 * p[2] * t * t / (both * both);
    g[3] = p[0] * fall / p[4];
    g[4] = -p[0] * fall * (p[3] - celsius) / (p[4] * p[4]);
  }

  @Override
  public SearchBox box(DataSpan span) {
    double fastest = span.fastestRate();
    return new SearchBox(5)
        .add(1e-9, 1e4 * fastest, fastest, 5 * fastest)
        .add(
            span.lowest() - 60,
            span.fastest() - 0.01,
            span.lowestAlive() - 12,
            span.lowestAlive() - 0.1)
        .add(0.01, 1000, 2, 40)
        .add(span.fastest(), span.highest() + 60, span.highestAlive(), span.highest() + 8)
        .add(0.01, 60, 0.2, 6);
  }
}
