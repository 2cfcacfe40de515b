package agro.dose.tank;

import agro.units.WorkTime;
import java.util.Objects;
import java.util.Optional;

/**
 * One field of a sheet that goes to the sprayer.
 *
 * @param mix the mix for the field
 * @param time how long the work takes; nothing where it was not worked out
 * @param remark what else belongs on the sheet, for example how the sprayer is set; may be empty
 */
public record FieldJob(TankMix mix, Optional<WorkTime> time, String remark) {

  /** Refuses nulls. */
  public FieldJob {
    Objects.requireNonNull(mix, "mix");
    Objects.requireNonNull(time, "time");
    Objects.requireNonNull(remark, "remark");
  }

  /**
   * A field with its mix alone.
   *
   * @param mix the mix for the field
   * @return the job
   */
  public static FieldJob of(TankMix mix) {
    return new FieldJob(mix, Optional.empty(), "");
  }

  /**
   * The same job with the time that it takes.
   *
   * @param work time for the field
   * @return a new job
   */
  public FieldJob taking(WorkTime work) {
    return new FieldJob(mix, Optional.of(work), remark);
  }

  /**
   * The same job with a remark.
   *
   * @param text one or more sentences, without a line break
   * @return a new job
   */
  public FieldJob remarking(String text) {
    return new FieldJob(mix, time, text);
  }
}
