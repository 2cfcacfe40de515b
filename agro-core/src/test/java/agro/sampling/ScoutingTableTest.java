package agro.sampling;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import agro.reading.DelimitedFormat;
import agro.reading.DelimitedText;
import agro.report.InputProblem;
import agro.sampling.dispersion.TaylorPowerLaw;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

class ScoutingTableTest {

  private static final Path DEMO =
      Path.of(System.getProperty("basedir", ".")).resolve("../demo-data/osmere-vale/scouting.csv");
  private static final String HEAD = "field,part,date,unit,units,pest,count,parasitised\n";

  private static ScoutingTable table(String lines) {
    return ScoutingTable.of(
        DelimitedText.parse("counts.csv", HEAD + lines, DelimitedFormat.COMMA, List.of()));
  }

  @Test
  void readsTheCountsOfTheVale() {
    var table = ScoutingTable.read(DEMO);
    assertThat(table.pests()).containsExactly("cabbage aphid", "diamondback moth");
    var aphids = table.ofPest("cabbage aphid");
    assertThat(aphids.samples())
        .hasSize(12)
        .allSatisfy(sample -> assertThat(sample.size()).isEqualTo(24));
    assertThat(aphids.samplesByPart()).hasSize(24);
    assertThat(aphids.samples().get(11).mean()).isGreaterThan(10);
    for (int i = 0; i < 12; i++) {
      assertThat(aphids.parasitised().get(i).total())
          .isLessThanOrEqualTo(aphids.samples().get(i).total());
    }
    assertThat(aphids.inField("Mill Field plot 1").lines()).hasSize(24);
    assertThat(TaylorPowerLaw.fit(aphids.samples()).b()).isBetween(1.2, 2.2);
  }

  @Test
  void unitsAndPartsAreKept() {
    var table = table("A,edge,2026-06-01,sweep,10,beetle,3,\nA,,2026-06-01,sweep,10,beetle,0,\n");
    assertThat(table.samples().get(0).unit().words()).isEqualTo("10 × sweep");
    assertThat(table.lines().get(1).part()).isEmpty();
  }

  @Test
  void badCellsAreNamedByLineAndColumn() {
    refused(
        "A,,2026-06-01,plant,,aphid,-1,\n",
        "counts.csv, line 2, column \"count\": the count is -1");
    refused("A,,2026-06-01,bush,,aphid,1,\n", "line 2, column \"unit\"");
    refused("A,,2026-06-01,plant,0,aphid,1,\n", "column \"units\"");
    refused("A,,01.06.2026,plant,,aphid,1,\n", "column \"date\"");
    refused("A,,2026-06-01,plant,,aphid,2,3\n", "3 parasitised of 2");
  }

  @Test
  void whatDoesNotBelongTogetherIsRefused() {
    var two = table("A,,2026-06-01,plant,,aphid,1,\nA,,2026-06-01,plant,,moth,1,\n");
    problem(two::samples, "counts of [aphid, moth]");
    var mixed = table("A,,2026-06-01,plant,,aphid,1,\nA,,2026-06-01,leaf,,aphid,1,\n");
    problem(mixed::samples, "counts for each plant and for each leaf");
    var one = table("A,,2026-06-01,plant,,aphid,1,\n");
    problem(one::samples, "at least two units");
    problem(one::parasitised, "not looked for is not the same as none");
    problem(() -> one.ofPest("aphids"), "one of [aphid]");
    problem(() -> table(""), "no lines below it");
  }

  private static void refused(String lines, String words) {
    problem(() -> table(lines), words);
  }

  private static void problem(
      org.assertj.core.api.ThrowableAssert.ThrowingCallable call, String words) {
    assertThatThrownBy(call).isInstanceOf(InputProblem.class).hasMessageContaining(words);
  }
}
