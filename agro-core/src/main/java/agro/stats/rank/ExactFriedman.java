package agro.stats.rank;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;

/**
 * Exact chance of the sum of squared rank sums when every order of the ranks within each block is
 * equally likely. Blocks are added one by one; rank sums that differ only in which treatment they
 * belong to are counted together.
 */
final class ExactFriedman {

  private static final int MOST_TREATMENTS = 6;
  private static final double MOST_STEPS = 3e6;
  private static final double ROUNDING = 1e-9;

  private ExactFriedman() {}

  /** Chance of at least the observed sum of squared rank sums; nothing when there are too many. */
  static OptionalDouble chance(List<double[]> blocks, double observed) {
    int k = blocks.get(0).length;
    double span = 2.0 * k * blocks.size() + 1;
    if (k > MOST_TREATMENTS || Math.pow(span, k) > Long.MAX_VALUE) {
      return OptionalDouble.empty();
    }
    long radix = (long) span;
    var sums = WaysByState.start();
    double steps = 0;
    for (double[] block : blocks) {
      var orders = orders(block);
      steps += (double) sums.size() * orders.size();
      if (steps > MOST_STEPS) {
        return OptionalDouble.empty();
      }
      var next = new WaysByState();
      sums.forEach(
          (state, ways) -> {
            int[] from = unpack(state, radix, k);
            for (int[] order : orders) {
              next.add(pack(from, order, radix), ways / orders.size());
            }
          });
      sums = next;
    }
    return OptionalDouble.of(
        sums.share(state -> squares(unpack(state, radix, k)) >= observed * (1 - ROUNDING)));
  }

  private static double squares(int[] doubledSums) {
    double squares = 0;
    for (int sum : doubledSums) {
      squares += sum * (double) sum / 4;
    }
    return squares;
  }

  private static int[] unpack(long key, long radix, int k) {
    int[] sums = new int[k];
    long rest = key;
    for (int i = 0; i < k; i++) {
      sums[i] = (int) (rest % radix);
      rest /= radix;
    }
    return sums;
  }

  private static long pack(int[] from, int[] order, long radix) {
    int[] sums = new int[from.length];
    for (int i = 0; i < sums.length; i++) {
      sums[i] = from[i] + order[i];
    }
    Arrays.sort(sums);
    long key = 0;
    for (int sum : sums) {
      key = key * radix + sum;
    }
    return key;
  }

  /** All different orders of the doubled ranks of one block. */
  private static List<int[]> orders(double[] ranks) {
    int[] doubled = Arrays.stream(ranks).mapToInt(rank -> (int) Math.round(2 * rank)).toArray();
    Arrays.sort(doubled);
    var orders = new ArrayList<int[]>();
    do {
      orders.add(doubled.clone());
    } while (nextOrder(doubled));
    return orders;
  }

  private static boolean nextOrder(int[] order) {
    int pivot = order.length - 2;
    while (pivot >= 0 && order[pivot] >= order[pivot + 1]) {
      pivot--;
    }
    if (pivot < 0) {
      return false;
    }
    int partner = order.length - 1;
    while (order[partner] <= order[pivot]) {
      partner--;
    }
    swap(order, pivot, partner);
    for (int i = pivot + 1, j = order.length - 1; i < j; i++, j--) {
      swap(order, i, j);
    }
    return true;
  }

  private static void swap(int[] order, int i, int j) {
    int kept = order[i];
    order[i] = order[j];
    order[j] = kept;
  }
}
