package agro.notebook.kernel;

/** The two streams that a program prints to. */
public enum StandardStream {
  /** What the program has to say. */
  OUTPUT("stdout"),
  /** What went wrong, and remarks. */
  ERROR("stderr");

  private final String word;

  StandardStream(String word) {
    this.word = word;
  }

  /**
   * The stream's name in notebook files.
   *
   * @return {@code stdout} or {@code stderr}
   */
  public String word() {
    return word;
  }
}
