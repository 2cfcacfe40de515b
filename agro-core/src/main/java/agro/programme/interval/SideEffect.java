package agro.programme.interval;

import agro.dose.LabelEntry;
import java.util.Objects;

/**
 * A line of the user's own table of side effects on natural enemies.
 *
 * @param product the product
 * @param organism the natural enemy
 * @param effectClass class of the side effect in the words of the source; empty if not recorded
 * @param daysBeforeRelease days from an application until the enemy may be released
 * @param daysAfterRelease days from a release until the product may be applied
 * @param source where the line comes from
 */
public record SideEffect(
    String product,
    String organism,
    String effectClass,
    LabelEntry<Integer> daysBeforeRelease,
    LabelEntry<Integer> daysAfterRelease,
    String source) {

  /** Refuses nulls. */
  public SideEffect {
    product = product.strip();
    organism = organism.strip();
    effectClass = effectClass.strip();
    Objects.requireNonNull(daysBeforeRelease, "daysBeforeRelease");
    Objects.requireNonNull(daysAfterRelease, "daysAfterRelease");
    source = source.strip();
  }
}
