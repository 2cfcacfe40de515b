package agro.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Quantities, their arithmetic and their ranges. */
class QuantityTest {

  @ParameterizedTest
  @ValueSource(
      doubles = {-1, -1e-300, Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY})
  void amountsAreFiniteAndNotNegative(double value) {
    assertThatThrownBy(() -> new Volume(value))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("a volume is finite and zero or more, but got " + value);
    assertThatThrownBy(() -> MassPerArea.of(value, MassPerAreaUnit.POUND_PER_ACRE))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> new CountPerMass(value, Counted.SPORES))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void densityIsAboveZero() {
    assertThatThrownBy(() -> new Density(0))
        .hasMessage("a density is finite and above zero, but got 0.0");
  }

  @Test
  void minusZeroIsZero() {
    assertThat(new Mass(-0.0)).isEqualTo(new Mass(0)).hasToString("0 kg");
  }

  @Test
  void sumsAndDifferences() {
    var tank = Volume.of(400, VolumeUnit.LITRE);
    assertThat(tank.plus(new Volume(310))).isEqualTo(new Volume(710));
    assertThat(tank.minus(new Volume(310))).isEqualTo(new Volume(90));
    assertThat(tank.times(2.5).dividedBy(4)).isEqualTo(new Volume(250));
    assertThat(tank.ratioTo(new Volume(160))).isEqualTo(2.5);
    assertThat(tank).isGreaterThan(new Volume(399));
    assertThatThrownBy(() -> new Volume(310).minus(tank)).hasMessageContaining("but got -90.0");
    assertThatThrownBy(() -> tank.dividedBy(0)).isInstanceOf(IllegalArgumentException.class);
  }

  /** 0.1 + 0.2 - 0.3 leaves rounding, and an empty tank holds nothing. */
  @Test
  void roundingLeavesNothing() {
    var sum = new Volume(0.1).plus(new Volume(0.2));
    assertThat(sum.minus(new Volume(0.3))).isEqualTo(new Volume(0));
    assertThat(new Volume(0.3).minus(sum)).isEqualTo(new Volume(0));
  }

  /** 18.5 % w/w at 1.09 kg/L are 201.65 g/L; without the density it would be 8.26 % less. */
  @Test
  void contentNeedsADensity() {
    var content = MassPerMass.of(18.5, MassPerMassUnit.PERCENT);
    var perVolume = content.times(new Density(1.09));
    assertThat(perVolume.gramsPerLitre()).isCloseTo(201.65, within(1e-9));
    assertThat(perVolume.dividedBy(new Density(1.09)).gramsPerKilogram())
        .isCloseTo(185, within(1e-9));
    assertThat(1 - 185 / perVolume.gramsPerLitre()).isCloseTo(0.0826, within(5e-5));
  }

  /** Parts per million by mass and by volume agree at a density of 1 kg/L alone. */
  @ParameterizedTest
  @CsvSource({"1.00,1", "0.80,1.25", "1.10,0.909090909"})
  void partsPerMillionDependOnTheDensity(double density, double ratio) {
    var perVolume = MassPerVolume.of(1, MassPerVolumeUnit.PART_PER_MILLION);
    assertThat(perVolume.dividedBy(new Density(density)).in(MassPerMassUnit.PART_PER_MILLION))
        .isCloseTo(ratio, within(1e-9));
  }

  @Test
  void productsAcrossKinds() {
    var field = Area.of(3.7, AreaUnit.HECTARE);
    assertThat(new VolumePerArea(300).times(field).litres()).isCloseTo(1110, within(1e-9));
    assertThat(new Volume(400).dividedBy(new VolumePerArea(300)).in(AreaUnit.HECTARE))
        .isCloseTo(4 / 3.0, within(1e-12));
    assertThat(new Volume(1110).dividedBy(field).litresPerHectare()).isCloseTo(300, within(1e-9));
    assertThat(new Volume(1.2).dividedBy(WorkTime.of(1, WorkTimeUnit.MINUTE)))
        .isEqualTo(new FlowRate(1.2));
    assertThat(new FlowRate(1.2).times(WorkTime.of(0.5, WorkTimeUnit.HOUR)).litres())
        .isCloseTo(36, within(1e-12));
    assertThat(new Length(100).dividedBy(new WorkTime(90)).in(SpeedUnit.KILOMETRE_PER_HOUR))
        .isCloseTo(4, within(1e-12));
    assertThat(new Length(20).times(new Length(6))).isEqualTo(new Area(120));
    assertThat(new Volume(2).times(new Density(1.25))).isEqualTo(new Mass(2.5));
    assertThat(new Mass(2.5).dividedBy(new Density(1.25))).isEqualTo(new Volume(2));
    assertThat(new VolumePerArea(0.5).times(new MassPerVolume(200)))
        .isEqualTo(new MassPerArea(0.1));
    assertThat(new MassPerArea(2).times(new MassPerMass(800))).isEqualTo(new MassPerArea(1.6));
    assertThat(new VolumePerVolume(2).times(new Volume(15))).isEqualTo(new Volume(0.03));
    assertThat(new MassPerMass(4).times(new Mass(20))).isEqualTo(new Mass(0.08));
    assertThat(new MassPerLength(0.75).times(new Length(40_000 / 3.0)).kilograms())
        .isCloseTo(10, within(1e-9));
  }

  @Test
  void countsKnowWhatTheyCount() {
    var powder = new CountPerMass(2e9, Counted.COLONY_FORMING_UNITS);
    assertThat(powder.times(Mass.of(2.5, MassUnit.KILOGRAM)))
        .isEqualTo(new Count(5e12, Counted.COLONY_FORMING_UNITS));
    var perKilogram = CountPerMass.unit(Counted.COLONY_FORMING_UNITS, MassUnit.KILOGRAM);
    assertThat(powder.in(perKilogram)).isEqualTo(2e12);
    var spores = CountPerMass.unit(Counted.SPORES, MassUnit.GRAM);
    assertThatThrownBy(() -> powder.in(spores))
        .hasMessage("a count of CFU cannot be told in spores/g: the two count different things");
    assertThatThrownBy(() -> powder.plus(CountPerMass.of(1, spores)))
        .hasMessageContaining("count different things");
    assertThatThrownBy(() -> powder.compareTo(CountPerMass.of(1, spores)))
        .isInstanceOf(IllegalArgumentException.class);
    assertThat(powder.plus(powder)).isEqualTo(powder.times(2)).hasToString("4000000000 CFU/g");
  }

  @Test
  void rangesRunFromLowToHigh() {
    var range = new VolumePerArea(0.25).to(new VolumePerArea(0.3));
    assertThat(range).hasToString("0.25 to 0.3 L/ha");
    assertThat(range.isSingle()).isFalse();
    assertThat(range.times(4)).isEqualTo(new VolumePerArea(1).to(new VolumePerArea(1.2)));
    assertThat(range.dividedBy(0.25).low()).isEqualTo(new VolumePerArea(1));
    assertThat(QuantityRange.exactly(new Mass(1))).hasToString("1 kg");
    assertThatThrownBy(() -> new Mass(2).to(new Mass(1)))
        .hasMessage("a range runs from low to high, but got 2 kg to 1 kg");
    assertThatThrownBy(() -> range.times(-1)).hasMessageContaining("zero or more");
    assertThatThrownBy(() -> range.times(Double.NaN)).hasMessageContaining("zero or more");
    assertThatThrownBy(() -> range.dividedBy(0)).hasMessageContaining("more than zero");
    assertThatThrownBy(range::single)
        .isInstanceOf(IllegalStateException.class)
        .hasMessageContaining("choose its low or its high end");
  }

  @Test
  void printInTheReadersUnits() {
    var rate = new VolumePerArea(0.75);
    assertThat(QuantityStyle.METRIC.print(rate)).isEqualTo("750 mL/ha");
    assertThat(QuantityStyle.METRIC.per(AreaUnit.ACRE).print(rate)).isEqualTo("303.5 mL/ac");
    assertThat(QuantityStyle.US.print(rate)).isEqualTo("10.26 fl oz (US)/ac");
    assertThat(QuantityStyle.IMPERIAL.print(rate)).isEqualTo("10.68 fl oz (imp)/ac");
    assertThat(QuantityStyle.METRIC.per(LandUnit.BIGHA_WEST_BENGAL).print(rate))
        .isEqualTo("100.3 mL/bigha (West Bengal)");
    assertThat(QuantityStyle.US.withDigits(6).print(rate)).isEqualTo("10.263 fl oz (US)/ac");
    assertThat(QuantityStyle.METRIC.print(new Volume(2))).isEqualTo("2 L");
    assertThat(QuantityStyle.METRIC.print(new Mass(0.0225))).isEqualTo("22.5 g");
    assertThat(QuantityStyle.US.print(Pressure.of(3, PressureUnit.BAR))).isEqualTo("43.51 psi");
    assertThat(QuantityStyle.METRIC.print(Speed.of(3, SpeedUnit.MILE_PER_HOUR)))
        .isEqualTo("4.828 km/h");
    assertThat(QuantityStyle.METRIC.print(Area.of(1, AreaUnit.ACRE))).isEqualTo("0.4047 ha");
    assertThat(QuantityStyle.METRIC.print(new Area(12))).isEqualTo("12 m²");
    assertThat(QuantityStyle.METRIC.print(new Volume(0))).isEqualTo("0 mL");
  }

  @Test
  void rangesStayRangesInPrint() {
    var rate = VolumePerArea.parseRange("250-300 ml/acre");
    assertThat(QuantityStyle.METRIC.printRange(rate)).isEqualTo("617.8 to 741.3 mL/ha");
    assertThat(QuantityStyle.METRIC.per(AreaUnit.ACRE).printRange(rate))
        .isEqualTo("250 to 300 mL/ac");
    assertThat(QuantityStyle.METRIC.printRange(new Volume(0.9).to(new Volume(1.1))))
        .isEqualTo("0.9 to 1.1 L");
    assertThatThrownBy(() -> QuantityStyle.METRIC.withDigits(1)).hasMessageContaining("2 to 15");
  }

  @Test
  void landUnitsAreNamedWithTheirPlace() {
    assertThat(LandUnit.named("Bigha")).hasSize(9);
    assertThat(LandUnit.named("kattha")).isEqualTo(LandUnit.named("katha")).hasSize(4);
    assertThat(LandUnit.named("acre")).isEmpty();
    for (var unit : LandUnit.values()) {
      assertThat(unit.source().title()).isNotBlank();
      for (var place : unit.places()) {
        assertThat(Area.parse("1 " + unit.landName() + " (" + place + ")").squareMetres())
            .isEqualTo(unit.squareMetres());
      }
    }
  }

  @Test
  void unitsArePutTogether() {
    var unit = VolumePerArea.unit(VolumeUnit.MILLILITRE, LandUnit.BIGHA_WEST_BENGAL);
    assertThat(unit.symbol()).isEqualTo("mL/bigha (West Bengal)");
    assertThat(unit.words()).isEqualTo("millilitre per bigha (West Bengal)");
    assertThat(unit.ucum()).isEqualTo("mL/(14400.[sft_i])");
    assertThat(VolumePerArea.of(25, unit).in(unit)).isCloseTo(25, within(1e-13));
    var per100 = MassPerVolume.unit(MassUnit.GRAM, UnitMultiple.of(100, VolumeUnit.LITRE));
    assertThat(MassPerVolume.of(100, per100)).isEqualTo(new MassPerVolume(1));
    assertThat(per100.symbol()).isEqualTo("g/100 L");
  }

  @Test
  void kindsKnowTheirParts() {
    assertThat(QuantityKind.VOLUME_PER_AREA.numerator()).contains(QuantityKind.VOLUME);
    assertThat(QuantityKind.VOLUME_PER_AREA.denominator()).contains(QuantityKind.AREA);
    assertThat(QuantityKind.MASS.numerator()).isEmpty();
    assertThat(List.of(QuantityKind.values())).allMatch(kind -> kind.words().startsWith("a"));
    assertThatThrownBy(() -> new UnitDefinition("", "x", "y", ExactFactor.ONE))
        .isInstanceOf(IllegalArgumentException.class);
  }
}
