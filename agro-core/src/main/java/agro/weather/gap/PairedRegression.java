package agro.weather.gap;

/** A straight line of a place's extreme on a neighbour's, in °C. */
record PairedRegression(
    int pairs, double meanX, double meanY, double slope, double squaresX, double deviation) {

  /** Least squares through pairs; a neighbour that never changes gives a slope of 0. */
  static PairedRegression of(double[] x, double[] y, int[] chosen, int count) {
    double meanX = 0;
    double meanY = 0;
    for (int i = 0; i < count; i++) {
      meanX += x[chosen[i]] / count;
      meanY += y[chosen[i]] / count;
    }
    double squaresX = 0;
    double products = 0;
    double squaresY = 0;
    for (int i = 0; i < count; i++) {
      double dx = x[chosen[i]] - meanX;
      double dy = y[chosen[i]] - meanY;
      squaresX += dx * dx;
      products += dx * dy;
      squaresY += dy * dy;
    }
    double slope = squaresX > 0 ? products / squaresX : 0;
    double left = Math.max(0, squaresY - slope * products);
    return new PairedRegression(
        count, meanX, meanY, slope, squaresX, Math.sqrt(left / Math.max(1, count - 2)));
  }

  double value(double x) {
    return meanY + slope * (x - meanX);
  }

  /** Variance of the line at a value, in units of the residual variance. */
  double leverage(double x) {
    double apart = x - meanX;
    return 1.0 / pairs + (squaresX > 0 ? apart * apart / squaresX : 0);
  }
}
