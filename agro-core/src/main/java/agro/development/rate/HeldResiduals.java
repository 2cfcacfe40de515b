package agro.development.rate;

import agro.stats.ResidualModel;
import java.util.function.ToDoubleFunction;

/**
 * The residuals of rates and one more that holds a quantity of the search's coordinates at a value
 * by outweighing all others.
 */
final class HeldResiduals implements ResidualModel {

  private static final double STEP = 1e-6;

  private final ResidualModel rates;
  private final ToDoubleFunction<double[]> quantity;
  double weight;
  double value;

  HeldResiduals(ResidualModel rates, ToDoubleFunction<double[]> quantity, double weight) {
    this.rates = rates;
    this.quantity = quantity;
    this.weight = weight;
  }

  @Override
  public int parameters() {
    return rates.parameters();
  }

  @Override
  public int observations() {
    return rates.observations() + 1;
  }

  @Override
  public void residuals(double[] q, double[] residuals) {
    rates.residuals(q, residuals);
    residuals[rates.observations()] = weight * (quantity.applyAsDouble(q) - value);
  }

  @Override
  public void jacobian(double[] q, double[] jacobian) {
    rates.jacobian(q, jacobian);
    int at = rates.observations() * parameters();
    double[] moved = q.clone();
    for (int j = 0; j < parameters(); j++) {
      double h = STEP * Math.max(Math.abs(q[j]), 1e-6);
      moved[j] = q[j] + h;
      double up = quantity.applyAsDouble(moved);
      moved[j] = q[j] - h;
      double slope = (up - quantity.applyAsDouble(moved)) / (2 * h);
      moved[j] = q[j];
      jacobian[at + j] = Double.isNaN(slope) ? 0 : weight * slope;
    }
  }
}
