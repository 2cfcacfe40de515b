package agro.stats.rank;

import java.util.Arrays;
import java.util.OptionalDouble;

/**
 * Exact chance of the sum of R²/n over groups, R the rank sums, when every deal of the ranks to the
 * groups is equally likely. Ranks are dealt out one by one; deals with equal counts and sums so far
 * are counted together, which takes thousands of steps where single deals would take millions.
 */
final class ExactKruskalWallis {

  private static final int MOST_STATES = 60_000;
  private static final double MOST_DEALS = 1e8;
  private static final long MOST_KEYS = 1L << 62;
  private static final double ROUNDING = 1e-9;

  private final int[] sizes;
  private final int[] doubledRanks;
  private final long[] countRadix;
  private final long[] sumRadix;

  private ExactKruskalWallis(int[] sizes, int[] doubledRanks, long[] countRadix, long[] sumRadix) {
    this.sizes = sizes;
    this.doubledRanks = doubledRanks;
    this.countRadix = countRadix;
    this.sumRadix = sumRadix;
  }

  /** Chance of at least the observed sum of R²/n; nothing when there are too many deals. */
  static OptionalDouble chance(int[] sizes, double[] ranks, double observed) {
    int[] doubled = Arrays.stream(ranks).mapToInt(rank -> (int) Math.round(2 * rank)).toArray();
    Arrays.sort(doubled);
    int[] ascending = sizes.clone();
    Arrays.sort(ascending);
    int free = sizes.length - 1;
    long[] countRadix = new long[free];
    long[] sumRadix = new long[free];
    double keys = 1;
    double deals = 1;
    int dealt = 0;
    for (int size : ascending) {
      for (int j = 1; j <= size; j++) {
        deals *= (double) ++dealt / j;
      }
    }
    for (int i = 0; i < free; i++) {
      long largest = 0;
      for (int j = 0; j < ascending[i]; j++) {
        largest += doubled[doubled.length - 1 - j];
      }
      countRadix[i] = ascending[i] + 1L;
      sumRadix[i] = largest + 1;
      keys *= (double) countRadix[i] * sumRadix[i];
    }
    if (keys > MOST_KEYS || deals > MOST_DEALS) {
      return OptionalDouble.empty();
    }
    return new ExactKruskalWallis(ascending, doubled, countRadix, sumRadix).dealt(observed);
  }

  private OptionalDouble dealt(double observed) {
    var deals = WaysByState.start();
    for (int i = 0; i < doubledRanks.length; i++) {
      var next = new WaysByState();
      int place = i;
      deals.forEach((state, ways) -> deal(state, ways, place, next));
      if (next.size() > MOST_STATES) {
        return OptionalDouble.empty();
      }
      deals = next;
    }
    return OptionalDouble.of(
        deals.share(state -> sumOfSquares(state) >= observed * (1 - ROUNDING)));
  }

  private void deal(long key, double ways, int place, WaysByState next) {
    long rest = key;
    long unit = 1;
    long given = 0;
    for (int group = 0; group < countRadix.length; group++) {
      long count = rest % countRadix[group];
      rest /= countRadix[group];
      rest /= sumRadix[group];
      given += count;
      if (count < sizes[group]) {
        next.add(key + unit + unit * countRadix[group] * doubledRanks[place], ways);
      }
      unit *= countRadix[group] * sumRadix[group];
    }
    if (place - given < sizes[sizes.length - 1]) {
      next.add(key, ways);
    }
  }

  private double sumOfSquares(long key) {
    long rest = key;
    double left = Arrays.stream(doubledRanks).asLongStream().sum();
    double sum = 0;
    for (int group = 0; group < countRadix.length; group++) {
      rest /= countRadix[group];
      double own = rest % sumRadix[group];
      rest /= sumRadix[group];
      sum += own * own / sizes[group];
      left -= own;
    }
    return (sum + left * left / sizes[sizes.length - 1]) / 4;
  }
}
