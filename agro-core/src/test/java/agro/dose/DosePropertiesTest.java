package agro.dose;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import agro.units.AreaUnit;
import agro.units.Density;
import agro.units.Length;
import agro.units.Mass;
import agro.units.MassPerArea;
import agro.units.MassPerMass;
import agro.units.MassPerVolume;
import agro.units.MassUnit;
import agro.units.QuantityRange;
import agro.units.Unit;
import agro.units.Volume;
import agro.units.VolumePerArea;
import agro.units.VolumeUnit;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;

/** What must hold for every rate, strength and field. */
class DosePropertiesTest {

  private static final List<Unit<Volume>> UNITS =
      List.of(VolumeUnit.MILLILITRE, VolumeUnit.LITRE, VolumeUnit.US_PINT, VolumeUnit.US_GALLON);
  private static final List<RateKind> KINDS =
      List.of(RateKind.values()).stream().filter(k -> !k.name().startsWith("ACTIVE")).toList();

  private static ProductAmount amount(double low, double width, int unit) {
    var measure = UNITS.get(unit);
    var range = new QuantityRange<>(Volume.of(low, measure), Volume.of(low + width, measure));
    return new ProductAmount.Liquid(range, measure);
  }

  private static FieldFigures field(double row, double plant, double canopy) {
    var walls = new Canopy(new Length(canopy), new Length(1.3), new Length(row * 4));
    return FieldFigures.none()
        .plants(new Length(row), new Length(plant))
        .bands(new Length(row / 3), new Length(row))
        .spray(new SprayVolume(new VolumePerArea(100 * canopy)))
        .cellsPerTray(72)
        .seedRate(new MassPerArea(20 * plant))
        .thousandSeedMass(Mass.of(4, MassUnit.GRAM))
        .wetSubstrate(new MassPerArea(8000 * row))
        .drySubstrate(new MassPerArea(5000 * row))
        .spots(100 * canopy)
        .canopy(walls)
        .labelCanopy(walls);
  }

  @Property(seed = "30011", tries = 1000, edgeCases = EdgeCasesMode.NONE)
  void noConversionInvertsARangeAndThereAndBackIsWhereItStarted(
      @ForAll @DoubleRange(min = 0.01, max = 5000) double low,
      @ForAll @DoubleRange(min = 0, max = 5000) double width,
      @ForAll @IntRange(min = 0, max = 3) int unit,
      @ForAll @IntRange(min = 0, max = 12) int from,
      @ForAll @IntRange(min = 0, max = 12) int to,
      @ForAll @DoubleRange(min = 0.2, max = 3) double row,
      @ForAll @DoubleRange(min = 0.1, max = 2) double plant,
      @ForAll @DoubleRange(min = 0.5, max = 6) double canopy) {
    var start = new ProductPerArea(amount(low, width, unit), WrittenAmount.one(AreaUnit.ACRE));
    var figures = field(row, plant, canopy);

    var first = RateConversion.convert(start, figures, KINDS.get(from)).to();
    var second = RateConversion.convert(first, figures, KINDS.get(to)).to();
    var back = RateConversion.convert(second, figures, RateKind.PRODUCT_PER_AREA).to();

    for (var rate : List.of(first, second, back)) {
      assertThat(rate.amount().lowNumber()).isLessThanOrEqualTo(rate.amount().highNumber());
    }
    var hectare = start.perHectare();
    assertThat(back.amount().lowNumber() / hectare.lowNumber()).isCloseTo(1, within(1e-9));
    assertThat(back.amount().highNumber() / hectare.highNumber()).isCloseTo(1, within(1e-9));
  }

  @Property(seed = "30011", tries = 1000)
  void productToActiveIngredientToProductIsAnIdentity(
      @ForAll @DoubleRange(min = 0.01, max = 5000) double low,
      @ForAll @DoubleRange(min = 0, max = 5000) double width,
      @ForAll @DoubleRange(min = 0.1, max = 999) double content,
      @ForAll @DoubleRange(min = 0.3, max = 2) double density,
      @ForAll boolean byVolume,
      @ForAll boolean liquid) {
    var stated = Optional.of(new Density(density));
    ActiveStrength strength =
        byVolume
            ? new ContentByVolume(new MassPerVolume(content), ActiveBasis.ACTIVE_INGREDIENT, stated)
            : new ContentByMass(new MassPerMass(content), ActiveBasis.ACTIVE_INGREDIENT, stated);
    var product =
        liquid
            ? amount(low, width, 0)
            : ProductAmount.solid(new QuantityRange<>(new Mass(low), new Mass(low + width)));

    var active = strength.activeIn(product);
    var back = strength.productFor(active, liquid ? ProductState.LIQUID : ProductState.SOLID);

    assertThat(back.isLike(product)).isTrue();
    assertThat(back.lowNumber() / product.lowNumber()).isCloseTo(1, within(1e-12));
    assertThat(back.highNumber() / product.highNumber()).isCloseTo(1, within(1e-12));
    assertThat(active.range().low()).isLessThanOrEqualTo(active.range().high());
  }

  @Property(seed = "30011", tries = 1000)
  void doublingTheSprayVolumeDoublesTheDoseOfALitre(
      @ForAll @DoubleRange(min = 0.01, max = 100) double low,
      @ForAll @DoubleRange(min = 0, max = 100) double width,
      @ForAll @DoubleRange(min = 10, max = 2000) double litres) {
    var rate =
        new ProductPerSprayVolume(amount(low, width, 0), WrittenAmount.one(VolumeUnit.LITRE));
    var single = rate.sprayedAt(new SprayVolume(new VolumePerArea(litres))).perHectare();
    var twice = rate.sprayedAt(new SprayVolume(new VolumePerArea(2 * litres))).perHectare();

    assertThat(twice.lowNumber() / single.lowNumber()).isCloseTo(2, within(1e-12));
    assertThat(twice.highNumber() / single.highNumber()).isCloseTo(2, within(1e-12));
  }

  @Property(seed = "30011", tries = 1000)
  void whatIsPrintedIsReadBackAsTheSameRate(
      @ForAll @IntRange(min = 1, max = 99_999) int low,
      @ForAll @IntRange(min = 0, max = 99_999) int width,
      @ForAll @IntRange(min = 0, max = 3) int unit,
      @ForAll @IntRange(min = 1, max = 1000) int below) {
    var amount = amount(low / 1000.0, width / 1000.0, unit);

    for (var rate :
        List.of(
            new ProductPerArea(amount, new WrittenAmount<>(below, AreaUnit.ACRE)),
            new ProductPerSprayVolume(amount, new WrittenAmount<>(below, VolumeUnit.LITRE)),
            new ProductPerPlant(amount, below, PlantingPlace.TREE))) {
      var again = (ProductRate) LabelRate.parse(rate.toString());
      assertThat(again.below()).isEqualTo(rate.below());
      assertThat(again.amount().lowNumber() / amount.lowNumber()).isCloseTo(1, within(1e-9));
      assertThat(again.amount().highNumber() / amount.highNumber()).isCloseTo(1, within(1e-9));
    }
  }

  @Property(seed = "30011", tries = 1000)
  void acidToSaltToAcidIsAnIdentity(
      @ForAll @DoubleRange(min = 0.01, max = 5000) double grams,
      @ForAll @DoubleRange(min = 0.3, max = 0.99) double share) {
    var ratio = new SaltRatio(share);
    var acid = ActiveAmount.of(grams, MassUnit.GRAM).as(ActiveBasis.ACID_EQUIVALENT);

    var salt = ratio.convert(acid, ActiveBasis.SALT);
    var back = ratio.convert(salt, ActiveBasis.ACID_EQUIVALENT);

    assertThat(salt.range().low()).isGreaterThan(acid.range().low());
    assertThat(back.range().low().ratioTo(acid.range().low())).isCloseTo(1, within(1e-12));
  }

  @Property(seed = "30011", tries = 1000)
  void aDoseOverTheMaximumIsAlwaysAnErrorAndOneBelowNever(
      @ForAll @DoubleRange(min = 0.01, max = 10) double most,
      @ForAll @DoubleRange(min = 0.01, max = 3) double share) {
    var limit = ProductPerArea.ofHectare(ProductAmount.liquid(most, VolumeUnit.LITRE));
    var planned = ProductPerArea.ofHectare(ProductAmount.liquid(most * share, VolumeUnit.LITRE));

    var result =
        LimitCheck.check(
            LabelLimits.of("invented").with(DoseLimit.maximum(limit)), PlannedUse.of(planned));

    assertThat(result.worst() == Severity.ERROR).isEqualTo(share > 1 + 1e-9);
  }
}
