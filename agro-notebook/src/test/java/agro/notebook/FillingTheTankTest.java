package agro.notebook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import agro.dose.LabelEntry;
import agro.dose.LabelLimits;
import agro.dose.LimitCheckResult;
import agro.dose.ProductAmount;
import agro.dose.Severity;
import agro.dose.sprayer.CalibratedVolume;
import agro.dose.tank.FillingSheet;
import agro.dose.tank.KnapsackJob;
import agro.dose.tank.LeftoverCheck;
import agro.dose.tank.MixingSequence;
import agro.dose.tank.TankLoad;
import agro.dose.tank.TankMix;
import agro.notebook.run.CodeView;
import agro.notebook.run.NotebookRun;
import agro.notebook.run.NotebookRunner;
import agro.units.WorkTimeUnit;
import agro.working.Caution;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/**
 * The notebook on filling the tank says what hand arithmetic says. All rates, prices and catches
 * are invented; the expected figures are worked out in the comments, with 1 acre = 4046.8564224 m².
 */
class FillingTheTankTest {

  private static final Path NOTEBOOK = Path.of("..", "notebooks", "04-filling-the-tank.ipynb");
  private static final double ACRE = 0.40468564224;

  private static NotebookRun run;

  @BeforeAll
  static void runTheNotebook() {
    run = NotebookRunner.standard().run(NOTEBOOK);
    assertThat(run.failed()).isEmpty();
  }

  private static TankMix mix(int field) {
    return run.checked("sheet", FillingSheet.class).jobs().get(field).mix();
  }

  private static void isRange(ProductAmount amount, double low, double high) {
    assertThat(amount.lowNumber()).isCloseTo(low, within(1e-9));
    assertThat(amount.highNumber()).isCloseTo(high, within(1e-9));
  }

  /** 0.72 L on 25 m × 1.2 m = 240 L/ha; s = 0.02 L, u = 0.02/(√3 × 0.72), t(2 df) = 4.3027. */
  @Test
  void theKnapsackPutsOut240Litres() {
    var walk = run.checked("walk", CalibratedVolume.class);
    assertThat(walk.perFieldArea().perArea().litresPerHectare()).isCloseTo(240, within(1e-9));
    assertThat(walk.relativeHalfWidth(0.95).getAsDouble())
        .isCloseTo(4.30265 * 0.02 / (Math.sqrt(3) * 0.72), within(1e-6));
  }

  /** 12 catches with a sum of 7.2 L in 30 s are 14.4 L/min; 600 × 14.4 ÷ (7.2 km/h × 6 m) = 200. */
  @Test
  void theBoomPutsOut200Litres() {
    var boom = run.checked("boom", CalibratedVolume.class);
    assertThat(boom.perFieldArea().perArea().litresPerHectare()).isCloseTo(200, within(1e-9));
    assertThat(run.pictures()).containsOnlyKeys("catch-test");
  }

  /**
   * 1.5 acre × 240 L/ha = 145.687 L = 9 pumps of 15 L and one of 10.687 L; a pump is enough for
   * 0.0625 ha, so it takes 0.0625 ÷ 0.40468564 × 250 to 300 mL.
   */
  @Test
  void upperCroftTakesNineFullPumpsAndAPart() {
    var croft = mix(0);
    assertThat(croft.loads()).extracting(TankLoad::count).containsExactly(9, 1);
    var spray = 1.5 * ACRE * 240;
    assertThat(croft.partLoad().orElseThrow().made().litres()).isCloseTo(spray - 135, within(1e-9));
    isRange(croft.loads().get(0).amountOf("Product A"), 0.25 * 0.0625 / ACRE, 0.30 * 0.0625 / ACRE);
    isRange(croft.loads().get(0).amountOf("Product B"), 0.015, 0.015);
    isRange(croft.totalOf("Product A"), 0.375, 0.45);
    assertThat(run.checked("tooStrong", String.class)).isEqualTo("1.4 times the dose");
    assertThat(15 / (spray - 135)).isCloseTo(1.4036, within(1e-4));
  }

  /** 145.687 ÷ 15 = 9.7125 pumps at 18 min are 2.9137 h; per acre 97.1246 ÷ 15 = 6.475 pumps. */
  @Test
  void theDaysWorkInPumps() {
    var pumps = run.checked("pumps", KnapsackJob.class);
    assertThat(pumps.pumps()).isCloseTo(1.5 * ACRE * 16, within(1e-9));
    assertThat(pumps.fillings()).isEqualTo(10);
    assertThat(pumps.hours()).isCloseTo(1.5 * ACRE * 16 * 0.3, within(1e-9));
    assertThat(pumps.plan().pumps().number()).isCloseTo(16 * ACRE, within(1e-9));
  }

  /**
   * 3.7 ha × 200 L/ha = 740 L, with 8 L that stay in the sprayer 748 L: 400 L and 348 L. Spray for
   * 2 ha takes 360 to 440 g of C; 748 L are enough for 3.74 ha.
   */
  @Test
  void millFieldTakesTwoLoadsOfThreePartners() {
    var mill = run.checked("mill", TankMix.class);
    assertThat(mill.loads()).extracting(load -> load.made().litres()).hasSize(2);
    assertThat(mill.loads().get(1).made().litres()).isCloseTo(348, within(1e-9));
    isRange(mill.loads().get(0).amountOf("Product C"), 0.36, 0.44);
    isRange(mill.totalOf("Product A"), 0.25 * 3.74 / ACRE, 0.30 * 3.74 / ACRE);
    isRange(mill.totalOf("Product B"), 0.748, 0.748);
    assertThat(mill.sequence().steps())
        .flatExtracting(MixingSequence.Placed::products)
        .containsExactly("Product C", "Product A", "Product B");
    assertThat(mill.findings()).noneMatch(finding -> finding.severity() == Severity.ERROR);
  }

  /** 0.8 ha × 80 L/ha = 64 L in two loads of 32 L; 40 % of 180 to 220 g/ha on 0.8 ha. */
  @Test
  void sandLaneIsSprayedInBands() {
    var lane = mix(2);
    assertThat(lane.numberOfLoads()).isEqualTo(2);
    assertThat(lane.loads().get(0).made().litres()).isCloseTo(32, within(1e-9));
    isRange(lane.totalOf("Product C"), 0.0576, 0.0704);
    var onBands = run.checked("onBands", LimitCheckResult.class);
    assertThat(onBands.findings().get(0).sentence()).contains("180 to 220 g/ha");
  }

  /**
   * Boom 2 m/s × 6 m × 0.6 = 7.2 m²/s, so 37 000 m² take 1.427 h; bands 1.25 m/s × 2 m × 0.6 = 1.5
   * m²/s, so 8000 m² take 1.481 h.
   */
  @Test
  void hoursOfTheTwoDrivenSprayers() {
    var jobs = run.checked("sheet", FillingSheet.class).jobs();
    assertThat(jobs.get(1).time().orElseThrow().in(WorkTimeUnit.HOUR))
        .isCloseTo(37_000 / 7.2 / 3600, within(1e-9));
    assertThat(jobs.get(2).time().orElseThrow().in(WorkTimeUnit.HOUR))
        .isCloseTo(8_000 / 1.5 / 3600, within(1e-9));
  }

  /**
   * A: 450 mL + 2772.5 mL = 3222.5 mL, bought as 3250 mL for 3 × 31 + 9.50. C: 822.8 g + 70.4 g =
   * 893.2 g, as 900 g for 48 + 4 × 14 or as 1 kg for 2 × 48.
   */
  @Test
  void theSheetIsWholeAndCompact() {
    var text = run.summary().replace('\u00a0', ' ');
    assertThat(text)
        .contains("Upper Croft", "Mill Field", "Sand Lane", "pumps 1 to 9", "10.7 L", "348 L")
        .contains("3 × 1 L + 1 × 250 mL", "102.50 crowns", "1 × 500 g + 4 × 100 g")
        .contains("104.00 crowns", "2 × 500 g", "96.00 crowns", "About 2.9 h", Caution.HEADING)
        .contains("Look first (Upper Croft, Mill Field): Product B: maximum dose");
    assertThat(text.lines()).hasSizeLessThan(90);
    assertThat(run.toPage(CodeView.FOLDED)).contains("<section class=\"step own-page\">");
  }

  @Test
  void aLimitThatNobodyRecordedIsNotNoLimit() {
    var limits = run.checked("limitsB", LabelLimits.class);
    assertThat(limits.limits().get(0).entry()).isInstanceOf(LabelEntry.NotRecorded.class);
    assertThat(run.checked("limits", LimitCheckResult.class).worst()).isEqualTo(Severity.NOTE);
  }

  /** 300 mL on 1000 m² is 3 L/ha, 4.05 times the maximum of 741 mL/ha. */
  @Test
  void overTheMaximumNothingIsPrinted() {
    var slip = run.checked("slip", FillingSheet.class);
    assertThat(slip.fieldTable(slip.jobs().get(0))).isEmpty();
    assertThat(slip.shopping()).isEmpty();
    assertThat(slip.presentation().toText())
        .contains("do not fill the sprayer", "over the maximum")
        .doesNotContain("In this order");
  }

  /** 748 L made up less 60 L left are 688 L on 3.7 ha: 185.95 L/ha, 7 % below 200. */
  @Test
  void whatIsLeftTellsTheDose() {
    assertThat(run.checked("left", LeftoverCheck.class).sentence()).contains("7.03 % less");
  }

  @Test
  void anotherFieldAndAnotherRate() {
    var other =
        NotebookRunner.standard()
            .withParameter("upperCroft", "2 bigha (West Bengal)")
            .withParameter("rateA", "200-250 mL/acre")
            .run(NOTEBOOK);
    assertThat(other.failed()).isEmpty();
    assertThat(other.summary()).contains("bigha (West Bengal)");
  }
}
