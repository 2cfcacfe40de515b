package agro.stats.rank;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import agro.stats.BlockedValues;
import agro.stats.GroupedValues;
import agro.stats.multiple.LetterOrder;
import agro.stats.multiple.PValueAdjustment;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/** What must hold for rank tests whatever the data, and what is told when data cannot be used. */
class RankPropertiesTest {

  private static final Offset<Double> CLOSE = within(1e-10);
  private static final double GAP = Double.NaN;

  @Property(seed = "8", tries = 60)
  void orderAndNamesDoNotMatter(@ForAll @IntRange(min = 1, max = 9999) int seed) {
    var random = new Random(seed);
    var rows = new ArrayList<Integer>();
    double[] values = new double[20];
    for (int i = 0; i < 20; i++) {
      rows.add(i);
      values[i] = random.nextInt(12) + 0.01 * i;
    }
    Collections.shuffle(rows, random);
    double[] other = rows.stream().mapToDouble(i -> Math.exp(values[i] / 4)).toArray();
    double[] moved = rows.stream().mapToDouble(i -> 5 - 2 * values[i]).toArray();
    var treatments = rows.stream().map(i -> "t" + i % 4).toList();
    var renamed = rows.stream().map(i -> "" + (char) ('z' - i % 4)).toList();
    var blocks = rows.stream().map(i -> "b" + i / 4).toList();
    var plain = rows.stream().sorted().toList();
    var before = plain.stream().map(i -> "t" + i % 4).toList();
    var blocksBefore = plain.stream().map(i -> "b" + i / 4).toList();

    var kruskal = KruskalWallis.test(GroupedValues.of(before, values));
    var shuffled = KruskalWallis.test(GroupedValues.of(renamed, other));
    assertThat(shuffled.h()).isCloseTo(kruskal.h(), CLOSE);
    assertThat(shuffled.pValue()).isCloseTo(kruskal.pValue(), CLOSE);
    var friedman = Friedman.test(BlockedValues.of(blocksBefore, before, values));
    var again = Friedman.test(BlockedValues.of(blocks, treatments, other));
    assertThat(again.pValue()).isCloseTo(friedman.pValue(), CLOSE);
    var mack = SkillingsMack.test(BlockedValues.of(blocks, renamed, other));
    assertThat(mack.statistic()).isCloseTo(friedman.chiSquared(), CLOSE);
    assertThat(mack.df()).isEqualTo(3);
    var quade = QuadeTest.test(BlockedValues.of(blocksBefore, before, values));
    assertThat(QuadeTest.test(BlockedValues.of(blocks, renamed, moved)).pValue())
        .isCloseTo(quade.pValue(), CLOSE);
    var welch = WelchTest.test(GroupedValues.of(before, values));
    assertThat(WelchTest.test(GroupedValues.of(renamed, moved)).pValue())
        .isCloseTo(welch.pValue(), CLOSE);
  }

  /** Assembly times, Skillings & Mack 1981 (from memory): 15.49 on 3 degrees of freedom. */
  @Test
  void missingPlotsOfSkillingsAndMack() {
    double[][] times = {
      {3.2, 4.1, 3.8, 4.2},
      {3.1, 3.9, 3.4, 4.0},
      {4.3, 3.5, 4.6, 4.8},
      {3.5, 3.6, 3.9, 4.0},
      {3.6, 4.2, 3.7, 3.9},
      {4.5, 4.7, 3.7, GAP},
      {GAP, 4.2, 3.4, GAP},
      {4.3, 4.6, 4.4, 4.9},
      {3.5, GAP, 3.7, 3.9}
    };
    var result = SkillingsMack.test(RankTestsTest.table(times));
    assertThat(result).hasToString("Skillings-Mack: χ² = 15.49; df = 3; P = 0.001");
  }

  @Test
  void blocksThatTellNothingAreLeftOut() {
    double[][] rows = {{1, 2, GAP}, {3, GAP, GAP}, {2, 5, GAP}, {4, 1, GAP}, {GAP, GAP, 7}};
    var result = SkillingsMack.test(RankTestsTest.table(rows));
    assertThat(result.usedBlocks()).isEqualTo(3);
    assertThat(result.df()).isEqualTo(1);
    assertThat(result.remarks()).hasSize(2);
    assertThat(result.treatments().get(2).n()).isZero();
    assertThatThrownBy(
            () -> SkillingsMack.test(RankTestsTest.table(new double[][] {{1, 1}, {2, 2}})))
        .hasMessageContaining("No block has two plots");
  }

  @Test
  void adjustmentsAndLookup() {
    var test = KruskalWallis.test(RankTestsTest.groups("InsectSprays"));
    assertThat(test.method()).isEqualTo(PValueMethod.CHI_SQUARED);
    assertThat(test)
        .hasToString("Kruskal-Wallis: H = 54.69; df = 5; P < 0.001 (chi-squared approximation)");
    var pairs = test.pairs(KruskalWallisPairs.DUNN, PValueAdjustment.BONFERRONI);
    assertThat(pairs.pairs()).hasSize(15);
    for (RankPair pair : pairs.pairs()) {
      assertThat(pair.adjustedPValue()).isCloseTo(Math.min(1, 15 * pair.pValue()), CLOSE);
    }
    assertThat(pairs.adjustedPValues()[1]).isEqualTo(pairs.pair("C", "A").adjustedPValue());
    assertThat(pairs.pValues()).hasSize(15);
    var letters = pairs.letters(0.05, LetterOrder.LARGEST_FIRST);
    assertThat(letters.share("A", "B")).isTrue();
    assertThat(letters.share("C", "F")).isFalse();
    assertThat(letters.letters("F")).startsWith("a");
    assertThatThrownBy(() -> pairs.letters(5, LetterOrder.LARGEST_FIRST))
        .hasMessageContaining("0.05");
    assertThatThrownBy(() -> pairs.pair("A", "A")).hasMessageContaining("no comparison");
    var friedman = Friedman.test(RankTestsTest.blocks("stores"));
    assertThatThrownBy(() -> friedman.pairs(FriedmanPairs.NEMENYI, PValueAdjustment.HOLM))
        .hasMessageContaining("NONE");
  }

  @Test
  void badInputIsTold() {
    var equal = GroupedValues.numbered(new double[] {2, 2}, new double[] {2, 2});
    assertThatThrownBy(() -> KruskalWallis.test(equal)).hasMessageContaining("All 4 values equal");
    assertThatThrownBy(() -> WelchTest.test(equal)).hasMessageContaining("equal in 1, 2");
    assertThatThrownBy(
            () -> KruskalWallis.test(GroupedValues.of(List.of("a", "b"), new double[] {1, 2})))
        .hasMessageContaining("one value only");
    assertThatThrownBy(
            () -> WelchTest.test(GroupedValues.numbered(new double[] {1, 2}, new double[] {1})))
        .hasMessageContaining("Group 2 has 1 value");
    var flat = RankTestsTest.table(new double[][] {{1, 1}, {2, 2}});
    assertThatThrownBy(() -> Friedman.test(flat)).hasMessageContaining("within every block");
    assertThatThrownBy(() -> QuadeTest.test(flat)).hasMessageContaining("within every block");
    var gaps = RankTestsTest.table(new double[][] {{1, 3}, {2, GAP}});
    assertThatThrownBy(() -> Friedman.test(gaps)).hasMessageContaining("Skillings and Mack");
    var agreed = RankTestsTest.table(new double[][] {{1, 2, 3}, {1, 2, 3}});
    assertThatThrownBy(
            () -> Friedman.test(agreed).pairs(FriedmanPairs.CONOVER, PValueAdjustment.NONE))
        .hasMessageContaining("Nemenyi");
    assertThat(QuadeTest.test(agreed).pValue()).isCloseTo(1 / 6.0, CLOSE);
    var apart = GroupedValues.numbered(new double[] {1, 1}, new double[] {2, 2});
    assertThatThrownBy(
            () ->
                KruskalWallis.test(apart)
                    .pairs(KruskalWallisPairs.CONOVER_IMAN, PValueAdjustment.NONE))
        .hasMessageContaining("Dunn");
  }
}
