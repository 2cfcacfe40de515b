package agro.stats.linear;

import java.util.List;

/**
 * Effects of a term that the observations cannot tell, and why.
 *
 * @param term name of the term
 * @param expected degrees of freedom that the term would have with observations in every cell and
 *     no confounding
 * @param lost how many of them are lost
 * @param emptyCells cells of the term without observations, such as "A a1, B b2"; at most some of
 *     them
 * @param confoundedWith names of terms with which the lost effects coincide
 */
public record LostEffect(
    String term, int expected, int lost, List<String> emptyCells, List<String> confoundedWith) {

  /** Copies the lists. */
  public LostEffect {
    emptyCells = List.copyOf(emptyCells);
    confoundedWith = List.copyOf(confoundedWith);
  }

  /**
   * Whether nothing of the term can be told.
   *
   * @return true if all its effects are lost
   */
  public boolean isWhole() {
    return lost >= expected;
  }

  @Override
  public String toString() {
    String head =
        isWhole()
            ? term + " cannot be estimated"
            : lost + " of " + expected + " effects of " + term + " cannot be estimated";
    if (!emptyCells.isEmpty()) {
      return head + ": no observation in " + String.join("; ", emptyCells);
    }
    return confoundedWith.isEmpty()
        ? head + ": there are not enough observations"
        : head + ": confounded with " + String.join(", ", confoundedWith);
  }
}
