package agro.trial.series;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.offset;
import static org.assertj.core.api.Assertions.withinPercentage;

import agro.ReferenceTable;
import agro.report.InputProblem;
import agro.trial.Assessment;
import agro.trial.FieldTrial;
import agro.trial.TrialPlot;
import agro.trial.TrialResponse;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;

class ScoreAnalysisTest {

  private static final String TREATMENTS = "ABCDEFGH";

  /** Rows of classes in scores-data.csv. */
  private static FieldTrial trial(String set) {
    var plots = new ArrayList<TrialPlot>();
    var scores = new ArrayList<Integer>();
    for (var row : ReferenceTable.read(ScoreAnalysisTest.class, "scores-data.csv")) {
      if (row.getField("set").equals(set)) {
        plots.add(
            TrialPlot.of("p" + plots.size(), row.getField("block"), row.getField("treatment")));
        scores.add(ReferenceTable.whole(row, "score"));
      }
    }
    return SeriesData.scores(plots, scores.stream().mapToInt(each -> each).toArray(), 1, 5);
  }

  private static ScoredTrial analysed(FieldTrial trial) {
    return ScoreAnalysis.withDefaults().evaluate(trial, "damage");
  }

  /** OrchardSprays and InsectSprays in classes by base R, scores.R. */
  @Test
  void rankTestsAgreeWithR() {
    var computed = SeriesData.computed("scores.csv");
    for (var set : List.of("orchard", "insects")) {
      var result = analysed(trial(set));
      assertThat(result.ranks().method())
          .isEqualTo(set.equals("orchard") ? RankMethod.FRIEDMAN : RankMethod.KRUSKAL_WALLIS);
      assertThat(result.ranks().statistic())
          .isCloseTo(computed.get(set + "/statistic"), withinPercentage(1e-7));
      assertThat(result.ranks().pValue())
          .isCloseTo(computed.get(set + "/chance"), withinPercentage(1e-6));
      for (var each : result.treatments()) {
        assertThat(each.meanRank().orElseThrow())
            .isCloseTo(computed.get(set + "/mean rank " + each.treatment()), offset(1e-9));
      }
    }
  }

  /** InsectSprays in classes by statsmodels, scores.py. */
  @Test
  void proportionalOddsAgreeWithStatsmodels() {
    var result = analysed(trial("insects"));
    var model = result.model().orElseThrow();
    for (var row : ReferenceTable.read(ScoreAnalysisTest.class, "odds.csv")) {
      double expected = ReferenceTable.number(row, "value");
      var name = row.getField("name");
      if (name.startsWith("share")) {
        var parts = name.split(" ", -1);
        double share = result.treatment(parts[1]).modelShares().get(Integer.parseInt(parts[2]) - 1);
        assertThat(share).as(name).isCloseTo(expected, offset(1e-5));
      } else {
        double value = name.equals("deviance") ? model.deviance() : model.treatments().statistic();
        assertThat(value).as(name).isCloseTo(expected, withinPercentage(1e-5));
      }
    }
    assertThat(result.treatment("A").modelLetters())
        .isEqualTo(result.treatment("B").modelLetters());
    assertThat(result.treatment("A").rankLetters())
        .doesNotContain(result.treatment("C").rankLetters());
  }

  @Test
  void aPlainMeanStandsBesideWithItsReasonAndNeverAlone() {
    var result = analysed(trial("insects"));
    assertThat(result.presentation().toText())
        .contains("beside only")
        .contains("steps between grades")
        .doesNotContain("NaN");
    assertThatThrownBy(() -> PlotFigures.of(trial("insects").variable("damage").onTheOnlyDay()))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("no distances");
    assertThatThrownBy(() -> DateSummary.mean().of(trial("insects"), "damage"))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("no distances");
  }

  /** Any growing function of the grades leaves ranks and model as they are. */
  @Test
  void numberingOfTheGradesOrderAndNamesChangeNothing() {
    var plain = trial("orchard");
    int[] other = {0, 10, 11, 40, 90};
    var lines = new ArrayList<Assessment>();
    for (var each : plain.assessments()) {
      var plot = each.plot();
      var renamed =
          TrialPlot.of(
              plot.name() + "x",
              "b" + plot.block(),
              "t" + (9 - TREATMENTS.indexOf(plot.treatment())));
      int grade = other[(int) each.value().getAsDouble() - 1];
      lines.add(Assessment.of(renamed, SeriesData.START, "damage", grade));
    }
    Collections.shuffle(lines, new Random(2));
    var changed =
        analysed(FieldTrial.of("x", List.of(TrialResponse.score("damage", 0, 90)), lines));
    var first = analysed(plain);
    assertThat(changed.ranks().statistic())
        .isCloseTo(first.ranks().statistic(), withinPercentage(1e-9));
    assertThat(changed.model().orElseThrow().deviance())
        .isCloseTo(first.model().orElseThrow().deviance(), withinPercentage(1e-5));
  }

  @Test
  void plantsGiveMediansAndSharesAndAreNoReplicates() {
    var lines = new ArrayList<Assessment>();
    int[][] plants = {{0, 1, 1, 2}, {1, 1, 2, 2}, {3, 4, 4, 5}, {2, 3, 3, 3}};
    for (int i = 0; i < plants.length; i++) {
      var plot = TrialPlot.of("" + i, "", i < 2 ? "soap" : "none");
      for (int j = 0; j < plants[i].length; j++) {
        lines.add(
            Assessment.of(plot, SeriesData.START, "damage", plants[i][j]).onSubSample("" + j));
      }
    }
    var trial = FieldTrial.of("x", List.of(TrialResponse.score("damage", 0, 5)), lines);
    var result = analysed(trial);
    assertThat(result.plots()).hasSize(4);
    assertThat(result.treatment("soap").median()).isEqualTo(1.25);
    assertThat(result.treatment("soap").shares().get(1)).isEqualTo(0.5);
    assertThat(result.ranks().pValue()).isGreaterThan(0.3);
    assertThat(result.notes().toString()).contains("the plot is the replicate");
    var shares = ScoreAnalysis.shareAtLeast(trial.variable("damage").onTheOnlyDay(), 2).values();
    assertThat(shares).containsExactly(25, 50, 100, 100);
    assertThat(result.presentation().toText()).doesNotContain("NaN");
  }

  @Test
  void blocksThatLackPlotsAreRankedByAnotherTest() {
    var lines = new ArrayList<>(trial("orchard").assessments());
    lines.remove(5);
    lines.remove(20);
    var result = analysed(FieldTrial.of("x", List.of(TrialResponse.score("damage", 1, 5)), lines));
    assertThat(result.ranks().method()).isEqualTo(RankMethod.SKILLINGS_MACK);
    assertThat(result.ranks().pValue()).isLessThan(0.001);
    assertThat(result.presentation().toText())
        .contains("No pairs were compared")
        .doesNotContain("NaN");
  }

  @Test
  void separatedScoresAreSaidPlainly() {
    var plots = new ArrayList<TrialPlot>();
    for (int i = 0; i < 9; i++) {
      plots.add(TrialPlot.of("" + i, "", "t" + i / 3));
    }
    var result = analysed(SeriesData.scores(plots, new int[] {1, 1, 1, 2, 3, 2, 5, 5, 5}, 1, 5));
    assertThat(result.presentation().toText()).doesNotContain("NaN").contains("no bound");
  }

  @Test
  void whatCannotBeAnalysedIsRefused() {
    var plots = new ArrayList<TrialPlot>();
    for (int i = 0; i < 4; i++) {
      plots.add(TrialPlot.of("" + i, "", "t" + i % 2));
    }
    for (var each :
        Map.of(
                "all plots with the score 3",
                new int[] {3, 3, 3, 3},
                "the score 7",
                new int[] {1, 2, 7, 3})
            .entrySet()) {
      assertThatThrownBy(() -> analysed(SeriesData.scores(plots, each.getValue(), 1, 5)))
          .isInstanceOf(InputProblem.class)
          .hasMessageContaining(each.getKey());
    }
    assertThatThrownBy(
            () -> analysed(SeriesData.scores(plots.subList(0, 2), new int[] {1, 2}, 1, 5)))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("no replicates");
  }
}
