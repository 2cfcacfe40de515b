package agro.trial;

/**
 * Two names of treatments that may be one. They are offered, never merged: whoever knows the trial
 * renames one of them.
 *
 * @param factor factor of both
 * @param rarer the name in fewer plots, which is more likely the slip
 * @param other the other name
 * @param rarerPlots number of plots under the rarer name
 * @param otherPlots number of plots under the other name
 * @param difference in what they differ
 */
public record NearTreatment(
    String factor,
    String rarer,
    String other,
    int rarerPlots,
    int otherPlots,
    Difference difference) {

  /** In what two names differ. */
  public enum Difference {
    /** Only in capital letters, spaces, accents, hyphens or points. */
    WRITING("capitals, spaces, accents or punctuation only"),
    /** In letters that look like digits. */
    LOOK_ALIKES("letters that look like digits"),
    /** In one or two letters of a word. */
    LETTERS("one or two letters");

    private final String words;

    Difference(String words) {
      this.words = words;
    }

    /**
     * The difference in words.
     *
     * @return a phrase
     */
    public String words() {
      return words;
    }
  }
}
