package agro.dose;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import agro.units.Length;
import agro.units.Mass;
import agro.units.MassPerArea;
import agro.working.Caution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RateConversionTest {

  private static final Canopy ORCHARD = new Canopy(new Length(3), new Length(1.2), new Length(4));

  private static final FieldFigures FIELD =
      FieldFigures.none()
          .spray(SprayVolume.parse("300 L/ha"))
          .plants(new Length(0.75), new Length(0.4))
          .bands(new Length(0.25), new Length(0.75))
          .cellsPerTray(128)
          .seedRate(MassPerArea.parse("20 kg/ha"))
          .thousandSeedMass(Mass.parse("4 g"))
          .wetSubstrate(MassPerArea.parse("10 t/ha"))
          .drySubstrate(MassPerArea.parse("7 t/ha"))
          .spots(250)
          .canopy(ORCHARD)
          .labelCanopy(ORCHARD);

  /** Computed by hand from the row and the field above; "common practice" rows are trade facts. */
  @ParameterizedTest
  @CsvSource({
    "10 kg/ha, PRODUCT_PER_ROW_LENGTH, 0.75 g/m row",
    "0.75 g/m row, PRODUCT_PER_AREA, 10 kg/ha",
    "4 g/kg seed, PRODUCT_PER_AREA, 80 g/ha",
    "80 g/ha, PRODUCT_PER_SEED_MASS, 4 g/kg seed",
    "80 g/ha, PRODUCT_PER_SEED_COUNT, 0.016 g/1000 seeds",
    "5 L/ha treated area, PRODUCT_PER_AREA, 1.66666666666666667 L/ha",
    "1.5 L/ha, PRODUCT_PER_SPRAY_VOLUME, 0.5 L/100 L",
    "2-3 kg/t manure (wet), PRODUCT_PER_AREA, 20-30 kg/ha",
    "7 kg/t manure (wet), PRODUCT_PER_DRY_SUBSTRATE, 10 kg/t manure (dry)",
    "128 g/tray, PRODUCT_PER_PLANT, 1 g/plant",
    "1 g/plant, PRODUCT_PER_TRAY, 128 g/tray",
    "10 mL/spot, PRODUCT_PER_AREA, 2500 mL/ha",
    "0.5 L/10000 m² LWA, PRODUCT_PER_AREA, 0.75 L/ha",
    "0.75 L/ha, PRODUCT_PER_LEAF_WALL_AREA, 0.5 L/10000 m² LWA",
    "20 mL/1000 m3 TRV, PRODUCT_PER_AREA, 180 mL/ha",
    "180 mL/ha, PRODUCT_PER_TREE_ROW_VOLUME, 20 mL/1000 m3 TRV",
    "20 mL/1000 m3 TRV, PRODUCT_PER_LEAF_WALL_AREA, 120 mL/10000 m² LWA",
  })
  void throughStatedFigures(String text, RateKind target, String expected) {
    var rate = (ProductRate) LabelRate.parse(text);
    var wanted = (ProductRate) LabelRate.parse(expected);

    var result = RateConversion.convert(rate, FIELD, target);

    assertThat(result.to().kind()).isEqualTo(target);
    assertThat(result.to().below()).isEqualTo(wanted.below());
    assertThat(result.to().amount().lowNumber() / wanted.amount().lowNumber())
        .isCloseTo(1, within(1e-9));
    assertThat(result.to().amount().highNumber() / wanted.amount().highNumber())
        .isCloseTo(1, within(1e-9));
    assertThat(result.working().cautions()).isEqualTo(Caution.all());
    assertThat(result.presentation().toText()).contains(rate.toString());
  }

  @Test
  void leafWallAndTreeRowFormulas() {
    double walls = ORCHARD.leafWallArea().squareMetresPerHectare();
    double volume = ORCHARD.treeRowVolume().cubicMetresPerHectare();

    assertThat(walls).isEqualTo(15_000);
    assertThat(volume).isCloseTo(walls * 1.2 / 2, within(1e-9));
    var rate = ProductPerLeafWallArea.parse("0.5 L/10000 m² LWA");
    assertThat(rate.on(ORCHARD.leafWallArea()).perHectare().lowNumber())
        .isCloseTo(0.5 * walls / 10_000, within(1e-12));
    var perVolume = ProductPerTreeRowVolume.parse("20 mL/1000 m3 TRV");
    assertThat(perVolume.on(ORCHARD.treeRowVolume()).perHectare().lowNumber())
        .isCloseTo(0.020 * volume / 1000, within(1e-12));
  }

  @Test
  void aWallRateNeedsTheOrchardAndNotTheCanopyOfTheLabel() {
    var small = new Canopy(new Length(1.5), new Length(1.2), new Length(4));
    var figures = FieldFigures.none().canopy(small).labelCanopy(ORCHARD);

    var ground = ProductPerArea.parse("1.5 L/ha");
    var perWall = RateConversion.convert(ground, figures, RateKind.PRODUCT_PER_LEAF_WALL_AREA).to();
    assertThat(perWall.amount().lowNumber()).as("reference of the label").isEqualTo(1);
    var back = RateConversion.convert(perWall, figures, RateKind.PRODUCT_PER_AREA).to();
    assertThat(back.amount().lowNumber()).as("the orchard as it stands").isEqualTo(0.75);
  }
}
