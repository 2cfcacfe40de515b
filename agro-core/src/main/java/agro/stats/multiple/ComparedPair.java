package agro.stats.multiple;

import agro.stats.ConfidenceLimits;
import java.util.Locale;
import java.util.Optional;

/**
 * The difference of two means and its test.
 *
 * @param first name of the mean from which the other one is taken
 * @param second name of the mean that is taken away; the control, where there is one
 * @param difference first minus second
 * @param standardError standard error of the difference
 * @param t difference divided by its standard error
 * @param rawP p-value of this pair alone
 * @param adjustedP p-value to be held against the level of all comparisons
 * @param limits limits that hold for all pairs together (for each pair with Fisher's least
 *     significant difference), a side that is unbounded being infinite; empty for methods without
 * @param isDifferent whether the adjusted p-value is at most the level
 */
public record ComparedPair(
    String first,
    String second,
    double difference,
    double standardError,
    double t,
    double rawP,
    double adjustedP,
    Optional<ConfidenceLimits> limits,
    boolean isDifferent) {

  /**
   * The same pair seen from the other side.
   *
   * @return second minus first
   */
  public ComparedPair reversed() {
    return new ComparedPair(
        second,
        first,
        0 - difference,
        standardError,
        0 - t,
        rawP,
        adjustedP,
        limits.map(each -> new ConfidenceLimits(0 - each.high(), 0 - each.low())),
        isDifferent);
  }

  /** Pair, difference, limits and p-value on one line. */
  @Override
  public String toString() {
    var line = new StringBuilder();
    line.append(
        String.format(
            Locale.ROOT, "%s - %s: %.5g (SE %.4g)", first, second, difference, standardError));
    limits.ifPresent(
        each ->
            line.append(", ").append(limit(each.low())).append(" to ").append(limit(each.high())));
    return line.append(String.format(Locale.ROOT, ", t = %.4g, P ", t)).append(chance()).toString();
  }

  private String chance() {
    return adjustedP < 0.0001 ? "< 0.0001" : String.format(Locale.ROOT, "= %.4f", adjustedP);
  }

  private static String limit(double value) {
    return Double.isInfinite(value) ? "unbounded" : String.format(Locale.ROOT, "%.5g", value);
  }
}
