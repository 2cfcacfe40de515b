package agro.course.topic.development;

import agro.course.ExerciseType;
import java.util.List;

/** The exercises on development. */
public final class DevelopmentExercises {

  private DevelopmentExercises() {}

  /**
   * The types of the first version of the generator.
   *
   * @return the types, simple ones first
   */
  public static List<ExerciseType> first() {
    return List.of(
        new ShareDone(),
        new ConstantDays(),
        new RateLine(),
        new TwoTemperatures(),
        new MixedTemperatures(),
        new StageShares(),
        new SeasonGenerations(),
        new LeastSquaresLine(),
        new PastOptimum(),
        new NextFlight());
  }
}
