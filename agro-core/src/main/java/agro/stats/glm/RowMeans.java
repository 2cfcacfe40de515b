package agro.stats.glm;

import agro.stats.NormalTail;

/** Mean, its complement and its slope for the linear predictor of each row, computed once. */
final class RowMeans {

  private static final double ROOT_TWO_PI = Math.sqrt(2 * Math.PI);

  final double[] mean;
  final double[] complement;
  final double[] slope;

  RowMeans(int rows) {
    mean = new double[rows];
    complement = new double[rows];
    slope = new double[rows];
  }

  /** Fills the rows; the functions of {@link LinkFunction} with what they share computed once. */
  void fill(LinkFunction link, double[] eta) {
    switch (link) {
      case LOG -> logs(eta);
      case LOGIT -> logits(eta);
      case PROBIT -> probits(eta);
      case COMPLEMENTARY_LOG_LOG -> doubleLogs(eta);
      case IDENTITY -> {
        for (int i = 0; i < eta.length; i++) {
          mean[i] = eta[i];
          complement[i] = 1 - eta[i];
          slope[i] = 1;
        }
      }
    }
  }

  private void logs(double[] eta) {
    for (int i = 0; i < eta.length; i++) {
      mean[i] = Math.exp(eta[i]);
      complement[i] = mean[i] < 0.5 || mean[i] > 2 ? 1 - mean[i] : -Math.expm1(eta[i]);
      slope[i] = mean[i];
    }
  }

  private void logits(double[] eta) {
    for (int i = 0; i < eta.length; i++) {
      double small = Math.exp(-Math.abs(eta[i]));
      double less = small / (1 + small);
      double more = 1 / (1 + small);
      mean[i] = eta[i] < 0 ? less : more;
      complement[i] = eta[i] < 0 ? more : less;
      slope[i] = less * more;
    }
  }

  private void probits(double[] eta) {
    for (int i = 0; i < eta.length; i++) {
      double less = NormalTail.above(Math.abs(eta[i]));
      mean[i] = eta[i] < 0 ? less : 1 - less;
      complement[i] = eta[i] < 0 ? 1 - less : less;
      slope[i] = Math.exp(-0.5 * eta[i] * eta[i]) / ROOT_TWO_PI;
    }
  }

  private void doubleLogs(double[] eta) {
    for (int i = 0; i < eta.length; i++) {
      double hazard = Math.exp(eta[i]);
      complement[i] = Math.exp(-hazard);
      mean[i] = complement[i] < 0.5 ? 1 - complement[i] : -Math.expm1(-hazard);
      slope[i] = hazard > 700 ? 0 : hazard * complement[i];
    }
  }
}
