package agro.course.topic.units;

import agro.course.ExerciseType;
import java.util.List;

/** The exercises on units. */
public final class UnitExercises {

  private UnitExercises() {}

  /**
   * The types of the first version of the generator.
   *
   * @return the types, simple ones first
   */
  public static List<ExerciseType> first() {
    return List.of(
        ForeignRate.type(),
        ForeignStrength.type(),
        HandbookTemperature.type(),
        SprayShare.type(),
        KitchenSpoons.type(),
        PacedField.type(),
        TimedSpeed.type(),
        ActivePerLand.type(),
        HandbookStage.type(),
        ForeignLabel.type());
  }
}
