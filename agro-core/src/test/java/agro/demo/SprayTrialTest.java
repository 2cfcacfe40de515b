package agro.demo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;

import agro.sampling.SamplingUnit;
import agro.sampling.injury.MoneyPerArea;
import agro.trial.CorrectionHistory;
import agro.trial.FieldTrial;
import agro.trial.PlotColumns;
import agro.trial.TrialResponse;
import agro.trial.efficacy.EfficacyCourse;
import agro.trial.efficacy.EfficacyEvaluation;
import agro.trial.efficacy.EfficacyFormula;
import agro.trial.load.BlockRule;
import agro.trial.load.GradePrice;
import agro.trial.load.GradedPlot;
import agro.trial.load.GradedYield;
import agro.trial.load.LoadYieldLine;
import agro.trial.load.PestLoad;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** The trial of the vale, from its files to efficacies near the truth. */
class SprayTrialTest {

  private static FieldTrial read() {
    return FieldTrial.read(
        WriteDemoData.folder().resolve("trial-counts.csv"), PlotColumns.ofCounts("larvae"));
  }

  private static FieldTrial mended() {
    return read()
        .withRenamed(SprayTrial.MISSPELT, "C single full")
        .withCorrections(
            CorrectionHistory.read(WriteDemoData.folder().resolve("trial-corrections.csv")))
        .withControls("A untreated");
  }

  @Test
  void theTrialHoldsWhatTheTextNeeds() {
    var raw = read();
    assertThat(raw.controlCandidates()).containsExactly("A untreated");
    assertThat(raw.review().presentation().toText()).contains(SprayTrial.MISSPELT);
    var trial = mended();
    assertThat(trial.treatments()).containsExactlyElementsOf(SprayTrial.TREATMENTS);
    assertThat(trial.variable("larvae").on(SprayTrial.COUNTED.get(2)).missing()).hasSize(1);
    assertThat(trial.variable("larvae").on(SprayTrial.COUNTED.get(1)).missing()).isEmpty();
    var correction = trial.corrections().corrections().get(0);
    assertThat(correction.oldValue().orElseThrow())
        .isEqualTo(10 * correction.newValue().orElseThrow())
        .isGreaterThan(40);
  }

  @Test
  void efficaciesLieNearTheTruth() {
    var course =
        EfficacyCourse.of(
            mended(),
            "larvae",
            SprayTrial.TREATED,
            EfficacyEvaluation.withDefaults().with(EfficacyFormula.HENDERSON_TILTON));
    assertThat(course.dates()).hasSize(3);
    int held = 0;
    for (var treatment : course.treatments()) {
      var points = course.points(treatment);
      for (int i = 0; i < points.size(); i++) {
        double truth = 100 * SprayTrial.TRUE_EFFICACY.get(treatment).get(i);
        assertThat(points.get(i).percent().orElseThrow()).isCloseTo(truth, offset(25.0));
        held += points.get(i).limits().flatMap(l -> l.limits()).orElseThrow().covers(truth) ? 1 : 0;
      }
    }
    assertThat(held).isBetween(11, 15);
    assertThat(course.presentation().toText()).contains("E double full").doesNotContain("NaN");
  }

  private static FieldTrial harvest() {
    return FieldTrial.read(
        WriteDemoData.folder().resolve("trial-yield.csv"),
        PlotColumns.withDefaults()
            .withResponse(TrialResponse.measure("first_kg", "kg"))
            .withResponse(TrialResponse.measure("second_kg", "kg")));
  }

  @Test
  void larvaDaysCostWhatTheTruthSays() {
    var loads =
        PestLoad.withDefaults(SamplingUnit.of(SamplingUnit.Kind.PLANT))
            .evaluate(mended(), "larvae");
    assertThat(loads.notes()).anyMatch(note -> note.contains("bridged"));
    var plots = GradedPlot.of(harvest(), Map.of("first", "first_kg", "second", "second_kg"));
    var line =
        LoadYieldLine.of(
            loads, GradedPlot.yields(plots, List.of("first", "second")), BlockRule.WITHIN_BLOCKS);
    assertThat(line.points()).hasSize(30);
    double loss = SprayTrial.TRUE_LOSS_SHARE * SprayTrial.TRUE_YIELD;
    assertThat(line.yieldLoss().lossLimits(0.999).covers(loss)).isTrue();
    assertThat(line.line().intercept()).isCloseTo(SprayTrial.TRUE_YIELD, offset(2.0));
    var value =
        GradedYield.of(
                "A untreated",
                List.of(
                    GradePrice.perKilogram("first", 0.42, "EUR"),
                    GradePrice.perKilogram("second", 0.19, "EUR")))
            .withCost("E double full", MoneyPerArea.perHectare(168, "EUR"))
            .evaluate(plots);
    assertThat(value.treatment("E double full").netGain()).isPositive();
  }

  @Test
  void vialsHoldTwoStrainsWithDeadControls() {
    var lines = VialBook.table(OsmereVale.SEED).lines().skip(2).map(l -> l.split(",")).toList();
    assertThat(lines).hasSize(3 * 2 * (7 + 8));
    assertThat(lines)
        .allSatisfy(
            cells ->
                assertThat(
                        Integer.parseInt(cells[5])
                            + Integer.parseInt(cells[6])
                            + Integer.parseInt(cells[7]))
                    .isEqualTo(10));
    int controlDead =
        lines.stream().filter(c -> c[3].equals("0")).mapToInt(c -> Integer.parseInt(c[5])).sum();
    assertThat(controlDead).isBetween(1, 18);
    assertThat(lines.stream().filter(c -> c[3].equals("0")))
        .allSatisfy(cells -> assertThat(cells[6]).isEqualTo("0"));
  }
}
