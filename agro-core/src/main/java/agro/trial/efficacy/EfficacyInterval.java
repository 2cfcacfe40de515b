package agro.trial.efficacy;

import agro.source.Reference;
import java.util.List;

/** How limits of an efficacy over blocks are made. */
public enum EfficacyInterval {
  /**
   * The variance of the logarithm of the ratio of means, from the scatter of blocks, with Student's
   * t. Limits never pass 100 %.
   */
  DELTA(
      "delta method over blocks",
      List.of(EfficacySources.COCHRAN_1977, EfficacySources.SATTERTHWAITE_1946)),
  /** Blocks drawn anew with replacement; the percentiles of what they give. */
  BOOTSTRAP_PERCENTILE("bootstrap over blocks, percentiles", List.of(EfficacySources.EFRON_1987)),
  /** The same, corrected for bias and for a scatter that grows with the value. */
  BOOTSTRAP_BCA(
      "bootstrap over blocks, bias-corrected and accelerated", List.of(EfficacySources.EFRON_1987)),
  /** Student's t on the efficacies of the blocks. */
  STUDENT_T("Student's t on the blocks' efficacies", List.of()),
  /**
   * Animals that live, die and settle one by one: scores for shares, exact for two counts, the log
   * of the ratio for four. Too narrow where animals stand in clumps.
   */
  INDIVIDUALS(
      "individuals one by one",
      List.of(
          EfficacySources.KOOPMAN_1984,
          EfficacySources.PRZYBOROWSKI_WILENSKI_1940,
          EfficacySources.HALDANE_1956));

  private final String words;
  private final List<Reference> sources;

  EfficacyInterval(String words, List<Reference> sources) {
    this.words = words;
    this.sources = sources;
  }

  /**
   * The method in words.
   *
   * @return a phrase
   */
  public String words() {
    return words;
  }

  /**
   * Where the method comes from.
   *
   * @return the references
   */
  public List<Reference> sources() {
    return sources;
  }
}
