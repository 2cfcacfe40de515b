package agro.dose.sprayer;

import static agro.ReferenceTable.number;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import agro.ReferenceTable;
import agro.dose.ProductPerArea;
import agro.dose.SprayVolume;
import agro.units.ExactFactor;
import agro.units.FlowRate;
import agro.units.Length;
import agro.units.Quantity;
import agro.units.Speed;
import agro.units.Volume;
import agro.units.VolumePerArea;
import agro.units.VolumeUnit;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Flow, speed, swath and volume per area against printed examples. */
class VolumeEquationTest {

  private static final SprayUnits METRIC = SprayUnits.METRIC;

  static List<NamedCsvRecord> examples() {
    return ReferenceTable.read(VolumeEquationTest.class, "volume-equation.csv");
  }

  @ParameterizedTest
  @MethodSource("examples")
  void agreesWithThePrintedExamples(NamedCsvRecord line) {
    double tolerance = number(line, "tolerance");
    var expected = line.getField("expected");
    switch (line.getField("find")) {
      case "VOLUME" ->
          assertClose(
              volume(flow(line), speed(line), swath(line)),
              VolumePerArea.parse(expected),
              tolerance);
      case "FLOW" ->
          assertClose(
              RequiredSetting.flow(layout(swath(line)), wanted(line), speed(line), METRIC)
                  .sprayer()
                  .flow(),
              FlowRate.parse(expected),
              tolerance);
      case "SPEED" ->
          assertClose(
              RequiredSetting.speed(layout(swath(line)), wanted(line), flow(line), METRIC).speed(),
              Speed.parse(expected),
              tolerance);
      case "SWATH" ->
          assertClose(
              RequiredSetting.swath(wanted(line), flow(line), speed(line), METRIC).swath(),
              Length.parse(expected),
              tolerance);
      default -> throw new AssertionError(line.getField("find"));
    }
  }

  @Test
  void tableIsWhole() {
    assertThat(examples()).hasSize(23);
  }

  /** 60 min × 10 000 m² ÷ 1000 m; 60 × 43 560 × 12 ÷ 5280; a twelfth of it; 5940 ÷ 128. */
  @Test
  void constantsAreExact() {
    assertThat(SprayUnits.METRIC.constant()).isEqualTo(ExactFactor.of(600, 1));
    assertThat(SprayUnits.US.constant()).isEqualTo(ExactFactor.of(5940, 1));
    assertThat(SprayUnits.IMPERIAL.constant()).isEqualTo(ExactFactor.of(5940, 1));
    assertThat(SprayUnits.US_FEET.constant()).isEqualTo(ExactFactor.of(495, 1));
    assertThat(SprayUnits.US_OUNCES.constant()).isEqualTo(ExactFactor.of(4640625, 100000));
  }

  /** The constant stands on the blackboard in the units of the reader. */
  @Test
  void workingUsesTheUnitsOfTheReader() {
    var boom = SprayLayout.boom(12, Length.parse("20 in"));
    var calibration =
        SprayCalibration.ofNozzle(
            boom, new NozzleFlow(FlowRate.parse("0.4 gal (US)/min")), Speed.parse("10 mph"));
    assertThat(calibration.printedIn(SprayUnits.US).evaluate().working().toText())
        .contains("5940 × 4.8 gal (US)/min / (10 mi/h × 240 in)")
        .contains("11.88 gal (US)/ac");
    assertThat(calibration.evaluate().working().toText())
        .contains("600 × 18.17 L/min / (16.093 km/h × 6.096 m)")
        .contains("111.13 L/ha");
  }

  /** Nozzle spacing taken for the width of the boom would give 24 times as much. */
  @Test
  void boomOfManyNozzlesGivesWhatOneNozzleGives() {
    var nozzle = new NozzleFlow(new FlowRate(1.2));
    var speed = Speed.parse("8 km/h");
    var spacing = Length.parse("50 cm");
    for (int nozzles : new int[] {1, 2, 24}) {
      var found = SprayCalibration.ofNozzle(SprayLayout.boom(nozzles, spacing), nozzle, speed);
      assertClose(found.evaluate().perFieldArea().perArea(), new VolumePerArea(180), 1e-12);
    }
    var whole =
        SprayCalibration.ofSprayer(SprayLayout.boom(24, spacing), nozzle.through(24), speed);
    assertClose(whole.evaluate().perFieldArea().perArea(), new VolumePerArea(180), 1e-12);
  }

  /** Ontario's bands of 25 cm on rows of 75 cm: 300 L per treated hectare are 100 L per field. */
  @Test
  void bandsShowTreatedAreaAndFieldSideBySide() {
    var bands = SprayLayout.band(6, 1, Length.parse("25 cm"), Length.parse("75 cm"));
    var flow = new NozzleFlow(new FlowRate(0.75));
    var found = SprayCalibration.ofNozzle(bands, flow, Speed.parse("6 km/h")).evaluate();
    assertClose(found.perTreatedArea().perArea(), new VolumePerArea(300), 1e-12);
    assertClose(found.perFieldArea().perArea(), new VolumePerArea(100), 1e-12);
    assertThat(found.remarks().get(0)).contains("3 times too high");
    assertThat(found.presentation().toText())
        .contains("per treated area")
        .contains("300 L/ha")
        .contains("per area of field")
        .contains("100 L/ha");
    var field = new SprayVolume(new VolumePerArea(100));
    var speed = Speed.parse("6 km/h");
    assertClose(
        RequiredSetting.flow(bands, field, speed, METRIC).nozzle().flow(), flow.flow(), 1e-12);
    assertClose(RequiredSetting.speed(bands, field, flow.through(6), METRIC).speed(), speed, 1e-12);
  }

  /** One pass covers half a row distance, one or two, and the volume follows. */
  @Test
  void orchardPassesCoverRows() {
    var flow = new SprayerFlow(new FlowRate(20));
    var speed = Speed.parse("5 km/h");
    var rows = Length.parse("4 m");
    var expected =
        Map.of(
            AlleyPattern.EVERY_ALLEY_BOTH_SIDES, 600,
            AlleyPattern.EACH_SIDE_OF_EACH_ROW, 1200,
            AlleyPattern.EVERY_SECOND_ALLEY, 300,
            AlleyPattern.OVER_THE_ROW, 600);
    for (var pattern : AlleyPattern.values()) {
      var layout = SprayLayout.orchard(16, rows, pattern);
      var found = SprayCalibration.ofSprayer(layout, flow, speed).evaluate();
      assertClose(found.perFieldArea().perArea(), new VolumePerArea(expected.get(pattern)), 1e-12);
      assertThat(found.working().title()).contains("rows every 4 m, " + pattern.words());
    }
  }

  /**
   * North Carolina State University Extension: 7.5 gal/ac and 8 fl oz/ac are 1.0667 fl oz/gal
   * (printed 1.06), 3.2 fl oz for 3 gal; 96 mL at 30 mL to the ounce, 94.64 mL exactly.
   */
  @Test
  void backpackWorksheet() {
    var spray = SprayVolume.parse("7.5 gal (US)/ac");
    var strength = ProductPerArea.parse("8 fl oz (US)/ac").inSpray(spray);
    double perGallon = strength.in(Volume.of(1, VolumeUnit.US_GALLON)).lowNumber();
    double perLoad = strength.in(Volume.of(3, VolumeUnit.US_GALLON)).lowNumber();
    assertThat(new Volume(perGallon).in(VolumeUnit.US_FLUID_OUNCE)).isCloseTo(1.0667, within(5e-5));
    assertThat(new Volume(perLoad).in(VolumeUnit.US_FLUID_OUNCE)).isCloseTo(3.2, within(1e-9));
    assertThat(new Volume(perLoad).in(VolumeUnit.MILLILITRE)).isCloseTo(94.64, within(5e-3));
    assertThat(3.2 * 30).isCloseTo(96, within(1e-9));
  }

  /** Nozzles of several sizes, as on an orchard sprayer, are added up, not averaged by guess. */
  @Test
  void nozzlesOfSeveralSizesAddUp() {
    var low = NozzleFlow.parse("0.8 L/min");
    var high = NozzleFlow.parse("1.6 L/min");
    var all = SprayerFlow.ofNozzles(List.of(low, low, high));
    assertClose(all.flow(), SprayerFlow.parse("3.2 L/min").flow(), 1e-12);
  }

  /** University of Missouri Extension: 10 % slower is "a similar" excess; it is 11.1 %. */
  @Test
  void slowerDrivingPutsOutMore() {
    var flow = new SprayerFlow(new FlowRate(2));
    var swath = Length.parse("4 m");
    double asPlanned = volume(flow, Speed.parse("3 km/h"), swath).litresPerHectare();
    assertThat(volume(flow, Speed.parse("2.7 km/h"), swath).litresPerHectare() / asPlanned)
        .isCloseTo(1.1111, within(5e-5));
    assertThat(volume(flow, Speed.parse("3.3 km/h"), swath).litresPerHectare() / asPlanned)
        .isCloseTo(0.9091, within(5e-5));
  }

  private static SprayLayout layout(Length swath) {
    return SprayLayout.lance(1, swath);
  }

  private static VolumePerArea volume(SprayerFlow flow, Speed speed, Length swath) {
    return SprayCalibration.ofSprayer(layout(swath), flow, speed)
        .evaluate()
        .perTreatedArea()
        .perArea();
  }

  private static SprayerFlow flow(NamedCsvRecord line) {
    return new SprayerFlow(FlowRate.parse(line.getField("flow")));
  }

  private static Speed speed(NamedCsvRecord line) {
    return Speed.parse(line.getField("speed"));
  }

  private static Length swath(NamedCsvRecord line) {
    return Length.parse(line.getField("swath"));
  }

  private static TreatedVolume wanted(NamedCsvRecord line) {
    return new TreatedVolume(VolumePerArea.parse(line.getField("volume")));
  }

  static <Q extends Quantity<Q>> void assertClose(Q actual, Q expected, double share) {
    assertThat(actual.ratioTo(expected)).isCloseTo(1, within(share));
  }
}
