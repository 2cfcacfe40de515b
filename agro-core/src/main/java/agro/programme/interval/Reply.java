package agro.programme.interval;

/** The first word of an answer. */
public enum Reply {
  /** Yes. */
  YES("Yes"),
  /** No. */
  NO("No"),
  /** The records do not say; look at the label. */
  NOT_RECORDED("Not recorded: look at the label");

  private final String words;

  Reply(String words) {
    this.words = words;
  }

  /**
   * The reply in words.
   *
   * @return words that begin a sentence
   */
  public String words() {
    return words;
  }

  static Reply of(Permission permission) {
    return switch (permission) {
      case ALLOWED -> YES;
      case NOT_RECORDED -> NOT_RECORDED;
      case REFUSED -> NO;
    };
  }
}
