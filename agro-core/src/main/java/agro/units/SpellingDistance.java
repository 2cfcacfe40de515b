package agro.units;

/** How many slips of the pen lie between two words. */
final class SpellingDistance {

  private SpellingDistance() {}

  /**
   * Letters to insert, drop, change or swap with their neighbour.
   *
   * @param one a word
   * @param other another word
   * @param most distances above this are of no interest
   * @return the distance, or a number above {@code most}
   */
  static int between(String one, String other, int most) {
    if (Math.abs(one.length() - other.length()) > most) {
      return most + 1;
    }
    int[] before = new int[other.length() + 1];
    int[] previous = new int[other.length() + 1];
    int[] current = new int[other.length() + 1];
    for (int j = 0; j <= other.length(); j++) {
      previous[j] = j;
    }
    for (int i = 1; i <= one.length(); i++) {
      current[0] = i;
      for (int j = 1; j <= other.length(); j++) {
        int change = one.charAt(i - 1) == other.charAt(j - 1) ? 0 : 1;
        int least =
            Math.min(Math.min(previous[j] + 1, current[j - 1] + 1), previous[j - 1] + change);
        if (i > 1
            && j > 1
            && one.charAt(i - 1) == other.charAt(j - 2)
            && one.charAt(i - 2) == other.charAt(j - 1)) {
          least = Math.min(least, before[j - 2] + 1);
        }
        current[j] = least;
      }
      int[] spare = before;
      before = previous;
      previous = current;
      current = spare;
    }
    return previous[other.length()];
  }
}
