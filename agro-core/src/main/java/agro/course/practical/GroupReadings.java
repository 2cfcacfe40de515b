package agro.course.practical;

import agro.dose.sprayer.CalibratedVolume;
import agro.dose.sprayer.CatchTest;
import agro.dose.sprayer.NozzleCatch;
import agro.dose.sprayer.NozzleFinding;
import agro.dose.sprayer.NozzleTolerance;
import agro.dose.sprayer.RelativeUncertainty;
import agro.dose.sprayer.RepeatedReadings;
import agro.dose.sprayer.SprayCalibration;
import agro.dose.sprayer.SprayLayout;
import agro.dose.sprayer.SprayUnits;
import agro.dose.sprayer.SprayerFlow;
import agro.dose.sprayer.TimedCourse;
import agro.dose.sprayer.TimedWalk;
import agro.report.InputProblem;
import agro.units.FlowRate;
import agro.units.Length;
import agro.units.Speed;
import agro.units.Volume;
import agro.units.VolumePerArea;
import agro.units.WorkTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * What one group of students measured on a sprayer, and what it made of it.
 *
 * @param group name or number of the group
 * @param sprayer the sprayer, empty when the file names none
 * @param layout nozzles and widths
 * @param pace how fast it was
 * @param output what came out
 * @param ownResult volume per area as the group worked it out itself
 * @param target volume per area that the group aims at
 */
public record GroupReadings(
    String group,
    String sprayer,
    SprayLayout layout,
    Pace pace,
    Output output,
    Optional<VolumePerArea> ownResult,
    Optional<VolumePerArea> target) {

  /** How fast a group walked or drove. */
  public sealed interface Pace permits TimedRuns, StatedSpeed, UntimedCourse {
    /**
     * The speed.
     *
     * @return mean speed over ground; nothing for a course that was not timed
     */
    Optional<Speed> meanSpeed();
  }

  /**
   * A course that was timed once or several times.
   *
   * @param course length of the course
   * @param times time of each run
   */
  public record TimedRuns(Length course, RepeatedReadings<WorkTime> times) implements Pace {
    /** Refuses nulls. */
    public TimedRuns {
      Objects.requireNonNull(course, "course");
      Objects.requireNonNull(times, "times");
    }

    @Override
    public Optional<Speed> meanSpeed() {
      return Optional.of(course.dividedBy(times.mean()));
    }
  }

  /**
   * A speed that was read off.
   *
   * @param speed speed over ground
   */
  public record StatedSpeed(Speed speed) implements Pace {
    /** Refuses null. */
    public StatedSpeed {
      Objects.requireNonNull(speed, "speed");
    }

    @Override
    public Optional<Speed> meanSpeed() {
      return Optional.of(speed);
    }
  }

  /**
   * A course that was sprayed without a watch; enough where the sprayer was filled up again.
   *
   * @param course length of the course
   */
  public record UntimedCourse(Length course) implements Pace {
    /** Refuses null. */
    public UntimedCourse {
      Objects.requireNonNull(course, "course");
    }

    @Override
    public Optional<Speed> meanSpeed() {
      return Optional.empty();
    }
  }

  /** What came out of the sprayer. */
  public sealed interface Output permits NozzleCatches, WholeOutput, Refilled {}

  /**
   * Catches under single nozzles, each for the same time.
   *
   * @param catches one entry for each nozzle that was caught
   * @param time time of catching
   */
  public record NozzleCatches(List<NozzleCatch> catches, WorkTime time) implements Output {
    /** Copies the list. */
    public NozzleCatches {
      catches = List.copyOf(catches);
      Objects.requireNonNull(time, "time");
    }
  }

  /**
   * What all nozzles together gave in a time.
   *
   * @param volumes the volumes, once or repeated
   * @param time time of catching
   */
  public record WholeOutput(RepeatedReadings<Volume> volumes, WorkTime time) implements Output {
    /** Refuses nulls. */
    public WholeOutput {
      Objects.requireNonNull(volumes, "volumes");
      Objects.requireNonNull(time, "time");
    }
  }

  /**
   * What was filled up again after the course was sprayed.
   *
   * @param volumes the volumes, once or repeated
   */
  public record Refilled(RepeatedReadings<Volume> volumes) implements Output {
    /** Refuses null. */
    public Refilled {
      Objects.requireNonNull(volumes, "volumes");
    }
  }

  /** Refuses a group without a name, and a refill without a course. */
  public GroupReadings {
    Objects.requireNonNull(sprayer, "sprayer");
    Objects.requireNonNull(layout, "layout");
    Objects.requireNonNull(pace, "pace");
    Objects.requireNonNull(output, "output");
    Objects.requireNonNull(ownResult, "ownResult");
    Objects.requireNonNull(target, "target");
    if (group.isBlank()) {
      throw InputProblem.of("a group without a name")
          .expected("a name or number")
          .because("the result names the groups")
          .mend("number the groups");
    }
    if (output instanceof Refilled && pace instanceof StatedSpeed) {
      throw InputProblem.of("group " + group + " filled up again, but states no course")
          .expected("the length of the course that was sprayed")
          .because("the volume filled in belongs to the area of the course")
          .mend("write the length of the course, with its time if it was taken");
    }
    if (!(output instanceof Refilled) && pace instanceof UntimedCourse) {
      throw InputProblem.of("group " + group + " has a course, but neither time nor speed")
          .expected("the time of each run over the course, or a speed")
          .because("the volume per area is the flow divided by speed and width")
          .mend("write the seconds of each run");
    }
  }

  /**
   * The spray volume per area from these readings, with its uncertainty where they were repeated.
   *
   * @param units units of the steps
   * @return the calibration
   * @throws InputProblem if nothing was caught under any nozzle, or under more than there are
   */
  public CalibratedVolume calibrate(SprayUnits units) {
    if (output instanceof Refilled refilled) {
      return walked(refilled, units);
    }
    var parts = new ArrayList<RelativeUncertainty>();
    SprayerFlow flow;
    if (output instanceof NozzleCatches nozzles) {
      var caught =
          CatchTest.of(nozzles.time(), nozzles.catches())
              .onSprayerOf(layout.nozzles())
              .printedIn(units)
              .evaluate();
      if (pace instanceof TimedRuns runs) {
        var timed = new TimedCourse(runs.course(), runs.times(), units).evaluate();
        return SprayCalibration.ofMeasured(layout, caught, timed).printedIn(units).evaluate();
      }
      caught.uncertainty().ifPresent(parts::add);
      flow = caught.meanFlow().through(layout.nozzles());
    } else {
      var whole = (WholeOutput) output;
      whole.volumes().uncertainty().ifPresent(parts::add);
      flow = new SprayerFlow(whole.volumes().mean().dividedBy(whole.time()));
    }
    if (pace instanceof TimedRuns runs) {
      runs.times().uncertainty().ifPresent(parts::add);
    }
    var speed = pace.meanSpeed().orElseThrow();
    return new SprayCalibration(layout, flow, speed, Optional.empty(), parts, units, List.of())
        .evaluate();
  }

  private CalibratedVolume walked(Refilled refilled, SprayUnits units) {
    Optional<WorkTime> time = Optional.empty();
    Length course;
    if (pace instanceof TimedRuns runs) {
      time = Optional.of(runs.times().mean());
      course = runs.course();
    } else {
      course = ((UntimedCourse) pace).course();
    }
    return new TimedWalk(layout, course, refilled.volumes(), time, units).evaluate();
  }

  /**
   * Nozzles that are blocked or out of tolerance about the median, which one odd nozzle among a few
   * does not move.
   */
  List<String> oddNozzles() {
    if (!(output instanceof NozzleCatches nozzles)) {
      return List.of();
    }
    double share = NozzleTolerance.TEN_PERCENT.share();
    return CatchTest.of(nozzles.time(), nozzles.catches())
        .onSprayerOf(layout.nozzles())
        .evaluate()
        .findings()
        .stream()
        .filter(nozzle -> nozzle.isBlocked() || Math.abs(nozzle.fromMedian()) > share)
        .map(NozzleFinding::nozzle)
        .toList();
  }

  /** What was caught or filled in, on average for the whole sprayer, and the seconds for it. */
  Optional<FlowRate> wholeFlow() {
    if (output instanceof WholeOutput whole) {
      return Optional.of(whole.volumes().mean().dividedBy(whole.time()));
    }
    if (output instanceof NozzleCatches nozzles) {
      var caught = CatchTest.of(nozzles.time(), nozzles.catches()).onSprayerOf(layout.nozzles());
      return Optional.of(caught.evaluate().meanFlow().through(layout.nozzles()).flow());
    }
    return Optional.empty();
  }
}
