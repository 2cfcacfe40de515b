package agro.dose.sprayer;

import agro.units.Length;
import agro.units.Volume;
import agro.units.WorkTime;
import agro.working.Working;
import java.util.Objects;
import java.util.Optional;

/**
 * The timed walk: the sprayer is carried or driven over a course, the time is taken, and standing
 * still the flow is caught for the same time. Volume per area = catch ÷ (course × swath); the
 * seconds cancel out.
 *
 * @param layout nozzles and widths
 * @param course length of the course, above zero
 * @param catches what all nozzles together gave in the time of the course, once or repeated
 * @param time time of the course, if the speed is to be shown
 * @param units units of print
 */
public record TimedWalk(
    SprayLayout layout,
    Length course,
    RepeatedReadings<Volume> catches,
    Optional<WorkTime> time,
    SprayUnits units) {

  /** Refuses a course without length. */
  public TimedWalk {
    Objects.requireNonNull(layout, "layout");
    SprayerChecks.aboveZero(
        course,
        "length of the course",
        "the volume is caught for the area of the course",
        "mark a course and measure it with a tape");
    Objects.requireNonNull(catches, "catches");
    time.ifPresent(
        seconds ->
            SprayerChecks.aboveZero(
                seconds,
                "time of the course",
                "the speed is the course divided by the time",
                "take the time with a watch, or leave it out: the volume needs no time"));
    Objects.requireNonNull(units, "units");
  }

  /**
   * A walk in metric print.
   *
   * @param layout nozzles and widths
   * @param course length of the course
   * @param first catch of all nozzles in the time of the course
   * @param others repeated catches
   * @return the walk
   */
  public static TimedWalk of(SprayLayout layout, Length course, Volume first, Volume... others) {
    return new TimedWalk(
        layout, course, RepeatedReadings.of(first, others), Optional.empty(), SprayUnits.METRIC);
  }

  /**
   * The same walk with its time, so that the speed is shown.
   *
   * @param seconds time of the course
   * @return a new walk
   */
  public TimedWalk taking(WorkTime seconds) {
    return new TimedWalk(layout, course, catches, Optional.of(seconds), units);
  }

  /**
   * The same walk in other units.
   *
   * @param other units of print
   * @return a new walk
   */
  public TimedWalk printedIn(SprayUnits other) {
    return new TimedWalk(layout, course, catches, time, other);
  }

  /**
   * The spray volume per area.
   *
   * @return volume per treated area and per area of field, with uncertainty and steps
   */
  public CalibratedVolume evaluate() {
    var working = Working.of("Spray volume from a timed walk: " + layout.words(units));
    if (time.isPresent()) {
      var seconds = RepeatedReadings.of(time.get());
      var timed = new TimedCourse(course, seconds, units).evaluate();
      working = working.followedBy(timed.working());
    }
    return AreaCatch.finish(
        working,
        course.times(layout.treatedWidth()),
        catches,
        layout.treatedShare(),
        units,
        SprayerSources.IRRI);
  }
}
