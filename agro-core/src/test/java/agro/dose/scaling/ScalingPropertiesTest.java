package agro.dose.scaling;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import agro.dose.ProductAmount;
import agro.dose.ProductPerArea;
import agro.dose.ProductPerSeedMass;
import agro.dose.ProductPerTreatedArea;
import agro.dose.SprayVolume;
import agro.dose.WrittenAmount;
import agro.units.LandUnit;
import agro.units.Length;
import agro.units.Mass;
import agro.units.MassPerVolume;
import agro.units.MassUnit;
import agro.units.QuantityRange;
import agro.units.Volume;
import agro.units.VolumePerArea;
import agro.units.VolumeUnit;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Scale;

/** What always holds, whatever the figures. */
class ScalingPropertiesTest {

  private static final double TINY = 1e-9;

  private static void near(double actual, double expected) {
    assertThat(actual).isCloseTo(expected, within(Math.abs(expected) * TINY + 1e-12));
  }

  @Property(seed = "8")
  void dilutionConservesWhatIsDissolved(
      @ForAll @Scale(6) @DoubleRange(min = 0.001, max = 1000) double stock,
      @ForAll @Scale(6) @DoubleRange(min = 0.0001, max = 1) double share,
      @ForAll @Scale(6) @DoubleRange(min = 0.001, max = 5000) double total) {
    var strong = new MassPerVolume(stock);
    var result = Dilution.stockFor(strong, strong.times(share), new Volume(total)).evaluate();

    near(
        strong.times(result.stockAmount()).kilograms(),
        result.strength().times(result.total()).kilograms());
    near(result.stockAmount().plus(result.diluent()).litres(), total);
    assertThat(result.diluent().litres()).isNotNegative();
    near(result.dilutionFactor(), 1 / share);
    var back = Dilution.reachOf(strong, result.stockAmount(), result.strength()).evaluate();
    near(back.total().litres(), total);
  }

  @Property(seed = "8")
  void pearsonSquareConservesWhatIsDissolved(
      @ForAll @Scale(6) @DoubleRange(min = 0, max = 400) double weak,
      @ForAll @Scale(6) @DoubleRange(min = 0.01, max = 600) double above,
      @ForAll @Scale(6) @DoubleRange(min = 0, max = 1) double between,
      @ForAll @Scale(6) @DoubleRange(min = 0.01, max = 5000) double total) {
    double wanted = Math.min(weak + above, weak + between * above);
    var mixture =
        new PearsonSquare<>(
                new MassPerVolume(weak + above),
                new MassPerVolume(weak),
                new MassPerVolume(wanted),
                new Volume(total))
            .evaluate();

    double in = mixture.strong().litres() * (weak + above) + mixture.weak().litres() * weak;
    assertThat(in).isCloseTo(wanted * total, within(1e-6 * (weak + above) * total));
    near(mixture.strong().litres() + mixture.weak().litres(), total);
  }

  @Property(seed = "8")
  void bandNeverTakesMoreThanBroadcast(
      @ForAll @Scale(6) @DoubleRange(min = 0.01, max = 20) double rate,
      @ForAll @Scale(6) @DoubleRange(min = 0.001, max = 1) double share,
      @ForAll @Scale(6) @DoubleRange(min = 0.1, max = 5) double rows) {
    var onBand =
        ProductPerTreatedArea.liquid(
            new QuantityRange<>(new VolumePerArea(rate), new VolumePerArea(2 * rate)));
    var result =
        new BandTreatment(
                onBand,
                TreatedSprayVolume.parse("300 L/ha"),
                new Length(share * rows),
                new Length(rows))
            .evaluate();

    assertThat(result.perField().perHectare().highNumber())
        .isLessThanOrEqualTo(2 * rate * (1 + TINY));
    assertThat(result.fieldSpray().perArea().litresPerHectare())
        .isLessThanOrEqualTo(300 * (1 + TINY));
    near(result.perField().perHectare().lowNumber(), rate * share);
    near(result.perField().perHectare().highNumber(), 2 * rate * share);
  }

  @Property(seed = "8")
  void waterIsNeverNegativeAndReachesTheMoisture(
      @ForAll @Scale(6) @DoubleRange(min = 0, max = 0.95) double now,
      @ForAll @Scale(6) @DoubleRange(min = 0, max = 0.9) double low,
      @ForAll @Scale(6) @DoubleRange(min = 0, max = 0.09) double more,
      @ForAll @Scale(6) @DoubleRange(min = 1, max = 20_000) double mass) {
    var result =
        new WaterForMoisture(
                new Mass(mass),
                new WetBasisMoisture(now),
                new MoistureRange(new WetBasisMoisture(low), new WetBasisMoisture(low + more)))
            .evaluate();

    assertThat(result.water().low().kilograms()).isNotNegative();
    assertThat(result.water().high()).isGreaterThanOrEqualTo(result.water().low());
    double heap = mass + result.water().high().kilograms();
    double reached = 1 - result.dryMatter().kilograms() / heap;
    assertThat(reached).isCloseTo(Math.max(now, low + more), within(1e-9));
    assertThat(result.findings().isEmpty()).isEqualTo(now <= low || low == now);
  }

  @Property(seed = "8")
  void seedScalesWithTheLotAndKeepsItsRange(
      @ForAll @Scale(6) @DoubleRange(min = 0.1, max = 20) double low,
      @ForAll @Scale(6) @DoubleRange(min = 0, max = 20) double more,
      @ForAll @Scale(6) @DoubleRange(min = 0.01, max = 1000) double lot,
      @ForAll @IntRange(min = 1, max = 50) int times) {
    var range =
        new QuantityRange<>(Mass.of(low, MassUnit.GRAM), Mass.of(low + more, MassUnit.GRAM));
    var rate =
        new ProductPerSeedMass(ProductAmount.solid(range), WrittenAmount.one(MassUnit.KILOGRAM));
    var one = SeedTreatment.of(rate, new Mass(lot)).evaluate().product();
    var many = SeedTreatment.of(rate, new Mass(lot * times)).evaluate().product();

    near(many.lowNumber(), times * one.lowNumber());
    near(many.highNumber(), times * one.highNumber());
    assertThat(many.highNumber()).isGreaterThanOrEqualTo(many.lowNumber());
  }

  @Property(seed = "8")
  void pumpsGoThereAndBack(
      @ForAll @Scale(6) @DoubleRange(min = 5, max = 2000) double litresPerHectare,
      @ForAll @Scale(6) @DoubleRange(min = 5, max = 25) double tank,
      @ForAll LandUnit land,
      @ForAll @Scale(6) @DoubleRange(min = 0.01, max = 20) double rate) {
    var spray = new SprayVolume(new VolumePerArea(litresPerHectare));
    var pumps = PumpedSpray.of(spray, new Volume(tank), land);
    near(pumps.evaluate().spray().perArea().litresPerHectare(), litresPerHectare);

    var label =
        ProductPerArea.liquid(
            new QuantityRange<>(new VolumePerArea(rate), new VolumePerArea(1.2 * rate)));
    var dose = DosePerPump.of(pumps, label).evaluate();
    near(dose.perHectare().perHectare().lowNumber(), rate);
    near(dose.perHectare().perHectare().highNumber(), 1.2 * rate);
  }

  @Property(seed = "8")
  void measuresNeverLieAboutTheirDeparture(
      @ForAll @Scale(6) @DoubleRange(min = 0.5, max = 500) double millilitres,
      @ForAll @Scale(6) @DoubleRange(min = 1, max = 50) double cap,
      @ForAll @IntRange(min = 1, max = 4) int parts) {
    var amount = ProductAmount.liquid(millilitres, VolumeUnit.MILLILITRE);
    var measure = FieldMeasure.cap("cap", Volume.of(cap, VolumeUnit.MILLILITRE));
    var result = new MeasureCount(amount, measure, parts).evaluate();

    for (var choice : result.choices()) {
      near(choice.amount().lowNumber(), amount.lowNumber() * (1 + choice.departure()));
      assertThat(choice.count()).isPositive();
      assertThat(Math.abs(choice.count() - result.exactLow()) * parts).isLessThan(1 + 1e-6);
    }
  }
}
