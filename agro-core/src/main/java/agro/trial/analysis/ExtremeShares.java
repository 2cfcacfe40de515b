package agro.trial.analysis;

import java.util.Optional;
import java.util.OptionalInt;

/** What becomes of shares of 0 and 100 % before the arcsine of their root is taken. */
public enum ExtremeShares {
  /** They are refused until a rule is stated. */
  REFUSED(""),
  /** They stay 0 and 90 degrees. */
  KEPT(", 0 and 100 % kept"),
  /**
   * Nought out of n becomes a quarter out of n, and n out of n becomes n less a quarter (Bartlett
   * 1947); needs the number looked at.
   */
  QUARTER(", 0 and 100 % replaced by a quarter out of n and n less a quarter");

  private static final double PART = 0.25;

  private final String words;

  ExtremeShares(String words) {
    this.words = words;
  }

  String words() {
    return words;
  }

  Optional<String> refusal(OptionalInt outOf) {
    if (this == REFUSED) {
      return Optional.of(
          "shares of 0 and 100 % lie at the ends of the angles, where their variance is zero, and"
              + " no rule for them was stated");
    }
    return this == QUARTER && outOf.isEmpty()
        ? Optional.of("a quarter out of n needs n, and the variable is no count out of n")
        : Optional.empty();
  }

  double moved(double percent, OptionalInt outOf) {
    if (this != QUARTER || (percent > 0 && percent < 100)) {
      return percent;
    }
    double part = 100 * PART / outOf.getAsInt();
    return percent == 0 ? part : 100 - part;
  }
}
