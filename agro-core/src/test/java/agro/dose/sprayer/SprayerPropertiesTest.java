package agro.dose.sprayer;

import static agro.dose.sprayer.VolumeEquationTest.assertClose;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import agro.dose.ProductPerArea;
import agro.units.Area;
import agro.units.AreaUnit;
import agro.units.FlowRate;
import agro.units.Length;
import agro.units.Pressure;
import agro.units.Speed;
import agro.units.Volume;
import agro.units.VolumePerArea;
import agro.units.WorkTime;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Scale;
import net.jqwik.api.constraints.Size;

/** What holds for every sprayer. */
class SprayerPropertiesTest {

  private static final double CLOSE = 1e-9;

  @Provide
  Arbitrary<SprayUnits> units() {
    return Arbitraries.of(
        SprayUnits.METRIC,
        SprayUnits.METRIC_PER_ACRE,
        SprayUnits.US,
        SprayUnits.US_FEET,
        SprayUnits.US_OUNCES,
        SprayUnits.IMPERIAL);
  }

  private static VolumePerArea volume(double flow, double speed, double swath) {
    var layout = SprayLayout.lance(1, new Length(swath));
    return SprayCalibration.ofSprayer(layout, new SprayerFlow(new FlowRate(flow)), new Speed(speed))
        .evaluate()
        .perFieldArea()
        .perArea();
  }

  @Property(seed = "8", tries = 200)
  void linearInFlowAndInverseInSpeedAndSwath(
      @ForAll @DoubleRange(min = 0.01, max = 100) @Scale(4) double flow,
      @ForAll @DoubleRange(min = 0.1, max = 10) @Scale(4) double speed,
      @ForAll @DoubleRange(min = 0.1, max = 40) @Scale(4) double swath,
      @ForAll @DoubleRange(min = 0.1, max = 10) @Scale(4) double factor) {
    var one = volume(flow, speed, swath);
    assertClose(volume(flow * factor, speed, swath), one.times(factor), CLOSE);
    assertClose(volume(flow, speed * factor, swath), one.dividedBy(factor), CLOSE);
    assertClose(volume(flow, speed, swath * factor), one.dividedBy(factor), CLOSE);
  }

  /** The constant of any family of units gives what the equation in base units gives. */
  @Property(seed = "8", tries = 200)
  void everyFormIsTheSameFormula(
      @ForAll("units") SprayUnits units,
      @ForAll @DoubleRange(min = 0.01, max = 100) @Scale(4) double flow,
      @ForAll @DoubleRange(min = 0.1, max = 10) @Scale(4) double speed,
      @ForAll @DoubleRange(min = 0.1, max = 40) @Scale(4) double swath) {
    double inUnits =
        units.constant().convert(1)
            * new FlowRate(flow).in(units.flow())
            / (new Speed(speed).in(units.speed()) * new Length(swath).in(units.width()));
    assertThat(inUnits / volume(flow, speed, swath).in(units.volume())).isCloseTo(1, within(CLOSE));
  }

  @Property(seed = "8", tries = 200)
  void everyUnknownIsFoundBack(
      @ForAll @DoubleRange(min = 0.01, max = 100) @Scale(4) double flow,
      @ForAll @DoubleRange(min = 0.1, max = 10) @Scale(4) double metresPerSecond,
      @ForAll @DoubleRange(min = 0.1, max = 40) @Scale(4) double metres,
      @ForAll("units") SprayUnits units) {
    var layout = SprayLayout.boom(3, new Length(metres));
    var speed = new Speed(metresPerSecond);
    var sprayer = new SprayerFlow(new FlowRate(flow));
    var found = SprayCalibration.ofSprayer(layout, sprayer, speed).evaluate().perTreatedArea();
    var needed = RequiredSetting.flow(layout, found, speed, units);
    assertClose(needed.sprayer().flow(), sprayer.flow(), CLOSE);
    assertClose(needed.nozzle().flow(), sprayer.flow().dividedBy(3), CLOSE);
    assertClose(RequiredSetting.speed(layout, found, sprayer, units).speed(), speed, CLOSE);
    assertClose(
        RequiredSetting.swath(found, sprayer, speed, units).swath(), new Length(3 * metres), CLOSE);
  }

  @Property(seed = "8", tries = 200)
  void pressureAndFlowRoundTrip(
      @ForAll @DoubleRange(min = 0.01, max = 20) @Scale(4) double flow,
      @ForAll @DoubleRange(min = 10, max = 2000) @Scale(2) double known,
      @ForAll @DoubleRange(min = 10, max = 2000) @Scale(2) double other) {
    var curve = new NozzleCurve(new NozzleFlow(new FlowRate(flow)), new Pressure(known));
    var there = curve.flowAt(new Pressure(other));
    assertClose(curve.pressureFor(new NozzleFlow(there)), new Pressure(other), CLOSE);
    var back = new NozzleCurve(new NozzleFlow(there), new Pressure(other));
    assertClose(back.flowAt(new Pressure(known)), new FlowRate(flow), CLOSE);
    assertThat(there.compareTo(new FlowRate(flow))).isEqualTo(Double.compare(other, known));
  }

  @Property(seed = "8", tries = 100)
  void treatedVolumeIsNeverBelowFieldVolume(
      @ForAll @DoubleRange(min = 0.05, max = 1) @Scale(3) double band,
      @ForAll @DoubleRange(min = 1, max = 4) @Scale(3) double row,
      @ForAll @IntRange(min = 1, max = 12) int rows) {
    var layout = SprayLayout.band(rows, 2, new Length(band), new Length(row));
    var found =
        SprayCalibration.ofNozzle(layout, new NozzleFlow(new FlowRate(0.8)), new Speed(1.5))
            .evaluate();
    var treated = found.perTreatedArea().perArea();
    var field = found.perFieldArea().perArea();
    assertThat(treated.ratioTo(field)).isCloseTo(row / band, within(CLOSE * row / band));
    assertClose(TreatedVolume.ofField(found.perFieldArea(), layout).perArea(), treated, CLOSE);
  }

  /** Mean between the extremes; verdicts agree with the share; scaling all catches changes none. */
  @Property(seed = "8", tries = 100)
  void catchTestsScale(
      @ForAll @Size(min = 2, max = 30) List<@DoubleRange(min = 0.1, max = 5) @Scale(3) Double> all,
      @ForAll @DoubleRange(min = 0.1, max = 10) @Scale(2) double factor) {
    var once = CatchTest.ofRow(new WorkTime(30), volumes(all, 1)).evaluate();
    var scaled = CatchTest.ofRow(new WorkTime(30), volumes(all, factor)).evaluate();
    assertClose(scaled.meanFlow().flow(), once.meanFlow().flow().times(factor), CLOSE);
    assertThat(scaled.uncertainty().orElseThrow().standard())
        .isCloseTo(once.uncertainty().orElseThrow().standard(), within(CLOSE));
    assertThat(scaled.outliers())
        .extracting(NozzleFinding::nozzle)
        .isEqualTo(once.outliers().stream().map(NozzleFinding::nozzle).toList());
    double sum = once.findings().stream().mapToDouble(NozzleFinding::fromMean).sum();
    assertThat(sum).isCloseTo(0, within(1e-9));
  }

  private static Volume[] volumes(List<Double> litres, double factor) {
    return litres.stream().map(value -> new Volume(value * factor)).toArray(Volume[]::new);
  }

  /** More people never take longer, and never less than the labour shared out evenly. */
  @Property(seed = "8", tries = 200)
  void jobsShareOut(
      @ForAll @DoubleRange(min = 0.1, max = 60) @Scale(2) double pumps,
      @ForAll @IntRange(min = 1, max = 9) int people) {
    var job = new PumpJob(pumps, new WorkTime(900), new WorkTime(300), people);
    var alone = job.by(1).evaluate();
    var shared = job.evaluate();
    assertThat(alone.elapsed().ratioTo(alone.labour())).isCloseTo(1, within(CLOSE));
    assertThat(shared.elapsed().seconds())
        .isLessThanOrEqualTo(alone.elapsed().seconds() * (1 + CLOSE))
        .isGreaterThanOrEqualTo(alone.labour().seconds() / people * (1 - CLOSE));
    assertThat(job.by(people + 1).evaluate().elapsed().seconds())
        .isLessThanOrEqualTo(shared.elapsed().seconds() * (1 + CLOSE));
  }

  /** All product goes into the stock and out with the water, and a range never turns round. */
  @Property(seed = "8", tries = 100)
  void injectionKeepsTheProduct(
      @ForAll @DoubleRange(min = 0.1, max = 5) @Scale(2) double hectares,
      @ForAll @DoubleRange(min = 0.5, max = 3) @Scale(2) double injector,
      @ForAll @IntRange(min = 30, max = 300) int minutes) {
    var plan =
        new DripInjection(
                Area.of(hectares, AreaUnit.HECTARE),
                ProductPerArea.parse("1-2 L/ha"),
                new FlowRate(40),
                new FlowRate(injector),
                new WorkTime(60.0 * minutes))
            .evaluate();
    double stock = plan.stock().litres();
    double water = plan.water().litres();
    double high = plan.product().highNumber();
    assertThat(high).isCloseTo(2 * hectares, within(CLOSE));
    assertThat(plan.perLitreOfStock().highNumber() * stock).isCloseTo(high, within(CLOSE));
    assertThat(plan.perLitreOfWater().highNumber() * water).isCloseTo(high, within(CLOSE));
    assertThat(plan.perLitreOfWater().lowNumber())
        .isLessThanOrEqualTo(plan.perLitreOfWater().highNumber());
    assertThat(plan.waterToAdd().orElseThrow().low().litres() + high)
        .isCloseTo(stock, within(CLOSE * stock));
  }
}
