package agro.stats;

/**
 * A model whose residuals are to be made small in squares. Weights are part of the residuals: a
 * residual is the square root of the weight times observed minus fitted.
 */
public interface ResidualModel {

  /**
   * How many parameters there are.
   *
   * @return at least 1
   */
  int parameters();

  /**
   * How many residuals there are.
   *
   * @return at least 1
   */
  int observations();

  /**
   * Computes the residuals.
   *
   * @param parameters one value for each parameter; not changed
   * @param residuals takes the residuals
   */
  void residuals(double[] parameters, double[] residuals);

  /**
   * Computes the derivatives of the residuals.
   *
   * @param parameters one value for each parameter; not changed
   * @param jacobian takes them row by row: the derivative of residual i by parameter j stands at
   *     {@code i * parameters() + j}
   */
  void jacobian(double[] parameters, double[] jacobian);
}
