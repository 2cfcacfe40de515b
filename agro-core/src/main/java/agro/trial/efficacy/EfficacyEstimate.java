package agro.trial.efficacy;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Efficacy of one treatment over all blocks, in one of two ways.
 *
 * @param summary how the blocks are put together
 * @param percent the efficacy; nothing where it has no value
 * @param undefined why it has no value; empty where it has one
 * @param standardError its standard error in per cent by the delta method or from the blocks, if
 *     there is one; for mortality in a single block that of animals which die one by one
 * @param limits limits by each method
 */
public record EfficacyEstimate(
    Summary summary,
    OptionalDouble percent,
    String undefined,
    OptionalDouble standardError,
    List<EfficacyLimits> limits) {

  /** How blocks are put together. */
  public enum Summary {
    /** Ratio of the sums: every block counts by its pests. */
    POOLED("pooled (ratio of sums)"),
    /** Mean of the efficacies of the blocks: every block counts alike. */
    MEAN_OF_BLOCKS("mean of blocks");

    private final String words;

    Summary(String words) {
      this.words = words;
    }

    /**
     * The way in words.
     *
     * @return a phrase
     */
    public String words() {
      return words;
    }
  }

  /** Copies the list. */
  public EfficacyEstimate {
    Objects.requireNonNull(summary, "summary");
    Objects.requireNonNull(percent, "percent");
    Objects.requireNonNull(undefined, "undefined");
    Objects.requireNonNull(standardError, "standardError");
    limits = List.copyOf(limits);
  }

  /**
   * Limits by one method.
   *
   * @param method the method
   * @return nothing where the method does not belong to this summary
   */
  public Optional<EfficacyLimits> limits(EfficacyInterval method) {
    return limits.stream().filter(one -> one.method() == method).findFirst();
  }

  /**
   * The limits to print: the first method that has any.
   *
   * @return nothing where none has
   */
  public Optional<EfficacyLimits> limitsToPrint() {
    return limits.stream().filter(one -> one.limits().isPresent()).findFirst();
  }
}
