package agro.units;

import static org.assertj.core.api.Assertions.assertThat;

import agro.CompilerCheck;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Pairs of kinds that the compiler keeps apart, each beside a statement that does compile. */
class KindsDoNotMixTest {

  private static final CompilerCheck COMPILER = new CompilerCheck(List.of("agro.units.*"));

  /** Without these the refusals below would prove nothing. */
  private static final List<String> ALLOWED =
      List.of(
          "Volume v = new Volume(1).plus(new Volume(2));",
          "Mass m = new Volume(1).times(new Density(1.09));",
          "TemperatureDifference d = new Temperature(20).minus(new Temperature(10));",
          "double x = new Area(1).in(LandUnit.RAI);",
          "double x = new VolumePerArea(1).in(VolumePerAreaUnit.US_GALLON_PER_ACRE);",
          "MassPerVolume c = new MassPerMass(185).times(new Density(1.09));",
          "Unit<VolumePerArea> u = VolumePerArea.unit(VolumeUnit.US_PINT, AreaUnit.ACRE);",
          "QuantityRange<Volume> r = new Volume(1).to(new Volume(2));",
          "boolean less = new Mass(1).compareTo(new Mass(2)) < 0;",
          "Count c = new CountPerMass(1e9, Counted.SPORES).times(new Mass(1));");

  private static final List<String> REFUSED =
      List.of(
          "Volume v = new Mass(1);",
          "Mass m = Volume.of(1, VolumeUnit.LITRE);",
          "Volume v = Volume.of(1, MassUnit.KILOGRAM);",
          "double x = new Volume(1).in(MassUnit.POUND);",
          "Volume v = new Volume(1).plus(new Mass(1));",
          "boolean less = new Mass(1).compareTo(new Volume(1)) < 0;",
          "double x = new Mass(1).ratioTo(new Volume(1));",
          "Temperature t = new TemperatureDifference(5);",
          "TemperatureDifference d = new Temperature(5);",
          "Temperature t = new Temperature(20).plus(new Temperature(10));",
          "ThermalTime t = new TemperatureDifference(5);",
          "MassPerVolume c = MassPerMass.of(5, MassPerMassUnit.PERCENT);",
          "MassPerMass c = MassPerMass.of(5, MassPerVolumeUnit.PERCENT);",
          "VolumePerVolume c = VolumePerVolume.of(5, MassPerVolumeUnit.PERCENT);",
          "MassPerMass c = new VolumePerVolume(5);",
          "MassPerMass c = new MassPerMass(5).plus(new MassPerVolume(5));",
          "Density d = new MassPerVolume(5);",
          "MassPerVolume c = new Density(1);",
          "MassPerVolume c = new MassPerMass(185).times(new Mass(1));",
          "VolumePerArea r = new MassPerArea(1);",
          "VolumePerArea r = VolumePerArea.of(1, MassPerAreaUnit.POUND_PER_ACRE);",
          "VolumePerArea r = new Volume(1);",
          "Volume v = new VolumePerArea(1).times(new Mass(1));",
          "Unit<VolumePerArea> u = VolumePerArea.unit(MassUnit.POUND, AreaUnit.ACRE);",
          "Unit<VolumePerArea> u = VolumePerArea.unit(VolumeUnit.LITRE, VolumeUnit.LITRE);",
          "QuantityRange<Volume> r = new Volume(1).to(new Mass(2));",
          "QuantityRange<Volume> r = new QuantityRange<>(new Mass(1), new Mass(2));",
          "Mass m = new CountPerMass(1e9, Counted.SPORES).times(new Mass(1));",
          "MassPerMass c = new CountPerMass(1e9, Counted.SPORES);",
          "CountPerMass c = new CountPerVolume(1e9, Counted.SPORES);",
          "Speed s = new FlowRate(1);",
          "FlowRate f = new Volume(1).dividedBy(new Area(1));",
          "Length l = new WorkTime(1);",
          "double x = new Length(1).in(AreaUnit.HECTARE);",
          "double midpoint = new Volume(1).to(new Volume(2)).middle();",
          "Pressure p = Pressure.of(1, VolumePerAreaUnit.LITRE_PER_HECTARE);");

  @Test
  void matchingKindsCompile() {
    assertThat(COMPILER.errors(ALLOWED)).hasSameSizeAs(ALLOWED).allMatch(List::isEmpty);
  }

  @Test
  void differentKindsDoNotCompile() {
    var errors = COMPILER.errors(REFUSED);
    assertThat(REFUSED).hasSizeGreaterThanOrEqualTo(36);
    for (int i = 0; i < REFUSED.size(); i++) {
      assertThat(errors.get(i)).as(REFUSED.get(i)).hasSize(1);
      assertThat(errors.get(i).get(0))
          .as(REFUSED.get(i))
          .matches("(?s)compiler\\.err\\.(prob\\.found\\.req|cant\\.apply|cant\\.resolve).*")
          .doesNotContain("symbol:   class");
    }
  }
}
