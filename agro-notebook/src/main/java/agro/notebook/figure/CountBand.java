package agro.notebook.figure;

/**
 * The counts that a visit may bring when the fitted mean is true: quantiles of the negative
 * binomial distribution with mean {@code m} and size {@code k}, whose chances are {@code P(0) = (k
 * / (k + m))^k} and {@code P(n) = P(n - 1) (n - 1 + k) / n * m / (k + m)}.
 */
final class CountBand {

  private static final int MOST = 1_000_000;

  private CountBand() {}

  /**
   * The least count whose distribution function reaches a probability.
   *
   * @param probability above 0 and below 1
   * @param mean mean count, 0 or more
   * @param size size, above 0; infinite for Poisson
   * @return the count
   */
  static int quantile(double probability, double mean, double size) {
    if (!(mean > 0)) {
      return 0;
    }
    var poisson = size > 1e6 * Math.max(1, mean);
    var odds = poisson ? 0 : mean / (size + mean);
    // Chances are carried as logarithms, for P(0) of a large mean is too small for a double.
    var logChance = poisson ? -mean : -size * Math.log1p(mean / size);
    var sum = Math.exp(logChance);
    var count = 0;
    while (sum < probability && count < MOST) {
      count++;
      logChance += Math.log(poisson ? mean / count : (count - 1 + size) / count * odds);
      sum += Math.exp(logChance);
    }
    return count;
  }
}
