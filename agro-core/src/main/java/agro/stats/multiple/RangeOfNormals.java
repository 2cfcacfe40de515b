package agro.stats.multiple;

/**
 * The range of independent standard normal numbers.
 *
 * <p>With density f and distribution F of one of r numbers the chance of a range of at most w is r
 * times the integral of f(z) (F(z) - F(z - w))^(r - 1) over z; the chance of a larger range is r
 * times the integral of f(z) (F(z)^(r - 1) - (F(z) - F(z - w))^(r - 1)), since r f F^(r - 1)
 * integrates to one. The second difference is taken inside the integral, where it loses nothing.
 *
 * @param means number of normal numbers, at least 2
 */
record RangeOfNormals(int means) implements ExtremeOfNormals {

  private static final double STEP = 0.5;

  @Override
  public double logBelow(double w) {
    return Math.log(means)
        - NormalArea.HALF_LOG_TWO_PI
        + LogTrapezoid.around(
            x -> {
              double z = x + 0.5 * w;
              return -0.5 * z * z + (means - 1) * NormalArea.logBetween(x, w);
            },
            0,
            STEP);
  }

  @Override
  public double logAbove(double w) {
    return Math.log(means)
        - NormalArea.HALF_LOG_TWO_PI
        + LogTrapezoid.around(
            z -> {
              double logBelow = NormalArea.logAbove(-z);
              double share = Math.exp(NormalArea.logAbove(w - z) - logBelow);
              double one = Math.log(-Math.expm1((means - 1) * Math.log1p(-share)));
              return -0.5 * z * z + (means - 1) * logBelow + one;
            },
            0.5 * w,
            STEP);
  }

  @Override
  public int powerAtZero() {
    return means - 1;
  }
}
