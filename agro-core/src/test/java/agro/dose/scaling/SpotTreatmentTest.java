package agro.dose.scaling;

import static org.assertj.core.api.Assertions.assertThat;

import agro.dose.ActivePerArea;
import agro.dose.ActiveStrength;
import agro.dose.DoseBound;
import agro.dose.DoseFinding;
import agro.dose.DoseLimit;
import agro.dose.LabelLimits;
import agro.dose.ProductPerArea;
import agro.dose.ProductPerSprayVolume;
import agro.dose.Severity;
import agro.units.Area;
import agro.units.Volume;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Spots: what the ground gets from a dose per litre, beside the field and the label. */
class SpotTreatmentTest {

  private static final LabelLimits BARE = LabelLimits.of("Product A on leeks");
  private static final ProductPerSprayVolume ONE_PER_CENT = ProductPerSprayVolume.parse("1 % v/v");

  private static SpotTreatment spots(LabelLimits limits) {
    return SpotTreatment.of(ONE_PER_CENT, new Volume(15), new Area(300), limits);
  }

  /** The finding about one application; a maximum per season is reported as not recorded. */
  private static List<Severity> severities(SpotTreatmentResult result) {
    return result.findings().stream()
        .filter(finding -> finding.rule().equals("maximum dose per application, on treated ground"))
        .map(DoseFinding::severity)
        .toList();
  }

  @Test
  void onePerCentOnThreeHundredSquareMetres() {
    var result = spots(BARE).inField(new Area(10_000)).evaluate();

    Near.amount("H23 product", result.product(), "150 mL", 1e-12);
    Near.number("H23 spray", result.spray().perTreatedArea().litresPerHectare(), 500, 1e-12);
    Near.amount("H23 per treated ha", result.onSpots().perHectare(), "5 L", 1e-12);
    Near.amount("per field ha", result.perField().orElseThrow().perHectare(), "0.15 L", 1e-12);
    assertThat(result.working().toText()).contains("beside the treated area");
    Near.presented(result);
  }

  @Test
  void overTheMaximumIsAnErrorAlthoughTheFieldGetsLittle() {
    var limits = BARE.with(DoseLimit.maximum(ProductPerArea.parse("3 L/ha")));
    var result = spots(limits).inField(new Area(10_000)).evaluate();

    assertThat(severities(result)).containsExactly(Severity.ERROR);
    assertThat(result.findings().get(0).sentence()).contains("5 L/ha", "3 L/ha");
    Near.presented(result);
  }

  @Test
  void atTheMaximumIsAllowed() {
    var limits = BARE.with(DoseLimit.maximum(ProductPerArea.parse("5 L/ha")));
    assertThat(severities(spots(limits).evaluate())).containsExactly(Severity.NOTE);
  }

  @Test
  void notRecordedIsNeverNoLimit() {
    assertThat(severities(spots(BARE).evaluate())).containsExactly(Severity.WARNING);
    var recorded = BARE.with(DoseLimit.notRecorded(DoseBound.MAXIMUM));
    assertThat(severities(spots(recorded).evaluate())).containsExactly(Severity.WARNING);
    var none = BARE.with(DoseLimit.none(DoseBound.MAXIMUM));
    assertThat(severities(spots(none).evaluate())).containsExactly(Severity.NOTE);
  }

  @Test
  void limitInActiveIngredientNeedsTheStrength() {
    var limits = BARE.with(DoseLimit.maximum(ActivePerArea.parse("600 g ai/ha")));

    assertThat(spots(limits).evaluate().findings().get(0).severity()).isEqualTo(Severity.WARNING);
    var result = spots(limits).withStrength(ActiveStrength.parse("200 g/L")).evaluate();
    assertThat(result.findings().get(0).severity()).isEqualTo(Severity.ERROR);
    assertThat(result.findings().get(0).sentence()).contains("1000 g ai/ha");
  }
}
