package agro.programme.window;

import agro.report.InputProblem;
import java.util.List;
import java.util.Objects;

/**
 * The stage that is to be hit, within the stages of a generation.
 *
 * @param stage the stage
 * @param structure how the generation follows its flight
 */
public record StageTarget(TargetStage stage, StageStructure structure) {

  /** Refuses a stage whose duration is not stated. */
  public StageTarget {
    Objects.requireNonNull(stage, "stage");
    Objects.requireNonNull(structure, "structure");
    if (!(during(stage, structure).mean().degreeDaysC() > 0)) {
      throw InputProblem.of("no duration of the " + stage.words())
          .expected("a thermal time above 0")
          .because("how many are there on a day hangs on how long each stays")
          .mend("give the duration of that stage, with its source");
    }
  }

  /** Times from the flight to the stage. */
  List<StageDelay> before() {
    return switch (stage) {
      case ADULT -> List.of();
      case EGG -> List.of(structure.firstEgg());
      case YOUNG_LARVA, LARVA -> List.of(structure.firstEgg(), structure.egg());
    };
  }

  /** Duration of the stage. */
  StageDelay during() {
    return during(stage, structure);
  }

  private static StageDelay during(TargetStage stage, StageStructure structure) {
    return switch (stage) {
      case EGG -> structure.egg();
      case YOUNG_LARVA -> structure.youngLarva();
      case LARVA -> structure.larva();
      case ADULT -> structure.adult();
    };
  }

  @Override
  public String toString() {
    return stage.words() + ", " + during();
  }
}
