package agro.stats;

import java.util.Arrays;

/** Where a search for the least value of a {@link ScalarModel} ended. */
public final class FoundMinimum {

  private final double[] parameters;
  private final double[] standardErrors;
  private final boolean[] atBound;
  private final double value;
  private final int iterations;
  private final boolean converged;

  FoundMinimum(
      double[] parameters,
      double[] standardErrors,
      boolean[] atBound,
      double value,
      int iterations,
      boolean converged) {
    this.parameters = parameters.clone();
    this.standardErrors = standardErrors.clone();
    this.atBound = atBound.clone();
    this.value = value;
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
   * Standard errors of the parameters when the model is minus a log likelihood: from the inverse of
   * its curvature.
   *
   * @return a copy; NaN for fixed parameters, for those on a bound, and where the curvature has no
   *     inverse
   */
  public double[] standardErrors() {
    return standardErrors.clone();
  }

  /**
   * Whether a parameter ended on a bound.
   *
   * @param index place of the parameter
   * @return true on a bound
   */
  public boolean isAtBound(int index) {
    return atBound[index];
  }

  /**
   * The least value found.
   *
   * @return the value
   */
  public double value() {
    return value;
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
   * Whether the search ended because nothing better was near.
   *
   * @return true if it converged
   */
  public boolean isConverged() {
    return converged;
  }

  @Override
  public String toString() {
    return "least value "
        + value
        + " at "
        + Arrays.toString(parameters)
        + (converged ? "" : ", not converged");
  }
}
