package agro.dose.sprayer;

import agro.units.Length;
import agro.units.Numbers;
import agro.units.WorkTime;
import agro.units.WorkTimeUnit;
import agro.working.Caution;
import agro.working.Working;
import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;

/**
 * A measured course that is walked or driven at spraying speed, once or several times: km/h = 3.6 ×
 * m ÷ s, mph = ft ÷ (22/15 × s).
 *
 * @param course length of the course, above zero
 * @param times time of each run
 * @param units units in which the working is printed
 */
public record TimedCourse(Length course, RepeatedReadings<WorkTime> times, SprayUnits units) {

  /** Refuses a course without length. */
  public TimedCourse {
    SprayerChecks.aboveZero(
        course,
        "length of the course",
        "the speed is the course divided by the time",
        "mark a course of at least 30 m and measure it with a tape");
    Objects.requireNonNull(times, "times");
    Objects.requireNonNull(units, "units");
  }

  /**
   * A course with the times of one or more runs, in metric print.
   *
   * @param course length of the course, above zero
   * @param first time of the first run, above zero
   * @param others times of further runs
   * @return the course
   */
  public static TimedCourse of(Length course, WorkTime first, WorkTime... others) {
    return new TimedCourse(course, RepeatedReadings.of(first, others), SprayUnits.METRIC);
  }

  /**
   * The same course in other units.
   *
   * @param other units of the working
   * @return a new course
   */
  public TimedCourse printedIn(SprayUnits other) {
    return new TimedCourse(course, times, other);
  }

  /**
   * The speed.
   *
   * @return speed, its uncertainty and the steps
   */
  public CourseSpeed evaluate() {
    var mean = times.mean();
    var speed = course.dividedBy(mean);
    var working = Working.of("Speed from a timed course");
    if (times.count() > 1) {
      working =
          working.step(
              "mean time", "t = sum of the times / n", sum(), seconds(mean) + " in the mean");
    }
    working =
        working.step(
            "speed",
            "v = course / time",
            SprayUnits.print(course, units.course()) + " / " + seconds(mean),
            units.speed(speed),
            SprayerSources.TEAGASC);
    if (times.uncertainty().isPresent()) {
      working =
          working.step(
              "relative standard error of the mean time",
              "u = s / (√n × t)",
              "",
              times.uncertainty().get().toString(),
              SprayerSources.T_INTERVAL);
    }
    return new CourseSpeed(course, speed, times.uncertainty(), working.withCautions(Caution.all()));
  }

  private String sum() {
    List<WorkTime> all = times.readings();
    return all.stream().map(TimedCourse::seconds).collect(Collectors.joining(" + ", "(", ")"))
        + " / "
        + all.size();
  }

  private static String seconds(WorkTime time) {
    return Numbers.significant(time.in(WorkTimeUnit.SECOND), 5) + " s";
  }
}
