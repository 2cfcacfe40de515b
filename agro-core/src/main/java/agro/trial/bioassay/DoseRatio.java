package agro.trial.bioassay;

import agro.units.Numbers;
import java.util.Objects;

/**
 * A ratio of doses of two series with its limits.
 *
 * @param kind which ratio
 * @param series the series
 * @param reference the series it is compared with
 * @param percent level of the lethal doses; 50 for potency, which is the same at all levels
 * @param ratio the ratio
 * @param limits its limits
 * @param confidence confidence of the limits
 */
public record DoseRatio(
    Kind kind,
    String series,
    String reference,
    double percent,
    double ratio,
    DoseLimits limits,
    double confidence) {

  /** The kinds of ratio. */
  public enum Kind {
    /** Dose of the reference over the dose of the series with equal effect, on parallel lines. */
    RELATIVE_POTENCY("relative potency"),
    /** Lethal dose of the series over that of the reference, each from its own line. */
    LETHAL_DOSE_RATIO("lethal-dose ratio");

    private final String words;

    Kind(String words) {
      this.words = words;
    }

    /**
     * The kind in words.
     *
     * @return a phrase
     */
    public String words() {
      return words;
    }
  }

  /** Refuses nulls. */
  public DoseRatio {
    Objects.requireNonNull(kind, "kind");
    Objects.requireNonNull(series, "series");
    Objects.requireNonNull(reference, "reference");
    Objects.requireNonNull(limits, "limits");
  }

  /**
   * Whether the limits leave out 1.
   *
   * @return true when the two series differ at this confidence
   */
  public boolean isDifferentFromOne() {
    return !limits.covers(1);
  }

  /**
   * The ratio in words.
   *
   * @return ratio with its limits
   */
  public String words() {
    return kind.words()
        + (kind == Kind.LETHAL_DOSE_RATIO ? " at LD" + Numbers.plain(percent) : "")
        + " of "
        + series
        + " to "
        + reference
        + " "
        + Numbers.significant(ratio, 4)
        + " ("
        + Numbers.plain(100 * confidence)
        + " % limits "
        + limits.words(value -> Numbers.significant(value, 4))
        + ")";
  }
}
