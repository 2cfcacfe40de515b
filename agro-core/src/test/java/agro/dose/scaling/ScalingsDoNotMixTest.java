package agro.dose.scaling;

import static org.assertj.core.api.Assertions.assertThat;

import agro.CompilerCheck;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Figures of one unit and different meaning that the compiler keeps apart. */
class ScalingsDoNotMixTest {

  private static final CompilerCheck COMPILER =
      new CompilerCheck(
          List.of("agro.dose.*", "agro.dose.scaling.*", "agro.units.*", "java.util.*"));

  private static final String BAND =
      "new BandTreatment(ProductPerTreatedArea.parse(\"1 L/ha treated area\"),"
          + " TreatedSprayVolume.parse(\"300 L/ha\"), new Length(1), new Length(2))";

  /** Without these the refusals below would prove nothing. */
  private static final List<String> ALLOWED =
      List.of(
          "DilutionResult<MassPerVolume, Volume> r ="
              + " Dilution.stockFor(new MassPerVolume(2), new MassPerVolume(1), new Volume(1))"
              + ".evaluate();",
          "DilutionResult<MassPerMass, Mass> r ="
              + " Dilution.stockFor(new MassPerMass(2), new MassPerMass(1), new Mass(1))"
              + ".evaluate();",
          "PearsonSquare<MassPerMass, Mass> s = new PearsonSquare<>(new MassPerMass(3),"
              + " new MassPerMass(1), new MassPerMass(2), new Mass(1));",
          "BandTreatment b = " + BAND + ";",
          "ProductPerArea field = " + BAND + ".evaluate().perField();",
          "WetBasisMoisture m = DryBasisMoisture.percent(25).onWetBasis();",
          "MoistureRange r = MoistureRange.exactly(WetBasisMoisture.percent(25));",
          "FieldMeasure s = FieldMeasure.spoon(VolumeUnit.US_TABLESPOON);",
          "PumpedSpray p = PumpedSpray.of(5, new Volume(16), LandUnit.RAI);");

  private static final List<String> REFUSED =
      List.of(
          "Object r = Dilution.stockFor(new MassPerVolume(2), new VolumePerVolume(1),"
              + " new Volume(1)).evaluate();",
          "Object r = Dilution.stockFor(new MassPerVolume(2), new MassPerMass(1),"
              + " new Volume(1)).evaluate();",
          "Object r = Dilution.strengthOf(new MassPerVolume(2), new Volume(1), new Mass(1))"
              + ".evaluate();",
          "DilutionResult<MassPerMass, Mass> r = Dilution.stockFor(new MassPerVolume(2),"
              + " new MassPerVolume(1), new Volume(1)).evaluate();",
          "PearsonSquare<MassPerVolume, Volume> s = new PearsonSquare<>(new MassPerVolume(3),"
              + " new MassPerMass(1), new MassPerVolume(2), new Volume(1));",
          "BandTreatment b = new BandTreatment(ProductPerArea.parse(\"1 L/ha\"),"
              + " TreatedSprayVolume.parse(\"300 L/ha\"), new Length(1), new Length(2));",
          "BandTreatment b = new BandTreatment("
              + "ProductPerTreatedArea.parse(\"1 L/ha treated area\"),"
              + " SprayVolume.parse(\"300 L/ha\"), new Length(1), new Length(2));",
          "ProductPerTreatedArea field = " + BAND + ".evaluate().perField();",
          "SprayVolume s = " + BAND + ".evaluate().onBandSpray();",
          "TreatedSprayVolume s = SprayVolume.parse(\"300 L/ha\");",
          "DryBasisMoisture m = WetBasisMoisture.percent(25);",
          "WetBasisMoisture m = DryBasisMoisture.percent(25);",
          "WaterForMoisture w = new WaterForMoisture(new Mass(1), 0.15,"
              + " MoistureRange.exactly(WetBasisMoisture.percent(25)));",
          "MoistureRange r = new MoistureRange(25, 30);",
          "FieldMeasure s = FieldMeasure.spoon(MassUnit.OUNCE);",
          "PumpedSpray p = PumpedSpray.of(5, new Volume(16), new Area(1600));",
          "PumpedSpray p = PumpedSpray.of(5, new Volume(16), VolumeUnit.LITRE);",
          "PlantDrench d = PlantDrench.of(ProductPerSprayVolume.parse(\"1 mL/L\"),"
              + " new PlantSpacing(new Length(1), new Length(1)));",
          "SeedTreatment s = SeedTreatment.of(ProductPerWetSubstrate.parse("
              + "\"2 kg/t manure (wet)\"), new Mass(1));",
          "SoilConcentration s = new SoilConcentration(ProductPerArea.parse(\"1 kg/ha\"),"
              + " new Length(0.15), new Density(1.3));",
          "LivingDose d = new LivingDose(ActiveStrength.parse(\"200 g/L\"), new Viability(0.8),"
              + " ProductPerArea.parse(\"1 L/ha\"));",
          "SpotTreatment s = SpotTreatment.of(ProductPerArea.parse(\"1 L/ha\"), new Volume(15),"
              + " new Area(300), LabelLimits.of(\"Product A\"));");

  @Test
  void matchingFiguresCompile() {
    assertThat(COMPILER.errors(ALLOWED)).hasSameSizeAs(ALLOWED).allMatch(List::isEmpty);
  }

  @Test
  void differentFiguresDoNotCompile() {
    var errors = COMPILER.errors(REFUSED);
    assertThat(REFUSED).hasSizeGreaterThanOrEqualTo(20);
    for (int i = 0; i < REFUSED.size(); i++) {
      assertThat(errors.get(i)).as(REFUSED.get(i)).isNotEmpty();
      assertThat(errors.get(i).get(0))
          .as(REFUSED.get(i))
          .matches("(?s)compiler\\.err\\.(prob\\.found\\.req|cant\\.apply|incompatible).*")
          .doesNotContain("symbol:   class");
    }
  }
}
