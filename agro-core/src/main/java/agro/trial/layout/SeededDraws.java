package agro.trial.layout;

import java.util.ArrayList;
import java.util.List;

/**
 * Random numbers that a seed fixes for good, on every machine and in every version of Java: the
 * generator SplitMix64 of Steele, Lea and Flood (2014), with whole numbers below a bound drawn
 * without bias. Not thread-safe; each drawing has its own.
 */
final class SeededDraws {

  private static final long GOLDEN = 0x9E3779B97F4A7C15L;

  private long state;

  SeededDraws(long seed) {
    this.state = seed;
  }

  /** A stream of its own for another purpose, so that one purpose never shifts the other. */
  static SeededDraws forPurpose(long seed, long purpose) {
    return new SeededDraws(new SeededDraws(seed ^ (GOLDEN * purpose)).next());
  }

  long next() {
    state += GOLDEN;
    long z = state;
    z = (z ^ (z >>> 30)) * 0xBF58476D1CE4E5B9L;
    z = (z ^ (z >>> 27)) * 0x94D049BB133111EBL;
    return z ^ (z >>> 31);
  }

  /** A whole number from 0 to below the bound, each with the same chance. */
  int below(int bound) {
    // Numbers above the last whole multiple of the bound would favour the small ones.
    long most = Long.MAX_VALUE - Long.MAX_VALUE % bound;
    long draw = next() >>> 1;
    while (draw >= most) {
      draw = next() >>> 1;
    }
    return (int) (draw % bound);
  }

  /** The items in an order of which each has the same chance (Fisher and Yates). */
  <T> List<T> shuffled(List<T> items) {
    var order = new ArrayList<>(items);
    for (int i = order.size() - 1; i > 0; i--) {
      int j = below(i + 1);
      var item = order.get(i);
      order.set(i, order.get(j));
      order.set(j, item);
    }
    return order;
  }
}
