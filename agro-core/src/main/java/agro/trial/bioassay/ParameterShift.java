package agro.trial.bioassay;

/** From the line through centred doses to the line as written. */
final class ParameterShift {

  private ParameterShift() {}

  /** Covariance after an intercept became a − centre × b, in place. */
  static void uncentre(double[][] covariance, int intercept, int slope, double centre) {
    int size = covariance.length;
    for (int k = 0; k < size; k++) {
      covariance[intercept][k] -= centre * covariance[slope][k];
    }
    for (int k = 0; k < size; k++) {
      covariance[k][intercept] -= centre * covariance[k][slope];
    }
  }
}
