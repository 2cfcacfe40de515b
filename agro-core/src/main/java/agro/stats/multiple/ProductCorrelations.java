package agro.stats.multiple;

/**
 * Correlations of differences from a control, written as products of two loadings.
 *
 * <p>For independent means, and for balanced blocks, they are such products exactly. For other
 * designs the nearest products by least squares stand in, as Hsu 1992 proposed (Journal of
 * Computational and Graphical Statistics 1:151-168; from memory), and the largest deviation is
 * told.
 */
final class ProductCorrelations {

  private static final int ROUNDS = 2000;
  private static final double SETTLED = 1e-15;
  private static final double LARGEST = 1 - 1e-6;

  private final double[] loadings;
  private final double deviation;

  private ProductCorrelations(double[] loadings, double deviation) {
    this.loadings = loadings;
    this.deviation = deviation;
  }

  /** Loadings for the differences of all means but one from that one. */
  static ProductCorrelations of(ComparedMeans means, int control) {
    double[][] correlations = correlations(means, control);
    double[] loadings = start(correlations);
    for (int round = 0; round < ROUNDS && loadings.length > 1; round++) {
      double moved = 0;
      for (int each = 0; each < loadings.length; each++) {
        double next = best(correlations, loadings, each);
        moved = Math.max(moved, Math.abs(next - loadings[each]));
        loadings[each] = next;
      }
      if (moved < SETTLED) {
        break;
      }
    }
    return new ProductCorrelations(loadings, deviation(correlations, loadings));
  }

  private static double[][] correlations(ComparedMeans means, int control) {
    int size = means.size() - 1;
    double[][] correlations = new double[size][size];
    for (int i = 0; i < size; i++) {
      int first = i < control ? i : i + 1;
      double one = means.differenceVariance(first, control);
      for (int j = 0; j < size; j++) {
        int second = j < control ? j : j + 1;
        double other = means.differenceVariance(second, control);
        double covariance = 0.5 * (one + other - means.differenceVariance(first, second));
        correlations[i][j] = covariance / Math.sqrt(one * other);
      }
    }
    return correlations;
  }

  /** Exact loadings of a product structure with three or more; equal shares of one pair. */
  private static double[] start(double[][] correlations) {
    int size = correlations.length;
    double[] loadings = new double[size];
    for (int i = 0; i < size && size > 1; i++) {
      int j = (i + 1) % size;
      int k = (i + 2) % size;
      double square =
          size == 2
              ? Math.abs(correlations[0][1])
              : correlations[i][j] * correlations[i][k] / correlations[j][k];
      boolean usable = square >= 0 && square < 1;
      loadings[i] = usable ? Math.sqrt(square) : Math.sqrt(0.5);
    }
    if (size == 2 && correlations[0][1] < 0) {
      loadings[1] = -loadings[1];
    }
    return loadings;
  }

  private static double best(double[][] correlations, double[] loadings, int each) {
    double product = 0;
    double squares = 0;
    for (int j = 0; j < loadings.length; j++) {
      if (j != each) {
        product += correlations[each][j] * loadings[j];
        squares += loadings[j] * loadings[j];
      }
    }
    double value = squares > 0 ? product / squares : 0;
    return Math.max(-LARGEST, Math.min(LARGEST, value));
  }

  private static double deviation(double[][] correlations, double[] loadings) {
    double worst = 0;
    for (int i = 0; i < loadings.length; i++) {
      for (int j = 0; j < i; j++) {
        worst = Math.max(worst, Math.abs(correlations[i][j] - loadings[i] * loadings[j]));
      }
    }
    return worst;
  }

  double[] loadings() {
    return loadings.clone();
  }

  /** Largest difference between a correlation and the product that stands in for it. */
  double deviation() {
    return deviation;
  }
}
