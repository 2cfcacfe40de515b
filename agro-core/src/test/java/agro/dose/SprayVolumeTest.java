package agro.dose;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import agro.dose.sprayer.MeasuredPlot;
import agro.units.Area;
import agro.units.AreaUnit;
import agro.units.Volume;
import agro.units.VolumePerArea;
import agro.units.VolumePerAreaUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Spray volumes that are mistaken for others, and those that are floods. */
class SprayVolumeTest {

  /**
   * Misprint: a farm note equates 30 to 60 gal/ac with 500 to 1000 L/ha and with 5 L/m² (read). It
   * is 281 to 561 L/ha and 0.028 to 0.056 L/m²; 5 L/m² is 50 000 L/ha (computed here).
   */
  @Test
  void misprintGallonsPerAcreTakenForLitresPerSquareMetre() {
    var low = VolumePerArea.parse("30 gal (US)/ac");
    var high = VolumePerArea.parse("60 gal (US)/ac");
    assertThat(low.litresPerHectare()).isCloseTo(281, within(0.5));
    assertThat(high.litresPerHectare()).isCloseTo(561, within(0.5));
    assertThat(low.in(VolumePerAreaUnit.LITRE_PER_SQUARE_METRE)).isCloseTo(0.028, within(5e-4));
    assertThat(high.in(VolumePerAreaUnit.LITRE_PER_SQUARE_METRE)).isCloseTo(0.056, within(5e-4));
    var drench = SprayVolume.parse("5 L/m²");
    assertThat(drench.perArea().litresPerHectare()).isCloseTo(50_000, within(1e-9));
    assertThat(drench.finding().orElseThrow())
        .satisfies(
            finding -> {
              assertThat(finding.severity()).isEqualTo(Severity.WARNING);
              assertThat(finding.sentence()).contains("5 L on each square metre", "10 000 L/ha");
            });
  }

  /** The mistake shows where the volume is used, and half as much again as the label is refused. */
  @Test
  void aFloodIsSaidWithTheDoseThatItGives() {
    var limits =
        LabelLimits.of("Product A").with(DoseLimit.maximum(ProductPerArea.parse("1 L/ha")));
    var result =
        PerLitreDose.of(ProductPerSprayVolume.parse("1 mL/L"), SprayVolume.parse("5 L/m²"))
            .within(limits)
            .evaluate();
    assertThat(result.worst()).isEqualTo(Severity.ERROR);
    assertThat(result.findings())
        .anyMatch(found -> found.rule().equals("spray volume"))
        .anyMatch(found -> found.sentence().contains("over the maximum of 1 L/ha"));
    var half = PlannedUse.of(ProductPerArea.parse("1.5 L/ha"));
    assertThat(LimitCheck.check(limits, half).worst()).isEqualTo(Severity.ERROR);
  }

  @ParameterizedTest
  @ValueSource(strings = {"0.5 L/ha", "200 L/acre", "1000 gal (US)/ac", "10000 L/ha", "1 L/m²"})
  void volumesOfSpraysAreNotRemarkedOn(String text) {
    assertThat(SprayVolume.parse(text).finding()).isEmpty();
  }

  /** A calibration that comes to more than a millimetre of water says so on its page. */
  @Test
  void aCalibrationThatFloodsSaysSo() {
    var plot = MeasuredPlot.of(new Area(2), new Volume(10)).evaluate();
    assertThat(plot.presentation().toText()).contains("5 L on each square metre");
  }

  /** Drench of 300 mL/ac at 0.9 × 0.6 m: 7 494.18 plants to the acre (computed here). */
  @Test
  void plantsOfAnAcre() {
    double perAcre = Area.of(1, AreaUnit.ACRE).squareMetres() / (0.9 * 0.6);
    assertThat(perAcre).isCloseTo(7494.18, within(0.005));
    assertThat(SprayVolume.parse("200 L/ac").perPlant(10_000 / (0.9 * 0.6)).litres())
        .isCloseTo(200 / perAcre, within(1e-12));
  }
}
