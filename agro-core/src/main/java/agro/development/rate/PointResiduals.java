package agro.development.rate;

import agro.stats.ResidualModel;
import java.util.List;

/** Fitted minus observed rates, times the roots of their weights. Serves one thread. */
final class PointResiduals implements ResidualModel {

  private final RateEquation equation;
  private final ArrheniusConstants constants;
  private final int parameters;
  final double[] celsius;
  final double[] rates;
  final double[] root;
  private final double[] gradient;

  PointResiduals(RateEquation equation, ArrheniusConstants constants, List<RatePoint> points) {
    this.equation = equation;
    this.constants = constants;
    parameters = equation.parameters().size();
    int n = points.size();
    celsius = new double[n];
    rates = new double[n];
    root = new double[n];
    gradient = new double[parameters];
    for (int i = 0; i < n; i++) {
      celsius[i] = points.get(i).celsius();
      rates[i] = points.get(i).rate();
      root[i] = Math.sqrt(points.get(i).weight());
    }
  }

  private PointResiduals(PointResiduals other) {
    equation = other.equation;
    constants = other.constants;
    parameters = other.parameters;
    celsius = other.celsius;
    root = other.root;
    rates = other.rates.clone();
    gradient = new double[parameters];
  }

  /** The same points with rates of their own, for another thread. */
  PointResiduals copy() {
    return new PointResiduals(this);
  }

  @Override
  public int parameters() {
    return parameters;
  }

  @Override
  public int observations() {
    return celsius.length;
  }

  double fitted(int i, double[] q) {
    return equation.fitted(celsius[i], q, constants);
  }

  @Override
  public void residuals(double[] q, double[] residuals) {
    for (int i = 0; i < celsius.length; i++) {
      residuals[i] = root[i] * (equation.fitted(celsius[i], q, constants) - rates[i]);
    }
  }

  @Override
  public void jacobian(double[] q, double[] jacobian) {
    for (int i = 0; i < celsius.length; i++) {
      equation.gradient(celsius[i], q, constants, gradient);
      for (int j = 0; j < parameters; j++) {
        jacobian[i * parameters + j] = root[i] * gradient[j];
      }
    }
  }

  double sumOfSquares(double[] q) {
    double sum = 0;
    for (int i = 0; i < celsius.length; i++) {
      double residual = root[i] * (equation.fitted(celsius[i], q, constants) - rates[i]);
      sum += residual * residual;
    }
    return sum;
  }
}
