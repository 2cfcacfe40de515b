package agro.dose.tank;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import agro.dose.DoseLimit;
import agro.dose.LabelLimits;
import agro.dose.LabelSprayVolume;
import agro.dose.ProductPerArea;
import agro.dose.ProductPerSprayVolume;
import agro.dose.Severity;
import agro.dose.SprayStrengthLimit;
import agro.dose.SprayVolume;
import agro.units.LandUnit;
import agro.units.QuantityStyle;
import agro.units.UnreadableQuantity;
import agro.units.Volume;
import agro.working.Caution;
import org.junit.jupiter.api.Test;

/** Three partners over an invented field of Osmere Vale, from the labels to the sheet. */
class TankMixScenarioTest {

  @Test
  void threePartnersOverAField() {
    var mix = OsmereVale.threePartners().evaluate();
    assertThat(mix.numberOfLoads()).isEqualTo(3);
    assertThat(mix.refills()).isEqualTo(2);
    assertThat(mix.made().litres()).isCloseTo(1120, within(1e-9));
    assertThat(mix.totalOf("Product A").lowNumber()).isCloseTo(4.48, within(1e-9));
    assertThat(mix.totalOf("Product A").highNumber()).isCloseTo(5.6, within(1e-9));
    assertThat(mix.totalOf("Product B").highNumber()).isCloseTo(0.746666667, within(1e-9));
    assertThat(mix.totalOf("Product C").highNumber()).isCloseTo(0.56, within(1e-9));
    assertThat(mix.water().low().litres()).isCloseTo(1120 - 5.6 - 0.56, within(1e-9));
    assertThat(mix.findings()).noneMatch(finding -> finding.severity() == Severity.ERROR);
    assertThat(mix.purchases())
        .extracting(purchase -> purchase.leastWaste().printPacks())
        .containsExactly("1 × 5 L", "1 × 5 L + 1 × 1 L", "3 × 250 g");
    assertThat(mix.sequence().steps())
        .flatExtracting(MixingSequence.Placed::products)
        .containsExactly("Product B", "Product A", "Product C");
  }

  @Test
  void theSheetHoldsWhatAGrowerNeeds() {
    var mix = OsmereVale.threePartners().evaluate();
    var page = mix.presentation();
    assertThat(page.toText())
        .contains("What goes into each load", "How to measure it", "Order of mixing", "What to buy")
        .contains("1.56 to 1.95 L", "266.7 g", "330 L", "Left over", "labels come first")
        .contains(Caution.HEADING);
    assertThat(page.toMarkdown()).contains("| 3 ", "4.48 to 5.6 L");
    assertThat(page.toHtml()).contains("<table", "1.32 to 1.65 L");
    var working = mix.working();
    assertThat(working.cautions()).isEqualTo(Caution.all());
    assertThat(working.toLatex()).contains("1110").contains("Product C");
    assertThat(working.toText())
        .contains("= 3.7 ha × 300 L/ha", "= 1110 L", "= 400 L − 10 L", "= 390 L ÷ 300 L/ha")
        .contains("the same")
        .doesNotContain("not the same");
    assertThat(working.steps())
        .allSatisfy(step -> assertThat(step.result()).doesNotContain("NaN", "not known"));
  }

  @Test
  void textFromDataIsEscaped() {
    var mix =
        TankMixPlan.of(
                SprayedField.parse("<b>Mill & Piece</b>", "1 ha"),
                SprayVolume.parse("200 L/ha"),
                SprayTank.mounted(Volume.parse("400 L")))
            .with(TankPartner.of("<i>A</i>", "1 L/ha"))
            .evaluate();
    assertThat(mix.presentation().toHtml()).doesNotContain("<b>Mill", "<i>A").contains("&lt;i&gt;");
  }

  /** Over the maximum of a label nothing is printed that could be measured out. */
  @Test
  void overTheLabelTheTableIsWithheld() {
    var mix =
        OsmereVale.threePartners()
            .with(
                TankPartner.of("Product D", "2-3 L/ha")
                    .withLimits(
                        LabelLimits.of("Product D")
                            .with(DoseLimit.maximum(ProductPerArea.parse("2.5 L/ha")))))
            .evaluate();
    assertThat(mix.findings().get(0).severity()).isEqualTo(Severity.ERROR);
    assertThat(mix.findings().get(0).sentence()).contains("high end");
    var text = mix.presentation().toText();
    assertThat(text).contains("Do not fill the sprayer");
    assertThat(text)
        .contains(Caution.HEADING)
        .doesNotContain(
            "What goes into each load", "How to measure it", "in load 1", "What to buy");
  }

  /** The dose per hectare is within the label, the spray in a low volume is too strong. */
  @Test
  void strengthOfTheSprayIsCheckedToo() {
    var partner =
        TankPartner.of("Product D", "1 L/ha")
            .withLimits(
                LabelLimits.of("Product D")
                    .with(DoseLimit.maximum(ProductPerArea.parse("1 L/ha")))
                    .with(SprayStrengthLimit.maximum(ProductPerSprayVolume.parse("5 mL/L spray"))));
    var plan =
        TankMixPlan.of(
            SprayedField.parse("Mill Piece", "1 ha"),
            SprayVolume.parse("60 L/ha"),
            SprayTank.knapsack(Volume.parse("15 L")));
    assertThat(plan.with(partner).evaluate().findings())
        .anySatisfy(
            finding -> {
              assertThat(finding.severity()).isEqualTo(Severity.ERROR);
              assertThat(finding.rule()).contains("strength of the spray");
            });
  }

  /**
   * 500 L/ha assumed, 60 L/ha sprayed: the field gets an eighth of the dose, and the mix says so.
   */
  @Test
  void perLitreDoseInALowVolumeIsSaid() {
    var partner =
        TankPartner.of("Product D", "1 mL/L spray")
            .withLabel(
                PartnerLabel.of(LabelLimits.of("Product D"))
                    .assuming(LabelSprayVolume.parse("500 L/ha")));
    var mix =
        TankMixPlan.of(
                SprayedField.parse("Mill Piece", "1 ha"),
                SprayVolume.parse("60 L/ha"),
                SprayTank.knapsack(Volume.parse("15 L")))
            .with(partner)
            .evaluate();
    assertThat(mix.findings())
        .anySatisfy(
            finding -> {
              assertThat(finding.severity()).isEqualTo(Severity.WARNING);
              assertThat(finding.sentence()).contains("8.3 times");
            });
  }

  /** 195 mL is the maximum; the nearest mark of the cylinder is 196 mL. */
  @Test
  void aMarkBeyondTheLimitIsSaid() {
    var partner =
        TankPartner.of("Product D", "195 mL/ha")
            .withLimits(
                LabelLimits.of("Product D")
                    .with(DoseLimit.maximum(ProductPerArea.parse("195 mL/ha"))));
    var plan =
        TankMixPlan.of(
                SprayedField.parse("Mill Piece", "1 ha"),
                SprayVolume.parse("200 L/ha"),
                SprayTank.mounted(Volume.parse("200 L")))
            .with(partner);
    assertThat(plan.evaluate().findings())
        .noneMatch(finding -> finding.severity() == Severity.ERROR)
        .anySatisfy(
            finding ->
                assertThat(finding.sentence())
                    .startsWith("196 mL at the nearest mark for load 1")
                    .contains("Read the mark below it"));
  }

  @Test
  void theFieldKeepsTheUnitItWasWrittenIn() {
    var field = SprayedField.parse("River Strip", "3 bigha (West Bengal)");
    assertThat(field.land()).isEqualTo(LandUnit.BIGHA_WEST_BENGAL);
    assertThat(field.printArea(QuantityStyle.METRIC)).isEqualTo("3 bigha (West Bengal), 0.4013 ha");
    assertThatThrownBy(() -> SprayedField.parse("River Strip", "3 bigha"))
        .isInstanceOf(UnreadableQuantity.class)
        .hasMessageContaining("West Bengal");
  }

  @Test
  void limitsThatNobodyRecordedAreAWarning() {
    var mix =
        TankMixPlan.of(
                SprayedField.parse("Mill Piece", "1 ha"),
                SprayVolume.parse("200 L/ha"),
                SprayTank.mounted(Volume.parse("400 L")))
            .with(TankPartner.of("Product A", "1 L/ha"))
            .evaluate();
    assertThat(mix.findings().get(0).severity()).isEqualTo(Severity.WARNING);
    assertThat(mix.findings().get(0).sentence()).startsWith("Not recorded.");
  }

  @Test
  void printedPerLocalUnitOfLandAndInOtherSystems() {
    var plan =
        TankMixPlan.of(
                SprayedField.of("River Strip", 3, LandUnit.BIGHA_WEST_BENGAL),
                SprayVolume.parse("200 L/ac"),
                SprayTank.knapsack(Volume.parse("15 L")))
            .with(TankPartner.of("Product A", "250-300 mL/ac"));
    var text = plan.evaluate().presentation().toText();
    assertThat(text)
        .contains("3 bigha (West Bengal), 0.4013 ha")
        .contains("66.12 L/bigha (West Bengal)")
        .contains("What goes into each pump", "1 to 13");
    var us = plan.printedIn(QuantityStyle.US).evaluate().presentation().toText();
    assertThat(us).contains("fl oz (US)", "gal (US)");
  }
}
