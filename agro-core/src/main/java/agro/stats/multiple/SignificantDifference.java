package agro.stats.multiple;

import java.util.Locale;

/**
 * The smallest difference of two means that is significant: one number with equal replication, a
 * range otherwise.
 *
 * @param smallest that of the pair with the smallest standard error
 * @param largest that of the pair with the largest standard error
 */
public record SignificantDifference(double smallest, double largest) {

  private static final double SAME = 1e-9;

  /**
   * Whether one number holds for all pairs.
   *
   * @return false when replication is unequal: then each pair has its own
   */
  public boolean isOneNumber() {
    return largest - smallest <= SAME * largest;
  }

  @Override
  public String toString() {
    return isOneNumber()
        ? String.format(Locale.ROOT, "%.5g", largest)
        : String.format(
            Locale.ROOT, "%.5g to %.5g, by the replication of the pair", smallest, largest);
  }
}
