package agro.notebook.install;

/**
 * One thing that the check of an installation found.
 *
 * @param rank how bad it is
 * @param what what was found, in a sentence
 * @param cure what to do, in a sentence; empty where nothing is to be done
 */
public record Finding(Rank rank, String what, String cure) {

  /** How bad a finding is. */
  public enum Rank {
    /** As it should be. */
    GOOD("ok"),
    /** Works, but somebody may want to know. */
    NOTE("note"),
    /** The installation does not work as it should. */
    PROBLEM("problem");

    private final String word;

    Rank(String word) {
      this.word = word;
    }

    /**
     * The rank as a word at the head of a line.
     *
     * @return a word in lower case
     */
    public String word() {
      return word;
    }
  }

  static Finding good(String what) {
    return new Finding(Rank.GOOD, what, "");
  }

  static Finding note(String what, String cure) {
    return new Finding(Rank.NOTE, what, cure);
  }

  static Finding problem(String what, String cure) {
    return new Finding(Rank.PROBLEM, what, cure);
  }
}
