package agro.course.topic.calibration;

import agro.course.ExerciseType;
import java.util.List;

/** The exercises on the calibration of sprayers. */
public final class CalibrationExercises {

  private CalibrationExercises() {}

  /**
   * The types of the first version of the generator.
   *
   * @return the types, simple ones first
   */
  public static List<ExerciseType> first() {
    return List.of(
        new WalkingSpeed(),
        new FlowAndPressure(),
        new HeavyLiquid(),
        new ReferenceCatch(),
        new BoomVolume(),
        new PlotAndTank(),
        new MixedForAnother(),
        new TimeOfJob(),
        new NozzleCatches(),
        new NozzleForVolume());
  }
}
