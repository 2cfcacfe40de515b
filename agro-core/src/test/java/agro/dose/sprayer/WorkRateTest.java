package agro.dose.sprayer;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import agro.dose.ProductAmount;
import agro.dose.ProductPerArea;
import agro.dose.SprayVolume;
import agro.units.Area;
import agro.units.AreaUnit;
import agro.units.FlowRate;
import agro.units.LandUnit;
import agro.units.Length;
import agro.units.Speed;
import agro.units.Volume;
import agro.units.VolumeUnit;
import agro.units.WorkTime;
import agro.units.WorkTimeUnit;
import org.junit.jupiter.api.Test;

/** Work rate, hours of a job, injection into drip lines. */
class WorkRateTest {

  private static final WorkTime QUARTER = WorkTime.of(15, WorkTimeUnit.MINUTE);

  /** A machine handbook: 8 km/h and 12 m are 0.16 ha/min, 9.6 ha/h; 10 ha take 62.5 min. */
  @Test
  void hectaresPerHour() {
    var work = WorkRate.of(Speed.parse("8 km/h"), Length.parse("12 m"));
    var rate = work.evaluate().rate();
    assertThat(rate.hectaresPerMinute()).isCloseTo(0.16, within(1e-12));
    assertThat(rate.hectaresPerHour()).isCloseTo(9.6, within(1e-12));
    var time = work.timeFor(Area.of(10, AreaUnit.HECTARE));
    assertThat(time.in(WorkTimeUnit.MINUTE)).isCloseTo(62.5, within(1e-9));
    assertThat(work.evaluate().working().toText()).contains("0.16 ha/min, 9.6 ha/h");
    assertThat(work.spraying(0.5).timeFor(Area.of(10, AreaUnit.HECTARE)).ratioTo(time))
        .isCloseTo(2, within(1e-12));
  }

  /** 5 mph and 40 ft are 24.24 ac/h (computed here): mph × ft ÷ 8.25. */
  @Test
  void acresPerHour() {
    var work = WorkRate.of(Speed.parse("5 mph"), Length.parse("40 ft"));
    assertThat(work.evaluate().rate().acresPerHour())
        .isCloseTo(24.24, within(5e-3))
        .isCloseTo(5 * 40 / 8.25, within(1e-12));
    assertThat(work.printedIn(SprayUnits.US_FEET).evaluate().working().toText())
        .contains("24.24 ac/h");
  }

  /** 200 L/ac in pumps of 15 L: 13 full pumps and 5 L; at 15 min each 3 h 20 min; invented time. */
  @Test
  void hoursFromPumpsAndMinutes() {
    var job =
        PumpJob.of(
            Area.of(1, AreaUnit.ACRE),
            SprayVolume.parse("200 L/ac"),
            Volume.of(15, VolumeUnit.LITRE),
            QUARTER);
    var found = job.evaluate();
    assertThat(found.fullPumps()).isEqualTo(13);
    assertThat(found.partPump()).isCloseTo(1.0 / 3, within(1e-9));
    assertThat(found.fills()).isEqualTo(14);
    assertThat(found.labour().in(WorkTimeUnit.MINUTE)).isCloseTo(200, within(1e-6));
    assertThat(found.elapsed()).isEqualTo(found.labour());
    var filled = job.filling(WorkTime.of(5, WorkTimeUnit.MINUTE)).evaluate();
    assertThat(filled.labour().in(WorkTimeUnit.MINUTE)).isCloseTo(270, within(1e-6));
    assertThat(filled.working().toText()).contains("14 × 5 min").contains("4.5 h");
  }

  /** 13 full pumps and a part among three people: five rounds, the part in the last of them. */
  @Test
  void jobsAreShared() {
    var job = new PumpJob(13 + 1.0 / 3, QUARTER, new WorkTime(0), 3);
    assertThat(job.evaluate().elapsed().in(WorkTimeUnit.MINUTE)).isCloseTo(75, within(1e-9));
    assertThat(job.by(13).evaluate().elapsed().in(WorkTimeUnit.MINUTE)).isCloseTo(20, within(1e-6));
    assertThat(job.by(20).evaluate().elapsed().in(WorkTimeUnit.MINUTE)).isCloseTo(15, within(1e-9));
    assertThat(job.by(3).evaluate().labour()).isEqualTo(job.by(1).evaluate().labour());
  }

  /** 100 L/ha at 16 L/min: 10 ha are 1000 L in 62.5 min, as 8 km/h and 12 m say. */
  @Test
  void flowEmptiesTheTank() {
    var layout = SprayLayout.boom(24, Length.parse("0.5 m"));
    var field = Area.of(10, AreaUnit.HECTARE);
    var flow = new SprayerFlow(new FlowRate(16));
    var job = PumpJob.ofFlow(field, SprayVolume.parse("100 L/ha"), new Volume(400), flow);
    var found = job.evaluate();
    assertThat(found.fullPumps()).isEqualTo(2);
    assertThat(found.partPump()).isCloseTo(0.5, within(1e-9));
    assertThat(found.labour().in(WorkTimeUnit.MINUTE)).isCloseTo(62.5, within(1e-9));
    var byWidth = WorkRate.ofLayout(Speed.parse("8 km/h"), layout).timeFor(field);
    assertThat(found.labour().ratioTo(byWidth)).isCloseTo(1, within(1e-9));
  }

  /** A whole number of pumps has no part, whatever the rounding of binary fractions. */
  @Test
  void wholePumpsHaveNoPart() {
    var job = PumpJob.of(new Area(3000), SprayVolume.parse("500 L/ha"), new Volume(15), QUARTER);
    assertThat(job.evaluate().fullPumps()).isEqualTo(10);
    assertThat(job.evaluate().partPump()).isZero();
    assertThat(job.evaluate().fills()).isEqualTo(10);
    for (double pumps : new double[] {10 - 1e-12, 10, 10 + 1e-12}) {
      var found = new PumpJob(pumps, QUARTER, new WorkTime(60), 1).evaluate();
      assertThat(found.fullPumps()).isEqualTo(10);
      assertThat(found.partPump()).isZero();
      assertThat(found.fills()).isEqualTo(10);
    }
  }

  /** Pumps are counted per local unit of land, with its place. */
  @Test
  void pumpsPerBigha() {
    var job =
        PumpJob.ofPumpsPer(4, LandUnit.BIGHA_WEST_BENGAL, Area.of(2.5, AreaUnit.ACRE), QUARTER);
    double bighas = 2.5 * 43560 / 14400;
    assertThat(job.pumps()).isCloseTo(4 * bighas, within(1e-9));
  }

  /** 1 to 1.5 L/ha on 0.4 ha in 60 L of stock at 1 L/min, water 50 L/min; invented figures. */
  @Test
  void dripInjection() {
    var rate = ProductPerArea.parse("1-1.5 L/ha");
    var field = Area.of(0.4, AreaUnit.HECTARE);
    var water = new FlowRate(50);
    var plan =
        DripInjection.ofStock(field, rate, water, new FlowRate(1), new Volume(60)).evaluate();
    assertThat(plan.product().lowNumber()).isCloseTo(0.4, within(1e-12));
    assertThat(plan.product().highNumber()).isCloseTo(0.6, within(1e-12));
    assertThat(plan.stock().litres()).isCloseTo(60, within(1e-9));
    assertThat(plan.waterToAdd().orElseThrow().low().litres()).isCloseTo(59.4, within(1e-9));
    assertThat(plan.waterToAdd().orElseThrow().high().litres()).isCloseTo(59.6, within(1e-9));
    assertThat(plan.water().litres()).isCloseTo(3000, within(1e-9));
    assertThat(plan.perLitreOfStock().highNumber()).isCloseTo(0.01, within(1e-12));
    assertThat(plan.perLitreOfWater().highNumber()).isCloseTo(0.0002, within(1e-12));
    assertThat(plan.waterPerStock()).isCloseTo(50, within(1e-12));
    assertThat(plan.working().toText()).contains("label must allow").contains("3000 L");

    var sameTime =
        DripInjection.ofStockAndTime(field, rate, water, new Volume(60), new WorkTime(3600));
    assertThat(sameTime.injector().litresPerMinute()).isCloseTo(1, within(1e-12));
  }

  /** A strength in the water gives back the rate per area; a solid is filled up, never measured. */
  @Test
  void dripInjectionFromAStrength() {
    var job =
        DripInjection.ofConcentration(
            Area.of(1, AreaUnit.HECTARE),
            ProductAmount.parse("0.2 g"),
            new FlowRate(50),
            new FlowRate(1),
            WorkTime.of(1, WorkTimeUnit.HOUR));
    var plan = job.evaluate();
    assertThat(plan.product().lowNumber()).isCloseTo(0.6, within(1e-12));
    assertThat(plan.perLitreOfWater().lowNumber()).isCloseTo(0.0002, within(1e-15));
    assertThat(plan.waterToAdd()).isEmpty();
  }
}
