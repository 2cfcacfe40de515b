package agro.trial;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import agro.report.InputProblem;
import agro.trial.TrialFinding.Kind;
import agro.trial.TrialFinding.Severity;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** Designs recognised in tables, and findings where table and design disagree. */
class TrialReviewTest {

  private static final PlotColumns COLUMNS = PlotColumns.ofCounts("larvae");
  private static final String HEADING = "plot,block,treatment,larvae\n";

  private static TrialReview review(String text) {
    return FieldTrial.parse("t", text, COLUMNS).review();
  }

  private static TrialFinding only(TrialReview review, Kind kind) {
    assertThat(review.findings(kind)).as(review.toString()).hasSize(1);
    return review.findings(kind).get(0);
  }

  @Test
  void aTreatmentTwiceInABlockAndMissingInItIsFound() {
    var review =
        review(
            HEADING
                + "1,1,a,1\n2,1,b,2\n3,1,c,3\n4,2,b,1\n5,2,b,2\n6,2,c,3\n7,3,c,1\n8,3,a,2\n9,3,b,3\n");

    assertThat(review.design()).isEqualTo(new TrialDesign.CompleteBlocks(List.of("treatment")));
    var twice = only(review, Kind.TWICE_IN_BLOCK);
    assertThat(twice.text())
        .contains("\"b\" stands twice in block 2", "plots 4 and 5", "lines 5 and 6");
    assertThat(only(review, Kind.MISSING_IN_BLOCK).text()).contains("\"a\"", "block 2");
    assertThat(only(review, Kind.UNEQUAL_REPLICATION).text()).contains("a 2; b 4; c 3");
  }

  @Test
  void aPlotThatChangesItsTreatmentIsAnErrorAndItsValuesAreRefused() {
    var trial =
        FieldTrial.parse(
            "t",
            """
            plot,block,treatment,date,larvae
            1,1,a,2026-06-03,1
            2,1,b,2026-06-03,1
            1,1,b,2026-06-10,1
            2,1,b,2026-06-10,1
            """,
            COLUMNS);

    var finding = only(trial.review(), Kind.PLOT_CHANGES);

    assertThat(finding.severity()).isEqualTo(Severity.ERROR);
    assertThat(finding.text()).contains("Plot 1", "a in block 1 (line 2)", "b in block 1 (line 4)");
    assertThat(trial.review().isSound()).isFalse();
    assertThatThrownBy(() -> trial.variable("larvae").on(trial.dates().get(0)))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("2 ways");
  }

  @Test
  void aTypingErrorBetweenDatesIsMendedByRenaming() {
    var trial =
        FieldTrial.parse(
            "t",
            """
            plot,block,treatment,date,larvae
            1,1,untreated,2026-06-03,1
            2,1,b,2026-06-03,1
            1,1,Untraeted,2026-06-10,1
            2,1,b,2026-06-10,1
            """,
            COLUMNS);

    assertThat(only(trial.review(), Kind.NEAR_NAMES).cure())
        .contains("withRenamed(\"Untraeted\", \"untreated\")");
    var mended = trial.withRenamed("Untraeted", "untreated");

    assertThat(mended.review().findings(Kind.PLOT_CHANGES)).isEmpty();
    assertThat(mended.review().findings(Kind.NEAR_NAMES)).isEmpty();
    assertThat(mended.variable("larvae").onEachDay()).hasSize(2);
    assertThat(mended.report().toString()).contains("\"Untraeted\" was renamed \"untreated\"");
    assertThat(trial.treatments()).contains("b");
    assertThatThrownBy(() -> mended.withRenamed("Untraeted", "x"))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("exactly as it stands");
  }

  @Test
  void aSubSampleWithTwoValuesIsAnErrorAndTheSameValueTwiceCountsOnce() {
    var text =
        """
            plot,block,treatment,plant,larvae
            1,1,a,1,4
            1,1,a,2,6
            1,1,a,2,6
            2,1,b,1,1
            2,1,b,2,2
            2,1,b,2,9
            """;
    var trial = FieldTrial.parse("t", text, COLUMNS);

    var findings = trial.review().findings(Kind.TWO_VALUES);

    assertThat(findings).hasSize(2);
    assertThat(findings.get(0).severity()).isEqualTo(Severity.ERROR);
    assertThat(findings.get(0).text()).contains("lines 6 and 7", "as 2 and as 9");
    assertThat(findings.get(1).text()).contains("it counts once", "lines 3 and 4");
    assertThatThrownBy(() -> trial.variable("larvae").onTheOnlyDay())
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("line 6")
        .hasMessageContaining("9");
    var wrong =
        trial.assessments().stream().filter(line -> line.line() == 7).findFirst().orElseThrow();
    var mended = trial.withCorrection(Correction.toMissing(wrong, "entered twice", "A. B.", ""));
    assertThat(mended.variable("larvae").onTheOnlyDay().means()).containsExactly(5, 1.5);
  }

  @Test
  void impossibleValuesAreFoundWithTheirLines() {
    var columns =
        PlotColumns.ofCounts("larvae")
            .withResponse(TrialResponse.countOutOf("dead", "n"))
            .withResponse(TrialResponse.percentage("cover"))
            .withResponse(TrialResponse.score("score", 0, 9));
    var text =
        """
            plot,block,treatment,larvae,dead,n,cover,score
            1,1,a,-1,3,10,50,1
            2,1,b,2.5,12,10,50,1
            3,2,b,2,3,10,101,1
            4,2,a,2,3,,100,10
            """;

    var findings = FieldTrial.parse("t", text, columns).review().findings(Kind.OUT_OF_RANGE);

    assertThat(findings.stream().map(TrialFinding::text))
        .hasSize(6)
        .anyMatch(words -> words.contains("-1") && words.contains("at least 0"))
        .anyMatch(words -> words.contains("2.5") && words.contains("whole number"))
        .anyMatch(words -> words.contains("12 of 10") && words.contains("no more than 10"))
        .anyMatch(words -> words.contains("101") && words.contains("at most 100"))
        .anyMatch(words -> words.contains("(line 5)") && words.contains("not given"))
        .anyMatch(words -> words.contains("is 10") && words.contains("at most 9"));
    assertThat(findings).allMatch(finding -> finding.severity() == Severity.ERROR);
  }

  @Test
  void lostPlotsAreFoundByGapsAndByMissingValues() {
    var text = HEADING + "1,1,a,1\n2,1,b,2\n3,1,c,3\n4,2,b,1\n6,2,c,3\n7,3,c,1\n8,3,a,2\n9,3,b,\n";

    var findings = review(text).findings(Kind.MISSING_PLOT);

    assertThat(findings.stream().map(TrialFinding::text))
        .hasSize(2)
        .anyMatch(words -> words.contains("leave out 5"))
        .anyMatch(words -> words.contains("Plot 9 has no value of larvae"));
  }

  @Test
  void onePlotOfEachTreatmentIsAnErrorHoweverManyPlants() {
    var text =
        "plot,treatment,plant,larvae\n"
            + List.of("a", "b").stream()
                .flatMap(
                    treatment ->
                        List.of(1, 2, 3, 4, 5).stream()
                            .map(plant -> treatment + "," + treatment + "," + plant + ",3\n"))
                .collect(Collectors.joining());

    var finding = only(review(text), Kind.NO_REPLICATION);

    assertThat(finding.severity()).isEqualTo(Severity.ERROR);
    assertThat(finding.cure()).contains("Plants within a plot do not replace a second plot");
  }

  @Test
  void controlsAreOfferedByTheirNamesAndNeverTaken() {
    var text = HEADING + "1,1,Témoin,1\n2,1,soap,2\n3,2,soap,1\n4,2,Témoin,3\n";
    var trial = FieldTrial.parse("t", text, COLUMNS);

    assertThat(trial.controls()).isEmpty();
    assertThat(trial.controlCandidates()).containsExactly("Témoin");
    assertThat(only(trial.review(), Kind.CONTROL).text()).contains("No control is declared");
    var declared = trial.withControls("Témoin");
    assertThat(declared.controls()).containsExactly("Témoin");
    assertThat(only(declared.review(), Kind.CONTROL).text()).contains("declared: \"Témoin\"");
  }

  @Test
  void incompleteBlocksAreCalledSoAndBalancedOnesToo() {
    var balanced = review(HEADING + "1,1,a,1\n2,1,b,2\n3,2,a,3\n4,2,c,1\n5,3,b,3\n6,3,c,1\n");

    assertThat(balanced.design())
        .isEqualTo(new TrialDesign.IncompleteBlocks(List.of("treatment"), true));
    assertThat(balanced.findings(Kind.MISSING_IN_BLOCK)).isEmpty();
    assertThat(balanced.toString()).contains("adjusted for blocks");
    var other = review(HEADING + "1,1,a,1\n2,1,b,2\n3,2,a,3\n4,2,c,1\n5,3,a,3\n6,3,c,1\n");
    assertThat(other.design())
        .isEqualTo(new TrialDesign.IncompleteBlocks(List.of("treatment"), false));
  }

  /**
   * The factorial of Yates on peas as base R carries it: half of the combinations in each block.
   */
  @Test
  void theConfoundedFactorialOnPeasIsIncompleteBlocks() {
    var blocks =
        List.of(
            "011 110 000 101",
            "100 111 001 010",
            "010 111 100 001",
            "100 111 001 010",
            "110 000 101 011",
            "101 110 011 000");
    var text = new StringBuilder("block,N,P,K,yield\n");
    for (int block = 0; block < blocks.size(); block++) {
      for (var plot : blocks.get(block).split(" ", -1)) {
        text.append(block + 1).append(',').append(String.join(",", plot.split(""))).append(",50\n");
      }
    }
    var columns =
        PlotColumns.withDefaults()
            .withFactor("N")
            .withFactor("P")
            .withFactor("K")
            .withResponse(TrialResponse.measure("yield", "lb"));

    var trial = FieldTrial.parse("npk", text.toString(), columns);

    assertThat(trial.plots()).hasSize(24);
    assertThat(trial.treatments()).hasSize(8).contains("N 0, P 1, K 1");
    assertThat(trial.review().design())
        .isEqualTo(new TrialDesign.IncompleteBlocks(List.of("N", "P", "K"), false));
    assertThat(trial.review().isSound()).isTrue();
  }

  @Test
  void aSplitPlotIsRecognisedByNeighboursAndByMainPlots() {
    var water = List.of("dry wet", "wet dry", "wet dry", "dry wet");
    var soap = List.of("a b c d", "c a d b", "d b a c", "b d c a");
    var rows = new ArrayList<String>();
    int plot = 1;
    for (int block = 0; block < 4; block++) {
      for (var main : water.get(block).split(" ", -1)) {
        for (var sub : soap.get((block + plot) % 4).split(" ", -1)) {
          rows.add(plot++ + "," + (block + 1) + "," + main + "," + sub + ",5");
        }
      }
    }
    var text = "plot,block,water,soap,larvae\n" + String.join("\n", rows);
    var columns = COLUMNS.withFactor("water").withFactor("soap");

    var trial = FieldTrial.parse("t", text, columns);

    var split = new TrialDesign.SplitPlot(List.of("water"), List.of("soap"), true);
    assertThat(trial.review().design()).isEqualTo(split);
    assertThat(only(trial.review(), Kind.DESIGN).text()).contains("with a chance of");
    var blocks =
        trial.withDesign(new TrialDesign.CompleteBlocks(List.of("water", "soap"))).review();
    assertThat(only(blocks, Kind.DESIGN_DISAGREES).severity()).isEqualTo(Severity.ERROR);
    assertThat(trial.withDesign(split).review().findings(Kind.DESIGN_DISAGREES)).isEmpty();
  }

  @Test
  void aDeclaredDesignThatTheDataDenyIsAnError() {
    var trial = FieldTrial.parse("t", HEADING + "1,1,a,1\n2,1,b,2\n3,2,b,1\n4,2,a,3\n", COLUMNS);

    var square = trial.withDesign(new TrialDesign.LatinSquare(List.of("treatment"))).review();
    var random =
        trial.withDesign(new TrialDesign.CompletelyRandomised(List.of("treatment"))).review();
    var other = trial.withDesign(new TrialDesign.CompleteBlocks(List.of("product"))).review();

    assertThat(only(square, Kind.DESIGN_DISAGREES).severity()).isEqualTo(Severity.ERROR);
    assertThat(only(random, Kind.DESIGN_DISAGREES).severity()).isEqualTo(Severity.WARNING);
    assertThat(only(other, Kind.DESIGN_DISAGREES).text()).contains("[product]", "[treatment]");
    assertThat(trial.review().presentation().toHtml()).contains("randomised complete blocks");
  }
}
