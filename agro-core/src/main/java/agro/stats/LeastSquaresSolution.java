package agro.stats;

import java.util.Arrays;

/** Where a search for the least sum of squares ended. */
public final class LeastSquaresSolution {

  private final double[] parameters;
  private final boolean[] atBound;
  private final double sumOfSquares;
  private final int iterations;
  private final boolean converged;

  LeastSquaresSolution(
      double[] parameters,
      boolean[] atBound,
      double sumOfSquares,
      int iterations,
      boolean converged) {
    this.parameters = parameters.clone();
    this.atBound = atBound.clone();
    this.sumOfSquares = sumOfSquares;
    this.iterations = iterations;
    this.converged = converged;
  }

  /**
   * The parameters at the end.
   *
   * @return a copy
   */
  public double[] parameters() {
    return parameters.clone();
  }

  /**
   * Whether a parameter ended on a bound that is not also its opposite bound.
   *
   * @param index place of the parameter
   * @return true on a bound
   */
  public boolean isAtBound(int index) {
    return atBound[index];
  }

  /**
   * Whether any parameter ended on a bound.
   *
   * @return true if one did
   */
  public boolean isOnBoundary() {
    for (boolean at : atBound) {
      if (at) {
        return true;
      }
    }
    return false;
  }

  /**
   * The least sum of squares found.
   *
   * @return a number of at least 0
   */
  public double sumOfSquares() {
    return sumOfSquares;
  }

  /**
   * Steps that were tried.
   *
   * @return a count
   */
  public int iterations() {
    return iterations;
  }

  /**
   * Whether the search ended because nothing better was near, and not because of its limit of
   * steps.
   *
   * @return true if it converged
   */
  public boolean isConverged() {
    return converged;
  }

  @Override
  public String toString() {
    return "sum of squares "
        + sumOfSquares
        + " at "
        + Arrays.toString(parameters)
        + (converged ? "" : ", not converged");
  }
}
