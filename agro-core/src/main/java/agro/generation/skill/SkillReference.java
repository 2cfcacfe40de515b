package agro.generation.skill;

/** Plain forecasts that a model of flights has to beat, learnt from the same seasons. */
public enum SkillReference {
  /** The mean date of the event in the seasons learnt from, with their scatter (Student's t). */
  CALENDAR("mean calendar date"),
  /** The first catch of this season plus the mean days from first catch to event. */
  FIRST_CATCH("first catch plus mean days"),
  /**
   * The first catch plus the published interval for each flight that follows, in degree-days, and
   * past years for the weather ahead.
   */
  PUBLISHED_INTERVAL("first catch plus published interval");

  private final String words;

  SkillReference(String words) {
    this.words = words;
  }

  /**
   * The reference in words.
   *
   * @return a phrase for print
   */
  public String words() {
    return words;
  }
}
