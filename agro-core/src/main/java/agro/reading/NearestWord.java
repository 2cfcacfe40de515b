package agro.reading;

import java.util.Collection;
import java.util.Locale;
import java.util.Optional;

/** Finds the word that a mistyped one most likely stands for. */
public final class NearestWord {

  private NearestWord() {}

  /**
   * The candidate with the fewest changed, added, left-out or swapped letters, if they are few: at
   * most one in three letters of the wanted word, or one word contains the other.
   *
   * @param wanted the word looked for
   * @param candidates words that exist
   * @return the nearest one
   */
  public static Optional<String> to(String wanted, Collection<String> candidates) {
    var word = wanted.toLowerCase(Locale.ROOT);
    String nearest = null;
    int least = Math.max(1, word.length() / 3) + 1;
    for (var candidate : candidates) {
      var other = candidate.toLowerCase(Locale.ROOT);
      int changes = changes(word, other);
      if (changes < least) {
        nearest = candidate;
        least = changes;
      }
    }
    return nearest != null ? Optional.of(nearest) : containing(word, candidates);
  }

  private static Optional<String> containing(String word, Collection<String> candidates) {
    return candidates.stream()
        .filter(
            candidate -> {
              var other = candidate.toLowerCase(Locale.ROOT);
              boolean longEnough = word.length() > 2 && other.length() > 2;
              return longEnough && (other.contains(word) || word.contains(other));
            })
        .findFirst();
  }

  /** Changes of single letters, with two neighbours that changed places as one change. */
  private static int changes(String a, String b) {
    int[][] least = new int[a.length() + 1][b.length() + 1];
    for (int i = 0; i <= a.length(); i++) {
      for (int j = 0; j <= b.length(); j++) {
        least[i][j] = i == 0 || j == 0 ? i + j : changes(a, b, i, j, least);
      }
    }
    return least[a.length()][b.length()];
  }

  /** The least changes between the first i letters of a and the first j of b, both at least 1. */
  private static int changes(String a, String b, int i, int j, int[][] least) {
    boolean same = a.charAt(i - 1) == b.charAt(j - 1);
    int replaced = least[i - 1][j - 1] + (same ? 0 : 1);
    int fewest = Math.min(replaced, Math.min(least[i - 1][j], least[i][j - 1]) + 1);
    boolean swapped =
        i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1);
    return swapped ? Math.min(fewest, least[i - 2][j - 2] + 1) : fewest;
  }
}
