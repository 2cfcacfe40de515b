package agro.course.topic.rotation;

import agro.course.ExerciseType;
import java.util.List;

/** The exercises on rotation and label limits. */
public final class RotationExercises {

  private RotationExercises() {}

  /**
   * The types of the first version of the generator.
   *
   * @return the types, simple ones first
   */
  public static List<ExerciseType> first() {
    return List.of(
        new NextSpray(),
        new MissingLimit(),
        new BrokenRotation(),
        new GroupsForWindow(),
        new HarvestAndEntry(),
        new LeftOfSeason(),
        new ActiveOfSeason(),
        new SpraysOfSeason());
  }
}
