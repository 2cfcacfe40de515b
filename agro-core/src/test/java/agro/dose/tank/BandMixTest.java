package agro.dose.tank;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import agro.dose.DoseFinding;
import agro.dose.DoseLimit;
import agro.dose.LabelLimits;
import agro.dose.LabelSprayVolume;
import agro.dose.PastUse;
import agro.dose.PlannedUse;
import agro.dose.ProductPerArea;
import agro.dose.Severity;
import agro.dose.SprayVolume;
import agro.report.InputProblem;
import agro.units.Area;
import agro.units.Length;
import agro.units.Volume;
import java.time.LocalDate;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Test;

/**
 * Bands of 0.25 m on rows of 0.75 m: a third of 3 ha is 1 ha of treated ground. The sprayer puts
 * out 100 L/ha of field, which is 300 L/ha of treated ground. All rates are invented.
 */
class BandMixTest {

  private static final SprayedField WHOLE = SprayedField.parse("Long Piece", "3 ha");
  private static final SprayedField BANDS =
      WHOLE.inBands(Length.parse("0.25 m"), Length.parse("0.75 m"));

  private static TankMix on(SprayedField field, TankPartner... partners) {
    var plan =
        TankMixPlan.of(
            field, SprayVolume.parse("100 L/ha"), SprayTank.mounted(Volume.parse("400 L")));
    for (var partner : partners) {
      plan = plan.with(partner);
    }
    return plan.evaluate();
  }

  private static TankPartner atMostOneLitre(String rate) {
    return TankPartner.of("Product A", rate)
        .withLimits(
            LabelLimits.of("Product A").with(DoseLimit.maximum(ProductPerArea.parse("1 L/ha"))));
  }

  private static List<DoseFinding> errors(TankMix mix) {
    return mix.findings().stream().filter(f -> f.severity() == Severity.ERROR).toList();
  }

  /** 0.9 L/ha on 1 ha of bands is 0.9 L for the field, 0.3 L/ha of field, in 300 L of spray. */
  @Test
  void aThirdOfTheFieldTakesAThirdOfTheProduct() {
    var mix = on(BANDS, atMostOneLitre("0.9 L/ha treated area"));
    assertThat(BANDS.treatedArea().squareMetres()).isCloseTo(10_000, within(1e-9));
    assertThat(mix.made().litres()).isCloseTo(300, within(1e-9));
    assertThat(mix.totalOf("Product A").highNumber()).isCloseTo(0.9, within(1e-12));
    assertThat(errors(mix)).isEmpty();
    assertThat(mix.working().toText().replace("\u00a0", " ")).contains("0.333333", "300 mL/ha");
  }

  /** 0.9 L/ha over the field is below 1 L/ha, but the bands get 2.7 L/ha. */
  @Test
  void anOverdoseOnTheBandsIsRefusedThatPassesOverTheField() {
    assertThat(errors(on(WHOLE, atMostOneLitre("0.9 L/ha")))).isEmpty();
    var found = errors(on(BANDS, atMostOneLitre("0.9 L/ha")));
    assertThat(found).hasSize(1);
    assertThat(found.get(0).rule())
        .isEqualTo("Product A: maximum dose per application, on treated ground");
    assertThat(found.get(0).sentence()).startsWith("2.7 L/ha, over the maximum of 1 L/ha");
    var text = on(BANDS, atMostOneLitre("0.9 L/ha")).presentation().toText();
    assertThat(text).contains("Do not fill the sprayer", "rate over the field");
  }

  @Test
  void tooMuchOnTheBandsIsRefusedAsWritten() {
    assertThat(errors(on(BANDS, atMostOneLitre("1.1 L/ha treated area")))).hasSize(1);
    assertThat(errors(on(BANDS, atMostOneLitre("1 L/ha treated area")))).isEmpty();
  }

  /** 1 mL/L at 300 L/ha of treated ground is 0.3 L/ha, at a volume that the label assumes. */
  @Test
  void aRatePerLitreIsComparedAtTheVolumeOnTreatedGround() {
    var label =
        PartnerLabel.of(
                LabelLimits.of("Product B")
                    .with(DoseLimit.maximum(ProductPerArea.parse("0.25 L/ha"))))
            .assuming(LabelSprayVolume.parse("250-350 L/ha"));
    var partner = TankPartner.of("Product B", "1 mL/L spray").withLabel(label);
    assertThat(on(WHOLE, partner).findings())
        .anyMatch(f -> f.severity() == Severity.WARNING && f.sentence().contains("assumes"));
    assertThat(errors(on(WHOLE, partner))).isEmpty();
    var mix = on(BANDS, partner);
    assertThat(mix.findings()).anyMatch(f -> f.sentence().contains("at a volume of the label"));
    assertThat(errors(mix)).anyMatch(f -> f.sentence().contains("over the maximum of 0.25 L/ha"));
    assertThat(mix.totalOf("Product B").highNumber()).isCloseTo(0.3, within(1e-12));
  }

  @Test
  void aRateOnTreatedGroundWithoutAShareIsRefused() {
    var partner = TankPartner.of("Product A", "0.9 L/ha treated area");
    refused(() -> on(WHOLE, partner), "does not say which share", "band width and row spacing");
    refused(
        () -> partner.dose(SprayVolume.parse("100 L/ha")), "nothing says", "band width and row");
    refused(
        () -> WHOLE.inBands(new Length(0.75), new Length(0.25)),
        "bands of 0.75 m on rows of 0.25 m",
        "band width first");
    refused(() -> WHOLE.inBands(new Length(0), new Length(0.25)), "bands of 0", "both units");
    refused(() -> WHOLE.treating(Area.parse("4 ha")), "40000 m² treated of", "gets wet first");
  }

  private static void refused(ThrowingCallable call, String read, String cure) {
    var problem = catchThrowableOfType(InputProblem.class, call);
    assertThat(problem.read()).contains(read);
    assertThat(problem.expected()).containsAnyOf("share of the field", "above zero");
    assertThat(problem.why()).containsAnyOf("three times the product", "treated share");
    assertThat(problem.cure()).contains(cure);
  }

  @Test
  void thePageShowsBothAreasSideBySide() {
    var text =
        on(BANDS, atMostOneLitre("0.9 L/ha treated area"))
            .presentation()
            .toText()
            .replace('\u00a0', ' ');
    assertThat(text)
        .contains("On treated ground", "Over the field", "Treated area", "Field area")
        .contains("300 L/ha", "100 L/ha", "0.9 L/ha");
    assertThat(on(WHOLE, atMostOneLitre("0.9 L/ha")).presentation().toText())
        .doesNotContain("reated");
  }

  @Test
  void earlierUsesAreSaidToCountOnTreatedGround() {
    var rate = ProductPerArea.parse("0.3 L/ha");
    var use =
        PlannedUse.of(rate)
            .on(LocalDate.of(2026, 6, 18))
            .after(PastUse.sameCrop(LocalDate.of(2026, 6, 2), rate));
    var partner =
        TankPartner.of("Product A", "0.9 L/ha treated area")
            .withLabel(PartnerLabel.of(LabelLimits.of("Product A")).usedAs(use));
    assertThat(on(BANDS, partner).findings())
        .anyMatch(f -> f.rule().equals("Product A: earlier applications"));
  }

  /** Spots of 1 ha together in 3 ha are the same share as the bands. */
  @Test
  void spotsCountLikeBands() {
    var spots = WHOLE.treating(Area.parse("1 ha"));
    var rate = "0.9 L/ha treated area";
    assertThat(on(spots, atMostOneLitre(rate)).totalOf("Product A").highNumber())
        .isCloseTo(0.9, within(1e-12));
    assertThat(errors(on(spots, atMostOneLitre("0.9 L/ha")))).hasSize(1);
  }

  @Property(seed = "8", tries = 100)
  void bandsAsWideAsTheRowsAreABroadcastSpray(
      @ForAll @DoubleRange(min = 0.1, max = 2) double width,
      @ForAll @DoubleRange(min = 0.1, max = 2) double rate) {
    var metres = new Length(width);
    var all = WHOLE.inBands(metres, metres);
    var broadcast = on(WHOLE, atMostOneLitre(rate + " L/ha"));
    var bands = on(all, atMostOneLitre(rate + " L/ha treated area"));
    assertThat(bands.totals()).isEqualTo(broadcast.totals());
    assertThat(bands.findings()).isEqualTo(broadcast.findings());
  }

  @Property(seed = "8", tries = 100)
  void theDoseOnTheBandsIsTheSameWhicheverWayItIsCounted(
      @ForAll @DoubleRange(min = 0.05, max = 1) double share) {
    var field = WHOLE.inBands(new Length(share), new Length(1));
    var treated = on(field, TankPartner.of("Product A", "0.9 L/ha treated area"));
    var perField =
        on(field, TankPartner.of("Product A", ProductPerArea.parse(0.9 * share + " L/ha")));
    assertThat(treated.totalOf("Product A").highNumber())
        .isCloseTo(perField.totalOf("Product A").highNumber(), within(1e-9));
    assertThat(treated.totalOf("Product A").highNumber()).isCloseTo(2.7 * share, within(1e-9));
  }
}
