package agro.development.rate;

import java.util.List;

/**
 * r = Rmax (2 x^α y^α − x^2α)/y^2α, x = T − Tmin, y = Topt − Tmin, α = ln 2 / ln((Tmax −
 * Tmin)/(Topt − Tmin)).
 */
final class WangEngelCurve implements RateEquation {

  private static final List<RateParameter> PARAMETERS =
      List.of(
          RateParameter.of("Rmax", "greatest rate", "1/d"),
          RateParameter.of("Tmin", "lower threshold", "°C"),
          RateParameter.of("Topt", "optimum", "°C"),
          RateParameter.of("Tmax", "upper threshold", "°C"));

  @Override
  public List<RateParameter> parameters() {
    return PARAMETERS;
  }

  @Override
  public double rate(double celsius, double[] p, ArrheniusConstants constants) {
    if (celsius <= p[1] || celsius >= p[3] || p[2] <= p[1] || p[3] <= p[2]) {
      return 0;
    }
    double alpha = Math.log(2) / Math.log((p[3] - p[1]) / (p[2] - p[1]));
    double share = Math.pow((celsius - p[1]) / (p[2] - p[1]), alpha);
    return Math.max(0, p[0] * share * (2 - share));
  }

  @Override
  public SearchBox box(DataSpan span) {
    double fastest = span.fastestRate();
    return new SearchBox(4)
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
            span.highest() + 8);
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
