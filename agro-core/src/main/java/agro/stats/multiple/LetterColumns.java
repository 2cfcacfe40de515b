package agro.stats.multiple;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;

/**
 * The columns of letters for a matrix of decisions: sets of which each two members do not differ,
 * so that every pair that does not differ is together in one of them.
 *
 * <p>Piepho 2004, An algorithm for a letter-based representation of all-pairwise comparisons,
 * Journal of Computational and Graphical Statistics 13:456-466 (from memory): begin with one column
 * of all; for each pair that differs, write every column that holds both twice, without the one and
 * without the other, and absorb columns inside others; at last sweep out what is not needed. Here
 * the smallest number of columns that will do is sought before the sweep, and the sweep makes no
 * gap in a column that is one run of neighbouring means.
 */
final class LetterColumns {

  /** Absurd decisions on many means could make exponentially many columns. */
  private static final int MOST_COLUMNS = 2000;

  private final boolean[][] different;

  LetterColumns(boolean[][] different) {
    this.different = different;
  }

  /** Columns in order: a column whose members come earlier comes earlier. */
  List<BitSet> columns() {
    var all = insertAndAbsorb();
    if (all.size() > MOST_COLUMNS) {
      all = grow();
    }
    all.sort(ORDER);
    var kept = new ArrayList<BitSet>();
    for (int each : new SmallestCover(together(all)).chosen()) {
      kept.add((BitSet) all.get(each).clone());
    }
    sweep(kept);
    kept.sort(ORDER);
    return kept;
  }

  private static final Comparator<BitSet> ORDER =
      (one, other) -> {
        var apart = (BitSet) one.clone();
        apart.xor(other);
        int first = apart.nextSetBit(0);
        return first < 0 ? 0 : one.get(first) ? -1 : 1;
      };

  private List<BitSet> insertAndAbsorb() {
    int size = different.length;
    List<BitSet> columns = new ArrayList<>();
    var everything = new BitSet(size);
    everything.set(0, size);
    columns.add(everything);
    for (int i = 0; i < size; i++) {
      for (int j = i + 1; j < size; j++) {
        if (different[i][j]) {
          columns = split(columns, i, j);
          if (columns.size() > MOST_COLUMNS) {
            return columns;
          }
        }
      }
    }
    return columns;
  }

  private static List<BitSet> split(List<BitSet> columns, int i, int j) {
    var result = new ArrayList<BitSet>();
    var halves = new ArrayList<BitSet>();
    for (var column : columns) {
      if (column.get(i) && column.get(j)) {
        halves.add(without(column, i));
        halves.add(without(column, j));
      } else {
        result.add(column);
      }
    }
    for (var half : halves) {
      if (result.stream().noneMatch(other -> holds(other, half))) {
        result.removeIf(other -> holds(half, other));
        result.add(half);
      }
    }
    return result;
  }

  private static BitSet without(BitSet column, int member) {
    var copy = (BitSet) column.clone();
    copy.clear(member);
    return copy;
  }

  private static boolean holds(BitSet outer, BitSet inner) {
    var rest = (BitSet) inner.clone();
    rest.andNot(outer);
    return rest.isEmpty();
  }

  /** Correct columns, perhaps not the fewest: each grown from a pair that is not together yet. */
  private List<BitSet> grow() {
    int size = different.length;
    var columns = new ArrayList<BitSet>();
    boolean[][] together = new boolean[size][size];
    for (int i = 0; i < size; i++) {
      for (int j = i; j < size; j++) {
        if (different[i][j] || together[i][j]) {
          continue;
        }
        var column = new BitSet(size);
        column.set(i);
        column.set(j);
        for (int k = 0; k < size; k++) {
          int candidate = k;
          if (column.stream().noneMatch(member -> different[member][candidate])) {
            column.set(k);
          }
        }
        column.stream().forEach(a -> column.stream().forEach(b -> together[a][b] = true));
        columns.add(column);
      }
    }
    return columns;
  }

  /** For each column the pairs (and single members) that it brings together, as numbers. */
  private List<BitSet> together(List<BitSet> columns) {
    int size = different.length;
    var result = new ArrayList<BitSet>();
    for (var column : columns) {
      var pairs = new BitSet(size * size);
      column.stream()
          .forEach(a -> column.stream().filter(b -> b >= a).forEach(b -> pairs.set(a * size + b)));
      result.add(pairs);
    }
    return result;
  }

  /** Takes members out of columns in which all their pairs are together elsewhere too. */
  private void sweep(List<BitSet> columns) {
    int size = different.length;
    int[][] times = new int[size][size];
    for (var column : columns) {
      count(times, column, 1);
    }
    for (int index = columns.size() - 1; index >= 0; index--) {
      var column = columns.get(index);
      for (int member = size - 1; member >= 0; member--) {
        int swept = member;
        if (column.get(member)
            && !isInsideRun(column, member)
            && column.stream().allMatch(b -> times[swept][b] > 1)) {
          count(times, column, -1);
          column.clear(member);
          count(times, column, 1);
        }
      }
    }
    columns.removeIf(BitSet::isEmpty);
  }

  /** An unbroken run of means keeps its letter: readers take a gap in it for a difference. */
  private static boolean isInsideRun(BitSet column, int member) {
    int first = column.nextSetBit(0);
    int last = column.length() - 1;
    return column.cardinality() == last - first + 1 && member > first && member < last;
  }

  private static void count(int[][] times, BitSet column, int change) {
    column.stream().forEach(a -> column.stream().forEach(b -> times[a][b] += change));
  }
}
