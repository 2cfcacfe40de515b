package agro.dose.tank;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import agro.dose.ProductAmount;
import agro.dose.ProductPerArea;
import agro.dose.ProductPerSprayVolume;
import agro.dose.SprayVolume;
import agro.dose.WrittenAmount;
import agro.units.Area;
import agro.units.AreaUnit;
import agro.units.LandUnit;
import agro.units.QuantityRange;
import agro.units.Volume;
import agro.units.VolumePerArea;
import agro.units.VolumeUnit;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Scale;

/** What always holds for a tank mix. */
class TankMixPropertiesTest {

  @Property(seed = "8", tries = 300)
  void loadsSumToTheTotal(
      @ForAll @Scale(4) @DoubleRange(min = 0.001, max = 40) double hectares,
      @ForAll @DoubleRange(min = 20, max = 2000) double spray,
      @ForAll @DoubleRange(min = 10, max = 5000) double tank,
      @ForAll @DoubleRange(min = 0, max = 0.9) double dead,
      @ForAll LastLoad lastLoad) {
    var mix = mix(hectares, spray, tank, dead, lastLoad);
    assertThat(mix.departureOfSums()).isLessThan(1e-9);
    double litres = hectares * spray;
    double covered =
        mix.loads().stream().mapToDouble(l -> l.count() * l.area().squareMetres()).sum();
    assertThat(covered).isCloseTo(hectares * 10_000, within(1e-8 * hectares * 10_000));
    double byArea =
        mix.loads().stream().mapToDouble(l -> l.count() * l.amountOf("A").highNumber()).sum();
    double made = mix.made().litres();
    assertThat(byArea).isCloseTo(1.5 * made / spray, within(1e-9 * 1.5 * made / spray));
    assertThat(made - mix.leftover().volume().litres())
        .isCloseTo(litres, within(1e-8 * Math.max(litres, made)));
  }

  @Property(seed = "8", tries = 300)
  void noLoadIsFullerThanTheTankAndNoneIsEmpty(
      @ForAll @Scale(4) @DoubleRange(min = 0.001, max = 40) double hectares,
      @ForAll @DoubleRange(min = 20, max = 2000) double spray,
      @ForAll @DoubleRange(min = 10, max = 5000) double tank,
      @ForAll @DoubleRange(min = 0, max = 0.9) double dead,
      @ForAll LastLoad lastLoad) {
    var mix = mix(hectares, spray, tank, dead, lastLoad);
    for (var load : mix.loads()) {
      assertThat(load.made().litres()).isPositive().isLessThanOrEqualTo(tank * (1 + 1e-9));
    }
    assertThat(mix.numberOfLoads()).isEqualTo(mix.loads().stream().mapToInt(TankLoad::count).sum());
  }

  /** Field and tank k times as large: as many loads, each with k times the amounts. */
  @Property(seed = "8", tries = 300)
  void fieldAndTankScaleTogether(
      @ForAll @Scale(4) @DoubleRange(min = 0.01, max = 50) double hectares,
      @ForAll @DoubleRange(min = 20, max = 2000) double spray,
      @ForAll @DoubleRange(min = 10, max = 1000) double tank,
      @ForAll @IntRange(min = 0, max = 4) int powerOfTwo) {
    double k = 1 << powerOfTwo;
    var one = mix(hectares, spray, tank, 0.1, LastLoad.PART_LOAD);
    var many = mix(k * hectares, spray, k * tank, 0.1, LastLoad.PART_LOAD);
    assertThat(many.numberOfLoads()).isEqualTo(one.numberOfLoads());
    for (int i = 0; i < one.loads().size(); i++) {
      double first = one.loads().get(i).amountOf("A").highNumber();
      assertThat(many.loads().get(i).amountOf("A").highNumber())
          .isCloseTo(k * first, within(1e-9 * k * first));
    }
  }

  @Property(seed = "8", tries = 300)
  void exactMultiplesNeedNoFurtherLoad(
      @ForAll @IntRange(min = 1, max = 2000) int loads,
      @ForAll @DoubleRange(min = 20, max = 2000) double spray,
      @ForAll @DoubleRange(min = 10, max = 5000) double tank) {
    double hectares = loads * tank / spray;
    var exact = mix(hectares, spray, tank, 0, LastLoad.PART_LOAD);
    assertThat(exact.numberOfLoads()).isEqualTo(loads);
    assertThat(exact.partLoad()).isEmpty();
    var above = mix((loads + 1e-6) * tank / spray, spray, tank, 0, LastLoad.PART_LOAD);
    assertThat(above.numberOfLoads()).isEqualTo(loads + 1);
    var below = mix((loads - 1e-6) * tank / spray, spray, tank, 0, LastLoad.PART_LOAD);
    assertThat(below.numberOfLoads()).isEqualTo(loads);
    assertThat(below.partLoad()).isPresent();
  }

  @Property(seed = "8", tries = 300)
  void rangesNeverInvert(
      @ForAll @DoubleRange(min = 0, max = 3) double low,
      @ForAll @Scale(4) @DoubleRange(min = 0.001, max = 3) double more,
      @ForAll @Scale(4) @DoubleRange(min = 0.01, max = 50) double hectares) {
    var range = ProductAmount.liquid(new QuantityRange<>(new Volume(low), new Volume(low + more)));
    var mix =
        plan(hectares, 200, 300, 0, LastLoad.PART_LOAD)
            .with(
                new TankPartner(
                    "A",
                    new ProductPerSprayVolume(range, new WrittenAmount<>(100, VolumeUnit.LITRE)),
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty(),
                    List.of(),
                    Optional.empty()))
            .evaluate();
    for (var load : mix.loads()) {
      assertThat(load.amountOf("A").lowNumber()).isLessThan(load.amountOf("A").highNumber());
      assertThat(load.water().low().litres()).isLessThan(load.water().high().litres());
    }
    double share = mix.totalOf("A").lowNumber() / mix.totalOf("A").highNumber();
    assertThat(share).isCloseTo(low / (low + more), within(1e-12));
  }

  /** Whatever the unit of land, the same ground gives the same amounts. */
  @Property(seed = "8", tries = 300)
  void landUnitsGiveTheSameGround(
      @ForAll LandUnit land, @ForAll @DoubleRange(min = 0.5, max = 20) double number) {
    var local = SprayedField.of("A", number, land);
    var metric = new SprayedField("A", new Area(number * land.squareMetres()), AreaUnit.HECTARE);
    double first = total(local);
    assertThat(first).isCloseTo(total(metric), within(1e-12 * first));
  }

  private static double total(SprayedField field) {
    return TankMixPlan.of(field, SprayVolume.parse("300 L/ha"), SprayTank.knapsack(new Volume(15)))
        .with(TankPartner.of("A", "1.5 L/ha"))
        .evaluate()
        .totalOf("A")
        .highNumber();
  }

  private static TankMix mix(
      double hectares, double spray, double tank, double dead, LastLoad lastLoad) {
    var rate = ProductPerArea.liquid(QuantityRange.exactly(new VolumePerArea(1.5)));
    return plan(hectares, spray, tank, dead, lastLoad).with(TankPartner.of("A", rate)).evaluate();
  }

  private static TankMixPlan plan(
      double hectares, double spray, double tank, double dead, LastLoad lastLoad) {
    var volume = new Volume(tank);
    return TankMixPlan.of(
            SprayedField.of("Mill Piece", hectares, AreaUnit.HECTARE),
            new SprayVolume(new VolumePerArea(spray)),
            SprayTank.mounted(volume).withDeadVolume(volume.times(dead)))
        .lastLoad(lastLoad);
  }
}
