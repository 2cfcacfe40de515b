package agro.development;

import java.util.Optional;

/** The part of an insect's life that a thermal requirement covers. */
public enum Span {
  /** The egg stage. */
  EGG("egg"),
  /** The larval stage. */
  LARVA("larva"),
  /** All nymphal instars together. */
  NYMPH("nymph"),
  /** The first nymphal stage of a mite. */
  PROTONYMPH("protonymph"),
  /** The second nymphal stage of a mite. */
  DEUTONYMPH("deutonymph"),
  /** The first larval or nymphal instar. */
  FIRST_INSTAR("first instar"),
  /** The second larval or nymphal instar. */
  SECOND_INSTAR("second instar"),
  /** The third larval or nymphal instar. */
  THIRD_INSTAR("third instar"),
  /** The fourth larval or nymphal instar. */
  FOURTH_INSTAR("fourth instar"),
  /** The pupal stage. */
  PUPA("pupa"),
  /** From egg laid to pupa formed. */
  EGG_AND_LARVA("egg and larva"),
  /** From egg hatched to adult emerged. */
  LARVA_AND_PUPA("larva and pupa"),
  /** From birth to adult, for insects that bear live young. */
  BIRTH_TO_ADULT("birth to adult"),
  /** The life of the adult. */
  ADULT("adult"),
  /** From egg laid to adult emerged. */
  EGG_TO_ADULT("egg to adult"),
  /** From adult emerged to first egg laid: the time before egg-laying. */
  ADULT_TO_FIRST_EGG("adult to first egg"),
  /** From egg to egg. */
  GENERATION("generation, egg to egg"),
  /** From the middle of one flight to the middle of the next, as traps see it. */
  FLIGHT_TO_FLIGHT("flight to flight");

  private final String words;

  Span(String words) {
    this.words = words;
  }

  /**
   * The span in words.
   *
   * @return a phrase in lower case
   */
  public String words() {
    return words;
  }

  /**
   * The span of two parts of a life that follow one another.
   *
   * @param next the part that follows this one
   * @return the span of both, or nothing when the second does not begin where this one ends or the
   *     whole has no name here
   */
  public Optional<Span> followedBy(Span next) {
    return switch (this) {
      case EGG -> afterEgg(next);
      case EGG_AND_LARVA -> next == PUPA ? Optional.of(EGG_TO_ADULT) : Optional.empty();
      case LARVA -> next == PUPA ? Optional.of(LARVA_AND_PUPA) : Optional.empty();
      case EGG_TO_ADULT, BIRTH_TO_ADULT ->
          next == ADULT_TO_FIRST_EGG ? Optional.of(GENERATION) : Optional.empty();
      default -> Optional.empty();
    };
  }

  private static Optional<Span> afterEgg(Span next) {
    return switch (next) {
      case LARVA -> Optional.of(EGG_AND_LARVA);
      case LARVA_AND_PUPA, NYMPH -> Optional.of(EGG_TO_ADULT);
      default -> Optional.empty();
    };
  }
}
