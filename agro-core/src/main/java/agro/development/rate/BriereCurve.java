package agro.development.rate;

import java.util.ArrayList;
import java.util.List;

/** r = a T (T - T0) (TL - T)^(1/m), with m = 2 in the first model and free in the second. */
final class BriereCurve implements RateEquation {

  private static final List<RateParameter> SHARED =
      List.of(
          RateParameter.of("a", "scale", "1/(d °C^(2+1/m))"),
          RateParameter.of("T0", "lower threshold", "°C"),
          RateParameter.of("TL", "upper, lethal threshold", "°C"));

  private final boolean freeExponent;
  private final List<RateParameter> parameters;

  BriereCurve(boolean freeExponent) {
    this.freeExponent = freeExponent;
    var all = new ArrayList<>(SHARED);
    if (freeExponent) {
      all.add(RateParameter.of("m", "sharpness of the fall above the optimum", ""));
    }
    parameters = List.copyOf(all);
  }

  @Override
  public List<RateParameter> parameters() {
    return parameters;
  }

  @Override
  public double rate(double celsius, double[] p, ArrheniusConstants constants) {
    if (celsius <= p[1] || celsius >= p[2]) {
      return 0;
    }
    double rate = p[0] * celsius * (celsius - p[1]) * root(p[2] - celsius, p);
    return rate > 0 ? rate : 0;
  }

  private double root(double below, double[] p) {
    return freeExponent ? Math.pow(below, 1 / p[3]) : Math.sqrt(below);
  }

  @Override
  public void gradient(double celsius, double[] p, ArrheniusConstants constants, double[] g) {
    double rate = rate(celsius, p, constants);
    double below = p[2] - celsius;
    if (rate == 0) {
      java.util.Arrays.fill(g, 0);
      return;
    }
    double m = freeExponent ? p[3] : 2;
    g[0] = rate / p[0];
    g[1] = -rate / (celsius - p[1]);
    g[2] = rate / (m * below);
    if (freeExponent) {
      g[3] = -rate * Math.log(below) / (m * m);
    }
  }

  @Override
  public SearchBox box(DataSpan span) {
    double fast = span.fastest();
    var box =
        new SearchBox(parameters.size())
            .add(1e-12, 10, 1e-6, 1e-3)
            .add(
                span.lowest() - 60,
                fast - 0.01,
                span.lowestAlive() - 15,
                Math.min(fast - 1, span.lowestAlive() - 0.1))
            .add(fast + 1e-6, span.highest() + 60, span.highestAlive() + 0.1, span.highest() + 12);
    return freeExponent ? box.add(0.2, 200, 0.8, 12) : box;
  }

  @Override
  public double optimum(double[] p, ArrheniusConstants constants) {
    double m = freeExponent ? p[3] : 2;
    double b = 2 * m * p[2] + (m + 1) * p[1];
    double root =
        4 * m * m * p[2] * p[2] + (m + 1) * (m + 1) * p[1] * p[1] - 4 * m * m * p[1] * p[2];
    return (b + Math.sqrt(root)) / (4 * m + 2);
  }

  /** The factor T makes the product negative below 0 °C, whatever T0 is. */
  @Override
  public double lower(double[] p) {
    return Math.max(0, p[1]);
  }

  @Override
  public double upper(double[] p) {
    return p[2];
  }
}
