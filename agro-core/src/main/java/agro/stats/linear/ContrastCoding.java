package agro.stats.linear;

/**
 * How levels of a factor become columns of a design. The choice moves coefficients and nothing
 * else: fitted values, sums of squares and means stay.
 */
public enum ContrastCoding {
  /** Deviations from the unweighted mean of the levels; the last level is minus their sum. */
  SUM_TO_ZERO,
  /** Differences from the first level. */
  REFERENCE;

  /** Row for each level, one number fewer than levels. */
  double[][] codes(int levels) {
    double[][] codes = new double[levels][levels - 1];
    for (int j = 0; j < levels; j++) {
      if (this == REFERENCE) {
        if (j > 0) {
          codes[j][j - 1] = 1;
        }
      } else if (j < levels - 1) {
        codes[j][j] = 1;
      } else {
        java.util.Arrays.fill(codes[j], -1);
      }
    }
    return codes;
  }

  /** Label of a column among the levels. */
  int labelledBy(int column) {
    return this == REFERENCE ? column + 1 : column;
  }
}
