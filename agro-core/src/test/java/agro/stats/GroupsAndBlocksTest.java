package agro.stats;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Groups, tables of blocks, ranks and sentences. */
class GroupsAndBlocksTest {

  @Test
  void groupsAreTakenFromRows() {
    var groups = GroupedValues.of(List.of("b", "a", "b", "b"), new double[] {3, 1, 2, 7});
    assertThat(groups.labels()).containsExactly("b", "a");
    assertThat(groups.values(0)).containsExactly(2, 3, 7);
    assertThat(groups.mean(0)).isEqualTo(4);
    assertThat(groups.median(0)).isEqualTo(3);
    assertThat(groups.variance(0)).isEqualTo(7);
    assertThat(groups.variance(1)).isNaN();
  }

  @Test
  void badGroupsAreTold() {
    assertThatThrownBy(() -> GroupedValues.of(List.of("a"), new double[] {1, 2}))
        .hasMessageContaining("1 group names and 2 values");
    assertThatThrownBy(() -> GroupedValues.of(List.of("a", "a"), new double[] {1, 2}))
        .hasMessageContaining("one group only");
    assertThatThrownBy(() -> GroupedValues.of(List.of("a", " "), new double[] {1, 2}))
        .hasMessageContaining("no name");
    assertThatThrownBy(() -> GroupedValues.of(List.of("a", "b"), new double[] {1, Double.NaN}))
        .hasMessageContaining("Group b contains the value NaN");
    assertThatThrownBy(() -> GroupedValues.numbered(new double[] {1}, new double[0]))
        .hasMessageContaining("Group 2 has no values");
  }

  @Test
  void badBlocksAreTold() {
    assertThatThrownBy(
            () ->
                BlockedValues.of(
                    List.of("1", "1", "2"), List.of("a", "a", "b"), new double[] {1, 2, 3}))
        .hasMessageContaining("Treatment a in block 1 stands in two rows");
    assertThatThrownBy(
            () -> BlockedValues.of(List.of("1", "1"), List.of("a", "b"), new double[] {1, 2}))
        .hasMessageContaining("one block");
    var table =
        BlockedValues.of(List.of("1", "1", "2"), List.of("a", "b", "b"), new double[] {1, 2, 3});
    assertThat(table.isComplete()).isFalse();
    assertThat(table.present()).isEqualTo(3);
    assertThatThrownBy(() -> table.value(1, 0)).hasMessageContaining("missing in block 2");
    assertThatThrownBy(() -> table.requireComplete("wait"))
        .hasMessageContaining("Treatment a has no value in block 2");
  }

  @Test
  void tiesShareTheirRank() {
    var ranks = MidRanks.of(5, 1, 5, 2, 5);
    assertThat(ranks.toArray()).containsExactly(4, 1, 4, 2, 4);
    assertThat(ranks.tieSum()).isEqualTo(24);
    assertThat(ranks.tiedValues()).isEqualTo(3);
    assertThat(MidRanks.of(1.3 - 1.1, 1.1 - 0.9).tiedValues()).isEqualTo(0);
    assertThat(MidRanks.within(1e-12, 1.3 - 1.1, 1.1 - 0.9).tiedValues()).isEqualTo(2);
  }

  @Test
  void sentencesOfTests() {
    assertThat(TestSentence.of("F", 34.7022820555, 3.18e-17, 5, 66))
        .isEqualTo("F = 34.70; df = 5, 66; P < 0.001");
    assertThat(TestSentence.of("F", 36.0654, 8e-12, 5, 30.04256))
        .isEqualTo("F = 36.07; df = 5, 30.0; P < 0.001");
    assertThat(TestSentence.of("z", -0.0123, 0.02226)).isEqualTo("z = -0.0123; P = 0.022");
    assertThat(TestSentence.of("F", Double.POSITIVE_INFINITY, 0, 1, 2)).startsWith("F = infinity");
    assertThat(TestSentence.chance(0.9999)).isEqualTo("P > 0.999");
  }
}
