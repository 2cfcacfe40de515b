package agro.trial.layout;

import agro.stats.SplitMix64;
import java.util.ArrayList;
import java.util.List;

/**
 * Random numbers that a seed fixes for good, with whole numbers below a bound drawn without bias.
 * Not thread-safe; each drawing has its own.
 */
final class SeededDraws {

  private final SplitMix64 stream;

  SeededDraws(long seed) {
    this.stream = SplitMix64.of(seed);
  }

  /** A stream of its own for another purpose, so that one purpose never shifts the other. */
  static SeededDraws forPurpose(long seed, long purpose) {
    return new SeededDraws(new SeededDraws(seed ^ (SplitMix64.GOLDEN * purpose)).next());
  }

  long next() {
    return stream.next();
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
