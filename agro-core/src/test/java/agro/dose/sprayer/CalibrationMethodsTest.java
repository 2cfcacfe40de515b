package agro.dose.sprayer;

import static agro.ReferenceTable.number;
import static agro.ReferenceTable.whole;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import agro.ReferenceTable;
import agro.units.Area;
import agro.units.AreaUnit;
import agro.units.FlowRate;
import agro.units.Length;
import agro.units.LengthUnit;
import agro.units.Speed;
import agro.units.SpeedUnit;
import agro.units.Volume;
import agro.units.VolumePerArea;
import agro.units.VolumePerAreaUnit;
import agro.units.WorkTime;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Timed course, ounce method, timed walk, measured plot and spots against printed examples. */
class CalibrationMethodsTest {

  static List<NamedCsvRecord> speeds() {
    return ReferenceTable.read(CalibrationMethodsTest.class, "course-speeds.csv");
  }

  static List<NamedCsvRecord> courses() {
    return ReferenceTable.read(CalibrationMethodsTest.class, "ounce-courses.csv");
  }

  static List<NamedCsvRecord> catches() {
    return ReferenceTable.read(CalibrationMethodsTest.class, "area-catches.csv");
  }

  @ParameterizedTest
  @MethodSource("speeds")
  void speedOfACourse(NamedCsvRecord line) {
    var course = Length.parse(line.getField("course"));
    var speed = TimedCourse.of(course, new WorkTime(number(line, "seconds"))).evaluate().speed();
    var unit =
        line.getField("unit").equals("mph")
            ? SpeedUnit.MILE_PER_HOUR
            : SpeedUnit.KILOMETRE_PER_HOUR;
    assertThat(speed.in(unit))
        .isCloseTo(number(line, "computed"), within(number(line, "half_digit")))
        .isCloseTo(number(line, "printed"), within(0.26));
  }

  /** Idaho Extension prints 0.682, and 136.4 for 200 ft. */
  @Test
  void constantOfMilesPerHour() {
    var foot = TimedCourse.of(Length.of(1, LengthUnit.FOOT), new WorkTime(1)).evaluate().speed();
    assertThat(foot.in(SpeedUnit.MILE_PER_HOUR))
        .isCloseTo(3600.0 / 5280, within(1e-15))
        .isCloseTo(0.682, within(5e-4));
    assertThat(200 * foot.in(SpeedUnit.MILE_PER_HOUR)).isCloseTo(136.4, within(0.05));
  }

  /** The mean speed of several runs is the whole way over the whole time. */
  @Test
  void repeatedRunsGiveSpeedAndUncertainty() {
    var course =
        TimedCourse.of(
            Length.parse("100 m"), new WorkTime(118), new WorkTime(122), new WorkTime(120));
    var found = course.evaluate();
    assertThat(found.speed().in(SpeedUnit.KILOMETRE_PER_HOUR)).isCloseTo(3, within(1e-12));
    assertThat(found.uncertainty().orElseThrow().standard())
        .isCloseTo(2 / Math.sqrt(3) / 120, within(1e-12));
    assertThat(found.working().toText()).contains("(118 s + 122 s + 120 s) / 3");
    assertThat(TimedCourse.of(Length.parse("100 m"), new WorkTime(118)).evaluate().uncertainty())
        .isEmpty();
  }

  @ParameterizedTest
  @MethodSource("courses")
  void courseOfTheOunceMethod(NamedCsvRecord line) {
    var method =
        OunceMethod.us(Length.parse(line.getField("width"))).onCourseTimes(whole(line, "multiple"));
    double feet = method.evaluate().length().in(LengthUnit.FOOT);
    assertThat(feet).isCloseTo(number(line, "computed"), within(0.00501));
    if (!line.getField("printed").isEmpty()) {
      assertThat(feet)
          .isCloseTo(number(line, "printed"), within(number(line, "printed_tolerance")));
    }
  }

  /** On its reference area the number caught is the number of the volume, in each system. */
  @Test
  void numberCaughtIsNumberPerArea() {
    for (var reference : ReferenceCourse.values()) {
      var method = new OunceMethod(reference, Length.parse("0.5 m"), 1, SprayUnits.METRIC);
      var found = method.volumeFrom(Volume.of(17, reference.caught()));
      assertThat(found.perFieldArea().perArea().in(reference.volume()))
          .isCloseTo(17, within(1e-12));
      var course = method.evaluate().length();
      assertThat(course.times(Length.parse("0.5 m")).ratioTo(reference.area()))
          .isCloseTo(1, within(1e-12));
      var tenfold = method.onCourseTimes(10).volumeFrom(Volume.of(170, reference.caught()));
      assertThat(tenfold.perFieldArea().perArea().in(reference.volume()))
          .isCloseTo(17, within(1e-12));
    }
    assertThat(ReferenceCourse.US_OUNCES.area().in(AreaUnit.SQUARE_FOOT))
        .isCloseTo(340.3125, within(1e-10));
  }

  @ParameterizedTest
  @MethodSource("catches")
  void catchOnAnArea(NamedCsvRecord line) {
    var caught = Volume.parse(line.getField("caught"));
    var course = Length.parse(line.getField("course"));
    var side = Length.parse(line.getField("side"));
    var expected = VolumePerArea.parse(line.getField("expected"));
    double tolerance = number(line, "tolerance");
    var walk = TimedWalk.of(SprayLayout.lance(1, side), course, caught).evaluate();
    VolumeEquationTest.assertClose(walk.perTreatedArea().perArea(), expected, tolerance);
    var plot = MeasuredPlot.of(course.times(side), caught).evaluate();
    VolumeEquationTest.assertClose(plot.perFieldArea().perArea(), expected, tolerance);
  }

  @Test
  void tablesAreWhole() {
    assertThat(speeds()).hasSize(14);
    assertThat(courses()).hasSize(21);
    assertThat(catches()).hasSize(9);
  }

  /** The timed walk and the equation tell the same, whatever the time. */
  @Test
  void timedWalkAgreesWithTheEquation() {
    var lance = SprayLayout.lance(1, Length.parse("1 m"));
    var walk =
        TimedWalk.of(lance, Length.parse("50 m"), Volume.parse("1.1 L"))
            .taking(new WorkTime(60))
            .evaluate();
    var flow = new SprayerFlow(new FlowRate(1.1));
    var equation = SprayCalibration.ofSprayer(lance, flow, Speed.parse("50 m/min")).evaluate();
    VolumeEquationTest.assertClose(
        walk.perFieldArea().perArea(), equation.perFieldArea().perArea(), 1e-12);
    assertThat(walk.working().toText()).contains("speed").contains("3 km/h");
  }

  @Test
  void bandsOnAMeasuredPlot() {
    var plot = MeasuredPlot.of(new Area(900), new Volume(9));
    var bands = SprayLayout.band(1, 1, Length.parse("25 cm"), Length.parse("75 cm"));
    var found = plot.inBands(bands).evaluate();
    assertThat(found.perFieldArea().perArea().litresPerHectare()).isCloseTo(100, within(1e-9));
    assertThat(found.perTreatedArea().perArea().litresPerHectare()).isCloseTo(300, within(1e-9));
  }

  /** 15 L on 300 m² of spots are 500 L per treated hectare, computed here. */
  @Test
  void spotsShowTreatedAreaAndFieldSideBySide() {
    var spots =
        new SpotSpraying(
            new SprayerFlow(new FlowRate(0.6)),
            new WorkTime(5),
            new Area(1),
            300,
            new Area(4000),
            SprayUnits.METRIC);
    var found = spots.evaluate();
    assertThat(found.perTreatedArea().perArea().litresPerHectare()).isCloseTo(500, within(1e-9));
    assertThat(found.perFieldArea().perArea().litresPerHectare()).isCloseTo(37.5, within(1e-9));
    assertThat(found.working().toText()).contains("0.05 L").contains("7.5 %");
  }

  /** Litres per acre are printed to readers who think in acres. */
  @Test
  void printedPerAcre() {
    var plot = MeasuredPlot.of(new Area(200), new Volume(2)).printedIn(SprayUnits.METRIC_PER_ACRE);
    assertThat(plot.evaluate().presentation().toText()).contains("40.47 L/ac");
    assertThat(SprayUnits.METRIC_PER_ACRE.volume()).isEqualTo(VolumePerAreaUnit.LITRE_PER_ACRE);
  }
}
