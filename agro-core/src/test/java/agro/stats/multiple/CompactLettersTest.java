package agro.stats.multiple;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import agro.report.InputProblem;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

/** Letters say exactly what the decisions say, with as few letters as will do. */
class CompactLettersTest {

  private static boolean[][] decisions(int size, double share, Random random) {
    boolean[][] different = new boolean[size][size];
    for (int i = 0; i < size; i++) {
      for (int j = 0; j < i; j++) {
        different[i][j] = random.nextDouble() < share;
        different[j][i] = different[i][j];
      }
    }
    return different;
  }

  private static List<String> labels(int size) {
    var labels = new ArrayList<String>();
    for (int each = 0; each < size; each++) {
      labels.add("T" + each);
    }
    return labels;
  }

  private static double[] falling(int size) {
    double[] means = new double[size];
    for (int each = 0; each < size; each++) {
      means[each] = -each;
    }
    return means;
  }

  private static void assertSaysTheSame(CompactLetters letters, boolean[][] different) {
    for (int i = 0; i < different.length; i++) {
      assertThat(letters.letterList("T" + i)).isNotEmpty();
      for (int j = 0; j < different.length; j++) {
        var shared = new HashSet<>(letters.letterList("T" + i));
        shared.retainAll(letters.letterList("T" + j));
        assertThat(shared.isEmpty()).isEqualTo(different[i][j]);
        assertThat(letters.share("T" + i, "T" + j)).isEqualTo(!different[i][j]);
      }
    }
  }

  @Property(seed = "8", tries = 120)
  void lettersAgreeWithAnyDecisions(
      @ForAll @IntRange(min = 1, max = 14) int size,
      @ForAll @DoubleRange(min = 0, max = 1) double share,
      @ForAll long seed) {
    boolean[][] different = decisions(size, share, new Random(seed));
    var letters =
        CompactLetters.of(labels(size), falling(size), different, LetterOrder.LARGEST_FIRST);
    assertSaysTheSame(letters, different);
    assertThat(letters.letterList("T0")).first().isEqualTo("a");
    assertThat(letters.groups()).doesNotHaveDuplicates();
  }

  @Property(seed = "8", tries = 80)
  void orderOfInputDoesNotMatter(
      @ForAll @IntRange(min = 2, max = 9) int size,
      @ForAll @DoubleRange(min = 0, max = 1) double share,
      @ForAll long seed) {
    var random = new Random(seed);
    boolean[][] different = decisions(size, share, random);
    double[] means = random.ints(size, 0, 4).asDoubleStream().toArray();
    var order = new ArrayList<Integer>();
    for (int each = 0; each < size; each++) {
      order.add(each);
    }
    Collections.shuffle(order, random);
    boolean[][] turned = new boolean[size][size];
    for (int i = 0; i < size; i++) {
      for (int j = 0; j < size; j++) {
        turned[i][j] = different[order.get(i)][order.get(j)];
      }
    }
    for (var way : LetterOrder.values()) {
      var one = CompactLetters.of(labels(size), means, different, way);
      var other =
          CompactLetters.of(
              order.stream().map(each -> "T" + each).toList(),
              order.stream().mapToDouble(each -> means[each]).toArray(),
              turned,
              way);
      assertThat(other).hasToString(one.toString());
    }
  }

  /** Fewest letters by trying all: every set of means of which no two differ may be a letter. */
  @Property(seed = "8", tries = 80)
  void noFewerLettersWouldDo(
      @ForAll @IntRange(min = 1, max = 6) int size,
      @ForAll @DoubleRange(min = 0.1, max = 0.9) double share,
      @ForAll long seed) {
    boolean[][] different = decisions(size, share, new Random(seed));
    var sets = new ArrayList<Long>();
    for (int set = 1; set < 1 << size; set++) {
      long pairs = pairs(set, different);
      if (pairs != 0) {
        sets.add(pairs);
      }
    }
    long all = 0;
    for (long pairs : sets) {
      all |= pairs;
    }
    int fewest = 1;
    while (!covers(sets, 0, all, fewest)) {
      fewest++;
    }
    var letters =
        CompactLetters.of(labels(size), falling(size), different, LetterOrder.LARGEST_FIRST);
    assertThat(letters.count()).isEqualTo(fewest);
  }

  private static long pairs(int set, boolean[][] different) {
    long pairs = 0;
    for (int i = 0; i < different.length; i++) {
      for (int j = i; j < different.length; j++) {
        if ((set >> i & set >> j & 1) == 1) {
          if (different[i][j]) {
            return 0;
          }
          pairs |= 1L << (i * different.length + j);
        }
      }
    }
    return pairs;
  }

  private static boolean covers(List<Long> sets, long covered, long all, int left) {
    if (covered == all) {
      return true;
    }
    if (left == 0) {
      return false;
    }
    long missing = Long.lowestOneBit(all & ~covered);
    return sets.stream()
        .anyMatch(set -> (set & missing) != 0 && covers(sets, covered | set, all, left - 1));
  }

  /** The letters of an interval pattern: each run of means that reach each other. */
  @Test
  void overlappingRuns() {
    int size = 7;
    boolean[][] different = new boolean[size][size];
    for (int i = 0; i < size; i++) {
      for (int j = 0; j < size; j++) {
        different[i][j] = Math.abs(i - j) > 2;
      }
    }
    var letters =
        CompactLetters.of(labels(size), falling(size), different, LetterOrder.LARGEST_FIRST);
    assertThat(letters).hasToString("T0 a\nT1 ab\nT2 abc\nT3 bcd\nT4 cde\nT5 de\nT6 e");
  }

  @Test
  void manyMeansThatAllDiffer() {
    int size = 110;
    boolean[][] different = new boolean[size][size];
    for (int i = 0; i < size; i++) {
      for (int j = 0; j < size; j++) {
        different[i][j] = i != j;
      }
    }
    var letters =
        CompactLetters.of(labels(size), falling(size), different, LetterOrder.LARGEST_FIRST);
    assertThat(letters.count()).isEqualTo(size);
    assertThat(letters.letters("T25")).isEqualTo("z");
    assertThat(letters.letters("T26")).isEqualTo("A");
    assertThat(letters.letters("T52")).isEqualTo("a1");
    assertThat(letters.letters("T104")).isEqualTo("a2");
    assertSaysTheSame(letters, different);
  }

  @Test
  void absurdDecisionsOnManyMeansStayCorrect() {
    boolean[][] different = decisions(40, 0.3, new Random(7));
    var letters = CompactLetters.of(labels(40), falling(40), different, LetterOrder.LARGEST_FIRST);
    assertSaysTheSame(letters, different);
    boolean[][] triples = new boolean[45][45];
    for (int i = 0; i < 45; i++) {
      for (int j = 0; j < 45; j++) {
        triples[i][j] = i != j && i / 3 == j / 3;
      }
    }
    assertSaysTheSame(
        CompactLetters.of(labels(45), falling(45), triples, LetterOrder.LARGEST_FIRST), triples);
  }

  @Test
  void equalMeansAreOrderedByLabel() {
    var letters =
        CompactLetters.of(
            List.of("y", "x"),
            new double[] {0.0, -0.0},
            new boolean[2][2],
            LetterOrder.LARGEST_FIRST);
    assertThat(letters.labels()).containsExactly("x", "y");
    assertThat(letters).hasToString("x a\ny a");
  }

  @Test
  void badInputIsRefusedInWords() {
    var two = List.of("x", "y");
    double[] means = {1, 2};
    var order = LetterOrder.LARGEST_FIRST;
    boolean[][] uneven = {{false, true}, {false, false}};
    boolean[][] itself = {{true, false}, {false, false}};
    assertThatThrownBy(() -> CompactLetters.of(two, means, uneven, order))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("y and x");
    assertThatThrownBy(() -> CompactLetters.of(two, means, itself, order))
        .hasMessageContaining("itself");
    assertThatThrownBy(() -> CompactLetters.of(List.of("x", "x"), means, new boolean[2][2], order))
        .hasMessageContaining("twice");
    assertThatThrownBy(
            () -> CompactLetters.of(two, new double[] {1, Double.NaN}, new boolean[2][2], order))
        .isInstanceOf(InputProblem.class);
    assertThatThrownBy(() -> CompactLetters.of(two, means, new boolean[3][3], order))
        .hasMessageContaining("as many");
    var letters = CompactLetters.of(two, means, new boolean[2][2], order);
    assertThatThrownBy(() -> letters.letters("z")).hasMessageContaining("x");
  }
}
