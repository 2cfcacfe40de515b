package agro.dose.sprayer;

import agro.units.Length;
import agro.units.Numbers;
import agro.units.Volume;
import agro.working.Caution;
import agro.working.Presentable;
import agro.working.Presentation;
import agro.working.Working;
import java.util.Objects;

/**
 * Calibration on a course of a reference area: the course is as long as the area is wide, course =
 * area ÷ width (340.3125 ft² ÷ width in feet), it is covered at spraying speed, and what is caught
 * in the same time is, number for number, the volume per area.
 *
 * <p>The width belongs to what is caught: the nozzle spacing for one nozzle of a boom, the band
 * width for all nozzles over one row, the swath for a lance.
 *
 * @param reference the reference area
 * @param width width covered by the nozzles that are caught, above zero
 * @param multiple how many times the reference area the course is long, 1 or more
 * @param units units of print
 */
public record OunceMethod(ReferenceCourse reference, Length width, int multiple, SprayUnits units) {

  /** Refuses a course without width. */
  public OunceMethod {
    Objects.requireNonNull(reference, "reference");
    SprayerChecks.aboveZero(
        width,
        "width of the course",
        "the length of the course is the reference area divided by the width",
        "take the nozzle spacing, the band width or the swath");
    SprayerChecks.oneOrMore(
        multiple,
        "reference areas in the course",
        "a course of no length gives no time",
        "write 1, or 10 for a course ten times as long");
    Objects.requireNonNull(units, "units");
  }

  /**
   * The method on 1/128 acre, where US fluid ounces caught are US gallons per acre.
   *
   * @param width width covered by the nozzles that are caught
   * @return the method
   */
  public static OunceMethod us(Length width) {
    return new OunceMethod(ReferenceCourse.US_OUNCES, width, 1, SprayUnits.US);
  }

  /**
   * The method on 10 m², where millilitres caught are litres per hectare.
   *
   * @param width width covered by the nozzles that are caught
   * @return the method
   */
  public static OunceMethod metric(Length width) {
    return new OunceMethod(ReferenceCourse.MILLILITRES, width, 1, SprayUnits.METRIC);
  }

  /**
   * The same method on a longer course, whose catch is divided by the same number.
   *
   * @param times how many times longer, 1 or more
   * @return a new method
   */
  public OunceMethod onCourseTimes(int times) {
    return new OunceMethod(reference, width, times, units);
  }

  /**
   * The length of the course.
   *
   * @return length and steps
   */
  public CourseLength evaluate() {
    var area = reference.area();
    var length = area.dividedBy(width).times(multiple);
    var working =
        Working.of("Course on which " + reference.caught().words() + "s caught are the volume")
            .step(
                "length of the course",
                multiple == 1 ? "area / width" : "n × area / width",
                (multiple == 1 ? "" : multiple + " × ")
                    + SprayUnits.print(area, units.smallArea())
                    + " / "
                    + SprayUnits.print(width, units.course()),
                SprayUnits.print(length, units.course()),
                reference.source())
            .step(
                "reading",
                "",
                "",
                Numbers.plain(multiple)
                    + " "
                    + reference.caught().symbol()
                    + " caught in the time of the course is 1 "
                    + reference.volume().symbol())
            .withCautions(Caution.all());
    return new CourseLength(length, working);
  }

  /**
   * The volume per area from what was caught in the time of the course.
   *
   * @param first catch of the nozzles that cover the width
   * @param others repeated catches
   * @return volume per area with its uncertainty and steps
   */
  public CalibratedVolume volumeFrom(Volume first, Volume... others) {
    var catches = RepeatedReadings.of(first, others);
    var asRead =
        new SprayUnits(
            units.flow(),
            units.speed(),
            units.width(),
            reference.volume(),
            reference.caught(),
            units.pressure());
    return AreaCatch.finish(
        Working.of("Spray volume from a catch on " + reference.shareWords()),
        reference.area().times(multiple),
        catches,
        1,
        asRead,
        reference.source());
  }

  /**
   * A course and its length.
   *
   * @param length length of the course
   * @param working the steps, with cautions
   */
  public record CourseLength(Length length, Working working) implements Presentable {
    @Override
    public Presentation presentation() {
      return working.presentation();
    }
  }
}
