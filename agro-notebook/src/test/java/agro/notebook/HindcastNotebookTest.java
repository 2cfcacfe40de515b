package agro.notebook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import agro.notebook.run.CodeView;
import agro.notebook.run.NotebookRun;
import agro.notebook.run.NotebookRunner;
import agro.season.LedgerScores;
import agro.working.Cell;
import agro.working.ResultTable;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * What the notebook on the worth of forecasts says, with one lead and few invented worlds. The
 * scores on the blackboard are exact (Gneiting and others 2005; Hersbach 2000; Gneiting and Raftery
 * 2007); figures of the vale are a regression on invented data.
 */
class HindcastNotebookTest {

  private static NotebookRun run;

  private static NotebookRun run(String leadDays, String seeds) {
    var run =
        NotebookRunner.standard()
            .withParameter("folder", "../demo-data/osmere-vale")
            .withParameter("leadDays", leadDays)
            .withParameter("seeds", seeds)
            .run(Path.of("..", "notebooks", "07-how-good-is-the-forecast.ipynb"));
    assertThat(run.failed()).isEmpty();
    return run;
  }

  @BeforeAll
  static void runTheNotebook() {
    run = run("28", "4");
  }

  @Test
  void scoresOnTheBlackboard() {
    assertNumbers("blackboard", 2.0, 0.0, 0.561404);
    assertNumbers("scores", 10.0 / 9, 1.03399925, 3.97769602, 16);
  }

  private static void assertNumbers(String check, double... expected) {
    List<?> values = run.checked(check, List.class);
    assertThat(values).hasSize(expected.length);
    for (var i = 0; i < expected.length; i++) {
      assertThat((double) values.get(i)).isCloseTo(expected[i], within(1e-6));
    }
  }

  @Test
  void whatCame() {
    var observed = run.checked("observed", ResultTable.class);
    assertThat(observed.rows()).hasSize(36);
    assertThat(observed.toText()).contains("no trap stood then", "2025-08-05");
  }

  @Test
  void elevenForecastsJudgeNothing() {
    var byLead = run.checked("by-lead", ResultTable.class);
    assertThat(byLead.rows()).hasSize(2);
    assertThat(number(byLead.rows().get(0).get(1))).isEqualTo(11);
    assertThat(number(byLead.rows().get(0).get(3))).isCloseTo(7.6, within(0.3));
    assertThat(byLead.toText()).contains("too few");
    assertThat(run.checked("skill", ResultTable.class).rows()).hasSize(2);
    assertThat(run.pictures()).containsOnlyKeys("hindcast", "skill");
  }

  @Test
  void theLedgerRemembers() {
    assertThat(run.checked("kept", String.class)).isEqualTo("6 dates added to forecasts.csv.");
    var scores = run.checked("ledger", LedgerScores.class);
    assertThat(scores.scored()).hasSize(3);
    assertThat(scores.notIdentified()).isEqualTo(3);
    assertThat(scores.biasDays()).isCloseTo(-13.3, within(1.0));
  }

  @Test
  void doubtsAreSaid() {
    assertThat(run.toPage(CodeView.FOLDED))
        .contains("Skill on invented data is a demonstration and never proof");
    assertThat(run.checked("worlds", ResultTable.class).rows()).hasSize(5);
  }

  /** The notebook as a reader runs it. */
  @Test
  @Tag("slow")
  void allLeadsAndMoreWorlds() {
    var whole = run("7 14 28 56", "40");
    assertThat(whole.checked("by-lead", ResultTable.class).rows()).hasSize(5);
    var worlds = whole.checked("worlds", ResultTable.class).rows();
    assertThat(number(worlds.get(0).get(4))).isBetween(75.0, 100.0);
    assertThat(number(worlds.get(1).get(4))).isBetween(75.0, 100.0);
    assertThat(number(worlds.get(2).get(6))).isGreaterThan(15);
    assertThat(number(worlds.get(3).get(6))).isGreaterThan(10);
  }

  private static double number(Cell cell) {
    return ((Cell.Figure) cell).value();
  }
}
