package agro.notebook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import agro.notebook.run.NotebookRun;
import agro.notebook.run.NotebookRunner;
import agro.sampling.dispersion.CommonExponent;
import agro.sampling.dispersion.DispersionIndices;
import agro.sampling.dispersion.NegativeBinomialFit;
import agro.sampling.dispersion.TaylorPowerLaw;
import agro.sampling.field.PlanWalk;
import agro.sampling.injury.InjuryLevel;
import agro.sampling.injury.InjuryLevelDistribution;
import agro.sampling.injury.ScoutingReach;
import agro.sampling.injury.StratifiedMean;
import agro.sampling.injury.TreatmentDecision;
import agro.sampling.injury.TreatmentVerdict;
import agro.sampling.injury.YieldLoss;
import agro.sampling.sequential.FieldClass;
import agro.sampling.sequential.PlanCurve;
import agro.sampling.sequential.PlanRobustness;
import agro.sampling.sequential.PlanValidation;
import agro.sampling.size.SampleSize;
import agro.working.ResultTable;
import agro.working.Sheet;
import agro.working.Working;
import java.nio.file.Path;
import java.util.Locale;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/**
 * The notebooks on scouting say what they are meant to say. Published figures stand beside their
 * source; those of Osmere Vale are worked out by hand where that can be done, and else a regression
 * on invented counts.
 */
class SamplingNotebookTest {

  private static final Path NOTEBOOKS = Path.of("..", "notebooks");

  private static NotebookRun plants;
  private static NotebookRun pays;

  private static NotebookRun run(String notebook) {
    var run =
        NotebookRunner.standard()
            .withParameter("folder", "demo-data/osmere-vale")
            .run(NOTEBOOKS.resolve(notebook));
    assertThat(run.failed()).isEmpty();
    return run;
  }

  @BeforeAll
  static void runBoth() {
    plants = run("08-how-many-plants.ipynb");
    pays = run("09-does-it-pay.ipynb");
  }

  /** Bliss and Fisher (1953): k about 1.0246; expected 69.49, 37.60 ... (values from memory). */
  @Test
  void theRedMitesOfBlissAndFisher() {
    var mites = plants.checked("mites", NegativeBinomialFit.class);
    assertThat(mites.sample().mean()).isCloseTo(1.1467, within(5e-5));
    assertThat(mites.byLikelihood()).isCloseTo(1.0246, within(5e-5));
    assertThat(mites.expected(0)).isCloseTo(69.49, within(0.005));
    assertThat(mites.expected(1)).isCloseTo(37.60, within(0.005));
  }

  @Test
  void theCountsOfTheVale() {
    assertThat(plants.checked("overview", ResultTable.class).rows()).hasSize(12);
    var dispersion = plants.checked("dispersion", DispersionIndices.class);
    assertThat(dispersion.sample().mean()).isCloseTo(178.0 / 24, within(1e-12));
    assertThat(dispersion.varianceToMean()).isCloseTo(9.64, within(0.01));
    var law = plants.checked("law", TaylorPowerLaw.class);
    assertThat(law.a()).isCloseTo(2.821, within(0.001));
    assertThat(law.b()).isCloseTo(1.676, within(0.001));
    assertThat(plants.checked("common", CommonExponent.class).byLikelihood())
        .isCloseTo(0.755, within(0.001));
  }

  /** n = a m^(b−2) / D² with m = 4.5 and D = 0.25; three quarters of a minute each. */
  @Test
  void thePlantsForAMean() {
    var law = plants.checked("law", TaylorPowerLaw.class);
    var quarter = plants.checked("quarter", SampleSize.class);
    assertThat(quarter.exact())
        .isCloseTo(law.a() * Math.pow(4.5, law.b() - 2) / 0.0625, within(1e-9));
    assertThat(quarter.units()).isEqualTo(28);
    assertThat(quarter.minutes().orElseThrow()).isCloseTo(21, within(1e-9));
  }

  /** d = ln(6 (0.76 + 3) / (3 (0.76 + 6))) and s = 0.76 ln(6.76 / 3.76) / d by hand. */
  @Test
  void theLinesAndWhatTheyDo() {
    double d = Math.log(6 * 3.76 / (3 * 6.76));
    assertThat(plants.checked("lines", Working.class).toText())
        .contains(String.format(Locale.ROOT, "%.6f", d))
        .contains(String.format(Locale.ROOT, "%.6f", 0.76 * Math.log(6.76 / 3.76) / d));
    var points = plants.checked("counted", PlanCurve.class).points();
    assertThat(points.get(2).chanceHigh()).isCloseTo(0.045, within(0.001));
    assertThat(points.get(4).chanceLow()).isCloseTo(0.084, within(0.001));
    assertThat(points.get(3).meanUnits()).isCloseTo(22.5, within(0.1));
    var uneven = plants.checked("wrongk", PlanRobustness.class).curves().get(1).points();
    assertThat(uneven.get(1).chanceLow()).isCloseTo(0.213, within(0.001));
    assertThat(plants.checked("walked", PlanValidation.class).points().get(0).chanceHigh())
        .isCloseTo(0.984, within(0.01));
  }

  @Test
  void theWalksAndTheSheet() {
    var walk = plants.checked("walk", PlanWalk.class);
    assertThat(walk.says()).isEqualTo(FieldClass.LOW);
    assertThat(walk.units()).isEqualTo(18);
    assertThat(walk.total()).isEqualTo(54);
    assertThat(plants.checked("hasty", String.class)).startsWith("Stop: high").contains("116");
    assertThat(plants.checked("weighed", StratifiedMean.class).density().mean())
        .isCloseTo(0.2 * 14 + 0.8 * 4.125, within(1e-9));
    assertThat(plants.checked("sheet", Sheet.class).title()).contains("cabbage aphid");
    assertThat(plants.pictures())
        .containsOnlyKeys(
            "mites",
            "counts",
            "stop-line",
            "plan",
            "what-the-plan-does",
            "wrong-k",
            "ways",
            "walk");
  }

  /**
   * Iowa State University IC-476 (1996) prints 6.00 dollars with a rounded loss; 0.054 × 150 × 3.50
   * × 0.8 − 15 = 7.68, and 15 / (525 × 0.04 × 0.8) = 0.892857 borers.
   */
  @Test
  void theCornBorersOfAPublishedSheet() {
    assertThat(pays.checked("borers", Working.class).toText()).contains("0.892857");
    assertThat(pays.checked("gain", String.class)).isEqualTo("7.68 dollars an acre");
  }

  /** ln(674 / 250) / 6.97 = 0.14229, McCarville et al. (2011) and Ragsdale et al. (2007). */
  @Test
  void theGrowthOfTheSoybeanAphid() {
    assertThat(pays.checked("growth", String.class)).contains("0.1423").contains("4.87");
  }

  /** 60 / (6000 × 0.0015 × 0.85), with e^(−0.6) as threshold, with 80 in place of 60. */
  @Test
  void theLevelsOfTheVale() {
    assertThat(pays.checked("aphids", InjuryLevel.class).level())
        .isCloseTo(60 / 7.65, within(1e-12));
    assertThat(pays.checked("environment", Working.class).toText()).contains("10.4575");
    assertThat(pays.checked("threshold", Working.class).toText()).contains("4.3044");
  }

  /** 42 + 210 + 273 + 126 by hand; the line by R's lm, 35 / (210 × 0.00074361 × 0.9). */
  @Test
  void theInsectDays() {
    assertThat(pays.checked("days", Working.class).toText()).contains("651 pest-days");
    var loss = pays.checked("loss", YieldLoss.class);
    assertThat(loss.tonnesLostPerPest()).isCloseTo(0.0007436087341, within(1e-12));
    assertThat(loss.line().intercept()).isCloseTo(4.6241529175342, within(1e-9));
    assertThat(pays.checked("indays", Working.class).toText()).contains("249.036");
  }

  @Test
  void theChanceThatItPays() {
    var levels = pays.checked("levels", InjuryLevelDistribution.class);
    assertThat(levels.quantile(0.5)).isCloseTo(4.19, within(0.03));
    var decision = pays.checked("decision", TreatmentDecision.class);
    assertThat(decision.chanceOfPaying()).isCloseTo(0.84, within(0.01));
    assertThat(decision.verdict()).isEqualTo(TreatmentVerdict.LOOK_ON);
    assertThat(pays.summary()).contains("Sand Lane plot 6");
    assertThat(pays.checked("verdicts", ResultTable.class).rows()).hasSize(12);
    assertThat(pays.pictures()).containsOnlyKeys("chance", "regions");
  }

  /** Knowing the loss for each aphid narrows the threshold most, the cost of treating little. */
  @Test
  void whatIsWorthKnowing() {
    var known = pays.checked("known", ResultTable.class);
    double[] width =
        known.rows().stream()
            .mapToDouble(row -> Double.parseDouble(row.get(1).printed()))
            .toArray();
    assertThat(width[3]).isLessThan(width[1]);
    assertThat(width[1]).isLessThan(width[4]);
    assertThat(width[4]).isLessThan(width[0]);
  }

  /** ln 20 / 0.002 = 1497.9. */
  @Test
  void whatScoutingCannotSee() {
    var reach = pays.checked("reach", ScoutingReach.class);
    assertThat(reach.unitsNeeded()).isEqualTo(1498);
    assertThat(reach.canDecide()).isFalse();
  }
}
