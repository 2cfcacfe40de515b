package agro.sampling.sequential;

/** What a plan says when the greatest number of units is reached between the lines. */
public enum EndRule {
  /** The field stays undecided. */
  LEAVE_UNDECIDED("undecided"),
  /** The field is low when its mean is below the middle of the plan, else high. */
  BY_THE_MIDDLE("by its mean against the middle of the plan"),
  /** The field is called high, which is careful of the crop. */
  CALL_HIGH("high"),
  /** The field is called low, which is sparing of treatments. */
  CALL_LOW("low");

  private final String words;

  EndRule(String words) {
    this.words = words;
  }

  /**
   * The rule in words.
   *
   * @return what the field is called
   */
  public String words() {
    return words;
  }

  FieldClass decide(double mean, double middle) {
    return switch (this) {
      case LEAVE_UNDECIDED -> FieldClass.UNDECIDED;
      case BY_THE_MIDDLE -> mean < middle ? FieldClass.LOW : FieldClass.HIGH;
      case CALL_HIGH -> FieldClass.HIGH;
      case CALL_LOW -> FieldClass.LOW;
    };
  }
}
