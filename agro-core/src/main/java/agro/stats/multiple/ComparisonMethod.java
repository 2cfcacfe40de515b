package agro.stats.multiple;

import agro.source.Reference;
import java.util.Optional;

/** Methods of comparing several means, each with what it keeps at the stated level. */
public enum ComparisonMethod {
  /**
   * Fisher's least significant difference: plain t tests. Keeps the level for each single pair
   * only; customary after a significant F test.
   */
  FISHER_LSD("Fisher's least significant difference", PValueAdjustment.NONE, true, null),
  /**
   * Tukey's honestly significant difference for all pairs; with unequal replication the
   * Tukey-Kramer form, which keeps slightly more than the level.
   */
  TUKEY("Tukey's honestly significant difference", null, true, MultipleSources.KRAMER_1956),
  /** Dunnett's comparisons with one control, exact for unequal replication. */
  DUNNETT("Dunnett's comparisons with a control", null, true, MultipleSources.DUNNETT_1955),
  /** Bonferroni: each test at the level divided by the number of tests. */
  BONFERRONI("Bonferroni's adjustment", PValueAdjustment.BONFERRONI, true, null),
  /** Sidak: slightly sharper than Bonferroni. */
  SIDAK("Sidak's adjustment", PValueAdjustment.SIDAK, true, null),
  /** Holm's step-down adjustment; has no simultaneous limits. */
  HOLM("Holm's adjustment", PValueAdjustment.HOLM, false, null),
  /** Hochberg's step-up adjustment; has no simultaneous limits. */
  HOCHBERG("Hochberg's adjustment", PValueAdjustment.HOCHBERG, false, null),
  /** Benjamini and Hochberg's false discovery rate; has no simultaneous limits. */
  BENJAMINI_HOCHBERG(
      "Benjamini and Hochberg's false discovery rate",
      PValueAdjustment.BENJAMINI_HOCHBERG,
      false,
      null);

  private final String words;
  private final PValueAdjustment adjustment;
  private final boolean limits;
  private final Reference source;

  ComparisonMethod(String words, PValueAdjustment adjustment, boolean limits, Reference source) {
    this.words = words;
    this.adjustment = adjustment;
    this.limits = limits;
    this.source = source == null ? adjustment.source() : source;
  }

  /**
   * The method in words, for a caption.
   *
   * @return a phrase
   */
  public String words() {
    return words;
  }

  /**
   * The adjustment of plain p-values that the method is.
   *
   * @return empty for methods with a distribution of their own
   */
  public Optional<PValueAdjustment> adjustment() {
    return Optional.ofNullable(adjustment);
  }

  /**
   * Whether the method has confidence limits that hold together, and with them a smallest
   * significant difference.
   *
   * @return false for methods that work by steps
   */
  public boolean hasLimits() {
    return limits;
  }

  /**
   * The work that the method is published in.
   *
   * @return the reference
   */
  public Reference source() {
    return source;
  }
}
