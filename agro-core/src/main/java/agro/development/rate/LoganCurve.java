package agro.development.rate;

import java.util.Arrays;
import java.util.List;

/**
 * r = ψ [exp(ρT) − exp(ρTM − (TM − T)/D)] + λ, with all three of ψ, ρ and λ in Lactin's two models
 * and Logan's model of six parameters as special cases.
 *
 * <p>Where ρD nears 1 the two terms nearly cancel, and ψ and the difference of 1/D and ρ are known
 * by their product alone. So the formula is computed as ψ exp(ρT) [1 − exp(−δ(TM − T))] with δ =
 * 1/D − ρ, and the search runs in δ, with ψδ as scale in Logan's model.
 */
final class LoganCurve implements RateEquation {

  /** Which of the three models. */
  enum Form {
    LOGAN_6,
    LACTIN_1,
    LACTIN_2
  }

  private static final RateParameter PSI = RateParameter.of("psi", "scale of the rate", "1/d");
  private static final RateParameter RHO =
      RateParameter.of("rho", "rise of the rate towards the optimum", "1/°C");
  private static final RateParameter TM = RateParameter.of("TM", "upper, lethal temperature", "°C");
  private static final RateParameter D =
      RateParameter.of("D", "width of the fall between optimum and TM", "°C");
  private static final RateParameter LAMBDA =
      RateParameter.of("lambda", "shift of the curve, below zero for a lower threshold", "1/d");

  private static final double LEAST_DELTA = 1e-6;
  private static final double SMALL = 1e-4;

  private final Form form;
  private final boolean scaled;
  private final boolean asWritten;
  private final List<RateParameter> parameters;

  LoganCurve(Form form) {
    this(form, false);
  }

  private LoganCurve(Form form, boolean asWritten) {
    this.form = form;
    this.asWritten = asWritten;
    scaled = form == Form.LOGAN_6;
    parameters =
        switch (form) {
          case LOGAN_6 -> List.of(PSI, RHO, TM, D);
          case LACTIN_1 -> List.of(RHO, TM, D);
          case LACTIN_2 -> List.of(RHO, TM, D, LAMBDA);
        };
  }

  @Override
  public List<RateParameter> parameters() {
    return parameters;
  }

  private int first() {
    return scaled ? 1 : 0;
  }

  private double shift(double[] values) {
    return form == Form.LACTIN_2 ? values[3] : 0;
  }

  @Override
  public double rate(double celsius, double[] p, ArrheniusConstants constants) {
    int at = first();
    double delta = 1 / p[at + 2] - p[at];
    double psi = scaled ? p[0] : 1;
    double rate =
        -psi * Math.exp(p[at] * celsius) * Math.expm1(-delta * (p[at + 1] - celsius)) + shift(p);
    return rate > 0 ? rate : 0;
  }

  @Override
  public double fitted(double celsius, double[] q, ArrheniusConstants constants) {
    double rate = height(q) * Math.exp(q[first()] * celsius) * falling(celsius, q) + shift(q);
    return rate > 0 || asWritten ? rate : 0;
  }

  @Override
  public RateEquation asWritten() {
    return new LoganCurve(form, true);
  }

  private double height(double[] q) {
    return scaled ? q[0] : q[2];
  }

  /** [1 − exp(−δx)]/δ, x degrees below TM, which tends to x. */
  private double falling(double celsius, double[] q) {
    double delta = q[first() + 2];
    double x = q[first() + 1] - celsius;
    return -Math.expm1(-delta * x) / delta;
  }

  @Override
  public void gradient(double celsius, double[] q, ArrheniusConstants constants, double[] g) {
    int at = first();
    double delta = q[at + 2];
    double x = q[at + 1] - celsius;
    double rise = height(q) * Math.exp(q[at] * celsius);
    double fall = falling(celsius, q);
    double shifted = rise * fall + shift(q);
    if (!(shifted > 0 || asWritten)) {
      Arrays.fill(g, 0);
      return;
    }
    double remaining = Math.exp(-delta * x);
    double slope =
        Math.abs(delta * x) < SMALL
            ? x * x * (-0.5 + delta * x / 3 - delta * delta * x * x / 8)
            : (x * remaining - fall) / delta;
    g[at] = celsius * rise * fall;
    g[at + 1] = rise * remaining;
    if (scaled) {
      g[0] = rise * fall / q[0];
      g[3] = rise * slope;
    } else {
      g[2] = rise * slope + rise * fall / delta;
    }
    if (form == Form.LACTIN_2) {
      g[3] = 1;
    }
  }

  @Override
  public double[] toSearch(double[] p, ArrheniusConstants constants) {
    int at = first();
    double[] q = p.clone();
    q[at + 2] = 1 / p[at + 2] - p[at];
    if (scaled) {
      q[0] = p[0] * q[at + 2];
    }
    return q;
  }

  @Override
  public double[] toParameters(double[] q, ArrheniusConstants constants) {
    int at = first();
    double[] p = q.clone();
    p[at + 2] = 1 / (q[at] + q[at + 2]);
    if (scaled) {
      p[0] = q[0] / (1 / p[at + 2] - p[at]);
    }
    return p;
  }

  @Override
  public boolean isDirect(int parameter) {
    return parameter != first() + 2 && !(scaled && parameter == 0);
  }

  @Override
  public SearchBox box(DataSpan span) {
    var box = new SearchBox(parameters.size());
    if (scaled) {
      box.add(1e-14, 100, 1e-5, 1e-4);
    }
    box.add(1e-4, 3, 0.02, 0.3)
        .add(
            span.fastest() + 1e-6,
            span.highest() + 60,
            span.highestAlive() + 0.1,
            span.highest() + 8);
    if (scaled) {
      return box.add(LEAST_DELTA, 50, LEAST_DELTA, 1.5);
    }
    box.add(1e-14, 50, 1e-5, 1e-3);
    return form == Form.LACTIN_2
        ? box.add(-10, 10, -0.5 * span.fastestRate(), 0.1 * span.fastestRate())
        : box;
  }

  @Override
  public void rescale(double[] q, double factor) {
    q[scaled ? 0 : 2] *= factor;
  }

  @Override
  public double optimum(double[] p, ArrheniusConstants constants) {
    int at = first();
    double product = p[at] * p[at + 2];
    // Both logarithm and difference vanish at ρD = 1, where their ratio is 1.
    double ratio = Math.abs(product - 1) < 1e-8 ? 1 : Math.log(product) / (product - 1);
    return p[at + 1] - p[at + 2] * ratio;
  }

  @Override
  public double lower(double[] p) {
    return form == Form.LACTIN_2 ? Double.NaN : Double.NEGATIVE_INFINITY;
  }

  @Override
  public double upper(double[] p) {
    return form == Form.LACTIN_2 ? Double.NaN : p[first() + 1];
  }
}
