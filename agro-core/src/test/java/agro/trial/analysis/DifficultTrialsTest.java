package agro.trial.analysis;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import agro.report.InputProblem;
import agro.stats.linear.Contrast;
import agro.stats.multiple.ComparisonMethod;
import agro.trial.FieldTrial;
import agro.trial.PlotColumns;
import agro.trial.TrialDesign;
import agro.trial.TrialResponse;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

/** Trials with little, odd or missing data: sentences instead of wrong numbers. Invented values. */
class DifficultTrialsTest {

  private static FieldTrial counts(String... lines) {
    return FieldTrial.parse(
        "t",
        "plot,block,treatment,larvae\n" + String.join("\n", lines),
        PlotColumns.ofCounts("larvae"));
  }

  private static FieldTrial shares(String... lines) {
    return FieldTrial.parse(
        "t",
        "plot,block,treatment,dead,of\n" + String.join("\n", lines),
        PlotColumns.withDefaults().withResponse(TrialResponse.countOutOf("dead", "of")));
  }

  private static TrialAnalysis larvae(FieldTrial trial) {
    return TrialAnalysis.of(trial, "larvae");
  }

  private static void hasNoGaps(AnalysedTrial found) {
    for (var form :
        List.of(
            found.presentation().toText(),
            found.presentation().toHtml(),
            found.presentation().toMarkdown(),
            found.meansTable().toCsv())) {
      assertThat(form).doesNotContain("NaN").doesNotContain("Infinity");
    }
  }

  @Test
  void oneReplicateGivesMeansAndSaysWhyNoTest() {
    var found = larvae(counts("1,,soap,3", "2,,oil,5", "3,,none,9")).evaluate();

    assertThat(found.sentence()).contains("one replicate");
    assertThat(found.treatmentMeans().mean("oil").mean()).hasValue(5);
    assertThat(found.treatmentMeans().notes()).anyMatch(note -> note.contains("No comparisons"));
    assertThat(found.treatmentMeans().mean("oil").mark()).isEmpty();
    hasNoGaps(found);
  }

  @Test
  void allZeroOrAllEqualHasNoVariance() {
    for (var value : List.of("0", "7")) {
      var found =
          larvae(counts("1,1,a," + value, "2,1,b," + value, "3,2,a," + value, "4,2,b," + value))
              .evaluate();

      assertThat(found.sentence()).contains("all observations are equal");
      assertThat(found.treatmentMeans().pairs()).isEmpty();
      hasNoGaps(found);
    }
  }

  @Test
  void treatmentsThatExplainEverythingHaveNoError() {
    var found = larvae(counts("1,,a,2", "2,,a,2", "3,,b,6", "4,,b,6")).evaluate();

    assertThat(found.sentence()).contains("no error variance");
    assertThat(found.checks()).allMatch(check -> check.sentence().startsWith("not made"));
    hasNoGaps(found);
  }

  @Test
  void oneTreatmentIsNoTrial() {
    assertThatThrownBy(() -> larvae(counts("1,,a,2", "2,,a,3")).evaluate())
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("one treatment");
  }

  @Test
  void logarithmOfZeroIsRefusedWithItsPlots() {
    var trial = counts("1,,a,0", "2,,a,3", "3,,b,4", "4,,b,0");

    assertThatThrownBy(() -> larvae(trial).with(Transformation.logarithm()).evaluate())
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("plot 1")
        .hasMessageContaining("plot 4")
        .hasMessageContaining("constant");
    assertThat(larvae(trial).with(Transformation.logarithm(1)).evaluate().sentence())
        .startsWith("F = ");
  }

  @Test
  void arcsineNeedsSharesAndARuleForTheirEnds() {
    var trial = shares("1,1,a,0,20", "2,1,b,12,20", "3,2,a,3,20", "4,2,b,20,20");
    var dead = TrialAnalysis.of(trial, "dead");

    assertThatThrownBy(() -> dead.with(Transformation.arcsine()).evaluate())
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("plot 1")
        .hasMessageContaining("plot 4");
    var found = dead.with(Transformation.arcsine(ExtremeShares.QUARTER)).evaluate();
    // Nought of 20 stands as a quarter of 20, 1.25 %.
    assertThat(found.plots().get(0).analysed())
        .isCloseTo(Math.toDegrees(Math.asin(Math.sqrt(0.0125))), within(1e-12));
    assertThat(found.plots().get(0).value()).isZero();
    assertThat(found.subject().unit()).isEqualTo("%");
    assertThatThrownBy(
            () -> larvae(counts("1,,a,1", "2,,b,2")).with(Transformation.arcsine()).evaluate())
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("arcsine of a count");
  }

  @Test
  void aTreatmentThatKillsAllGetsItsLettersByLikelihoodRatio() {
    var trial =
        counts(
            "1,1,none,31",
            "2,1,oil,12",
            "3,1,new,0",
            "4,2,none,25",
            "5,2,oil,9",
            "6,2,new,0",
            "7,3,none,40",
            "8,3,oil,14",
            "9,3,new,0",
            "10,4,none,28",
            "11,4,oil,15",
            "12,4,new,0");
    for (var route : List.of(AnalysisRoute.POISSON, AnalysisRoute.QUASI_POISSON)) {
      var found = larvae(trial).with(route).evaluate();

      var means = found.treatmentMeans();
      assertThat(means.mean("new").mean()).hasValue(0);
      assertThat(means.mean("new").limits().orElseThrow().high()).isBetween(0.1, 3.0);
      assertThat(means.mean("none").mark()).isEqualTo("a");
      assertThat(means.mean("oil").mark()).isEqualTo("b");
      assertThat(means.mean("new").mark()).isEqualTo("c");
      assertThat(means.pair("new", "none").pValue())
          .isLessThan(route == AnalysisRoute.POISSON ? 1e-6 : 1e-3);
      assertThat(means.notes()).anyMatch(note -> note.contains("likelihood ratio"));
      hasNoGaps(found);
      var dunnett = larvae(trial).with(route).against("none").evaluate().treatmentMeans();
      assertThat(dunnett.mean("new").mark()).isEqualTo("*");
      assertThat(dunnett.method()).startsWith("Holm");
    }
  }

  @Test
  void missingPlotsAreNamedAndMeansAdjusted() {
    var trial =
        counts(
            "1,1,a,10",
            "2,1,b,14",
            "3,1,c,",
            "4,2,a,12",
            "5,2,b,17",
            "6,2,c,21",
            "7,3,a,20",
            "8,3,b,24",
            "9,3,c,30");

    var found = larvae(trial).evaluate();

    assertThat(found.reasons()).anyMatch(reason -> reason.contains("plot 3 in block 1"));
    assertThat(found.subject().design()).isInstanceOf(TrialDesign.CompleteBlocks.class);
    var c = found.treatmentMeans().mean("c");
    // Yates's value of the missing plot: (3 C + 3 B - G) / (2 2) with C = 51, B = 24, G = 148.
    assertThat(c.mean().getAsDouble()).isCloseTo((51 + (153 + 72 - 148) / 4.0) / 3, within(1e-9));
    assertThat(c.arithmetic()).hasValue(25.5);
    assertThat(c.plots()).isEqualTo(2);
    assertThat(found.treatmentMeans().standardErrorOfDifference().orElseThrow().isOneNumber())
        .isFalse();
    assertThat(found.precision().blocking()).isEmpty();
    hasNoGaps(found);
    var ranks = larvae(trial).with(AnalysisRoute.RANKS).evaluate();
    assertThat(ranks.effects().get(0).note()).contains("Skillings-Mack");
    hasNoGaps(ranks);
  }

  @Test
  void plantsOfAPlotAreNoReplicates() {
    var lines =
        FieldTrial.parse(
            "t",
            """
            plot,block,treatment,plant,larvae
            1,1,a,1,2
            1,1,a,2,4
            2,1,b,1,7
            2,1,b,2,9
            3,2,a,1,3
            3,2,a,2,3
            4,2,b,1,9
            4,2,b,2,5
            """,
            PlotColumns.ofCounts("larvae").withSubSample("plant"));

    var found = larvae(lines).evaluate();

    assertThat(found.plots()).hasSize(4);
    assertThat(found.effect("residual").degreesOfFreedom()).isEqualTo(1);
    // A Poisson model takes the totals with the plants as exposure: means per plant.
    var poisson = larvae(lines).with(AnalysisRoute.POISSON).evaluate().treatmentMeans();
    assertThat(poisson.mean("a").mean().getAsDouble()).isBetween(2.0, 4.0);
    assertThat(poisson.mean("b").arithmetic()).hasValue(7.5);
  }

  @Test
  void routesThatDoNotFitAreRefused() {
    var larvae = larvae(counts("1,1,a,1", "2,1,b,2", "3,2,a,4", "4,2,b,9"));

    assertThatThrownBy(() -> larvae.with(AnalysisRoute.BINOMIAL).evaluate())
        .isInstanceOf(InputProblem.class);
    assertThatThrownBy(() -> larvae.with(AnalysisRoute.WELCH).evaluate())
        .isInstanceOf(InputProblem.class);
    assertThatThrownBy(() -> larvae.compared(ComparisonMethod.DUNNETT).evaluate())
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("against");
    assertThatThrownBy(
            () -> larvae.with(AnalysisRoute.RANKS).compared(ComparisonMethod.TUKEY).evaluate())
        .isInstanceOf(InputProblem.class);
    assertThatThrownBy(
            () -> larvae.with(AnalysisRoute.POISSON).with(Transformation.squareRoot()).evaluate())
        .isInstanceOf(InputProblem.class);
    assertThatThrownBy(() -> larvae.atLevel(5)).isInstanceOf(InputProblem.class);
    assertThatThrownBy(() -> Transformation.logarithm(-1)).isInstanceOf(InputProblem.class);
  }

  @Test
  void scoresAreRankedWithoutAsking() {
    var trial =
        FieldTrial.parse(
            "t",
            "plot,block,treatment,damage\n1,1,a,1\n2,1,b,3\n3,2,a,2\n4,2,b,5\n5,3,a,1\n6,3,b,4\n",
            PlotColumns.withDefaults().withResponse(TrialResponse.score("damage", 0, 5)));

    var found = TrialAnalysis.of(trial, "damage").evaluate();

    assertThat(found.subject().route()).isEqualTo(AnalysisRoute.RANKS);
    assertThat(found.reasons()).anyMatch(reason -> reason.contains("no distances"));
    assertThat(found.treatmentMeans().mean("b").mean()).hasValue(4);
  }

  @Test
  void aControlBesideAFactorialIsOneFactorWithContrasts() {
    var text = new StringBuilder("plot,block,product,dose,larvae\n");
    String[] cells = {"none,0", "oil,1", "oil,2", "soap,1", "soap,2"};
    int plot = 1;
    for (int block = 1; block <= 3; block++) {
      for (int cell = 0; cell < cells.length; cell++) {
        int larvae = 20 - 3 * cell + (block * cell) % 3;
        text.append(plot++).append(',').append(block).append(',').append(cells[cell]);
        text.append(',').append(larvae).append('\n');
      }
    }
    var trial =
        FieldTrial.parse(
            "t",
            text.toString(),
            PlotColumns.ofCounts("larvae").withFactor("product").withFactor("dose"));

    var found = larvae(trial).and(Contrast.of("control against all", 4, -1, -1, -1, -1)).evaluate();

    assertThat(found.reasons()).anyMatch(reason -> reason.contains("levels of one factor"));
    assertThat(found.means()).hasSize(1);
    assertThat(found.contrasts()).hasSize(1);
    assertThat(found.contrasts().get(0).degreesOfFreedom()).isEqualTo(8);
    assertThat(found.presentation().toText()).contains("control against all");
  }

  @Test
  @Timeout(20)
  void twoThousandRefitsOfATrial() {
    var found =
        TrialAnalysis.of(KnownTrials.sprays(), "insects")
            .with(Transformation.squareRoot())
            .resampled(2000, 7);
    var limits =
        TrialAnalysis.of(KnownTrials.sprays(), "insects")
            .with(Transformation.squareRoot())
            .evaluate()
            .treatmentMeans();
    for (var mean : found.means()) {
      var normal = limits.mean(mean.label()).limits().orElseThrow();
      assertThat(mean.limits().low()).isCloseTo(normal.low(), within(0.6));
      assertThat(mean.limits().high()).isCloseTo(normal.high(), within(0.6));
    }
    assertThat(found.mean("F").shareLargest()).isGreaterThan(0.5);
    assertThat(found.means().stream().mapToDouble(m -> m.shareSmallest()).sum())
        .isCloseTo(1, within(1e-9));
  }
}
