package agro.sampling.sequential;

import agro.sampling.CountSample;
import java.util.Arrays;
import java.util.SplittableRandom;

/** Counts drawn from a family at one mean, or from the counts of a sample. */
final class CountDraws {

  private static final double LEFT_OUT = 1e-15;
  private static final int MOST_COUNTS = 10_000_000;

  /** Chance of a count up to x, or nothing when single counts are drawn. */
  private final double[] upTo;

  private final int[] counts;

  private CountDraws(double[] upTo, int[] counts) {
    this.upTo = upTo;
    this.counts = counts;
  }

  static CountDraws of(CountFamily family, double mean) {
    double[] upTo = new double[64];
    double sum = 0;
    int size = 0;
    do {
      if (size == upTo.length) {
        upTo = Arrays.copyOf(upTo, 2 * size);
      }
      sum += family.probability(mean, size);
      upTo[size] = sum;
      size++;
    } while (size < MOST_COUNTS && family.chanceOfMoreThan(mean, size - 1) > LEFT_OUT);
    return new CountDraws(Arrays.copyOf(upTo, size), new int[0]);
  }

  /** Draws with replacement. */
  static CountDraws of(CountSample sample) {
    return new CountDraws(
        new double[0], sample.counts().stream().mapToInt(Integer::intValue).toArray());
  }

  int draw(SplittableRandom random) {
    if (counts.length > 0) {
      return counts[random.nextInt(counts.length)];
    }
    double chance = random.nextDouble();
    if (chance < upTo[0]) {
      return 0;
    }
    int found = Arrays.binarySearch(upTo, chance);
    return Math.min(upTo.length - 1, found >= 0 ? found + 1 : -found - 1);
  }
}
