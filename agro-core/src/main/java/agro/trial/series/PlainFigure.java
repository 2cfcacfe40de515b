package agro.trial.series;

import java.util.Locale;

/** Numbers within sentences. */
final class PlainFigure {

  private PlainFigure() {}

  /** A number with four significant digits and without needless zeros. */
  static String of(double value) {
    if (value == 0) {
      return "0";
    }
    int digits = Math.max(0, 3 - (int) Math.floor(Math.log10(Math.abs(value))));
    if (digits > 9) {
      return String.format(Locale.ROOT, "%.3e", value);
    }
    var text = String.format(Locale.ROOT, "%." + digits + "f", value);
    return digits == 0 ? text : text.replaceFirst("\\.?0+$", "");
  }

  /** Decimals that show a spread of the size of a step with three digits. */
  static int decimals(double step) {
    if (!(step > 0) || Double.isInfinite(step)) {
      return 2;
    }
    return Math.min(8, Math.max(0, 2 - (int) Math.floor(Math.log10(step))));
  }
}
