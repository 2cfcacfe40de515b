package agro.development.rate;

import java.util.List;

/** r = a + b T. */
final class StraightLine implements RateEquation {

  private static final List<RateParameter> PARAMETERS =
      List.of(
          RateParameter.of("a", "rate at 0 °C if the line went on so far", "1/d"),
          RateParameter.of("b", "rise of the rate for each degree", "1/(d °C)"));

  @Override
  public List<RateParameter> parameters() {
    return PARAMETERS;
  }

  @Override
  public double rate(double celsius, double[] p, ArrheniusConstants constants) {
    return Math.max(0, p[0] + p[1] * celsius);
  }

  /** The line itself also where it is negative, as in a regression. */
  @Override
  public double fitted(double celsius, double[] p, ArrheniusConstants constants) {
    return p[0] + p[1] * celsius;
  }

  @Override
  public void gradient(double celsius, double[] p, ArrheniusConstants constants, double[] g) {
    g[0] = 1;
    g[1] = celsius;
  }

  @Override
  public SearchBox box(DataSpan span) {
    double rise = span.fastestRate() / 10;
    return new SearchBox(2)
        .add(Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY, -rise, rise)
        .add(Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY, 0.01 * rise, rise);
  }

  @Override
  public void rescale(double[] q, double factor) {
    q[0] *= factor;
    q[1] *= factor;
  }

  @Override
  public double optimum(double[] p, ArrheniusConstants constants) {
    return Double.POSITIVE_INFINITY;
  }

  @Override
  public double lower(double[] p) {
    return p[1] > 0 ? -p[0] / p[1] : Double.NEGATIVE_INFINITY;
  }

  @Override
  public double upper(double[] p) {
    return Double.POSITIVE_INFINITY;
  }
}
