package agro.dose.tank;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import agro.dose.ProductAmount;
import agro.dose.tank.MeasuringVessel.Graduated;
import agro.dose.tank.MeasuringVessel.GraduatedKind;
import agro.dose.tank.MeasuringVessel.Level;
import agro.dose.tank.MeasuringVessel.Sachet;
import agro.dose.tank.MeasuringVessel.Scale;
import agro.report.InputProblem;
import agro.units.Density;
import agro.units.Mass;
import agro.units.MassUnit;
import agro.units.QuantityStyle;
import agro.units.Volume;
import agro.units.VolumeUnit;
import agro.working.Caution;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Measuring vessels and the errors of their marks. */
class MeasuringKitTest {

  private static final MeasuringKit USUAL = MeasuringKit.usual();

  private static Graduated vessel(GraduatedKind kind, String capacity, String mark) {
    return new Graduated(kind, Volume.parse(capacity), Volume.parse(mark));
  }

  private static VesselReading suits(MeasuringKit kit, String amount) {
    return ((VesselSuggestion.Suits) kit.suggest(ProductAmount.parse(amount))).reading();
  }

  @ParameterizedTest
  @CsvSource({
    "0.4 mL,'1 mL syringe, marks every 0.01 mL'",
    "24 mL,'60 mL syringe, marks every 1 mL'",
    "90 mL,'100 mL graduated cylinder, marks every 1 mL'",
    "9 L,'5 L measuring cup, marks every 100 mL'",
    "24 g,'scale to 200 g, steps of 10 mg'",
    "1.5 kg,'scale to 2 kg, steps of 1 g'"
  })
  void suggestsAVesselOfTheRightSize(String amount, String vessel) {
    assertThat(suits(USUAL, amount).vessel().print()).isEqualTo(vessel);
    assertThat(suits(USUAL, amount).error()).isLessThanOrEqualTo(0.05);
  }

  /** 24.3 mL at marks of 1 mL is read as 24 mL: 0.3/24.3 too little; half a mark is 0.5/24.3. */
  @Test
  void roundingAndReadingAreCountedApart() {
    var syringe = vessel(GraduatedKind.SYRINGE, "60 mL", "1 mL");
    var reading = USUAL.measure(ProductAmount.parse("24.3 mL"), syringe);
    assertThat(reading.measured().highNumber()).isCloseTo(0.024, within(1e-12));
    assertThat(reading.rounding()).isCloseTo(-0.3 / 24.3, within(1e-12));
    assertThat(reading.reading()).isCloseTo(0.5 / 24.3, within(1e-12));
    assertThat(reading.error()).isCloseTo(0.5 / 24.3, within(1e-12));
    assertThat(reading.fillings()).isEqualTo(1);
    assertThat(reading.presentation().toText())
        .contains("24 mL ÷ 24.3 mL − 1", "= -1.23 %", "2.06 %")
        .contains(Caution.HEADING);
  }

  @Test
  void severalFillingsAddTheirErrors() {
    var syringe = vessel(GraduatedKind.SYRINGE, "10 mL", "0.5 mL");
    var reading = USUAL.measure(ProductAmount.parse("24 mL"), syringe);
    assertThat(reading.fillings()).isEqualTo(3);
    assertThat(reading.reading()).isCloseTo(3 * 0.25 / 24, within(1e-12));
  }

  @Test
  void aRangeIsReadAtMarksInsideIt() {
    var cup = vessel(GraduatedKind.CUP, "2 L", "50 mL");
    var reading = USUAL.measure(ProductAmount.parse("1.32-1.66 L"), cup);
    assertThat(reading.measured().lowNumber()).isCloseTo(1.35, within(1e-12));
    assertThat(reading.measured().highNumber()).isCloseTo(1.65, within(1e-12));
    assertThat(reading.rounding()).isZero();
  }

  @Test
  void tooCoarseIsRefusedWithItsError() {
    var cup = vessel(GraduatedKind.CUP, "100 mL", "10 mL");
    assertThatThrownBy(() -> USUAL.measure(ProductAmount.parse("24 mL"), cup))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("wrong by up to 20.8 %")
        .hasMessageContaining("an error of at most 5 %");
    assertThat(USUAL.within(0.25).measure(ProductAmount.parse("24 mL"), cup).rounding())
        .isCloseTo(-1 / 6.0, within(1e-12));
  }

  @Test
  void theLimitIsIncluded() {
    var scale = new Scale(new Mass(1), Mass.parse("1 g"));
    assertThat(USUAL.measure(ProductAmount.parse("10 g"), scale).error()).isEqualTo(0.05);
    assertThatThrownBy(() -> USUAL.measure(ProductAmount.parse("9 g"), scale))
        .isInstanceOf(InputProblem.class);
  }

  @Test
  void nothingSuitableIsSaidWithTheBestVessel() {
    var kit = MeasuringKit.of(new Scale(new Mass(5), Mass.parse("5 g")));
    var none = (VesselSuggestion.NoneSuits) kit.suggest(ProductAmount.parse("12 g"));
    assertThat(none.why()).contains("scale to 5 kg, steps of 5 g", "20.8 %", "stock solution");
    var empty = (VesselSuggestion.NoneSuits) kit.suggest(ProductAmount.parse("12 mL"));
    assertThat(empty.why()).startsWith("No vessel at hand measures a liquid product");
  }

  /** A millilitre of powder is no gram: at 0.4 g/mL three level 15 mL spoons are 18 g. */
  @Test
  void powderByVolumeNeedsItsBulkDensity() {
    var spoon = MeasuringVessel.spoon(VolumeUnit.METRIC_TABLESPOON);
    var powder = (ProductAmount.Solid) ProductAmount.parse("18 g");
    assertThatThrownBy(() -> USUAL.measure(powder, spoon))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("bulk density");
    var reading = USUAL.measurePowder(powder, spoon, new Density(0.4));
    assertThat(reading.fillings()).isEqualTo(3);
    assertThat(reading.error()).isCloseTo(0, within(1e-12));
    var kit = MeasuringKit.of(spoon);
    assertThat(kit.suggest(powder)).isInstanceOf(VesselSuggestion.NoneSuits.class);
    assertThat(kit.suggest(powder, Optional.of(new Density(0.4))))
        .isInstanceOf(VesselSuggestion.Suits.class);
  }

  /** Spoons carry their size: US 14.79 mL, metric 15 mL, Australian 20 mL. */
  @Test
  void spoonsAreNamedWithTheirSize() {
    assertThat(MeasuringVessel.spoon(VolumeUnit.US_TABLESPOON).print()).contains("US", "14.79 mL");
    assertThat(MeasuringVessel.spoon(VolumeUnit.METRIC_TABLESPOON).print()).contains("15 mL");
    assertThat(MeasuringVessel.spoon(VolumeUnit.AUSTRALIAN_TABLESPOON).print()).contains("20 mL");
    assertThat(new Level("bottle cap", Volume.parse("12 mL")).print())
        .isEqualTo("level bottle cap of 12 mL");
  }

  @Test
  void sachetsAreEmptiedWhole() {
    var sachet = new Sachet(ProductAmount.parse("8 g"));
    var kit = MeasuringKit.of(sachet);
    assertThat(suits(kit, "24 g").fillings()).isEqualTo(3);
    assertThat(kit.suggest(ProductAmount.parse("20 g")))
        .isInstanceOf(VesselSuggestion.NoneSuits.class);
    assertThat(suits(kit, "20-30 g").measured().lowNumber()).isCloseTo(0.024, within(1e-12));
  }

  @Property(seed = "8", tries = 200)
  void whatIsSuggestedIsWithinTheLimit(
      @ForAll @DoubleRange(min = 0.05, max = 50_000) double grams,
      @ForAll @DoubleRange(min = 0.01, max = 0.5) double limit) {
    var kit = USUAL.within(limit);
    var solid = ProductAmount.solid(grams, MassUnit.GRAM);
    var liquid = ProductAmount.liquid(grams, VolumeUnit.MILLILITRE);
    for (var amount : List.of(solid, liquid)) {
      if (kit.suggest(amount) instanceof VesselSuggestion.Suits suits) {
        var reading = suits.reading();
        assertThat(reading.error()).isLessThanOrEqualTo(limit);
        double share = reading.measured().highNumber() / amount.highNumber() - 1;
        assertThat(share).isCloseTo(reading.rounding(), within(1e-9));
        assertThat(kit.measure(amount, reading.vessel())).isEqualTo(reading);
      }
    }
  }

  /** What stands on the vessel is metric; a reader of other units gets both. */
  @Test
  void readersOfOtherUnitsGetBoth() {
    var reading = suits(USUAL, "90 mL");
    assertThat(reading.vessel().print(QuantityStyle.US))
        .isEqualTo("100 mL (3.381 fl oz (US)) graduated cylinder, marks every 1 mL");
    assertThat(reading.printMeasured(QuantityStyle.US)).isEqualTo("90 mL (3.043 fl oz (US))");
    assertThat(reading.printMeasured(QuantityStyle.METRIC)).isEqualTo("90 mL");
    assertThat(reading.working(QuantityStyle.US).toText()).contains("90 mL (3.043 fl oz (US))");
    assertThat(suits(USUAL, "24 g").printMeasured(QuantityStyle.IMPERIAL))
        .isEqualTo("24 g (0.8466 oz av)");
  }
}
