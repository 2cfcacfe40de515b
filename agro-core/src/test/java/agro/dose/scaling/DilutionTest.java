package agro.dose.scaling;

import static agro.ReferenceTable.number;
import static org.assertj.core.api.Assertions.assertThat;

import agro.ReferenceTable;
import agro.units.Density;
import agro.units.Mass;
import agro.units.MassPerMass;
import agro.units.MassPerVolume;
import agro.units.QuantityStyle;
import agro.units.Volume;
import agro.units.VolumePerVolume;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import org.junit.jupiter.api.Test;

/** Dilutions, Pearson square and stock solutions against worked numbers. */
class DilutionTest {

  @Test
  void workedDilutions() {
    for (var line : ReferenceTable.read(getClass(), "dilutions.csv")) {
      switch (line.getField("how")) {
        case "volume" -> byVolume(line);
        case "mass" ->
            byMass(
                line,
                Dilution.stockFor(
                    MassPerMass.parse(line.getField("stock")),
                    MassPerMass.parse(line.getField("wanted")),
                    Mass.parse(line.getField("total"))));
        default ->
            byMass(
                line,
                Dilution.inCarrier(
                    MassPerMass.parse(line.getField("stock")),
                    MassPerMass.parse(line.getField("wanted")),
                    Volume.parse(line.getField("total")),
                    Density.parse(line.getField("carrier"))));
      }
    }
  }

  private static void byVolume(NamedCsvRecord line) {
    var id = line.getField("id");
    double tolerance = number(line, "tolerance");
    var total = Volume.parse(line.getField("total"));
    DilutionResult<?, Volume> result =
        line.getField("stock").contains("v/v")
            ? Dilution.stockFor(
                    VolumePerVolume.parse(line.getField("stock")),
                    VolumePerVolume.parse(line.getField("wanted")),
                    total)
                .evaluate()
            : Dilution.stockFor(
                    MassPerVolume.parse(line.getField("stock")),
                    MassPerVolume.parse(line.getField("wanted")),
                    total)
                .evaluate();
    var stock = Volume.parse(line.getField("stock_amount"));
    Near.quantity(id, result.stockAmount(), stock, tolerance);
    Near.quantity(id, result.diluent(), Volume.parse(line.getField("diluent")), tolerance);
    Near.presented(result);
  }

  private static void byMass(NamedCsvRecord line, Dilution<MassPerMass, Mass> dilution) {
    var id = line.getField("id");
    double tolerance = number(line, "tolerance");
    var result = dilution.evaluate(QuantityStyle.US);
    Near.quantity(id, result.stockAmount(), Mass.parse(line.getField("stock_amount")), tolerance);
    Near.quantity(id, result.diluent(), Mass.parse(line.getField("diluent")), tolerance);
    Near.presented(result);
  }

  @Test
  void reachAndStrengthAreTheSameEquation() {
    var stock = MassPerVolume.parse("1 g/L");
    var reach =
        Dilution.reachOf(stock, Volume.parse("10 mL"), MassPerVolume.parse("10 mg/L")).evaluate();
    var strength =
        Dilution.strengthOf(stock, Volume.parse("10 mL"), Volume.parse("1 L")).evaluate();

    Near.quantity("whole", reach.total(), new Volume(1), 1e-12);
    Near.quantity("strength", strength.strength(), MassPerVolume.parse("10 mg/L"), 1e-12);
    assertThat(strength.dilutionFactor()).isEqualTo(100);
    assertThat(strength.working().toText()).contains("C2 = C1 × V1 / V2", "1 in 100");
    assertThat(reach.working().toText()).contains("V2 = C1 × V1 / C2");
    Near.presented(reach);
    Near.presented(strength);
  }

  @Test
  void carrierThatIsHeavierTakesMorePowder() {
    var powder = MassPerMass.parse("80 % w/w");
    var wanted = MassPerMass.parse("2 % w/w");
    var water = Dilution.inCarrier(powder, wanted, new Volume(100), new Density(1)).evaluate();
    var brine = Dilution.inCarrier(powder, wanted, new Volume(100), new Density(1.28)).evaluate();

    Near.number("ratio", brine.stockAmount().ratioTo(water.stockAmount()), 1.28, 1e-12);
    assertThat(brine.working().toText()).contains("density of the carrier", "128 kg");
  }

  @Test
  void pearsonSquares() {
    for (var line : ReferenceTable.read(getClass(), "pearson.csv")) {
      var id = line.getField("id");
      if (line.getField("strong").contains("w/w")) {
        var square =
            new PearsonSquare<>(
                MassPerMass.parse(line.getField("strong")),
                MassPerMass.parse(line.getField("weak")),
                MassPerMass.parse(line.getField("wanted")),
                Mass.parse(line.getField("total")));
        var mixture = square.evaluate();
        Near.quantity(id, mixture.strong(), Mass.parse(line.getField("strong_amount")), 1e-9);
        Near.quantity(id, mixture.weak(), Mass.parse(line.getField("weak_amount")), 1e-9);
        Near.number(id, mixture.weakToStrong(), number(line, "weak_to_strong"), 1e-9);
        Near.presented(mixture);
      } else {
        var square =
            new PearsonSquare<>(
                MassPerVolume.parse(line.getField("strong")),
                MassPerVolume.parse(line.getField("weak")),
                MassPerVolume.parse(line.getField("wanted")),
                Volume.parse(line.getField("total")));
        var mixture = square.evaluate();
        Near.quantity(id, mixture.strong(), Volume.parse(line.getField("strong_amount")), 1e-9);
        Near.quantity(id, mixture.weak(), Volume.parse(line.getField("weak_amount")), 1e-9);
        Near.number(id, mixture.weakToStrong(), number(line, "weak_to_strong"), 1e-9);
        Near.presented(mixture);
      }
    }
  }

  @Test
  void stockSolutionFromPowderOfTwentyPerCent() {
    var result =
        new StockSolution(
                MassPerMass.parse("20 % w/w"), MassPerVolume.parse("1000 mg/L"), new Volume(1))
            .evaluate();

    Near.quantity("H9", result.weighed(), Mass.parse("5 g"), 1e-12);
    Near.quantity("H9", result.dissolved(), Mass.parse("1 g"), 1e-12);
    assertThat(result.working().toText()).contains("5 g, made up to 1 L");
    Near.presented(result);
  }
}
