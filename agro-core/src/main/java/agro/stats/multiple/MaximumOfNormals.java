package agro.stats.multiple;

import java.util.List;

/**
 * The largest of several standard normal numbers, or of their absolute values, whose correlations
 * are products of two loadings.
 *
 * <p>Number i is l z + s e with one z for all, e of its own, loading l and s² = 1 - l². Given z the
 * numbers are independent, so the chance is one integral over z of a product. The chance above is
 * integrated as one minus the product, taken without cancellation.
 *
 * @param twoSided whether absolute values are meant
 * @param groups numbers that share a loading, in order of their loadings
 */
record MaximumOfNormals(boolean twoSided, List<Loading> groups) implements ExtremeOfNormals {

  /** Below this chance the sum of the single tails has as many digits as a double. */
  private static final double TINY = 1e-200;

  private static final double STEP = 0.5;
  private static final double STEP_IN_WIDTHS = 0.75;
  private static final double REACH = 9;

  /**
   * Numbers with one loading.
   *
   * @param loading the loading l
   * @param rest the square root of 1 - l²
   * @param count how many numbers have it
   */
  record Loading(double loading, double rest, int count) {

    static Loading of(double loading, int count) {
      return new Loading(loading, Math.sqrt((1 - loading) * (1 + loading)), count);
    }
  }

  MaximumOfNormals {
    groups = List.copyOf(groups);
  }

  @Override
  public double logBelow(double w) {
    return LogTrapezoid.around(z -> logDensity(z) + logAllBelow(z, w), 0, step());
  }

  private double step() {
    double step = STEP;
    for (var group : groups) {
      step = Math.min(step, STEP_IN_WIDTHS * group.rest());
    }
    return step;
  }

  /** Given that number i is at w, z lies about l w with a deviation of at most one. */
  @Override
  public double logAbove(double w) {
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    for (var group : groups) {
      double peak = (twoSided ? Math.abs(group.loading()) : group.loading()) * w;
      low = Math.min(low, peak - REACH);
      high = Math.max(high, peak + REACH);
    }
    if (twoSided) {
      double from = Math.max(low, 0);
      return Math.log(2) + LogTrapezoid.between(z -> logAnyAbove(z, w), from, high, step());
    }
    return LogTrapezoid.between(z -> logAnyAbove(z, w), low, high, step());
  }

  private double logAnyAbove(double z, double w) {
    double all = logAllBelow(z, w);
    double any = all < -TINY ? Math.log(-Math.expm1(all)) : logSumOfTails(z, w);
    return logDensity(z) + any;
  }

  /** Far out one minus the product would be zero; there it is the sum of the single tails. */
  private double logSumOfTails(double z, double w) {
    double largest = Double.NEGATIVE_INFINITY;
    double sum = 0;
    for (var group : groups) {
      double shift = group.loading() * z / group.rest();
      double limit = w / group.rest();
      for (int side = twoSided ? -1 : 1; side <= 1; side += 2) {
        double log = NormalArea.logAbove(limit - side * shift);
        if (log > largest) {
          sum = sum * Math.exp(largest - log) + group.count();
          largest = log;
        } else {
          sum += group.count() * Math.exp(log - largest);
        }
      }
    }
    return largest + Math.log(sum);
  }

  /** Logarithm of the chance that all numbers lie below w (within w of zero) for a given z. */
  private double logAllBelow(double z, double w) {
    double log = 0;
    for (var group : groups) {
      double rest = group.rest();
      double shift = group.loading() * z / rest;
      double limit = w / rest;
      log +=
          group.count()
              * (twoSided
                  ? NormalArea.logBetween(shift, 2 * limit)
                  : NormalArea.logAbove(shift - limit));
    }
    return log;
  }

  private static double logDensity(double z) {
    return -0.5 * z * z - NormalArea.HALF_LOG_TWO_PI;
  }

  @Override
  public int powerAtZero() {
    int numbers = 0;
    for (var group : groups) {
      numbers += group.count();
    }
    return twoSided ? numbers : 0;
  }
}
