package agro.course.topic.injury;

import agro.course.ExerciseType;
import java.util.List;

/** The exercises on injury levels. */
public final class InjuryExercises {

  private InjuryExercises() {}

  /**
   * The types of the first version of the generator.
   *
   * @return the types, simple ones first
   */
  public static List<ExerciseType> first() {
    return List.of(
        LevelOfTreatment.type(),
        GainThreshold.type(),
        LevelAfterChange.type(),
        ThresholdBeforeLevel.type(),
        InsectDaysOfCounts.type(),
        TreatmentWorth.type(),
        ThresholdPerRow.type(),
        LevelWithCosts.type());
  }
}
