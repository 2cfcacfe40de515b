package agro.notebook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import agro.notebook.run.NotebookRun;
import agro.notebook.run.NotebookRunner;
import agro.trial.bioassay.AverageDose;
import agro.trial.bioassay.BioassayData;
import agro.trial.bioassay.DiscriminatingDose;
import agro.trial.bioassay.DoseResponseFit;
import agro.trial.bioassay.SeriesComparison;
import agro.working.ResultTable;
import agro.working.Working;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/**
 * What the notebook on dose and response says. Rotenone: Lei and Sun (2018, read). Beetles: the
 * deviances of textbooks (Dobson; Agresti, from memory). The vials of Osmere Vale are invented;
 * their figures are a regression, and those of the reference strain miss the truth, which the page
 * says.
 */
class DoseResponseNotebookTest {

  private static NotebookRun run;

  @BeforeAll
  static void runTheNotebook() {
    run =
        NotebookRunner.standard()
            .withParameter("folder", "../demo-data/osmere-vale")
            .run(Path.of("..", "notebooks", "11-dose-response.ipynb"));
    assertThat(run.failed()).isEmpty();
  }

  private static String cell(String check, int row, int column) {
    return run.checked(check, ResultTable.class).rows().get(row).get(column).printed();
  }

  @Test
  void rotenoneAsPrinted() {
    var fit = run.checked("rotenone", DoseResponseFit.class);
    assertThat(fit.intercept()).isCloseTo(-2.887, within(5e-4));
    assertThat(fit.interceptStandardError()).isCloseTo(0.351, within(5e-4));
    assertThat(fit.slope()).isCloseTo(4.213, within(5e-4));
    assertThat(fit.slopeStandardError()).isCloseTo(0.481, within(5e-4));
    assertThat(fit.pearsonChiSquared()).isCloseTo(1.729, within(5e-4));
    assertThat(run.checked("steps", Working.class).toText()).contains("0.685338", "0.0499771");
  }

  /** Lei and Sun print 4.363 to 5.354 and 8.405 to 12.134. */
  @Test
  void thePrintedLimitsAreThoseOfTheObservedInformation() {
    assertThat(cell("information", 0, 3)).isEqualTo("4.364 to 5.354 mg/L");
    assertThat(cell("information", 2, 3)).isEqualTo("4.363 to 5.354 mg/L");
    assertThat(cell("information", 1, 3)).isEqualTo("8.399 to 12.16 mg/L");
    assertThat(cell("information", 3, 3)).isEqualTo("8.405 to 12.13 mg/L");
  }

  @Test
  void theBeetlesOfBliss() {
    assertThat(cell("beetles", 0, 1)).isEqualTo("11.23");
    assertThat(cell("beetles", 1, 1)).isEqualTo("10.12");
    assertThat(cell("beetles", 2, 1)).isEqualTo("3.45");
  }

  @Test
  void theVialsAndTheirEndPoint() {
    var vials = run.checked("vials", BioassayData.class);
    assertThat(vials.groups()).hasSize(90);
    assertThat(vials.series()).containsExactly("reference", "vale");
    assertThat(vials.days()).hasSize(3);
    assertThat(cell("ends", 0, 2)).isEqualTo("0.2425 µg/vial");
    assertThat(cell("ends", 4, 2)).isEqualTo("0.2856 µg/vial");
  }

  /** The page says that 0.30 is not in the limits, and that Abbott's are a fifth narrower. */
  @Test
  void whatThePageSaysOfTheLimits() {
    var reference = run.checked("reference", DoseResponseFit.class);
    var limits = reference.lethalDose(50).limits();
    assertThat(limits.covers(0.30)).isFalse();
    assertThat(reference.isHeterogeneityApplied()).isFalse();
    var days = run.checked("days", AverageDose.class);
    assertThat(days.overAllDaysLimits().covers(0.30)).isTrue();
    var theseDays = days.overTheseDays().limits();
    var allDays = days.overAllDaysLimits();
    assertThat((allDays.high() - allDays.low()) / (theseDays.high() - theseDays.low()))
        .isBetween(1.9, 2.3);
    assertThat(cell("ways", 2, 3)).isEqualTo("2.125 to 3.119 µg/vial");
    assertThat(cell("ways", 4, 3)).isEqualTo("1.889 to 3.133 µg/vial");
    assertThat(cell("rules", 0, 3)).isEqualTo(cell("rules", 1, 3));
  }

  @Test
  void twoStrains() {
    var strains = run.checked("strains", SeriesComparison.class);
    assertThat(strains.parallelism().p()).isBetween(0.005, 0.015);
    var vale = strains.fit("vale").lethalDose(50).limits();
    assertThat(vale.covers(2.4)).isTrue();
    var ratio = strains.lethalDoseRatio("vale", "reference", 50);
    assertThat(ratio.ratio()).isCloseTo(10.21, within(0.005));
    assertThat(ratio.limits().covers(8)).isTrue();
    var higher = strains.lethalDoseRatio("vale", "reference", 90);
    assertThat(higher.limits().low()).isBetween(10.8, 11.0);
    assertThat(run.checked("ratio", String.class)).contains("7.508 to 13.87");
    assertThat(run.summary()).contains("none of them is a rate for the field");
  }

  /** By the logit the LD99 is about a quarter higher than by the probit. */
  @Test
  void theTailBelongsToTheFormula() {
    double logit = Double.parseDouble(cell("links", 0, 4));
    double probit = Double.parseDouble(cell("links", 1, 4));
    assertThat(logit / probit).isBetween(1.2, 1.3);
    var telling = run.checked("telling", DiscriminatingDose.class);
    assertThat(telling.dose()).isCloseTo(2 * probit, within(2e-4));
    assertThat(telling.isBeyondTestedDoses()).isTrue();
    assertThat(run.pictures()).containsOnlyKeys("rotenone", "strains", "ratios");
  }
}
