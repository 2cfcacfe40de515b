package agro.generation.skill;

/** Which seasons a forecast of a past season may learn from. */
public enum HindcastScheme {
  /**
   * All other seasons, later ones too, and of its own season what was known on the day of issue.
   */
  LEAVE_ONE_OUT("leave one season out"),
  /** What was known on the day of issue and nothing else: as it would have been issued then. */
  ONLY_EARLIER("only earlier seasons");

  private final String words;

  HindcastScheme(String words) {
    this.words = words;
  }

  /**
   * The scheme in words.
   *
   * @return a phrase for print
   */
  public String words() {
    return words;
  }
}
