package agro.notebook.insight;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;

/** Finds names that a misspelt one may stand for. */
final class Spelling {

  private static final int MOST = 3;
  private static final int SHORT = 3;

  private record Near(String name, int changes) {}

  private Spelling() {}

  /**
   * The nearest names.
   *
   * @param written the name as written
   * @param known names that exist
   * @return at most three, the nearest first; none that differs in more than a third of its letters
   */
  static List<String> nearest(String written, Collection<String> known) {
    var limit = written.length() < SHORT ? 0 : Math.max(1, written.length() / 3);
    var word = written.toLowerCase(Locale.ROOT);
    return known.stream()
        .filter(name -> Math.abs(name.length() - written.length()) <= limit)
        .filter(name -> !name.equals(written))
        .distinct()
        .map(name -> new Near(name, changes(word, name.toLowerCase(Locale.ROOT))))
        .filter(near -> near.changes() <= limit)
        .sorted(Comparator.comparingInt(Near::changes).thenComparing(Near::name))
        .map(Near::name)
        .limit(MOST)
        .toList();
  }

  /** Letters to change, add, leave out, or to swap with their neighbours. */
  private static int changes(String a, String b) {
    var least = new int[a.length() + 1][b.length() + 1];
    for (var i = 0; i <= a.length(); i++) {
      for (var j = 0; j <= b.length(); j++) {
        least[i][j] = i == 0 || j == 0 ? i + j : step(a, b, i, j, least);
      }
    }
    return least[a.length()][b.length()];
  }

  private static int step(String a, String b, int i, int j, int[][] least) {
    var replaced = least[i - 1][j - 1] + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
    var best = Math.min(replaced, 1 + Math.min(least[i - 1][j], least[i][j - 1]));
    var swapped =
        i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1);
    return swapped ? Math.min(best, least[i - 2][j - 2] + 1) : best;
  }
}
