package agro.development.rate;

import java.util.SplittableRandom;

/** Draws rates anew. Holds nothing that changes, so that threads may share it. */
interface RateDraw {

  /**
   * Draws rates.
   *
   * @param random source of chance
   * @param rates takes one for each point
   */
  void draw(SplittableRandom random, double[] rates);
}
