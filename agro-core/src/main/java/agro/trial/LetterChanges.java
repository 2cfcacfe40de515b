package agro.trial;

/** How many letters two words differ in. */
final class LetterChanges {

  private LetterChanges() {}

  /** Letters changed, added, left out or swapped with their neighbour. */
  static int between(String a, String b) {
    int[][] least = new int[a.length() + 1][b.length() + 1];
    for (int i = 0; i <= a.length(); i++) {
      for (int j = 0; j <= b.length(); j++) {
        least[i][j] = i == 0 || j == 0 ? i + j : step(a, b, i, j, least);
      }
    }
    return least[a.length()][b.length()];
  }

  private static int step(String a, String b, int i, int j, int[][] least) {
    int same = a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1;
    int fewest =
        Math.min(least[i - 1][j - 1] + same, Math.min(least[i - 1][j], least[i][j - 1]) + 1);
    boolean swapped =
        i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1);
    return swapped ? Math.min(fewest, least[i - 2][j - 2] + 1) : fewest;
  }
}
