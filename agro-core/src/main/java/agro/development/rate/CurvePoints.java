package agro.development.rate;

/** Optimum and thresholds of a curve, by closed forms where there are any and else by search. */
final class CurvePoints {

  private static final double COLDEST = -40;
  private static final double HOTTEST = 90;
  private static final double BEYOND = 150;
  private static final double STRIDE = 0.5;
  private static final double NEAR = 0.02;
  private static final double BEND = 1e-3;
  private static final int HALVINGS = 46;
  private static final int PARABOLAS = 3;
  private static final double GOLDEN = 0.5 * (Math.sqrt(5) - 1);

  private final RateEquation equation;
  private final double[] p;
  private final ArrheniusConstants constants;
  private final double hint;

  CurvePoints(RateEquation equation, double[] p, ArrheniusConstants constants) {
    this(equation, p, constants, Double.NaN);
  }

  /** With a temperature near which the optimum lies, NaN when none is known. */
  CurvePoints(RateEquation equation, double[] p, ArrheniusConstants constants, double hint) {
    this.equation = equation;
    this.p = p;
    this.constants = constants;
    this.hint = hint;
  }

  private double rate(double celsius) {
    return equation.rate(celsius, p, constants);
  }

  /** The optimum in °C; infinite when the rate rises without end. */
  double optimum() {
    double closed = equation.optimum(p, constants);
    return Double.isNaN(closed) ? searchedOptimum() : closed;
  }

  private double searchedOptimum() {
    double best = rate(hint) > 0 ? uphill(hint) : warmest();
    if (!(rate(best) > 0)) {
      return Double.NaN;
    }
    return best >= HOTTEST ? Double.POSITIVE_INFINITY : stationary(golden(best));
  }

  private double warmest() {
    double best = COLDEST;
    for (double t = COLDEST; t <= HOTTEST; t += STRIDE) {
      best = rate(t) > rate(best) ? t : best;
    }
    return best;
  }

  private double uphill(double from) {
    double best = from;
    double direction = rate(from + STRIDE) > rate(from) ? STRIDE : -STRIDE;
    while (rate(best + direction) > rate(best) && best > COLDEST && best < HOTTEST) {
      best += direction;
    }
    return best;
  }

  private double golden(double middle) {
    double low = middle - STRIDE;
    double high = middle + STRIDE;
    while (high - low > NEAR) {
      double left = high - GOLDEN * (high - low);
      double right = low + GOLDEN * (high - low);
      if (rate(left) < rate(right)) {
        low = left;
      } else {
        high = right;
      }
    }
    return 0.5 * (low + high);
  }

  /** Parabolas through three near points, since a maximum is flat and a bare search blind there. */
  private double stationary(double near) {
    double at = near;
    for (int i = 0; i < PARABOLAS; i++) {
      double up = rate(at + BEND);
      double down = rate(at - BEND);
      double bend = up - 2 * rate(at) + down;
      double shift = bend < 0 ? -0.5 * BEND * (up - down) / bend : 0;
      at += Math.abs(shift) < 2 * NEAR ? shift : 0;
    }
    return at;
  }

  /** The lower threshold in °C; minus infinity when there is none. */
  private double lower(double optimum) {
    double closed = equation.lower(p);
    return Double.isNaN(closed) ? root(optimum, -STRIDE) : closed;
  }

  /** The upper threshold in °C; infinity when there is none. */
  private double upper(double optimum) {
    double closed = equation.upper(p);
    return Double.isNaN(closed) ? root(optimum, STRIDE) : closed;
  }

  private double root(double optimum, double stride) {
    if (!Double.isFinite(optimum)) {
      return Double.NaN;
    }
    double inside = optimum;
    double outside = optimum + stride;
    while (rate(outside) > 0) {
      if (outside < COLDEST || outside > BEYOND) {
        return Math.copySign(Double.POSITIVE_INFINITY, stride);
      }
      inside = outside;
      outside += stride;
    }
    for (int i = 0; i < HALVINGS; i++) {
      double middle = 0.5 * (inside + outside);
      if (rate(middle) > 0) {
        inside = middle;
      } else {
        outside = middle;
      }
    }
    return 0.5 * (inside + outside);
  }

  /** One derived point, NaN when the model does not have it. */
  double value(DerivedPoint point, RateModel model) {
    return switch (point) {
      case LOWER_THRESHOLD -> finite(lower(optimum()));
      case OPTIMUM -> finite(optimum());
      case GREATEST_RATE -> {
        double optimum = optimum();
        yield Double.isFinite(optimum) ? rate(optimum) : Double.NaN;
      }
      case UPPER_THRESHOLD -> finite(upper(optimum()));
      case THERMAL_CONSTANT -> model == RateModel.LINEAR && p[1] > 0 ? 1 / p[1] : Double.NaN;
      case INTRINSIC_OPTIMUM -> intrinsic(model);
    };
  }

  private double intrinsic(RateModel model) {
    boolean bothEnds = model == RateModel.INTRINSIC_OPTIMUM || model == RateModel.SCHOOLFIELD_6;
    return bothEnds ? SchoolfieldCurve.intrinsicOptimumKelvin(p, constants) - 273.15 : Double.NaN;
  }

  /** All derived points in the order of the enum, NaN for those that the model does not have. */
  void into(RateModel model, double[] values, int at) {
    double optimum = optimum();
    values[at] = finite(lower(optimum));
    values[at + 1] = finite(optimum);
    values[at + 2] = Double.isFinite(optimum) ? rate(optimum) : Double.NaN;
    values[at + 3] = finite(upper(optimum));
    values[at + 4] = value(DerivedPoint.THERMAL_CONSTANT, model);
    values[at + 5] = intrinsic(model);
  }

  private static double finite(double value) {
    return Double.isInfinite(value) ? Double.NaN : value;
  }
}
