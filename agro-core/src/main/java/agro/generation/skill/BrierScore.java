package agro.generation.skill;

/**
 * The mean squared difference between a chance and what happened (Brier 1950): 0 at best, 0.25 for
 * one who always says one half.
 *
 * @see agro.source.Bibliography#BRIER_1950
 */
public final class BrierScore {

  private BrierScore() {}

  /**
   * Score of one chance.
   *
   * @param chance chance given, 0 to 1
   * @param happened whether it happened
   * @return 0 to 1
   * @throws IllegalArgumentException when the chance is no chance
   */
  public static double of(double chance, boolean happened) {
    if (!(chance >= 0 && chance <= 1)) {
      throw new IllegalArgumentException("a chance lies from 0 to 1, but got " + chance);
    }
    var miss = chance - (happened ? 1 : 0);
    return miss * miss;
  }
}
