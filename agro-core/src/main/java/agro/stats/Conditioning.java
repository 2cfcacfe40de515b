package agro.stats;

/**
 * How well residuals tell parameters apart: the singular values of their derivatives, each column
 * first brought to unit length so that units do not matter, and the variances that follow.
 *
 * <p>One-sided Jacobi rotations after Hestenes 1958, Journal of SIAM 6:51-90; condition as in
 * Belsley, Kuh and Welsch 1980, Regression Diagnostics (both from memory).
 */
public final class Conditioning {

  private static final int MOST_SWEEPS = 60;
  private static final double ORTHOGONAL = 1e-15;

  private final int n;
  private final int k;
  private final double[][] columns;
  private final double[][] directions;
  private final double[] lengths;
  private final double[] singular;

  private Conditioning(double[] jacobian, int n, int k) {
    this.n = n;
    this.k = k;
    columns = new double[k][n];
    directions = new double[k][k];
    lengths = new double[k];
    singular = new double[k];
    for (int j = 0; j < k; j++) {
      for (int i = 0; i < n; i++) {
        columns[j][i] = jacobian[i * k + j];
      }
      lengths[j] = Math.sqrt(product(columns[j], columns[j]));
      for (int i = 0; i < n && lengths[j] > 0; i++) {
        columns[j][i] /= lengths[j];
      }
      directions[j][j] = 1;
    }
    int sweep = 0;
    while (sweep < MOST_SWEEPS && rotateAll()) {
      sweep++;
    }
    for (int j = 0; j < k; j++) {
      singular[j] = Math.sqrt(product(columns[j], columns[j]));
    }
  }

  /**
   * Analyses derivatives.
   *
   * @param jacobian derivative of residual i by parameter j at {@code i * parameters + j}
   * @param observations number of residuals
   * @param parameters number of parameters
   * @return the analysis
   */
  public static Conditioning of(double[] jacobian, int observations, int parameters) {
    return new Conditioning(jacobian, observations, parameters);
  }

  private boolean rotateAll() {
    boolean rotated = false;
    for (int a = 0; a < k; a++) {
      for (int b = a + 1; b < k; b++) {
        double aa = product(columns[a], columns[a]);
        double bb = product(columns[b], columns[b]);
        double ab = product(columns[a], columns[b]);
        if (Math.abs(ab) > ORTHOGONAL * Math.sqrt(aa * bb)) {
          double zeta = (bb - aa) / (2 * ab);
          double t = Math.copySign(1, zeta) / (Math.abs(zeta) + Math.sqrt(1 + zeta * zeta));
          double c = 1 / Math.sqrt(1 + t * t);
          rotate(columns[a], columns[b], c, c * t, n);
          rotate(directions[a], directions[b], c, c * t, k);
          rotated = true;
        }
      }
    }
    return rotated;
  }

  private static void rotate(double[] one, double[] other, double c, double s, int size) {
    for (int i = 0; i < size; i++) {
      double x = one[i];
      one[i] = c * x - s * other[i];
      other[i] = s * x + c * other[i];
    }
  }

  private static double product(double[] one, double[] other) {
    double sum = 0;
    for (int i = 0; i < one.length; i++) {
      sum += one[i] * other[i];
    }
    return sum;
  }

  /**
   * Greatest over least singular value.
   *
   * @return at least 1; infinite where some parameters cannot be told apart at all
   */
  public double number() {
    double most = 0;
    for (double value : singular) {
      most = Math.max(most, value);
    }
    return most / singular[weakest()];
  }

  private int weakest() {
    int least = 0;
    for (int j = 1; j < k; j++) {
      least = singular[j] < singular[least] ? j : least;
    }
    return least;
  }

  /**
   * How strongly a parameter takes part in the direction that the residuals tell least about.
   *
   * @param parameter place of the parameter
   * @return 0 to 1
   */
  public double shareInWeakest(int parameter) {
    return Math.abs(directions[weakest()][parameter]);
  }

  /**
   * An element of the inverse of JᵀJ, the covariance of two parameters in units of the variance of
   * a residual.
   *
   * @param one place of a parameter
   * @param other place of a parameter
   * @return the element; infinite or NaN where the inverse does not exist
   */
  public double covariance(int one, int other) {
    double sum = 0;
    for (int j = 0; j < k; j++) {
      sum += directions[j][one] * directions[j][other] / (singular[j] * singular[j]);
    }
    return sum / (lengths[one] * lengths[other]);
  }
}
