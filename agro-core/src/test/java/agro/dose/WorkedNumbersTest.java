package agro.dose;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import agro.ReferenceTable;
import agro.units.Area;
import agro.units.AreaUnit;
import agro.units.Density;
import agro.units.Length;
import agro.units.LengthUnit;
import agro.units.Mass;
import agro.units.MassPerVolume;
import agro.units.MassUnit;
import agro.units.Volume;
import agro.units.VolumePerAreaUnit;
import agro.units.VolumePerVolume;
import agro.units.VolumeUnit;
import agro.working.Caution;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Worked numbers of published courses and of hand computation, each row of a table one test. */
class WorkedNumbersTest {

  private static final double CUBIC_FEET_PER_ACRE = 43_560;

  static List<NamedCsvRecord> active() {
    return ReferenceTable.read(WorkedNumbersTest.class, "product-for-active.csv");
  }

  static List<NamedCsvRecord> sprayed() {
    return ReferenceTable.read(WorkedNumbersTest.class, "sprayed-doses.csv");
  }

  static List<NamedCsvRecord> trees() {
    return ReferenceTable.read(WorkedNumbersTest.class, "tree-rows.csv");
  }

  @ParameterizedTest
  @MethodSource("active")
  void productForActiveIngredient(NamedCsvRecord row) {
    var strength = ActiveStrength.parse(row.getField("strength"));
    var density = row.getField("density");
    var known = density.isEmpty() ? strength : strength.withDensity(Density.parse(density));
    var expected = ProductPerArea.parse(row.getField("product")).perHectare();
    double tolerance = ReferenceTable.number(row, "tolerance");

    var result =
        new StrengthConversion(
                ActivePerArea.parse(row.getField("active")),
                known,
                ProductState.valueOf(row.getField("state")))
            .evaluate();

    var hectare = result.product().perHectare();
    assertThat(hectare.isLike(expected)).isTrue();
    assertThat(hectare.lowNumber() / expected.lowNumber()).isCloseTo(1, within(tolerance));
    var back = result.product().active(known).perHectare().range().low();
    var asked = ActivePerArea.parse(row.getField("active")).perHectare().range().low();
    assertThat(back.ratioTo(asked)).isCloseTo(1, within(1e-12));
    assertThat(result.working().cautions()).isEqualTo(Caution.all());
    assertThat(result.working().toText()).contains("product = active ingredient ÷ content");
  }

  @ParameterizedTest
  @MethodSource("sprayed")
  void doseOfASpray(NamedCsvRecord row) {
    var rate = ProductPerSprayVolume.parse(row.getField("rate"));
    var spray = SprayVolume.parse(row.getField("spray"));
    double tolerance = ReferenceTable.number(row, "tolerance");

    var hectare = rate.sprayedAt(spray).perHectare();

    assertThat(hectare.lowNumber()).isCloseTo(ReferenceTable.number(row, "low"), within(tolerance));
    assertThat(hectare.highNumber())
        .isCloseTo(ReferenceTable.number(row, "high"), within(tolerance));
    assertThat(hectare.words())
        .isEqualTo(row.getField("unit").equals("L") ? "a liquid product" : "a solid product");
    var again = rate.sprayedAt(spray).inSpray(spray);
    assertThat(again.perLitre().highNumber() / rate.perLitre().highNumber())
        .isCloseTo(1, within(1e-12));
  }

  @ParameterizedTest
  @MethodSource("trees")
  void treeRows(NamedCsvRecord row) {
    var unit = row.getField("unit").equals("ft") ? LengthUnit.FOOT : LengthUnit.METRE;
    var rows =
        new Canopy(
                length(row, "height", unit),
                length(row, "width", unit),
                length(row, "distance", unit))
            .treeRowVolume();
    double spray = ReferenceTable.number(row, "spray");
    double density = ReferenceTable.number(row, "density");
    double tolerance = ReferenceTable.number(row, "volume_tolerance");

    double volume = rows.cubicMetresPerHectare();
    double litres;
    if (unit == LengthUnit.FOOT) {
      var acre = Area.of(1, AreaUnit.ACRE);
      volume = new Volume(volume * 1000 * acre.squareMetres() / 10_000).in(VolumeUnit.CUBIC_FOOT);
      double perCubicFoot = Volume.of(1, VolumeUnit.CUBIC_FOOT).litres();
      double litresPer = Volume.of(spray, VolumeUnit.US_GALLON).litres() / perCubicFoot * 1000;
      litres = rows.spray(litresPer, density).perArea().in(VolumePerAreaUnit.US_GALLON_PER_ACRE);
    } else {
      litres = rows.spray(spray, density).perArea().litresPerHectare();
    }
    assertThat(volume / ReferenceTable.number(row, "volume")).isCloseTo(1, within(tolerance));
    assertThat(litres / ReferenceTable.number(row, "spray_volume"))
        .isCloseTo(1, within(ReferenceTable.number(row, "spray_tolerance")));
  }

  private static Length length(NamedCsvRecord row, String column, LengthUnit unit) {
    return Length.of(ReferenceTable.number(row, column), unit);
  }

  @Test
  void sevenTenthsOfAGallonPerThousandCubicFeetInMetric() {
    double perLitre =
        VolumePerVolume.of(
                0.7 / 1000, VolumePerVolume.unit(VolumeUnit.US_GALLON, VolumeUnit.CUBIC_FOOT))
            .millilitresPerLitre();

    assertThat(perLitre * 1000).as("computed here").isCloseTo(93.576, within(5e-4));
  }

  @Test
  void aSprayForTreeRowsShowsItsSteps() {
    var canopy = new Canopy(new Length(4.8), new Length(5.5), new Length(7.4));

    var result = new TreeRowSpray(canopy, 93.70, 0.85).evaluate();

    assertThat(result.rows().cubicMetresPerHectare()).isCloseTo(35_675.7, within(0.05));
    assertThat(result.spray().perArea().litresPerHectare()).isCloseTo(2841.4, within(0.2));
    assertThat(result.working().toText())
        .contains("4.8 m × 5.5 m × 10 000 m² ÷ 7.4 m", "35675.68 m³/ha ÷ 1000 m³ × 93.7 L × 0.85");
    assertThat(result.working().cautions()).isEqualTo(Caution.all());
  }

  @Test
  void misprintTreeRowVolumeMultipliedByTheRowDistance() {
    var near = new Canopy(new Length(3), new Length(2), new Length(4)).treeRowVolume();
    var far = new Canopy(new Length(3), new Length(2), new Length(8)).treeRowVolume();
    double printed = 3 * 2 * 4.0;

    assertThat(far.cubicMetresPerHectare()).isEqualTo(near.cubicMetresPerHectare() / 2);
    assertThat(near.cubicMetresPerHectare()).isEqualTo(15_000).isNotEqualTo(printed);
  }

  @Test
  void misprintThirtyFiveForOneGallonPer1450CubicFeet() {
    double perRowFoot = CUBIC_FEET_PER_ACRE / 1450;

    assertThat(perRowFoot)
        .as("New England extension worksheet prints 35")
        .isCloseTo(30.04, within(5e-3));
    assertThat(CUBIC_FEET_PER_ACRE / 35).isCloseTo(1244.6, within(0.05));
  }

  @Test
  void acidEquivalentAndSalt() {
    var ratio = SaltRatio.of(MassPerVolume.parse("360 g/L"), MassPerVolume.parse("480 g/L"));
    var acid = ActiveAmount.of(1080, MassUnit.GRAM).as(ActiveBasis.ACID_EQUIVALENT);

    var salt = ratio.convert(acid, ActiveBasis.SALT);

    assertThat(salt).hasToString("1440 g salt");
    assertThat(salt.range().low().ratioTo(acid.range().low())).isCloseTo(1.3333, within(5e-5));
    assertThat(ratio.working(acid, ActiveBasis.SALT).toText()).contains("1080 g ae ÷ 0.75");
    var asAcid = ActiveStrength.parse("360 g ae/L").productFor(acid, ProductState.LIQUID);
    var bySalt =
        new ContentByVolume(MassPerVolume.parse("480 g/L"))
            .as(ActiveBasis.SALT)
            .productFor(salt, ProductState.LIQUID);
    assertThat(asAcid).hasToString("3000 mL").isEqualTo(bySalt);
  }

  @Test
  void drenchPerPlant() {
    var rate = ProductPerArea.parse("300 mL/ac");
    var narrow = FieldFigures.none().plants(new Length(0.9), new Length(0.6));
    var wide = FieldFigures.none().plants(new Length(1.2), new Length(0.6));

    var perPlant = RateConversion.convert(rate, narrow, RateKind.PRODUCT_PER_PLANT);

    assertThat(millilitres(perPlant.to())).as("computed here").isCloseTo(0.0400, within(5e-5));
    assertThat(millilitres(RateConversion.convert(rate, wide, RateKind.PRODUCT_PER_PLANT).to()))
        .isCloseTo(0.0534, within(5e-5));
    assertThat(perPlant.working().toText()).contains("10 000 m² ÷ (0.9 m × 0.6 m)", "18518.5");
    var spray = SprayVolume.parse("200 L/ac");
    assertThat(spray.perPlant(18_518.5185).in(VolumeUnit.MILLILITRE))
        .isCloseTo(26.69, within(5e-3));
    assertThat(spray.perPlant(10_000 / (1.2 * 0.6)).in(VolumeUnit.MILLILITRE))
        .isCloseTo(35.58, within(5e-3));
  }

  private static double millilitres(ProductRate rate) {
    return rate.amount().lowNumber() * 1000;
  }

  @Test
  void spotsOverTheMaximumPerTreatedArea() {
    var rate = ProductPerSprayVolume.parse("1 % v/v");
    var used = Volume.parse("15 L");

    assertThat(rate.in(used)).isEqualTo(rate.in(Volume.of(15_000, VolumeUnit.MILLILITRE)));
    assertThat(rate.in(used).lowNumber()).isCloseTo(0.150, within(1e-12));
    var spray = new SprayVolume(used.dividedBy(Area.parse("300 m²")));
    assertThat(spray.perArea().litresPerHectare()).isCloseTo(500, within(1e-9));
    var limits =
        LabelLimits.of("Product A on an invented crop")
            .with(DoseLimit.maximum(ProductPerArea.parse("3 L/ha")));
    var result = PerLitreDose.of(rate, spray).within(limits).evaluate();
    assertThat(result.dose().perHectare().lowNumber()).isCloseTo(5, within(1e-12));
    assertThat(result.worst()).isEqualTo(Severity.ERROR);
  }

  @Test
  void labelledStrengthInPoundsPerGallon() {
    var strength = (ContentByVolume) Strength.parse("4 lb/gal (US)");

    assertThat(strength.content().gramsPerLitre()).isCloseTo(479.305709, within(1e-6));
  }

  @Test
  void percentByMassNeedsTheDensity() {
    var strength = (ContentByMass) ActiveStrength.parse("18.5 % w/w");

    var byVolume = strength.withDensity(Density.parse("1.09 kg/L")).byVolume();

    assertThat(byVolume.content().gramsPerLitre()).isCloseTo(201.65, within(1e-9));
    assertThat(185 / byVolume.content().gramsPerLitre() - 1)
        .as("size of the mistake without density")
        .isCloseTo(-0.0826, within(5e-5));
    assertThat(byVolume.byMass().content().gramsPerKilogram()).isCloseTo(185, within(1e-9));
  }

  @Test
  void seedOfOneHectare() {
    var rate = ProductPerSeedMass.parse("4 g/kg seed");

    assertThat(rate.on(Mass.parse("20 kg"))).hasToString("80 g");
  }
}
