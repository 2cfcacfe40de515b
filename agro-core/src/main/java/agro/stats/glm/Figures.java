package agro.stats.glm;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Locale;

/** Numbers as they are printed. */
final class Figures {

  private Figures() {}

  /** Five significant digits, or words for what is not finite. */
  static String of(double value) {
    if (Double.isNaN(value)) {
      return "none";
    }
    if (Double.isInfinite(value)) {
      return "unbounded";
    }
    if (value == 0) {
      return "0";
    }
    var rounded = new BigDecimal(value).round(new MathContext(5, RoundingMode.HALF_EVEN));
    double size = Math.abs(value);
    return size >= 1e-4 && size < 1e7
        ? rounded.toPlainString()
        : String.format(Locale.ROOT, "%.4e", value);
  }
}
