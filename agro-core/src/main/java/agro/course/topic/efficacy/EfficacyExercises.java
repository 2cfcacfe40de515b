package agro.course.topic.efficacy;

import agro.course.CourseWords;
import agro.course.ExerciseType;
import java.util.List;

/** The exercises on efficacy. */
public final class EfficacyExercises {

  private EfficacyExercises() {}

  /**
   * The types of the first version of the generator.
   *
   * @return the types, simple ones first
   */
  public static List<ExerciseType> first() {
    return List.of(
        new SurvivorsOfTwo(),
        new FormulaForTrial(),
        new DeadOfTwo(),
        new BeforeAndAfter(),
        new ChangeOfControl(),
        new FourBlocks());
  }

  static CourseWords words(CourseWords shared) {
    return shared.in(EfficacyExercises.class, "efficacy");
  }
}
