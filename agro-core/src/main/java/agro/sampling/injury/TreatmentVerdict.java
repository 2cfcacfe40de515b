package agro.sampling.injury;

/** What the chance that treating pays speaks for. */
public enum TreatmentVerdict {
  /** Treating would most likely cost more than it saves. */
  LEAVE("leave: treating would most likely cost more than it saves"),
  /** Too close to tell. */
  LOOK_ON("look on: too close to tell, count again soon"),
  /** Treating would most likely pay. */
  TREAT("treat: treating would most likely pay");

  private final String words;

  TreatmentVerdict(String words) {
    this.words = words;
  }

  /**
   * The verdict in words.
   *
   * @return a phrase
   */
  public String words() {
    return words;
  }
}
