package agro.development;

/** The part of an insect's life that a thermal requirement covers. */
public enum Span {
  /** The egg stage. */
  EGG("egg"),
  /** The larval stage. */
  LARVA("larva"),
  /** The pupal stage. */
  PUPA("pupa"),
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
}
