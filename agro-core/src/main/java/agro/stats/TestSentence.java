package agro.stats;

import java.util.Arrays;
import java.util.Locale;
import java.util.stream.Collectors;

/**
 * The result of a test in the form in which papers print it: "F = 34.70; df = 5, 66; P &lt; 0.001".
 */
public final class TestSentence {

  private static final double SMALLEST_PRINTED = 0.001;
  private static final double LARGEST_PRINTED = 0.999;
  private static final double TWO_DECIMALS_FROM = 0.1;
  private static final double PLAIN_BELOW = 1e7;

  /** Degrees of freedom of iterated estimates miss whole numbers by rounding. */
  private static final double WHOLE = 1e-4;

  private TestSentence() {}

  /**
   * Statistic, degrees of freedom and chance in one line.
   *
   * @param name symbol of the statistic, for example F
   * @param statistic its value
   * @param chance the chance of such a value or a larger one when nothing differs
   * @param df degrees of freedom, none, one or two
   * @return the line, without a full stop
   */
  public static String of(String name, double statistic, double chance, double... df) {
    var freedom =
        df.length == 0
            ? ""
            : "; df = "
                + Arrays.stream(df)
                    .mapToObj(TestSentence::degrees)
                    .collect(Collectors.joining(", "));
    return name + " = " + statistic(statistic) + freedom + "; " + chance(chance);
  }

  /**
   * A chance as papers print it.
   *
   * @param chance 0 to 1
   * @return for example "P = 0.022" or "P &lt; 0.001"
   */
  public static String chance(double chance) {
    if (chance < SMALLEST_PRINTED) {
      return "P < 0.001";
    }
    return chance > LARGEST_PRINTED ? "P > 0.999" : String.format(Locale.ROOT, "P = %.3f", chance);
  }

  private static String statistic(double value) {
    if (Double.isInfinite(value)) {
      return value > 0 ? "infinity" : "-infinity";
    }
    double size = Math.abs(value);
    if (size >= PLAIN_BELOW) {
      return String.format(Locale.ROOT, "%.3e", value);
    }
    return String.format(Locale.ROOT, size < TWO_DECIMALS_FROM ? "%.4f" : "%.2f", value);
  }

  private static String degrees(double df) {
    return Math.abs(df - Math.rint(df)) < WHOLE
        ? String.format(Locale.ROOT, "%.0f", df)
        : String.format(Locale.ROOT, "%.1f", df);
  }
}
