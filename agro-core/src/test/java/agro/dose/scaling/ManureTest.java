package agro.dose.scaling;

import static agro.ReferenceTable.number;
import static org.assertj.core.api.Assertions.assertThat;

import agro.ReferenceTable;
import agro.dose.ProductPerDrySubstrate;
import agro.dose.ProductPerWetSubstrate;
import agro.dose.Severity;
import agro.units.Mass;
import agro.units.MassPerArea;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Enriched manure. Figures of the trade: common practice, no source. */
class ManureTest {

  private static final MoistureRange QUARTER_TO_THIRTY = ManurePractice.COMMON.moisture();

  private static ManureAgent agent(String name, String rate) {
    return ManureAgent.of(name, ProductPerWetSubstrate.parse(rate));
  }

  private static SubstrateMoisture moisture(double percent, String basis) {
    return basis.equals("wet")
        ? WetBasisMoisture.percent(percent)
        : DryBasisMoisture.percent(percent);
  }

  @Test
  void waterOnBothBases() {
    for (var line : ReferenceTable.read(getClass(), "moisture.csv")) {
      var id = line.getField("id");
      var basis = line.getField("wanted_basis");
      var water =
          new WaterForMoisture(
                  Mass.parse(line.getField("mass")),
                  moisture(number(line, "now"), line.getField("now_basis")),
                  new MoistureRange(
                      moisture(number(line, "low"), basis), moisture(number(line, "high"), basis)))
              .evaluate();
      double tolerance = number(line, "tolerance");
      var low = Mass.parse(line.getField("water_low"));
      var high = Mass.parse(line.getField("water_high"));
      Near.quantity(id, water.water().low(), low, tolerance);
      Near.quantity(id, water.water().high(), high, tolerance);
      Near.presented(water);
    }
  }

  @Test
  void wetterThanAskedIsSaid() {
    var water =
        new WaterForMoisture(new Mass(1000), WetBasisMoisture.percent(40), QUARTER_TO_THIRTY)
            .evaluate();

    assertThat(water.water().high().kilograms()).isZero();
    assertThat(water.findings()).hasSize(1);
    assertThat(water.findings().get(0).severity()).isEqualTo(Severity.WARNING);
    // 600 kg dry matter hold 257.14 kg at 30 %; 400 - 257.14 = 142.86 kg.
    assertThat(water.findings().get(0).sentence())
        .contains("already wetter than asked", "40 % (wet basis)", "142.9 kg");
    Near.presented(water);
  }

  @Test
  void insideTheRangeIsANote() {
    var water =
        new WaterForMoisture(new Mass(1000), WetBasisMoisture.percent(27), QUARTER_TO_THIRTY)
            .evaluate();
    assertThat(water.findings().get(0).severity()).isEqualTo(Severity.NOTE);
    assertThat(water.findings().get(0).sentence()).contains("already in the range");
  }

  @Test
  void oneMoistureHasTwoFigures() {
    var wet = WetBasisMoisture.percent(25);

    Near.number("dry", wet.onDryBasis().ratio(), 1.0 / 3, 1e-12);
    Near.number("back", wet.onDryBasis().onWetBasis().share(), 0.25, 1e-12);
    assertThat(wet).hasToString("25 % (wet basis)");
    assertThat(DryBasisMoisture.percent(150)).hasToString("150 % (dry basis)");
  }

  @Test
  void threeAgentsToATonne() {
    var agents =
        List.of(
            agent("fungus A", "2-3 kg/t manure (wet)"),
            agent("fungus B", "2-3 kg/t manure (wet)"),
            agent("bacterium C", "2-3 kg/t manure (wet)"));
    var result =
        ManureEnrichment.of(
                agents, Mass.parse("1 t"), WetBasisMoisture.percent(15), QUARTER_TO_THIRTY)
            .spreadAt(MassPerArea.parse("5 t/ha"))
            .evaluate();

    assertThat(result.totals()).hasSize(1);
    Near.amount("all", result.totals().get(0), "6-9 kg", 1e-12);
    Near.amount("each", result.parts().get(1).amount(), "2-3 kg", 1e-12);
    var perField = result.parts().get(0).perArea().orElseThrow().perHectare();
    Near.amount("kg agent per t × t per ha", perField, "10-15 kg", 1e-12);
    Near.number("water", result.water().low().kilograms(), 133.33, 1e-4);
    assertThat(result.working().toText())
        .contains(
            "6 to 9 kg",
            "fungus A",
            "1000 kg × (1 - 0.15)",
            "0.25 / (1 - 0.25) to 0.3 / (1 - 0.3)");
    Near.presented(result);
  }

  @Test
  void practiceIsMarkedAsPractice() {
    var practice = ManurePractice.COMMON;
    assertThat(practice.days()).isEqualTo(15);
    assertThat(practice.perAgent()).hasToString("2 to 3 g/kg");
    assertThat(practice.source().citation()).contains("common practice, no source");
  }

  @Test
  void ratePerDryMatterUsesTheDryMatter() {
    var dry = ManureAgent.of("fungus A", ProductPerDrySubstrate.parse("2 kg/t manure (dry)"));
    var liquid = agent("bacterium C", "1 L/t manure (wet)");
    var result =
        ManureEnrichment.of(
                List.of(dry, liquid),
                new Mass(1000),
                WetBasisMoisture.percent(15),
                MoistureRange.exactly(WetBasisMoisture.percent(25)))
            .evaluate();

    Near.amount("of 850 kg", result.parts().get(0).amount(), "1.7 kg", 1e-12);
    assertThat(result.totals()).hasSize(2);
    Near.presented(result);
  }
}
