package agro.stats;

import java.util.SplittableRandom;

/** Draws new data and fits them again. One object serves one thread. */
@FunctionalInterface
public interface Refit {

  /**
   * Makes one refit.
   *
   * @param random source of chance of this refit alone, so that it does not depend on the others
   * @param values takes what is wanted of the refit, NaN for what it does not have
   * @return how the refit ended
   */
  RefitOutcome refit(SplittableRandom random, double[] values);
}
