package agro.weather.climate;

import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;

/** Least squares of a harmonic curve through values at phases of the year. */
final class HarmonicFit {

  private static final int MOST_STEPS = 100;
  private static final double SMALL_STEP = 1e-12;
  private static final double TINY_SHARE = 1e-10;

  private final int harmonics;
  private final double[] phases;
  private final RealMatrix design;
  private final CholeskyDecomposition normal;

  /** Sets up the fit; the phases must be spread enough for as many harmonics. */
  HarmonicFit(double[] phases, int harmonics) {
    this.harmonics = harmonics;
    this.phases = phases;
    design = new Array2DRowRealMatrix(phases.length, 2 * harmonics + 1);
    for (int i = 0; i < phases.length; i++) {
      design.setRow(i, YearPhase.basis(phases[i], harmonics));
    }
    normal = new CholeskyDecomposition(design.transposeMultiply(design));
  }

  /** Coefficients in the order of {@link YearPhase#basis}. */
  double[] coefficients(double[] values) {
    return normal.getSolver().solve(design.transpose().operate(vector(values))).toArray();
  }

  /** Values less the curve. */
  double[] residuals(double[] values, double[] coefficients) {
    return vector(values).subtract(design.operate(vector(coefficients))).toArray();
  }

  /** Inverse of the normal matrix: the covariance of the coefficients for a variance of 1. */
  RealMatrix unitCovariance() {
    return normal.getSolver().getInverse();
  }

  /**
   * Coefficients of the logarithm of a variance, from squared residuals: the gamma likelihood with
   * a logarithmic link, whose iterated weights are all 1. Squares of almost nothing are raised to a
   * tiny share of their mean.
   */
  double[] logVariance(double[] squares) {
    double mean = 0;
    for (double square : squares) {
      mean += square / squares.length;
    }
    var start = new double[2 * harmonics + 1];
    if (!(mean > 0)) {
      start[0] = Double.NEGATIVE_INFINITY;
      return start;
    }
    start[0] = Math.log(mean);
    var coefficients = start;
    for (int step = 0; step < MOST_STEPS; step++) {
      var eta = design.operate(vector(coefficients)).toArray();
      var working = new double[squares.length];
      for (int i = 0; i < working.length; i++) {
        working[i] = eta[i] + Math.max(squares[i], TINY_SHARE * mean) / Math.exp(eta[i]) - 1;
      }
      var next = coefficients(working);
      double change = vector(next).subtract(vector(coefficients)).getLInfNorm();
      coefficients = next;
      if (change < SMALL_STEP) {
        break;
      }
    }
    return coefficients;
  }

  int days() {
    return phases.length;
  }

  private static RealVector vector(double[] values) {
    return new ArrayRealVector(values, false);
  }
}
