package agro.programme.window;

import agro.development.Thresholds;
import agro.source.Reference;
import java.util.Objects;
import java.util.Optional;

/**
 * How one generation follows its flight: the first egg, its development and the larva, as thermal
 * times that differ from animal to animal.
 *
 * @param firstEgg from the flight to the egg
 * @param egg duration of the egg
 * @param youngLarva how long a larva from its hatch on can be hit while it is young
 * @param larva duration of the whole larva
 * @param adult how long an adult can be hit from its flight on
 * @param thresholds thresholds above which these times count; nothing for those of the flights
 * @param source where the times come from
 */
public record StageStructure(
    StageDelay firstEgg,
    StageDelay egg,
    StageDelay youngLarva,
    StageDelay larva,
    StageDelay adult,
    Optional<Thresholds> thresholds,
    Reference source) {

  /** Refuses nulls. */
  public StageStructure {
    Objects.requireNonNull(firstEgg, "firstEgg");
    Objects.requireNonNull(egg, "egg");
    Objects.requireNonNull(youngLarva, "youngLarva");
    Objects.requireNonNull(larva, "larva");
    Objects.requireNonNull(adult, "adult");
    Objects.requireNonNull(thresholds, "thresholds");
    Objects.requireNonNull(source, "source");
  }

  /**
   * Stages of which nothing is known yet; what is not given has no duration and cannot be a target.
   *
   * @param source where the times come from
   * @return a structure to be filled
   */
  public static StageStructure from(Reference source) {
    var none = StageDelay.NONE;
    return new StageStructure(none, none, none, none, none, Optional.empty(), source);
  }

  /**
   * The same structure with another time from the flight to the egg.
   *
   * @param other the time
   * @return a new structure
   */
  public StageStructure withFirstEgg(StageDelay other) {
    return new StageStructure(other, egg, youngLarva, larva, adult, thresholds, source);
  }

  /**
   * The same structure with another duration of the egg.
   *
   * @param other the duration
   * @return a new structure
   */
  public StageStructure withEgg(StageDelay other) {
    return new StageStructure(firstEgg, other, youngLarva, larva, adult, thresholds, source);
  }

  /**
   * The same structure with another duration of the young larva.
   *
   * @param other the duration
   * @return a new structure
   */
  public StageStructure withYoungLarva(StageDelay other) {
    return new StageStructure(firstEgg, egg, other, larva, adult, thresholds, source);
  }

  /**
   * The same structure with another duration of the whole larva.
   *
   * @param other the duration
   * @return a new structure
   */
  public StageStructure withLarva(StageDelay other) {
    return new StageStructure(firstEgg, egg, youngLarva, other, adult, thresholds, source);
  }

  /**
   * The same structure with another duration of the adult.
   *
   * @param other the duration
   * @return a new structure
   */
  public StageStructure withAdult(StageDelay other) {
    return new StageStructure(firstEgg, egg, youngLarva, larva, other, thresholds, source);
  }

  /**
   * The same structure, its times counted above thresholds of their own.
   *
   * @param other the thresholds
   * @return a new structure
   */
  public StageStructure above(Thresholds other) {
    return new StageStructure(firstEgg, egg, youngLarva, larva, adult, Optional.of(other), source);
  }
}
