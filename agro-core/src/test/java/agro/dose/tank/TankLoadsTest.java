package agro.dose.tank;

import static agro.ReferenceTable.number;
import static agro.ReferenceTable.whole;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import agro.ReferenceTable;
import agro.dose.ProductAmount;
import agro.dose.Severity;
import agro.dose.SprayVolume;
import agro.units.AreaUnit;
import agro.units.Volume;
import agro.working.Caution;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.math.BigDecimal;
import java.util.List;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Loads and amounts against printed and hand-computed figures; sources stand in the tables. */
class TankLoadsTest {

  static List<NamedCsvRecord> loads() {
    return ReferenceTable.read(TankLoadsTest.class, "tank-loads.csv");
  }

  static List<NamedCsvRecord> misprints() {
    return ReferenceTable.read(TankLoadsTest.class, "tank-misprints.csv");
  }

  private static TankMix mix(NamedCsvRecord line) {
    return plan(line.getField("field"), line.getField("spray"), line.getField("tank"))
        .with(TankPartner.of("Product A", line.getField("rate")))
        .evaluate();
  }

  private static TankMixPlan plan(String field, String spray, String tank) {
    return TankMixPlan.of(
        SprayedField.parse("Mill Piece", field),
        SprayVolume.parse(spray),
        SprayTank.mounted(Volume.parse(tank)));
  }

  @ParameterizedTest
  @MethodSource("loads")
  void agreesWithTheTable(NamedCsvRecord line) {
    var mix = mix(line);
    double tolerance = number(line, "tolerance");
    assertThat(mix.numberOfLoads()).isEqualTo(whole(line, "loads"));
    assertThat(mix.refills()).isEqualTo(whole(line, "loads") - 1);
    isClose(mix.fullTank().get(0).amount(), line.getField("full_tank"), tolerance);
    isClose(mix.totalOf("Product A"), line.getField("total"), tolerance);
    isClose(mix.sprayed(), line.getField("spray_total"), 1e-9);
    if (!line.getField("part_load").isEmpty()) {
      var part = mix.partLoad().orElseThrow();
      isClose(part.made(), line.getField("part_load"), 1e-9);
      isClose(part.amountOf("Product A"), line.getField("part_amount"), tolerance);
    }
  }

  @Test
  void tablesAreWhole() {
    assertThat(loads()).hasSize(18);
    assertThat(misprints()).hasSize(4);
    assertThat(wrongFillings()).hasSize(3);
  }

  @ParameterizedTest
  @MethodSource("misprints")
  void truncatedPrintsAndRoundedOuncesAreNotTheFigure(NamedCsvRecord line) {
    var printed = ProductAmount.parse(line.getField("printed_full_tank")).highNumber();
    var computed = mix(line).fullTank().get(0).amount().highNumber();
    assertThat(Math.abs(computed / printed - 1)).isGreaterThan(number(line, "apart"));
  }

  private static void isClose(ProductAmount amount, String expected, double share) {
    if (!expected.isEmpty()) {
      var wanted = ProductAmount.parse(expected);
      var close = Percentage.withPercentage(100 * share);
      assertThat(amount.isLike(wanted)).isTrue();
      assertThat(amount.lowNumber()).isCloseTo(wanted.lowNumber(), close);
      assertThat(amount.highNumber()).isCloseTo(wanted.highNumber(), close);
    }
  }

  private static void isClose(Volume volume, String expected, double share) {
    double litres = Volume.parse(expected).litres();
    assertThat(volume.litres()).isCloseTo(litres, within(share * litres));
  }

  /** Area per tank = tank ÷ spray volume: 400 L at 300 L/ha; 500 US gal at 20 US gal/ac. */
  @Test
  void areaOfAFullTank() {
    var mix = plan("3.7 ha", "300 L/ha", "400 L").with(productA()).evaluate();
    assertThat(mix.areaPerFullLoad().squareMetres()).isCloseTo(40_000 / 3.0, within(1e-8));
    var acres = plan("3 ac", "20 gal (US)/ac", "500 gal (US)").with(productA()).evaluate();
    assertThat(acres.areaPerFullLoad().in(AreaUnit.ACRE)).isCloseTo(25, within(1e-12));
  }

  static List<NamedCsvRecord> wrongFillings() {
    return ReferenceTable.read(TankLoadsTest.class, "wrong-fillings.csv");
  }

  @ParameterizedTest
  @MethodSource("wrongFillings")
  void mistakesAtTheTankAndTheirSize(NamedCsvRecord line) {
    var mix =
        plan("3.7 ha", "300 L/ha", line.getField("tank"))
            .with(TankPartner.of("Product A", line.getField("rate")))
            .evaluate();
    var filled = Volume.parse(line.getField("filled"));
    double right = mix.in(filled).get(0).amount().highNumber();
    double wrong = ProductAmount.parse(line.getField("wrong")).highNumber();
    isClose(mix.in(filled).get(0).amount(), line.getField("right"), 1e-9);
    double times = number(line, "times");
    assertThat(wrong / right).isCloseTo(times, within(number(line, "tolerance")));
    if (!line.getField("id").equals("E14")) {
      assertThat(mix.strengthOfFullDoseIn(filled))
          .isCloseTo(times, within(number(line, "tolerance")));
    }
  }

  /** 2.0 L in the last 310 L instead of 1.55 L: 1.29 times the dose. */
  @Test
  void fullDoseInThePartLoadIsNamedWithItsSize() {
    var mix = plan("3.7 ha", "300 L/ha", "400 L").with(productA()).evaluate();
    var part = mix.partLoad().orElseThrow();
    assertThat(mix.strengthOfFullDoseIn(part.made())).isCloseTo(1.2903, within(1e-4));
    assertThat(mix.findings())
        .anySatisfy(finding -> assertThat(finding.sentence()).contains("310 L", "1.29 times"));
  }

  /** 0.1 + 0.2 and friends: a field that fills the tank exactly three times needs three loads. */
  @ParameterizedTest
  @CsvSource({
    "0.3, 100, 10, 3, 0",
    "0.30000000000000004, 100, 10, 3, 0",
    "0.29999999999999993, 100, 10, 3, 0",
    "2.1, 100, 0.7, 300, 0",
    "0.7, 300, 70, 3, 0",
    "1.1, 300, 110, 3, 0",
    "0.300001, 100, 10, 4, 0.0001",
    "0.299999, 100, 10, 3, 9.9999",
    "0.1, 100, 10, 1, 0",
    "0.0999, 100, 10, 1, 9.99",
    "0.1001, 100, 10, 2, 0.01",
    "0.00001, 100, 10, 1, 0.001"
  })
  void loadsAtExactMultiplesAndBesideThem(
      double hectares, double spray, double tank, int loads, double part) {
    var mix =
        plan(text(hectares) + " ha", text(spray) + " L/ha", text(tank) + " L")
            .with(productA())
            .evaluate();
    assertThat(mix.numberOfLoads()).isEqualTo(loads);
    assertThat(mix.partLoad().map(load -> load.made().litres()).orElse(0.0))
        .isCloseTo(part, within(1e-9));
    assertThat(mix.departureOfSums()).isLessThan(1e-9);
  }

  private static String text(double number) {
    return new BigDecimal(number).toPlainString();
  }

  @Test
  void deadVolumeIsMadeUpOnceAndLeft() {
    var plan =
        TankMixPlan.of(
                SprayedField.parse("Mill Piece", "3.7 ha"),
                SprayVolume.parse("300 L/ha"),
                SprayTank.mounted(Volume.parse("400 L")).withDeadVolume(Volume.parse("10 L")))
            .with(productA());
    var mix = plan.evaluate();
    assertThat(mix.loads())
        .extracting(load -> Math.round(load.made().litres()))
        .containsExactly(400L, 390L, 330L);
    assertThat(mix.made().litres()).isCloseTo(1120, within(1e-9));
    assertThat(mix.leftover().volume().litres()).isEqualTo(10);
    assertThat(mix.leftover().holds().get(0).amount().highNumber()).isCloseTo(0.05, within(1e-12));
    var equal = plan.lastLoad(LastLoad.EQUAL_LOADS).evaluate();
    assertThat(equal.loads())
        .extracting(load -> load.made().litres())
        .containsExactly(380.0, 370.0);
    assertThat(equal.loads().get(1).count()).isEqualTo(2);
    var full = plan.lastLoad(LastLoad.FULL_LOAD).evaluate();
    assertThat(full.made().litres()).isCloseTo(400 + 390 + 390, within(1e-9));
    assertThat(full.leftover().surplus().litres()).isCloseTo(60, within(1e-9));
    assertThat(full.partLoad()).isEmpty();
  }

  @Test
  void spraySmallerThanADeadVolumeIsMadeUpOnTopOfIt() {
    var mix =
        TankMixPlan.of(
                SprayedField.parse("Garden", "100 m²"),
                SprayVolume.parse("300 L/ha"),
                SprayTank.mounted(Volume.parse("400 L")).withDeadVolume(Volume.parse("10 L")))
            .with(productA())
            .evaluate();
    assertThat(mix.numberOfLoads()).isEqualTo(1);
    assertThat(mix.made().litres()).isCloseTo(13, within(1e-9));
    assertThat(mix.totalOf("Product A").highNumber()).isCloseTo(0.065, within(1e-12));
  }

  @Test
  void whatIsLeftTellsWhatTheFieldGot() {
    var mix = plan("2 ha", "200 L/ha", "400 L").with(productA()).evaluate();
    var check = mix.check(Volume.parse("40 L"));
    assertThat(check.sprayed().perArea().litresPerHectare()).isCloseTo(180, within(1e-9));
    assertThat(check.departure()).isCloseTo(-0.1, within(1e-12));
    assertThat(check.severity()).isEqualTo(Severity.NOTE);
    assertThat(check.holds().get(0).amount().highNumber()).isCloseTo(0.3, within(1e-12));
    var worse = mix.check(Volume.parse("60 L"));
    assertThat(worse.severity()).isEqualTo(Severity.WARNING);
    assertThat(worse.sentence()).contains("15 % less than planned", "calibrate");
    assertThat(worse.presentation().toText())
        .contains("= 400 L − 60 L", "= 340 L ÷ 2 ha", "= 170 L/ha ÷ 200 L/ha − 1")
        .contains(Caution.HEADING);
    assertThat(mix.check(Volume.parse("0 L")).sentence())
        .isEqualTo("The field got what was planned.");
  }

  @Test
  void waterIsSprayLessLiquids() {
    var mix =
        plan("1 ha", "200 L/ha", "200 L")
            .with(TankPartner.of("Product A", "1-2 L/ha"))
            .with(TankPartner.of("Product B", "5 kg/ha"))
            .evaluate();
    assertThat(mix.water().low().litres()).isEqualTo(198);
    assertThat(mix.water().high().litres()).isEqualTo(199);
  }

  private static TankPartner productA() {
    return TankPartner.of("Product A", "1.5 L/ha");
  }
}
