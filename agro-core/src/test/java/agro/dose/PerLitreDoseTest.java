package agro.dose;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import agro.working.Caution;
import org.junit.jupiter.api.Test;

class PerLitreDoseTest {

  private static final ProductPerSprayVolume RATE = ProductPerSprayVolume.parse("1-2 mL/L");
  private static final LabelSprayVolume FIVE_HUNDRED = LabelSprayVolume.parse("500 L/ha");

  private static PerLitreDose at(String spray) {
    return PerLitreDose.of(RATE, SprayVolume.parse(spray)).labelAssumes(FIVE_HUNDRED);
  }

  private static LabelLimits upTo(String dose) {
    return LabelLimits.of("Product A, invented")
        .with(DoseLimit.maximum(ProductPerArea.parse(dose)))
        .with(DoseLimit.none(DoseBound.MINIMUM));
  }

  @Test
  void lowVolumeGivesEightTimesTooLittle() {
    var result = at("60 L/ha").within(upTo("1.2 L/ha")).evaluate();

    assertThat(1 / result.departure()).as("computed here").isCloseTo(8.3, within(0.05));
    assertThat(result.departure()).isCloseTo(0.12, within(1e-12));
    assertThat(result.dose()).hasToString("60 to 120 mL/ha");
    assertThat(result.labelDose().orElseThrow()).hasToString("500 to 1000 mL/ha");
    assertThat(result.worst()).isEqualTo(Severity.WARNING);
    assertThat(result.findings().get(0).sentence())
        .contains("8.3 times less (12 % of the label's)", "Nothing explains it");
    var strength = result.strengthForLabelDose().orElseThrow();
    assertThat(strength.perLitre().lowNumber() * 1000).isCloseTo(500 / 60.0, within(1e-9));
    assertThat(strength.perLitre().highNumber() * 1000).isCloseTo(1000 / 60.0, within(1e-9));
  }

  @Test
  void aLowVolumeMixAtHighVolumeIsOverTheMaximum() {
    var concentrate = ProductPerSprayVolume.parse("16 mL/L");

    var result =
        PerLitreDose.of(concentrate, SprayVolume.parse("500 L/ha"))
            .labelAssumes(LabelSprayVolume.parse("60 L/ha"))
            .within(upTo("1.2 L/ha"))
            .evaluate();

    assertThat(result.departure()).isCloseTo(8.33, within(5e-3));
    assertThat(result.worst()).isEqualTo(Severity.ERROR);
    assertThat(result.findings().get(0).sentence()).contains("over the maximum of 1.2 L/ha");
  }

  @Test
  void aSmallCropExplainsLessAndADenseOneMore() {
    var limits = upTo("3 L/ha");

    assertThat(at("300 L/ha").on(CropSize.SMALL).within(limits).evaluate().worst())
        .isEqualTo(Severity.NOTE);
    assertThat(at("300 L/ha").on(CropSize.DENSE).within(limits).evaluate().worst())
        .isEqualTo(Severity.WARNING);
    assertThat(at("800 L/ha").on(CropSize.DENSE).within(limits).evaluate().worst())
        .isEqualTo(Severity.NOTE);
    assertThat(at("800 L/ha").on(CropSize.SMALL).within(limits).evaluate().worst())
        .isEqualTo(Severity.WARNING);
    assertThat(at("800 L/ha").on(CropSize.AS_ON_LABEL).within(limits).evaluate().worst())
        .isEqualTo(Severity.WARNING);
  }

  @Test
  void noCropExplainsADoseOverTheMaximum() {
    var result = at("800 L/ha").on(CropSize.DENSE).within(upTo("1.2 L/ha")).evaluate();

    assertThat(result.worst()).isEqualTo(Severity.ERROR);
    assertThat(result.findings().get(0).sentence())
        .startsWith("The high end of 0.8 to 1.6 L/ha, over the maximum of 1.2 L/ha");
  }

  @Test
  void withinTheRangeOfTheLabelNothingDeparts() {
    var label = LabelSprayVolume.parse("400-600 L/ha");

    var result =
        PerLitreDose.of(RATE, SprayVolume.parse("600 L/ha"))
            .labelAssumes(label)
            .within(upTo("1.2 L/ha"))
            .evaluate();

    assertThat(result.departure()).isEqualTo(1);
    assertThat(result.worst()).isEqualTo(Severity.NOTE);
    assertThat(result.strengthForLabelDose()).isEmpty();
    assertThat(result.labelDose().orElseThrow()).hasToString("400 to 1200 mL/ha");
  }

  @Test
  void theTopOfARangeIsNamedAgainstItsBottom() {
    var rate = ProductPerSprayVolume.parse("0.3-2 mL/L");

    var result = PerLitreDose.of(rate, SprayVolume.parse("200 L/acre")).labelAssumesNone();

    assertThat(result.evaluate().findings())
        .anySatisfy(f -> assertThat(f.sentence()).contains("6.7 times the low end"))
        .anySatisfy(f -> assertThat(f.sentence()).contains("The label assumes no volume"));
  }

  @Test
  void whatIsNotRecordedIsAWarning() {
    var result = PerLitreDose.of(RATE, SprayVolume.parse("500 L/ha")).evaluate();

    assertThat(result.departure()).isNaN();
    assertThat(result.labelDose()).isEmpty();
    assertThat(result.worst()).isEqualTo(Severity.WARNING);
    assertThat(result.findings())
        .anySatisfy(f -> assertThat(f.sentence()).contains("label assumes is not recorded"))
        .anySatisfy(f -> assertThat(f.sentence()).contains("does not mean that there is no limit"));
  }

  @Test
  void theStepsArePrintedInFourFormsWithCautions() {
    var result = at("60 L/ha").evaluate();

    assertThat(result.cautions()).isEqualTo(Caution.all());
    assertThat(result.working().toText())
        .contains(
            "dose = amount per litre × spray volume", "1 to 2 mL/L spray × 60 L/ha", "0.12 times");
    assertThat(result.working().toMarkdown()).contains("60 L/ha");
    assertThat(result.working().toHtml()).contains("60 L/ha");
    assertThat(result.working().toLatex()).contains("60 L/ha");
    assertThat(result.presentation().toText()).contains("only if the label allows it");
  }
}
