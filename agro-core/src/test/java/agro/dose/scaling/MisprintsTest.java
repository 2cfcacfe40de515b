package agro.dose.scaling;

import static agro.ReferenceTable.number;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import agro.ReferenceTable;
import agro.dose.ProductPerTreatedArea;
import agro.units.Density;
import agro.units.Length;
import agro.units.Mass;
import agro.units.MassPerMass;
import agro.units.MassPerVolume;
import agro.units.MassUnit;
import agro.units.Volume;
import org.junit.jupiter.api.Test;

/** Printed figures that the formulas do not give, and what the slip costs. */
class MisprintsTest {

  @Test
  void printedFiguresAreNotWhatComesOut() {
    for (var line : ReferenceTable.read(getClass(), "misprints.csv")) {
      double ours = computed(line.getField("id"));
      double printed = number(line, "printed");
      Near.number(line.getField("id"), ours, number(line, "computed"), 1e-6);
      assertThat(ours).as(line.getField("id")).isNotCloseTo(printed, within(printed * 1e-4));
      Near.number(line.getField("id") + ", off", printed / ours - 1, number(line, "off"), 1e-3);
    }
  }

  private static double computed(String id) {
    return switch (id) {
      case "course constant 2722" ->
          new GranuleCourse(
                  ProductPerTreatedArea.parse("20 lb/ac treated area"),
                  Length.parse("250 ft"),
                  Length.parse("10 in"))
              .evaluate()
              .target()
              .range()
              .single()
              .in(MassUnit.OUNCE);
      case "suspension 1.04" ->
          Dilution.inCarrier(
                  MassPerMass.parse("80 % w/w"),
                  MassPerMass.parse("2 % w/w"),
                  Volume.parse("5 gal (US)"),
                  Density.parse("8.34 lb/gal (US)"))
              .evaluate()
              .stockAmount()
              .in(MassUnit.POUND);
      default ->
          new BandTreatment(
                  ProductPerTreatedArea.parse("5 L/ha treated area"),
                  TreatedSprayVolume.parse("300 L/ha"),
                  new Length(0.25),
                  new Length(0.75))
              .evaluate()
              .perField()
              .perHectare()
              .lowNumber();
    };
  }

  /** Parts per million by mass and by volume differ by the density: 1.25 times at 0.8 kg/L. */
  @Test
  void partsPerMillionByVolumeAreNotThoseByMass() {
    var byVolume = MassPerVolume.parse("100 ppm w/v");
    var byMass = byVolume.dividedBy(new Density(0.8));
    Near.quantity("at 0.8 kg/L", byMass, MassPerMass.parse("125 ppm w/w"), 1e-12);
    var stronger = byMass.gramsPerKilogram() / byVolume.gramsPerLitre();
    assertThat(stronger).isCloseTo(1.25, within(1e-12));
  }

  @Test
  void dryBasisFigureTakenForWetLeavesTheHeapTooDry() {
    var fifteen = WetBasisMoisture.percent(15);
    var wet =
        new WaterForMoisture(
            new Mass(1000), fifteen, MoistureRange.exactly(WetBasisMoisture.percent(30)));
    var dry =
        new WaterForMoisture(
            new Mass(1000), fifteen, MoistureRange.exactly(DryBasisMoisture.percent(30)));

    double shortfall = dry.evaluate().water().single().ratioTo(wet.evaluate().water().single());
    assertThat(shortfall).isCloseTo(0.49, within(1e-9));
  }
}
