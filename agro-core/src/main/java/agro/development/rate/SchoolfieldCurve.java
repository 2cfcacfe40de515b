package agro.development.rate;

import java.util.List;

/**
 * Rate by one limiting enzyme that is inactive at high temperatures and, with six parameters, at
 * low ones. T is in kelvin inside: r = ρ (T/Tref) exp[(HA/R)(1/Tref − 1/T)] / {1 + exp[(HL/R)(1/TL
 * − 1/T)] + exp[(HH/R)(1/TH − 1/T)]}. In the form of the intrinsic optimum Tref is the temperature
 * Tφ at which most of the enzyme is active, which follows from the other parameters.
 */
final class SchoolfieldCurve implements RateEquation {

  private static final double ZERO_CELSIUS = 273.15;

  /** Which of the three models. */
  enum Form {
    FOUR,
    SIX,
    INTRINSIC_OPTIMUM
  }

  private static final RateParameter HA =
      RateParameter.of("HA", "enthalpy of activation", "cal/mol");
  private static final RateParameter HL =
      RateParameter.of("HL", "enthalpy of inactivation at low temperatures", "cal/mol");
  private static final RateParameter HH =
      RateParameter.of("HH", "enthalpy of inactivation at high temperatures", "cal/mol");
  private static final RateParameter TL =
      RateParameter.of("TL", "low temperature of half inactivation", "K");
  private static final RateParameter TH =
      RateParameter.of("TH", "high temperature of half inactivation", "K");

  private final Form form;
  private final List<RateParameter> parameters;

  SchoolfieldCurve(Form form) {
    this.form = form;
    var atReference =
        RateParameter.of("rho25", "rate at the reference temperature without inactivation", "1/d");
    var atOptimum = RateParameter.of("rhoPhi", "rate at Tφ if all were active", "1/d");
    parameters =
        switch (form) {
          case FOUR -> List.of(atReference, HA, HH, TH);
          case SIX -> List.of(atReference, HA, HL, HH, TL, TH);
          case INTRINSIC_OPTIMUM -> List.of(atOptimum, HA, HL, HH, TL, TH);
        };
  }

  @Override
  public List<RateParameter> parameters() {
    return parameters;
  }

  @Override
  public double rate(double celsius, double[] p, ArrheniusConstants constants) {
    double reference =
        form == Form.INTRINSIC_OPTIMUM
            ? intrinsicOptimumKelvin(p, constants)
            : constants.referenceKelvin();
    return rateFrom(celsius, p, reference, constants.gasConstant());
  }

  @Override
  public double fitted(double celsius, double[] q, ArrheniusConstants constants) {
    return rateFrom(celsius, q, constants.referenceKelvin(), constants.gasConstant());
  }

  private double rateFrom(double celsius, double[] p, double reference, double r) {
    double kelvin = celsius + ZERO_CELSIUS;
    if (kelvin <= 0) {
      return 0;
    }
    double activated =
        p[0] * kelvin / reference * Math.exp(p[1] / r * (1 / reference - 1 / kelvin));
    return activated / (1 + low(kelvin, p, r) + high(kelvin, p, r));
  }

  private double low(double kelvin, double[] p, double r) {
    return form == Form.FOUR ? 0 : Math.exp(p[2] / r * (1 / p[4] - 1 / kelvin));
  }

  private double high(double kelvin, double[] p, double r) {
    return form == Form.FOUR
        ? Math.exp(p[2] / r * (1 / p[3] - 1 / kelvin))
        : Math.exp(p[3] / r * (1 / p[5] - 1 / kelvin));
  }

  /** Temperature at which the active share is greatest, K. */
  static double intrinsicOptimumKelvin(double[] p, ArrheniusConstants constants) {
    return (p[2] - p[3])
        / (constants.gasConstant() * Math.log(-p[2] / p[3]) + p[2] / p[4] - p[3] / p[5]);
  }

  @Override
  public void gradient(double celsius, double[] q, ArrheniusConstants constants, double[] g) {
    double kelvin = celsius + ZERO_CELSIUS;
    double r = constants.gasConstant();
    double reference = constants.referenceKelvin();
    double low = low(kelvin, q, r);
    double high = high(kelvin, q, r);
    double rate = rateFrom(celsius, q, reference, r);
    double all = 1 + low + high;
    g[0] = rate / q[0];
    g[1] = rate / r * (1 / reference - 1 / kelvin);
    if (form == Form.FOUR) {
      g[2] = -rate * high / all * (1 / q[3] - 1 / kelvin) / r;
      g[3] = rate * high / all * q[2] / (r * q[3] * q[3]);
    } else {
      g[2] = -rate * low / all * (1 / q[4] - 1 / kelvin) / r;
      g[3] = -rate * high / all * (1 / q[5] - 1 / kelvin) / r;
      g[4] = rate * low / all * q[2] / (r * q[4] * q[4]);
      g[5] = rate * high / all * q[3] / (r * q[5] * q[5]);
    }
  }

  @Override
  public double[] toParameters(double[] q, ArrheniusConstants constants) {
    return reference(q, constants, 1);
  }

  @Override
  public double[] toSearch(double[] p, ArrheniusConstants constants) {
    return reference(p, constants, -1);
  }

  /** The rate without inactivation at Tφ from that at Tref, or the other way round. */
  private double[] reference(double[] values, ArrheniusConstants constants, int direction) {
    double[] moved = values.clone();
    if (form == Form.INTRINSIC_OPTIMUM) {
      double phi = intrinsicOptimumKelvin(values, constants);
      double from = constants.referenceKelvin();
      double factor =
          phi / from * Math.exp(values[1] / constants.gasConstant() * (1 / from - 1 / phi));
      moved[0] *= direction > 0 ? factor : 1 / factor;
    }
    return moved;
  }

  @Override
  public boolean isDirect(int parameter) {
    return form != Form.INTRINSIC_OPTIMUM || parameter > 0;
  }

  @Override
  public SearchBox box(DataSpan span) {
    double fastest = span.fastestRate();
    double lowest = span.lowest() + ZERO_CELSIUS;
    double highest = span.highest() + ZERO_CELSIUS;
    var box =
        new SearchBox(parameters.size())
            .add(1e-9, 1e6 * fastest, 0.3 * fastest, 3 * fastest)
            .add(100, 200_000, 5_000, 35_000);
    if (form == Form.FOUR) {
      return box.add(1_000, 3_000_000, 30_000, 200_000)
          .add(lowest - 30, highest + 40, span.fastest() + ZERO_CELSIUS - 5, highest + 6);
    }
    return box.add(-3_000_000, -1_000, -200_000, -20_000)
        .add(1_000, 3_000_000, 30_000, 200_000)
        .add(lowest - 60, highest, lowest - 8, lowest + 12)
        .add(lowest, highest + 40, span.fastest() + ZERO_CELSIUS - 5, highest + 6);
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
