package agro.course.topic.degreeday;

import agro.course.ExerciseType;
import java.util.List;

/** The exercises on degree-days. */
public final class DegreeDayExercises {

  private DegreeDayExercises() {}

  /**
   * The types of the first version of the generator.
   *
   * @return the types, simple ones first
   */
  public static List<ExerciseType> first() {
    return List.of(
        new OneDay(),
        new OtherUnits(),
        new BetweenVisits(),
        new CoolDay(),
        new SineDay(),
        new WeekSum(),
        new SumReached(),
        new StationOffset(),
        new HotDay(),
        new ForecastDate());
  }
}
