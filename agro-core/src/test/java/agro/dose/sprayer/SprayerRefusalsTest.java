package agro.dose.sprayer;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import agro.dose.ProductPerArea;
import agro.dose.SprayVolume;
import agro.report.InputProblem;
import agro.units.Area;
import agro.units.AreaUnit;
import agro.units.Density;
import agro.units.FlowRate;
import agro.units.Length;
import agro.units.MassPerArea;
import agro.units.MassPerMass;
import agro.units.Pressure;
import agro.units.Speed;
import agro.units.Volume;
import agro.units.VolumePerArea;
import agro.units.WorkTime;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Input from which no setting follows is refused: what was read, expected, why, how to mend it. */
class SprayerRefusalsTest {

  private static final Length HALF = Length.parse("0.5 m");
  private static final Length NO_LENGTH = new Length(0);
  private static final Speed WALK = Speed.parse("4 km/h");
  private static final WorkTime MINUTE = new WorkTime(60);
  private static final WorkTime NO_TIME = new WorkTime(0);
  private static final SprayerFlow FLOW = new SprayerFlow(new FlowRate(1));
  private static final NozzleFlow NOZZLE = new NozzleFlow(new FlowRate(1));
  private static final SprayLayout LANCE = SprayLayout.lance(1, HALF);
  private static final SprayUnits METRIC = SprayUnits.METRIC;
  private static final Volume LITRE = new Volume(1);
  private static final Area PLOT = new Area(100);
  private static final ProductPerArea RATE = ProductPerArea.parse("1 L/ha");

  static Stream<Arguments> problems() {
    return Stream.of(
            flows(),
            layouts(),
            numbers(),
            courses(),
            plots(),
            catches(),
            nozzles(),
            jobs(),
            injections())
        .flatMap(List::stream);
  }

  private static Arguments problem(
      ThrowingCallable call, String read, String expected, String why, String cure) {
    return arguments(read, call, expected, why, cure);
  }

  private static List<Arguments> flows() {
    return List.of(
        problem(
            () -> new NozzleFlow(new FlowRate(0)),
            "the nozzle flow is 0 L/min",
            "above zero",
            "covers nothing",
            "clean or replace the nozzle"),
        problem(
            () -> new SprayerFlow(new FlowRate(0)),
            "the sprayer flow is 0 L/min",
            "above zero",
            "covers nothing",
            "catch the flow of all nozzles"),
        problem(
            () -> NOZZLE.through(0),
            "the number of nozzles is 0",
            "at least 1",
            "a sprayer has nozzles",
            "count the nozzles"),
        problem(
            () -> SprayCalibration.ofSprayer(LANCE, FLOW, new Speed(0)),
            "the speed is 0 m/s",
            "above zero",
            "stands still",
            "time a measured course"));
  }

  private static List<Arguments> layouts() {
    return List.of(
        problem(
            () -> SprayerFlow.ofNozzles(List.of()),
            "the list of nozzles is empty",
            "each nozzle that sprays",
            "covers nothing",
            "catch each nozzle"),
        problem(
            () -> SprayLayout.boom(12, NO_LENGTH),
            "the nozzle spacing is 0 m",
            "above zero",
            "divided by speed and width",
            "measure the nozzle spacing"),
        problem(
            () -> SprayLayout.boom(0, HALF),
            "the number of nozzles is 0",
            "at least 1",
            "put out something",
            "count the nozzles"),
        problem(
            () -> SprayLayout.lance(1, NO_LENGTH),
            "the swath is 0 m",
            "above zero",
            "divided by speed and width",
            "measure the swath"),
        problem(
            () -> SprayLayout.band(1, 1, Length.parse("75 cm"), Length.parse("25 cm")),
            "the band is 0.75 m wide on rows of 0.25 m",
            "at most as wide as the row spacing",
            "easily written in the wrong places",
            "band width first"),
        problem(
            () -> SprayLayout.orchard(8, NO_LENGTH, AlleyPattern.EVERY_ALLEY_BOTH_SIDES),
            "the row distance is 0 m",
            "above zero",
            "divided by speed and width",
            "measure the row distance"),
        problem(
            () -> new TreatedVolume(new VolumePerArea(0)),
            "the volume per treated area is 0 L/ha",
            "above zero",
            "puts out nothing",
            "from the label"));
  }

  private static List<Arguments> numbers() {
    return List.of(
        problem(
            () -> new RelativeUncertainty(0.1, 0),
            "a relative uncertainty of 0.1 with 0.0 degrees of freedom",
            "above 0",
            "Student's t",
            "n - 1 degrees of freedom"),
        problem(
            () -> new AreaPerTime(0),
            "a work rate of 0.0 m²/s",
            "above zero",
            "divided by it",
            "multiply speed and swath"),
        problem(
            () -> new RelativeUncertainty(0.1, 3).halfWidth(95),
            "the confidence level is 95",
            "between 0 and 1",
            "has no end",
            "write 95 % as 0.95"));
  }

  private static List<Arguments> courses() {
    return List.of(
        problem(
            () -> TimedCourse.of(NO_LENGTH, MINUTE),
            "the length of the course is 0 m",
            "above zero",
            "divided by the time",
            "measure it with a tape"),
        problem(
            () -> TimedCourse.of(HALF, NO_TIME),
            "the reading is 0 s",
            "above zero",
            "pull the mean down",
            "measure again"),
        problem(
            () -> new RepeatedReadings<Volume>(List.of()),
            "the list of readings is empty",
            "at least one reading",
            "no mean",
            "write each reading down"),
        problem(
            () -> TimedWalk.of(LANCE, HALF, new Volume(0)),
            "the reading is 0 L",
            "above zero",
            "blocked nozzle",
            "measure again"),
        problem(
            () -> TimedWalk.of(LANCE, HALF, LITRE).taking(NO_TIME),
            "the time of the course is 0 s",
            "above zero",
            "divided by the time",
            "needs no time"));
  }

  private static List<Arguments> plots() {
    return List.of(
        problem(
            () -> MeasuredPlot.of(new Area(0), LITRE),
            "the area of the plot is 0 m²",
            "above zero",
            "divided by the area",
            "measure length and width"),
        problem(
            () -> new MeasuredPlot(PLOT, 25, RepeatedReadings.of(LITRE), METRIC),
            "the share of the plot that got wet is 25",
            "up to 1",
            "more than the whole plot",
            "25 % as 0.25"),
        problem(
            () -> OunceMethod.us(NO_LENGTH),
            "the width of the course is 0 m",
            "above zero",
            "divided by the width",
            "nozzle spacing"),
        problem(
            () -> OunceMethod.us(HALF).onCourseTimes(0),
            "the number of reference areas in the course is 0",
            "at least 1",
            "gives no time",
            "ten times as long"),
        problem(
            () -> new SpotSpraying(FLOW, MINUTE, PLOT, 3, new Area(200), METRIC),
            "3 spots of 100 m² in a field of 200 m²",
            "at most as large as the field",
            "the dose twice",
            "the unit of the field"),
        problem(
            () -> new SpotSpraying(FLOW, MINUTE, PLOT, 0, new Area(200), METRIC),
            "the number of spots is 0",
            "at least 1",
            "nothing is sprayed",
            "count the spots"));
  }

  private static List<Arguments> catches() {
    var one = NozzleCatch.of("1", LITRE);
    return List.of(
        problem(
            () -> CatchTest.of(MINUTE, List.of()),
            "no nozzle was caught",
            "at least one nozzle",
            "a mean of nothing",
            "30 to 60 seconds"),
        problem(
            () -> CatchTest.of(NO_TIME, List.of(one)),
            "the catching time is 0 s",
            "above zero",
            "divided by the time",
            "write the seconds"),
        problem(
            () -> CatchTest.of(MINUTE, List.of(one, NozzleCatch.of(" 1 ", LITRE))),
            "nozzle 1 is named twice",
            "each nozzle once",
            "different spreads",
            "under one name"),
        problem(
            () -> CatchTest.ofRow(MINUTE, LITRE, LITRE).onSprayerOf(1),
            "2 nozzles were caught on a sprayer of 1",
            "as many as the sprayer has",
            "for all nozzles",
            "count the nozzles"),
        problem(
            () -> NozzleCatch.of(" ", LITRE),
            "the name of a nozzle is blank",
            "a name or a number",
            "cannot be acted on",
            "from left to right"),
        problem(
            () -> new NozzleCatch("7", List.of()),
            "nozzle 7 has no catch",
            "one catch or more",
            "not the same as a blocked one",
            "leave the nozzle out"),
        problem(
            () -> CatchTest.ofRow(MINUTE, new Volume(0), new Volume(0)).evaluate(),
            "nothing was caught under any nozzle",
            "at least one nozzle that gives something",
            "the mean would be zero",
            "check filter and pump"),
        problem(
            () ->
                SprayCalibration.ofMeasured(
                    LANCE,
                    CatchTest.ofRow(MINUTE, LITRE, LITRE).evaluate(),
                    TimedCourse.of(HALF, MINUTE).evaluate()),
            "2 nozzles were caught, but the layout has 1",
            "the nozzles of this layout",
            "times its nozzles",
            "count the nozzles"));
  }

  private static List<Arguments> nozzles() {
    var curve = new NozzleCurve(NOZZLE, Pressure.parse("3 bar"));
    var volume = SprayVolume.parse("200 L/ha");
    return List.of(
        problem(
            () -> curve.flowAt(new Pressure(0)),
            "the pressure is 0 kPa",
            "above zero",
            "square root of the pressure",
            "read the gauge"),
        problem(
            () -> NozzleChoice.of(LANCE, volume, WALK, new Pressure(0).to(new Pressure(300))),
            "the lowest pressure is 0 kPa",
            "above zero",
            "without pressure",
            "from the nozzle's table"),
        problem(
            () -> NozzleMark.parse("11007"),
            "the nozzle mark is \"11007\"",
            "a size alone: 01, 015, 02",
            "follow from the size",
            "leave out the letters"),
        problem(
            () -> NozzleMark.parse("blue"),
            "the nozzle mark is \"blue\"",
            "a spray angle and a size",
            "follow from the size",
            "read the digits"),
        problem(
            () -> new LiquidDensity(new Density(1090)),
            "the liquid is 1091 times as heavy as water (1090 kg/L)",
            "0.5 to 3 times",
            "a unit was mistaken",
            "1000 kg/m³"),
        problem(
            () -> LiquidDensity.ofSpecificGravity(0),
            "the specific gravity is 0.0",
            "from 0.5 to 3",
            "square root",
            "weigh a litre"),
        problem(
            () ->
                LiquidDensity.ofSpecificGravity(1.28)
                    .volumeCarrying(MassPerArea.parse("84 kg/ha"), new MassPerMass(0)),
            "the content of the liquid is 0 g/kg",
            "above zero",
            "cannot carry it",
            "28 % is 280 g/kg"),
        problem(
            () -> DropletDensity.perSquareCentimetre(0, new TreatedVolume(volume.perArea())),
            "the droplet diameter is 0.0 µm",
            "above zero",
            "divided by that of one droplet",
            "in µm"));
  }

  private static List<Arguments> jobs() {
    return List.of(
        problem(
            () -> WorkRate.of(new Speed(0), HALF),
            "the speed is 0 m/s",
            "above zero",
            "covers nothing",
            "time a measured course"),
        problem(
            () -> WorkRate.of(WALK, HALF).spraying(70),
            "the share of the time in which it sprays is 70",
            "up to 1",
            "turns, walking back and filling",
            "write 70 % as 0.7"),
        problem(
            () -> WorkRate.of(WALK, HALF).timeFor(new Area(0)),
            "the area of the field is 0 m²",
            "above zero",
            "takes no time",
            "measure the field"),
        problem(
            () -> new PumpJob(0, MINUTE, NO_TIME, 1),
            "the number of pumps is 0",
            "above zero",
            "minutes for each",
            "divide the spray"),
        problem(
            () -> new PumpJob(1e12, MINUTE, NO_TIME, 1),
            "the number of pumps is 1000000000000",
            "up to 1 000 000",
            "minutes for each",
            "check their units"),
        problem(
            () -> new PumpJob(3, NO_TIME, NO_TIME, 1),
            "the time for one pump is 0 s",
            "above zero",
            "number of pumps times this",
            "time one full pump"),
        problem(
            () -> new PumpJob(3, MINUTE, NO_TIME, 0),
            "the number of operators is 0",
            "at least 1",
            "carry the pump",
            "count the people"),
        problem(
            () -> PumpJob.of(PLOT, SprayVolume.parse("200 L/ha"), new Volume(0), MINUTE),
            "the volume of the tank is 0 L",
            "above zero",
            "divided by the tank",
            "read the mark"),
        problem(
            () -> PumpJob.ofPumpsPer(-1, AreaUnit.ACRE, PLOT, MINUTE),
            "the number of pumps is -0.0247",
            "above zero",
            "minutes for each",
            "divide the spray"));
  }

  private static List<Arguments> injections() {
    var water = new FlowRate(50);
    var field = Area.of(1, AreaUnit.HECTARE);
    return List.of(
        problem(
            () -> new DripInjection(field, RATE, water, new FlowRate(60), MINUTE),
            "the injector gives 60 L/min into a flow of 50 L/min",
            "below the flow of water",
            "contains what the injector gives",
            "a factor of 60 apart"),
        problem(
            () -> new DripInjection(field, RATE, new FlowRate(0), new FlowRate(1), MINUTE),
            "the flow of water is 0 L/min",
            "above zero",
            "with the water",
            "multiply the drippers"),
        problem(
            () -> DripInjection.ofStock(field, RATE, water, new FlowRate(1), new Volume(0)),
            "the volume of the stock is 0 L",
            "above zero",
            "takes up the stock",
            "choose a tank"),
        problem(
            () -> DripInjection.ofStockAndTime(field, RATE, water, LITRE, NO_TIME),
            "the time of injection is 0 s",
            "above zero",
            "in no time",
            "within the watering"),
        problem(
            () ->
                DripInjection.ofStock(field, RATE, water, new FlowRate(0.5), new Volume(0.8))
                    .evaluate(),
            "the product alone, 1 L, is more than the stock of 0.8 L",
            "holds the product and water",
            "the whole dose",
            "inject for longer"));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("problems")
  void refusalsSayWhatToDo(
      String read, ThrowingCallable call, String expected, String why, String cure) {
    var problem = catchThrowableOfType(InputProblem.class, call);
    assertThat(problem).isNotNull();
    assertThat(problem.read()).contains(read);
    assertThat(problem.expected()).contains(expected);
    assertThat(problem.why()).contains(why);
    assertThat(problem.cure()).contains(cure);
    assertThat(problem.getMessage()).contains("Expected: ").contains("Why: ").contains("Mend: ");
  }

  @Test
  void thereAreEnough() {
    assertThat(problems()).hasSizeGreaterThanOrEqualTo(54);
  }

  /** A worn flow of zero for a new nozzle would make every nozzle infinitely worn. */
  @Test
  void newFlowOfZeroIsRefused() {
    assertThatThrownBy(
            () ->
                new CatchTest(
                    List.of(NozzleCatch.of("1", LITRE)),
                    MINUTE,
                    1,
                    Optional.of(new FlowRate(0)),
                    NozzleTolerance.TEN_PERCENT,
                    METRIC))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("the flow of a new nozzle is 0 L/min");
  }
}
