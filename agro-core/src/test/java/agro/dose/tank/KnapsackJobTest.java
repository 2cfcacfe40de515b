package agro.dose.tank;

import static agro.ReferenceTable.number;
import static agro.ReferenceTable.whole;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import agro.ReferenceTable;
import agro.dose.ProductAmount;
import agro.dose.ProductPerArea;
import agro.dose.PumpsPerArea;
import agro.dose.SprayVolume;
import agro.units.AreaUnit;
import agro.units.LandUnit;
import agro.units.Volume;
import agro.units.WorkTime;
import agro.working.Caution;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Pumps of a knapsack and hours of the job. */
class KnapsackJobTest {

  /**
   * Twelve knapsack loads cover one hectare, so each gets a twelfth of the dose: Bateman, Pesticide
   * Use in Cocoa, section 6.3.3; the number, 300 mL/ha in 25 mL, computed here.
   */
  @Test
  void dosePerPump() {
    var pumps = PumpsPerArea.of(12, AreaUnit.HECTARE);
    assertThat(pumps.dosePerPump(ProductPerArea.parse("300 mL/ha")).highNumber())
        .isCloseTo(0.025, within(1e-15));
    var job =
        new KnapsackJobPlan(
                SprayedField.parse("Mill Piece", "1 ha"), pumps, WorkTime.parse("25 min"))
            .evaluate();
    var working = job.dosePerPump("Product A", ProductPerArea.parse("300 mL/ha"));
    assertThat(working.toText()).contains("= 25 mL");
    assertThat(working.references()).containsExactly(TankSources.COCOA_MANUAL);
    assertThat(working.cautions()).isEqualTo(Caution.all());
  }

  static List<NamedCsvRecord> pumps() {
    return ReferenceTable.read(KnapsackJobTest.class, "pumps.csv");
  }

  @ParameterizedTest
  @MethodSource("pumps")
  void agreesWithTheTable(NamedCsvRecord line) {
    var land = AreaUnit.valueOf(line.getField("land"));
    var pumps = PumpsPerArea.of(number(line, "pumps_per_land"), land);
    var job =
        new KnapsackJobPlan(
                SprayedField.of("Mill Piece", number(line, "field"), land),
                pumps,
                WorkTime.parse(line.getField("minutes") + " min"))
            .evaluate();
    var perPump = pumps.dosePerPump(ProductPerArea.parse(line.getField("dose"))).highNumber();
    double expected = ProductAmount.parse(line.getField("dose_per_pump")).highNumber();
    assertThat(perPump).isCloseTo(expected, within(1e-9 * expected));
    assertThat(job.pumps()).isCloseTo(number(line, "pumps"), within(1e-9));
    assertThat(job.fillings()).isEqualTo(whole(line, "fillings"));
    assertThat(job.hours()).isCloseTo(number(line, "hours"), within(1e-9));
  }

  @Test
  void tableIsWhole() {
    assertThat(pumps()).hasSize(3);
  }

  /** 200 L/ac from 15 L is 13.33 pumps an acre; 14 fillings; 20 min each are 4.44 h. */
  @Test
  void pumpsAndHoursOfAnAcre() {
    var job =
        KnapsackJobPlan.of(
                SprayedField.parse("Mill Piece", "1 ac"),
                SprayVolume.parse("200 L/ac"),
                SprayTank.knapsack(Volume.parse("15 L")),
                WorkTime.parse("20 min"))
            .evaluate();
    assertThat(job.plan().pumps().number()).isCloseTo(13.333333333, within(1e-9));
    assertThat(job.fillings()).isEqualTo(14);
    assertThat(job.hours()).isCloseTo(4.444444444, within(1e-9));
    assertThat(job.presentation().toText()).contains("13.33 pumps/ac", "4.44 h", "14");
  }

  @ParameterizedTest
  @CsvSource({
    "BIGHA_WEST_BENGAL, 2, 10, 20, 5.0",
    "GUNTHA, 40, 0.5, 20, 5.0",
    "BIGHA_PUCCA, 3, 8, 24, 6.0"
  })
  void pumpsPerLocalUnitOfLand(
      LandUnit land, double units, double pumpsPerUnit, long fillings, double hours) {
    var job =
        new KnapsackJobPlan(
                SprayedField.of("Mill Piece", units, land),
                PumpsPerArea.of(pumpsPerUnit, land),
                WorkTime.parse("15 min"))
            .evaluate();
    assertThat(job.fillings()).isEqualTo(fillings);
    assertThat(job.hours()).isCloseTo(hours, within(1e-9));
    assertThat(job.working().toText()).contains(land.symbol());
  }

  @Test
  void pumpsAndSprayVolumeAreTheSameThing() {
    var tank = SprayTank.knapsack(Volume.parse("16 L")).withDeadVolume(Volume.parse("0.5 L"));
    var spray = SprayVolume.parse("320 L/ha");
    var pumps = PumpsPerArea.from(spray, tank.usable(), LandUnit.GUNTHA);
    assertThat(pumps.sprayVolume(tank.usable()).perArea().litresPerHectare())
        .isCloseTo(320, within(1e-9));
    assertThat(pumps.on(SprayedField.of("A", 40, LandUnit.GUNTHA).area()))
        .isCloseTo(320 * 0.40468564224 / 15.5, within(1e-9));
  }
}
