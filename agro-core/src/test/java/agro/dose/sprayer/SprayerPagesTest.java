package agro.dose.sprayer;

import static org.assertj.core.api.Assertions.assertThat;

import agro.dose.ProductPerArea;
import agro.dose.ProductPerSprayVolume;
import agro.dose.SprayVolume;
import agro.units.Area;
import agro.units.FlowRate;
import agro.units.Length;
import agro.units.Pressure;
import agro.units.Speed;
import agro.units.Volume;
import agro.units.WorkTime;
import agro.working.Caution;
import agro.working.Presentable;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Every result shows its steps and all cautions, in each form of print and each family of units.
 */
class SprayerPagesTest {

  private static final Speed SPEED = Speed.parse("5 km/h");
  private static final NozzleFlow NOZZLE = new NozzleFlow(new FlowRate(0.8));
  private static final SprayLayout BANDS =
      SprayLayout.band(2, 1, Length.parse("25 cm"), Length.parse("75 cm"));

  static Stream<Presentable> results() {
    var all = new ArrayList<Presentable>(inUnits(SprayUnits.METRIC));
    all.addAll(inUnits(SprayUnits.US));
    all.addAll(inUnits(SprayUnits.IMPERIAL));
    all.addAll(others());
    return all.stream();
  }

  private static List<Presentable> inUnits(SprayUnits units) {
    var course = TimedCourse.of(Length.parse("100 m"), new WorkTime(72), new WorkTime(73));
    var caught =
        CatchTest.ofRow(new WorkTime(60), new Volume(0.8), new Volume(0.82)).printedIn(units);
    var curve = new NozzleCurve(NOZZLE, Pressure.parse("3 bar"));
    var treated = TreatedVolume.ofField(SprayVolume.parse("100 L/ha"), BANDS);
    var range = Pressure.parse("2 bar").to(Pressure.parse("4 bar"));
    return List.of(
        course.printedIn(units).evaluate(),
        caught.evaluate(),
        SprayCalibration.ofMeasured(BANDS, caught.evaluate(), course.evaluate()).evaluate(),
        RequiredSetting.flow(BANDS, treated, SPEED, units),
        RequiredSetting.speed(BANDS, treated, NOZZLE.through(2), units),
        RequiredSetting.swath(treated, NOZZLE.through(2), SPEED, units),
        TimedWalk.of(BANDS, Length.parse("50 m"), new Volume(0.5)).printedIn(units).evaluate(),
        MeasuredPlot.of(new Area(100), new Volume(2)).printedIn(units).evaluate(),
        new SpotSpraying(NOZZLE.through(1), new WorkTime(4), new Area(1), 50, new Area(1000), units)
            .evaluate(),
        curve.atPressure(Pressure.parse("2 bar"), units),
        curve.atFlow(new NozzleFlow(new FlowRate(1)), units),
        NozzleChoice.of(BANDS, treated, SPEED, range)
            .printedIn(units, FlowBasis.LITRES_AT_3_BAR)
            .evaluate(),
        DensityCorrection.of(
            LiquidDensity.ofSpecificGravity(1.28), SprayVolume.parse("200 L/ha"), units),
        WorkRate.of(SPEED, Length.parse("12 m")).spraying(0.7).printedIn(units).evaluate());
  }

  private static List<Presentable> others() {
    var ounces = OunceMethod.us(Length.parse("20 in"));
    var caught = Volume.parse("12 fl oz (US)");
    var volume = ounces.volumeFrom(caught, Volume.parse("13 fl oz (US)"), caught);
    return List.of(
        ounces.evaluate(),
        OunceMethod.metric(Length.parse("50 cm")).evaluate(),
        volume,
        volume.doseOf(ProductPerSprayVolume.parse("1-2 mL/L"), 0.9),
        volume.doseWhenMixedFor(ProductPerArea.parse("1 L/ha"), SprayVolume.parse("200 L/ha")),
        new PumpJob(12.5, new WorkTime(900), new WorkTime(240), 2).evaluate(),
        DripInjection.ofStock(
                new Area(4000),
                ProductPerArea.parse("500 g/ha"),
                new FlowRate(50),
                new FlowRate(1),
                new Volume(60))
            .evaluate());
  }

  @ParameterizedTest
  @MethodSource("results")
  void stepsAndCautionsInEveryForm(Presentable result) {
    var page = result.presentation();
    for (var text : List.of(page.toText(), page.toMarkdown(), page.toHtml())) {
      assertThat(text).containsPattern("1\\.|<ol>").doesNotContain("null").doesNotContain("NaN");
      assertThat(text.replaceAll("\\s+", " "))
          .contains(Caution.all().stream().map(SprayerPagesTest::start).toList());
    }
    assertThat(page.toText()).doesNotContain("E-").doesNotContain("Optional");
  }

  /** Its first words, since markup may stand around what follows. */
  private static String start(Caution caution) {
    return caution.line().substring(0, 12);
  }
}
