package agro.course.topic.sampling;

import agro.course.ExerciseType;
import java.util.List;

/** The exercises on sampling. */
public final class SamplingExercises {

  private SamplingExercises() {}

  /**
   * The types of the first version of the generator.
   *
   * @return the types, simple ones first
   */
  public static List<ExerciseType> first() {
    return List.of(
        TrapNights.type(),
        PestsPerArea.type(),
        PlantsForPrecision.type(),
        MeanFromPresence.type(),
        SpreadOfCounts.type(),
        FieldInParts.type(),
        IntervalOfMean.type(),
        StopLineReading.type(),
        FrequencyOfCounts.type(),
        PowerLawOfTwoFields.type(),
        StopLinesOfWald.type());
  }
}
