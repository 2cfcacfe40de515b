package agro.notebook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import agro.notebook.page.TrialPage;
import agro.notebook.run.NotebookRun;
import agro.notebook.run.NotebookRunner;
import agro.reading.DelimitedFormat;
import agro.reading.DelimitedText;
import agro.sampling.injury.YieldLoss;
import agro.trial.CorrectionHistory;
import agro.trial.TrialFinding;
import agro.trial.TrialReview;
import agro.trial.efficacy.EfficacyCourse;
import agro.trial.efficacy.EfficacyFormula;
import agro.trial.load.TrialValue;
import agro.working.ResultTable;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/**
 * The notebook of the spray trial says what it is meant to say. Its data are invented; its numbers
 * are held against R, whose script lies beside the table of its results.
 */
class SprayTrialNotebookTest {

  private static NotebookRun run;
  private static Map<String, Double> computed;

  @BeforeAll
  static void runTheNotebook() {
    run =
        NotebookRunner.standard()
            .withParameter("folder", "../demo-data/osmere-vale")
            .run(Path.of("..", "notebooks", "10-a-spray-trial.ipynb"));
    assertThat(run.failed()).isEmpty();
    computed = new HashMap<>();
    DelimitedText.read(
            Path.of("src", "test", "resources", "agro", "notebook", "spray-trial.csv"),
            DelimitedFormat.COMMA,
            List.of("name", "value"))
        .lines()
        .forEach(line -> computed.put(line.text("name"), line.number("value")));
  }

  private static double inR(String name) {
    assertThat(computed).containsKey(name);
    return computed.get(name);
  }

  private static double cell(ResultTable table, String row, String column) {
    for (int c = 0; c < table.columns().size(); c++) {
      if (table.columns().get(c).name().equals(column)) {
        for (var cells : table.rows()) {
          if (cells.get(0).printed().equals(row)) {
            return Double.parseDouble(cells.get(c).printed());
          }
        }
      }
    }
    throw new AssertionError("no cell " + row + ", " + column + " in " + table.toText());
  }

  @Test
  void theSlipsAreFoundAndMended() {
    var typed = run.checked("typed", TrialReview.class);
    assertThat(typed.isSound()).isFalse();
    assertThat(typed.findings(TrialFinding.Kind.PLOT_CHANGES))
        .singleElement()
        .asString()
        .contains("C single ful ", "Plot 206");
    assertThat(typed.findings(TrialFinding.Kind.MISSING_PLOT)).hasSize(1);
    assertThat(run.checked("named", String.class))
        .isEqualTo(
            "Sound: true; [A untreated, B single low, C single full, D double low, E double full,"
                + " F microbial]");
    var correction = run.checked("corrections", CorrectionHistory.class).corrections().get(0);
    assertThat(correction.oldValue()).hasValue(60);
    assertThat(correction.newValue()).hasValue(6);
    assertThat(correction.who()).isEqualTo("second reader");
  }

  /** Of 1000 honest tests at 5 %, 29 to 72 alarm with a chance of 0.998 (binomial). */
  @Test
  void plantsCryWolf() {
    var numbers = Pattern.compile("[0-9]+").matcher(run.checked("alarms", String.class));
    assertThat(numbers.results().map(found -> Integer.valueOf(found.group())))
        .satisfiesExactly(
            deals -> assertThat(deals).isEqualTo(1000),
            plots -> assertThat(plots).isBetween(29, 72),
            plants -> assertThat(plants).isBetween(140, 210));
  }

  @Test
  void theLogarithmClosesTheFan() {
    assertThat(run.checked("plain", ResultTable.class).toText())
        .contains("K² = 17.24", "P = 0.004");
    assertThat(inR("raw bartlett")).isCloseTo(17.24, within(0.005));
    assertThat(run.checked("checks", ResultTable.class).toText()).contains("W = 0.9859");
    assertThat(inR("log shapiro W")).isCloseTo(0.9859, within(5e-5));
  }

  @Test
  void theTestAndTheMeansAreThoseOfR() {
    assertThat(run.checked("sentence", String.class)).isEqualTo("F = 55.47; df = 5, 20; P < 0.001");
    assertThat(cell(run.checked("effects", ResultTable.class), "treatment", "F"))
        .isCloseTo(inR("log F"), within(0.005));
    var means = run.checked("means", ResultTable.class);
    for (var row : means.rows()) {
      var treatment = row.get(0).printed();
      assertThat(cell(means, treatment, "Mean"))
          .isCloseTo(inR("mean " + treatment), within(0.0006));
    }
    assertThat(means.rows().stream().map(row -> row.get(row.size() - 1).printed().strip()))
        .containsExactly("a", "b", "d", "c", "d", "b");
    var counted = run.checked("countmeans", ResultTable.class);
    assertThat(counted.rows().stream().map(row -> row.get(row.size() - 1).printed().strip()))
        .containsExactly("a", "b", "d", "c", "d", "b");
    assertThat(run.checked("counted", String.class)).startsWith("chi-squared = 314.68; df = 5");
  }

  @Test
  void theEfficacies() {
    var course = run.checked("course", EfficacyCourse.class);
    assertThat(course.dates().values())
        .allSatisfy(day -> assertThat(day.formula()).isEqualTo(EfficacyFormula.HENDERSON_TILTON));
    for (var treatment : course.treatments()) {
      assertThat(course.points(treatment).get(0).percent().orElseThrow())
          .isCloseTo(inR("henderson tilton day 3 " + treatment), within(1e-7));
    }
    assertThat(run.checked("lasting", String.class)).contains("C single full", "until day 12.6");
  }

  @Test
  void whatTheLarvaeCost() {
    var loss = run.checked("loss", YieldLoss.class);
    assertThat(loss.line().slope()).isCloseTo(inR("slope"), within(1e-10));
    assertThat(loss.lossLimits(0.95).low()).isCloseTo(-inR("slope high"), within(1e-9));
    assertThat(loss.lossLimits(0.95).high()).isCloseTo(-inR("slope low"), within(1e-9));
    var twice = run.checked("value", TrialValue.class).treatment("E double full");
    assertThat(twice.netGain()).isCloseTo(inR("net gain E double full"), within(1e-6));
    assertThat(twice.netLimits().orElseThrow().low()).isCloseTo(inR("net gain low"), within(1e-5));
    assertThat(twice.netLimits().orElseThrow().high())
        .isCloseTo(inR("net gain high"), within(1e-5));
  }

  @Test
  void thePageAndThePictures() {
    assertThat(run.checked("summary", ResultTable.class).rows()).hasSize(6);
    assertThat(run.summary()).contains("False alarms", "The trial in one table");
    var page = run.checked("report", TrialPage.class).html();
    assertThat(page).contains("Before you use these figures", "60 corrected to 6", "invented");
    assertThat(page.replaceAll("base64,[^\"]*", "")).doesNotContain("NaN", "null");
    assertThat(run.pictures())
        .containsOnlyKeys(
            "field", "residuals", "log-residuals", "means", "efficacy", "load", "yield");
  }
}
