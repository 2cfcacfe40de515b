package agro.development.rate;

import java.util.Arrays;
import java.util.List;

/** r = α { 1/(1 + k exp(−ρT)) − exp(−(TM − T)/D) }; the search runs in ln k. */
final class LoganTenCurve implements RateEquation {

  private static final List<RateParameter> PARAMETERS =
      List.of(
          RateParameter.of("alpha", "height of the logistic rise", "1/d"),
          RateParameter.of("k", "place of the logistic rise", ""),
          RateParameter.of("rho", "steepness of the logistic rise", "1/°C"),
          RateParameter.of("TM", "upper, lethal temperature", "°C"),
          RateParameter.of("D", "width of the fall below TM", "°C"));

  private final boolean asWritten;

  LoganTenCurve(boolean asWritten) {
    this.asWritten = asWritten;
  }

  @Override
  public RateEquation asWritten() {
    return new LoganTenCurve(true);
  }

  @Override
  public List<RateParameter> parameters() {
    return PARAMETERS;
  }

  @Override
  public double rate(double celsius, double[] p, ArrheniusConstants constants) {
    double rise = 1 / (1 + p[1] * Math.exp(-p[2] * celsius));
    double rate = p[0] * (rise - Math.exp(-(p[3] - celsius) / p[4]));
    return rate > 0 ? rate : 0;
  }

  @Override
  public double fitted(double celsius, double[] q, ArrheniusConstants constants) {
    double rise = 1 / (1 + Math.exp(q[1] - q[2] * celsius));
    double rate = q[0] * (rise - Math.exp(-(q[3] - celsius) / q[4]));
    return rate > 0 || asWritten ? rate : 0;
  }

  @Override
  public void gradient(double celsius, double[] q, ArrheniusConstants constants, double[] g) {
    double rise = 1 / (1 + Math.exp(q[1] - q[2] * celsius));
    double fall = Math.exp(-(q[3] - celsius) / q[4]);
    if (!(q[0] * (rise - fall) > 0 || asWritten)) {
      Arrays.fill(g, 0);
      return;
    }
    double steep = q[0] * rise * (1 - rise);
    g[0] = rise - fall;
    g[1] = -steep;
    g[2] = steep * celsius;
    g[3] = q[0] * fall / q[4];
    g[4] = -q[0] * fall * (q[3] - celsius) / (q[4] * q[4]);
  }

  @Override
  public double[] toSearch(double[] p, ArrheniusConstants constants) {
    double[] q = p.clone();
    q[1] = Math.log(p[1]);
    return q;
  }

  @Override
  public double[] toParameters(double[] q, ArrheniusConstants constants) {
    double[] p = q.clone();
    p[1] = Math.exp(q[1]);
    return p;
  }

  @Override
  public boolean isDirect(int parameter) {
    return parameter != 1;
  }

  @Override
  public SearchBox box(DataSpan span) {
    double fastest = span.fastestRate();
    return new SearchBox(5)
        .add(1e-9, 1000 * fastest, fastest, 4 * fastest)
        .add(-10, 50, 1, 9)
        .add(1e-3, 5, 0.08, 0.5)
        .add(span.fastest(), span.highest() + 60, span.highestAlive(), span.highest() + 8)
        .add(0.01, 60, 0.2, 6);
  }
}
